import type { ConcessionPlace, SheetConcession, SheetFinding } from '../sheet';
import type { BuildContext, ConcessionInForce, FindingAtStep } from './buildContext';

export function shownFinding({ rule, severity, message, builds }: FindingAtStep): SheetFinding {
  return {
    severity: severity === 'info' ? 'information' : severity,
    rule,
    message: builds === '' ? message : `${message} (${builds})`,
  };
}

/** Findings of no step, and of steps that this build does not have: an error elsewhere still blocks the release. */
export function findingsElsewhere({ options, stepNames }: BuildContext): SheetFinding[] {
  const elsewhere = ({ step }: FindingAtStep) => step === undefined || !stepNames.numbers.has(step);
  return options.findings.filter(elsewhere).map(shownFinding);
}

export function errorCount({ options }: BuildContext): number {
  return options.findings.filter(({ severity }) => severity === 'error').length;
}

/** Concessions at the steps of the sheet; one without a step holds for the whole of it. */
export function concessionsOf(context: BuildContext): SheetConcession[] {
  const all = context.options.concessions ?? written(context);
  return all.flatMap(({ step, ...said }) => {
    const at = placeOf(step, context);
    return at === undefined ? [] : [{ ...said, at }];
  });
}

/** Undefined for a step that this build does not have. */
function placeOf(step: string | undefined, { stepNames }: BuildContext): ConcessionPlace | undefined {
  if (step === undefined) return { kind: 'sheet' };
  const number = stepNames.numbers.get(step);
  return number === undefined ? undefined : { kind: 'step', step: number, stepId: step };
}

function written({ procedure, names }: BuildContext): ConcessionInForce[] {
  return (procedure.value.concessions ?? []).map((one) => ({
    rule: one.rule?.id ?? '',
    step: one.at?.id,
    because: names.written(one.because) ?? '',
    by: one.by?.text ?? '',
    until: one.until?.day ?? '',
  }));
}
