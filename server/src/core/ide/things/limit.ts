import { documentValue } from '../../analysis/documentUnit';
import { conditionOf, FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import type { Limit } from '../../model/generated/types';
import type { SignedTerm } from '../../model/values';
import { buildsRow, valueLines } from './buildWords';
import { type Card, row, sideRow } from './card';
import { quantityInUnits, quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepNames, stepsRow } from './stepRows';
import { type StepUse, verbOf } from './stepUses';

/** A limit of the family: what is accepted, from what it follows, and where it is measured. */
export function limitCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const limit = family?.value.limits?.find((one) => one.id === declared)?.value;
  if (family === undefined || limit === undefined) return undefined;
  const { space } = scene;
  const where = space?.set(conditionOf(limit));
  return {
    name,
    kind: 'limit',
    id,
    rows: [
      ...buildsRow('Holds on', where, space),
      ...sideRow('Accept', valueLines(limit.accept, space, where, quantityInUnits)),
      ...sideRow('Follows from', chainText(limit)),
      ...row('Places', (limit.places ?? []).map(({ text }) => text).join(', ')),
      ...row('Void by', (limit.voidBy ?? []).map((ref) => family.nameOf(ref.id)).join(', ')),
      ...readingRows(scene.uses.of('limit', id), space !== undefined && scene.procedure !== undefined),
      ...row('Note', limit.note?.text),
    ],
  };
}

/** A value that is read on the bench and used later; the family or the procedure declares it. */
export function readingCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const declaring = documentValue(document, 'family') ?? documentValue(document, 'procedure');
  const reading = declaring?.readings?.find((one) => one.id === declared)?.value;
  if (reading === undefined) return undefined;
  const { space } = scene;
  return {
    name,
    kind: reading.quantity?.value === undefined ? 'reading' : `reading: ${reading.quantity.value.replaceAll('-', ' ')}`,
    id,
    rows: [
      ...sideRow('Accept', valueLines(reading.accept, space, space?.everything, quantityInUnits)),
      ...readingRows(scene.uses.of('reading', id), scene.procedure !== undefined),
      ...row('Note', reading.note?.text),
    ],
  };
}

function readingRows(uses: readonly StepUse[], inProcedure: boolean) {
  const read = uses.filter((use) => ['measure', 'calculate'].includes(verbOf(use) ?? ''));
  const others = uses.filter((use) => !read.includes(use));
  const never = inProcedure && read.length === 0 ? ['no step of this procedure'] : stepNames(read);
  return [...row('Measured in', never), ...stepsRow('Used in', others)];
}

function chainText({ from }: Limit): string {
  return (from ?? []).map(termText).join(' ').replace(/^\+ /, '');
}

function termText({ sign, term }: SignedTerm): string {
  return `${sign < 0 ? '−' : '+'} ${'id' in term ? term.id : quantityText(term)}`;
}
