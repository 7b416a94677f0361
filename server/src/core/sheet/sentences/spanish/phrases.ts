import { capital, join, plain, type Thing, text } from '../grammar';
import type { Alternative, BandJoint, NamedBuild, NoBand, Phrases, Way } from '../language';
import { foundWord } from './foundWords';
import { contracted, contractedText, spanishGrammar as grammar } from './grammar';
import { nounOf, pluralName } from './nouns';
import { nounOfThing } from './thingNouns';
import { holdSentence } from './words';

const list = (items: readonly string[], last: 'and' | 'or'): string =>
  plain((last === 'and' ? grammar.and : grammar.or)(items.map((item) => [text(item)])));

const the = (thing: Thing): string => plain(grammar.the({ ...thing, count: 1 }));

function alternativeWords({ variants, finished, arrived, found, ways }: Alternative): string {
  const clauses = [
    ...(variants.length === 0 ? [] : [`la unidad es ${list(variants, 'or')}`]),
    ...optionWords('la unidad sale', finished),
    ...optionWords('la unidad llegó', arrived),
    ...found.map(foundWords),
    ...ways.map(wayWords),
  ];
  return list(clauses, 'and');
}

function foundWords({ what, values, kind }: Alternative['found'][number]): string {
  const { plural } = nounOfThing(what);
  if (kind === 'identified')
    return `${the(what)} ${plural ? 'son' : 'es'} ${list(
      values.map((value) => foundWord(value, what.name)),
      'or',
    )}`;
  return `${the(what)} ${list(
    values.map((value) => renewalWords(plural, value)),
    'or',
  )}`;
}

/** `se usa de nuevo`, which agrees in number and needs no gender. */
function renewalWords(plural: boolean, value: string): string {
  if (value === 're-used') return plural ? 'se usan de nuevo' : 'se usa de nuevo';
  return plural ? 'se renuevan' : 'se renueva';
}

function wayWords(way: Way): string {
  if (way.is === 'optional') return `el paso «${way.title}» ${way.done ? 'se realiza' : 'se omite'}`;
  if (way.is === 'check') return `${way.holds ? 'se cumple' : 'no se cumple'} «${way.said}»`;
  return `el resultado de ${way.what === undefined ? 'la comprobación' : the(way.what)} ${way.right ? 'es correcto' : 'no es correcto'}`;
}

function optionWords(start: string, options: readonly { option: Thing; present: boolean }[]): string[] {
  const named = (present: boolean) => options.filter((one) => one.present === present).map(({ option }) => the(option));
  const [present, absent] = [named(true), named(false)];
  return [
    ...(present.length === 0 ? [] : [`${start} con ${list(present, 'and')}`]),
    ...(absent.length === 0 ? [] : [`${start} sin ${absent.join(' ni ')}`]),
  ];
}

function buildWords({ variant, finished, arrives }: NamedBuild): string {
  const label = [...(variant === undefined ? [] : [variant]), ...finished.map(bareName)].join(' + ');
  const built = label === '' ? 'sin opciones' : label;
  if (arrives === undefined) return built;
  return `${built}, recibida ${arrives.length === 0 ? 'sin opciones' : `con ${arrives.map(bareName).join(' + ')}`}`;
}

function bareName(thing: Thing): string {
  return nounOfThing(thing).name;
}

const noBandWords: { readonly [Why in NoBand]: string } = {
  'no-thread': 'rosca no indicada',
  'odd-thread': 'rosca fuera de las tablas',
  'no-class': 'clase no indicada',
  'odd-class': 'clase fuera de las tablas',
  'no-strength': 'sin resistencia de esta clase para este tamaño',
  angle: 'sigue un ángulo, y este decide',
};

function bandWords({ thread, propertyClass, standard, unknown, hasPrevailing }: BandJoint): string {
  const named = propertyClass.startsWith('grade ') ? `grado ${propertyClass.slice(6)}` : `clase ${propertyClass}`;
  const rest = [
    ...(unknown.length === 0 ? [] : [contractedText(`clase de ${list(unknown.map(the), 'and')} desconocida`)]),
    ...(hasPrevailing ? ['sin el par de frenado'] : []),
  ];
  return [
    `Calculado para ${thread}, ${named} (resistencia según ${standard}); no es el valor del fabricante`,
    ...rest,
  ].join('; ');
}

export const spanishPhrases: Phrases = {
  build: buildWords,
  kit: (number, revision) => `${number} revisión ${revision}`,
  clause: (alternatives) => contractedText(alternatives.map(alternativeWords).join(', o bien ')),
  onlyWhen: (clause) => `Solo si ${clause}`,
  when: (clause) => `Si ${clause}`,
  valueWhen: (value, clause) => `${value} si ${clause}`,
  hold: (hold) => contracted(holdSentence({ hold })),
  inOrder: (names) => `En el orden ${grammar.series(names)}`,
  plus: (torque, reading) => `${torque} + ${nounOf(reading).name}`,
  range: (low, high, unit) => `${low} a ${high} ${unit}`,
  bandOf: bandWords,
  noBand: (why) => noBandWords[why],
  atMost: (value) => `como máximo ${value}`,
  atLeast: (value) => `como mínimo ${value}`,
  piecesOf: (thing, count) => capital(pieces(thing, count)),
  pieces,
  found: (value) => foundWord(value),
  notStated: 'no indicado: pregunte antes de seguir',
  torqueToSet: 'Par que hay que ajustar',
  sizeChosen: 'Medida elegida',
  serialNumberOf: (part) => contractedText(`Número de serie de ${plain(grammar.the(part))}`),
  planes: (count) => Array.from({ length: count }, (_, index) => `Plano ${index + 1}`),
  residualUnbalance: (group) => contractedText(`Desequilibrio residual de ${the(group)}`),
  replace: (parts) => join('Sustituya ', grammar.and(parts.map(grammar.the)), '.'),
  rejectParts: (parts) => join('Rechace ', grammar.and(parts.map(grammar.the)), '. Pare y pregunte.'),
  rejectUnit: join('Rechace la unidad. Pare y pregunte.'),
  goBack: (step, atMost) => join('Vuelva al ', step, atMost !== undefined && `, como máximo ${times(atMost)}`, '.'),
  stillNot: (then) => join('Si sigue sin estar bien: ', then),
  step: (number) => `paso ${number}`,
  stepElsewhere: (title) => `paso «${title}» (no está en esta hoja)`,
  figure: (name) => `figura «${name}»`,
  arrivedWith: (option) => `La unidad llegó con ${the(option)}`,
  yes: 'Sí',
  no: 'No',
  signer: (role) =>
    ({ fitter: 'mecánico', inspector: 'inspector', supervisor: 'supervisor', customer: 'el cliente' })[role],
  protection: (of) =>
    ({
      eyes: 'protección ocular',
      skin: 'guantes de protección',
      breath: 'protección respiratoria o buena ventilación',
    })[of],
  superseded: (number, by) => `${number} (sustituido por ${by})`,
};

function pieces(thing: Thing, count: number, of = count): string {
  const noun = nounOfThing(thing);
  if (count < of) return `${pluralName(noun)} (${count} de ${of})`;
  return count > 1 ? `${pluralName(noun)} (${count})` : noun.name;
}

function times(count: number): string {
  if (count === 1) return 'una vez';
  return count === 2 ? 'dos veces' : `${count} veces`;
}
