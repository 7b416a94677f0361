import type { Text } from '../../model/values';
import { defineRule } from '../defineRule';
import { inHead } from '../examples';

export const samePersonApproves = defineRule({
  id: 'same-person-approves',
  group: 'control',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'One person has prepared, checked or approved the same procedure.',
    why: 'Nobody sees their own mistake: who checks and who approves must each be somebody else.',
    wrong: inHead('prepared-by: R. Ashdown\nchecked-by: M. Oduya\napproved-by: R. Ashdown'),
    right: inHead('prepared-by: R. Ashdown\nchecked-by: M. Oduya\napproved-by: S. Lindqvist'),
  },
  messages: {
    same: (who: string, did: string, does: string) =>
      `${who} has ${did} this procedure and has ${does} it as well; let somebody else do one of the two`,
  },
  check: {
    procedure({ value }, ctx) {
      const people: readonly (readonly [Text | undefined, string])[] = [
        [value.preparedBy, 'prepared'],
        [value.checkedBy, 'checked'],
        [value.approvedBy, 'approved'],
      ];
      for (const [index, [person, does]] of people.entries()) {
        const earlier = people.slice(0, index).find(([other]) => isSamePerson(other, person));
        if (person !== undefined && earlier !== undefined)
          ctx.report(person.node, 'same', [person.text.trim(), earlier[1], does], { about: [does] });
      }
    },
  },
});

/** Names are compared as people read them: capitals, dots and spaces make nobody another person. */
function isSamePerson(first: Text | undefined, second: Text | undefined): boolean {
  if (first === undefined || second === undefined) return false;
  const [a, b] = [plain(first.text), plain(second.text)];
  return a !== '' && a === b;
}

function plain(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\s.]+/gu, '');
}
