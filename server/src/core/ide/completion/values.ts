import { documentValue } from '../../analysis/documentUnit';
import type { ScalarShape } from '../../model/shape';
import { type Candidate, NOTHING } from './candidate';
import { conditionCandidates } from './conditionNames';
import { idCandidates, othersInList, signedCandidates, things } from './ids';
import { pathCandidates } from './paths';
import type { CompletionScene } from './scene';
import { standardTexts } from './standardTexts';
import { statedValues } from './statedValues';
import { symbolCandidates } from './units';

/** What a scalar at a place may be, a quantity and a text for people aside, as far as there is anything to choose from. */
export function scalarCandidates(scene: CompletionScene, shape: ScalarShape): readonly Candidate[] {
  switch (shape.is) {
    case 'choice':
      return wordsExcept(shape.choices, othersInList(scene));
    case 'flag':
      return wordsExcept(['true', 'false'], []);
    case 'ref':
      return idCandidates(scene, shape);
    case 'ref-or-prose':
      return things(scene, shape.kind);
    case 'signed':
      return signedCandidates(scene, shape);
    case 'path':
      return pathCandidates(scene, shape.to);
    case 'quantity':
      return quantityCandidates(scene);
    case 'text':
      return textCandidates(scene);
    default:
      return NOTHING;
  }
}

function wordsExcept(words: readonly string[], taken: readonly string[]): Candidate[] {
  return words.filter((word) => !taken.includes(word)).map((label) => ({ kind: 'word', label }));
}

/** The words that may stand in place of a quantity, and what the family states for just this place. */
function quantityCandidates(scene: CompletionScene): Candidate[] {
  const { def, path } = scene.place;
  const isOwn = path[0] === 'accept' && def.startsWith('procedure/');
  const words = isOwn ? ['record-only'] : def === 'procedure/verb-wait' ? ['cure'] : [];
  const stated = new Set(statedValues(scene).map(({ text }) => text.trim()));
  return [
    ...[...stated].map((label): Candidate => ({ kind: 'value', label, why: 'as the family states' })),
    ...words.map((label): Candidate => ({ kind: 'word', label })),
  ];
}

/** The few texts that come from a list which a place alone tells. */
function textCandidates(scene: CompletionScene): readonly Candidate[] {
  const { place } = scene;
  const [first = '', second = ''] = place.path;
  if (place.def === 'settings' && first === 'units') return symbolCandidates(second, othersInList(scene));
  if (place.def === 'procedure/concession' && first === 'about') return aboutCandidates(scene);
  if (place.def === 'kit/line') return first === 'replaces' || first === 'superseded-by' ? numbersOf(scene) : NOTHING;
  return standardTexts(first);
}

/** The part numbers of the other lines of a kit. */
function numbersOf(scene: CompletionScene): Candidate[] {
  const taken = new Set(othersInList(scene));
  const { document, names } = scene;
  return (documentValue(document, 'kit')?.lines ?? []).flatMap(({ number, part }): Candidate[] => {
    if (number === undefined || taken.has(number.text)) return [];
    const detail = part === undefined ? undefined : names.find('part', part.id)?.name;
    return [{ kind: 'word', label: number.text, detail }];
  });
}

const ABOUT_KINDS = ['part', 'tool', 'consumable', 'limit', 'reading', 'check', 'figure', 'option', 'variant'] as const;

function aboutCandidates(scene: CompletionScene): Candidate[] {
  const taken = new Set(othersInList(scene));
  const all = ABOUT_KINDS.flatMap((kind) => things(scene, kind));
  return [...new Map(all.map((one) => [one.label, one])).values()].filter(({ label }) => !taken.has(label));
}

/** The names of a condition, less those that its list has. */
export function conditionValues(scene: CompletionScene): Candidate[] {
  const taken = new Set(othersInList(scene));
  return conditionCandidates(scene).filter(({ label }) => !taken.has(label));
}
