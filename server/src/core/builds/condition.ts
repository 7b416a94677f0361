/** A condition on builds and outcomes, free of the notation it was written in. */
export type ConditionExpr =
  | { kind: 'always' }
  /** A variant, or an option of the unit that is looked at: the finished one unless the asker says otherwise. */
  | { kind: 'is'; id: string }
  /** An option of the unit as received. */
  | { kind: 'arrives'; id: string }
  /** What the bench found: `nut-hand=left`, `compressor-wheel=renewed`. */
  | { kind: 'outcome'; name: string; value: string }
  /** `any` of nothing never holds; `all` and `none` of nothing always hold. */
  | { kind: 'any' | 'all' | 'none'; of: ConditionExpr[] };

/** A condition that names something. */
export type ConditionAtom = Extract<ConditionExpr, { kind: 'is' | 'arrives' | 'outcome' }>;

/** The values of a part that is renewed on condition. */
export const RE_USED = 're-used';
export const RENEWED = 'renewed';

/** Words that structure a condition, so that no id may be one of them. */
export const RESERVED_WORDS: readonly string[] = ['otherwise', 'all', 'any', 'none'];

const ID = /^[a-z][a-z0-9-]{2,}$/;
const NAME_AND_VALUE = /^([a-z][a-z0-9-]{2,})=([^\s=,]+(?: [^\s=,]+)*)$/;

/**
 * Reads one name of a condition: `v4-20`, `arrives=wheel-44` or `nut-hand=left`. Whether the name exists is not asked
 * here. Undefined where the text has none of these shapes, as for a reserved word.
 */
export function parseConditionText(text: string): ConditionAtom | undefined {
  const trimmed = text.trim();
  if (isId(trimmed)) return { kind: 'is', id: trimmed };
  const [, name, value] = NAME_AND_VALUE.exec(trimmed) ?? [];
  if (name === undefined || value === undefined || RESERVED_WORDS.includes(name)) return undefined;
  if (name !== 'arrives') return { kind: 'outcome', name, value };
  return isId(value) ? { kind: 'arrives', id: value } : undefined;
}

function isId(text: string): boolean {
  return ID.test(text) && !RESERVED_WORDS.includes(text);
}

/** The name as it is written in a document. */
export function conditionAtomText(atom: ConditionAtom): string {
  if (atom.kind === 'is') return atom.id;
  return atom.kind === 'arrives' ? `arrives=${atom.id}` : `${atom.name}=${atom.value}`;
}

/** Every name that a condition looks at, in the order written, repeats included. */
export function* conditionAtoms(expr: ConditionExpr): Generator<ConditionAtom> {
  if (expr.kind === 'is' || expr.kind === 'arrives' || expr.kind === 'outcome') yield expr;
  else if (expr.kind !== 'always') for (const part of expr.of) yield* conditionAtoms(part);
}
