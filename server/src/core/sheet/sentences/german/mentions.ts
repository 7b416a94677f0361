import { type Determiner, decline, type Gender, type GrammaticalCase, type Noun } from './nouns';

/** How a noun must stand behind the words of a writer. */
interface Place {
  readonly of: GrammaticalCase;
  readonly after: Determiner;
  readonly plural: boolean;
}

const NAKED: Place = { of: 'nominative', after: 'none', plural: false };

/** What an article says, by the gender that it stands before; `plural` where it means several. */
const BY_ARTICLE: Readonly<Record<string, Partial<Record<Gender | 'plural', GrammaticalCase>>>> = {
  der: { m: 'nominative', f: 'dative', plural: 'genitive' },
  die: { f: 'accusative', plural: 'accusative' },
  das: { n: 'accusative' },
  den: { m: 'accusative', plural: 'dative' },
  dem: { m: 'dative', n: 'dative' },
  des: { m: 'genitive', n: 'genitive' },
  ein: { m: 'nominative', n: 'accusative' },
  eine: { f: 'accusative' },
  einen: { m: 'accusative' },
  einem: { m: 'dative', n: 'dative' },
  einer: { f: 'dative' },
  eines: { m: 'genitive', n: 'genitive' },
};
/** Prepositions that have swallowed their article, with the article. */
const SWALLOWED: Readonly<Record<string, string>> = {
  im: 'dem',
  am: 'dem',
  zum: 'dem',
  vom: 'dem',
  beim: 'dem',
  zur: 'der',
  ins: 'das',
  ans: 'das',
  aufs: 'das',
};
const DATIVE = new Set([
  'mit',
  'von',
  'zu',
  'aus',
  'bei',
  'nach',
  'seit',
  'in',
  'an',
  'auf',
  'unter',
  'über',
  'vor',
  'hinter',
]);
const ACCUSATIVE = new Set(['für', 'durch', 'ohne', 'gegen', 'um', 'bis']);
/** Words that end as the article would: `dieser`, `jede`; and those that end as `ein` does. */
const LIKE_DER = /^(?:dies|jed|jen|welch|beid|all)(?<ending>er|e|es|en|em)$/u;
const LIKE_EIN = /^(?:k|m|s)(?<ein>ein(?:e|en|em|er|es)?)$/u;
const DER_BY_ENDING: Readonly<Record<string, string>> = { er: 'der', e: 'die', es: 'das', en: 'den', em: 'dem' };

/** A name as it must stand behind words that the writer has inflected: `den <ring>`, `mit dem <ring>`, `im <bath>`. */
export function mentioned(noun: Noun, before: string): string {
  const { of, after, plural } = placeBehind(noun, before);
  return decline(noun, of, after, plural);
}

function placeBehind(noun: Noun, before: string): Place {
  const words = (/[^.!?:;()]*$/u.exec(before)?.[0] ?? '').toLowerCase().trim().split(/\s+/u);
  if (!/\s$/u.test(before)) return NAKED;
  const [last = '', second = '', third = ''] = words.toReversed();
  const isNumber = /^\d+$/u.test(last) && Number(last) > 1;
  const governing = isNumber || isAdjective(last) ? (isAdjective(second) ? third : second) : last;
  const place = byWord(noun, governing, isNumber);
  return isNumber ? { ...place, plural: noun.headPlural !== undefined } : place;
}

function isAdjective(word: string): boolean {
  return /^\p{Ll}{2,}(?:e|en|er|es|em)$/u.test(word) && !isArticle(word);
}

function isArticle(word: string): boolean {
  return word in BY_ARTICLE || word in SWALLOWED || LIKE_DER.test(word) || LIKE_EIN.test(word) || DATIVE.has(word);
}

function byWord(noun: Noun, word: string, isNumber: boolean): Place {
  const like = LIKE_DER.exec(word)?.groups?.ending;
  const ein = LIKE_EIN.exec(word)?.groups?.ein;
  const der = SWALLOWED[word] ?? (like === undefined ? (ein ?? word) : DER_BY_ENDING[like]) ?? word;
  const cases = BY_ARTICLE[der];
  if (cases !== undefined) {
    const after = der.startsWith('ein') ? 'indefinite' : 'definite';
    const one = isNumber || noun.isPlural ? undefined : cases[noun.gender];
    if (one !== undefined) return { of: one, after, plural: false };
    return {
      of: cases.plural ?? 'nominative',
      after,
      plural: cases.plural !== undefined && noun.headPlural !== undefined,
    };
  }
  if (DATIVE.has(word)) return { ...NAKED, of: 'dative' };
  return ACCUSATIVE.has(word) ? { ...NAKED, of: 'accusative' } : NAKED;
}
