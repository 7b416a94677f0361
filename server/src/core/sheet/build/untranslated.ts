import type { Step } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type { StepPlace, UntranslatedText } from '../sheet';
import type { SheetLanguage } from '../sheetText';
import type { PlannedStep } from './plannedSteps';

type Kind = UntranslatedText['kind'];

/** A text that had to be printed in the language of its document; `text` is how it is printed, once somebody has looked. */
export interface UntranslatedNote {
  readonly prose: Prose;
  readonly kind: Kind;
  readonly text: string | undefined;
}

const KINDS: readonly Kind[] = ['part', 'tool', 'consumable', 'name', 'text'];

/** Takes note of what a sheet had to print in the language of its documents, because no translation is there. */
export class Untranslated {
  readonly #met = new Map<Prose, UntranslatedNote>();
  #written: Map<Prose, UntranslatedNote> | undefined;

  constructor(readonly writtenIn: SheetLanguage) {}

  /** What has no words, such as a thread or `V4-28R`, reads alike in every language. */
  note(prose: Prose, kind: Kind): void {
    if (/\p{Ll}{2}/u.test(prose.text)) this.#keep({ prose, kind, text: undefined });
  }

  /** From now on all notes are written down there too, so that they can be taken again without looking. */
  writeDown(notes: Map<Prose, UntranslatedNote> | undefined): void {
    this.#written = notes;
  }

  /** Takes the notes that were written down. */
  takeAgain(notes: Iterable<UntranslatedNote>): void {
    for (const note of notes) this.#keep(note);
  }

  #keep(note: UntranslatedNote): void {
    const text = note.text ?? this.#met.get(note.prose)?.text;
    this.#met.set(note.prose, { ...note, text });
    this.#written?.set(note.prose, note);
  }

  /** Each text once as it is printed, names first; a text of the steps with every step where it stands. */
  list(planned: readonly PlannedStep[], printed: (prose: Prose) => string): UntranslatedText[] {
    if (this.#met.size === 0) return [];
    const places = stepsByProse(planned);
    const texts = new Map<string, UntranslatedText>();
    for (const note of this.#met.values()) {
      const { prose, kind } = note;
      const text = kind === 'text' ? (note.text ?? printed(prose)) : prose.text.trim();
      const known = texts.get(`${kind} ${text}`) ?? { kind, text, language: this.writtenIn, at: [] };
      const at = kind === 'text' ? places.get(prose) : undefined;
      if (at !== undefined && known.at.every((one) => one.step !== at.step)) known.at.push(at);
      texts.set(`${kind} ${text}`, known);
    }
    return [...texts.values()].sort(
      (a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || firstStep(a) - firstStep(b),
    );
  }
}

/** Texts of no step come first, as they are printed before and around the steps. */
function firstStep({ at }: UntranslatedText): number {
  return Math.min(...at.map(({ step }) => step), ...(at.length === 0 ? [0] : []));
}

function stepsByProse(planned: readonly PlannedStep[]): Map<unknown, StepPlace> {
  const places = new Map<unknown, StepPlace>();
  for (const { here, place } of planned) for (const prose of prosesOf(here.view.step)) places.set(prose, place);
  return places;
}

const prosesOfStep = new WeakMap<Step, readonly object[]>();

function prosesOf(step: Step): readonly object[] {
  const known = prosesOfStep.get(step) ?? [...prosesIn(step)];
  prosesOfStep.set(step, known);
  return known;
}

/** Every text for people within a value of a document; the syntax that it was read from is left aside. */
function* prosesIn(value: unknown): Generator<object> {
  if (typeof value !== 'object' || value === null || isSyntax(value)) return;
  if ('translations' in value) yield value;
  else for (const inner of Object.values(value)) yield* prosesIn(inner);
}

function isSyntax(value: object): boolean {
  return 'item' in value && 'from' in value;
}
