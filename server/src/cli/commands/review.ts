import { resolve } from 'node:path';
import type { Reviewed } from '../../core/reviewPage/reviewed';
import { reviewHtml } from '../../core/reviewPage/reviewHtml';
import { reasonOf, writeWhole } from '../../node/nodeFiles';
import { chooseTrees, isFolder } from '../history/chooseTrees';
import { dayOption, oneOf, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { reviewJson } from '../report/review/json';
import { reviewMarkdown } from '../report/review/markdown';
import { reviewSarif } from '../report/review/sarif';
import { reviewText } from '../report/review/text';
import { reviewTrees } from '../reviewed';
import type { Terminal } from '../terminal';
import { version } from '../version';

export const REVIEW_HELP = `witnessmark review BASE [HEAD] [options]

Says what a change means: what could hurt, what fits differently, and which findings are new. BASE and HEAD are
revisions of the git repository here (HEAD: the working tree), BASE...HEAD compares with what HEAD began from; or two
folders. Nothing is written to the repository.

  --format text|md|json|sarif|html
                                how the review is written (text); md is for a comment on a pull request, html shows
                                the changed steps of the sheets side by side
  --out FILE                    write it there
  --in FOLDER                   a folder of the repository, where it is not the one that the command runs in
  --fail-on hurt|fits|new-error|never
                                what makes the exit code 1 (new-error); hurt and fits hold for new errors as well
  --on DATE                     judge dates as of this day (today)

Exit code: 0 nothing that it shall fail on, 1 something, 2 could not run.
`;

const FORMATS = ['text', 'md', 'json', 'sarif', 'html'] as const;

/** Runs \`witnessmark review\`. */
export async function review(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('review', args, {
    format: { type: 'string' },
    out: { type: 'string' },
    in: { type: 'string' },
    'fail-on': { type: 'string' },
    on: { type: 'string' },
  });
  const format = oneOf('format', values.format, FORMATS, 'text');
  const failOn = oneOf('fail-on', values['fail-on'], ['hurt', 'fits', 'new-error', 'never'], 'new-error');
  const reviewed = await reviewTrees(chooseTrees(positionals, folderIn(values.in)), dayOption(values.on));
  write(terminal, values.out, reportOf(terminal, reviewed, format, values.out !== undefined));
  return fails(reviewed, failOn) ? 1 : 0;
}

function folderIn(value: string | boolean | undefined): string {
  const folder = resolve(typeof value === 'string' ? value : '.');
  if (!isFolder(folder)) throw new CommandProblem(`${String(value)} is no folder`);
  return folder;
}

function reportOf(terminal: Terminal, reviewed: Reviewed, format: (typeof FORMATS)[number], toFile: boolean): string {
  switch (format) {
    case 'text':
      return reviewText(toFile ? { ...terminal, colours: false } : terminal, reviewed);
    case 'md':
      return reviewMarkdown(reviewed);
    case 'json':
      return reviewJson(reviewed);
    case 'sarif':
      return reviewSarif(reviewed, version());
    case 'html':
      return reviewHtml(reviewed);
  }
}

function write(terminal: Terminal, out: string | boolean | undefined, report: string): void {
  if (typeof out !== 'string') {
    terminal.out(report);
    return;
  }
  try {
    writeWhole(out, report);
  } catch (error) {
    throw new CommandProblem(`Cannot write ${out}: ${reasonOf(error)}`);
  }
}

function fails({ changes, findings }: Reviewed, failOn: 'hurt' | 'fits' | 'new-error' | 'never'): boolean {
  if (failOn === 'never') return false;
  if (findings.added.some(({ severity }) => severity === 'error')) return true;
  const classes = failOn === 'hurt' ? ['hurt'] : failOn === 'fits' ? ['hurt', 'fits'] : [];
  return changes.some((change) => classes.includes(change.class));
}
