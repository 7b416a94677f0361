import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { declarationsIn, type NamedThing } from '../../server/src/core/analysis/declarations';
import { withOtherText } from '../../server/src/core/analysis/otherText';
import type { Snapshot } from '../../server/src/core/analysis/snapshot';
import { renameAt } from '../../server/src/core/ide/rename';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { applyEdits } from '../../server/src/core/text/span';
import { documentsBelow } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';
import { loadAll } from '../support/markedText';

const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);
const ROOT = resolve('sample-procedures');
// What cannot be read is not renamed in, and so nothing is renamed that stands there.
const paths = documentsBelow(ROOT).filter((path) => !path.includes('broken-in-the-middle'));
const files = Object.fromEntries(paths.map((path) => [relative(ROOT, path), readFileSync(path, 'utf8')]));
const all = await loadAll(files);
const things = [...all.uris].flatMap((uri) => {
  const document = all.document(uri);
  const declarations = document === undefined ? undefined : declarationsIn(document);
  return [...(declarations?.kinds ?? [])].flatMap((kind) => [...(declarations?.all(kind).values() ?? [])]);
});

/** A place among all things: what is printed of a counterexample is a number, and the name is in the error. */
const places = fc.nat(things.length - 1);

function thingAt(place: number): NamedThing {
  const thing = things[place];
  if (thing === undefined) throw new Error('The samples declare nothing');
  return thing;
}

/** Renames a thing at its declaration; every document that changed. */
function renamed(snapshot: Snapshot, thing: NamedThing, name: string): { after: Snapshot; changed: string[] } {
  const document = snapshot.document(thing.document.uri);
  const declared = document === undefined ? undefined : declarationsIn(document).find(thing.kind, thing.id);
  if (document === undefined || declared === undefined) throw new Error(`No ${thing.id}`);
  const renaming = renameAt(snapshot, document, document.spanOf(declared.declared.node).start + 1, name);
  if (renaming.is === 'refused') throw new Error(renaming.why);
  const changed = [...new Set(renaming.edits.map((edit) => edit.uri))];
  const after = changed.reduce((one, uri) => {
    const text = snapshot.document(uri)?.text ?? '';
    const edits = renaming.edits.filter((edit) => edit.uri === uri).map(({ edit }) => edit);
    const before = one.document(uri);
    return before === undefined ? one : withOtherText(one, before, applyEdits(text, edits)).snapshot;
  }, snapshot);
  return { after, changed };
}

/** What is found in a document, without where: a message may quote a name, and what comes near to it. */
function foundIn(snapshot: Snapshot, uri: string, rename: (id: string) => string): string[] {
  const document = snapshot.document(uri);
  if (document === undefined) throw new Error(`No ${uri}`);
  const { findings, conceded } = checkDocument(snapshot, document, { today: TODAY });
  return [...findings, ...conceded.map(({ finding }) => finding)].map(
    ({ rule, severity, step, about }) => `${severity} ${rule} ${rename(step ?? '')} ${about.map(rename).join(' ')}`,
  );
}

describe(`on the samples (seed ${seed})`, () => {
  test('a name given and taken back leaves every text as it was', () => {
    fc.assert(
      fc.property(places, (place) => {
        const thing = thingAt(place);
        const { after, changed } = renamed(all, thing, 'quite-another-name');
        expect(changed).toContain(thing.document.uri);
        const { after: back } = renamed(after, { ...thing, id: 'quite-another-name' }, thing.id);
        for (const uri of all.uris) expect(back.document(uri)?.text).toBe(all.document(uri)?.text);
        // Nothing but ids was touched: with the name put back by hand in every place the texts are alike as well.
        for (const uri of changed) {
          expect(after.document(uri)?.text.replaceAll('quite-another-name', thing.id)).toBe(all.document(uri)?.text);
        }
      }),
      { seed, numRuns: 120 },
    );
  });

  test('what is found after a renaming is what was found before, up to the name', () => {
    fc.assert(
      fc.property(places, (place) => {
        const thing = thingAt(place);
        const { after, changed } = renamed(all, thing, 'quite-another-name');
        const before = (id: string) => (id === 'quite-another-name' ? thing.id : id);
        for (const uri of changed) expect(foundIn(after, uri, before)).toEqual(foundIn(all, uri, (id) => id));
      }),
      { seed, numRuns: 25 },
    );
  });
});
