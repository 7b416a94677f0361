import { describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import type { Rank } from '../../server/src/core/ide/completion/rank';
import { partRanking } from '../../server/src/core/ide/completion/ranking';
import { toolRanking } from '../../server/src/core/ide/completion/rankingTools';
import { toolListEdit } from '../../server/src/core/ide/completion/toolListEdit';
import { applyEdits } from '../../server/src/core/text/span';
import { openMarks } from '../support/markedText';
import { example, FAMILY, HEAD, PROCEDURE, STORES, steps } from './markedExample';

async function open(files: Readonly<Record<string, string>>) {
  const marked = { ...files, [PROCEDURE]: `${files[PROCEDURE]}‸` };
  const { snapshot, document } = await openMarks(marked);
  const procedure = ProcedureView.of(snapshot, document);
  if (procedure === undefined) throw new Error('The procedure cannot be read');
  return { procedure, document };
}

/** The parts as they are ranked before an instruction of the last step, `part: why`, rank by rank. */
async function ranked(instructions: string, at: number, verb: string, key = verb, more: Edits = {}): Promise<string[]> {
  const { procedure } = await open(example(steps(instructions), more));
  const step = procedure.steps.at(-1);
  if (step === undefined) throw new Error('No step');
  return inOrder(partRanking(procedure, step, at, verb, key));
}

type Edits = Parameters<typeof example>[1];

function inOrder(ranks: ReadonlyMap<string, Rank>): string[] {
  const sorted = [...ranks].sort(([, a], [, b]) => a.rank - b.rank);
  const shown = ([id, { why }]: [string, Rank]) => (why === undefined ? id : `${id}: ${why}`);
  return [...new Set(sorted.map(([, { rank }]) => rank))].map((rank) =>
    sorted
      .filter(([, one]) => one.rank === rank)
      .map(shown)
      .join(', '),
  );
}

describe('Parts that fit where they are typed', () => {
  test('what is finger-tight is tightened first', async () => {
    const [first, second] = await ranked('- loosen: cover-screw\n- tighten: ', 1, 'tighten');
    expect(first).toBe('cover-screw: finger-tight here');
    expect(second).toBe('cap-nut: already tight');
  });

  test('what comes off next is what nothing holds', async () => {
    const order = await ranked('- remove: cover-screw\n- remove: ', 1, 'remove');
    expect(order).toEqual([
      'cover',
      'cover-seal: behind the cover, wheel: held by the cap nut, cap-nut: behind the cover',
      'core: everything sits on it, cover-screw: already off',
    ]);
  });

  test('a nut behind the cover cannot be loosened yet', async () => {
    const order = await ranked('- loosen: ', 0, 'loosen');
    expect(order[0]).toBe('cover-screw: tight here');
    expect(order[1]).toBe('cap-nut: behind the cover');
  });

  test('what is fitted next has its seat and goes in before nothing that is in place', async () => {
    const before = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]\n';
    const [first] = await ranked(`${before}- install: `, 1, 'install');
    expect(first).toBe('cover, cover-screw, cover-seal, wheel, cap-nut');
    const later = await ranked(`${before}- install: cap-nut\n- install: cover\n- install: `, 3, 'install');
    expect(later).toEqual([
      'cover-screw',
      'cover-seal: goes in before the cover, wheel: goes in before the cap nut',
      'core: already fitted, cover: already fitted, cap-nut: already fitted',
    ]);
  });

  test('a part that the family wants cleaned is fitted when it is clean', async () => {
    const wanted: Edits = {
      [FAMILY]: [['behind: [cover], renew: on-', 'behind: [cover], before-fitting: [clean], renew: on-']],
    };
    const before = '- remove: [cover-screw, cover, cap-nut, wheel]\n';
    const order = await ranked(`${before}- install: `, 1, 'install', 'install', wanted);
    expect(order[1]).toBe('wheel: still to be cleaned');
    const clean = await ranked(`${before}- clean: `, 1, 'clean', 'clean', wanted);
    expect(clean[0]).toBe('wheel: still to be cleaned');
    const done = await ranked(`${before}- clean: wheel\n- install: `, 2, 'install', 'install', wanted);
    expect(done[0]).toContain('wheel');
  });

  test('the instruction that is typed does not count', async () => {
    const half = await ranked('- remove: cover-screw\n- remove: cov\n- install: cover', 1, 'remove');
    const whole = await ranked('- remove: cover-screw\n- remove: cover\n- install: cover', 1, 'remove');
    expect(half).toEqual(whole);
    expect(half[0]).toBe('cover');
  });

  test('a key that holds no part has no order', async () => {
    expect(await ranked('- tighten: cover-screw', 0, 'tighten', 'torque')).toEqual([]);
    expect(await ranked('- check: ', 0, 'check')).toEqual([]);
  });
});

