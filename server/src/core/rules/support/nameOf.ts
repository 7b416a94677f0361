import type { ProcedureView } from '../../analysis/procedureView';

/** What the sheet calls a part, limit, reading or check. */
export function nameOf(procedure: ProcedureView | undefined, id: string | undefined): string {
  if (id === undefined) return '';
  const family = procedure?.family;
  const limit = family?.value.limits?.find((one) => one.id.id === id)?.value.name;
  const readings = [...(family?.value.readings ?? []), ...(procedure?.value.readings ?? [])];
  const reading = readings.find((one) => one.id.id === id)?.value.name;
  const outcome = family?.value.identify?.find((one) => one.id.id === id)?.value.name;
  const group = family?.value.balanceGroups?.find((one) => one.id.id === id)?.value.name;
  return family?.part(id)?.name?.text ?? group?.text ?? limit?.text ?? reading?.text ?? outcome?.text ?? id;
}
