import type { Aspect, BuildSet, ConditionExpr } from '../../../builds';
import { parseConditionText } from '../../../builds';
import type { Instruction } from '../../../model/generated/types';
import type { EntryLines } from './block';
import type { Place, Scene } from './scene';

/**
 * The conditions that a new instruction beside another may have, as lines: those of its neighbour, and those that hold
 * for just the builds of the failure where they can be said in two names. `exactly` puts the latter first.
 */
export function conditionsBeside(scene: Scene, beside: Place, exactly: boolean, where: BuildSet): EntryLines[] {
  const own = ownConditions(beside.view.instruction);
  if (own === undefined) return [];
  const exact = where.equals(beside.view.where) ? undefined : exactCondition(scene, beside.step.where, where);
  const known = exact === undefined ? [] : [exact];
  return unlike(exactly ? [...known, [], own] : [own, ...known]);
}

function unlike(conditions: readonly EntryLines[]): EntryLines[] {
  return [...new Map(conditions.map((lines) => [lines.join('\n'), lines])).values()];
}

function conditionAmong(
  sets: readonly { readonly name: string; readonly set: BuildSet }[],
  within: BuildSet,
  wanted: BuildSet,
): EntryLines | undefined {
  const when = sets.find(({ set }) => within.and(set).equals(wanted));
  if (when !== undefined) return [`when: ${when.name}`];
  const unless = sets.find(({ set }) => within.minus(set).equals(wanted));
  return unless === undefined ? undefined : [`unless: ${unless.name}`];
}

/** The condition lines of an instruction as they are written; undefined where one takes several lines. */
function ownConditions({ node }: Instruction): EntryLines | undefined {
  if (node.kind !== 'map') return [];
  const lines = node.pairs.flatMap(({ key, value }) =>
    value !== undefined && (key.text === 'when' || key.text === 'unless')
      ? [`${key.text}: ${value.item.text.slice(value.from, value.to).trimEnd()}`]
      : [],
  );
  return lines.some((line) => line.includes('\n')) ? undefined : lines;
}

/** The condition under which, within some builds, just the wanted ones are left. */
function exactCondition(
  { procedure: { space, family } }: Scene,
  within: BuildSet,
  wanted: BuildSet,
): EntryLines | undefined {
  if (within.equals(wanted)) return [];
  const names = space.aspectsOf(wanted).flatMap((aspect) => namesOf(aspect));
  const sets = names.flatMap((name) => {
    const expr: ConditionExpr | undefined = parseConditionText(name);
    return expr === undefined ? [] : [{ name, set: space.set(expr) }];
  });
  const pairs = sets.flatMap((one, i) =>
    sets.slice(i + 1).map((two) => ({ name: `[${one.name}, ${two.name}]`, set: one.set.or(two.set) })),
  );
  return conditionAmong(sets, within, wanted) ?? conditionAmong(pairs, within, wanted);

  function namesOf(aspect: Aspect): string[] {
    if (aspect.kind === 'variant') return (family?.value.variants ?? []).map(({ id }) => id.id);
    if (aspect.kind === 'finished') return [aspect.id];
    if (aspect.kind === 'arrival') return [`arrives=${aspect.id}`];
    if (aspect.kind === 'fork') return [];
    const outcome = family?.value.identify?.find(({ id }) => id.id === aspect.id);
    return (outcome?.value.values?.map(({ text }) => text) ?? ['renewed']).map((value) => `${aspect.id}=${value}`);
  }
}
