import type { SheetForms } from '../forms';
import type { Form, FormBlock, FormBox, FormTable } from '../forms/form';
import { plain } from '../sentences/grammar';
import type { Sheet } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { always, never } from './formField';
import { type SharedFields, sharedFields } from './sharedFields';
import type { AskedInSteps } from './stepFields';
import { nameTable } from './tableFields';

/** Whether a form is part of what the bench must hand in, or leaves the shop and is filled in by others. */
type Filing = 'filed' | 'handedOn';

/** The forms around the steps. */
export class FormNaming {
  readonly #shared: SharedFields;

  constructor(
    sheet: Sheet,
    asked: AskedInSteps,
    private readonly asking: Asking,
  ) {
    this.#shared = sharedFields(sheet, asked, asking);
  }

  get shared(): SharedFields {
    return this.#shared;
  }

  front(forms: SheetForms): Pick<SheetForms, 'safety' | 'received' | 'layOut'> {
    return {
      safety: forms.safety.map((form) => this.#form(form, 'filed')),
      received: forms.received.map((form) => this.#form(form, 'filed')),
      layOut: forms.layOut.map((form) => this.#form(form, 'filed')),
    };
  }

  back(forms: SheetForms): Pick<SheetForms, 'tally' | 'lastLook' | 'record' | 'handedOver'> {
    return {
      tally: forms.tally.map((form) => this.#form(form, 'filed')),
      lastLook: forms.lastLook.map((form) => this.#form(form, 'filed')),
      record: forms.record.map((form) => this.#form(form, 'filed')),
      handedOver: forms.handedOver.map((form) => this.#form(form, 'handedOn')),
    };
  }

  #form(form: Form, filing: Filing): Form {
    const at: FieldPlace = { path: [form.name], words: form.title, need: filing === 'filed' ? always : never };
    return { ...form, blocks: form.blocks.map((block, index) => this.#block(block, index + 1, at)) };
  }

  #block(block: FormBlock, number: number, at: FieldPlace): FormBlock {
    switch (block.kind) {
      case 'boxes':
        return { ...block, rows: block.rows.map((row, index) => this.#boxes(row, [number, index + 1], at)) };
      case 'lines': {
        const asked = { kind: 'text', lines: 'many', what: block.label } as const;
        return withNames(block, { field: this.asking.field({ ...at, need: never }, ['lines', number], asked) });
      }
      case 'ticks': {
        const fields = block.items.map((item, index) =>
          this.asking.tick(at, `tick-${number}-${index + 1}`, plain(item)),
        );
        return withNames(block, { fields });
      }
      case 'table':
        return this.#table(block, at);
      default:
        return block;
    }
  }

  #table(table: FormTable, at: FieldPlace): FormTable {
    return nameTable(table, at, this.#shared, this.asking);
  }

  /** Most of what a form asks of the unit and its owner is not known to every shop; the unit's own number is. */
  #boxes(row: readonly FormBox[], path: readonly number[], at: FieldPlace): FormBox[] {
    return row.map((box, index) => {
      if (box.text !== undefined) return box;
      const known = this.#shared.box(box.label);
      const field = known ?? this.#boxField(box, [...path, index + 1], at);
      return withNames(box, { field });
    });
  }

  #boxField(box: FormBox, path: readonly number[], at: FieldPlace): string {
    const parts = [`box-${path.join('-')}`];
    const place = { ...at, need: never };
    if (box.label === this.asking.labels.signature)
      return this.asking.field(place, parts, { kind: 'signature', what: box.label });
    if (box.unit !== undefined)
      return this.asking.field(place, parts, { kind: 'value', unit: box.unit, accepts: [], what: box.label });
    return this.asking.field(place, parts, { kind: 'text', lines: 'one', what: box.label });
  }
}
