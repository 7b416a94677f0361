import { describe, expect, test } from 'vitest';
import { walkSteps } from '../support/walkText';

/** Opens the example unit as far as the wheel; `CLOSE` puts it together again. */
const OPEN =
  '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]\n- inspect: wheel\n  if-not: { replace: wheel }';
const CLOSE =
  '- install: [wheel, cap-nut]\n- tighten: cap-nut\n- install: [cover-seal, cover, cover-screw]\n- tighten: cover-screw\n- check: free-turn';

/** A row of the table: what is done, on which family, what fails on the way, and what fails at the end. */
type Row = readonly [
  name: string,
  steps: string,
  failures: readonly string[],
  family?: string | undefined,
  end?: readonly string[],
];

function rows(title: string, list: readonly Row[]): void {
  describe(title, () => {
    test.each(list.map((row) => [row[0], row] as const))('%s', async (_, [, steps, failures, family, end]) => {
      const walked = await walkSteps(steps, family);
      expect(walked.failures).toEqual(failures);
      if (end !== undefined) expect(walked.end).toEqual(end);
    });
  });
}

const part = (id: string, text: string): string => `parts:\n  ${id}: { name: ${id}, ${text} }`;
const NUT = 'kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover]';

rows('the whole work', [
  ['strip and build', `${OPEN}\n${CLOSE}`, [], undefined, []],
  ['nothing at all', '- say: Look at it.', [], undefined, ['check-missing free-turn']],
]);

rows('loosen', [
  ['what is off', '- remove: cover-screw\n- loosen: cover-screw', ['not-fitted cover-screw']],
  ['what is out of reach', '- loosen: cap-nut', ['unreachable cap-nut cover']],
  [
    'a hand that only the bench can tell',
    '- remove: [cover-screw, cover]\n- loosen: cap-nut',
    ['hand-unknown cap-nut nut-hand'],
    `identify:\n  nut-hand: { name: hand, values: [left, right] }\n${part('cap-nut', NUT.replace('hand: right', 'hand: { nut-hand=left: left, nut-hand=right: right }'))}`,
  ],
  [
    'a single-use nut is spent',
    '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut',
    ['used-again cap-nut'],
    part('cap-nut', `${NUT}, renew: always`),
  ],
  [
    'threadlocker that was broken',
    '- remove: [cover-screw, cover, cap-nut]\n- apply: threadlocker\n  to: cap-nut\n- install: cap-nut\n- tighten: cap-nut\n- loosen: cap-nut\n- tighten: cap-nut',
    ['not-threadlocked cap-nut'],
    part('cap-nut', `${NUT}, before-fitting: [threadlock]`),
  ],
]);

rows('remove', [
  ['what is off', '- remove: [cover-screw, cover]\n- remove: cover', ['not-fitted cover']],
  ['what is held', '- remove: cover', ['still-fastened cover cover-screw']],
  ['what is covered', '- remove: cap-nut', ['covered cap-nut cover']],
  [
    'a clamp that is loose frees what it holds',
    '- loosen: cover-screw\n- remove: cover',
    [],
    part('cover-screw', 'kind: clamp, sits-on: core, torque: 9 N·m, thread: M6×1, hand: right'),
  ],
  [
    'unless it says otherwise',
    '- loosen: cover-screw\n- remove: cover',
    ['still-fastened cover cover-screw'],
    part('cover-screw', 'kind: clamp, frees-when: off, sits-on: core, torque: 9 N·m, thread: M6×1, hand: right'),
  ],
  ['some pieces', '- remove: cover-screw\n  count: 1\n- remove: cover', ['still-fastened cover cover-screw']],
  [
    'without the mark that keeps its position',
    OPEN,
    ['mark-missing cap-nut (when the wheel is re-used)', 'mark-missing wheel (when the wheel is re-used)'],
    'balance-groups:\n  rotor: { name: rotor, members: [wheel, cap-nut], keep-position: true }',
  ],
]);

