import type { QuantityValue } from '../../model/values';

/** Whether a decimal comma between braces has cut the value short, so that what is left of it tells nothing more. */
export function isCutAtComma({ node }: QuantityValue): boolean {
  const { text } = node.item;
  return (
    node.style === 'plain' && /^,\d/.test(text.slice(node.to, node.to + 2)) && openedBefore(text, node.from) === '{'
  );
}

/** The bracket that is still open at an offset; in a list a comma parts two values. */
function openedBefore(text: string, offset: number): string | undefined {
  let depth = 0;
  for (let at = offset - 1; at >= 0; at--) {
    const char = text.charAt(at);
    if (char === '}' || char === ']') depth++;
    else if ((char === '{' || char === '[') && depth-- === 0) return char;
  }
  return undefined;
}
