import type { SheetHeader } from '../core/sheet/sheet';

export interface DocumentDate {
  year: number;
  month: number;
  day: number;
}

/** The day that the printed file gives itself: that of the revision, never today. Null where none is stated, or none such exists. */
export function documentDate(header: SheetHeader): DocumentDate | null {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/u.exec(header.revisionDate ?? '');
  if (parts === null) return null;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const real = new Date(Date.UTC(year, month - 1, day));
  return real.getUTCMonth() === month - 1 && real.getUTCDate() === day ? { year, month, day } : null;
}
