import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../server/src/core/analysis/settings';
import type { Uri } from '../../server/src/core/analysis/uri';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds, type SheetOptions } from '../../server/src/core/sheet/buildSheet';
import { nameFields } from '../../server/src/core/sheet/fields/nameFields';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';
import { seededRandom } from '../support/seededRandom';
import { randomEdit } from '../support/typing';

const ROOT = resolve('sample-procedures');
const LANGUAGES = ['en', 'de', 'es'] as const;
const EDITS = Number(process.env.WITNESSMARK_EDITS ?? 6);
const SEED = Number(process.env.WITNESSMARK_SEED ?? 20261125);

const procedureUri = (name: string): Uri => uriOfPath(resolve(ROOT, 'procedures', `${name}.procedure.yaml`));
const textOf = (uri: Uri): string => readFileSync(new URL(uri), 'utf8');

/** A workspace with a sample and all that it links to, some of it with other texts. */
async function openWorkspace(uri: Uri, texts: ReadonlyMap<Uri, string>): Promise<Workspace> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  await workspace.loadLinked(uri, new NodeFiles());
  for (const [one, text] of texts) workspace.set(one, { is: 'text', text });
  return workspace;
}

function viewIn({ snapshot }: Workspace, uri: Uri): ProcedureView | undefined {
  const document = snapshot.document(uri);
  return document === undefined ? undefined : ProcedureView.of(snapshot, document);
}

interface Asked extends Pick<SheetOptions, 'findings' | 'language'> {
  readonly build: string;
  readonly changed: SheetOptions['changed'];
}

function sheetOf(view: ProcedureView | undefined, { build, changed, findings, language }: Asked): Sheet | undefined {
  const picked = view === undefined ? undefined : pickBuild(view.space, build);
  if (view === undefined || picked === undefined || picked.kind === 'refused') return undefined;
  const settings = settingsFor(view.snapshot, view.document.uri);
  const more = changed === undefined ? {} : { changed };
  return buildSheet(view, picked, { findings, settings, language, paper: 'a4', ...more });
}

function oneOf<Value>(values: readonly Value[], random: () => number): Value | undefined {
  return values[Math.floor(random() * values.length)];
}

function someSheet(workspace: Workspace, view: ProcedureView | undefined, random: () => number): Asked {
  const ids = view?.steps.map(({ id }) => id).filter(() => random() < 0.1) ?? [];
  const since = { since: { kind: 'text' as const, name: 'then' }, steps: new Set(ids), gone: ['Gone'] };
  return {
    build: oneOf(view === undefined ? [] : listSheetBuilds(view), random)?.id ?? '',
    language: oneOf(LANGUAGES, random) ?? 'en',
    changed: random() < 0.3 ? since : undefined,
    findings: view === undefined ? [] : checkDocument(workspace.snapshot, view.document, { today: TODAY }).findings,
  };
}

const bodyOf = (html: string): string => /<body[^>]*>(.*)<\/body>/s.exec(html)?.[1] ?? '';
const printed = (sheet: Sheet): string => bodyOf(sheetToHtml(sheet, { mode: 'preview' }));
/** Where pictures come from is asked for, and what that gives is never remembered. */
const freshlyPrinted = (sheet: Sheet): string =>
  bodyOf(sheetToHtml(sheet, { mode: 'preview', figureUrl: () => undefined }));

describe('a sheet that is built again and again', () => {
  test.for(['v4-wheel-44', 'v4-major', 'h9-rebuild'])(
    '%s is what a first look gives, after any edits',
    async (name) => {
      console.log(`seed ${SEED}`);
      const random = seededRandom(SEED);
      const uri = procedureUri(name);
      const warm = await openWorkspace(uri, new Map());
      const linked = [...warm.snapshot.uris].filter((one) => one !== uri && /\.(family|stores|kit)\.yaml$/.test(one));
      const texts = new Map<Uri, string>();
      for (let i = 0; i < EDITS; i++) {
        const edited = random() < 0.8 ? uri : (oneOf(linked, random) ?? uri);
        const before = texts.get(edited) ?? textOf(edited);
        texts.set(edited, random() < 0.15 ? textOf(edited) : randomEdit(before, random));
        warm.set(edited, { is: 'text', text: texts.get(edited) ?? '' });
        const cold = await openWorkspace(uri, texts);
        const [warmView, coldView] = [viewIn(warm, uri), viewIn(cold, uri)];
        for (let each = 0; each < 3; each++) {
          const asked = someSheet(warm, warmView, random);
          const [sheet, first] = [sheetOf(warmView, asked), sheetOf(coldView, asked)];
          const where = `edit ${i} of seed ${SEED}, ${asked.build} in ${asked.language}`;
          expect(sheet, where).toEqual(first);
          if (sheet === undefined || first === undefined) continue;
          expect(printed(sheet) === freshlyPrinted(first), where).toBe(true);
          // Whoever prints it must leave it as it is.
          nameFields(sheet);
        }
      }
    },
  );

  test('has the objects of the last one wherever nothing has changed', async () => {
    const uri = procedureUri('v4-major');
    const workspace = await openWorkspace(uri, new Map());
    const built = (text: string): Sheet => {
      workspace.set(uri, { is: 'text', text });
      const asked = { build: 'v4-20', language: 'en', changed: undefined, findings: [] } as const;
      const sheet = sheetOf(viewIn(workspace, uri), asked);
      if (sheet === undefined) throw new Error('no sheet');
      return sheet;
    };
    const steps = (sheet: Sheet) => sheet.phases.flatMap((phase) => phase.steps);
    const text = textOf(uri);
    const [first, typed] = [
      built(text),
      built(text.replace('text: Release the actuator rod', 'text: Now release the actuator rod')),
    ];
    const anew = steps(typed).filter((step, place) => step !== steps(first)[place]);
    expect(anew.map(({ title }) => title)).toEqual(['Now release the actuator rod']);
    for (const key of ['tools', 'consumables', 'kits', 'torqueTable', 'fates', 'header'] as const) {
      expect(typed[key], key).toBe(first[key]);
    }
    const [again, lower] = [built(text), built(`# a remark\n${text}`)];
    expect(steps(lower).every((step, place) => step === steps(again)[place])).toBe(true);
    expect(lower.source?.offsets).toEqual(again.source?.offsets.map((offset) => offset + 11));
  });
});
