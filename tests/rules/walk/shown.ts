import { EXAMPLE_HEAD, EXAMPLE_PATHS, EXAMPLE_STORES } from '../../../server/src/core/rules/exampleDocuments';
import {
  type Example,
  inHead,
  inProcedure,
  inStep,
  withFamily,
  withFiles,
} from '../../../server/src/core/rules/examples';
import { fullMessage } from '../../../server/src/core/rules/finding';
import { checkExample } from '../../support/checkText';

const OIL = `${EXAMPLE_STORES}  oil: { name: assembly oil, kind: oil }\n`;

/** Instructions in the only step, on the example family with some of its entries changed. */
export function work(steps: string, family?: string): Example {
  return changed(inStep(steps), family);
}

/** The same with keys at the head of the procedure, such as the options that it covers. */
export function workUnder(head: string, steps: string, family?: string): Example {
  return changed(inHead(head, steps), family);
}

/** A list of steps in one phase. */
export function workOfSteps(steps: string, family?: string): Example {
  const text = `${EXAMPLE_HEAD}phases:\n  - phase: Work\n    steps:\n${steps.replaceAll(/^/gm, '      ')}\n`;
  return changed(inProcedure(steps, text), family);
}

function changed(example: Example, family: string | undefined): Example {
  const oiled = withFiles(example, { [EXAMPLE_PATHS.stores]: OIL });
  return family === undefined ? oiled : withFamily(oiled, family);
}

/**
 * The findings of a rule as they stand before the writer: `line underlined: message (builds)`, each followed by the
 * places that it points to, as `-> line underlined: message`. Lines are counted from the first instruction.
 */
export async function shown(example: Example, rule: string): Promise<string[]> {
  const text = example.files[example.at] ?? '';
  const place = (span: { readonly start: number; readonly end: number }): string => {
    const [lines, first] = [text.slice(0, span.start).split('\n').length, text.slice(0, text.indexOf('do:'))];
    return `${lines - first.split('\n').length} ${text.slice(span.start, span.end)}`;
  };
  const { findings } = await checkExample(example);
  return findings
    .filter((finding) => finding.rule === rule)
    .flatMap((finding) => [
      `${place(finding.span)}: ${fullMessage(finding)}`,
      ...finding.related.map((one) => `-> ${place(one.span)}: ${one.message}`),
    ]);
}

/** What a concession about some ids, at the only step unless told otherwise, lets stand, and what of its rule is found in spite of it. */
export async function conceding(
  example: Example,
  rule: string,
  about: string,
  at = 'at: only-step, ',
): Promise<{ readonly stands: readonly string[]; readonly left: readonly string[] }> {
  const concession = `concessions:\n  - { rule: ${rule}, ${at}about: [${about}], because: it is known, by: R. Ashdown, until: 2027-01-31 }\n`;
  const text = (example.files[example.at] ?? '') + concession;
  const { findings, conceded } = await checkExample(withFiles(example, { [example.at]: text }));
  return {
    stands: conceded.map(({ finding }) => `${finding.rule} ${finding.about.join(' ')}`),
    left: findings.filter((finding) => finding.rule === rule || finding.rule.startsWith('concession')).map(fullMessage),
  };
}
