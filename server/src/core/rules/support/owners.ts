import type { Unit } from '../../model/facts';

const WORDS: Readonly<Record<string, string>> = {
  kit: 'kit',
  stores: 'stores document',
  settings: 'settings document',
  line: 'line of a kit',
  identify: 'thing to identify',
  'balance-group': 'balance group',
  'notice-line': 'notice',
  sentence: 'sentence',
};

/** What messages call the thing that a key stands in: "a step", "an "apply" instruction", ""with"". */
export function ownerText(unit: Unit, owner: string): string {
  const own = unit.def.split('/').at(-1) ?? unit.def;
  if (unit.def.startsWith('procedure/verb-')) {
    return owner === own.slice('verb-'.length) ? withArticle(`"${owner}" instruction`) : `"${owner}"`;
  }
  if (owner !== own && !(own === 'sentence' && owner === 'say')) return `"${owner}"`;
  return withArticle(WORDS[own] ?? own);
}

function withArticle(noun: string): string {
  return `${/^"?[aeio]/.test(noun) ? 'an' : 'a'} ${noun}`;
}
