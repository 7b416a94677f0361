import type { Labels } from '../labels';
import type { Condition } from '../sheet';
import { FieldList } from './fieldList';
import { type AskedField, type FormField, type Need, never } from './formField';

/** A field as its asker knows it: what it is, and what it is judged by. Where it stands is known from the place. */
type Asked = AskedField extends infer Field
  ? Field extends unknown
    ? Omit<Field, 'place' | 'stepId' | 'need'>
    : never
  : never;

/** Where a field stands on the sheet, and when it must be filled in. */
export interface FieldPlace {
  /** The first parts of the names, for example the step's id and the number of the instruction. */
  readonly path: readonly (string | number)[];
  /** In words, for example `Step 44.2`. */
  readonly words: string;
  readonly stepId?: string;
  readonly need: Need;
}

/** A condition whose box has a name, and the place of what stands under it. */
export interface NamedCondition {
  readonly at: FieldPlace;
  /** Ready to be spread into what has the condition. */
  readonly entry: { condition?: Condition };
  /** The box; absent where there is none to tick. */
  readonly field?: string;
}

/** Asks for the fields of one sheet, and keeps the list of them. */
export class Asking {
  readonly list = new FieldList();

  constructor(readonly labels: Labels) {}

  get fields(): readonly FormField[] {
    return this.list.fields;
  }

  field(at: FieldPlace, parts: readonly (string | number)[], asked: Asked): string {
    const { path, words, stepId, need } = at;
    const step = stepId === undefined ? {} : { stepId };
    return this.list.add([...path, ...parts], { ...asked, place: words, ...step, need } as AskedField);
  }

  tick(at: FieldPlace, part: string | number, what: string): string {
    return this.field(at, [part], { kind: 'tick', what });
  }

  text(at: FieldPlace, part: string | number, what: string): string {
    return this.field(at, [part], { kind: 'text', lines: 'one', what });
  }

  /** Boxes of which one is ticked. */
  choice(at: FieldPlace, part: string, values: readonly string[], question: string): string[] {
    const group = [...at.path, part].join('/');
    return values.map((value, index) =>
      this.field(at, [part, index + 1], { kind: 'choice', group, question, value, what: `${question}: ${value}` }),
    );
  }

  /** What the bench decides is ticked where it applies; whatever stands under it is asked for only then. */
  condition(at: FieldPlace, given: Condition | undefined): NamedCondition {
    if (given?.kind !== 'outcome') return { at, entry: given === undefined ? {} : { condition: given } };
    const what = `${this.labels.tickIfApplies}: ${given.text}`;
    const field = this.field({ ...at, need: never }, ['applies'], { kind: 'tick', what });
    return {
      at: { ...at, need: under(at.need, field) },
      entry: { condition: withNames(given, { field }) },
      field,
    };
  }
}

/** Asked for only where the box is ticked too. */
export function under(need: Need, tick: string): Need {
  switch (need.kind) {
    case 'never':
      return need;
    case 'always':
      return { kind: 'underTick', ticks: [tick] };
    case 'underTick':
      return { kind: 'underTick', ticks: [...need.ticks, tick] };
  }
}

/** A thing with the names of its fields beside it, where the templates look for them; whoever only prints sees the thing. */
export function withNames<Thing extends object>(thing: Thing, names: object): Thing {
  return { ...thing, ...names };
}
