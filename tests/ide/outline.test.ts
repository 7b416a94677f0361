import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { outlineOf } from '../../server/src/core/ide/outline';
import type { OutlineEntry } from '../../server/src/core/ide/outlineEntry';
import type { DocumentKind } from '../../server/src/core/syntax/documentKind';
import { read } from '../support/read';
import { HEAD } from './markedExample';

/** The outline as lines: kind, label, what is behind it, and in brackets the words that the cursor goes to. */
function drawn(text: string, kind: DocumentKind): string[] {
  const document = read(text, kind);
  const lines = (entry: OutlineEntry, indent: string): string[] => {
    const marked = document.text.slice(entry.labelSpan.start, entry.labelSpan.end);
    const detail = entry.detail === '' ? '' : ` | ${entry.detail}`;
    const own = `${indent}${entry.kind} ${entry.label}${detail} [${marked}]`;
    return [own, ...entry.children.flatMap((child) => lines(child, `${indent}  `))];
  };
  return outlineOf(document).flatMap((entry) => lines(entry, ''));
}

describe('the outline', () => {
  test('of a procedure: phases and steps, with torques and hold points', () => {
    const text = `${HEAD}figures:
  view: { file: nut.svg, caption: The nut }
phases:
  - phase: Strip
    steps:
      - step: open-cover
        title: Take off the cover
        do: [{ loosen: cover-screw }]
  - phase: { text: Assemble, de: Zusammenbauen }
    steps:
      - step: fit-nut
        title: Fit the nut
        sign: inspector
        do:
          - tighten: cap-nut
            torque: { k1-a: 4.6 ± 0.3 N·m, otherwise: 5 N·m }
          - check: It is tight.
            if-not: { do: [{ tighten: cap-nut, torque: 5 N·m }, { tighten: cover-screw, passes: [4 N·m, 9 N·m] }] }
      - step: no-title
        do: [Wait.]
concessions:
  - { rule: torque-missing, at: fit-nut, because: x, by: y, until: 2099-01-01 }
`;
    expect(drawn(text, 'procedure')).toEqual([
      'group figures [figures]',
      '  figure view | The nut [view]',
      'phase Strip [Strip]',
      '  step Take off the cover | open-cover [open-cover]',
      'phase Assemble [Assemble]',
      '  step Fit the nut | fit-nut · 4.6 ± 0.3 N·m · 5 N·m · 9 N·m · hold point: inspector [fit-nut]',
      '  step no-title [no-title]',
      'group concessions [concessions]',
      '  concession torque-missing | at fit-nut [torque-missing]',
    ]);
  });

  test('of a family, a kit, stores and settings: groups and what is in them', () => {
    const family =
      'family: x\nvariants:\n  v-a: { name: V A }\nparts:\n  core: { name: core }\n  cover:\ndimensions:\n  bore: 8 mm\n';
    expect(drawn(family, 'family')).toEqual([
      'group variants [variants]',
      '  variant v-a | V A [v-a]',
      'group parts [parts]',
      '  part core | core [core]',
      '  part cover [cover]',
      'group dimensions [dimensions]',
      '  dimension bore | 8 mm [bore]',
    ]);
    const kit =
      'kit: K\nlines:\n  - { item: 10, part: cover-seal, number: PK-104, quantity: 2 }\n  - { number: PK-1 }\n  - {}\n';
    expect(drawn(kit, 'kit')).toEqual(['group lines [lines]', '  kit-line 10 cover-seal | 2 × PK-104 [cover-seal]']);
    expect(drawn('tools:\n  socket-8: { name: 8 mm socket }\nconsumables: {}\n', 'stores')).toEqual([
      'group tools [tools]',
      '  tool socket-8 | 8 mm socket [socket-8]',
    ]);
    expect(drawn('severities:\n  tool-unused: off\n', 'settings')).toEqual([
      'group severities [severities]',
      '  setting tool-unused | off [tool-unused]',
    ]);
  });

  test.each(['', 'x', '- a', 'phases:', 'phases: [', 'phases:\n  - steps:\n      - step:\n', 'parts:\n  : {'])(
    'of a broken document shows what there is: %j',
    (text) => {
      for (const kind of ['procedure', 'family', 'kit', 'stores', 'settings'] as const) {
        for (const line of drawn(text, kind)) expect(line).toMatch(/^ *\S+ \S/);
      }
    },
  );

  test('a step that cannot be read takes none of the others away', () => {
    const text = `${HEAD}phases:
  - phase: Assemble
    steps:
      - step: first-one
        title: "First
        do: []
      - step: second-one
        title: Second
        do: []
`;
    expect(drawn(text, 'procedure').at(-1)).toBe('  step Second | second-one [second-one]');
  });

  test.each([
    ['procedures/v4-major.procedure.yaml', 'procedure'],
    ['families/ostrel-v4.family.yaml', 'family'],
    ['faulty/broken-in-the-middle.procedure.yaml', 'procedure'],
  ] as const)('of %s: each entry lies in the one above it, and its words in it', (path, kind) => {
    for (const end of ['\n', '\r\n']) {
      const text = readFileSync(`sample-procedures/${path}`, 'utf8').replaceAll('\n', end);
      const inside = (entry: OutlineEntry) => {
        expect(entry.span.start).toBeLessThanOrEqual(entry.labelSpan.start);
        expect(entry.labelSpan.end).toBeLessThanOrEqual(entry.span.end);
        expect(text.slice(entry.span.start, entry.span.end)).toBe(text.slice(entry.span.start, entry.span.end).trim());
        for (const child of entry.children) {
          expect(child.span.start).toBeGreaterThanOrEqual(entry.span.start);
          expect(child.span.end).toBeLessThanOrEqual(entry.span.end);
          inside(child);
        }
      };
      const entries = outlineOf(read(text, kind));
      expect(entries.length).toBeGreaterThan(1);
      entries.forEach(inside);
    }
  });
});
