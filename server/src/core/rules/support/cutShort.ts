import type { QuantityValue } from '../../model/values';

/** Whether a decimal comma or a # has cut the value short, so that what is left of it tells nothing more. */
export function isCutShort(value: QuantityValue): boolean {
  return isCutAtHash(value) || isCutAtComma(value);
}

/** Between braces a comma parts two keys; in a list it parts two values, which is meant unless digits stand against it. */
function isCutAtComma({ node }: QuantityValue): boolean {
  const { text } = node.item;
  return (
    node.style === 'plain' && /^,\d/.test(text.slice(node.to, node.to + 2)) && openedBefore(text, node.from) === '{'
  );
}

function isCutAtHash({ node }: QuantityValue): boolean {
  const { item, to } = node;
  return item.problems.some(
    ({ kind, range }) => kind === 'text-lost' && range.from > to && /^[ \t]+$/.test(item.text.slice(to, range.from)),
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
