import type { FormField } from '../fields/formField';
import { judgeValue } from './judgeValue';
import type { RecordPlan } from './recordPlan';
import { isSound, type Verdict } from './verdict';

/** What stands in a field of a filled sheet. */
export type Filled =
  | { readonly kind: 'tick'; readonly isOn: boolean }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'signature'; readonly isSigned: boolean };

/** Whether a hold point needs a signature in the file, or a name and a date will do because it is signed on paper. */
export type Signatures = 'required' | 'optional';

/** One thing that was asked for, what was filled in and what is to be said of it. Boxes of one question are one entry. */
export interface JudgedEntry {
  readonly name: string;
  readonly place: string;
  readonly stepId?: string;
  readonly what: string;
  readonly kind: FormField['kind'];
  /** As it was filled in; empty where it was not. */
  readonly filled: string;
  readonly number?: number;
  readonly unit?: string;
  readonly limits?: string;
  readonly verdict: Verdict;
}

export interface JudgedRecord {
  readonly plan: RecordPlan;
  readonly entries: readonly JudgedEntry[];
  /** Nothing is missing, out of its limits, unreadable or contradictory. */
  readonly isSound: boolean;
}

/** Judges a filled sheet by the plan that it carries. A field that is not there counts as empty. Never throws. */
export function judgeRecord(
  plan: RecordPlan,
  filled: ReadonlyMap<string, Filled>,
  signatures: Signatures,
): JudgedRecord {
  const judge = new RecordJudge(plan, filled, signatures);
  const entries = judge.entries();
  return { plan, entries, isSound: entries.every((entry) => isSound(entry.verdict)) };
}

class RecordJudge {
  constructor(
    private readonly plan: RecordPlan,
    private readonly filled: ReadonlyMap<string, Filled>,
    private readonly signatures: Signatures,
  ) {}

  entries(): JudgedEntry[] {
    const groups = new Set<string>();
    return this.plan.fields.flatMap((field) => {
      if (field.kind !== 'choice') return [this.#entry(field)];
      if (groups.has(field.group)) return [];
      groups.add(field.group);
      return [this.#question(field)];
    });
  }

  #entry(field: Exclude<FormField, { kind: 'choice' }>): JudgedEntry {
    const text = this.#textOf(field.name);
    const entry = { ...entryOf(field), filled: text };
    if (field.kind === 'value' && this.#isSuperseded(field)) return { ...entry, verdict: { is: 'superseded' } };
    const need = this.#needVerdict(field, text !== '');
    if (need !== undefined) return { ...entry, verdict: need };
    return {
      ...entry,
      ...(field.kind === 'value' ? judgeValue(text, field, this.plan.language) : { verdict: { is: 'noted' } }),
    };
  }

  /** Of several boxes one is ticked. */
  #question(first: Extract<FormField, { kind: 'choice' }>): JudgedEntry {
    const boxes = this.plan.fields.filter((field) => field.kind === 'choice' && field.group === first.group);
    const chosen = boxes.flatMap((box) => (box.kind === 'choice' && this.#isOn(box.name) ? [box.value] : []));
    const entry = { ...entryOf(first), name: first.group, what: first.question, filled: chosen.join(' + ') };
    const need = this.#needVerdict(first, chosen.length > 0);
    if (need !== undefined) return { ...entry, verdict: need };
    const verdict: Verdict =
      chosen.length > 1
        ? { is: 'contradiction', why: `${chosen.length} boxes of one question are ticked` }
        : { is: 'noted' };
    return { ...entry, verdict };
  }

  /** What is to be said before the content is looked at; undefined where the content decides. */
  #needVerdict({ need, kind }: FormField, isFilled: boolean): Verdict | undefined {
    const ticks = need.kind === 'underTick' ? need.ticks : [];
    const isAsked = need.kind !== 'never' && ticks.every((tick) => this.#isOn(tick));
    if (isFilled) {
      return need.kind === 'underTick' && !isAsked
        ? { is: 'contradiction', why: 'it is filled in, and the box that it stands under is not ticked' }
        : undefined;
    }
    if (kind === 'signature' && this.signatures === 'optional') return { is: 'notAsked' };
    return isAsked ? { is: 'missing' } : { is: 'notAsked' };
  }

  #isSuperseded({ attempt }: Extract<FormField, { kind: 'value' }>): boolean {
    if (attempt === undefined) return false;
    return this.plan.fields.some(
      (other) =>
        other.kind === 'value' &&
        other.attempt?.of === attempt.of &&
        other.attempt.number > attempt.number &&
        this.#textOf(other.name) !== '',
    );
  }

  #isOn(name: string): boolean {
    const filled = this.filled.get(name);
    return filled?.kind === 'tick' && filled.isOn;
  }

  #textOf(name: string): string {
    const filled = this.filled.get(name);
    switch (filled?.kind) {
      case undefined:
        return '';
      case 'tick':
        return filled.isOn ? 'x' : '';
      case 'signature':
        return filled.isSigned ? 'signed' : '';
      case 'text':
        return filled.text.trim();
    }
  }
}

function entryOf(field: FormField): Omit<JudgedEntry, 'filled' | 'verdict'> {
  const { name, place, stepId, what, kind } = field;
  const accepts = field.kind === 'value' ? field.accepts : [];
  const limits = accepts
    .map((one) => (one.when === undefined ? one.words : `${one.words} when ${one.when}`))
    .join('; ');
  return {
    name,
    place,
    ...(stepId === undefined ? {} : { stepId }),
    what,
    kind,
    ...(field.kind === 'value' && field.unit !== '' ? { unit: field.unit } : {}),
    ...(limits === '' ? {} : { limits }),
  };
}
