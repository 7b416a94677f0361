import { objectIds } from '../../analysis/instructions';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { Tool } from '../../model/generated/types';
import { isGauge, judgeGauge, type Measurand, measurandsOf } from '../../workings/gaugeFit';
import type { Rank } from './rank';
import type { ToolJudge } from './rankingTools';

type Kind = NonNullable<NonNullable<Tool['kind']>['value']>;

/** Kinds of tools that a verb is done with. */
const OF_VERBS: Readonly<Record<string, readonly Kind[]>> = {
  clean: ['wash-tank', 'ultrasonic-bath', 'brush', 'scraper', 'blast-cabinet'],
  inspect: ['lamp'],
  mark: ['marker'],
  press: ['press', 'arbor'],
  heat: ['oven', 'hot-plate', 'thermometer'],
  cool: ['thermometer'],
  balance: ['balance-machine'],
};

/** Kinds of tools by the kind of the part that is taken off or fitted. */
const OF_PARTS: Readonly<Record<string, readonly Kind[]>> = {
  'retaining-ring': ['ring-pliers'],
  'seal-ring': ['ring-compressor'],
  pin: ['pliers'],
  bearing: ['puller', 'arbor', 'press'],
  wheel: ['puller'],
};

/** What a way of cleaning is done with. */
const OF_WAYS: Readonly<Record<string, Kind>> = {
  wash: 'wash-tank',
  ultrasonic: 'ultrasonic-bath',
  blast: 'blast-cabinet',
  brush: 'brush',
  'wire-brush': 'brush',
};

/** Judges gauges by what they measure, and other tools by the work that their kind is for. */
export function judgeByKind(procedure: ProcedureView, view: InstructionView): ToolJudge {
  const { instruction } = view;
  const measurands = measurandsOf(procedure, view);
  const usual = new Set([...(OF_VERBS[instruction.verb] ?? []), ...kindsForParts(procedure, view)]);
  const way = instruction.verb === 'clean' ? OF_WAYS[instruction.by?.value ?? ''] : undefined;
  const measures = instruction.verb === 'measure' || instruction.verb === 'adjust';
  return (tool) => {
    const kind = tool.kind?.value;
    if (measures && isGauge(tool)) return gaugeRank(tool, measurands);
    if (kind !== undefined && kind === way) return { rank: 0, why: `for ${way === 'brush' ? 'brushing' : 'this way'}` };
    if (kind !== undefined && usual.has(kind)) return { rank: way === undefined ? 0 : 1, why: 'for this work' };
    return undefined;
  };
}

function kindsForParts({ family }: ProcedureView, { instruction }: InstructionView): readonly Kind[] {
  const moves = ['loosen', 'remove', 'install', 'seat', 'press'].includes(instruction.verb);
  return moves ? objectIds(instruction).flatMap((id) => OF_PARTS[family?.part(id)?.kind?.value ?? ''] ?? []) : [];
}

function gaugeRank(tool: Tool, measurands: readonly Measurand[]): Rank {
  const verdicts = measurands.map((one) => judgeGauge(tool, one));
  if (verdicts.includes('out-of-range')) return { rank: 3, why: `measures ${tool.range?.text ?? 'something else'}` };
  if (verdicts.includes('too-coarse')) return { rank: 2, why: `too coarse, reads ${tool.resolution?.text ?? ''}` };
  const suits = verdicts.length > 0 && verdicts.every((one) => one === 'suits');
  return suits ? { rank: 0, why: `reads ${tool.resolution?.text ?? ''}` } : { rank: 1 };
}
