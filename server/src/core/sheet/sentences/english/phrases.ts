import { capital, join, plain, type Thing, text } from '../grammar';
import type { Alternative, BandJoint, NamedBuild, NoBand, Phrases, Way } from '../language';
import { englishGrammar as grammar, pluralName } from './grammar';

const list = (items: readonly string[], last: 'and' | 'or'): string =>
  plain((last === 'and' ? grammar.and : grammar.or)(items.map((item) => [text(item)])));

const the = (thing: Thing): string => plain(grammar.the({ ...thing, count: 1 }));

function alternativeWords({ variants, finished, arrived, found, ways }: Alternative): string {
  const clauses = [
    ...(variants.length === 0 ? [] : [`the unit is a ${list(variants, 'or')}`]),
    ...optionWords('the unit leaves', finished),
    ...optionWords('the unit arrived', arrived),
    ...found.map(
      ({ what, values, kind }) =>
        `${the(what)} is ${list(
          values.map((value) => valueWords(value, kind)),
          'or',
        )}`,
    ),
    ...ways.map(wayWords),
  ];
  return list(clauses, 'and');
}

function wayWords(way: Way): string {
  if (way.is === 'optional') return `step “${way.title}” is ${way.done ? 'done' : 'left out'}`;
  if (way.is === 'check') return `“${way.said}” ${way.holds ? 'holds' : 'does not hold'}`;
  return `${way.what === undefined ? 'the check' : the(way.what)} is ${way.right ? 'right' : 'not right'}`;
}

function buildWords({ variant, finished, arrives }: NamedBuild): string {
  const named = (options: readonly Thing[]) => options.map(({ name }) => name).join(' + ') || 'no options';
  const label = [...(variant === undefined ? [] : [variant]), ...finished.map(({ name }) => name)].join(' + ');
  const built = label === '' ? 'no options' : label;
  return arrives === undefined ? built : `${built}, received with ${named(arrives)}`;
}

function optionWords(start: string, options: readonly { option: Thing; present: boolean }[]): string[] {
  const named = (present: boolean) => options.filter((one) => one.present === present).map(({ option }) => the(option));
  const groups: [string, string[], 'and' | 'or'][] = [
    ['with', named(true), 'and'],
    ['without', named(false), 'or'],
  ];
  return groups.flatMap(([word, names, last]) => (names.length === 0 ? [] : [`${start} ${word} ${list(names, last)}`]));
}

function valueWords(value: string, kind: 'identified' | 'renewal'): string {
  return kind === 'renewal' && value === 're-used' ? 'used again' : value;
}

const noBandWords: { readonly [Why in NoBand]: string } = {
  'no-thread': 'no thread stated',
  'odd-thread': 'thread not in the tables',
  'no-class': 'no class stated',
  'odd-class': 'class not in the tables',
  'no-strength': 'no strength of this class for this size',
  angle: 'an angle follows, and decides',
};

function bandWords({ thread, propertyClass, standard, unknown, hasPrevailing }: BandJoint): string {
  const named = propertyClass.startsWith('grade ') ? propertyClass : `class ${propertyClass}`;
  const rest = [
    ...(unknown.length === 0 ? [] : [`class of ${list(unknown.map(the), 'and')} not known`]),
    ...(hasPrevailing ? ['without the prevailing torque'] : []),
  ];
  return [`Computed for ${thread}, ${named} (strength from ${standard}); not the maker’s value`, ...rest].join('; ');
}

export const englishPhrases: Phrases = {
  build: buildWords,
  kit: (number, revision) => `${number} revision ${revision}`,
  clause: (alternatives) => alternatives.map(alternativeWords).join(', or '),
  onlyWhen: (clause) => `Only when ${clause}`,
  when: (clause) => `When ${clause}`,
  valueWhen: (value, clause) => `${value} when ${clause}`,
  hold: (hold) =>
    join(
      'Hold ',
      grammar.withArticle(hold.at),
      hold.with.length > 0 && join(' with ', grammar.and(hold.with.map(grammar.the))),
      '.',
    ),
  inOrder: (names) => `In the order ${grammar.series(names)}`,
  plus: (torque, reading) => `${torque} + ${reading}`,
  range: (low, high, unit) => `${low} to ${high} ${unit}`,
  bandOf: bandWords,
  noBand: (why) => noBandWords[why],
  atMost: (value) => `at most ${value}`,
  atLeast: (value) => `at least ${value}`,
  piecesOf: (thing, count) => capital(pieces(thing, count)),
  pieces,
  found: (value) => value,
  notStated: 'not stated: ask before you go on',
  torqueToSet: 'Torque to set',
  sizeChosen: 'Size chosen',
  serialNumberOf: (part) => `Serial number of ${plain(grammar.the(part))}`,
  planes: (count) => Array.from({ length: count }, (_, index) => `Plane ${index + 1}`),
  residualUnbalance: (group) => `Residual unbalance of ${the(group)}`,
  replace: (parts) => join('Replace ', grammar.and(parts.map(grammar.the)), '.'),
  rejectParts: (parts) => join('Reject ', grammar.and(parts.map(grammar.the)), '. Stop and ask.'),
  rejectUnit: join('Reject the unit. Stop and ask.'),
  goBack: (step, atMost) => join('Go back to ', step, atMost !== undefined && `, at most ${times(atMost)}`, '.'),
  stillNot: (then) => join('If it is still not right: ', then),
  step: (number) => `step ${number}`,
  stepElsewhere: (title) => `step “${title}” (not on this sheet)`,
  figure: (name) => `figure “${name}”`,
  arrivedWith: (option) => `The unit arrived with ${the(option)}`,
  yes: 'Yes',
  no: 'No',
  signer: (role) => (role === 'customer' ? 'the customer' : role),
  protection: (of) =>
    ({ eyes: 'eye protection', skin: 'protective gloves', breath: 'breathing protection or good ventilation' })[of],
  superseded: (number, by) => `${number} (superseded by ${by})`,
};

function pieces(thing: Thing, count: number, of = count): string {
  if (count < of) return `${pluralName(thing)} (${count} of ${of})`;
  return count > 1 ? `${pluralName(thing)} (${count})` : thing.name;
}

function times(count: number): string {
  if (count === 1) return 'once';
  return count === 2 ? 'twice' : `${count} times`;
}
