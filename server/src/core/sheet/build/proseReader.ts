import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Mention, Prose as WrittenProse } from '../../model/values';
import { writingFor } from '../sentences';
import { join, type Thing } from '../sentences/grammar';
import type { SheetWriting } from '../sentences/language';
import type { Prose, Run, SheetLanguage } from '../sheet';
import type { Names } from './names';
import type { StepNames } from './stepNames';

const MENTION = /<(?:(?<kind>[a-z-]+)\/)?(?<id>[a-z][a-z0-9-]{2,})>/gu;

type KindOfThing = 'part' | 'tool' | 'consumable';

/** Reads a writer's own words, and puts names in the place of the ids that they mention. */
export class ProseReader {
  constructor(
    private readonly procedure: ProcedureView,
    private readonly names: Names,
    private readonly writing: SheetWriting,
    private readonly steps: StepNames,
    private readonly where: BuildSet,
  ) {}

  read(prose: WrittenProse | undefined): Prose {
    const written = this.names.written(prose);
    if (prose === undefined || written === undefined) return [];
    const language = this.names.otherLanguageOf(prose);
    if (language === undefined) return this.readText(written.trim());
    return this.#inItsOwn(language)
      .readText(written.trim())
      .map((run) => ({ ...run, lang: language }));
  }

  readText(written: string): Prose {
    const pieces: (string | Prose)[] = [];
    let from = 0;
    for (const match of written.matchAll(MENTION)) {
      const before = written.slice(from, match.index);
      pieces.push(before, this.#mention({ kind: match.groups?.kind, id: match.groups?.id ?? '' }, before));
      from = match.index + match[0].length;
    }
    const whole = join(...pieces, written.slice(from));
    return this.writing.grammar.contract?.(whole) ?? whole;
  }

  /** What is not translated stays whole in its own language, with the names that it mentions. */
  #inItsOwn(language: SheetLanguage): ProseReader {
    const { procedure, names, steps, where } = this;
    return new ProseReader(procedure, names.in(language), writingFor(language), steps, where);
  }

  step(id: string): Prose {
    const { number, view } = this.steps.of(id);
    if (number !== undefined) return [{ kind: 'stepLink', text: this.writing.phrases.step(number), step: id }];
    const title = this.names.written(view?.step.title);
    return join(this.writing.phrases.stepElsewhere(title ?? id));
  }

  #mention({ kind, id }: Pick<Mention, 'kind' | 'id'>, before: string): Prose {
    const thing = this.#kindOf(id, kind);
    if (thing !== undefined) return this.#thing(thing, id, before);
    if (this.steps.of(id).view !== undefined && (kind ?? 'step') === 'step') return this.step(id);
    const family = this.procedure.family?.value;
    const check = family?.checks?.find((one) => one.id.id === id);
    if (check !== undefined) return join(this.names.written(check.value.say)?.replace(/\.$/u, '') ?? id);
    const figure = [...(this.procedure.value.figures ?? []), ...(family?.figures ?? [])].find(
      (one) => one.id.id === id,
    );
    if (figure !== undefined) return join(this.writing.phrases.figure(this.names.written(figure.value.caption) ?? id));
    const value = this.names.value(id);
    return value.name === id ? join(id) : this.#named(value, before);
  }

  #thing(kind: KindOfThing, id: string, before: string): Prose {
    if (kind === 'consumable') return this.#named(this.names.consumable(id), before);
    return this.#named(kind === 'part' ? this.names.part(id, this.where) : this.names.tool(id), before);
  }

  #named(thing: Thing, before: string): Prose {
    return startLike(before, this.writing.grammar.mention(thing, before));
  }

  #kindOf(id: string, kind: string | undefined): KindOfThing | undefined {
    const { family, tools, consumables } = this.procedure;
    const has: Record<KindOfThing, boolean> = {
      part: family?.part(id) !== undefined,
      tool: tools.has(id),
      consumable: consumables.has(id),
    };
    return (['part', 'tool', 'consumable'] as const).find((one) => has[one] && (kind ?? one) === one);
  }
}

/** A name at the start of a sentence starts with a capital. */
function startLike(before: string, prose: Prose): Prose {
  const [first, ...rest] = prose;
  if (first === undefined || !/(?:^|[.!?]\s+)$/u.test(before)) return prose;
  const capital: Run = { ...first, text: first.text.slice(0, 1).toUpperCase() + first.text.slice(1) };
  return [capital, ...rest];
}
