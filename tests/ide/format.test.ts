import { describe, expect, test } from 'vitest';
import { formatDocument, formatRange } from '../../server/src/core/ide/format/formatDocument';
import type { DocumentKind } from '../../server/src/core/syntax/documentKind';
import { applyEdits } from '../../server/src/core/text/span';
import { read } from '../support/read';
import { steps } from './markedExample';

function formatted(text: string, kind: DocumentKind = 'procedure'): string {
  const once = applyEdits(text, formatDocument(read(text, kind)));
  expect(applyEdits(once, formatDocument(read(once, kind)))).toBe(once);
  return once;
}

/** What becomes of the instructions of a step. */
function instructions(text: string): string {
  return (
    formatted(steps(text))
      .split('        do:\n')[1]
      ?.replaceAll(/^ {10}/gm, '') ?? ''
  );
}

describe('the order of keys', () => {
  test('is that of the definition, the verb first', () => {
    expect(instructions('- with: socket-8\n  torque: 5 N·m\n  tighten: cap-nut\n  when: k1-b')).toBe(
      '- tighten: cap-nut\n  when: k1-b\n  torque: 5 N·m\n  with: socket-8\n',
    );
  });

  test('holds in brackets too', () => {
    expect(instructions('- tighten: cap-nut\n  hold: { with: socket-12, at: hexagon }')).toBe(
      '- tighten: cap-nut\n  hold: { at: hexagon, with: socket-12 }\n',
    );
  });

  test('takes comments above a key and behind it along', () => {
    expect(instructions('- install: wheel\n  # why\n  with: press # a small one\n  # which\n  when: k1-b')).toBe(
      '- install: wheel\n  # which\n  when: k1-b\n  # why\n  with: press # a small one\n',
    );
  });

  test('lifts the comment of what comes first above the dash', () => {
    expect(instructions('- with: press\n  # the small one\n  install: wheel')).toBe(
      '# the small one\n- install: wheel\n  with: press\n',
    );
  });

  test('keeps groups together that blank lines part', () => {
    const text =
      'witnessmark: 1\nname: Kit\nkit: K-1\n\nlines:\n  - { part: nut, item: 10 }\n\nrevision: 4\nfamily: f.family.yaml\n';
    expect(formatted(text, 'kit')).toBe(
      'witnessmark: 1\nkit: K-1\nname: Kit\n\nrevision: 4\nfamily: f.family.yaml\n\nlines:\n  - { item: 10, part: nut }\n',
    );
  });

  test('leaves the ids of a map and the entries of a list in the order of the writer', () => {
    const text =
      'witnessmark: 1\nfamily: f-1\nparts:\n  zinc: { kind: nut, name: b }\n  acid: { name: a }\nbase: zinc\n';
    expect(formatted(text, 'family')).toBe(
      'witnessmark: 1\nfamily: f-1\nbase: zinc\nparts:\n  zinc: { name: b, kind: nut }\n  acid: { name: a }\n',
    );
  });

  test('leaves a key that the definition has not behind its neighbour', () => {
    expect(instructions('- with: press\n  colour: red\n  install: wheel')).toBe(
      '- install: wheel\n  with: press\n  colour: red\n',
    );
  });

  test('changes nothing where a key stands twice, since the first counts', () => {
    const text = '- install: wheel\n  with: press\n  with: socket-8\n  when: k1-b\n';
    expect(instructions(text)).toBe(text);
  });

  test('moves the keys of a phase with the steps that they hold', () => {
    const text = steps('- install: wheel')
      .replace('  - phase: Assemble\n    steps:', '  - steps:')
      .concat('    phase: Assemble\n');
    expect(formatted(text)).toBe(steps('- install: wheel'));
  });
});

describe('quantities', () => {
  test.each([
    ['5.1Nm', '5.1 N·m'],
    ['45 in-lbs', '45 lbf·in'],
    ['5.1 +/- 0.3 Nm', '5.1 ± 0.3 N·m'],
    ['5.10±0.30  N•m', '5.10 ± 0.30 N·m'],
    ['"5.1 +/- 0.3 Nm"', '"5.1 ± 0.3 N·m"'],
    ['5.1 ± 0.3 Nm(45 ± 3 in-lb)', '5.1 ± 0.3 N·m (45 ± 3 lbf·in)'],
    ['4.8 .. 5.4 Nm', '4.8..5.4 N·m'],
    ['{ k1-a: 5Nm, otherwise: 6 Nm }', '{ k1-a: 5 N·m, otherwise: 6 N·m }'],
  ])('%s is written %s', (before, after) => {
    expect(instructions(`- tighten: cap-nut\n  torque: ${before}`)).toBe(`- tighten: cap-nut\n  torque: ${after}\n`);
  });

  test.each(['5,1 Nm', '5 lb', '5.1', '5.1 Nm (90 in-lb)', '5 Nm about'])(
    '%s has more wrong with it and stays',
    (text) => {
      expect(instructions(`- tighten: cap-nut\n  torque: ${text}`)).toBe(`- tighten: cap-nut\n  torque: ${text}\n`);
    },
  );

  test('prose is the writer’s', () => {
    const text = '- say: Tighten to 5Nm +/- 10 %,  as  before.\n  note: 45 in-lbs\n';
    expect(instructions(text)).toBe(text);
  });
});

