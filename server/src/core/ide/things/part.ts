import { FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import { buildsRow, valueLines } from './buildWords';
import { type Card, type CardRow, row, sideRow } from './card';
import { kitRows } from './kitLine';
import { fasteningRows } from './partThread';
import { quantityText } from './quantityWords';
import type { Scene } from './scene';
import { workRows } from './stepRows';

/** What `renew` means for the one who rebuilds the unit. */
const RENEWAL = {
  always: 'always: a new one each time',
  'on-condition': 'on condition: inspected, then re-used or renewed',
  never: 'never as part of the work',
} as const;

/** A part with all that its family, the kits and the procedure say of it. */
export function partCard(scene: Scene, { id, name, document }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const part = family?.part(id);
  if (family === undefined || part === undefined) return undefined;
  const { space } = scene;
  const present = space === undefined ? undefined : presentBuilds(family, space, id);
  return {
    name,
    kind: part.temporary?.value === true ? 'temporary part' : kindText(part),
    id,
    rows: [
      ...buildsRow('Exists on', present, space),
      ...row('Takes the place of', namesOf(family, part.insteadOf)),
      ...fasteningRows(scene, id, part, present),
      ...renewRows(part),
      ...kitRows(scene, id),
      ...row(
        'Part number',
        valueLines(part.number, space, present, ({ text }) => text),
      ),
      ...row(
        'Pieces',
        valueLines(part.quantity, space, present, ({ node }) => node.text).filter((one) => one !== '1'),
      ),
      ...row('Sizes', sizesText(part)),
      ...relationRows(family, part),
      ...workRows(scene.uses.of('part', id)),
      ...sideRow('Note', part.note?.text),
    ],
  };
}

function kindText({ kind }: Part): string {
  return kind?.value === undefined ? 'part' : `part: ${kind.value.replaceAll('-', ' ')}`;
}

/** What its family says nothing of is never renewed, and the rest need not be told. */
function renewRows({ renew, beforeFitting }: Part): CardRow[] {
  const before = (beforeFitting ?? []).flatMap(({ value }) => value ?? []);
  return [
    ...row('Renewed', renew?.value === undefined ? undefined : RENEWAL[renew.value]),
    ...sideRow('Before fitting', before.join(', ')),
  ];
}

function relationRows(family: FamilyView, part: Part): CardRow[] {
  const { sitsOn, fastenedBy, behind, seals, comesWith, locate, orient } = part;
  return [
    ...sideRow(
      'Sits on',
      namesOf(
        family,
        sitsOn?.map(({ ref }) => ref),
      ),
    ),
    ...sideRow('Held by', namesOf(family, fastenedBy)),
    ...sideRow('First off', namesOf(family, behind)),
    ...sideRow('Seals', namesOf(family, seals)),
    ...sideRow('Comes with', namesOf(family, comesWith)),
    ...sideRow('Position', [[orient?.text, locate?.text].filter((one) => one !== undefined).join('; ')]),
  ];
}

function namesOf(family: FamilyView, refs: readonly Ref[] | undefined): string {
  return (refs ?? []).map(({ id }) => family.nameOf(id)).join(', ');
}

function sizesText({ sizes, sizeStep }: Part): string | undefined {
  if (sizes === undefined) return undefined;
  return [quantityText(sizes), ...(sizeStep === undefined ? [] : [`in steps of ${quantityText(sizeStep)}`])].join(' ');
}
