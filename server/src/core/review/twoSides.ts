import type { BuildSet, BuildSpace } from '../builds';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Change, ChangeClass, ChangeKind, ChangeSide, Subject } from './change';
import type { Renamed } from './meaning';

export interface Two<Value> {
  readonly before: Value;
  readonly after: Value;
}

/** The builds that values by build are told apart in, on either side; `same` where both sides have the same ones. */
export interface TwoSpaces extends Two<BuildSpace> {
  readonly same: boolean;
}

/** The builds in which something stands: for all that there are where it is undefined. */
export type TwoSets = Two<BuildSet | undefined>;

/** A change that is not yet worked out to the procedures that it reaches. */
export type FoundChange = Omit<Change, 'reached'> & { readonly where: BuildSet | undefined };

interface Told {
  readonly class: ChangeClass;
  readonly kind: ChangeKind;
  readonly of: Subject;
  readonly key?: string | undefined;
  readonly note?: string | undefined;
  readonly builds?: string;
  readonly where?: BuildSet | undefined;
}

/** One document in two versions, and everything that was found to differ in it. */
export class TwoDocuments {
  readonly found: FoundChange[] = [];

  constructor(
    readonly documents: Two<SyntaxDocument>,
    readonly spaces: TwoSpaces,
    readonly renamed: Renamed,
  ) {}

  tell(told: Told, before: ItemRange | undefined, after: ItemRange | undefined): void {
    this.found.push({
      class: told.class,
      kind: told.kind,
      of: told.of,
      key: told.key,
      note: told.note,
      builds: told.builds ?? '',
      where: told.where,
      before: before && sideOf(this.documents.before, before),
      after: after && sideOf(this.documents.after, after),
    });
  }
}

export function sideOf(document: SyntaxDocument, range: ItemRange): ChangeSide {
  const span = document.spanOf(range);
  return { uri: document.uri, span, text: document.text.slice(span.start, span.end).trimEnd() };
}