describe('spacing', () => {
  test('indents by two, below a dash and below a key', () => {
    const text =
      'witnessmark:   1\nfamily: f-1\nparts:\n      nut:\n            name:  nut\n            behind:\n            -   bolt\n            - pin\n';
    expect(formatted(text, 'family')).toBe(
      'witnessmark: 1\nfamily: f-1\nparts:\n  nut:\n    name: nut\n    behind:\n      - bolt\n      - pin\n',
    );
  });

  test('takes off spaces and blank lines that say nothing, and ends with one line end', () => {
    expect(formatted('witnessmark: 1  \n\n\n\nkit: K-1\t\n\n\n', 'kit')).toBe('witnessmark: 1\n\nkit: K-1\n');
    expect(formatted('witnessmark: 1\nkit: K-1', 'kit')).toBe('witnessmark: 1\nkit: K-1\n');
  });

  test('writes brackets and remarks with one space', () => {
    expect(instructions('- clean:   [wheel,nut ]   # both\n  using: {  }')).toBe(
      '- clean: [wheel, nut] # both\n  using: {}\n',
    );
  });

  test('keeps a sign apart that would else read as lost text', () => {
    expect(instructions('- say: Clean it   # 3 of them\n')).toBe('- say: Clean it  # 3 of them\n');
  });

  test('moves a block of text as a whole and leaves what stands in it', () => {
    expect(instructions('-   say: |\n        One  line  \n\n          # no comment\n\n    note: after')).toBe(
      '- say: |\n    One  line  \n\n      # no comment\n\n  note: after\n',
    );
  });

  test('keeps the lines of a text and of brackets that run over several', () => {
    expect(instructions('- say: One\n         two\n  with:\n      [press,\n    socket-8]')).toBe(
      '- say: One\n    two\n  with:\n    [press,\n      socket-8]\n',
    );
  });

  test('keeps comments at the depth of what they are about', () => {
    const text = '- clean:\n    - wheel\n    # and later the nut\n  # a rag will do\n  using: degreaser\n# the end\n';
    expect(instructions(text)).toBe(text);
  });

  test('keeps the line ends that most lines have', () => {
    expect(formatted('witnessmark:  1\r\nkit: K-1\nname: Kit\r\n', 'kit')).toBe(
      'witnessmark: 1\r\nkit: K-1\r\nname: Kit\r\n',
    );
  });

  test('keeps the mark at the start of a file, a start marker and what stands above the first key', () => {
    const text = '\uFEFF# About this kit\n---\n# More\nname: Kit\nkit: K-1\nwitnessmark: 1\n';
    expect(formatted(text, 'kit')).toBe('\uFEFF# About this kit\n---\n# More\nwitnessmark: 1\nkit: K-1\nname: Kit\n');
  });
});

describe('what is broken', () => {
  const BROKEN = `witnessmark: 1
procedure: OP-1
phases:
    - phase: One
      steps:
          - step: whole
            do:
            - with: press
              install: wheel
          - step: torn
            title: "no end
            do: [ a,b ]
`;

  test('stays while the steps around it are formatted', () => {
    expect(formatted(BROKEN)).toBe(
      BROKEN.replace(
        '            - with: press\n              install: wheel',
        '              - install: wheel\n                with: press',
      ),
    );
  });

  test('is no reason to stop where nothing of the document can be read', () => {
    for (const text of ['', '\n\n', 'just words\n', '- a\n- b\n', '{ a: 1', '\t\n'])
      expect(applyEdits(text, formatDocument(read(text)))).toBe(text);
  });

  test.each(['<<<<<<< ours', '%YAML 1.2', '---'])('a document with %s in it is left alone', (line) => {
    const text = `witnessmark:  1\n${line}\nkit:  K-1\n`;
    expect(formatDocument(read(text, 'kit'))).toEqual([]);
  });
});

describe('edits', () => {
  test('are small, so that the rest of the line keeps its cursor', () => {
    const text = steps('- tighten: cap-nut\n  torque: 5.1Nm');
    const at = text.indexOf('5.1Nm') + 3;
    expect(formatDocument(read(text))).toEqual([{ span: { start: at, end: at + 1 }, text: ' N·' }]);
  });

  test('change nothing where all is as it should be', () => {
    expect(formatDocument(read(steps('- install: wheel')))).toEqual([]);
  });
});

test('a range formats the items that it touches', () => {
  const text = steps('- install:  wheel').concat('      - step:  next\n        title:  Next\n        do: [ a ]\n');
  const start = text.indexOf('title:  Next');
  const after = applyEdits(text, formatRange(read(text), { start, end: start }));
  expect(after).toBe(
    text.replace(
      'step:  next\n        title:  Next\n        do: [ a ]',
      'step: next\n        title: Next\n        do: [a]',
    ),
  );
});
