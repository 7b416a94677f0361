import { MENTION_KINDS, Names } from '../analysis/names';
import type { Snapshot } from '../analysis/snapshot';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import type { EditIn } from './combineFixes';
import { type IdTarget, idOfTarget, targetsOf } from './idTarget';
import { type IdUse, idUseAt, idUsesIn } from './idUses';
import { type Reference, referencesTo } from './references';
import { changedMeaning } from './renameProof';
import { aKind, collisionOf, illegalName, unreadablePlace } from './renameRefusal';

export interface Refused {
  readonly is: 'refused';
  /** A sentence for the writer, without a full stop. */
  readonly why: string;
}

/** Whether what stands at an offset can be renamed. */
export type RenameStart =
  | { readonly is: 'possible'; readonly span: Span; readonly name: string; readonly target: IdTarget }
  | Refused;

export type Renaming = { readonly is: 'edits'; readonly edits: readonly EditIn[] } | Refused;

export function prepareRename(snapshot: Snapshot, document: SyntaxDocument, offset: number): RenameStart {
  const use = idUseAt(document, offset);
  if (use === undefined) return refuse('Only an id can be renamed, as that of a part, a tool or a step');
  if (use.is === 'path') return refuse('A path follows its file; rename the file itself');
  const [target, second] = targetsOf(snapshot, document, use);
  if (target === undefined) return refuse(unknownId(use));
  if (second !== undefined) return refuse(severalMeant(use.id, [target, second]));
  if (target.is === 'value' && target.of.kind === 'part') {
    return refuse(`"${use.id}" is a word of the format; only the part before it has a name to change`);
  }
  return { is: 'possible', span: document.spanOf(use.range), name: use.id, target };
}

/**
 * The edits that give another name to what stands at an offset, in every document of a snapshot that reaches it. Only
 * ids are touched, so comments and blank lines stay. Refused where the name cannot be had, where what stands in a
 * broken place would be missed, and where any id would come to mean something else.
 */
export function renameAt(snapshot: Snapshot, document: SyntaxDocument, offset: number, name: string): Renaming {
  const start = prepareRename(snapshot, document, offset);
  if (start.is === 'refused') return start;
  const { target } = start;
  if (name === start.name) return { is: 'edits', edits: [] };
  const why = illegalName(target, name) ?? collisionOf(snapshot, target, name) ?? unreadablePlace(snapshot, target);
  if (why !== undefined) return refuse(why);
  const use = idUseAt(document, offset);
  // Whoever renames the second of two with one id wants to tell them apart; all that names it means the first.
  if (use !== undefined && isRepeated(target, use)) {
    return { is: 'edits', edits: [{ uri: document.uri, edit: { span: start.span, text: name } }] };
  }
  const references = referencesTo(snapshot, [target]).filter((one) => !isRepeated(target, one.use));
  const edits = [
    ...references.map((reference) => nameAnew(snapshot, reference, target, name)),
    ...otherMentions(snapshot, references, target, name),
  ];
  const changed = changedMeaning({ snapshot, target, name, edits });
  return changed === undefined ? { is: 'edits', edits } : refuse(changed);
}

function isRepeated(target: IdTarget, use: IdUse): boolean {
  return use.is === 'declared' && target.is === 'thing' && use.declared !== target.thing.declared;
}

function refuse(why: string): Refused {
  return { is: 'refused', why };
}

function unknownId(use: IdUse): string {
  if (use.is === 'named' && use.kinds[0] === 'rule') return 'The id of a rule is fixed';
  return `Nothing has the id "${use.id}" here, so there is nothing to rename`;
}

function severalMeant(id: string, targets: readonly IdTarget[]): string {
  const nouns = targets.flatMap((target) => (target.is === 'thing' ? [aKind(target.thing.kind)] : []));
  return `"${id}" is the id of ${nouns.join(' and of ')}; rename it where the one that you mean is declared`;
}

/** Where the new name is that of something else as well, a mention has to say which of the two it means. */
function nameAnew(snapshot: Snapshot, { document, use, span }: Reference, target: IdTarget, name: string): EditIn {
  const isBare = use.is === 'mentioned' && use.kind === undefined;
  const isShared = isBare && Names.of(snapshot, document).mentionable(name).length > 0;
  const text = isShared && target.is === 'thing' ? `${target.thing.kind}/${name}` : name;
  return { uri: document.uri, edit: { span, text } };
}

/** The mentions of something else with the new name: they have to say from now on what they mean. */
function otherMentions(snapshot: Snapshot, references: readonly Reference[], target: IdTarget, name: string): EditIn[] {
  if (target.is !== 'thing' || !MENTION_KINDS.includes(target.thing.kind)) return [];
  const { kind } = target.thing;
  const documents = new Set(references.map((one) => one.document));
  for (const uri of snapshot.uris) {
    const document = snapshot.document(uri);
    if (document !== undefined && idUsesIn(document).has(name)) documents.add(document);
  }
  return [...documents].flatMap((document) => {
    const seen = Names.of(snapshot, document).find(kind, idOfTarget(target) ?? '');
    if (seen?.declared !== target.thing.declared) return [];
    return (idUsesIn(document).get(name) ?? []).flatMap((use): EditIn[] => {
      const [meant] = use.is === 'mentioned' && use.kind === undefined ? targetsOf(snapshot, document, use) : [];
      if (meant?.is !== 'thing') return [];
      const { start } = document.spanOf(use.range);
      return [{ uri: document.uri, edit: { span: { start, end: start }, text: `${meant.thing.kind}/` } }];
    });
  });
}
