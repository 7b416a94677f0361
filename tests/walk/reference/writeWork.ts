import type { Plan } from './plan';
import { type Planned, planned, withIfNot } from './planned';
import type { MadePart, Structure } from './structure';
import { bodyPreparation, type FamilyExtras, fastenerPreparation } from './writeFamily';

const LEFT_BY_OPTION = { unless: 'opt-x' };
const ARRIVED_WITH_OPTION = { when: 'arrives=opt-x' };

/** The taking off of the unit, from the outside in. */
export function stripWork(structure: Structure, extras: FamilyExtras): Planned[] {
  const { group } = extras;
  let isMarked = group?.keepPosition !== true;
  return structure.order('strip').flatMap((part) => {
    const work: Planned[] = [];
    if (!isMarked && group !== undefined && group.members.includes(part.id)) {
      const other = group.members.find((member) => member !== part.id) ?? '';
      work.push(planned('mark', part.id, { across: other }));
      isMarked = true;
    }
    return [...work, ...takeOff(part, structure.plan)];
  });
}

function takeOff(part: MadePart, { work: kind }: Plan): Planned[] {
  const { id, role, plan } = part;
  const keys = part.builds === 'option' ? ARRIVED_WITH_OPTION : {};
  if (role === 'fastener') {
    const stays = plan.fastening.endsWith('stays');
    const loosening = plan.loosenFirst || stays ? [planned('loosen', id, keys)] : [];
    return stays && kind !== 'strip' ? loosening : [...loosening, planned('remove', id, keys)];
  }
  if (role === 'body' && part.builds === 'substitute') {
    return [planned('remove', id), planned('remove', `${id}-x`, ARRIVED_WITH_OPTION)];
  }
  return [planned('remove', id, keys)];
}

/** What is done to the parts while they lie on the bench. */
export function benchWork(structure: Structure): Planned[] {
  const parts = structure.order('strip');
  const bodies = parts.filter(({ role }) => role === 'body');
  const fasteners = parts.filter((part) => part.role === 'fastener' && fastenerPreparation(part).includes('clean'));
  return [
    ...bodies
      .filter(({ plan }) => plan.extra === 'sent')
      .flatMap(({ id }) => [planned('send', id), planned('receive', id)]),
    ...bodies.filter(({ plan }) => plan.extra === 'blasted').map(({ id }) => planned('clean', id, { by: 'blast' })),
    ...bodies
      .filter((part) => bodyPreparation(part).includes('clean'))
      .map(({ id }) => planned('clean', id, { by: 'wash' })),
    ...(fasteners.length === 0
      ? []
      : [
          planned(
            'clean',
            fasteners.map(({ id }) => id),
          ),
        ]),
    ...bodies
      .filter(({ plan }) => plan.onCondition)
      .map(({ id }) => withIfNot(planned('inspect', id), { replace: id })),
    ...bodies
      .filter((part) => !part.plan.onCondition && bodyPreparation(part).includes('inspect'))
      .map(({ id }) => planned('inspect', id)),
  ];
}

/** The fate of what the option takes the place of. */
export function fateWork(structure: Structure): Planned[] {
  return [...structure.parts.values()]
    .filter(({ role, builds }) => role === 'body' && builds === 'substitute')
    .map(({ id }) => planned('discard', id, { when: 'opt-x', unless: 'arrives=opt-x' }));
}

/** The fitting of all parts, from the inside out. */
export function fitWork(structure: Structure, extras: FamilyExtras): Planned[] {
  const fitted = new Set<string>();
  return structure.order('fit').flatMap((part) => {
    fitted.add(part.id);
    const work = part.role === 'fastener' ? fitFastener(part, structure.plan) : fitPart(part, extras);
    const { group } = extras;
    if (group?.keepPosition !== true || !group.members.includes(part.id)) return work;
    if (!group.members.every((member) => fitted.has(member))) return work;
    const other = group.members.find((member) => member !== part.id) ?? '';
    const renewed = group.members.filter((member) => structure.part(member).plan.onCondition);
    const unless = renewed.map((member) => `${member}=renewed`).join(', ');
    return [...work, planned('align', part.id, { to: other, ...(unless === '' ? {} : { unless: `[${unless}]` }) })];
  });
}

