import { IRREGULAR_PLURALS, UNCHANGED_PLURALS } from './nounLexicon';

/** Where the head of a name and the adjectives that agree with it end. */
const TAIL =
  /\s(?:de|del|con|sin|para|por|en|a|al|entre|sobre|bajo|contra|según|desde|hasta|lado|tipo|clase|y|e|o|u|que|[^\s\p{L}].*|[A-Z]\S*|\S*\d\S*)(?:\s|$)/u;

/** Compounds of a verb and a plural noun are masculine singulars: `portaherramientas`. */
const VERB_COMPOUND =
  /^(?:saca|porta|guarda|para|cuenta|rompe|corta|abre|aprieta|cubre|pisa|limpia|lava|pela|quita|salva|sujeta|tapa)\p{L}{3,}s$/u;

export function isVerbCompound(word: string): boolean {
  return VERB_COMPOUND.test(word);
}

/** `anillo elástico` of `anillo elástico de la tapa`. */
export function headOf(name: string): string {
  const tail = TAIL.exec(name);
  return tail === null ? name : name.slice(0, tail.index);
}

/** Whether a noun is a plural as it stands: `alicates`, `bloques`, not `chasis`, `gas` or `portabrocas`. */
export function isPluralWord(word: string): boolean {
  const lower = word.toLowerCase();
  if (!/[aeiouáéíóú]s$/u.test(lower) || VERB_COMPOUND.test(lower) || UNCHANGED_PLURALS.has(lower)) return false;
  // A stressed ending, as in `compás` or `gas`, belongs to the word.
  return !/[áéíóú]s$/u.test(lower) && vowelGroups(lower) > 1;
}

function vowelGroups(word: string): number {
  return word.match(/[aeiouáéíóúü]+/gu)?.length ?? 0;
}

const BARE: Readonly<Record<string, string>> = { á: 'a', é: 'e', í: 'i', ó: 'o', ú: 'u' };

/** The plural of a noun or an adjective by the rules of the language. Figures and symbols stay. */
export function pluralWord(word: string): string {
  const known = IRREGULAR_PLURALS.get(word.toLowerCase());
  if (known !== undefined) return known;
  if (!/\p{L}$/u.test(word) || isPluralWord(word) || UNCHANGED_PLURALS.has(word.toLowerCase())) return word;
  if (VERB_COMPOUND.test(word) || /^[A-ZÁÉÍÓÚÑ\d]+$/u.test(word)) return word;
  if (/[aeiouáéó]$/u.test(word)) return `${word}s`;
  if (/z$/u.test(word)) return `${bareLastVowel(word.slice(0, -1))}ces`;
  if (/[íú]$/u.test(word)) return `${word}es`;
  return /[dlnrsj]$/u.test(word) ? `${bareLastVowel(word)}es` : `${word}s`;
}

/** `tapón` loses its accent in `tapones`; a word stressed elsewhere, as `túnel`, keeps it. */
function bareLastVowel(word: string): string {
  return word.replace(/([áéíóú])([nsrld]?)$/u, (_, vowel: string, end: string) =>
    end === 'n' || end === 's' ? `${BARE[vowel]}${end}` : `${vowel}${end}`,
  );
}
