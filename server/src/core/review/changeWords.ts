import type { Change, ChangeClass, ChangeSide } from './change';
import { wordsOf } from './meaning';

/** What a class is called at the head of its changes. */
export const CLASS_TITLES: Readonly<Record<ChangeClass, string>> = {
  hurt: 'Could hurt',
  fits: 'Fits differently',
  says: 'Says it differently',
  looks: 'Looks different',
};

const KIND_WORDS = {
  added: 'added',
  removed: 'removed',
  moved: 'moved',
  renamed: 'renamed',
  changed: 'changed',
} as const;

/** A longer text is cut; the place in the document has it whole. */
const LONGEST = 90;

/** A change in one line: `Torque of part compressor nut: 5.1 ± 0.3 N·m → 51 ± 3 N·m (ten times)`. */
export function headlineOf(change: Change): string {
  const { kind, key, note } = change;
  const values = key === undefined && (kind === 'added' || kind === 'removed') ? '' : valueWords(change);
  const doing = key !== undefined && kind === 'changed' ? '' : ` ${KIND_WORDS[kind]}`;
  const notes = [note].filter((one) => one !== undefined);
  const words = `${subjectWords(change)}${doing}${values}${notes.length === 0 ? '' : ` (${notes.join('; ')})`}`;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function subjectWords({ of, key }: Change): string {
  const thing = of.kind === 'instruction' ? of.name : `${of.kind} ${of.name}`;
  return key === undefined ? thing : `${key.replaceAll('-', ' ')} of ${thing}`;
}

function valueWords({ before, after, kind, key }: Change): string {
  if (kind === 'moved' || (kind === 'changed' && key === undefined)) return '';
  const words = (side: ChangeSide | undefined) => shortened(wordsOf(side?.text ?? ''));
  if (before === undefined) return `: ${words(after)}`;
  if (after === undefined) return `: ${words(before)}`;
  return `: ${words(before)} → ${words(after)}`;
}

export function shortened(text: string, longest = LONGEST): string {
  return text.length > longest ? `${text.slice(0, longest - 1)}…` : text;
}

/** Where it comes to: `OP-410 step fit-compressor-nut on v4-20, v4-28r and 3 more builds`. */
export function reachWords({ reached }: Change): string[] {
  return reached.map(({ document, steps, builds, more }) => {
    const named = steps.length === 0 ? '' : ` step${steps.length === 1 ? '' : 's'} ${listed(steps, 4)}`;
    return `${document}${named} on ${listed(
      builds.map((one) => `“${one}”`),
      3,
      more,
    )}`;
  });
}

function listed(all: readonly string[], most: number, more = 0): string {
  const rest = all.length - most + more;
  return rest <= 0 ? all.join(', ') : `${all.slice(0, most).join(', ')} and ${rest} more`;
}
