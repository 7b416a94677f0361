import { documentValue } from '../../analysis/documentUnit';
import type { Limit, Reading } from '../../model/generated/types';
import { type ByBuild, type QuantityValue, valuesOf } from '../../model/values';
import type { Dimension } from '../../quantity';
import { familyOf } from './conditionNames';
import { type CompletionScene, instructionScene } from './scene';

/**
 * What the family states for just this place: the torque of the fastener that is tightened, what is accepted of the limit
 * that is measured. No value comes from anywhere else.
 */
export function statedValues(scene: CompletionScene): readonly QuantityValue[] {
  const { path } = scene.place;
  const [key] = path;
  const family = familyOf(scene);
  const instruction = scene.document.kind === 'procedure' ? instructionScene(scene)?.instruction : undefined;
  if (family === undefined || instruction === undefined || key === undefined) return [];
  if (instruction.verb === 'tighten' && (key === 'torque' || key === 'angle' || key === 'passes')) {
    const parts = (instruction.tighten ?? []).flatMap(({ id }) => family.part(id) ?? []);
    return parts.flatMap((part) => stated(key === 'angle' ? part.angle : part.torque));
  }
  if (key !== 'accept') return [];
  if (instruction.verb === 'measure') return acceptOf(scene, instruction.measure?.id);
  return instruction.verb === 'calculate' ? acceptOf(scene, instruction.calculate?.id) : [];
}

/** What a place for any quantity measures, as far as something tells; empty where nothing does. */
export function measuredThere(scene: CompletionScene): readonly Dimension[] {
  const { def, path } = scene.place;
  switch (def) {
    case 'stores/tool':
      return [...(path[0] === 'accuracy' ? ['ratio' as const] : []), ...toolDimensions(entryOf(scene, 'tools'))];
    case 'family/limit':
      return entryOf<Limit>(scene, 'limits')?.from === undefined ? [] : ['length'];
    case 'family/reading':
    case 'procedure/reading':
      return dimensionsOf(entryOf<Reading>(scene, 'readings'));
    default:
      return measuredByInstruction(scene);
  }
}

function measuredByInstruction(scene: CompletionScene): readonly Dimension[] {
  const instruction = scene.document.kind === 'procedure' ? instructionScene(scene)?.instruction : undefined;
  const id =
    instruction?.verb === 'measure'
      ? instruction.measure?.id
      : instruction?.verb === 'calculate'
        ? instruction.calculate?.id
        : undefined;
  const values = acceptOf(scene, id);
  const units = values.flatMap(({ reading }) => reading.quantity?.dimension ?? []);
  return units.length > 0 ? units : dimensionsOf(readingOf(scene, id));
}

function acceptOf(scene: CompletionScene, id: string | undefined): readonly QuantityValue[] {
  const limit = familyOf(scene)?.value.limits?.find((one) => one.id.id === id)?.value;
  return stated(limit?.accept ?? readingOf(scene, id)?.accept);
}

function readingOf(scene: CompletionScene, id: string | undefined): Reading | undefined {
  const own = documentValue(scene.document, 'procedure')?.readings ?? [];
  const all = [...own, ...(familyOf(scene)?.value.readings ?? [])];
  return all.find((one) => one.id.id === id)?.value;
}

function dimensionsOf(reading: Reading | undefined): readonly Dimension[] {
  const quantity = reading?.quantity?.value;
  return quantity === undefined ? [] : [quantity];
}

function stated(value: ByBuild<QuantityValue> | undefined): readonly QuantityValue[] {
  return valuesOf(value).filter(({ reading }) => reading.quantity !== undefined);
}

/** The entry of the document that the cursor stands in, by its id. */
function entryOf<Value>({ document, context }: CompletionScene, group: string): Value | undefined {
  const place = context.steps.findIndex((step) => step.is === 'key' && step.name === group);
  const step = context.steps[place + 1];
  if (place < 0 || step?.is !== 'key') return undefined;
  const value = documentValue(document, document.kind) as unknown as Record<string, unknown> | undefined;
  const entries = value?.[group] as readonly { id: { id: string }; value: Value }[] | undefined;
  return entries?.find(({ id }) => id.id === step.name)?.value;
}

/** What the tools of a kind measure or give. */
const BY_TOOL_KIND: Readonly<Record<string, Dimension>> = {
  'torque-wrench': 'torque',
  'torque-screwdriver': 'torque',
  'angle-gauge': 'angle',
  gauge: 'length',
  micrometer: 'length',
  calliper: 'length',
  'bore-gauge': 'length',
  feeler: 'length',
  indicator: 'length',
  scale: 'mass',
  'balance-machine': 'unbalance',
  press: 'force',
  oven: 'temperature',
  'hot-plate': 'temperature',
  thermometer: 'temperature',
  'pressure-source': 'pressure',
  'pressure-gauge': 'pressure',
  'vacuum-source': 'pressure',
};

function toolDimensions(tool: { kind?: { value: string | undefined } } | undefined): readonly Dimension[] {
  const dimension = BY_TOOL_KIND[tool?.kind?.value ?? ''];
  return dimension === undefined ? [] : [dimension];
}
