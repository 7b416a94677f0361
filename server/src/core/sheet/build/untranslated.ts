import type { Step } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type { SheetLanguage, StepPlace, UntranslatedText } from '../sheet';

type Kind = UntranslatedText['kind'];

/** A step that is on the sheet, with its number there. */
interface NumberedStep {
  readonly step: Step;
  readonly id: string;
  readonly number: number;
}

const KINDS: readonly Kind[] = ['part', 'tool', 'consumable', 'name', 'text'];

/** Takes note of what a sheet had to print in the language of its documents, because no translation is there. */
export class Untranslated {
  readonly #met = new Map<Prose, Kind>();

  constructor(readonly writtenIn: SheetLanguage) {}

  /** What has no words, such as a thread or `V4-28R`, reads alike in every language. */
  note(prose: Prose, kind: Kind): void {
    if (/\p{Ll}{2}/u.test(prose.text)) this.#met.set(prose, kind);
  }

  /** Each text once as it is printed, names first; a text of the steps with every step where it stands. */
  list(planned: readonly NumberedStep[], printed: (prose: Prose) => string): UntranslatedText[] {
    if (this.#met.size === 0) return [];
    const places = stepsByProse(planned);
    const texts = new Map<string, UntranslatedText>();
    for (const [prose, kind] of this.#met) {
      const text = kind === 'text' ? printed(prose) : prose.text.trim();
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

function stepsByProse(planned: readonly NumberedStep[]): Map<unknown, StepPlace> {
  const places = new Map<unknown, StepPlace>();
  for (const { step, id, number } of planned) {
    for (const prose of prosesIn(step)) places.set(prose, { step: number, stepId: id });
  }
  return places;
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
