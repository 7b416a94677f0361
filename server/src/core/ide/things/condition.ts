import { type ConditionExpr, conditionAtoms } from '../../builds';
import { buildsText, namedBuildsRow } from './buildWords';
import { type Card, type CardRow, row } from './card';
import type { Scene } from './scene';
import { stepNames } from './stepRows';
import { verbOf } from './stepUses';

/** A condition: the builds and outcomes that meet it. Undefined where no family says what it means. */
export function conditionCard(scene: Scene, expr: ConditionExpr, key: string): Card | undefined {
  if (scene.space === undefined) return undefined;
  return { name: key, kind: 'condition', id: undefined, rows: conditionRows(scene, expr) };
}

/** The builds that meet a condition, in words and by name, and where the bench finds out what it asks. */
export function conditionRows(scene: Scene, expr: ConditionExpr): CardRow[] {
  const { space } = scene;
  if (space === undefined) return [];
  const set = space.set(expr);
  const unknown = space.unknownNames(expr).map(({ text }) => text);
  return [
    ...row('Met by', buildsText(set, space)),
    ...(set.isEverything || set.isEmpty ? [] : namedBuildsRow('By name', set, space)),
    ...row('Found out in', outcomeSteps(scene, expr)),
    ...row('Unknown', unknown.join(', ')),
  ];
}

function outcomeSteps(scene: Scene, expr: ConditionExpr): string[] {
  const names = [...conditionAtoms(expr)].flatMap((atom) => (atom.kind === 'outcome' ? [atom.name] : []));
  const uses = [...new Set(names)].flatMap((name) => scene.uses.of('outcome', name));
  return stepNames(uses.filter((use) => verbOf(use) === 'identify'));
}
