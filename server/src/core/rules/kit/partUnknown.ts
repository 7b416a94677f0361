import type { FamilyView } from '../../analysis/familyView';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { joinedIds, joinedText, splitFix } from '../support/joinedIds';
import { didYouMean } from '../support/phrases';
import { unknownId } from '../support/unknownIds';

export const partUnknown = defineRule({
  id: 'part-unknown',
  group: 'kit',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is named that the family does not declare.',
    why: 'The sheet cannot say which part it is, and nothing about it can be checked: thread, torque, kit, order of work.',
    wrong: inStep('- install: cover-seals'),
    right: inStep('- install: cover-seal'),
  },
  messages: {
    joined: (ids: readonly string[]) => joinedText(ids),
    unknown: (id: string, near: string) => `The family has no part ${id}; ${near}`,
  },
  check: {
    ref({ ref }, ctx) {
      const unknown = ref.kind === 'part' ? unknownId(ctx.around, ref) : undefined;
      if (unknown === undefined) return;
      const { family } = ctx;
      const joined = joinedIds(ref.id, (id) => family?.part(id) !== undefined);
      if (joined !== undefined) {
        ctx.report(ref.range, 'joined', [joined], { about: joined, fixes: () => [splitFix(ref, joined)] });
        return;
      }
      const near =
        unknown.near.length > 0 || family === undefined ? unknown.near.map(({ id }) => id) : namedSo(family, ref.id);
      ctx.report(ref.range, 'unknown', [ref.id, didYouMean(near, 'declare it in the family')], {
        about: [ref.id],
        fixes: () => near.map((id) => ({ title: `Write ${id}`, edits: [{ range: ref.range, text: id }] })),
      });
    },
  },
});

/** The parts that are called what was written where their id belongs. */
function namedSo(family: FamilyView, text: string): string[] {
  const wanted = text.toLowerCase();
  return [...family.parts].flatMap(([id, { value }]) => {
    const names = [value.name, ...(value.also ?? [])];
    return names.some((name) => name?.text.toLowerCase() === wanted) ? [id] : [];
  });
}
