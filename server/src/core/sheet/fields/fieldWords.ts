import type { FormField } from './formField';

/** What a reader shows and speaks for a field: where it stands, what it is and the unit that a bare number is in. */
export function fieldTooltip(field: FormField): string {
  const unit = field.kind === 'value' && field.unit !== '' ? [field.unit] : [];
  return [field.place, field.what, ...unit].join(', ');
}
