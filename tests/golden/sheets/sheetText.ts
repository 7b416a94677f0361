import type {
  Caution,
  Condition,
  FateLine,
  Instruction,
  LooseEnd,
  Prose,
  Sheet,
  SheetStep,
  SingleSetting,
  TorqueSetting,
  TorqueValue,
} from '../../../server/src/core/sheet/sheet';

/** The work of a sheet as plain lines, so that a change of wording is seen in a review. */
export function sheetText(sheet: Sheet): string {
  const phases = sheet.phases.flatMap((phase) => [
    `== ${phase.title}`,
    ...phase.steps.flatMap(stepLines),
    ...phase.looseEnds.map(looseLine),
  ]);
  const kits = sheet.kits.flatMap((kit) =>
    kit.lines.map((line) => [line.quantity, '×', line.number, line.part, line.condition?.text ?? ''].join(' ').trim()),
  );
  return [`${sheet.header.title}: ${sheet.header.build}`, ...kits, ...phases, ...endLines(sheet), ''].join('\n');
}

const when = (condition: Condition | undefined): string => (condition === undefined ? '' : ` [${condition.text}]`);
const places = (at: readonly { readonly step: number }[]): string => at.map(({ step }) => step).join(', ');

function looseLine({ what, condition, need, at }: LooseEnd): string {
  const wanted = need.kind === 'torque' ? torqueLines(need.setting).join(';').trim() : need.kind;
  return `loose: ${what}${when(condition)}: ${wanted} (step ${places(at)})`;
}

/** What comes in, and what becomes of everything. */
function endLines({ temporaries, fates }: Sheet): string[] {
  const counted = temporaries.map(
    (line) => `${line.count} × ${line.part}${when(line.condition)}: in ${places(line.in)}, out ${places(line.out)}`,
  );
  const groups = fates.flatMap(({ kind, lines }) => [`-- ${kind}`, ...lines.map(fateLine)]);
  return ['== Temporary parts', ...counted, '== Parts', ...groups];
}

function fateLine({ part, condition, to, at }: FateLine): string {
  return `  ${part}${to === undefined ? '' : ` > ${to}`}${when(condition)}${at.length === 0 ? '' : ` (step ${places(at)})`}`;
}

const words = (prose: Prose): string => prose.map((run) => run.text).join('');

function stepLines(step: SheetStep): string[] {
  const condition = step.condition === undefined ? '' : ` [${step.condition.text}]`;
  const sign = step.sign === undefined ? '' : ` (hold point: ${step.sign})`;
  return [
    `${step.number} ${step.title}${condition}${sign}`,
    ...step.cautions.flatMap(cautionLines),
    ...step.instructions.flatMap(instructionLines),
  ].map((line, place) => (place === 0 ? line : `  ${line}`));
}

function cautionLines({ word, texts }: Caution): string[] {
  return texts.map((text) => `${word.toUpperCase()}: ${words(text)}`);
}

function instructionLines(one: Instruction): string[] {
  const further = (one.ifNot?.instructions ?? []).flatMap(instructionLines);
  return [
    ...one.cautions.flatMap(cautionLines),
    `- ${one.condition === undefined ? '' : `[${one.condition.text}] `}${words(one.text)}`,
    ...(one.choices ?? []).map((choice) => `  [ ] ${choice}`),
    ...(one.torque === undefined ? [] : torqueLines(one.torque.setting)),
    ...(one.reading === undefined
      ? []
      : [`  ${one.reading.name}: ___ ${one.reading.unit}; ${one.reading.limits ?? 'record only'}`]),
    ...(one.ifNot === undefined ? [] : [`  If not: ${words(one.ifNot.text)}`, ...further.map((line) => `    ${line}`)]),
  ];
}

function torqueLines(setting: TorqueSetting): string[] {
  if (setting.kind !== 'byOutcome') return [`  torque: ${singleWords(setting)}`];
  return setting.branches.map((branch) => `  [ ] ${branch.condition}: ${singleWords(branch.setting)}`);
}

function singleWords(setting: SingleSetting): string {
  return setting.kind === 'blank' ? 'blank' : torqueWords(setting.value);
}

function torqueWords({ primary, secondary, angle, passes, turn }: TorqueValue): string {
  const before = passes.map((pass) => pass.primary);
  return [
    ...before,
    primary,
    secondary && `(${secondary})`,
    angle && `then ${angle}`,
    turn?.direction ?? 'hand not stated',
  ]
    .filter((word) => word !== undefined)
    .join(' ');
}
