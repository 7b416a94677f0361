import type { BodyPlan, Plan } from './plan';
import { BASE, type MadePart, type Structure } from './structure';

/** What else than parts the family states, so that the procedure can be written for it. */
export interface FamilyExtras {
  readonly group: { readonly members: readonly [string, string]; readonly keepPosition: boolean } | undefined;
  /** Id and the parts that make the result worthless. */
  readonly checks: readonly (readonly [string, readonly string[]])[];
  readonly limits: readonly (readonly [string, readonly string[]])[];
  readonly readings: readonly string[];
}

export const STORES = `witnessmark: 1
stores: Bench
consumables:
  thread-lock: { name: threadlocker, kind: threadlocker, cure: 24 h }
  bench-oil: { name: oil, kind: oil }
  soap: { name: cleaner, kind: cleaner }
`;

export function familyExtras(structure: Structure): FamilyExtras {
  const { plan } = structure;
  const always = [...structure.parts.values()].filter(({ builds }) => builds === 'all' || builds === 'substitute');
  const pick = (drawn: readonly number[]): string[] => {
    const ids = drawn.map((one) => always[one % Math.max(1, always.length)]?.id);
    return [...new Set(ids.flatMap((id) => id ?? []))];
  };
  const named = (name: string, lists: readonly (readonly number[])[]) =>
    lists.map((drawn, index) => [`${name}-${index}`, pick(drawn)] as const).filter(([, ids]) => ids.length > 0);
  const repaired = plan.repair ? repairable(structure) : undefined;
  return {
    group: groupOf(structure),
    checks: named('check', plan.checks),
    limits: [
      // What is turned once more at the end would make another limit worthless.
      ...named('limit', plan.limits).filter(([, ids]) => repaired === undefined || !ids.includes(repaired.id)),
      ...(repaired === undefined ? [] : [['limit-repaired', [repaired.id]] as const]),
      ...(plan.adjuster === 'none' ? [] : [['limit-adjusted', ['adjuster', 'lock-nut']] as const]),
      ...(plan.calculation ? [['limit-worked-out', []] as const] : []),
    ],
    readings: [
      ...[...structure.parts.values()].filter(takesReading).map(({ id }) => `read-${id}`),
      ...(plan.calculation ? ['read-bore', 'read-shaft'] : []),
    ],
  };
}

function takesReading({ role, plan }: MadePart): boolean {
  return role === 'body' && (plan.extra === 'sizes' || plan.extra === 'trial');
}

function groupOf(structure: Structure): FamilyExtras['group'] {
  const { plan: drawn } = structure;
  if (drawn.group === 'none') return undefined;
  const keepPosition = drawn.group === 'keep-position';
  const able = [...structure.parts.values()].filter(
    ({ role, builds, kept, plan }) =>
      role === 'body' &&
      !kept &&
      !(keepPosition && isAlwaysNew(plan)) &&
      (builds === 'all' || (builds === 'substitute' && !keepPosition)),
  );
  const [first, second] = drawn.groupMembers.map((number) => able[number % Math.max(1, able.length)]?.id);
  if (first === undefined || second === undefined || first === second) return undefined;
  const members = [first, second] as const;
  return { members, keepPosition: keepPosition && canBeMarked(structure, members) };
}

function isAlwaysNew({ extra, onCondition }: BodyPlan): boolean {
  return extra === 'sizes' && !onCondition;
}

/** Both members can be reached before the first of them comes off. */
function canBeMarked(structure: Structure, members: readonly string[]): boolean {
  const order = structure.order('strip').map(({ id }) => id);
  const first = order.findIndex((id) => members.includes(id));
  return members.every((member) =>
    structure.part(member).behind.every((cover) => {
      const rides = structure.ridesOn(member, cover) || structure.ridesOn(cover, member);
      return rides || order.indexOf(cover) < first;
    }),
  );
}

/** A fastener that can be turned once more at the very end. */
export function repairable(structure: Structure): MadePart | undefined {
  const members: readonly string[] = groupOf(structure)?.members ?? [];
  return [...structure.parts.values()].find(({ id, role, plan, behind, kept, builds }) => {
    const isPlain = role === 'fastener' && behind.length === 0 && !kept && builds === 'all' && !plan.singleUse;
    const isScrewed =
      (plan.fastening === 'nut' || plan.fastening === 'bolts') && !plan.fastenerPreparation.endsWith('threadlock');
    const holdsMember = structure.held(id).some((held) => members.includes(held.id));
    return isPlain && isScrewed && !holdsMember && structure.held(id).length > 0;
  });
}

