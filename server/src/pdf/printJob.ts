import { bandOf, footLabel } from '../core/sheet/filledLabels';
import { formsOf, type SheetForms } from '../core/sheet/forms';
import { headerFacts } from '../core/sheet/htmlFront';
import { labelsFor } from '../core/sheet/labels';
import { breakLongWords, mapTexts, printableText } from '../core/sheet/printableText';
import type { Sheet } from '../core/sheet/sheet';
import { alertSymbol, inkSvg, turnSymbol } from '../core/sheet/symbols';
import type { PdfFonts } from './assets';
import { documentDate } from './documentDate';
import { type FigureFiles, placeFigures } from './figures';
import { missingGlyphs, type PlacedText } from './fontCoverage';
import type { PdfProblem } from './problem';
import { placeProof } from './proof';

/** Files that the template reads, by path from the main template. */
export type JobFiles = Map<string, Uint8Array>;

// Keys whose values the template compares or looks up; to change them would break a link, not a line.
const namesNotTexts = new Set([
  'kind',
  'word',
  'direction',
  'hand',
  'signalWord',
  'language',
  'lang',
  'paper',
  'sides',
  'path',
  'codePath',
  'fileName',
  'identification',
  'digest',
  'sha',
  'look',
  'id',
  'stepId',
  'step',
  'source',
  'stepNumbers',
  'field',
  'fields',
  'choiceFields',
  'initialsField',
  'signFields',
  'notesField',
  'factFields',
  'toolField',
]);

/**
 * Turns a sheet into the template's files, or says why it cannot be printed as it stands. With forms whose boxes and
 * blanks have names, the places of all fields are marked.
 */
export function preparePrintJob(
  sheet: Sheet,
  given: FigureFiles,
  fonts: PdfFonts,
  named?: SheetForms,
): JobFiles | { problem: PdfProblem } {
  const placed = placeFigures(withoutFindings(sheet), given);
  if (placed.fault !== undefined) return { problem: { kind: 'figure', ...placed.fault } };
  const proof = placeProof(placed.sheet, labelsFor(sheet.language));
  const marks = named === undefined ? {} : { fillable: true, forms: named };
  const written = { ...templateData(withoutSources(placed.sheet)), proof: proof.placed, ...marks };
  const data = mapTexts(written, (text) => breakLongWords(printableText(text)), namesNotTexts);
  const fileNames = (proof.placed?.files ?? []).map(({ fileName }) => ({
    text: fileName,
    place: 'the name of a source',
  }));
  const missing = missingGlyphs([...placedTexts(data), ...placed.texts, ...fileNames], fonts);
  if (missing.length > 0) return { problem: { kind: 'missingGlyph', characters: missing } };
  const texts: [string, string][] = [...symbolFiles(), ...proof.files, ['data.json', JSON.stringify(data)]];
  return new Map([...placed.files, ...texts.map(([name, text]) => [name, utf8(text)] as const)]);
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

// Findings are for the writer's eyes; a printed sheet only counts the errors.
function withoutFindings(sheet: Sheet): Sheet {
  const phases = sheet.phases.map((phase) => ({
    ...phase,
    steps: phase.steps.map((step) => ({ ...step, findings: [] })),
  }));
  return { ...sheet, findings: [], phases };
}

// The texts that a sheet is made from are attached, not set in type, and need no glyphs.
function withoutSources({ proof, ...sheet }: Sheet): Sheet {
  if (proof === undefined) return sheet;
  return { ...sheet, proof: { ...proof, builtFrom: proof.builtFrom.map((file) => ({ ...file, text: '' })) } };
}

function templateData(sheet: Sheet) {
  const labels = labelsFor(sheet.language);
  const { header } = sheet;
  const statuses = { draft: labels.statusDraft, released: labels.statusReleased, withdrawn: labels.statusWithdrawn };
  return {
    sheet,
    labels,
    band: bandOf(labels, { status: header.status, errors: sheet.notReleased?.errors ?? 0 }) ?? null,
    foot: footLabel(labels, header),
    status: statuses[header.status],
    facts: headerFacts(header, labels),
    forms: formsOf(sheet, labels),
    date: documentDate(header),
    stepNumbers: stepNumbers(sheet),
  };
}

// The first of two steps with one id wins, as it does for a link in HTML.
function stepNumbers(sheet: Sheet): Record<string, number> {
  const steps = sheet.phases.flatMap((phase) => phase.steps).reverse();
  return Object.fromEntries(steps.map((step) => [step.id, step.number]));
}

function symbolFiles(): [string, string][] {
  const alert = alertSymbol('warning') ?? '';
  return [
    ['alert-black.svg', inkSvg(alert)],
    ['alert-white.svg', alert.replaceAll('currentColor', '#ffffff')],
    ['turn-clockwise.svg', inkSvg(turnSymbol('clockwise'))],
    ['turn-counter-clockwise.svg', inkSvg(turnSymbol('counter-clockwise'))],
  ];
}

/** Every text that is set in type, with where it stands: in a step, else in the part of the sheet that holds it. */
function* placedTexts(value: unknown, place = 'the sheet', key = ''): Generator<PlacedText> {
  if (typeof value === 'string') yield { text: value, place };
  else if (Array.isArray(value)) for (const entry of value) yield* placedTexts(entry, place, key);
  else if (typeof value === 'object' && value !== null) {
    const here = key === 'steps' && 'number' in value ? `step ${String(value.number)}` : place;
    for (const [name, entry] of Object.entries(value)) {
      if (namesNotTexts.has(name)) continue;
      yield* placedTexts(entry, here === 'the sheet' && name !== 'sheet' ? `the ${wordsOf(name)}` : here, name);
    }
  }
}

/** `torqueTable` as words. */
function wordsOf(key: string): string {
  return key.replace(/[A-Z]/gu, (capital) => ` ${capital.toLowerCase()}`);
}
