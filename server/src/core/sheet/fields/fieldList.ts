import type { AskedField, FormField } from './formField';

/** Gathers the fields of a sheet; every name is given once, whatever the documents hold twice. */
export class FieldList {
  readonly fields: FormField[] = [];
  readonly #names = new Set<string>();

  /** The name under which the field is known from now on. */
  add(parts: readonly (string | number)[], field: AskedField): string {
    const name = this.#unused(parts.map(String).map(plainPart).join('/'));
    this.fields.push({ ...field, name } as FormField);
    return name;
  }

  #unused(wanted: string): string {
    let name = wanted;
    for (let count = 2; this.#names.has(name); count += 1) name = `${wanted}~${count}`;
    this.#names.add(name);
    return name;
  }
}

/** A point parts the levels of a form's names, and a slash those of ours. */
function plainPart(text: string): string {
  return text.trim().replace(/[^\p{L}\p{N}_-]+/gu, '-');
}
