import { describe, expect, test } from 'vitest';
import { cellTitle } from '../../server/src/core/chart/chartWords';
import { chartOf, phasesOf, standingsOf } from './fixtures/chartOf';

const WHOLE = phasesOf(
  ['install: blank', 'remove: blank'],
  ['loosen: screw', 'remove: screw', 'loosen: ring', 'remove: cover', 'remove: seal'],
  ['mark: wheel\n            across: core', 'remove: wheel', 'heat: wheel\n            until: 90 °C'],
  ['send: cover', 'receive: cover', 'clean: cover'],
  ['clean: seal', 'install: seal', 'install: wheel', 'align: wheel\n            to: core'],
  ['install: cover', 'seat: ring', 'install: screw', '{ tighten: screw, torque: 9 ± 1 N·m }'],
  ['measure: end-play', 'check: free-turn'],
);

function titleOf(chart: Awaited<ReturnType<typeof chartOf>>, part: string, step: number): string | undefined {
  const row = chart.rows.find((one) => one.part === part);
  const cell = row?.cells.find((one) => one.step === step - 1);
  return row && cell && cellTitle(chart, row, cell);
}

describe('a part stands', () => {
  test('as the walk leaves it, step by step', async () => {
    const chart = await chartOf(WHOLE, 't-1');
    expect(standingsOf(chart, 'core')[0]).toBe('fitted');
    expect(standingsOf(chart, 'screw')).toEqual(['torqued', '2: loose', '2: off', '6: loose', '6: torqued']);
    expect(standingsOf(chart, 'ring')).toEqual(['fitted', '2: released', '6: fitted']);
    expect(standingsOf(chart, 'cover')).toEqual(['fitted', '2: off', '4: away', '4: off', '4: ready', '6: fitted']);
    expect(standingsOf(chart, 'seal')).toEqual(['fitted', '2: gone', '5: ready', '5: fitted']);
    expect(standingsOf(chart, 'blank')).toEqual(['absent', '1: fitted', '1: absent']);
  });

  test('on the bench while what carries it is off', async () => {
    expect(standingsOf(await chartOf(WHOLE, 't-1'), 'badge')).toEqual(['fitted', '2: bench', '6: fitted']);
  });

  test('not in the unit before it is fitted for the first time, and is given back where another takes its place', async () => {
    const upgrade = phasesOf(['remove: wheel', 'return: wheel'], ['install: wheel-44']);
    const chart = await chartOf(upgrade, 't-1,big-wheel,arrives=none');
    expect(standingsOf(chart, 'wheel')).toEqual(['fitted', '1: off', '1: gone']);
    expect(standingsOf(chart, 'wheel-44')).toEqual(['absent', '2: fitted']);
    expect(standingsOf(await chartOf(upgrade, 't-1,arrives=none'), 'wheel-44')).toEqual([]);
  });

  test('with the number of pieces where only some are in place', async () => {
    const chart = await chartOf(phasesOf(['{ remove: screw, count: 3 }']), 't-1');
    expect(titleOf(chart, 'screw', 1)).toMatch(/^Step 1 Step A: screw, taken off, in place, torqued, 1 piece\./);
  });
});

describe('a cell says in words', () => {
  test('what is done and how the part then stands', async () => {
    const chart = await chartOf(WHOLE, 't-1');
    expect(titleOf(chart, 'screw', 2)).toBe('Step 2 Step B: screw, loosened, in place, finger-tight; then taken off');
    expect(titleOf(chart, 'wheel', 3)).toContain('marked; then taken off');
    expect(titleOf(chart, 'wheel', 3)).toMatch(/heated, off, made ready to fit, hot, marked$/);
  });

  test('what is measured and checked of the parts that the result depends on', async () => {
    const chart = await chartOf(WHOLE, 't-1');
    expect(titleOf(chart, 'wheel', 7)).toBe(
      'Step 7 Step G: wheel, measured: end play; then checked: The wheel turns freely',
    );
    expect(chart.steps[6]?.examined).toEqual(['end play', 'The wheel turns freely']);
    expect(titleOf(chart, 'seal', 7)).toBeUndefined();
  });
});

describe('the rows', () => {
  test('begin with the base, hang each part below what carries it, and end with what is temporary', async () => {
    const { rows } = await chartOf(WHOLE, 't-1,arrives=none');
    const tree = rows.map(({ part, depth }) => `${'>'.repeat(depth)}${part}`);
    expect(tree).toEqual(['core', '>cover', '>>badge', '>screw', '>ring', '>seal', '>wheel', 'blank']);
    expect(rows.map((row) => row.isTemporary)).toEqual([...Array(7).fill(false), true]);
  });
});

describe('what the build leaves open', () => {
  const BOTH = phasesOf(
    ['identify: hand'],
    ['{ loosen: screw, when: hand=left }'],
    ['{ remove: screw, when: hand=right }'],
  );

  test('goes the plain way, which is told, and keeps the numbers of the sheet', async () => {
    const chart = await chartOf(BOTH, 't-2');
    expect(chart.assumed).toEqual(['the hand of the nut is right']);
    expect(chart.steps.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(standingsOf(chart, 'screw')).toEqual(['torqued', '3: off']);
  });

  test('is not told where nothing looks at it', async () => {
    expect((await chartOf(phasesOf(['remove: cover']), 't-2')).assumed).toEqual([]);
  });

  test('does optional steps, and marks a step for another outcome as left out', async () => {
    const optional = phasesOf(['remove: wheel'], ['{ remove: screw, when: hand=left }']).replace(
      'title: Step A',
      'title: A\n        optional: true',
    );
    const phases = optional.replace('title: Step B', 'title: B\n        when: hand=left');
    const { steps, assumed } = await chartOf(phases, 't-2');
    expect(steps.map((step) => step.isLeftOut)).toEqual([false, true]);
    expect(assumed).toEqual(['the hand of the nut is right', 'step "A" is done']);
  });

  test('leaves out a step of another build altogether', async () => {
    const phases = phasesOf(['remove: wheel'], ['{ remove: ring, when: t-1 }'], ['remove: seal']);
    expect((await chartOf(phases, 't-2')).steps.map((step) => step.id)).toEqual(['step-a', 'step-c']);
  });
});

describe('findings', () => {
  test('stand at their step, and in the rows of the parts that they are about', async () => {
    const chart = await chartOf(phasesOf(['remove: cover']), 't-1');
    const [found] = chart.steps[0]?.findings.filter((one) => one.rule === 'removed-while-fastened') ?? [];
    expect(found?.about).toContain('screw');
    const screw = chart.rows.find((row) => row.part === 'screw');
    expect(screw?.cells.find((cell) => cell.step === 0)?.findings).toContain(found);
  });

  const end = {
    rule: 'left-off',
    severity: 'error',
    message: 'The seal is missing',
    builds: '',
    step: undefined,
  } as const;

  test('without a step stand behind the last one, and otherwise above the chart', async () => {
    const seal = { ...end, about: ['seal'] };
    const head = { ...end, rule: 'text-lost', about: [] };
    const chart = await chartOf(WHOLE, 't-1', [seal, head]);
    const cell = chart.rows.find((row) => row.part === 'seal')?.cells.find((one) => one.step === chart.steps.length);
    expect(cell?.findings).toContain(seal);
    expect(chart.elsewhere).toContain(head);
    expect(chart.elsewhere).not.toContain(seal);
  });
});
