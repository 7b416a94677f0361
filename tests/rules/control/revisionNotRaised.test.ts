import { describe, expect, test } from 'vitest';
import { compareRevisions, nextRevision } from '../../../server/src/core/model/revisionOrder';
import { type Example, inHead } from '../../../server/src/core/rules/examples';
import { offered, reported } from '../../support/checkText';

const CHANGES = ['Torque of part cap nut: 4.6 N·m → 51 N·m', 'Caution of install cover removed'];

function against(released: string, head: string, changes = CHANGES): Example {
  return { ...inHead(head), released: { revision: released, changes } };
}

const RULE = 'revision-not-raised';

test('a change of what is printed wants another revision, and the worst is named', async () => {
  expect(await reported(against('C', 'revision: C'), RULE)).toEqual([
    'C: Revision C was released and has changed since (Torque of part cap nut: 4.6 N·m → 51 N·m and 1 more); raise the revision',
  ]);
  expect(await offered(against('C', 'revision: C'), RULE)).toEqual(['Raise the revision to D']);
});

test('an earlier revision is no other one', async () => {
  expect(await reported(against('C', 'revision: B'), RULE)).toEqual([
    'B: Revision B comes before the released C; raise the revision above it',
  ]);
});

test.each([
  ['it was raised', against('C', 'revision: D')],
  ['only words have changed', against('C', 'revision: C', [])],
  ['nobody compares', inHead('revision: C')],
  ['words are in no order', against('pilot', 'revision: series')],
])('nothing is told where %s', async (_, example) => {
  expect(await reported(example, RULE)).toEqual([]);
});

describe('revisions are counted as the trade does', () => {
  const all = { skip: '' };
  // The letters that ASME Y14.35 leaves out, from memory.
  const few = { skip: 'IOQSXZ' };

  test.each([
    ['A', 'B'],
    ['Z', 'AA'],
    ['AZ', 'BA'],
    ['H', 'I'],
    ['1', '2'],
    ['9', '10'],
    ['1.9', '1.10'],
    ['09', '10'],
    ['B2', 'B3'],
  ])('%s comes before %s', (first, second) => {
    expect(compareRevisions(first, second, all)).toBeLessThan(0);
    expect(compareRevisions(second, first, all)).toBeGreaterThan(0);
    expect(nextRevision(first, all)).toBe(second);
  });

  test.each([
    ['H', 'J'],
    ['N', 'P'],
    ['P', 'R'],
    ['R', 'T'],
    ['W', 'Y'],
    ['Y', 'AA'],
    ['AY', 'BA'],
  ])('where letters are left out %s is followed by %s', (first, second) => {
    expect(nextRevision(first, few)).toBe(second);
    expect(compareRevisions(first, second, few)).toBeLessThan(0);
  });

  test('a letter that is left out, and a word, are in no series', () => {
    expect(compareRevisions('I', 'J', few)).toBeUndefined();
    expect(nextRevision('pilot 3', all)).toBeUndefined();
    expect(compareRevisions('draft', 'draft', all)).toBe(0);
  });

  test('numbers come before letters', () => {
    expect(compareRevisions('9', 'A', all)).toBeLessThan(0);
  });

  test('a thousand revisions count on without a gap', () => {
    let revision = 'A';
    for (let count = 1; count < 1000; count++) {
      const next = nextRevision(revision, few) ?? '';
      expect(compareRevisions(revision, next, few)).toBe(-1);
      expect(next).not.toMatch(/[IOQSXZ]/);
      revision = next;
    }
  });
});
