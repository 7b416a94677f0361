import { conditionOf } from '../../analysis/familyView';
import type { KitView } from '../../analysis/kitView';
import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Line } from '../../model/generated/types';
import type { PathRef } from '../../model/values';

/** A line of one of the procedure's kits, and the builds in which the kit's part is for them. */
export interface SupplyLine {
  readonly kit: KitView;
  readonly line: Line;
  readonly where: BuildSet;
}

/**
 * What the kits of a procedure supply, by part. Undefined where nobody can tell: there is no kit, one could not be read
 * whole, or one is for another family.
 */
export function kitSupply(procedure: ProcedureView): ReadonlyMap<string, readonly SupplyLine[]> | undefined {
  if (!remembered.has(procedure)) remembered.set(procedure, isWhole(procedure) ? gather(procedure) : undefined);
  return remembered.get(procedure);
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, readonly SupplyLine[]> | undefined>();

function isWhole(procedure: ProcedureView): boolean {
  const { family, kits, value } = procedure;
  if (family === undefined || kits.length === 0 || kits.length !== value.kit?.length) return false;
  return kits.every((kit) => !isForOther(procedure, kit) && isReadable(kit));
}

function isReadable(kit: KitView): boolean {
  return kit.value.lines !== undefined && !kit.document.problems.some((problem) => problem.kind === 'broken');
}

/** Whether a kit is for another family than the procedure; no where one of the two cannot be read. */
export function isForOther(procedure: ProcedureView, kit: KitView): boolean {
  if (procedure.family === undefined || kit.family === undefined) return false;
  return procedure.family.document.uri !== kit.family.document.uri;
}

/** The path by which the procedure names one of its kits. */
export function pathOfKit(procedure: ProcedureView, kit: KitView): PathRef | undefined {
  return procedure.value.kit?.find((path) => {
    const target = procedure.follow(path);
    return target.is === 'document' && target.document === kit.document;
  });
}

function gather(procedure: ProcedureView): Map<string, SupplyLine[]> {
  const byPart = new Map<string, SupplyLine[]>();
  for (const kit of procedure.kits) {
    for (const line of kit.lines) {
      if (line.part === undefined) continue;
      const { id } = line.part;
      byPart.set(id, [...(byPart.get(id) ?? []), { kit, line, where: whereOf(procedure.space, line) }]);
    }
  }
  return byPart;
}

/** A condition with a name that nothing has is a mistake of the kit, which is told there; it narrows nothing here. */
function whereOf(space: BuildSpace, line: Line): BuildSet {
  const expr = conditionOf(line);
  const names = [...(line.when?.names ?? []), ...(line.unless?.names ?? [])];
  const unclear = names.some((name) => name.expr === undefined) || space.unknownNames(expr).length > 0;
  return unclear ? space.everything : space.set(expr);
}

/** What a line is called in a message: its item number and part number, as far as it has them. */
export function lineName(line: Line): string {
  const item = line.item === undefined ? '' : ` ${line.item.text}`;
  return line.number === undefined ? `line${item}` : `line${item}, number ${line.number.text}`;
}