describe('Tools that fit where they are typed', () => {
  async function tools(instruction: string, more: Edits = {}): Promise<string[]> {
    const { procedure } = await open(example(steps(instruction), more));
    const step = procedure.steps.at(-1);
    const typed = step?.step.do?.at(-1);
    if (step === undefined || typed === undefined) throw new Error('No instruction');
    return inOrder(toolRanking(procedure, step, typed));
  }

  test('the socket of the size and the wrench that reaches the torque', async () => {
    const sized: Edits = { [FAMILY]: [['torque: 9 ± 1 N·m }', 'torque: 9 ± 1 N·m, across-flats: 10 mm }']] };
    const order = await tools('- tighten: cover-screw', sized);
    expect(order[0]).toBe('torque-wrench-10: reaches 2..10 N·m, socket-10: fits 10 mm');
    expect(order.at(-1)).toBe('socket-8: another size');
  });

  test('a wrench that ends below the torque comes last', async () => {
    const order = await tools('- tighten: cover-screw\n  torque: 12 ± 1 N·m');
    expect(order.at(-1)).toContain('torque-wrench-10: reaches 2..10 N·m only');
  });

  test('the gauge that reads fine enough', async () => {
    const coarse: Edits = {
      [STORES]: [
        ['consumables:', '  old-gauge: { kind: indicator, resolution: 0.05 mm, range: 0..10 mm }\nconsumables:'],
      ],
    };
    const order = await tools('- measure: end-play', coarse);
    expect(order[0]).toBe('dial-gauge: reads 0.001 mm');
    expect(order.at(-1)).toBe('old-gauge: too coarse, reads 0.05 mm');
  });

  test('of tools that are equal, the one that is listed', async () => {
    const order = await tools('- inspect: wheel', {
      [STORES]: [['consumables:', '  lamp-a: { kind: lamp }\n  lamp-b: { kind: lamp }\nconsumables:']],
      [PROCEDURE]: [['dial-gauge]', 'dial-gauge, lamp-b]']],
    });
    expect(order.slice(0, 2)).toEqual(['lamp-b: for this work', 'lamp-a: for this work']);
  });
});

describe('A tool put on the list of tools', () => {
  async function listed(list: string, id = 'lamp-b'): Promise<string | undefined> {
    const head = HEAD.replace(/tools: .*\n/, list);
    const { document } = await open(example(`${head}phases: []\n`));
    const edit = toolListEdit(document, id);
    return edit === undefined
      ? undefined
      : applyEdits(document.text, [edit]).slice(HEAD.indexOf('tools: [')).split('consumables')[0];
  }

  test('at the end of a list between brackets', async () => {
    expect(await listed('tools: [socket-8, dial-gauge] # all of bay 1\n')).toBe(
      'tools: [socket-8, dial-gauge, lamp-b] # all of bay 1\n',
    );
  });

  test('in its place in a sorted list', async () => {
    expect(await listed('tools: [dial-gauge, socket-8]\n')).toBe('tools: [dial-gauge, lamp-b, socket-8]\n');
  });

  test('on a line of its own, behind the remark of the last entry', async () => {
    expect(await listed('tools:\n  - socket-8\n  - dial-gauge # the fine one\n')).toBe(
      'tools:\n  - socket-8\n  - dial-gauge # the fine one\n  - lamp-b\n',
    );
    expect(await listed('tools:\n- dial-gauge\n- socket-8\n')).toBe('tools:\n- dial-gauge\n- lamp-b\n- socket-8\n');
  });

  test('where no list is yet', async () => {
    expect(await listed('')).toBe('tools: [lamp-b]\n');
    expect(await listed('tools:\n')).toBe('tools: [lamp-b]\n');
  });

  test('not a second time', async () => {
    expect(await listed('tools: [lamp-b]\n')).toBeUndefined();
  });
});
