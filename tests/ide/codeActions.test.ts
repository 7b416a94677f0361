import { describe, expect, test } from 'vitest';
import { fixAllSafe, fixesAt } from '../../server/src/core/ide/codeActions';
import type { Finding, FixSafety } from '../../server/src/core/rules/finding';
import { applyEdits } from '../../server/src/core/text/span';

const URI = 'file:///work/a.procedure.yaml';
const TEXT = 'one two two three';

/** A finding at a word of the text, with fixes that write other words in its place. */
function finding(word: string, nth: number, safety: FixSafety, ...into: string[]): Finding {
  const start = [...TEXT.matchAll(new RegExp(word, 'g'))][nth]?.index ?? 0;
  const span = { start, end: start + word.length };
  return {
    rule: `word-${word}`,
    severity: 'warning',
    uri: URI,
    span,
    message: word,
    about: [],
    step: undefined,
    builds: '',
    where: () => undefined,
    related: [],
    working: () => [],
    fixes: () => into.map((text) => ({ title: `Write ${text}`, safety, edits: [{ uri: URI, edit: { span, text } }] })),
  };
}

const one = finding('one', 0, 'safe', '1');
const two = finding('two', 0, 'suggestion', '2', 'II');
const alsoTwo = finding('two', 1, 'suggestion', '2');
const three = finding('three', 0, 'safe', '3');
const all = [one, two, alsoTwo, three];

function applied(action: {
  edits: readonly { edit: { span: { start: number; end: number }; text: string } }[];
}): string {
  return applyEdits(
    TEXT,
    action.edits.map(({ edit }) => edit),
  );
}

describe('fixes at a place', () => {
  test('are those of the findings that the range touches', () => {
    expect(fixesAt(all, { start: 1, end: 1 }).map((action) => action.title)).toEqual(['Write 1']);
    expect(fixesAt(all, { start: TEXT.length, end: TEXT.length }).map((action) => action.title)).toEqual(['Write 3']);
    expect(fixesAt([], { start: 0, end: TEXT.length })).toEqual([]);
  });

  test('are preferred only where they may be done unseen', () => {
    expect(fixesAt(all, { start: 0, end: TEXT.length }).map(({ title, preferred }) => `${title} ${preferred}`)).toEqual(
      [
        'Write 1 true',
        'Write 2 false',
        'Write II false',
        'Write 2 false',
        'Write 3 true',
        'Write 2 at all 2 places (word-two) false',
      ],
    );
  });

  test('can be done at every place where the same rule offers the same', () => {
    const action = fixesAt(all, { start: 4, end: 4 }).find((one) => one.kind === 'all-alike');
    expect(action?.findings).toEqual([two, alsoTwo]);
    expect(action === undefined ? '' : applied(action)).toBe('one 2 2 three');
  });
});

describe('all safe fixes at once', () => {
  test('leave suggestions alone', () => {
    const action = fixAllSafe(all, URI);
    expect(action?.title).toBe('Apply all 2 safe fixes');
    expect(action === undefined ? '' : applied(action)).toBe('1 two two 3');
  });

  test('leave out what touches another change, and what changes another document', () => {
    const again = finding('one', 0, 'safe', 'uno');
    expect(fixAllSafe([one, again], URI)?.findings).toEqual([one]);
    expect(fixAllSafe(all, 'file:///work/b.kit.yaml')).toBeUndefined();
  });
});
