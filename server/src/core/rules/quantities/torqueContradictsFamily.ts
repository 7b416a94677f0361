import { anyHeldOf, heldValues, meetings, overlaps, whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import {
  type StatedTorques,
  type Tightened,
  tightened,
  torquesOfInstruction,
  torquesOfPart,
} from '../../analysis/statedTorques';
import type { BuildSet } from '../../builds';
import type { TightenInstruction } from '../../model/generated/types';
import type { Prose, QuantityValue } from '../../model/values';
import { boundsOf, type FoundQuantity, formatQuantity } from '../../quantity';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';
import { torqueWorkingsOfInstruction } from '../../workings/torqueWorking';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, ReportDetails, RuleContext } from '../ruleContext';
import { fastenersNamed } from '../support/fastenersNamed';
import { writeScalar } from '../support/mapKey';
import { listed } from '../support/phrases';
import { quantitiesIn } from '../support/proseQuantities';
import { quantityRange } from '../support/quantityRange';
import { sentenceAt } from '../support/sentenceAt';
import { stopsShort } from '../support/shortPass';
import { anglesDiffer, torqueDiffersFrom, torquesDiffer, unitsThatFit } from '../support/torqueComparison';

const messages = {
  torque: (written: string, name: string, stated: string) =>
    `The torque ${written} of the ${name} contradicts the family, which states ${stated}; correct whichever is wrong`,
  otherUnit: (written: string, name: string, stated: string, units: string) =>
    `The torque ${written} of the ${name} contradicts the family, which states ${stated}; the number would be right in ${units}`,
  angle: (written: string, name: string, stated: string) =>
    `The angle ${written} of the ${name} contradicts the family, which states ${stated}; correct whichever is wrong`,
  said: (written: string, name: string, stated: string) =>
    `The sentence says ${written}, but ${stated} is stated for the ${name}; correct whichever is wrong`,
  angleAdded: (written: string, name: string, stated: string) =>
    `The angle ${written} of the ${name} contradicts the family, which states ${stated} and no angle; correct whichever is wrong`,
  angleLeftOut: (written: string, name: string, stated: string) =>
    `The torque ${written} of the ${name} leaves out the angle of ${stated} that the family states; write it as well`,
};

export const torqueContradictsFamily = defineRule({
  id: 'torque-contradicts-family',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A step tightens a fastener to another torque or angle than the family states for one of the builds that the step serves, or its own words say another one.',
    why: 'One of the two is wrong, and the sheet prints the one of the step.',
    wrong: inStep('- tighten: cap-nut\n  torque: 6.4 ± 0.3 N·m'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m (41 ± 3 lbf·in)'),
  },
  messages,
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.instruction.verb !== 'tighten') return;
      for (const one of tightened(procedure, view))
        new Comparison(procedure, view, view.instruction, one, ctx).report();
    },
  },
});

/** One fastener in one instruction, against what the family states of it. */
class Comparison {
  readonly #step: StatedTorques;
  readonly #family: StatedTorques;

  constructor(
    readonly procedure: ProcedureView,
    readonly view: InstructionView,
    readonly instruction: TightenInstruction,
    readonly one: Tightened,
    readonly ctx: RuleContext<typeof messages>,
  ) {
    this.#step = torquesOfInstruction(instruction, procedure.space, one.where);
    this.#family = torquesOfPart(one.part, procedure.space, one.where);
  }

  report(): void {
    // Where two values of the step hold for one build, nobody can say which of them is the one to compare.
    if (overlaps(this.instruction.torque, this.procedure.space, this.one.where)) return;
    this.#torques();
    this.#angles();
    this.#added();
    this.#leftOut();
    this.#said();
  }

