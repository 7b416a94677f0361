/**
 * Codified hazard statements; only those that products of a workshop carry.
 *
 * The texts are from memory of the United Nations' Globally Harmonized System of Classification and Labelling of
 * Chemicals (GHS), Annex 3, section 1. Code and sense were compared with published tables of the GHS and with safety
 * data sheets for those marked `compared`; the others rest on memory alone.
 */
export const english = {
  H220: 'Extremely flammable gas',
  H222: 'Extremely flammable aerosol', // compared
  H223: 'Flammable aerosol',
  H224: 'Extremely flammable liquid and vapour',
  H225: 'Highly flammable liquid and vapour', // compared
  H226: 'Flammable liquid and vapour', // compared
  H227: 'Combustible liquid',
  H228: 'Flammable solid',
  H229: 'Pressurized container: may burst if heated', // compared
  H280: 'Contains gas under pressure; may explode if heated',
  H290: 'May be corrosive to metals',
  H300: 'Fatal if swallowed',
  H301: 'Toxic if swallowed',
  H302: 'Harmful if swallowed',
  H304: 'May be fatal if swallowed and enters airways', // compared
  H310: 'Fatal in contact with skin',
  H311: 'Toxic in contact with skin',
  H312: 'Harmful in contact with skin',
  H314: 'Causes severe skin burns and eye damage', // compared
  H315: 'Causes skin irritation', // compared
  H317: 'May cause an allergic skin reaction', // compared
  H318: 'Causes serious eye damage', // compared
  H319: 'Causes serious eye irritation', // compared
  H330: 'Fatal if inhaled',
  H331: 'Toxic if inhaled',
  H332: 'Harmful if inhaled', // compared
  H334: 'May cause allergy or asthma symptoms or breathing difficulties if inhaled',
  H335: 'May cause respiratory irritation', // compared
  H336: 'May cause drowsiness or dizziness', // compared
  H340: 'May cause genetic defects',
  H341: 'Suspected of causing genetic defects',
  H350: 'May cause cancer',
  H351: 'Suspected of causing cancer', // compared
  H360: 'May damage fertility or the unborn child',
  H361: 'Suspected of damaging fertility or the unborn child', // compared
  H370: 'Causes damage to organs',
  H371: 'May cause damage to organs',
  H372: 'Causes damage to organs through prolonged or repeated exposure',
  H373: 'May cause damage to organs through prolonged or repeated exposure', // compared
  H400: 'Very toxic to aquatic life',
  H410: 'Very toxic to aquatic life with long lasting effects',
  H411: 'Toxic to aquatic life with long lasting effects', // compared
  H412: 'Harmful to aquatic life with long lasting effects', // compared
  H413: 'May cause long lasting harmful effects to aquatic life',
};
