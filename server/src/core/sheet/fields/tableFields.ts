import type { FormCell, FormColumn, FormTable } from '../forms/form';
import { type Asking, type FieldPlace, withNames } from './asking';
import { never } from './formField';
import type { SharedFields } from './sharedFields';

/** Tables of which a row may rightly stay empty: what a step has asked for already, or what not every shop knows. */
const NEVER_ASKED: ReadonlySet<string> = new Set(['serial-list', 'sign-off-list']);

/** The boxes and blanks of a table, row by row. */
export function nameTable(table: FormTable, at: FieldPlace, shared: SharedFields, asking: Asking): FormTable {
  const rows = table.rows.map((row, index) => new RowNaming(table, row, index, at, shared, asking).cells());
  return { ...table, rows };
}

class RowNaming {
  readonly #subject: string;
  readonly #at: FieldPlace;
  readonly #applies: string | undefined;

  constructor(
    private readonly table: FormTable,
    private readonly row: readonly FormCell[],
    private readonly index: number,
    at: FieldPlace,
    private readonly shared: SharedFields,
    private readonly asking: Asking,
  ) {
    this.#subject = subjectOf(row);
    const need = NEVER_ASKED.has(table.name) ? never : at.need;
    const place = { ...at, path: [...at.path, table.name, index + 1], need };
    const condition = row.flatMap((cell) =>
      cell.kind === 'text' && cell.condition !== undefined ? [cell.condition] : [],
    )[0];
    const again = shared.applies(table.name, index);
    const asked = again === undefined ? asking.condition(place, condition) : { at: place, field: again };
    this.#at = asked.at;
    this.#applies = asked.field;
  }

  cells(): FormCell[] {
    return this.row.map((cell, column) => this.#cell(cell, column));
  }

  #cell(cell: FormCell, column: number): FormCell {
    const head = this.table.columns[column];
    const known = this.shared.cell(this.table.name, this.index, column);
    switch (cell.kind) {
      case 'text':
        return cell.condition?.kind !== 'outcome' || this.#applies === undefined
          ? cell
          : { ...cell, condition: withNames(cell.condition, { field: this.#applies }) };
      case 'tick':
        return withNames(cell, {
          field: this.asking.tick(this.#at, `column-${column + 1}`, `${cell.name}: ${head?.head ?? ''}`),
        });
      case 'choices': {
        const question = `${this.#subject}: ${head?.head ?? ''}`;
        const fields = known ?? this.asking.choice(this.#at, `column-${column + 1}`, cell.values, question);
        return withNames(cell, { fields });
      }
      case 'blanks':
        return this.#blanks(cell, column, head, known);
      default:
        return cell;
    }
  }

  #blanks(
    cell: FormCell & { kind: 'blanks' },
    column: number,
    head: FormColumn | undefined,
    known: readonly string[] | undefined,
  ): FormCell {
    // What is stamped is no field.
    if (head === undefined || head.head === this.asking.labels.stamp) return cell;
    if (cell.blanks.length === 0) return withNames(cell, { field: known?.[0] ?? this.#whole(column, head) });
    const fields = cell.blanks.map(({ label, unit }, index) => {
      const what = [this.#subject, label].filter((each) => each !== '').join(', ');
      const parts = [`column-${column + 1}`, index + 1];
      if (known?.[index] !== undefined) return known[index];
      const accepts = this.shared.accepts(this.table.name, this.index);
      return this.asking.field({ ...this.#at, need: never }, parts, { kind: 'value', unit, accepts, what });
    });
    return withNames(cell, { fields });
  }

  /** A cell that is written into as a whole. The number of the tool beside a value is a help, and no more. */
  #whole(column: number, { head }: FormColumn): string {
    const { labels } = this.asking;
    const at = head === labels.toolNumber && this.table.name === 'records' ? { ...this.#at, need: never } : this.#at;
    const what = this.#subject === '' ? head : `${this.#subject}: ${head}`;
    const parts = [`column-${column + 1}`];
    return head === labels.signature
      ? this.asking.field(at, parts, { kind: 'signature', what })
      : this.asking.field(at, parts, { kind: 'text', lines: 'one', what });
  }
}

/** What a row is about: its first words. */
function subjectOf(row: readonly FormCell[]): string {
  for (const cell of row) {
    const text = cell.kind === 'text' ? cell.texts[0]?.text : undefined;
    if (text !== undefined && text !== '') return text;
  }
  return '';
}