rows('install and press', [
  ['what is in place', '- install: cover', ['fitted-already cover']],
  ['over a fastener', `${OPEN}\n- install: cap-nut\n- install: wheel`, ['in-the-way wheel cap-nut']],
  ['behind what is in place', `${OPEN}\n- install: [cover, wheel]`, ['in-the-way wheel cover']],
  ['over the old seal', '- remove: [cover-screw, cover]\n- install: cover', ['seal-used-again cover-seal cover']],
  [
    'on what is away',
    `- remove: [cover-screw, cover, cap-nut, ring]\n- remove: wheel\n- send: wheel\n- press: ring`,
    ['carrier-missing ring wheel'],
    part('ring', 'sits-on: wheel, quantity: 2'),
  ],
  [
    'a part that is new',
    `${OPEN}\n- discard: wheel\n- install: wheel`,
    [],
    part(
      'wheel',
      'sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: on-condition, before-fitting: [clean, inspect]',
    ),
  ],
  [
    'on trial asks for nothing',
    `${OPEN}\n- install: wheel\n  trial: true\n- remove: wheel`,
    [],
    part('wheel', 'sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [clean, lubricate]'),
  ],
  [
    'a trial that stays',
    `${OPEN}\n- install: wheel\n  trial: true`,
    [],
    undefined,
    [
      'left-off cover',
      'left-off cover-screw',
      'left-off cover-seal',
      'left-in wheel',
      'left-off cap-nut',
      'check-missing free-turn',
    ],
  ],
]);

const WANTS = (what: string): string =>
  part('wheel', `sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [${what}]`);

rows('before fitting', [
  ['not cleaned', `${OPEN}\n- install: wheel`, ['not-cleaned wheel'], WANTS('clean')],
  ['cleaned', `${OPEN}\n- clean: wheel\n- install: wheel`, [], WANTS('clean')],
  [
    'cleaned before it came off',
    '- clean: cover\n- remove: [cover-screw, cover, cover-seal]\n- install: cover',
    ['not-cleaned cover'],
    part('cover', 'sits-on: core, fastened-by: [cover-screw], before-fitting: [clean]'),
  ],
  ['blasted', `${OPEN}\n- clean: wheel\n  by: blast\n- install: wheel`, ['not-cleaned wheel']],
  ['blasted and washed', `${OPEN}\n- clean: wheel\n  by: blast\n- clean: wheel\n  by: wash\n- install: wheel`, []],
  [
    'not inspected',
    '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: wheel',
    ['not-inspected wheel'],
    WANTS('inspect'),
  ],
  ['not oiled', `${OPEN}\n- install: wheel`, ['not-lubricated wheel'], WANTS('lubricate')],
  [
    'oiled, then cleaned',
    `${OPEN}\n- apply: oil\n  to: wheel\n- clean: wheel\n- install: wheel`,
    ['not-lubricated wheel'],
    WANTS('lubricate'),
  ],
  ['not hot', `${OPEN}\n- install: wheel`, ['not-heated wheel'], WANTS('heat')],
  [
    'hot, but left to cool',
    `${OPEN}\n- heat: wheel\n- wait: 30 min\n- install: wheel`,
    ['not-heated wheel'],
    WANTS('heat'),
  ],
  ['hot', `${OPEN}\n- heat: wheel\n- install: wheel`, [], WANTS('heat')],
  ['not cold', `${OPEN}\n- install: wheel`, ['not-cooled wheel'], WANTS('cool')],
  ['not marked', `${OPEN}\n- install: wheel`, ['mark-missing wheel'], WANTS('mark')],
  [
    'no size chosen',
    `${OPEN}\n- discard: wheel\n- install: wheel`,
    ['size-not-chosen wheel'],
    part('wheel', 'sits-on: core, fastened-by: [cap-nut], behind: [cover], sizes: 0.4..0.6 mm'),
  ],
  ['nothing decided', '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: wheel', ['undecided wheel']],
]);

