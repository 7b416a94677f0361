import type { Change, ChangeSide } from '../../../core/review/change';
import { headlineOf } from '../../../core/review/changeWords';
import type { Version } from '../../../core/review/version';
import { placeIn } from '../../../core/reviewPage/places';
import type { Reviewed } from '../../../core/reviewPage/reviewed';
import type { Finding } from '../../../core/rules/finding';

/** A review as JSON; lines and columns from 1, columns in UTF-16 units. */
export function reviewJson(reviewed: Reviewed): string {
  const { labels, before, after, files, changes, findings } = reviewed;
  const report = {
    tool: 'witnessmark',
    before: labels.before,
    after: labels.after,
    files,
    changes: changes.map((change) => changeJson(change, before, after)),
    findings: {
      new: findings.added.map((one) => findingJson(one, after)),
      gone: findings.gone.map((one) => findingJson(one, before)),
      still: findings.still.length,
    },
  };
  return `${JSON.stringify(report, null, 2)}\n`;
}

function changeJson(change: Change, before: Version, after: Version): object {
  const side = (version: Version, one: ChangeSide | undefined) =>
    one === undefined ? undefined : { ...placeIn(version, one), text: one.text };
  return {
    class: change.class,
    kind: change.kind,
    what: headlineOf(change),
    of: change.of,
    key: change.key,
    note: change.note,
    builds: change.builds === '' ? undefined : change.builds,
    before: side(before, change.before),
    after: side(after, change.after),
    reached: change.reached.map(({ document, steps, builds, more }) => ({ document, steps, builds, more })),
  };
}

function findingJson(finding: Finding, version: Version): object {
  const { rule, severity, message, builds, about, step } = finding;
  return { rule, severity, message, builds, about, step, ...placeIn(version, finding) };
}
