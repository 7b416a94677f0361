/** Commands that speak against what follows, up to the end of their clause. */
const FORBIDS = /\b(?:do not|don['’]t|never|must not|may not|cannot|can['’]t|avoid|neither|nor)\b/gi;

/** What ends the reach of such a command, or turns it round: "do not lift it without the hoist" asks for the hoist. */
const TURNS = /[;:]|,\s*(?:use|using|but|then|take)\b|\b(?:but|except|unless|until|before|without|only|then)\b/i;

/** Words that speak against the noun right behind them. */
const RULES_OUT =
  /\b(?:without|instead of|rather than|not with|no)\s+(?:using\s+)?(?:(?:a|an|the|any|your|this|that)\s+)?(?:[\p{L}\p{N}-]+\s+)?$/iu;

/** What is said behind a name against its use. */
const FORBIDS_BEFORE_IT = /^\s*(?:must not|may not|must never|is not|are not|is forbidden|are forbidden|cannot)\b/i;

const KEEP = /\bkeep\b[^,;]*$/i;
const AWAY = /^[^,;.]{0,40}?\b(?:away|off|out|clear)\b/i;

/** Whether a sentence speaks of a thing only to say that it must not be used. The offsets are those of its name. */
export function isForbidden(text: string, from: number, to: number): boolean {
  const before = text.slice(sentenceStart(text, from), from);
  const behind = text.slice(to);
  if (FORBIDS_BEFORE_IT.test(behind)) return true;
  if (KEEP.test(before) && AWAY.test(behind)) return true;
  const last = [...before.matchAll(FORBIDS)].at(-1);
  const reach = last === undefined ? undefined : before.slice(last.index + last[0].length);
  if (reach === undefined) return RULES_OUT.test(before);
  return !TURNS.test(reach);
}

function sentenceStart(text: string, from: number): number {
  for (let at = from - 1; at > 0; at--) {
    if (/[.!?]/.test(text.charAt(at)) && /\s/.test(text.charAt(at + 1))) return at + 1;
  }
  return 0;
}

const LEADS_A_NOUN = /\b(?:a|an|the|with|by|using|use|your|this|that|and|or|of|in|on|to|from)\s+$/i;
const LEADS_AN_OBJECT = /^\s+(?:a|an|the|it|its|them|this|that|these|those|each|all|both|every|down|up)\b/i;

/** Whether a single word is a command rather than a thing: "Press the sleeve", not "with the press". */
export function isCommand(text: string, from: number, to: number): boolean {
  const before = text.slice(sentenceStart(text, from), from);
  const starts = before.trim() === '';
  return (starts || !LEADS_A_NOUN.test(before)) && (starts || LEADS_AN_OBJECT.test(text.slice(to)));
}