rows('tighten and seat', [
  ['what is off', '- remove: cover-screw\n- tighten: cover-screw', ['not-fitted cover-screw']],
  [
    'over nothing',
    '- remove: [cover-screw, cover]\n- install: cover-screw\n- tighten: cover-screw',
    ['nothing-held cover-screw cover'],
  ],
  [
    'hot',
    `${OPEN}\n- heat: wheel\n- install: [wheel, cap-nut]\n- tighten: cap-nut`,
    ['hot-while-tightened cap-nut wheel'],
  ],
  ['after cooling', `${OPEN}\n- heat: wheel\n- install: [wheel, cap-nut]\n- cool: wheel\n- tighten: cap-nut`, []],
  [
    'with a reading that was not taken',
    `${OPEN}\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n  plus: drag`,
    ['not-measured cap-nut drag'],
    'readings:\n  drag: { name: drag, quantity: torque }',
  ],
  [
    'the last pass is too low',
    '- loosen: cover-screw\n- tighten: cover-screw\n  passes: [3 N·m, 6 N·m]\n- check: free-turn',
    [],
    undefined,
    ['left-loose cover-screw'],
  ],
  [
    'the last pass is final',
    '- loosen: cover-screw\n- tighten: cover-screw\n  passes: [3 N·m, 9 N·m]\n- check: free-turn',
    [],
    undefined,
    [],
  ],
  [
    'some pieces',
    '- loosen: cover-screw\n- tighten: cover-screw\n  count: 1\n- check: free-turn',
    [],
    undefined,
    ['left-loose cover-screw'],
  ],
  [
    'some pieces, then the others',
    '- loosen: cover-screw\n- tighten: cover-screw\n  count: 1\n- tighten: cover-screw\n  count: 1\n- check: free-turn',
    [],
    undefined,
    [],
  ],
  [
    'the angle is left out',
    '- loosen: cover-screw\n- tighten: cover-screw\n- check: free-turn',
    [],
    part('cover-screw', 'kind: screw, quantity: 2, sits-on: core, torque: 2 N·m, angle: 90°'),
    [],
  ],
  [
    'a ring is never seated',
    '- loosen: cover-screw\n- check: free-turn',
    [],
    part('cover-screw', 'kind: retaining-ring, sits-on: core, frees-when: loose'),
    ['left-loose cover-screw'],
  ],
  [
    'a ring is seated',
    '- loosen: cover-screw\n- seat: cover-screw\n- check: free-turn',
    [],
    part('cover-screw', 'kind: retaining-ring, sits-on: core, frees-when: loose'),
    [],
  ],
]);

rows('handling', [
  [
    'threadlocker over oil',
    `${OPEN}\n- apply: oil\n  to: cap-nut\n- apply: threadlocker\n  to: cap-nut`,
    ['threadlocker-on-oil cap-nut'],
  ],
  ['oil on the face', `${OPEN}\n- apply: oil\n  to: cap-nut\n  at: face\n- apply: threadlocker\n  to: cap-nut`, []],
  [
    'cleaned between',
    `${OPEN}\n- apply: oil\n  to: cap-nut\n- clean: cap-nut\n- apply: threadlocker\n  to: cap-nut`,
    [],
  ],
  [
    'a forbidden way',
    `${OPEN}\n- clean: wheel\n  by: caustic`,
    ['cleaning-forbidden wheel'],
    part('wheel', 'sits-on: core, fastened-by: [cap-nut], behind: [cover], never-clean-with: [caustic]'),
  ],
  ['cleaning out of reach', '- clean: wheel', ['unreachable wheel cover']],
  ['inspecting out of reach', '- inspect: wheel', ['unreachable wheel cover']],
  ['marking out of reach', '- mark: wheel\n  across: core', ['unreachable wheel cover']],
]);

const MARK = '- mark: cover\n  across: core';
const MARKED = '- remove: [cover-screw, cover, cover-seal]';
const REFIT = '- install: [cover-seal, cover, cover-screw]\n- tighten: cover-screw\n- check: free-turn';

rows('marks', [
  ['never aligned', `${MARK}\n${MARKED}\n${REFIT}`, [], undefined, ['alignment-missing cover']],
  ['aligned', `${MARK}\n${MARKED}\n${REFIT}\n- align: cover\n  to: core`, [], undefined, []],
  ['aligned without a mark', `${MARKED}\n${REFIT}\n- align: cover\n  to: core`, ['mark-missing cover']],
  [
    'a mark of the maker',
    `${MARKED}\n${REFIT}\n- align: cover\n  to: core`,
    [],
    part('cover', 'sits-on: core, fastened-by: [cover-screw], maker-mark: true'),
  ],
  [
    'paint is washed off',
    `${MARK}\n  by: paint\n${MARKED}\n- clean: cover\n${REFIT}\n- align: cover\n  to: core`,
    ['mark-missing cover'],
  ],
  [
    'a scribed line is not',
    `${MARK}\n  by: scribe\n${MARKED}\n- clean: cover\n${REFIT}\n- align: cover\n  to: core`,
    [],
  ],
]);

const ROTOR = 'balance-groups:\n  rotor: { name: rotor, members: [wheel, core] }';

