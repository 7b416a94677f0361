import type { FamilyView } from '../analysis/familyView';
import type { ThreadDesignation } from '../standards/threadDesignation';
import type { JointMember } from './joint';
import type { JointFacts } from './jointFacts';

/** What the family leaves open about a joint, as noun phrases: "the property class of the compressor nut". */
export function missingFacts(
  family: FamilyView,
  id: string,
  { thread: stated }: JointFacts,
  members: readonly JointMember[],
  thread: ThreadDesignation | undefined,
): readonly string[] {
  return [...missingThread(family.nameOf(id), stated?.value.text, thread), ...members.flatMap(missingClass(thread))];
}

function missingThread(name: string, text: string | undefined, thread: ThreadDesignation | undefined): string[] {
  if (thread !== undefined) return [];
  if (text === undefined) return [`the thread of the ${name}`];
  return [`a thread of the ${name} that the tables have, which ${text.trim()} is not`];
}

function missingClass(thread: ThreadDesignation | undefined): (member: JointMember) => string[] {
  return ({ name, written, propertyClass, strength }) => {
    if (written === undefined) return [`the property class of the ${name}`];
    const text = written.text.trim();
    if (propertyClass === undefined)
      return [`a property class of the ${name} that the tables have, which ${text} is not`];
    return thread === undefined || strength !== undefined ? [] : [`the strength of class ${text} for this size`];
  };
}
