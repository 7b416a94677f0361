import { conditionOf } from '../../analysis/familyView';
import type { KitView } from '../../analysis/kitView';
import type { BuildSet } from '../../builds';
import type { Line } from '../../model/generated/types';
import { unitOf } from '../../model/readUnit';
import type { Ref } from '../../model/values';
import { listed } from '../../rules/support/phrases';
import { cardMarkdown, cardText } from '../things/card';
import { kitLineCard } from '../things/kitLine';
import type { Scene } from '../things/scene';
import type { HintFinder, InlayHint } from './hint';
import { instructionsWithin } from './instructionsWithin';

/** The keys behind which a part comes out of the box. */
const FITTED = ['install', 'replace'];

/** The item number of the kit line that supplies a part, behind the part where it is fitted. */
export const kitItemHints: HintFinder = (scene, within) =>
  scene.kits.length === 0
    ? []
    : instructionsWithin(scene, within).flatMap(({ instruction, where }) => {
        const refs = unitOf(instruction.node)?.facts.refs ?? [];
        return refs.flatMap(({ key, ref }) => (FITTED.includes(key) ? (hintOf(scene, where, ref) ?? []) : []));
      });

interface Supply {
  readonly kit: KitView;
  readonly line: Line;
}

function hintOf(scene: Scene, where: BuildSet, ref: Ref): InlayHint | undefined {
  if (ref.kind !== 'part') return undefined;
  const supplies = suppliesOf(scene, ref.id, where);
  if (supplies.length === 0) return undefined;
  return {
    kind: 'kit-item',
    offset: scene.document.spanOf(ref.range).end,
    label: labelOf(scene, supplies),
    detail: () => {
      const cards = supplies.map(({ kit, line }) => kitLineCard(scene, kit, line));
      return { markdown: cards.map(cardMarkdown).join('\n\n'), plain: cards.map(cardText).join('\n\n') };
    },
  };
}

/** The lines for a part that are for some build of the instruction. */
function suppliesOf({ kits, space }: Scene, part: string, where: BuildSet): Supply[] {
  return kits.flatMap((kit) =>
    kit.lines.flatMap((line) => {
      const isFor = line.part?.id === part && line.item !== undefined;
      return isFor && (space === undefined || space.set(conditionOf(line)).overlaps(where)) ? [{ kit, line }] : [];
    }),
  );
}

/** `item 20 or 21`; with the number of the kit where the procedure has several. */
function labelOf({ kits }: Scene, supplies: readonly Supply[]): string {
  const items = supplies.map(({ kit, line }) => {
    const item = line.item?.text ?? '';
    return kits.length > 1 && kit.value.kit !== undefined ? `${item} of ${kit.value.kit.text}` : item;
  });
  return `item ${listed([...new Set(items)], 'or')}`;
}