export function writeFamily(structure: Structure, extras: FamilyExtras): string {
  const lines = [
    'witnessmark: 1',
    'family: drawn',
    'name: Drawn',
    'variants: { var-a: { name: A }, var-b: { name: B } }',
    'options: { opt-x: { name: X } }',
    'identify: { nut-hand: { name: hand, values: [left, right], when: var-b } }',
    `base: ${BASE}`,
    'parts:',
    `  ${BASE}: { name: base, kind: housing }`,
    ...[...structure.parts.values()].flatMap((part) => partLines(structure, part)),
    ...extraParts(structure.plan),
    ...section('balance-groups', extras.group === undefined ? [] : [groupLine(extras.group)]),
    ...section(
      'checks',
      extras.checks.map(([id, after]) => `${id}: { say: It is right., after: [${after.join(', ')}] }`),
    ),
    ...section(
      'limits',
      extras.limits.map(([id, by]) => `${id}: { name: play, accept: 1..2 mm${listKey(', void-by: ', by)} }`),
    ),
    ...section(
      'readings',
      extras.readings.map((id) => `${id}: { name: reading, quantity: length }`),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

function section(name: string, entries: readonly string[]): string[] {
  return entries.length === 0 ? [] : [`${name}:`, ...entries.map((entry) => `  ${entry}`)];
}

function listKey(key: string, ids: readonly string[]): string {
  return ids.length === 0 ? '' : `${key}[${ids.join(', ')}]`;
}

function groupLine({ members, keepPosition }: NonNullable<FamilyExtras['group']>): string {
  return `rotor: { members: [${members.join(', ')}]${keepPosition ? ', keep-position: true' : ''} }`;
}

function extraParts({ blank, adjuster }: Plan): string[] {
  return [
    ...(blank ? [`  blank: { name: blank, kind: plug, temporary: true, sits-on: ${BASE} }`] : []),
    ...(adjuster === 'none'
      ? []
      : [
          `  adjuster: { name: adjuster, kind: screw, sits-on: ${BASE}, thread: M6×1, hand: right, locked-by: [lock-nut] }`,
          `  lock-nut: { name: lock nut, kind: nut, sits-on: ${BASE}, thread: M6×1, hand: right, torque: 8 ± 0.8 N·m }`,
        ]),
  ];
}

function partLines(structure: Structure, part: MadePart): string[] {
  const { id, role } = part;
  const keys = { ...commonKeys(part), ...(role === 'body' ? bodyKeys(part) : {}) };
  if (role === 'fastener') Object.assign(keys, fastenerKeys(part));
  if (role === 'seal') Object.assign(keys, sealKeys(part));
  const lines = [partLine(id, keys)];
  if (role === 'body' && part.builds === 'substitute') {
    const { 'fastened-by': by, 'sits-on': on, behind } = keys;
    const twin = { name: 'substitute', 'sits-on': on, 'fastened-by': by, behind, when: 'opt-x', 'instead-of': id };
    lines.push(partLine(`${id}-x`, twin));
  }
  return structure.plan.bodies.length === 0 ? [] : lines;
}

function partLine(id: string, keys: Readonly<Record<string, string | undefined>>): string {
  const written = Object.entries(keys).flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`]));
  return `  ${id}: { ${written.join(', ')} }`;
}

function commonKeys({ id, carrier, behind, fastenedBy, builds }: MadePart): Record<string, string | undefined> {
  const when = builds === 'variant' ? 'var-b' : builds === 'option' ? 'opt-x' : undefined;
  return { name: id, 'sits-on': carrier, 'fastened-by': list(fastenedBy), behind: list(behind), when };
}

function list(ids: readonly string[]): string | undefined {
  return ids.length === 0 ? undefined : `[${ids.join(', ')}]`;
}

/** What must be done to a body before it is fitted. */
export function bodyPreparation({ plan }: MadePart): string[] {
  const isCleaned = plan.clean || plan.extra === 'blasted' || plan.extra === 'sent';
  return [
    ...(isCleaned ? ['clean'] : []),
    ...(plan.inspect && plan.extra !== 'trial' ? ['inspect'] : []),
    ...(plan.lubricate ? ['lubricate'] : []),
    ...(plan.extra.startsWith('heat') ? ['heat'] : []),
  ];
}

function bodyKeys(part: MadePart): Record<string, string | undefined> {
  const { plan } = part;
  const isSized = plan.extra === 'sizes';
  return {
    kind: 'housing',
    'before-fitting': list(bodyPreparation(part)),
    renew: plan.onCondition ? 'on-condition' : isSized ? 'always' : undefined,
    sizes: isSized ? '1.00..2.00 mm' : undefined,
    'never-clean-with': '[caustic]',
  };
}

export function fastenerPreparation({ plan }: MadePart): string[] {
  if (plan.fastening.endsWith('stays') || plan.fastening === 'ring-off' || plan.fastenerPreparation === 'none')
    return [];
  return plan.fastenerPreparation.split('-and-').map((one) => one);
}

function fastenerKeys(part: MadePart): Record<string, string | undefined> {
  const { plan } = part;
  const { fastening } = plan;
  const renew = plan.singleUse && !fastening.endsWith('stays') ? 'always' : undefined;
  const keys = { 'before-fitting': list(fastenerPreparation(part)), renew };
  if (fastening.startsWith('ring')) {
    return { ...keys, kind: 'retaining-ring', 'frees-when': fastening === 'ring-stays' ? 'loose' : 'off' };
  }
  const hand =
    fastening === 'nut' && plan.handByBuild ? '{ var-a: right, nut-hand=left: left, nut-hand=right: right }' : 'right';
  return {
    ...keys,
    kind: fastening.startsWith('clamp') ? 'clamp' : fastening === 'nut' ? 'nut' : 'bolt',
    quantity: fastening === 'bolts' ? String(plan.quantity) : undefined,
    thread: 'M6×1',
    hand,
    torque: '9 ± 1 N·m',
    angle: plan.tightening.startsWith('angle') ? '60 ± 5°' : undefined,
  };
}

function sealKeys({ id, builds, plan }: MadePart): Record<string, string | undefined> {
  const body = id.replace('seal', 'body');
  return {
    kind: 'o-ring',
    seals: builds === 'substitute' ? `[${body}, ${body}-x]` : body,
    'before-fitting': plan.lubricate ? '[lubricate]' : undefined,
    renew: 'always',
  };
}
