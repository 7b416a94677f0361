import { inFamily } from '../../../server/src/core/rules/examples';

/** A family with dimensions and one limit. */
export function stacked(dimensions: readonly string[], limit: string) {
  return inFamily(`dimensions:\n${dimensions.map((one) => `  ${one}`).join('\n')}\nlimits:\n  clearance: ${limit}`);
}
