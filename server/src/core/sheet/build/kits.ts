import type { KitView } from '../../analysis/kitView';
import type { Line } from '../../model/generated/types';
import type { KitLine, KitList } from '../sheet';
import type { BuildContext } from './buildContext';
import { within } from './plannedSteps';

/** The pick list of each kit: the lines that this build may need. */
export function kitLists(context: BuildContext): KitList[] {
  return context.procedure.kits.map((kit) => ({
    number: kit.value.kit?.text ?? '',
    name: context.names.written(kit.value.name) ?? '',
    revision: kit.value.revision?.text ?? '',
    lines: kit.lines.flatMap((line) => kitLine(line, kit, context)),
  }));
}

function kitLine(line: Line, kit: KitView, context: BuildContext): KitLine[] {
  const { picked, procedure, names, conditions } = context;
  const known = picked.set;
  const where = withPart(line, within(known, line, procedure), context);
  if (where.isEmpty) return [];
  const condition = conditions.condition(where, known);
  const replaces = (line.replaces ?? []).map((number) => number.text).join(', ');
  return [
    {
      item: line.item?.text ?? '',
      part: names.written(line.name) ?? (line.part === undefined ? '' : names.part(line.part.id, where).name),
      number: numberOf(line, kit, context),
      quantity: line.quantity?.node.text ?? '',
      ...(condition === undefined ? {} : { condition }),
      ...(replaces === '' ? {} : { replaces }),
    },
  ];
}

/** A part that the finished unit of this build does not have is not picked for it. */
function withPart(
  line: Line,
  where: ReturnType<typeof within>,
  { procedure }: BuildContext,
): ReturnType<typeof within> {
  if (line.part === undefined || procedure.family?.part(line.part.id) === undefined) return where;
  return where.and(procedure.presence(line.part.id));
}

function numberOf(line: Line, kit: KitView, { writing }: BuildContext): string {
  const number = line.number?.text ?? '';
  const newer = line.supersededBy?.text ?? kit.superseded.get(number);
  return newer === undefined ? number : writing.phrases.superseded(number, newer);
}
