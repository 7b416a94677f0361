import type { JudgedEntry } from '../../../core/sheet/record/judgeRecord';
import { isSound } from '../../../core/sheet/record/verdict';
import type { RecordFile } from '../../commands/record';

/** Every sheet with every field, for another program. */
export function recordJson(records: readonly RecordFile[]): string {
  return `${JSON.stringify(records.map(plainRecord), undefined, 2)}\n`;
}

function plainRecord({ file, plan, entries, isSound: sound }: RecordFile) {
  const { document, title, revision, status, errors, build, buildId, digest, language } = plan;
  return {
    file,
    document,
    title,
    revision,
    status,
    errors,
    build,
    buildId,
    digest: digest ?? null,
    language,
    inOrder: sound,
    fields: entries.map(plainEntry),
  };
}

function plainEntry({ name, place, stepId, what, kind, filled, number, unit, limits, verdict }: JudgedEntry) {
  return {
    name,
    place,
    stepId: stepId ?? null,
    what,
    kind,
    filled,
    value: number ?? null,
    unit: unit ?? null,
    limits: limits ?? null,
    verdict: verdict.is,
    why: 'why' in verdict ? verdict.why : null,
    inOrder: isSound(verdict),
  };
}
