import type { SerialRow } from '../recordSheet';
import type { BuildContext } from './buildContext';
import { conditioned, type InstructionUse, stepsOf } from './uses';

/**
 * The parts whose serial number some instruction writes down, each once. `received`: only those that the unit comes
 * with; `all`: those that the work brings as well.
 */
export function serialRows(context: BuildContext, which: 'received' | 'all'): SerialRow[] {
  const byPart = new Map<string, InstructionUse[]>();
  for (const use of context.uses.of('record')) {
    if (use.instruction.verb !== 'record') continue;
    for (const { id } of use.instruction.serial ?? []) byPart.set(id, [...(byPart.get(id) ?? []), use]);
  }
  const { procedure, names } = context;
  return [...byPart].flatMap(([id, uses]) => {
    const asked = procedure.space.union(uses.map(({ where }) => where));
    const known = which === 'received' && procedure.family?.part(id) !== undefined;
    const where = known ? asked.and(procedure.presence(id, 'received')) : asked;
    if (where.isEmpty) return [];
    return [{ part: names.part(id, where).name, ...conditioned(where, context), at: stepsOf(uses) }];
  });
}
