/**
 * The small invented unit that the examples of rules are about: a cover held by two screws, a wheel held by a nut that
 * is left-handed on one variant, and a seal. An example replaces or adds a few lines of it.
 */
export const EXAMPLE_FAMILY = `witnessmark: 1
family: pellow-k1
name: Pellow K1
variants:
  k1-a: { name: K1-A }
  k1-b: { name: K1-B, note: rotor turns the other way }
options:
  big-wheel: { name: big wheel, variants: [k1-a] }
base: core
parts:
  core: { name: core }
  cover: { name: cover, sits-on: core, fastened-by: [cover-screw] }
  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m }
  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, seals: cover, behind: [cover], renew: always }
  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: on-condition }
  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { k1-a: right, k1-b: left }, torque: 4.6 ± 0.3 N·m, behind: [cover] }
checks:
  free-turn: { say: The wheel turns freely. }
limits:
  end-play: { name: end play, accept: 0.04..0.09 mm }
`;

export const EXAMPLE_KIT = `witnessmark: 1
kit: K-PK1
family: ../families/pellow-k1.family.yaml
lines:
  - { item: 10, part: cover-seal, number: PK-104, quantity: 1 }
`;

export const EXAMPLE_STORES = `witnessmark: 1
stores: Bay 1
tools:
  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 % }
  socket-8: { name: 8 mm socket, kind: socket, size: 8 mm }
  socket-10: { name: 10 mm socket, kind: socket, size: 10 mm }
  dial-gauge: { name: dial gauge, kind: indicator, resolution: 0.001 mm, range: 0..10 mm }
consumables:
  threadlocker: { name: threadlocker, kind: threadlocker, cure: 24 h }
  degreaser: { name: degreaser, kind: solvent, hazards: [H225] }
`;

export const EXAMPLE_HEAD = `witnessmark: 1
procedure: OP-9
title: Rebuild of the Pellow K1
revision: A
family: ../families/pellow-k1.family.yaml
kit: ../kits/pellow-k1.kit.yaml
stores: ../stores/bay-1.stores.yaml
tools: [torque-wrench-10, socket-8, socket-10, dial-gauge]
consumables: [threadlocker, degreaser]
`;

export const EXAMPLE_PATHS = {
  family: 'families/pellow-k1.family.yaml',
  kit: 'kits/pellow-k1.kit.yaml',
  stores: 'stores/bay-1.stores.yaml',
  procedure: 'procedures/op-9.procedure.yaml',
  settings: 'witnessmark.yaml',
} as const;
