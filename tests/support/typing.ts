const PIECES = [
  'x',
  ' ',
  '\n',
  '"',
  "'",
  ':',
  ' # ',
  '- ',
  '[',
  '}',
  '&a',
  '\t',
  '🔧',
  '5 N·m',
  '<cover>',
  '\n  ',
  'when: ',
];

/** One change of a text as somebody makes it who writes, deletes, copies and moves; some of them tear the text. */
export function randomEdit(text: string, random: () => number): string {
  const kind = random();
  if (kind < 0.5) return typed(text, random);
  if (kind < 0.6) return deleted(text, random);
  return kind < 0.8 ? linesMoved(text, random) : stepsMoved(text, random);
}

function typed(text: string, random: () => number): string {
  const at = Math.floor(random() * text.length);
  const letter = String.fromCharCode(97 + Math.floor(random() * 26));
  const piece = random() < 0.5 ? letter : (PIECES[Math.floor(random() * PIECES.length)] ?? '');
  return text.slice(0, at) + piece + text.slice(at);
}

function deleted(text: string, random: () => number): string {
  const at = Math.floor(random() * text.length);
  return text.slice(0, at) + text.slice(at + 1 + Math.floor(random() * 12));
}

/** Some lines are taken out, put somewhere else, or there as well. */
function linesMoved(text: string, random: () => number): string {
  const lines = text.split('\n');
  const from = Math.floor(random() * lines.length);
  const taken = lines.slice(from, from + 1 + Math.floor(random() * 6));
  if (random() < 0.7) lines.splice(from, taken.length);
  if (random() < 0.7) lines.splice(Math.floor(random() * lines.length), 0, ...taken);
  return lines.join('\n');
}

function stepsMoved(text: string, random: () => number): string {
  const chunks = text.split(/(?=^ *- step: )/m);
  if (chunks.length < 3) return typed(text, random);
  const from = 1 + Math.floor(random() * (chunks.length - 1));
  const [step = ''] = random() < 0.7 ? chunks.splice(from, 1) : [chunks[from]];
  if (random() < 0.7) chunks.splice(1 + Math.floor(random() * (chunks.length - 1)), 0, step);
  return chunks.join('');
}
