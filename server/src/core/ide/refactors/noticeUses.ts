import type { ProcedureView } from '../../analysis/procedureView';
import type { Phase } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type { MapNode, Node, ScalarNode } from '../../syntax/node';

export const NOTICE_KEYS = ['warning', 'caution', 'notice'] as const;
export type NoticeKey = (typeof NOTICE_KEYS)[number];

/** A warning, caution or notice where it stands: of an instruction, of a step, or of a phase. */
export interface NoticeUse {
  readonly key: NoticeKey;
  readonly text: string;
  readonly node: ScalarNode;
  /** The map in which its key stands. */
  readonly map: MapNode;
  readonly of: 'instruction' | 'step' | 'phase';
  /** Place of the step in the procedure; undefined for one of a phase. */
  readonly step: number | undefined;
  readonly phase: Phase;
}

type Owner = { readonly node: Node } & { readonly [Key in NoticeKey]?: readonly Prose[] };

/** All notices of the phases, in the order of the text. Those with translations are left out: each is worded for its place. */
export function noticeUses({ phases }: ProcedureView): NoticeUse[] {
  const ofPhases = phases.flatMap(({ phase }) => usesOf(phase, { of: 'phase', step: undefined, phase }));
  const placed = phases.flatMap(({ phase, steps }) => steps.map((view) => ({ phase, view })));
  const ofSteps = placed.flatMap(({ phase, view: { step, instructions } }, i) => [
    ...usesOf(step, { of: 'step', step: i, phase }),
    // What is done when something is not right is warned of there.
    ...instructions.flatMap(({ instruction, nested }) =>
      nested ? [] : usesOf(instruction as Owner, { of: 'instruction', step: i, phase }),
    ),
  ]);
  return [...ofPhases, ...ofSteps];
}

function usesOf(owner: Owner, where: Pick<NoticeUse, 'of' | 'step' | 'phase'>): NoticeUse[] {
  const { node: map } = owner;
  if (map.kind !== 'map') return [];
  return NOTICE_KEYS.flatMap((key) =>
    (owner[key] ?? []).flatMap(({ node, text }) =>
      node.kind === 'scalar' && text !== '' ? [{ key, text, node, map, ...where }] : [],
    ),
  );
}
