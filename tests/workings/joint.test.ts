import { expect, test } from 'vitest';
import { describeBuilds } from '../../server/src/core/builds';
import { formatPropertyClass } from '../../server/src/core/standards/propertyClasses';
import { formatDesignation } from '../../server/src/core/standards/threadDesignation';
import { type FastenerJoint, jointsOf } from '../../server/src/core/workings/joint';
import { familyOf } from './sampleTorques';

const HEAD = `witnessmark: 1
family: pellow-k1
name: Pellow K1
variants:
  k1-a: { name: K1-A }
  k1-b: { name: K1-B }
options:
  big-wheel: { name: big wheel }
base: core
parts:
  core: { name: core, kind: housing }
`;

async function jointsWith(...parts: string[]) {
  const family = await familyOf(`${HEAD}${parts.map((one) => `  ${one}\n`).join('')}`);
  return { space: family.space, joints: jointsOf(family, family.space, 'cap-nut') };
}

const NUT = 'cap-nut: { name: cap nut, kind: nut, sits-on: core, mates-with: spindle';
const SPINDLE = 'spindle: { name: spindle, kind: shaft, sits-on: core';

function classes({ members }: FastenerJoint): string[] {
  return members.map(({ id, role, propertyClass }) => {
    return `${id} ${role} ${propertyClass === undefined ? 'none' : formatPropertyClass(propertyClass)}`;
  });
}

test('a nut and the shaft that it is screwed to make one joint', async () => {
  const { joints } = await jointsWith(
    `${NUT}, thread: M5, hand: left, property-class: 10, bearing-diameter: 9 mm, friction: 12 %, prevailing-torque: 1 N·m }`,
    `${SPINDLE}, thread: M5×0.8, property-class: 8.8 }`,
  );
  const [joint, ...more] = joints;
  expect(more).toEqual([]);
  expect(joint?.thread && formatDesignation(joint.thread)).toBe('M5×0.8');
  expect(joint && classes(joint)).toEqual(['cap-nut nut 10', 'spindle bolt 8.8']);
  expect(joint?.friction).toEqual({ kind: 'stated', thread: 0.12, face: 0.12 });
  expect(joint?.face).toMatchObject({ from: 'family', face: { outer: 9, inner: 5.5 } });
  expect(joint?.prevailing?.value.text.trim()).toBe('1 N·m');
  expect(joint?.hands.map(({ value }) => value)).toEqual(['left']);
  expect(joint?.missing).toEqual([]);
});

test('a thread that only the mate states is the thread of the joint, whichever of the two names the other', async () => {
  const { joints } = await jointsWith(
    'cap-nut: { name: cap nut, kind: nut, sits-on: core, property-class: 8 }',
    `${SPINDLE}, mates-with: cap-nut, thread: 1/4-28 UNF-LH }`,
  );
  expect(joints[0]?.facts.thread?.of).toBe('spindle');
  expect(joints[0]?.hands.map(({ value }) => value)).toEqual(['left']);
  expect(joints[0]?.face?.from).toBe('assumed');
});

test('where something differs the joint falls into pieces that together hold for every build once', async () => {
  const { space, joints } = await jointsWith(
    `${NUT}, thread: { k1-a: M5×0.8, k1-b: M6×1 }, property-class: { big-wheel: 10, otherwise: 8 } }`,
    `${SPINDLE}, property-class: { k1-a: 8.8, k1-b: 8.8 } }`,
  );
  const pieces = joints.map(
    (one) => `${one.facts.thread?.value.text} ${classes(one).join(', ')}: ${describeBuilds(one.where, space)}`,
  );
  expect(pieces.sort()).toEqual([
    'M5×0.8 cap-nut nut 10, spindle bolt 8.8: K1-A with the big wheel',
    'M5×0.8 cap-nut nut 8, spindle bolt 8.8: K1-A, without the big wheel',
    'M6×1 cap-nut nut 10, spindle bolt 8.8: K1-B with the big wheel',
    'M6×1 cap-nut nut 8, spindle bolt 8.8: K1-B, without the big wheel',
  ]);
  const overlapping = joints.flatMap((one, at) =>
    joints.slice(at + 1).filter((other) => other.where.overlaps(one.where)),
  );
  expect(overlapping).toEqual([]);
  expect(space.union(joints.map(({ where }) => where)).isEverything).toBe(true);
});

test('the hand does not split the joint, and is told by build', async () => {
  const { space, joints } = await jointsWith(`${NUT}, thread: M5, hand: { k1-a: right, k1-b: left } }`, `${SPINDLE} }`);
  expect(joints).toHaveLength(1);
  const hands = joints[0]?.hands.map(({ value, where }) => `${value} ${describeBuilds(where, space)}`);
  expect(hands).toEqual(['right K1-A', 'left K1-B']);
});

test('a mate that is only on some builds counts there alone', async () => {
  const { space, joints } = await jointsWith(
    `${NUT}, thread: M5×0.8, property-class: 10 }`,
    `${SPINDLE}, when: k1-a, property-class: 8.8 }`,
  );
  expect(joints.map((one) => `${classes(one).length} ${describeBuilds(one.where, space)}`)).toEqual([
    '2 K1-A',
    '1 K1-B',
  ]);
});

test('what is not stated or not read is missing, and nothing stands for it', async () => {
  const { joints } = await jointsWith(`${NUT}, thread: G1/4, property-class: Inconel 718 }`, `${SPINDLE} }`);
  expect(joints[0]?.joint).toBeUndefined();
  expect(joints[0]?.friction).toEqual({ kind: 'unknown' });
  expect(joints[0]?.missing).toEqual([
    'a thread of the cap nut that the tables have, which G1/4 is not',
    'a property class of the cap nut that the tables have, which Inconel 718 is not',
    'the property class of the spindle',
  ]);
  const thin = await jointsWith(
    `${NUT}, thread: M5, property-class: 04 }`,
    'spindle: { name: spindle, kind: housing }',
  );
  expect(thin.joints[0]?.missing).toEqual(['the strength of class 04 for this size']);
});

test('a tapped housing is no member of a joint, unless it has a class', async () => {
  const { joints } = await jointsWith(
    `${NUT}, thread: M5, property-class: 8 }`,
    'spindle: { name: spindle, kind: housing }',
  );
  expect(joints[0] && classes(joints[0])).toEqual(['cap-nut nut 8']);
});

test('broken and half-typed facts give a joint all the same', async () => {
  const { joints } = await jointsWith(
    `${NUT}, thread: { k1-a: M5, k1-x: M6 }, property-class: , bearing-diameter: 2 mm, friction: a lot }`,
    `${SPINDLE}, mates-with: [spindle, nowhere, cap-nut] }`,
  );
  expect(joints.length).toBeGreaterThan(0);
  expect(joints[0]?.face?.from).toBe('assumed');
});
