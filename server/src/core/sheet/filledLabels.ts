import { fillLabel, type Labels } from './labels';
import type { ConsumableAmount, FateKind, TimeBlank } from './sheet';

/** The words of the band. A draft without errors is not alarming, so that its band is only framed. */
export interface Band {
  text: string;
  look: 'solid' | 'framed';
}

type BandFacts = { status: 'draft' | 'released' | 'withdrawn'; errors: number };

/** The band of every page, or nothing for a sheet that may be used. What is withdrawn stays so whatever else stands. */
export function bandOf(labels: Labels, { status, errors }: BandFacts): Band | undefined {
  if (status === 'withdrawn') return { text: withdrawnText(labels, errors), look: 'solid' };
  if (errors === 0) return status === 'draft' ? { text: labels.draft, look: 'framed' } : undefined;
  const text = counted(labels.notReleasedOne, labels.notReleasedMany, errors);
  return { text: status === 'draft' ? fillLabel(labels.draftWithErrors, { band: text }) : text, look: 'solid' };
}

function withdrawnText(labels: Labels, errors: number): string {
  if (errors === 0) return labels.withdrawn;
  return counted(labels.withdrawnWithErrorsOne, labels.withdrawnWithErrorsMany, errors);
}

/** The label for one or for many. */
export function counted(one: string, many: string, count: number): string {
  return count === 1 ? one : fillLabel(many, { count });
}

/** The longest build that the foot of a page holds on one line. */
const LONGEST_IN_FOOT = 64;

/** What identifies the sheet at the foot of each page; a long build is named by its ids. */
export function footLabel(
  labels: Labels,
  header: { document: string; revision: string; build: string; buildId: string },
): string {
  const { document, revision } = header;
  const build = header.build.length > LONGEST_IN_FOOT ? header.buildId : header.build;
  return fillLabel(labels.footer, { document, revision, build });
}

/** How much of a consumable is used: `1 drop`, or that each step says it; undefined where nothing says it. */
export function amountLabel(labels: Labels, amount: ConsumableAmount): string | undefined {
  if (amount.kind === 'none') return undefined;
  return amount.kind === 'stated' ? amount.text : labels.amountDiffers;
}

/** `step 45`, `steps 37, 39, 41`. */
export function stepsLabel(labels: Labels, steps: readonly number[]): string {
  return fillLabel(steps.length === 1 ? labels.usedAtOne : labels.usedAtMany, { steps: steps.join(', ') });
}

export function fateLabel(labels: Labels, kind: FateKind): string {
  const words: Record<FateKind, string> = {
    used: labels.fateUsed,
    bench: labels.fateBench,
    renewed: labels.fateRenewed,
    new: labels.fateNew,
    returned: labels.fateReturned,
    sent: labels.fateSent,
    discarded: labels.fateDiscarded,
    off: labels.fateOff,
  };
  return words[kind];
}

/** `Temperature, 110 ± 5 °C`: what is written into a blank for a time or a temperature. */
export function timeLabel(labels: Labels, time: TimeBlank): string {
  switch (time.kind) {
    case 'on':
      return time.what === undefined ? labels.putOn : fillLabel(labels.putOnOf, { what: time.what });
    case 'earliest':
      return fillLabel(labels.earliestLoad, { after: time.after });
    case 'start':
      return labels.started;
    case 'end':
      return time.after === undefined ? labels.ended : fillLabel(labels.endedAfter, { after: time.after });
    case 'in':
      return labels.timeIn;
    case 'out':
      return labels.timeOut;
    case 'temperature':
      return time.limits === undefined ? labels.temperature : fillLabel(labels.temperatureOf, { limits: time.limits });
  }
}
