import { isKnownPlural, isWeak, knownNoun } from './nounLexicon';

export type Gender = 'm' | 'f' | 'n';
export type GrammaticalCase = 'nominative' | 'accusative' | 'dative' | 'genitive';

/** What stands before a noun, and so how its adjectives end: nothing, `der` or `ein`. */
export type Determiner = 'none' | 'definite' | 'indefinite';

/** A name that can be inflected. */
export interface Noun {
  /** What may stand first and never changes, with its space: `44 mm `. */
  readonly start: string;
  /** Adjectives without their endings. */
  readonly adjectives: readonly string[];
  readonly head: string;
  readonly headPlural: string | undefined;
  /** What follows the head and never changes: ` mit Kreuzgelenk`. */
  readonly tail: string;
  readonly gender: Gender;
  /** The name is a plural as it stands: `die Wischtücher`. */
  readonly isPlural: boolean;
}

const ENTRY = /^(?<article>der|die|das)\s+(?<name>.+?)(?:,\s*die\s+(?<plural>\p{L}[^,]*))?(?<only>\s+\(Pl\.\))?$/u;
const WORDS =
  /^(?<start>\d[\d.,–-]*\s+(?:[a-zµ°]\S*\s+)?)?(?<adjectives>(?:\p{Ll}+(?:e|er|es|en)\s+)*)(?<head>[\p{Lu}\d]\S*)(?<tail>\s.*)?$/u;