rows('balance', [
  ['a renewed wheel', `${OPEN}\n${CLOSE}`, [], ROTOR, ['balance-missing rotor (when the wheel is renewed)']],
  ['balanced', `${OPEN}\n${CLOSE}\n- balance: rotor`, [], ROTOR, []],
  ['on a loose nut', `${OPEN}\n- install: [wheel, cap-nut]\n- balance: rotor`, ['spun-loose rotor cap-nut'], ROTOR],
  [
    'on wet threadlocker',
    `${OPEN}\n- apply: threadlocker\n  to: cap-nut\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n- balance: rotor`,
    ['spun-uncured rotor cap-nut'],
    ROTOR,
  ],
  [
    'a short wait',
    `${OPEN}\n- apply: threadlocker\n  to: cap-nut\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n- wait: 30 min\n- balance: rotor`,
    ['spun-uncured rotor cap-nut'],
    ROTOR,
  ],
  [
    'a wait as long as the cure',
    `${OPEN}\n- apply: threadlocker\n  to: cap-nut\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n- wait: 24 h\n- balance: rotor`,
    [],
    ROTOR,
  ],
  [
    'loosened afterwards',
    `${OPEN}\n- install: [wheel, cap-nut]\n- tighten: cap-nut\n- balance: rotor\n- loosen: cap-nut\n- tighten: cap-nut`,
    [],
    ROTOR,
  ],
]);

rows('sizes, sums and conditions', [
  [
    'a sum of what was not measured',
    '- calculate: end-play\n  from: [+gap]',
    ['not-measured end-play gap'],
    'readings:\n  gap: { name: gap, quantity: length }',
  ],
  [
    'measured first',
    '- measure: gap\n  accept: record-only\n- calculate: end-play\n  from: [+gap]',
    [],
    'readings:\n  gap: { name: gap, quantity: length }',
  ],
  [
    'a size from what was not measured',
    `${OPEN}\n- choose: wheel\n  size: [+gap]`,
    ['not-measured wheel gap'],
    `readings:\n  gap: { name: gap, quantity: length }\n${part('wheel', 'sits-on: core, fastened-by: [cap-nut], behind: [cover], sizes: 0.4..0.6 mm')}`,
  ],
  ['a branch that nobody decided', '- say: Do it.\n  when: wheel=renewed', ['undecided-yet wheel']],
]);

rows('what goes away', [
  ['sent while in the unit', '- send: wheel', ['still-in-unit wheel']],
  ['sent and never received', `${OPEN}\n- send: wheel\n- install: wheel`, ['carrier-missing wheel wheel']],
  ['sent and received', `${OPEN}\n- send: wheel\n- receive: wheel\n- install: wheel`, []],
  ['given back', `${OPEN}\n- return: wheel\n- install: wheel`, ['carrier-missing wheel wheel']],
]);

rows('adjusters', [
  [
    'never locked',
    '- adjust: wheel\n- check: free-turn',
    [],
    part('wheel', 'sits-on: core, locked-by: [cover-screw]'),
    ['adjustment-open wheel'],
  ],
  [
    'locked',
    '- adjust: wheel\n- loosen: cover-screw\n- tighten: cover-screw\n- check: free-turn',
    [],
    part('wheel', 'sits-on: core, locked-by: [cover-screw]'),
    [],
  ],
]);

rows('forks', [
  [
    'what is taken off on the side way must go back',
    '- check: free-turn\n  if-not:\n    do:\n      - remove: cover-screw\n- check: free-turn',
    [],
    undefined,
    ['left-off cover-screw (when "The wheel turns freely" does not hold)'],
  ],
  [
    'the side way that ends there',
    '- check: free-turn\n  if-not:\n    reject: true\n    do:\n      - remove: cover-screw',
    [],
    undefined,
    [],
  ],
  [
    'a result that is not right must be made again',
    '- measure: end-play\n  if-not:\n    do:\n      - say: Tap the shaft.\n- check: free-turn',
    [],
    undefined,
    ['result-void end-play (when the end play is not right)'],
  ],
]);

test('facts at the end', async () => {
  const walked = await walkSteps(`${OPEN}\n- install: [wheel, cap-nut]\n- tighten: cap-nut`);
  expect(walked.fact('wheel', 'fitted')).toBe('');
  expect(walked.fact('cap-nut', 'torqued')).toBe('');
  expect(walked.fact('cover-screw', 'partly')).toBe('no build');
  expect(walked.fact('wheel', 'fresh')).toBe('when the wheel is renewed');
});