  #torques(): void {
    const { ctx, one } = this;
    for (const { first, second, where } of meetings(this.#step.torques, this.#family.torques)) {
      if (!torquesDiffer(first, second) || this.#isEarlierPass(first, second, where)) continue;
      if (this.#isLeftLoose(first, second)) continue;
      const [written, stated] = [first.text.trim(), second.text.trim()];
      const fitting = unitsThatFit(first, second);
      const details = { ...this.#details(where, second), fixes: () => this.#fixes(first, second, where) };
      const units = listed(
        fitting.map((unit) => unit.symbol),
        'or',
      );
      if (units === '') ctx.report(first.node, 'torque', [written, one.name, stated], details);
      else ctx.report(first.node, 'otherUnit', [written, one.name, stated, units], details);
    }
  }

  #angles(): void {
    for (const { first, second, where } of meetings(this.#step.angles, this.#family.angles)) {
      if (!anglesDiffer(first.angle, second.angle)) continue;
      const text = formatQuantity(second.angle);
      const range = quantityRange(first.value, first.angle.span);
      this.ctx.report(range, 'angle', [formatQuantity(first.angle), this.one.name, text], {
        ...this.#details(where, second.value),
        fixes: () => [{ title: `Write ${text}`, edits: [{ range, text }] }],
      });
    }
  }

  /** A fastener that the maker only tightens to a torque is stretched too far when it is turned on. */
  #added(): void {
    const { space } = this.procedure;
    const stated = anyHeldOf(this.#family.angles, space);
    const { angle } = this.one.part;
    for (const { first, second, where } of meetings(this.#step.angles, this.#family.torques)) {
      const none = angle === undefined ? where : where.and(heldValues(angle, space, where).absent);
      const added = none.minus(stated);
      if (added.isEmpty || torquesDiffer(first.value, second)) continue;
      const range = quantityRange(first.value, first.angle.span);
      const texts = [formatQuantity(first.angle), this.one.name, second.text.trim()] as const;
      this.ctx.report(range, 'angleAdded', [...texts], this.#details(added, second));
    }
  }

  /** A torque alone is only half of it, unless the angle follows in an instruction of its own. */
  #leftOut(): void {
    const { space } = this.procedure;
    const { angle } = this.instruction;
    const turned = anyHeldOf(this.#step.angles, space);
    for (const { first, second, where } of meetings(this.#step.torques, this.#family.angles)) {
      // An angle that cannot be read may be the right one.
      const none = angle === undefined ? where : where.and(heldValues(angle, space, where).absent);
      const silent = none.minus(turned);
      if (silent.isEmpty || this.#others().some(({ instruction: { angle } }) => angle !== undefined)) continue;
      const texts = [first.text.trim(), this.one.name, formatQuantity(second.angle)] as const;
      this.ctx.report(first.node, 'angleLeftOut', [...texts], this.#details(silent, second.value));
    }
  }

  /** Own words are printed in place of the written sentence, so a torque in them must be the one that is stated. */
  #said(): void {
    const { say, passes = [] } = this.instruction;
    const [found, ...more] = say === undefined ? [] : quantitiesIn(say).filter(isTorque);
    if (say === undefined || found === undefined || more.length > 0 || this.#namesAnother(say, found.span)) return;
    if (passes.some((pass) => !torqueDiffersFrom(found.quantity, pass))) return;
    const { torques } = this.#step.torques.length > 0 ? this.#step : this.#family;
    for (const { value, where } of torques) {
      if (!torqueDiffersFrom(found.quantity, value)) continue;
      const text = value.text.trim();
      const range = sourceRange(say.scalar, found.span.start, found.span.end);
      const written = say.text.slice(found.span.start, found.span.end);
      this.ctx.report(range, 'said', [written, this.one.name, text], {
        about: [this.one.ref.id],
        ...whereUnless(where, this.one.where, this.procedure.space),
        fixes: () => [{ title: `Write ${text}`, edits: [{ range, text }] }],
      });
    }
  }

  #namesAnother(say: Prose, { start }: Span): boolean {
    const { family } = this.procedure;
    const sentence = sentenceAt(say.text, start);
    const named = family === undefined ? [] : fastenersNamed(family, say);
    return named.some((one) => one.id !== this.one.ref.id && one.start >= sentence.start && one.end <= sentence.end);
  }

  #details(where: BuildSet, stated: QuantityValue): ReportDetails {
    const { family, space } = this.procedure;
    const message = `The family states ${stated.text.trim()} here`;
    return {
      about: [this.one.ref.id],
      working: () => torqueWorkingsOfInstruction(this.procedure, this.view),
      ...whereUnless(where, this.one.where, space),
      related: family === undefined ? [] : [{ range: stated.node, document: family.document, message }],
    };
  }

  #fixes(written: QuantityValue, stated: QuantityValue, where: BuildSet): FixDraft[] {
    const { quantity } = written.reading;
    const units = unitsThatFit(written, stated).map((unit): FixDraft => {
      const range = quantity === undefined ? written.node : quantityRange(written, quantity.unitSpan);
      return { title: `Write ${unit.symbol}`, edits: [{ range, text: unit.symbol }] };
    });
    return [...units, ...this.#asFamily(written, stated, where)];
  }

  /** The value of the family; all of them where the one would be wrong on other builds. */
  #asFamily(written: QuantityValue, stated: QuantityValue, where: BuildSet): FixDraft[] {
    const holding = this.#step.torques.find((one) => one.value === written)?.where;
    const text = stated.text.trim();
    if (holding?.equals(where) === true) {
      return [{ title: `Write ${text}, as the family states`, edits: [writeScalar(written.node, text)] }];
    }
    const { torque } = this.one.part;
    const source = torque?.node.item.text.slice(torque.node.from, torque.node.to) ?? '';
    if (torque?.node.kind !== 'map' || !torque.node.flow || source.includes('\n')) return [];
    if (this.instruction.torque?.is !== 'one') return [];
    return [{ title: `Write ${source}, as the family states`, edits: [{ range: written.node, text: source }] }];
  }

  /** A lower torque that is followed, within the step, by another for the same fastener is a pass on the way. */
  #isEarlierPass(written: QuantityValue, stated: QuantityValue, where: BuildSet): boolean {
    const [own, wanted] = [written.reading.quantity, stated.reading.quantity];
    if (own === undefined || wanted === undefined || boundsOf(own).nominal >= boundsOf(wanted).nominal) return false;
    return this.#others().some((other) => other.later && where.isWithin(other.where));
  }

  /** Passes that stop too early leave the fastener loose, which is told of the whole work and not of the value. */
  #isLeftLoose(written: QuantityValue, stated: QuantityValue): boolean {
    return this.procedure.value.ends?.id !== 'parts' && stopsShort(this.instruction, written, stated);
  }

  /** Where the step tightens the same fastener again. */
  #others(): { instruction: TightenInstruction; where: BuildSet; later: boolean }[] {
    const all = this.ctx.step?.instructions ?? [];
    const at = all.indexOf(this.view);
    return all.flatMap(({ instruction, where }, place) => {
      if (place === at || instruction.verb !== 'tighten') return [];
      const same = instruction.tighten?.some((ref) => ref.id === this.one.ref.id) === true;
      return same ? [{ instruction, where, later: place > at }] : [];
    });
  }
}

function isTorque({ dimension }: FoundQuantity): boolean {
  return dimension === 'torque';
}
