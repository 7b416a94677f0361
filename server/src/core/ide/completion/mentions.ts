import { MENTION_KINDS } from '../../analysis/names';
import type { Span } from '../../text/span';
import type { Candidate } from './candidate';
import type { CursorContext } from './context';
import { thingCandidate } from './ids';
import type { CompletionScene } from './scene';

/** A mention that is being typed in a text for people: behind `<`, with its kind where one was typed. */
export interface OpenMention {
  readonly kind: string | undefined;
  /** The id as far as it stands there, with the kind. */
  readonly span: Span;
  readonly isClosed: boolean;
}

export function openMention({ text, token, offset }: CursorContext): OpenMention | undefined {
  const before = text.slice(token.start, offset);
  const found = /<((?:([a-z-]+)\/)?[a-z0-9-]*)$/.exec(before);
  if (found === null) return undefined;
  const behind = /^[a-z0-9/-]*(>?)/.exec(text.slice(offset, Math.max(offset, token.end)));
  const isClosed = behind?.[1] === '>';
  const rest = isClosed
    ? (behind?.[0].length ?? 1) - 1
    : /^[a-z0-9/-]*$/.test(text.slice(offset, token.end))
      ? token.end - offset
      : 0;
  return { kind: found[2], span: { start: offset - (found[1] ?? '').length, end: offset + rest }, isClosed };
}

/** Everything that a text can name. Where several kinds share an id, each is written with its kind. */
export function mentionCandidates({ names }: CompletionScene, { kind, isClosed }: OpenMention): Candidate[] {
  const kinds = MENTION_KINDS.filter((one) => kind === undefined || one === kind);
  const close = isClosed ? '' : '>';
  return kinds.flatMap((one) =>
    [...names.all(one).values()].map((thing) => {
      const needsKind = kind !== undefined || names.mentionable(thing.id).length > 1;
      const label = needsKind ? `${one}/${thing.id}` : thing.id;
      return { ...thingCandidate(thing), label, text: `${label}${close}` };
    }),
  );
}
