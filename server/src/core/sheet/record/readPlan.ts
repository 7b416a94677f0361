import { RECORD_FILE, type RecordPlan } from './recordPlan';

const KINDS = new Set(['tick', 'choice', 'value', 'text', 'signature']);
const NEEDS = new Set(['always', 'never', 'underTick']);

/** The plan in a file, or why it is none: whatever lies in a file may have been made by anybody. */
export function readPlan(text: string): RecordPlan | { readonly problem: string } {
  let plan: unknown;
  try {
    plan = JSON.parse(text);
  } catch {
    return { problem: `its ${RECORD_FILE} is no JSON` };
  }
  if (!isObject(plan)) return { problem: `its ${RECORD_FILE} holds no record` };
  if (plan.witnessmarkRecord !== 1)
    return { problem: `its ${RECORD_FILE} is of a form that this version does not know` };
  const head = ['document', 'title', 'revision', 'status', 'build', 'buildId', 'language'];
  const isWhole = head.every((key) => typeof plan[key] === 'string') && typeof plan.errors === 'number';
  const fields = plan.fields;
  if (!isWhole || !Array.isArray(fields) || !fields.every(isField)) return { problem: `its ${RECORD_FILE} is damaged` };
  return plan as unknown as RecordPlan;
}

type Plain = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isField(value: unknown): boolean {
  if (!isObject(value) || !['name', 'place', 'what', 'kind'].every((key) => typeof value[key] === 'string'))
    return false;
  return KINDS.has(String(value.kind)) && isNeed(value.need) && isWholeKind(value);
}

function isNeed(value: unknown): boolean {
  if (!isObject(value) || !NEEDS.has(String(value.kind))) return false;
  return value.kind !== 'underTick' || isTexts(value.ticks);
}

function isTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every((each) => typeof each === 'string');
}

function isWholeKind(field: Plain): boolean {
  if (field.kind === 'choice') return ['group', 'value', 'question'].every((key) => typeof field[key] === 'string');
  if (field.kind !== 'value') return true;
  return typeof field.unit === 'string' && Array.isArray(field.accepts) && field.accepts.every(isAcceptance);
}

function isAcceptance(value: unknown): boolean {
  if (!isObject(value) || !['dimension', 'unit', 'words'].every((key) => typeof value[key] === 'string')) return false;
  if (value.kind === 'stated') return typeof value.value === 'number';
  return (
    value.kind === 'between' &&
    [value.lowest, value.highest].every((end) => end === undefined || typeof end === 'number')
  );
}
