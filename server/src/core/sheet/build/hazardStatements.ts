/** A hazard statement with the strongest signal word that its classes carry; some classes carry none. */
export interface HazardStatement {
  readonly text: string;
  readonly signalWord?: 'danger' | 'warning';
  /** Protection that the statement asks for, in words of our own. */
  readonly wear?: 'eyes' | 'skin' | 'breath';
}

const danger = (text: string, wear?: HazardStatement['wear']): HazardStatement =>
  wear === undefined ? { text, signalWord: 'danger' } : { text, signalWord: 'danger', wear };
const warning = (text: string, wear?: HazardStatement['wear']): HazardStatement =>
  wear === undefined ? { text, signalWord: 'warning' } : { text, signalWord: 'warning', wear };

/**
 * Codified hazard statements with their texts and signal words; only those that products of a workshop carry.
 *
 * The texts are from memory of the United Nations' Globally Harmonized System of Classification and Labelling of
 * Chemicals (GHS), Annex 3, section 1. Code, sense and, where it has one, signal word were compared with published
 * tables of the GHS and with safety data sheets for those marked `compared`; the others rest on memory alone.
 */
export const HAZARD_STATEMENTS: Readonly<Record<string, HazardStatement>> = {
  H220: danger('Extremely flammable gas'),
  H222: danger('Extremely flammable aerosol'), // compared
  H223: warning('Flammable aerosol'),
  H224: danger('Extremely flammable liquid and vapour'),
  H225: danger('Highly flammable liquid and vapour'), // compared
  H226: warning('Flammable liquid and vapour'), // compared
  H227: warning('Combustible liquid'),
  H228: danger('Flammable solid'),
  H229: danger('Pressurized container: may burst if heated'), // compared
  H280: warning('Contains gas under pressure; may explode if heated'),
  H290: warning('May be corrosive to metals'),
  H300: danger('Fatal if swallowed'),
  H301: danger('Toxic if swallowed'),
  H302: warning('Harmful if swallowed'),
  H304: danger('May be fatal if swallowed and enters airways'), // compared
  H310: danger('Fatal in contact with skin', 'skin'),
  H311: danger('Toxic in contact with skin', 'skin'),
  H312: warning('Harmful in contact with skin', 'skin'),
  H314: danger('Causes severe skin burns and eye damage', 'eyes'), // compared
  H315: warning('Causes skin irritation', 'skin'), // compared
  H317: warning('May cause an allergic skin reaction', 'skin'), // compared
  H318: danger('Causes serious eye damage', 'eyes'), // compared
  H319: warning('Causes serious eye irritation', 'eyes'), // compared
  H330: danger('Fatal if inhaled', 'breath'),
  H331: danger('Toxic if inhaled', 'breath'),
  H332: warning('Harmful if inhaled', 'breath'), // compared
  H334: danger('May cause allergy or asthma symptoms or breathing difficulties if inhaled', 'breath'),
  H335: warning('May cause respiratory irritation', 'breath'), // compared
  H336: warning('May cause drowsiness or dizziness', 'breath'), // compared
  H340: danger('May cause genetic defects'),
  H341: warning('Suspected of causing genetic defects'),
  H350: danger('May cause cancer'),
  H351: warning('Suspected of causing cancer'), // compared
  H360: danger('May damage fertility or the unborn child'),
  H361: warning('Suspected of damaging fertility or the unborn child'), // compared
  H370: danger('Causes damage to organs'),
  H371: warning('May cause damage to organs'),
  H372: danger('Causes damage to organs through prolonged or repeated exposure'),
  H373: warning('May cause damage to organs through prolonged or repeated exposure'), // compared
  H400: warning('Very toxic to aquatic life'),
  H410: warning('Very toxic to aquatic life with long lasting effects'),
  H411: { text: 'Toxic to aquatic life with long lasting effects' }, // compared
  H412: { text: 'Harmful to aquatic life with long lasting effects' }, // compared
  H413: { text: 'May cause long lasting harmful effects to aquatic life' },
};

/** The statement of a code, also with its suffix, such as `H361d`; undefined for a code that is not in the table. */
export function hazardStatement(code: string): HazardStatement | undefined {
  const trimmed = code.trim();
  return HAZARD_STATEMENTS[trimmed] ?? HAZARD_STATEMENTS[trimmed.slice(0, 4)];
}

/** The signal word of a label: danger takes the place of warning. */
export function signalWordOf(codes: readonly string[]): 'danger' | 'warning' | undefined {
  const words = codes.map((code) => hazardStatement(code)?.signalWord);
  if (words.includes('danger')) return 'danger';
  return words.includes('warning') ? 'warning' : undefined;
}
