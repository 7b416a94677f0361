import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import type { SentLine, SentSlip } from '../recordSheet';
import type { BuildContext } from './buildContext';
import { conditioned, type InstructionUse, stepsOf } from './uses';

/** A slip for each place that this build sends parts to, told apart by what the writer says of it. */
export function sentSlips(context: BuildContext): SentSlip[] {
  const slips = new Map<string, SentLine[]>();
  const sentOrBack = context.uses.of('send', 'receive');
  for (const [place, use] of sentOrBack.entries()) {
    const { instruction: one } = use;
    if (one.verb !== 'send') continue;
    const to = context.names.written(one.to) ?? '';
    const later = sentOrBack.slice(place + 1);
    const lines = (one.send ?? []).map((ref) => sentLine(ref, use, later, context));
    slips.set(to, [...(slips.get(to) ?? []), ...lines]);
  }
  return [...slips].map(([to, lines]) => ({ to, lines }));
}

function sentLine(ref: Ref, use: InstructionUse, later: readonly InstructionUse[], context: BuildContext): SentLine {
  const { names, writing, procedure } = context;
  const { instruction: one, where } = use;
  const thing = names.part(ref.id, where);
  const certificate = one.verb === 'send' ? names.written(one.certificate) : undefined;
  const say = names.written(one.say);
  return {
    part: writing.phrases.pieces(thing, thing.count ?? 1),
    ...conditioned(where, context),
    ...(say === undefined ? {} : { say }),
    ...(certificate === undefined ? {} : { certificate }),
    hasSerial: procedure.family?.part(ref.id)?.serial?.value === true,
    sent: stepsOf([use]),
    back: stepsOf(receipts(ref.id, where, later).slice(0, 1)),
  };
}

/** Where the part is taken in again, until it is sent out once more. */
function receipts(part: string, where: BuildSet, later: readonly InstructionUse[]): InstructionUse[] {
  const isOf = (use: InstructionUse, verb: 'send' | 'receive'): boolean => {
    const one = use.instruction;
    const refs = one.verb === 'send' ? one.send : one.verb === 'receive' ? one.receive : undefined;
    return one.verb === verb && use.where.overlaps(where) && (refs ?? []).some((ref) => ref.id === part);
  };
  const again = later.findIndex((use) => isOf(use, 'send'));
  return (again < 0 ? later : later.slice(0, again)).filter((use) => isOf(use, 'receive'));
}
