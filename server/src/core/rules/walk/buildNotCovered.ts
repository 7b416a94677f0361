import { gatherer } from '../../analysis/stepRuns';
import { walkOf } from '../../walk/walkProcedure';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { alternativesOf } from '../support/alternatives';

export const buildNotCovered = defineRule({
  id: 'build-not-covered',
  group: 'walk',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'The same thing is written once for each of some builds, and a build that the procedure covers is left out; or no step at all holds for a build.',
    why: 'The sheet of that build has a hole that nobody sees who reads the procedure as a whole.',
    wrong: inStep(
      '- measure: end-play\n  with: dial-gauge\n  when: { all: [k1-a], none: [big-wheel] }\n- measure: end-play\n  accept: 0.05..0.08 mm\n  with: dial-gauge\n  when: k1-b',
    ),
    right: inStep(
      '- measure: end-play\n  with: dial-gauge\n  when: k1-a\n- measure: end-play\n  accept: 0.05..0.08 mm\n  with: dial-gauge\n  when: k1-b',
    ),
  },
  messages: {
    alternatives: (verb: string, object: string) =>
      `"${verb}: ${object}" is written for each of some builds, and these are left out; add one for them, or say that the family does not have it there`,
    nothing: () =>
      'No step holds for some of the builds that the procedure covers; narrow "covers", or add their steps',
  },
  check: {
    procedure(procedure, ctx) {
      const { space, steps, value, unit } = procedure;
      if (procedure.family === undefined || steps.length === 0) return;
      const idle = space.everything.minus(space.union(servedByRun(procedure)));
      if (!idle.isEmpty && steps.every((step) => step.instructions.length > 0)) {
        const at = value.covers?.variants?.[0]?.range ?? value.procedure?.node ?? unit.node;
        ctx.report(at, 'nothing', [], { where: { set: idle, space } });
        return;
      }
      const failures = walkOf(procedure)?.failures ?? [];
      for (const { verb, object, at, missing } of alternativesOf(procedure)) {
        // What the walk finds missing for these builds has the same cause.
        if (failures.some((one) => one.about === object && one.where.overlaps(missing))) continue;
        ctx.report(at, 'alternatives', [verb, object], { about: [object], where: { set: missing, space } });
      }
    },
  },
});

const servedByRun = gatherer((steps, { space }) => space.union(steps.map((step) => step.where)));
