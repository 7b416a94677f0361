import type { Ref } from '../../model/values';
import type { ConsumableAmount, ConsumableLine, Hazard, ToolLine } from '../sheet';
import type { BuildContext } from './buildContext';
import { hazardStatement, protectionOf, signalWordOf } from './hazardStatements';
import { namedAnywhere } from './uses';

/** The tools of this build in the order of the procedure's own list, then those that the list forgot. */
export function toolLines(context: BuildContext): ToolLine[] {
  const { uses, procedure } = context;
  const ids = idsInUse(procedure.value.tools, [...uses.tools.keys()], namedAnywhere(procedure.steps, 'tools'));
  return ids.map((id) => toolLine(id, uses.toolCounts.get(id) ?? 1, context));
}

function toolLine(id: string, count: number, context: BuildContext): ToolLine {
  const tool = context.names.toolItem(id)?.entry.value;
  // A nominal size is a name: a 1/2 in socket is never one of 12.7 mm.
  const size = tool?.driveSize?.text ?? tool?.size?.text;
  const range = tool?.range && context.quantities.inTwoUnits(tool.range).primary;
  const due = tool?.calibrationDue?.day;
  return {
    id,
    name: context.names.tool(id).name,
    count,
    ...(size === undefined ? {} : { size: context.quantities.named(size) }),
    ...(range === undefined ? {} : { range }),
    ...(due === undefined ? {} : { calibrationDue: due }),
  };
}

export function consumableLines(context: BuildContext): ConsumableLine[] {
  return consumablesHere(context).map((id) => {
    const item = context.names.consumableItem(id)?.entry.value;
    const codes = (item?.hazards ?? []).map((code) => code.text.trim());
    const signalWord = item?.signalWord?.value ?? signalWordOf(codes);
    return {
      id,
      name: context.names.consumable(id).name,
      ...usesOf(id, context),
      ...(signalWord === undefined ? {} : { signalWord }),
      hazards: codes.map((code) => ({ code, text: hazardStatement(code, context.options.language)?.text ?? '' })),
      ...(item?.expires?.day === undefined ? {} : { expires: item.expires.day }),
    };
  });
}

/** Where a consumable is used and how much of it, as far as the steps agree. */
function usesOf(id: string, context: BuildContext): { amount: ConsumableAmount; steps: number[] } {
  const uses = context.uses.consumables.get(id) ?? [];
  const amounts = new Set(uses.map(({ amount }) => context.names.written(amount)));
  const [first] = amounts;
  const stated: ConsumableAmount = first === undefined ? { kind: 'none' } : { kind: 'stated', text: first };
  return {
    amount: amounts.size > 1 ? { kind: 'differs' } : stated,
    steps: [...new Set(uses.map(({ place }) => place.step))],
  };
}

/** What the consumables of this build bring, each statement once with all that bring it; the gravest first. */
export function hazardsOf(lines: readonly ConsumableLine[]): Hazard[] {
  const byCode = new Map<string, Hazard>();
  for (const line of lines) {
    for (const { code, text } of line.hazards) {
      const known = byCode.get(code);
      if (known !== undefined) known.from.push(line.name);
      else byCode.set(code, { text, from: [line.name], codes: [code], ...signalWordCell(code) });
    }
  }
  return [...byCode.values()].sort((a, b) => gravity(a) - gravity(b));
}

function signalWordCell(code: string): Pick<Hazard, 'signalWord'> {
  const signalWord = signalWordOf([code]);
  return signalWord === undefined ? {} : { signalWord };
}

function gravity({ signalWord }: Hazard): number {
  if (signalWord === 'danger') return 0;
  return signalWord === 'warning' ? 1 : 2;
}

/** What to wear: as the procedure says, else what the hazards ask for. */
export function wearOf(lines: readonly ConsumableLine[], { procedure, names, writing }: BuildContext): string[] {
  const said = (procedure.value.protectiveEquipment ?? []).map((one) =>
    (names.written(one) ?? '').replace(/\.\s*$/u, ''),
  );
  if (said.length > 0) return said.map(writing.grammar.asItem);
  const asked = new Set(lines.flatMap((line) => line.hazards.flatMap(({ code }) => protectionOf(code) ?? [])));
  return (['eyes', 'skin', 'breath'] as const)
    .filter((one) => asked.has(one))
    .map((one) => writing.phrases.protection(one));
}

function consumablesHere({ uses, procedure }: BuildContext): string[] {
  const anywhere = namedAnywhere(procedure.steps, 'consumables');
  return idsInUse(procedure.value.consumables, [...uses.consumables.keys()], anywhere);
}

/** What an instruction of this build uses; and what is listed though no instruction of any build names it. */
function idsInUse(
  listed: readonly Ref[] | undefined,
  used: readonly string[],
  anywhere: ReadonlySet<string>,
): string[] {
  const wanted = new Set(used);
  const fromList = (listed ?? []).map((ref) => ref.id).filter((id) => wanted.has(id) || !anywhere.has(id));
  return [...new Set([...fromList, ...used])].filter((id) => id !== '');
}
