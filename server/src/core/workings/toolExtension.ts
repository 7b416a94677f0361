import { type BuildSet, type BuildSpace, describeBuilds } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { Prose, QuantityValue } from '../model/values';
import { boundsOf, findQuantities } from '../quantity';
import { type ExtensionSetting, settingWithExtension } from '../standards/torqueTools';
import type { NamedTool } from './toolNamed';
import { significant } from './toolSizeText';
import { isTorqueTool, type TorqueToReach } from './toolTorque';
import { newtonMetres } from './toolTorqueWorking';
import type { Working } from './working';

/** A torque wrench with a head that stands out from it, so that its lever is longer than what it was calibrated with. */
export interface OffsetHead {
  readonly wrench: NamedTool;
  readonly head: NamedTool;
  /** From the middle of the square to the middle of the fastener, mm. */
  readonly offset: number;
  /** From the middle of the square to the middle of the grip, mm; undefined where the stores do not state it. */
  readonly lever: number | undefined;
  /** The angle at which the head stands to the wrench, degrees; undefined where neither stores nor instruction state it. */
  readonly angle: number | undefined;
}

/** The offset heads among the tools of an instruction, each with each torque wrench. */
export function offsetHeads(instruction: Instruction, tools: readonly NamedTool[]): OffsetHead[] {
  const wrenches = tools.filter(({ tool }) => isTorqueTool(tool));
  const heads = tools.filter(({ tool }) => !isTorqueTool(tool) && (lengthOf(tool.offset) ?? 0) > 0);
  if (wrenches.length === 0 || heads.length === 0) return [];
  const said = saidAngle(instruction);
  return wrenches.flatMap((wrench) =>
    heads.map(
      (head): OffsetHead => ({
        wrench,
        head,
        offset: lengthOf(head.tool.offset) ?? 0,
        lever: lengthOf(wrench.tool.length),
        angle: said ?? angleOf(head.tool.setAt),
      }),
    ),
  );
}

/** What the wrench is set to so that the fastener gets its torque; undefined where lever or angle are not known. */
export function settingFor({ offset, lever, angle }: OffsetHead, torque: number): ExtensionSetting | undefined {
  return lever === undefined || angle === undefined ? undefined : settingWithExtension(torque, lever, offset, angle);
}

/** Whether the setting is the torque itself: the head stands square to the wrench. Five degrees off are 0.5 % of a common lever. */
export function needsNoCorrection({ angle }: OffsetHead): boolean {
  return angle !== undefined && Math.abs(Math.abs(angle) - 90) <= 5;
}

/** Whether the writer's own words give the setting, to the half per cent that a scale can be set to, or to its last digit. */
export function saysSetting(instruction: Instruction, setting: number): boolean {
  return wordsOf(instruction).some(({ text }) =>
    findQuantities(text).some(({ dimension, quantity }) => {
      if (dimension !== 'torque' || quantity.form !== 'single') return false;
      const digit = (quantity.number.resolution * quantity.unit.factor) / 2;
      return Math.abs(boundsOf(quantity).nominal - setting) <= Math.max(digit, 0.005 * setting);
    }),
  );
}

/** The calculation of the setting, with what the stores lack for it. */
export function extensionWorking(
  head: OffsetHead,
  torque: TorqueToReach,
  space: BuildSpace,
  within: BuildSet,
): Working {
  // Straight on is how a head is set where nobody says otherwise; it is shown as that.
  const angle = head.angle ?? 0;
  const setting = settingFor({ ...head, angle }, torque.bounds.nominal);
  const result = setting === undefined ? [] : [{ label: 'Set the wrench to', text: newtonMetres(setting.setting, 3) }];
  return {
    title: `Setting of the ${head.wrench.name} with the ${head.head.name}`,
    builds: torque.where.equals(within) ? '' : describeBuilds(torque.where, space),
    rows: [
      { label: 'Angle', text: head.angle === undefined ? '0° assumed; none is stated' : `${significant(angle)}°` },
      ...result,
    ],
    steps: setting?.steps ?? [],
    missing: [
      ...(head.lever === undefined ? [`the length of the ${head.wrench.name}`] : []),
      ...(head.angle === undefined ? [`the angle at which the ${head.head.name} is set`] : []),
    ],
    sources: ['FAA AC 43.13-1B, figure 7-2'],
  };
}

function lengthOf(value: QuantityValue | undefined): number | undefined {
  const quantity = value?.reading.quantity;
  return quantity?.form === 'single' && quantity.dimension === 'length' ? boundsOf(quantity).nominal : undefined;
}

function angleOf(value: QuantityValue | undefined): number | undefined {
  const quantity = value?.reading.quantity;
  return quantity?.form === 'single' && quantity.dimension === 'angle' ? boundsOf(quantity).nominal : undefined;
}

/** The angle that the writer's own words state; an angle that the fastener is turned on by is none of them. */
function saidAngle(instruction: Instruction): number | undefined {
  for (const { text } of wordsOf(instruction)) {
    if (/\bright angles?\b|\bsquare (?:on )?to the wrench\b/i.test(text)) return 90;
    const found = findQuantities(text).find((one) => one.dimension === 'angle' && one.quantity.form === 'single');
    if (found !== undefined) return boundsOf(found.quantity).nominal;
  }
  return undefined;
}

function wordsOf({ say, notice = [], caution = [], warning = [] }: Instruction): Prose[] {
  return [...(say === undefined ? [] : [say]), ...notice, ...caution, ...warning];
}
