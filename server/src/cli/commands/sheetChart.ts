import { basename, resolve } from 'node:path';
import type { ProcedureView } from '../../core/analysis/procedureView';
import type { PickedBuild } from '../../core/builds';
import { buildChart } from '../../core/chart/buildChart';
import type { ChartFinding } from '../../core/chart/chart';
import { chartToHtml } from '../../core/chart/chartHtml';
import { chartToSvg } from '../../core/chart/chartSvg';
import { reasonOf, writeWhole } from '../../node/nodeFiles';
import { oneOf } from '../options';
import { CommandProblem } from '../problem';
import { plural, shown } from '../report/text';
import type { Terminal } from '../terminal';

type ChartFormat = 'html' | 'svg';

/** What `witnessmark sheet --chart` was told besides the build. */
export interface ChartRequest {
  readonly file: string;
  readonly format: string | boolean | undefined;
  readonly out: string | boolean | undefined;
}

/** Writes the chart of the walk for a build; throws a problem in words where it cannot. */
export function writeChart(
  terminal: Terminal,
  procedure: ProcedureView,
  picked: PickedBuild & { kind: 'picked' },
  findings: readonly ChartFinding[],
  request: ChartRequest,
): void {
  const format = formatOf(request);
  const out = outputPath(request, format, picked.build.id);
  const chart = buildChart(procedure, picked, findings);
  if (chart === undefined)
    throw new CommandProblem(`There is no walk to draw: the family of ${request.file} cannot be read`);
  write(out, format === 'svg' ? chartToSvg(chart) : chartToHtml(chart, { mode: 'file' }));
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  terminal.out(
    `Wrote ${shown(out)}, the walk of ${picked.build.label}${errors === 0 ? '' : `; ${plural(errors, 'error')} in it`}\n`,
  );
}

/** The format that is named; else the one that the name of the file says. */
function formatOf({ format, out }: ChartRequest): ChartFormat {
  const byName = typeof out === 'string' && /\.svg$/i.test(out) ? 'svg' : 'html';
  const chosen = oneOf('format', format, ['html', 'svg'], byName);
  if (typeof out === 'string' && !(chosen === 'svg' ? /\.svg$/i : /\.html?$/i).test(out))
    throw new CommandProblem(`A chart as ${chosen} goes to a file that ends in .${chosen}, not to "${out}"`);
  return chosen;
}

function outputPath({ file, out }: ChartRequest, format: ChartFormat, build: string): string {
  if (typeof out === 'string') return resolve(out);
  return resolve(`${basename(file).replace(/\.procedure\.ya?ml$/, '')}-${build.replaceAll(',', '-')}-walk.${format}`);
}

function write(out: string, content: string): void {
  try {
    writeWhole(out, content);
  } catch (error) {
    throw new CommandProblem(`Cannot write ${shown(out)}: ${reasonOf(error)}`);
  }
}
