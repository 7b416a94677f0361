import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import { Workspace } from '../../../server/src/core/analysis/workspace';
import { checkDocument } from '../../../server/src/core/rules/checkDocument';
import type { Finding } from '../../../server/src/core/rules/finding';
import { WALK_RULES } from '../../../server/src/core/rules/walk';
import { applyEdits } from '../../../server/src/core/text/span';
import { NodeFiles, uriOfPath } from '../../../server/src/node/nodeFiles';
import { TODAY } from '../../support/checkText';
import { added, kindOf } from './mended';

const ROOT = resolve('sample-procedures');
const WALK = new Set(WALK_RULES.map((rule) => rule.id));
class Sample {
  readonly workspace = new Workspace([uriOfPath(ROOT)]);
  readonly uri: string;

  constructor(readonly name: string) {
    this.uri = uriOfPath(join(ROOT, 'procedures', name));
  }

  async open(): Promise<string> {
    await this.workspace.loadLinked(this.uri, new NodeFiles());
    return this.workspace.snapshot.document(this.uri)?.text ?? '';
  }

  check(text: string): readonly Finding[] {
    this.workspace.set(this.uri, { is: 'text', text });
    const document = this.workspace.snapshot.document(this.uri);
    if (document === undefined) throw new Error(`${this.name} cannot be read`);
    return checkDocument(this.workspace.snapshot, document, { today: TODAY }).findings;
  }

  /** The text without each instruction of a verb, in turn, with the first line of what was left out. */
  *without(text: string, verb: string): Generator<{ line: string; text: string }> {
    this.check(text);
    const document = this.workspace.snapshot.document(this.uri);
    const procedure = document === undefined ? undefined : ProcedureView.of(this.workspace.snapshot, document);
    for (const { instructions } of procedure?.steps ?? []) {
      for (const { instruction, nested } of instructions) {
        if (nested || instruction.verb !== verb || document === undefined) continue;
        const { start, end } = document.spanOf(instruction.node);
        const line = text.slice(start, end).split('\n')[0] ?? '';
        yield { line, text: `${text.slice(0, start)}say: Look at the unit.${text.slice(end).replace(/^\s*\n/, '\n')}` };
      }
    }
  }
}

/** What a sample shows without one of its instructions, and for how much of it a fix is offered. */
interface Tally {
  shown: number;
  offered: number;
}

/** Applies each fix to the text, and tells those that leave the finding there or bring another. */
function failing(sample: Sample, text: string, finding: Finding): string[] {
  return finding.fixes().flatMap((fix) => {
    const before = sample.check(text);
    const edits = fix.edits.map(({ edit }) => edit);
    const after = sample.check(applyEdits(text, edits));
    const count = (findings: readonly Finding[]): number =>
      findings.filter((one) => kindOf(one) === kindOf(finding)).length;
    const stays = count(after) < count(before) ? [] : [`${fix.title}: ${kindOf(finding)} stays`];
    return [...stays, ...added(before, after).map((more) => `${fix.title}: brings ${more}`)];
  });
}

/** The least share of what shows, when each such instruction is left out in turn, that gets a fix. */
const SHARES: readonly (readonly [verb: string, share: number, shown: number])[] = [
  ['clean', 0.95, 30],
  ['apply', 0.75, 15],
  ['tighten', 0.95, 20],
  ['check', 0.95, 8],
  ['align', 0.9, 10],
  ['mark', 0.95, 10],
  ['identify', 1, 1],
  ['wait', 1, 1],
  ['remove', 0.9, 60],
  ['install', 0.8, 60],
];
const SAMPLES = ['v4-major.procedure.yaml', 'v4-wheel-44.procedure.yaml', 'h9-rebuild.procedure.yaml'];

test.each(SHARES)(
  '%s left out: what shows gets a fix (share at least %d), and each fix holds',
  async (verb, share, least) => {
    const tally: Tally = { shown: 0, offered: 0 };
    const wrong: string[] = [];
    for (const name of SAMPLES) {
      const sample = new Sample(name);
      const text = await sample.open();
      for (const gap of sample.without(text, verb)) {
        for (const finding of sample.check(gap.text).filter(({ rule }) => WALK.has(rule))) {
          tally.shown++;
          if (finding.fixes().length > 0) tally.offered++;
          wrong.push(...failing(sample, gap.text, finding).map((words) => `${name}, without ${gap.line}: ${words}`));
        }
      }
    }
    expect(wrong).toEqual([]);
    const counted = `${tally.offered} of ${tally.shown}`;
    expect(tally.shown, counted).toBeGreaterThanOrEqual(least);
    expect(tally.offered / tally.shown, counted).toBeGreaterThanOrEqual(share);
  },
  60_000,
);
