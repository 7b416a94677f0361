import { isDay } from '../../model/readValues';
import type { ItemRange } from '../../syntax/node';
import type { FixDraft } from '../ruleContext';

export function replaceBy(range: ItemRange, text: string): FixDraft {
  return { title: `Write ${text}`, edits: [{ range, text }] };
}

/** Year, month and day in that order are certain however they are set apart; other orders are not. */
export function dayFix(range: ItemRange, text: string): FixDraft[] {
  const [, year, month = '', day = ''] = /^\s*(\d{4})[-./ ]?(\d{1,2})[-./ ]?(\d{1,2})\s*$/.exec(text) ?? [];
  const written = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return year !== undefined && written !== text && isDay(written) ? [replaceBy(range, written)] : [];
}

/** The id that comes nearest to what was written: small letters, digits and hyphens. */
export function idFix(range: ItemRange, text: string): FixDraft[] {
  const id = text
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '');
  return /^[a-z][a-z0-9-]{2,}$/.test(id) && id !== text ? [replaceBy(range, id)] : [];
}
