import { conditionOf, FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import { buildsRow } from './buildWords';
import { type Card, type CardRow, row } from './card';
import type { Scene } from './scene';
import { stepNames, stepsRow } from './stepRows';
import { verbOf } from './stepUses';

/** What only the bench can tell: what it may turn out to be, and where it is found out. */
export function outcomeCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const identify = FamilyView.of(document)?.value.identify?.find((one) => one.id === declared)?.value;
  if (identify === undefined) return undefined;
  return {
    name,
    kind: 'found on the bench',
    id,
    rows: [
      ...row('May be', (identify.values ?? []).map(({ text }) => text).join(', ')),
      ...buildsRow('Open on', scene.space?.set(conditionOf(identify)), scene.space),
      ...identifyRows(scene, id),
      ...row('Note', identify.note?.text),
    ],
  };
}

/** One value of what the bench finds, or whether a part was re-used or renewed. */
export function valueCard(scene: Scene, of: NamedThing, value: string): Card | undefined {
  const { space } = scene;
  const where = space?.set({ kind: 'outcome', name: of.id, value });
  const name = of.kind === 'part' ? `${of.name}: ${value}` : `${of.name} is ${value}`;
  return {
    name,
    kind: of.kind === 'part' ? 'what becomes of a part' : 'found on the bench',
    id: `${of.id}=${value}`,
    rows: [
      ...buildsRow('Holds on', where, space),
      ...(of.kind === 'part' ? dispositionRows(scene, of.id) : identifyRows(scene, of.id)),
    ],
  };
}

function identifyRows(scene: Scene, id: string): CardRow[] {
  const uses = scene.uses.of('outcome', id);
  const found = uses.filter((use) => verbOf(use) === 'identify');
  const nowhere = scene.procedure !== undefined && found.length === 0;
  return [
    ...row('Found out in', nowhere ? ['no step of this procedure'] : stepNames(found)),
    ...stepsRow(
      'Decides in',
      uses.filter((use) => use.key === 'when'),
    ),
  ];
}

/** A part is judged where it is inspected, and renewed where something that is not as it should be says so. */
function dispositionRows(scene: Scene, part: string): CardRow[] {
  const uses = scene.uses.of('part', part);
  const judged = uses.filter((use) => use.key === 'replace' || ['inspect', 'discard'].includes(verbOf(use) ?? ''));
  const nowhere = scene.procedure !== undefined && judged.length === 0;
  return row('Judged in', nowhere ? ['no step of this procedure'] : stepNames(judged));
}
