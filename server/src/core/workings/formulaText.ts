import type { CalculationStep } from '../standards/calculation';

/** A symbol as it stands in a formula: `A_s`, `R_p0.2`, `µ_G`. */
export const SYMBOL = /\p{L}[\p{L}\p{Nd}_]*(?:\.\d+)?/gu;

/** The symbols in a formula; π is a number, and Σ an instruction. */
export function symbolsIn(formula: string): string[] {
  return (formula.match(SYMBOL) ?? []).filter((symbol) => symbol !== 'π' && symbol !== 'Σ');
}

/** Whether a value is where the calculation starts from: given, or looked up. */
export function isGiven({ formula }: CalculationStep): boolean {
  return formula === 'given' || isSource(formula);
}

/** A formula has signs of arithmetic and no words; anything else says where the value is looked up. */
function isSource(formula: string): boolean {
  return /\b(?:ISO|ASME|VDI|SAE|DIN|EN|ASTM)\b|\p{L}{5,}/u.test(formula);
}
