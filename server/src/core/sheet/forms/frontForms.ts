import { amountLabel, stepsLabel } from '../filledLabels';
import { fillLabel, type Labels } from '../labels';
import type { ConsumableLine, KitLine, KitList, Sheet, SheetConcession, ToolLine } from '../sheet';
import { formTable, stepsCell, strongWords, toFill, words } from './cells';
import type { Form, FormBlock, FormCell } from './form';
import { rememberedRows } from './rememberedRows';

/** What must be known before anything is touched: what is let stand though a rule is against it, and the hazards. */
export function safetyForms(sheet: Sheet, labels: Labels): Form[] {
  return [...concessionForm(sheet, labels), ...hazardForm(sheet, labels)];
}

/** What is laid out before the first step, and what changed in the document. */
export function layOutForms(sheet: Sheet, labels: Labels): Form[] {
  return [
    ...toolForm(sheet, labels),
    ...consumableForm(sheet, labels),
    ...sheet.kits.map((kit, index) => kitForm(kit, index, labels)),
    ...figureForm(sheet, labels),
    ...revisionForm(sheet, labels),
  ];
}

/** A table by what one row of it is, or none where it has no rows. */
function tableForm(name: string, title: string, columns: Parameters<typeof formTable>[1], rows: FormCell[][]): Form[] {
  if (rows.length === 0) return [];
  return [{ name: `${name}s`, title, page: 'flow', blocks: [formTable(`${name}-list`, columns, rows)] }];
}

function hazardForm({ hazards }: Sheet, labels: Labels): Form[] {
  const columns = [
    [labels.signalWord, 'short'],
    [labels.hazard, 'wide'],
    [labels.broughtBy, 'rest'],
  ] as const;
  const rows = hazards.map(({ signalWord, codes, text, from }) => [
    signalWord === undefined ? words() : strongWords(signalLabel(signalWord, labels)),
    words([...codes, text].filter((each) => each !== '').join(' ')),
    words(from.join(', ')),
  ]);
  return tableForm('hazard', labels.hazards, columns, rows);
}

function signalLabel(word: 'danger' | 'warning', labels: Labels): string {
  return word === 'danger' ? labels.labelDanger : labels.labelWarning;
}

function concessionForm({ concessions }: Sheet, labels: Labels): Form[] {
  const columns = [
    [labels.step, 'step'],
    [labels.rule, 'medium'],
    [labels.because, 'rest'],
    [labels.by, 'medium'],
    [labels.until, 'short'],
  ] as const;
  const rows = concessions.map(({ at, rule, because, by, until }: SheetConcession) => [
    at.kind === 'sheet' ? words(labels.wholeSheet) : stepsCell([at]),
    words(rule),
    words(because),
    words(by),
    words(until),
  ]);
  return tableForm('concession', labels.concessions, columns, rows);
}

function revisionForm({ revisions }: Sheet, labels: Labels): Form[] {
  const columns = [
    [labels.revision, 'short'],
    [labels.date, 'short'],
    [labels.change, 'rest'],
  ] as const;
  const rows = revisions.map(({ revision, date, what }) => [words(revision), words(date), words(what)]);
  return tableForm('revision', labels.revisions, columns, rows);
}

function toolForm({ tools }: Sheet, labels: Labels): Form[] {
  const columns = [
    [labels.atHand, 'tick'],
    [labels.tool, 'wide'],
    [labels.sizeOrRange, 'rest'],
    [labels.calibrationDue, 'short'],
    [labels.shopNumber, 'medium'],
  ] as const;
  return tableForm('tool', labels.tools, columns, toolRows(tools, labels));
}

const toolRows = rememberedRows(({ name, count, size, range, calibrationDue }: ToolLine): FormCell[] => [
  { kind: 'tick', name },
  words(count > 1 ? `${count} × ${name}` : name),
  words([size, range].filter((text) => text !== undefined).join(', ')),
  words(calibrationDue),
  toFill,
]);

function consumableForm({ consumables }: Sheet, labels: Labels): Form[] {
  const columns = [
    [labels.atHand, 'tick'],
    [labels.consumable, 'rest'],
    [labels.amount, 'short'],
    [labels.labelHazards, 'wide'],
    [labels.batch, 'short'],
    [labels.useBy, 'short'],
  ] as const;
  return tableForm('consumable', labels.consumables, columns, consumableRows(consumables, labels));
}

const consumableRows = rememberedRows((line: ConsumableLine, labels): FormCell[] => [
  { kind: 'tick', name: line.name },
  words(line.name),
  words(amountLabel(labels, line.amount), line.steps.length === 0 ? undefined : stepsLabel(labels, line.steps)),
  hazardCell(line, labels),
  toFill,
  line.expires === undefined ? toFill : words(line.expires),
]);

function hazardCell({ signalWord, hazards }: ConsumableLine, labels: Labels): FormCell {
  const texts = hazards.map(({ code, text }) => ({ text: `${code} ${text}`, strong: false }));
  const signal = signalWord === undefined ? [] : [{ text: signalLabel(signalWord, labels), strong: true }];
  return { kind: 'text', texts: [...signal, ...texts] };
}

function kitForm(kit: KitList, index: number, labels: Labels): Form {
  const title = fillLabel(labels.pickListOf, { number: kit.number, name: kit.name, revision: kit.revision });
  const columns = [
    [labels.picked, 'tick'],
    [labels.item, 'step'],
    [labels.partNumber, 'medium'],
    [labels.part, 'rest'],
    [labels.quantity, 'short'],
  ] as const;
  const rows = kit.lines.map((line): FormCell[] => [
    { kind: 'tick', name: `${line.item} ${line.part}` },
    words(line.item),
    strongWords(line.number),
    kitPart(line, labels),
    words(line.quantity),
  ]);
  return {
    name: `kit-${index + 1}`,
    title: `${labels.pickList}: ${title}`,
    page: 'flow',
    blocks: [formTable('kit-list', columns, rows)],
  };
}

function kitPart({ part, replaces, condition }: KitLine, labels: Labels): FormCell {
  const replaced = replaces === undefined ? [] : [fillLabel(labels.replaces, { number: replaces })];
  const texts = [part, ...replaced].map((text) => ({ text, strong: false }));
  return condition === undefined ? { kind: 'text', texts } : { kind: 'text', texts, condition };
}

/** So that nobody looks for a figure that the document has and this sheet has not. */
function figureForm({ figuresNotNeeded }: Sheet, labels: Labels): Form[] {
  if (figuresNotNeeded.length === 0) return [];
  const note: FormBlock = { kind: 'note', text: `${figuresNotNeeded.join('; ')}.` };
  return [{ name: 'figures-left-out', title: labels.figuresNotNeeded, page: 'flow', blocks: [note] }];
}
