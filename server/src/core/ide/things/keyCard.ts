import { conditionOf } from '../../analysis/familyView';
import type { KitView } from '../../analysis/kitView';
import type { Line } from '../../model/generated/types';
import type { NodePath } from '../nodePath';
import { buildsText } from './buildWords';
import { type Card, row } from './card';
import { conditionCard } from './condition';
import { conditionBehindKey } from './conditionAt';
import { kitLineCard } from './kitLine';
import type { Scene } from './scene';
import { stepCard } from './step';

/** What is known of what a key, or a value that is no id, stands for: a condition, a step, a phase, a line of a kit. */
export function keyCard(scene: Scene, path: NodePath): Card | undefined {
  const line = path.pairs.length >= 2 ? kitLineOf(scene, path) : undefined;
  if (line !== undefined) return kitLineCard(scene, line.kit, line.line);
  if (!path.isKey) return undefined;
  const key = path.scalar.text;
  if (['when', 'unless', 'all', 'any', 'none'].includes(key)) {
    const expr = conditionBehindKey(path);
    return expr === undefined ? undefined : conditionCard(scene, expr, key);
  }
  if (key === 'step') return stepAt(scene, path);
  return key === 'phase' ? phaseAt(scene, path) : undefined;
}

/** The line in which something stands that says of itself too little: its number, item, quantity. */
function kitLineOf({ kits, document }: Scene, { nodes, pairs }: NodePath): { kit: KitView; line: Line } | undefined {
  if (document.kind !== 'kit' || !['item', 'number', 'part', 'quantity'].includes(pairs.at(-1)?.key.text ?? '')) {
    return undefined;
  }
  for (const kit of kits) {
    const line = kit.lines.find(({ node }) => nodes.includes(node));
    if (line !== undefined) return { kit, line };
  }
  return undefined;
}

function stepAt(scene: Scene, { nodes }: NodePath): Card | undefined {
  const view = scene.procedure?.steps.find(({ step }) => nodes.includes(step.node));
  return view === undefined ? undefined : stepCard(scene, view);
}

function phaseAt(scene: Scene, { nodes }: NodePath): Card | undefined {
  const phase = scene.procedure?.value.phases?.find(({ node }) => nodes.includes(node));
  if (phase === undefined) return undefined;
  const { space } = scene;
  const steps = phase.steps?.length ?? 0;
  return {
    name: phase.phase?.text ?? 'Phase without a name',
    kind: 'phase',
    id: undefined,
    rows: [
      ...(space === undefined ? [] : row('For', buildsText(space.set(conditionOf(phase)), space))),
      ...row('Steps', String(steps)),
    ],
  };
}
