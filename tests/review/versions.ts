import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { Workspace } from '../../server/src/core/analysis/workspace';
import type { Change } from '../../server/src/core/review/change';
import { type Comparison, compareVersions } from '../../server/src/core/review/compareVersions';
import type { Version } from '../../server/src/core/review/version';
import { documentsBelow, NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';

const folder = resolve('sample-procedures');
const root = uriOfPath(folder);

/** The correct samples by their path within the folder. */
export const SAMPLES: ReadonlyMap<string, string> = new Map(
  documentsBelow(folder)
    .map((path) => [relative(folder, path), readFileSync(path, 'utf8')] as const)
    .filter(([name]) => !name.startsWith('faulty')),
);

/** The samples with some texts in place of theirs; `undefined` takes a document away. */
export async function versionWith(texts: Readonly<Record<string, string | undefined>> = {}): Promise<Version> {
  const workspace = new Workspace([root]);
  const all = new Map<string, string | undefined>([...SAMPLES, ...Object.entries(texts)]);
  const uris: string[] = [];
  for (const [name, text] of all) {
    if (text === undefined) continue;
    uris.push(`${root}/${name}`);
    workspace.set(`${root}/${name}`, { is: 'text', text });
  }
  const files = new NodeFiles();
  const source = {
    read: async (uri: string) =>
      uris.includes(uri) || /\.ya?ml$/.test(uri) ? { is: 'missing' as const } : files.read(uri),
  };
  for (const uri of uris) await workspace.loadLinked(uri, source);
  return { snapshot: workspace.snapshot, root, uris: uris.toSorted() };
}

/** A sample with one text put in place of another, which must be there exactly once unless it is said otherwise. */
export function edited(name: string, from: string | RegExp, to: string): Record<string, string> {
  const text = SAMPLES.get(name) ?? '';
  const next = text.replace(from, to);
  if (next === text) throw new Error(`${name} has no ${String(from)}`);
  return { [name]: next };
}

export async function comparing(texts: Readonly<Record<string, string | undefined>>): Promise<Comparison> {
  return compareVersions(await versionWith(), await versionWith(texts));
}

/** A change in one line: what a test compares. */
export function line({ class: one, kind, of, key, note, builds, before, after }: Change): string {
  const flat = (text: string | undefined) => (text === undefined ? '–' : text.replace(/\s+/gu, ' ').slice(0, 60));
  return [
    one,
    kind,
    `${of.kind} ${of.id || of.name}${of.step !== undefined && of.kind !== 'step' ? ` @${of.step}` : ''}`,
    key ?? '',
    `${flat(before?.text)} → ${flat(after?.text)}`,
    note ?? '',
    builds,
  ].join(' | ');
}
