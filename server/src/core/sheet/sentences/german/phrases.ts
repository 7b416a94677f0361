import { capital, closed, join, plain, sentences, type Thing } from '../grammar';
import type { BandJoint, NamedBuild, NoBand, Phrases } from '../language';
import { clauseWords } from './clauses';
import { foundWord } from './foundWords';
import { germanGrammar as grammar, named, nounOfThing, whose, withDefinite } from './grammar';
import { decline } from './nouns';
import { decimalComma } from './numbers';
import { holdWords, sentence } from './words';

const noBandWords: { readonly [Why in NoBand]: string } = {
  'no-thread': 'kein Gewinde angegeben',
  'odd-thread': 'Gewinde nicht in den Tabellen',
  'no-class': 'keine Festigkeitsklasse angegeben',
  'odd-class': 'Festigkeitsklasse nicht in den Tabellen',
  'no-strength': 'keine Festigkeit dieser Klasse für diese Größe',
  angle: 'ein Drehwinkel folgt und entscheidet',
};

function bandWords({ thread, propertyClass, standard, unknown, hasPrevailing }: BandJoint): string {
  const grade = propertyClass.replace(/^grade /u, '');
  const classWords = grade === propertyClass ? `Festigkeitsklasse ${propertyClass}` : `Grade ${grade}`;
  const rest = [
    ...(unknown.length === 0 ? [] : [`Festigkeitsklasse${plain(whose(unknown.map(single)))} nicht bekannt`]),
    ...(hasPrevailing ? ['ohne das Losdrehmoment der Klemmung'] : []),
  ];
  return [
    `Errechnet für ${decimalComma(thread)}, ${classWords} (Festigkeit nach ${standard}); kein Wert des Herstellers`,
    ...rest,
  ].join('; ');
}

const single = (thing: Thing): Thing => ({ ...thing, count: 1 });

const accusatives = (parts: readonly Thing[]) => grammar.and(parts.map((thing) => named(thing, 'accusative')));

function buildWords({ variant, finished, arrives }: NamedBuild): string {
  const listed = (options: readonly Thing[]) => options.map(({ name }) => name).join(' + ') || 'ohne Optionen';
  const label = [...(variant === undefined ? [] : [variant]), ...finished.map(({ name }) => name)].join(' + ');
  const built = label === '' ? 'ohne Optionen' : label;
  return arrives === undefined ? built : `${built}, angeliefert: ${listed(arrives)}`;
}

export const germanPhrases: Phrases = {
  build: buildWords,
  kit: (number, revision) => `${number} Revision ${revision}`,
  clause: clauseWords,
  onlyWhen: (clause) => `Nur wenn ${clause}`,
  when: (clause) => `Wenn ${clause}`,
  valueWhen: (value, clause) => `${value}, wenn ${clause}`,
  hold: holdWords,
  inOrder: (names) => `In der Reihenfolge ${grammar.series(names)}`,
  plus: (torque, reading) => `${torque} + ${reading}`,
  range: (low, high, unit) => `${low} bis ${high} ${unit}`,
  bandOf: bandWords,
  noBand: (why) => noBandWords[why],
  atMost: (value) => `höchstens ${value}`,
  atLeast: (value) => `mindestens ${value}`,
  piecesOf: (thing, count) => capital(pieces(thing, count)),
  pieces,
  found: foundWord,
  notStated: 'nicht angegeben: vor dem Weiterarbeiten nachfragen',
  torqueToSet: 'Einzustellendes Drehmoment',
  sizeChosen: 'Gewählte Größe',
  serialNumberOf: (part) => `Seriennummer${plain(whose([single(part)]))}`,
  planes: (count) => Array.from({ length: count }, (_, index) => `Ebene ${index + 1}`),
  residualUnbalance: (group) => `Restunwucht${plain(whose([group]))}`,
  replace: (parts) => sentence(accusatives(parts), ' ersetzen'),
  rejectParts: (parts) => sentences(sentence(accusatives(parts), ' sperren'), 'Arbeit anhalten und nachfragen.'),
  rejectUnit: join('Turbolader sperren. Arbeit anhalten und nachfragen.'),
  goBack: (step, atMost) => join('Zurück zu ', step, atMost !== undefined && `, höchstens ${times(atMost)}`, '.'),
  stillNot: (then) => join('Wenn dann noch immer nicht in Ordnung: ', closed(then)),
  step: (number) => `Schritt ${number}`,
  stepElsewhere: (title) => `Schritt „${title}“ (nicht auf diesem Blatt)`,
  figure: (name) => `Abbildung „${name}“`,
  arrivedWith: (option) => `Turbolader angeliefert mit ${plain(withDefinite(single(option), 'dative'))}`,
  yes: 'Ja',
  no: 'Nein',
  signer: (role) => ({ fitter: 'Monteur', inspector: 'Prüfer', supervisor: 'Aufsicht', customer: 'Kunde' })[role],
  protection: (of) => ({ eyes: 'Augenschutz', skin: 'Schutzhandschuhe', breath: 'Atemschutz oder gute Lüftung' })[of],
  superseded: (number, by) => `${number} (ersetzt durch ${by})`,
};

function pieces(thing: Thing, count: number, of = count): string {
  const noun = nounOfThing(thing);
  const many = noun?.headPlural === undefined ? thing.name : decline(noun, 'nominative', 'none', true);
  if (count < of) return `${many} (${count} von ${of})`;
  return count > 1 ? `${many} (${count})` : thing.name;
}

function times(count: number): string {
  const words = ['nie', 'einmal', 'zweimal', 'dreimal'];
  return words[count] ?? `${count}-mal`;
}
