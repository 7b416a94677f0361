import { defineRule } from '../defineRule';
import { inHead } from '../examples';

const CONCESSION =
  'concessions:\n  - { rule: torque-unit-missing, at: only-step, because: the maker gives a bare number, by: M. Oduya, until: ';

export const concessionExpired = defineRule({
  id: 'concession-expired',
  group: 'control',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A concession has run out.',
    why: 'What was allowed for a time goes on without anybody who has looked at it since.',
    wrong: inHead(`${CONCESSION}2020-03-31 }`, '- tighten: cap-nut\n  torque: 45'),
    right: inHead(`${CONCESSION}2099-03-31 }`, '- tighten: cap-nut\n  torque: 45'),
  },
  messages: {
    expired: (rule: string, day: string) =>
      `The concession for ${rule} ran out on ${day}; mend what it let stand, or have it allowed anew`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const { rule, at, until } of procedure.value.concessions ?? []) {
        if (until?.day === undefined || until.day >= ctx.today) continue;
        const ids = [rule?.id, at?.id].flatMap((id) => id ?? []);
        ctx.report(until.node, 'expired', [rule?.id ?? 'a finding', until.day], { about: ids });
      }
    },
  },
});
