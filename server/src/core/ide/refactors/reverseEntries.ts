import { scalarText } from '../../rules/support/mapKey';
import type { EntryLines } from '../../rules/support/walkFixes/block';
import { cleaning, lubrication, threadlocking } from '../../rules/support/walkFixes/stores';
import { line, tightening } from '../../rules/support/walkFixes/tightening';
import { roleOf } from '../../workings/toolGrip';
import { toolsWith } from '../../workings/toolNamed';
import type { StandingUnit } from '../completion/rankingState';
import { isUnmet, wantsOf } from '../completion/rankingWants';
import { alignment } from './reverseAlignment';
import { conditionsOfPart } from './reverseConditions';
import type { TakenApart } from './takenApart';

/** Kinds that are tightened though the family states no torque. */
const TURNED: ReadonlySet<string> = new Set(['nut', 'bolt', 'screw', 'stud', 'clamp']);

/**
 * The instructions that put right what a step took apart, on a unit as it stands where they are to go: what the family asks
 * before fitting and is not done yet, the fitting, the alignment, the tightening. A torque is never written: the family's
 * counts, and where it states none a remark says so.
 */
export function reverseEntries(apart: readonly TakenApart[], standing: StandingUnit): EntryLines[] {
  return apart.flatMap((one) => {
    const conditions = conditionsOfPart(one, standing, apart.length === 1);
    const closed = closing(one, standing, conditions);
    if (one.is === 'loose') return closed;
    const fitted = [...fitting(one), ...conditions];
    return [...preparations(one, standing), fitted, ...alignment(one, standing, apart), ...closed];
  });
}

function preparations({ part, scene }: TakenApart, standing: StandingUnit): EntryLines[] {
  const { where } = scene.failure;
  const open = wantsOf(standing, part).filter((want) => isUnmet(standing, part, want, where));
  return open.flatMap((want): EntryLines[] => {
    if (want === 'clean') return [cleaning(scene, part)];
    if (want === 'inspect') return [[`inspect: ${part}`]];
    const applied =
      want === 'lubricate' ? lubrication(scene, part) : want === 'threadlock' ? threadlocking(scene, part) : undefined;
    // What is to be heated, or oiled with one of several oils, is for the writer to say.
    return applied === undefined ? [] : [applied];
  });
}

function fitting(one: TakenApart): EntryLines {
  const { part, scene, place } = one;
  const facts = scene.family.part(part);
  const says = (key: 'orient' | 'locate'): EntryLines => {
    const text = facts?.[key]?.text;
    return text === undefined ? [] : [`${key}: ${scalarText(text)}`];
  };
  return [
    `install: ${part}`,
    ...(line(place, 'count') ?? []),
    ...says('orient'),
    ...says('locate'),
    ...handTools(one),
    ...springs(one),
  ];
}

/** What took the part off without turning it, as pliers for rings, puts it on again. */
function handTools({ scene, place }: TakenApart): EntryLines {
  const { tools, complete } = toolsWith(scene.procedure, place.view.instruction);
  const isByHand = tools.every(({ tool }) => ['pliers', 'ring-pliers'].includes(tool.kind?.value ?? ''));
  return complete && tools.length > 0 && isByHand && tools.every(({ tool }) => roleOf(tool) === 'neither')
    ? (line(place, 'with') ?? [])
    : [];
}

/** A ring can fly off as it goes in just as when it came out. */
function springs({ part, scene, place }: TakenApart): EntryLines {
  if (scene.family.part(part)?.kind?.value !== 'retaining-ring') return [];
  return [...(line(place, 'warning') ?? []), ...(line(place, 'caution') ?? [])];
}

/** A ring is seated, a fastener is tightened; anything else is fitted once it is on. */
function closing(one: TakenApart, { unit }: StandingUnit, conditions: EntryLines): EntryLines[] {
  const { part, scene, is } = one;
  const kind = scene.family.part(part)?.kind?.value ?? '';
  if (unit.hasTorque(part)) return [[...(tightening(scene, part) ?? tightenedAlone(one)), ...conditions]];
  const more = is === 'loose' ? [...handTools(one), ...springs(one), ...conditions] : conditions;
  if (unit.isRing(part)) return [[`seat: ${part}`, ...more]];
  if (!TURNED.has(kind)) return [];
  return [[...tightenedAlone(one), '# torque: the family states none', ...conditions]];
}

/** Where the tools are not certain, they are for the writer to name. */
function tightenedAlone({ part, scene }: TakenApart): EntryLines {
  const hold = scene.family.part(part)?.hold?.text;
  return [`tighten: ${part}`, ...(hold === undefined ? [] : [`hold: { at: ${scalarText(hold)} }`])];
}
