import type { ProcedureView, StoresItem } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Consumable, Part, Tool } from '../../model/generated/types';
import type { Entry, Prose } from '../../model/values';
import { writingFor } from '../sentences';
import type { Grammar, Thing } from '../sentences/grammar';
import type { SheetLanguage, UntranslatedText } from '../sheet';
import type { Untranslated } from './untranslated';
import { oneValueIn } from './valuesIn';

type Named = Pick<Thing, 'name' | 'entry' | 'language'>;

/** What everything is called on the sheet. An id that nothing declares stands for itself. */
export class Names {
  readonly #grammar: Grammar;

  constructor(
    private readonly procedure: ProcedureView,
    private readonly language: SheetLanguage,
    private readonly untranslated: Untranslated,
  ) {
    this.#grammar = writingFor(language).grammar;
  }

  /** The same things named in another language, for a text that stands in it. */
  in(language: SheetLanguage): Names {
    return new Names(this.procedure, language, this.untranslated);
  }

  /** A text in the language of the sheet, else as the writer wrote it first, of which note is taken. */
  written(prose: Prose | undefined, kind: UntranslatedText['kind'] = 'text'): string | undefined {
    if (prose === undefined) return undefined;
    const translation = prose.translations[this.language];
    if (translation !== undefined) return translation.text;
    const { writtenIn } = this.untranslated;
    if (this.language === writtenIn) return prose.text;
    this.untranslated.note(prose, kind);
    return prose.translations[writtenIn]?.text ?? prose.text;
  }

  /** The language that `written` gives a text in, where it is not that of the sheet. */
  otherLanguageOf(prose: Prose): SheetLanguage | undefined {
    const { writtenIn } = this.untranslated;
    return this.language === writtenIn || prose.translations[this.language] !== undefined ? undefined : writtenIn;
  }

  /** A name alone, where its document may write it with article and plural. */
  name(prose: Prose | undefined): string | undefined {
    if (prose === undefined) return undefined;
    const entry = this.written(prose, 'name');
    if (entry === undefined) return undefined;
    return writingFor(this.otherLanguageOf(prose) ?? this.language).grammar.nameIn(entry);
  }

  part(id: string, where: BuildSet): Thing {
    const part = this.procedure.family?.part(id);
    const count = part && this.#pieces(part, where);
    return { kind: 'part', ...this.#named(part?.name, id, 'part'), count, sort: part?.kind?.value };
  }

  tool(id: string, count = 1): Thing {
    const tool = this.procedure.tools.get(id)?.entry.value;
    return { kind: 'tool', ...this.#named(tool?.name, id, 'tool'), count, sort: tool?.kind?.value };
  }

  consumable(id: string): Thing {
    const consumable = this.procedure.consumables.get(id)?.entry.value;
    return {
      kind: 'consumable',
      ...this.#named(consumable?.name, id, 'consumable'),
      count: 1,
      sort: consumable?.kind?.value,
    };
  }

  toolItem(id: string): StoresItem<Tool> | undefined {
    return this.procedure.tools.get(id);
  }

  consumableItem(id: string): StoresItem<Consumable> | undefined {
    return this.procedure.consumables.get(id);
  }

  /** A limit, reading, dimension, outcome or balance group. */
  value(id: string): Thing {
    return { kind: 'value', ...this.#valueName(id), count: 1, sort: undefined };
  }

  option(id: string): Thing {
    const option = this.procedure.family?.value.options?.find((one) => one.id.id === id)?.value;
    return { kind: 'value', ...this.#named(option?.name, id), count: 1, sort: undefined };
  }

  variant(id: string): string {
    const variant = this.procedure.family?.value.variants?.find((one) => one.id.id === id)?.value;
    // Variants have proper names, which read alike in every language.
    return variant?.name?.translations[this.language]?.text || variant?.name?.text || id;
  }

  #valueName(id: string): Named {
    const family = this.procedure.family?.value;
    const named: (readonly Entry<{ readonly name?: Prose }>[] | undefined)[] = [
      this.procedure.value.readings,
      family?.limits,
      family?.readings,
      family?.identify,
      family?.balanceGroups,
    ];
    for (const entries of named) {
      const entry = entries?.find((one) => one.id.id === id);
      if (entry !== undefined) return this.#named(entry.value.name, inWords(id));
    }
    const known = family?.dimensions?.some((one) => one.id.id === id) === true;
    return { name: known ? inWords(id) : id };
  }

  #named(prose: Prose | undefined, id: string, kind: UntranslatedText['kind'] = 'name'): Named {
    const entry = this.written(prose, kind);
    if (prose === undefined || entry === undefined || entry === '') return { name: id };
    const language = this.otherLanguageOf(prose);
    if (language !== undefined) return { name: writingFor(language).grammar.nameIn(entry), language };
    const name = this.#grammar.nameIn(entry);
    return name === entry ? { name } : { name, entry };
  }

  /** How many pieces of a part the unit has: as stated, else one for each place it sits at. */
  #pieces(part: Part, where: BuildSet): number | undefined {
    if (part.quantity !== undefined) return oneValueIn(part.quantity, where, this.procedure.space)?.value;
    const counts = (part.sitsOn ?? []).map((place) => place.count?.value ?? 0);
    return Math.max(
      1,
      counts.reduce((sum, count) => sum + count, 0),
    );
  }
}

/** Dimensions have no names, so their ids are read as words. */
function inWords(id: string): string {
  return id.replaceAll('-', ' ');
}
