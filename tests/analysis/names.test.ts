import { expect, test } from 'vitest';
import { Names } from '../../server/src/core/analysis/names';
import { type Example, inFamily, inHead, inStep, withFamily } from '../../server/src/core/rules/examples';
import { openFiles } from '../support/memoryFiles';

async function namesIn(example: Example): Promise<Names> {
  const { workspace, document } = await openFiles(example.files, example.at);
  return Names.of(workspace.snapshot, document);
}

test('a procedure sees its own steps, its family and its stores', async () => {
  const names = await namesIn(inStep('- install: cover'));
  expect(names.find('step', 'only-step')?.name).toBe('Do the work');
  expect(names.find('part', 'cap-nut')?.name).toBe('cap nut');
  expect(names.find('tool', 'socket-8')?.document.kind).toBe('stores');
  expect([...names.all('limit-or-reading').keys()]).toEqual(['end-play']);
});

test('an id that nothing has comes with what may have been meant', async () => {
  const names = await namesIn(inStep('- install: cover'));
  const found = names.lookUp('part', 'cap-nutt');
  expect(found.is === 'unknown' && found.near.map((thing) => thing.id)).toEqual(['cap-nut']);
});

test('nothing is said about ids of a document that cannot be read', async () => {
  const names = await namesIn(inHead('family: ../families/none.family.yaml'));
  expect(names.lookUp('part', 'cap-nutt')).toEqual({ is: 'unreadable' });
  expect(names.lookUp('tool', 'socket-9').is).toBe('unknown');
});

test('an id that stands in a broken part of its document is not held to be unknown', async () => {
  const broken = withFamily(inStep('- install: lid'), 'parts:\n  lid: { name: lid, sits-on: core');
  const names = await namesIn(broken);
  expect(names.lookUp('part', 'lidd').is).toBe('unknown');
  expect(names.lookUp('part', 'lid').is).not.toBe('unknown');
});

test('a mention is ambiguous only where things of two kinds share its id', async () => {
  const names = await namesIn(withFamily(inStep('- install: cover'), 'limits:\n  cover: { name: play of the cover }'));
  const mention = (kind: string | undefined, id: string) => names.lookUpMention({ kind, id, from: 0, to: 0 }).is;
  expect(mention(undefined, 'cover')).toBe('ambiguous');
  expect(mention('limit', 'cover')).toBe('found');
  expect(mention(undefined, 'cap-nut')).toBe('found');
  expect(mention(undefined, 'nothing-like-it')).toBe('unknown');
});

test('a family may speak of tools that it cannot see, but a slip in one of its own ids is one', async () => {
  const names = await namesIn(inFamily('name: Pellow K1'));
  const mention = (id: string) => names.lookUpMention({ kind: undefined, id, from: 0, to: 0 }).is;
  expect(mention('soft-hammer')).toBe('unreadable');
  expect(mention('cap-nutt')).toBe('unknown');
});
