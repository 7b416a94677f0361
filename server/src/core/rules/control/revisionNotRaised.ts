import { compareRevisions, nextRevision } from '../../model/revisionOrder';
import { defineRule } from '../defineRule';
import { type Example, inHead } from '../examples';
import type { FixDraft } from '../ruleContext';

/** Compared with revision C, since which a torque has changed. */
function since(example: Example): Example {
  const changes = ['Torque of part cap nut: 4.6 ± 0.3 N·m → 5.1 ± 0.3 N·m'];
  return { ...example, released: { revision: 'C', changes } };
}

export const revisionNotRaised = defineRule({
  id: 'revision-not-raised',
  group: 'control',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A procedure, or what it prints, has changed since it was released, and its revision is the same or an earlier one.',
    why: 'Two sheets with one revision and two torques: nobody at the bench can tell which one holds.',
    wrong: since(inHead('revision: C')),
    right: since(inHead('revision: D')),
  },
  messages: {
    same: (revision: string, what: string, more: number) =>
      `Revision ${revision} was released and has changed since (${what}${more === 0 ? '' : ` and ${more} more`}); raise the revision`,
    back: (revision: string, released: string) =>
      `Revision ${revision} comes before the released ${released}; raise the revision above it`,
  },
  check: {
    procedure({ value }, ctx) {
      const { released, settings } = ctx.around;
      const { revision } = value;
      const [worst] = released?.changes ?? [];
      if (released === undefined || worst === undefined || revision === undefined) return;
      const letters = { skip: settings.skippedLetters ?? '' };
      const order = compareRevisions(revision.text, released.revision, letters);
      // Of two that are in no series nobody can tell which comes first.
      if (order === undefined || order > 0) return;
      const fixes = (): FixDraft[] => {
        const next = nextRevision(released.revision, letters);
        return next === undefined
          ? []
          : [{ title: `Raise the revision to ${next}`, edits: [{ range: revision.node, text: next }] }];
      };
      const about = [released.revision];
      if (order === 0)
        ctx.report(revision.node, 'same', [revision.text, worst, released.changes.length - 1], { about, fixes });
      else ctx.report(revision.node, 'back', [revision.text, released.revision], { about, fixes });
    },
  },
});