/** What German puts behind a noun; anything else is the name of another language, or a word that is no noun. */
const TAIL =
  /^\s(?:[\d(,;–]|[A-Z]\d|(?:mit|ohne|für|zu|zum|zur|am|an|auf|aus|im|in|bei|beim|bis|nach|über|unter|von|vom|vor|des|der|dem|den|und|oder|durch|gegen|je|pro|um|DIN|ISO)(?=\s|$))/u;

/** The name alone out of a dictionary entry, without article and plural. */
export function nameIn(entry: string): string {
  const parsed = ENTRY.exec(entry)?.groups;
  if (parsed?.name === undefined) return entry;
  const noun = nounOf(entry);
  return noun === undefined ? parsed.name : decline(noun, 'nominative', 'none', noun.isPlural);
}

/**
 * Reads a name as a dictionary writes it, `die Nuss, die Nüsse`, or a bare one whose last member is known. Undefined for
 * a name whose gender nothing tells: it is written as it stands.
 */
export function nounOf(entry: string): Noun | undefined {
  const { article, name = entry, plural, only } = ENTRY.exec(entry)?.groups ?? {};
  const words = WORDS.exec(name)?.groups;
  if (words?.head === undefined) return undefined;
  const tail = words.tail ?? '';
  if (article === undefined && tail !== '' && !TAIL.test(tail)) return undefined;
  const { head, comma } = withoutComma(words.head);
  // German writes the last member of a compound with a hyphen with a capital, and English does not.
  if (article === undefined && !/(?:^|-)\p{Lu}\p{L}+$/u.test(head)) return undefined;
  const known = knownNoun(head);
  const adjectives = (words.adjectives ?? '').trim().split(/\s+/u).filter(Boolean);
  const isPlural = only !== undefined || (plural === undefined && isSeveral(head, article, known?.gender));
  const gender = genderBy(article) ?? known?.gender ?? genderOfAdjective(adjectives);
  if (gender === undefined) return undefined;
  return {
    start: words.start ?? '',
    adjectives: adjectives.map(stemOf),
    head,
    headPlural: isPlural ? head : (headOf(plural) ?? known?.plural),
    tail: comma + tail,
    gender,
    isPlural,
  };
}

/** Whether a name means several as it stands: a known plural, or a noun that is no feminine behind `die`. */
function isSeveral(head: string, article: string | undefined, gender: Gender | undefined): boolean {
  if (article === 'der' || article === 'das') return false;
  return isKnownPlural(head) || (article === 'die' && gender !== undefined && gender !== 'f');
}

function withoutComma(head: string): { head: string; comma: string } {
  return head.endsWith(',') ? { head: head.slice(0, -1), comma: ',' } : { head, comma: '' };
}

function genderBy(article: string | undefined): Gender | undefined {
  if (article === 'der') return 'm';
  if (article === 'das') return 'n';
  return article === 'die' ? 'f' : undefined;
}

/** A strong adjective tells it where the noun does not: `dünner Film`. */
function genderOfAdjective(adjectives: readonly string[]): Gender | undefined {
  const last = adjectives.at(-1);
  if (last === undefined) return undefined;
  if (last.endsWith('er')) return 'm';
  return last.endsWith('es') ? 'n' : undefined;
}

function stemOf(adjective: string): string {
  return adjective.replace(/(?:er|es|en|e)$/u, '');
}

function headOf(name: string | undefined): string | undefined {
  return name === undefined ? undefined : WORDS.exec(name)?.groups?.head;
}

const ENDINGS: { readonly [Kind in Determiner]: { readonly [Number in Gender | 'plural']: readonly string[] } } = {
  none: {
    m: ['er', 'en', 'em', 'en'],
    f: ['e', 'e', 'er', 'er'],
    n: ['es', 'es', 'em', 'en'],
    plural: ['e', 'e', 'en', 'er'],
  },
  definite: {
    m: ['e', 'en', 'en', 'en'],
    f: ['e', 'e', 'en', 'en'],
    n: ['e', 'e', 'en', 'en'],
    plural: ['en', 'en', 'en', 'en'],
  },
  indefinite: {
    m: ['er', 'en', 'en', 'en'],
    f: ['e', 'e', 'en', 'en'],
    n: ['es', 'es', 'en', 'en'],
    plural: ['en', 'en', 'en', 'en'],
  },
};
const ARTICLES: { readonly [Number in Gender | 'plural']: readonly string[] } = {
  m: ['der', 'den', 'dem', 'des'],
  f: ['die', 'die', 'der', 'der'],
  n: ['das', 'das', 'dem', 'des'],
  plural: ['die', 'die', 'den', 'der'],
};
const CASES: readonly GrammaticalCase[] = ['nominative', 'accusative', 'dative', 'genitive'];

export function article(gender: Gender, of: GrammaticalCase, plural: boolean): string {
  return ARTICLES[plural ? 'plural' : gender][CASES.indexOf(of)] ?? '';
}

/** `neu` with the ending that case, number and gender ask for. */
export function adjective(stem: string, noun: Noun, of: GrammaticalCase, after: Determiner, plural: boolean): string {
  return `${stem}${ENDINGS[after][plural || noun.isPlural ? 'plural' : noun.gender][CASES.indexOf(of)] ?? ''}`;
}

/** The name in a case and a number; `extra` are adjectives before its own. */
export function decline(
  noun: Noun,
  of: GrammaticalCase,
  after: Determiner,
  plural: boolean,
  extra: readonly string[] = [],
): string {
  const adjectives = [...extra, ...noun.adjectives].map((stem) => `${adjective(stem, noun, of, after, plural)} `);
  const head = plural || noun.isPlural ? pluralIn(noun, of) : singularIn(noun, of);
  return `${noun.start}${adjectives.join('')}${head}${noun.tail}`;
}

function pluralIn({ head, headPlural = head }: Noun, of: GrammaticalCase): string {
  return of === 'dative' && !/[ns]$/u.test(headPlural) ? `${headPlural}n` : headPlural;
}

function singularIn({ head, gender }: Noun, of: GrammaticalCase): string {
  if (of === 'nominative') return head;
  if (isWeak(head)) return head.endsWith('e') ? `${head}n` : `${head}en`;
  if (of !== 'genitive' || gender === 'f') return head;
  if (/nis$/u.test(head)) return `${head}ses`;
  // Greek and Latin endings take none: `des Radius`.
  if (/[iuo]us$/u.test(head)) return head;
  return /(?:s|ß|x|z)$/u.test(head) ? `${head}es` : `${head}s`;
}
