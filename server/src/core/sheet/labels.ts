import type { Hand, SheetLanguage, SignalWord, TurnDirection } from './sheet';

/**
 * Every fixed word that a printed sheet carries, in one table by language. A language is complete or it does not
 * compile. `{name}` in a label is filled in by `fillLabel`.
 */
const english = {
  documentKind: 'Step sheet',
  document: 'Document',
  revision: 'Revision',
  revisionDate: 'Date',
  status: 'Status',
  statusDraft: 'Draft',
  statusReleased: 'Released',
  statusWithdrawn: 'Withdrawn',
  family: 'Family',
  build: 'Build',
  kit: 'Kit',
  preparedBy: 'Prepared by',
  checkedBy: 'Checked by',
  approvedBy: 'Approved by',
  notReleasedOne: 'NOT RELEASED: 1 error',
  notReleasedMany: 'NOT RELEASED: {count} errors',
  draft: 'DRAFT: not released',
  draftWithErrors: 'DRAFT, {band}',
  withdrawn: 'WITHDRAWN: do not use',
  withdrawnWithErrorsOne: 'WITHDRAWN: do not use (1 error)',
  withdrawnWithErrorsMany: 'WITHDRAWN: do not use ({count} errors)',
  safety: 'Safety first',
  safetyNote:
    'Local regulations, the maker’s data and the judgement of a licensed or authorised person come first. If this sheet disagrees with any of them, stop and ask.',
  wear: 'Wear what the hazards need:',
  wearUnknown: 'Wear the protection that the hazards of each step need.',
  asReceived: 'As received',
  beforeYouStart: 'Before you start',
  hazards: 'Hazards',
  hazard: 'Hazard',
  broughtBy: 'Brought by',
  tools: 'Tools',
  tool: 'Tool',
  sizeOrRange: 'Size or range',
  calibrationDue: 'Calibration due',
  atHand: 'At hand',
  consumables: 'Consumables',
  consumable: 'Consumable',
  amount: 'Amount and steps',
  amountDiffers: 'as each step says',
  usedAtOne: 'step {steps}',
  usedAtMany: 'steps {steps}',
  labelHazards: 'Hazards on the label',
  pickList: 'Kit pick list',
  pickListOf: '{number}, {name}, revision {revision}',
  item: 'Item',
  partNumber: 'Number',
  part: 'Part',
  quantity: 'Quantity',
  picked: 'Picked',
  replaces: 'replaces {number}',
  phase: 'Phase {number}',
  step: 'Step',
  done: 'Done',
  tickIfApplies: 'Tick if this applies',
  optional: 'Optional',
  people: '{count} people',
  holdPoint: 'HOLD POINT',
  holdPointText: 'Stop. Do not go on until signed by: {who}',
  name: 'Name',
  signature: 'Signature',
  date: 'Date',
  note: 'Note',
  torque: 'Torque',
  torqueBlank: 'Torque not stated: ask before you tighten',
  thenTurn: 'then turn',
  pass: 'Pass {number}',
  finalPass: 'Final',
  turn: 'Turn {direction} ({hand})',
  clockwise: 'clockwise',
  counterClockwise: 'counter-clockwise',
  leftHand: 'left-hand thread',
  rightHand: 'right-hand thread',
  handUnknown: 'Direction not stated: find the hand of the thread first',
  limits: 'Limits',
  recordOnly: 'Record only',
  reading: 'Reading',
  accept: 'Accept: {text}',
  ifNot: 'If not:',
  figure: 'Figure',
  looseEnds: 'Finger-tight or loose after phase {number}',
  looseEndsNote: 'If the work stops here, hand this list over with the unit.',
  stillNeeds: 'Still needs',
  toBeSeated: 'To be seated',
  comesOffAgain: 'Nothing: it comes off again',
  noLaterStep: 'none: ask',
  temporaries: 'Temporary parts: count them out',
  wentIn: 'Went in',
  cameOut: 'Came out: tick each piece',
  cameOutOf: 'of {count}',
  fates: 'What becomes of the parts',
  fate: 'Fate',
  fateTo: '{part}, to {to}',
  fateUsed: 'Used again',
  fateBench: 'Decided on the bench',
  fateBenchUsed: 'used again',
  fateBenchRenewed: 'renewed',
  fateRenewed: 'Renewed',
  fateNew: 'New to the unit',
  fateReturned: 'Given back',
  fateSent: 'Sent out, not back yet',
  fateDiscarded: 'Thrown away',
  fateOff: 'Off the unit at the end',
  torqueTable: 'Torque table',
  fastener: 'Fastener',
  direction: 'Direction',
  computedBand: 'Computed band',
  computedBandNote:
    'The maker’s value comes first; a computed band is not one. Computed for this build with the torque and preload formula of bolted joints (VDI 2230), from the strength of the class and the friction that the family states, else 0.10 to 0.14.',
  toolsUsed: 'Tools',
  actual: 'Actual',
  recordTable: 'Record of measurements',
  measurement: 'Measurement',
  findings: 'Findings',
  severityError: 'Error',
  severityWarning: 'Warning',
  severityInformation: 'Information',
  concessions: 'Concessions in force',
  wholeSheet: 'all',
  rule: 'Rule',
  because: 'Because',
  by: 'By',
  until: 'Until',
  atInstallation: 'At installation',
  revisions: 'Revision history',
  change: 'Change',
  end: 'End of sheet',
  page: 'Page {page} of {pages}',
  footer: '{document} · revision {revision} · {build}',
  signalDanger: 'DANGER',
  signalWarning: 'WARNING',
  signalCaution: 'CAUTION',
  signalNotice: 'NOTICE',
};

export type Labels = { readonly [Key in keyof typeof english]: string };

const byLanguage: { readonly [Language in SheetLanguage]: Labels } = { en: english };

export function labelsFor(language: SheetLanguage): Labels {
  return byLanguage[language];
}

/** Puts values in the places of a label; a place without a value stays visible. */
export function fillLabel(label: string, values: Readonly<Record<string, string | number>>): string {
  return label.replace(/\{([a-z]+)\}/gu, (place, name: string) => String(values[name] ?? place));
}

export function signalWordLabel(labels: Labels, word: SignalWord): string {
  const words: Record<SignalWord, string> = {
    danger: labels.signalDanger,
    warning: labels.signalWarning,
    caution: labels.signalCaution,
    notice: labels.signalNotice,
  };
  return words[word];
}

/** `Turn counter-clockwise (left-hand thread)`: both are always said, because either alone is misread. */
export function turnLabel(labels: Labels, direction: TurnDirection, hand: Hand): string {
  return fillLabel(labels.turn, {
    direction: direction === 'clockwise' ? labels.clockwise : labels.counterClockwise,
    hand: hand === 'left' ? labels.leftHand : labels.rightHand,
  });
}
