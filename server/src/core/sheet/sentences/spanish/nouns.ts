import { headOf, isPluralWord, isVerbCompound, pluralWord } from './nounForms';
import { FEMININE_NOUNS, MASCULINE_NOUNS, STRESSED_A } from './nounLexicon';

export type Gender = 'm' | 'f';

/** A name as the grammar needs it: without its article, with gender and number. */
export interface Noun {
  readonly name: string;
  readonly gender: Gender;
  /** The name is a plural as it stands, as `alicates` is. */
  readonly plural: boolean;
  /** The plural as the writer gave it, without its article: `ejes con rueda` of `el eje con rueda, los ejes con rueda`. */
  readonly plurals?: string;
  /** The name is in another language and is never inflected. */
  readonly foreign?: true;
}

const ARTICLE = /^(el|la|los|las)\s+(?=\S)/u;
const PLURAL_BEHIND = /,\s*(?:los|las)\s+(?<plurals>\S.*)$/u;

/** Reads a name: its article says gender and number where the writer put one in front, else its first word does. */
export function nounOf(entry: string): Noun {
  const plurals = PLURAL_BEHIND.exec(entry)?.groups?.plurals;
  const written = plurals === undefined ? entry : entry.replace(PLURAL_BEHIND, '');
  const article = ARTICLE.exec(written)?.[1];
  const name = article === undefined ? written : written.slice(article.length).trimStart();
  const word = headWord(name);
  const plural = article === undefined ? isPluralWord(word) : article.length === 3;
  const noun = { name, gender: genderBy(article, word), plural };
  return plurals === undefined ? noun : { ...noun, plurals };
}

/** The name in the plural: its head and what agrees with it; `tuerca del eje` gives `tuercas del eje`. */
export function pluralName({ name, plural, plurals, foreign }: Noun): string {
  if (plurals !== undefined) return plurals;
  if (plural || foreign) return name;
  const head = headOf(name);
  return `${head.split(' ').map(pluralWord).join(' ')}${name.slice(head.length)}`;
}

/** A feminine noun that starts with a stressed a takes `el`: `el agua`. */
export function takesMasculineArticle({ name, gender, plural }: Noun): boolean {
  return gender === 'f' && !plural && STRESSED_A.has(headWord(name).toLowerCase());
}

function genderBy(article: string | undefined, word: string): Gender {
  if (article === 'la' || article === 'las') return 'f';
  // `el agua` is feminine; any other `el` says what it looks like.
  if (article === 'el') return STRESSED_A.has(word.toLowerCase()) ? 'f' : 'm';
  return article === 'los' ? 'm' : genderOf(word);
}

function headWord(name: string): string {
  return /^[^\s(,/]+/u.exec(name)?.[0] ?? '';
}

const FEMININE_ENDING = /(?:a|ión|[dt]ad|tud|umbre|triz|sis|itis|eza|ez)$/u;
const GREEK_MASCULINE = /(?:grama|quema|stema|blema|lema|tema|oma)$/u;

/** Gender of a noun by what is known of it, else by its ending. */
export function genderOf(word: string): Gender {
  const lower = word.toLowerCase();
  if (isVerbCompound(lower)) return 'm';
  const singular = singularForms(lower);
  if (singular.some((one) => FEMININE_NOUNS.has(one))) return 'f';
  if (singular.some((one) => MASCULINE_NOUNS.has(one) || GREEK_MASCULINE.test(one))) return 'm';
  return FEMININE_ENDING.test(lower) || /(?:as|iones|[dt]ades)$/u.test(lower) ? 'f' : 'm';
}

/** What a word may be the plural of, itself first. */
function singularForms(word: string): string[] {
  if (word.endsWith('ces')) return [word, `${word.slice(0, -3)}z`, word.slice(0, -1)];
  if (word.endsWith('es')) return [word, word.slice(0, -1), word.slice(0, -2)];
  return word.endsWith('s') ? [word, word.slice(0, -1)] : [word];
}
