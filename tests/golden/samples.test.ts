import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { WALK_RULES } from '../../server/src/core/rules/walk';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { documentsBelow, NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';

const ROOT = resolve('sample-procedures');
const documents = documentsBelow(ROOT).map((path) => relative(ROOT, path));
const faulty = documents.filter((path) => path.startsWith('faulty'));
const clean = documents.filter((path) => !path.startsWith('faulty'));

/** What the readme speaks of; the kits and the stores that they use it leaves out. */
const lessons = faulty.filter((path) => path.endsWith('.procedure.yaml'));

interface Checked {
  readonly workspace: Workspace;
  readonly uri: string;
  readonly found: readonly string[];
}

async function check(path: string): Promise<Checked> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  const uri = uriOfPath(join(ROOT, path));
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  if (document === undefined) throw new Error(`${path} cannot be read`);
  const lines = new LineIndex(document.text);
  const { findings } = checkDocument(workspace.snapshot, document, { today: TODAY });
  const found = findings.map(
    (finding) => `${lines.position(finding.span.start).line + 1} ${finding.severity} ${finding.rule}`,
  );
  return { workspace, uri, found };
}

test.each(clean)('%s is clean', async (path) => {
  expect((await check(path)).found).toEqual([]);
});

test('there are three whole procedures, each of 45 steps or more', async () => {
  const procedures = clean.filter((path) => path.endsWith('.procedure.yaml'));
  const steps = await Promise.all(
    procedures.map(async (path) => {
      const { workspace, uri } = await check(path);
      const document = workspace.snapshot.document(uri);
      return document === undefined ? 0 : (ProcedureView.of(workspace.snapshot, document)?.steps.length ?? 0);
    }),
  );
  expect(steps.filter((count) => count >= 45).length).toBeGreaterThanOrEqual(3);
});

test('the lessons show what they are about', async () => {
  const shown = await Promise.all(faulty.map(async (path) => [path, (await check(path)).found] as const));
  expect(Object.fromEntries(shown.filter(([, found]) => found.length > 0))).toMatchSnapshot();
});

test('each rule of the walk has a lesson that shows it and nothing beside it', async () => {
  const found = await Promise.all(lessons.map(async (path) => (await check(path)).found));
  const alone = new Set(found.flatMap((one) => (one.length === 1 ? one[0]?.split(' ').at(-1) : [])));
  const rules = [...WALK_RULES.map((rule) => rule.id), 'counter-hold-missing'];
  expect(rules.filter((rule) => !alone.has(rule))).toEqual([]);
});

test('the samples folder holds nothing that its readme does not speak of', () => {
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const unnamed = readdirSync(join(ROOT, 'procedures')).filter((name) => !readme.includes(name));
  expect(unnamed).toEqual([]);
  expect(lessons.filter((path) => !readme.includes(`](${path})`))).toEqual([]);
});
