import { expect, test } from 'vitest';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../../server/src/core/rules/exampleDocuments';
import { type Example, inStep, withFamily, withFiles } from '../../server/src/core/rules/examples';
import { WALK_RULES } from '../../server/src/core/rules/walk';
import { checkExample } from '../support/checkText';

/** General maintenance practice as United States Army technical manuals give it (public domain). */
const ARMY_PRACTICE = 'United States Army technical manuals, general maintenance practice';
/** What the same kind of manual has done to a turbocharger; read for what is done, never for numbers. */
const ARMY_TURBOCHARGER = 'United States Army technical manuals, chapters on turbochargers';
const THREADLOCKER_MAKERS = 'published instructions for anaerobic threadlockers';
const COMMON = 'common practice, no source';

interface Practice {
  readonly practice: string;
  readonly source: string;
  /** The rule that tells where it is broken. */
  readonly rule: string;
  /** What the family of the examples has beside, or in place of, its own. */
  readonly family: string;
  readonly obeyed: string;
  readonly broken: string;
}

const OPEN = '- remove: [cover-screw, cover]';
const BARE = '- remove: [cover-screw, cover, cap-nut]';
const NUT_ON = '- install: cap-nut\n- tighten: cap-nut';
const CLOSE = '- install: [cover, cover-screw]\n- tighten: cover-screw';
const NUT =
  'cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover]';
const PLAIN = 'cover-seal: { name: cover seal, sits-on: core, behind: [cover] }';
const SHAFT = 'shaft: { name: shaft, sits-on: core, renew: on-condition }';
const WHEEL = 'wheel: { name: wheel, sits-on: shaft, fastened-by: [cap-nut], behind: [cover] }';
const GROUP = 'balance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }';

/** Parts of the family, each on a line; the seal counts as no seal where the practice is not about it. */
function parts(...lines: string[]): string {
  return ['parts:', ...[PLAIN, ...lines].map((line) => `  ${line}`)].join('\n');
}

function steps(...instructions: string[]): string {
  return instructions.join('\n');
}

