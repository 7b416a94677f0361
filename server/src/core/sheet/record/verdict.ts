/** What is to be said of something that the bench was asked for. */
export type Verdict =
  /** A value that its limits accept. */
  | { readonly is: 'within' }
  /** Filled in; nothing says what it must be. */
  | { readonly is: 'noted' }
  /** Empty, and rightly so. */
  | { readonly is: 'notAsked' }
  /** An attempt that a later one has taken the place of. */
  | { readonly is: 'superseded' }
  | { readonly is: 'outside'; readonly why: string }
  | { readonly is: 'missing' }
  | { readonly is: 'unreadable'; readonly why: string }
  | { readonly is: 'contradiction'; readonly why: string }
  /** Accepted in one case and not in another, and nothing that was filled in says which case it is. */
  | { readonly is: 'open'; readonly why: string };

const sound: ReadonlySet<Verdict['is']> = new Set(['within', 'noted', 'notAsked', 'superseded']);

export function isSound(verdict: Verdict): boolean {
  return sound.has(verdict.is);
}