function fitPart(part: MadePart, extras: FamilyExtras): Planned[] {
  const { id, role, plan } = part;
  if (role === 'seal') {
    return [...(plan.lubricate ? [planned('apply', 'bench-oil', { to: id })] : []), planned('install', id)];
  }
  const unless: Record<string, string> = part.builds === 'substitute' ? LEFT_BY_OPTION : {};
  const isMember = extras.group?.members.includes(id) === true;
  const work: Planned[] = [];
  if (plan.extra === 'trial' && plan.seal === 'none' && !isMember) {
    work.push(planned('install', id, { trial: 'true', ...unless }), recorded(`read-${id}`, unless));
    work.push(planned('remove', id, unless));
    if (bodyPreparation(part).includes('clean')) work.push(planned('clean', id, { by: 'wipe' }));
  }
  if (plan.extra === 'sizes') {
    work.push(recorded(`read-${id}`, {}), planned('choose', id, { size: `[+2.00 mm, -read-${id}]` }));
  }
  if (plan.lubricate) work.push(planned('apply', 'bench-oil', { to: id, at: 'face' }));
  if (plan.extra.startsWith('heat')) work.push(planned('heat', id));
  work.push(planned('install', id, unless));
  if (part.builds === 'substitute') work.push(planned('install', `${id}-x`));
  if (plan.extra === 'heat-and-cool') work.push(planned('cool', id));
  if (plan.extra === 'heat-and-wait') work.push(planned('wait', '20 min'));
  return work;
}

export function recorded(id: string, keys: Record<string, string>): Planned {
  return planned('measure', id, { accept: 'record-only', ...keys });
}

function fitFastener(part: MadePart, { work: kind }: Plan): Planned[] {
  const { id, plan } = part;
  const work: Planned[] = [];
  const asked = fastenerPreparation(part);
  if (asked.includes('lubricate')) work.push(planned('apply', 'bench-oil', { to: id, at: 'thread' }));
  if (asked.includes('threadlock')) work.push(planned('apply', 'thread-lock', { to: id, at: 'thread' }));
  const isCounted = plan.fastening === 'bolts' && plan.quantity > 1 && plan.tightening === 'by-piece';
  if (!plan.fastening.endsWith('stays') || kind === 'assembly') {
    if (isCounted) {
      work.push(planned('install', id, { count: '1' }), planned('install', id, { count: String(plan.quantity - 1) }));
    } else work.push(planned('install', id));
  } else if (part.builds === 'option') work.push(planned('install', id, { unless: 'arrives=opt-x' }));
  return [...work, ...(plan.fastening.startsWith('ring') ? [planned('seat', id)] : tightenings(part, isCounted))];
}

function tightenings({ id, plan }: MadePart, isCounted: boolean): Planned[] {
  const torque = '9 ± 1 N·m';
  const angle = '60 ± 5°';
  switch (plan.tightening) {
    case 'passes':
      return [planned('tighten', id, { passes: `[5 N·m, ${torque}]` })];
    case 'twice':
      return [planned('tighten', id, { torque: '5 N·m' }), planned('tighten', id, { torque })];
    case 'angle':
      return [planned('tighten', id, { torque, angle })];
    case 'angle-after':
      return [planned('tighten', id, { torque }), planned('tighten', id, { angle })];
    case 'by-piece':
      if (!isCounted) return [planned('tighten', id, { torque })];
      return [
        planned('tighten', id, { torque, count: '1' }),
        planned('tighten', id, { torque, count: String(plan.quantity - 1) }),
      ];
    default:
      return [planned('tighten', id, { torque })];
  }
}