const PRACTICES: readonly Practice[] = [
  {
    practice: 'a seal is discarded when its joint is opened',
    source: ARMY_PRACTICE,
    rule: 'seal-not-renewed',
    family: '',
    obeyed: steps('- remove: [cover-screw, cover, cover-seal]', '- install: cover-seal', CLOSE),
    broken: steps(OPEN, CLOSE),
  },
  {
    practice: 'a lock nut is used once',
    source: ARMY_PRACTICE,
    rule: 'single-use-refitted',
    family: parts(`${NUT}, renew: always }`),
    obeyed: steps(OPEN, '- remove: cap-nut', '- install: cap-nut', '- tighten: cap-nut', CLOSE),
    broken: steps(OPEN, '- loosen: cap-nut', '- tighten: cap-nut', CLOSE),
  },
  {
    practice: 'a joint is tightened in passes, and a pass at 70 % is not the last',
    source: ARMY_PRACTICE,
    rule: 'left-loose',
    family: parts(),
    obeyed: steps('- loosen: cover-screw', '- tighten: cover-screw\n  passes: [6.3 ± 0.6 N·m, 9 ± 1 N·m]'),
    broken: steps('- loosen: cover-screw', '- tighten: cover-screw\n  passes: [3 N·m, 6.3 ± 0.6 N·m]'),
  },
  {
    practice: 'a retaining ring is fully seated',
    source: ARMY_PRACTICE,
    rule: 'left-loose',
    family: parts('snap-ring: { name: snap ring, kind: retaining-ring, sits-on: core }'),
    obeyed: steps('- remove: snap-ring', '- install: snap-ring', '- seat: snap-ring'),
    broken: steps('- remove: snap-ring', '- install: snap-ring'),
  },
  {
    practice: 'open ports are plugged, and the plugs come out again',
    source: `${ARMY_TURBOCHARGER} for the plugs; for taking them out: ${COMMON}`,
    rule: 'left-in',
    family: parts('oil-plug: { name: oil inlet plug, temporary: true }'),
    obeyed: steps('- install: oil-plug', '- remove: oil-plug'),
    broken: '- install: oil-plug',
  },
  {
    practice: 'a new seal ring goes in oiled',
    source: ARMY_TURBOCHARGER,
    rule: 'not-lubricated',
    family: parts(
      'seal-ring: { name: seal ring, kind: seal-ring, sits-on: core, before-fitting: [lubricate], renew: always }',
    ),
    obeyed: steps('- remove: seal-ring', '- apply: assembly-oil\n  to: seal-ring', '- install: seal-ring'),
    broken: steps('- remove: seal-ring', '- install: seal-ring'),
  },
  {
    practice: 'a wheel is looked over for nicks and cracks before it goes back',
    source: ARMY_TURBOCHARGER,
    rule: 'disposition-missing',
    family: parts(),
    obeyed: steps(
      `${OPEN}\n- remove: [cap-nut, wheel]`,
      '- inspect: wheel\n  look-for: Nicks and cracks\n  if-not: { replace: wheel }',
      '- install: [wheel, cap-nut]\n- tighten: cap-nut',
      CLOSE,
    ),
    broken: steps(`${OPEN}\n- remove: [cap-nut, wheel]`, '- install: [wheel, cap-nut]\n- tighten: cap-nut', CLOSE),
  },
  {
    practice: 'no wire brush goes into a bore',
    source: ARMY_TURBOCHARGER,
    rule: 'cleaning-forbidden',
    family: parts('core: { name: core, never-clean-with: [wire-brush] }'),
    obeyed: '- clean: core\n  by: brush',
    broken: '- clean: core\n  by: wire-brush',
  },
  {
    practice: 'the rotor is held at the drive of its own wheel while the nut is turned',
    source: ARMY_TURBOCHARGER,
    rule: 'counter-hold-missing',
    family: parts(`${NUT}, hold: turbine hexagon }`),
    obeyed: steps(OPEN, '- tighten: cap-nut\n  hold: { at: turbine hexagon }', CLOSE),
    broken: steps(OPEN, '- tighten: cap-nut', CLOSE),
  },
  {
    practice: 'the end play is measured again after the rotor is tightened',
    source: ARMY_TURBOCHARGER,
    rule: 'result-void',
    family: `${parts()}\nlimits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, void-by: [cap-nut] }`,
    obeyed: steps(OPEN, '- measure: end-play', '- loosen: cap-nut', '- tighten: cap-nut', '- measure: end-play', CLOSE),
    broken: steps(OPEN, '- measure: end-play', '- loosen: cap-nut', '- tighten: cap-nut', CLOSE),
  },
  {
    practice: 'the rotor is turned by hand after each joint is closed',
    source: ARMY_TURBOCHARGER,
    rule: 'check-missing',
    family: `${parts()}\nchecks:\n  free-turn: { say: The wheel turns freely., after: [cover] }`,
    obeyed: steps(OPEN, CLOSE),
    broken: steps(OPEN, '- check: free-turn', CLOSE, '- say: Done.'),
  },
  {
    practice: 'threadlocker goes on a degreased, dry thread',
    source: THREADLOCKER_MAKERS,
    rule: 'threadlocker-on-oil',
    family: parts(`${NUT} }`),
    obeyed: steps(
      BARE,
      '- apply: assembly-oil\n  to: cap-nut',
      '- clean: cap-nut\n  using: degreaser',
      '- apply: threadlocker\n  to: cap-nut',
      NUT_ON,
      CLOSE,
    ),
    broken: steps(
      BARE,
      '- clean: cap-nut\n  using: degreaser',
      '- apply: assembly-oil\n  to: cap-nut',
      '- apply: threadlocker\n  to: cap-nut',
      NUT_ON,
      CLOSE,
    ),
  },
  {
    practice: 'threadlocker has 24 h to set before it is loaded',
    source: THREADLOCKER_MAKERS,
    rule: 'spun-too-soon',
    family: `${parts(SHAFT)}\n${GROUP}`,
    obeyed: steps(
      BARE,
      '- apply: threadlocker\n  to: cap-nut',
      '- install: cap-nut\n- tighten: cap-nut',
      '- wait: 24 h',
      '- balance: rotor',
      CLOSE,
    ),
    broken: steps(
      BARE,
      '- apply: threadlocker\n  to: cap-nut',
      '- install: cap-nut\n- tighten: cap-nut',
      '- wait: 4 h',
      '- balance: rotor',
      CLOSE,
    ),
  },
  {
    practice: 'wheel and shaft are marked across before they are taken apart',
    source: COMMON,
    rule: 'mark-missing',
    family: `${parts(SHAFT, WHEEL)}\n${GROUP}`,
    obeyed: steps(
      BARE,
      '- mark: wheel\n  across: shaft',
      '- remove: wheel\n- install: wheel',
      '- align: wheel\n  to: shaft',
      NUT_ON,
      CLOSE,
    ),
    broken: steps(BARE, '- remove: wheel\n- install: wheel', NUT_ON, CLOSE),
  },
  {
    practice: 'a wheel that was marked goes back in its marked position',
    source: COMMON,
    rule: 'alignment-missing',
    family: `${parts(SHAFT, WHEEL)}\n${GROUP}`,
    obeyed: steps(
      BARE,
      '- mark: wheel\n  across: shaft',
      '- remove: wheel\n- install: wheel\n- align: wheel\n  to: shaft',
      NUT_ON,
      CLOSE,
    ),
    broken: steps(BARE, '- mark: wheel\n  across: shaft', '- remove: wheel\n- install: wheel', NUT_ON, CLOSE),
  },
  {
    practice: 'a rotor with a new wheel is balanced again',
    source: COMMON,
    rule: 'balance-missing',
    family: `${parts(SHAFT, 'wheel: { name: wheel, sits-on: shaft, fastened-by: [cap-nut], behind: [cover], renew: always }')}\n${GROUP}`,
    obeyed: steps(
      `${OPEN}\n- remove: [cap-nut, wheel]`,
      '- install: [wheel, cap-nut]\n- tighten: cap-nut',
      '- balance: rotor',
      CLOSE,
    ),
    broken: steps(`${OPEN}\n- remove: [cap-nut, wheel]`, '- install: [wheel, cap-nut]\n- tighten: cap-nut', CLOSE),
  },
  {
    practice: 'a wheel that was fitted hot cools before its nut gets the final torque',
    source: COMMON,
    rule: 'tightened-while-hot',
    family: parts('wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover] }'),
    obeyed: steps(
      `${OPEN}\n- remove: [cap-nut, wheel]`,
      '- heat: wheel\n  until: 110 ± 5 °C',
      '- install: [wheel, cap-nut]',
      '- cool: wheel\n  until: ≤ 35 °C',
      '- tighten: cap-nut',
      CLOSE,
    ),
    broken: steps(
      `${OPEN}\n- remove: [cap-nut, wheel]`,
      '- heat: wheel\n  until: 110 ± 5 °C',
      '- install: [wheel, cap-nut]',
      '- tighten: cap-nut',
      '- cool: wheel\n  until: ≤ 35 °C',
      CLOSE,
    ),
  },
  {
    practice: 'what was blasted is washed before it is fitted',
    source: COMMON,
    rule: 'not-cleaned',
    family: parts(),
    obeyed: steps(OPEN, '- clean: cover\n  by: blast', '- clean: cover\n  by: wash', CLOSE),
    broken: steps(OPEN, '- clean: cover\n  by: blast', CLOSE),
  },
  {
    practice: 'the rod of an actuator is locked after it is set',
    source: COMMON,
    rule: 'adjustment-not-locked',
    family: parts(
      'rod: { name: rod, sits-on: core, locked-by: [rod-nut] }',
      'rod-nut: { name: rod nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4 ± 0.4 N·m }',
    ),
    obeyed: steps('- loosen: rod-nut', '- adjust: rod\n  until: it just touches', '- tighten: rod-nut'),
    broken: steps('- loosen: rod-nut', '- tighten: rod-nut', '- adjust: rod\n  until: it just touches'),
  },
  {
    practice: 'the hand of the nut is known before it is turned',
    source: COMMON,
    rule: 'hand-not-identified',
    family: `identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }\n${parts(
      NUT.replace('hand: right', 'hand: { nut-hand=left: left, nut-hand=right: right }').concat(' }'),
    )}`,
    obeyed: steps(OPEN, '- identify: nut-hand', '- loosen: cap-nut\n- tighten: cap-nut', CLOSE),
    broken: steps(OPEN, '- loosen: cap-nut', '- identify: nut-hand', '- tighten: cap-nut', CLOSE),
  },
];

const OIL = `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n`;
const ABOUT_THE_WORK = new Set([...WALK_RULES.map((rule) => rule.id), 'counter-hold-missing']);

/** The unit is turned by hand at the end, unless the practice itself says when. */
function example({ family }: Practice, instructions: string): Example {
  const closing = instructions.endsWith('- say: Done.') ? '' : '\n- check: free-turn';
  const shown = withFiles(inStep(instructions + closing), { [EXAMPLE_PATHS.stores]: OIL });
  if (family === '') return shown;
  return { ...withFamily(shown, family), shown: shown.shown };
}

async function told(of: Practice, instructions: string): Promise<string[]> {
  const { findings } = await checkExample(example(of, instructions));
  return findings.map((finding) => finding.rule).filter((rule) => ABOUT_THE_WORK.has(rule));
}

test.each(PRACTICES)('$practice ($source)', async (one) => {
  expect(await told(one, one.obeyed)).toEqual([]);
  expect(await told(one, one.broken)).toEqual([one.rule]);
});
