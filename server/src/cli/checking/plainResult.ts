import type { CheckResult, ConcededFinding } from '../../core/rules/checkDocument';
import type { Finding, Fix } from '../../core/rules/finding';
import type { Working } from '../../core/workings/working';

/** A finding as plain data, so that another thread or a later run can tell it. */
interface PlainFinding extends Omit<Finding, 'where' | 'fixes' | 'working' | 'step'> {
  readonly step?: string;
  readonly fixes: readonly Fix[];
  readonly working: readonly Working[];
}

interface PlainConceded {
  readonly finding: PlainFinding;
  readonly because?: string;
  readonly by?: string;
  readonly until?: string;
}

export interface PlainResult {
  readonly findings: readonly PlainFinding[];
  readonly conceded: readonly PlainConceded[];
}

/** What a report says of a concession. */
export interface ToldConcession {
  readonly because?: { readonly text: string };
  readonly by?: { readonly text: string };
  readonly until?: { readonly day: string };
}

/** What a report needs to know of a document's findings, whether it was checked here, in another thread or earlier. */
export interface ToldResult {
  readonly findings: readonly Finding[];
  readonly conceded: readonly { readonly finding: Finding; readonly concession: ToldConcession }[];
}

export function plainResult(result: CheckResult): PlainResult {
  return { findings: result.findings.map(plainFinding), conceded: result.conceded.map(plainConceded) };
}

function plainFinding({ where: _, step, fixes, working, ...rest }: Finding): PlainFinding {
  return { ...rest, ...(step === undefined ? {} : { step }), fixes: fixes(), working: working() };
}

function plainConceded({ finding, concession: { because, by, until } }: ConcededFinding): PlainConceded {
  return {
    finding: plainFinding(finding),
    ...(because === undefined ? {} : { because: because.text }),
    ...(by === undefined ? {} : { by: by.text }),
    ...(until?.day === undefined ? {} : { until: until.day }),
  };
}

export function toldResult({ findings, conceded }: PlainResult): ToldResult {
  return { findings: findings.map(toldFinding), conceded: conceded.map(toldConceded) };
}

function toldFinding({ fixes, working, step, ...rest }: PlainFinding): Finding {
  return { ...rest, step, where: () => undefined, fixes: () => fixes, working: () => working };
}

function toldConceded({ finding, because, by, until }: PlainConceded): ToldResult['conceded'][number] {
  const concession = {
    ...(because === undefined ? {} : { because: { text: because } }),
    ...(by === undefined ? {} : { by: { text: by } }),
    ...(until === undefined ? {} : { until: { day: until } }),
  };
  return { finding: toldFinding(finding), concession };
}
