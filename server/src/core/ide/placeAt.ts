import { documentUnit } from '../analysis/documentUnit';
import type { Snapshot } from '../analysis/snapshot';
import type { Facts } from '../model/facts';
import { unitOf } from '../model/readUnit';
import type { Prose } from '../model/values';
import { findQuantities } from '../quantity';
import type { ItemRange, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { sourceRange } from '../syntax/scalarSource';
import type { Span } from '../text/span';
import { type NodePath, scalarsOf } from './nodePath';
import type { Place, PlaceValue } from './place';
import { PlaceOwners } from './placeOwner';

/** What stands at an offset of a document; undefined between the words, and in a document that cannot be read. */
export function placeAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): Place | undefined {
  return placesWithin(snapshot, document, { start: offset, end: offset })[0];
}

/** Everything that stands in a span or touches it, in the order of the text; a key and the plain value behind it are one. */
export function placesWithin(snapshot: Snapshot, document: SyntaxDocument, span: Span): Place[] {
  if (documentUnit(document) === undefined) return [];
  const owners = new PlaceOwners(snapshot, document);
  const touches = (one: Span) => one.start <= span.end && span.start <= one.end;
  const found = [...scalarsOf(document, span)]
    .filter((path) => touches(document.spanOf(path.scalar)))
    .flatMap((path) => placesOf(document, owners, path).filter((place) => touches(place.span)));
  // A plain value has been told with its key.
  return found.filter((place, i) => !found.slice(0, i).some((before) => isSame(before, place)));
}

function isSame(before: Place, place: Place): boolean {
  return before.span.start <= place.span.start && place.span.end <= before.span.end;
}

function placesOf(document: SyntaxDocument, owners: PlaceOwners, path: NodePath): Place[] {
  const { owner, key } = owners.of(path);
  const scalar = valueScalar(path);
  const place = (range: ItemRange, value: PlaceValue): Place => ({
    document,
    span: document.spanOf(range),
    key,
    owner,
    value,
  });
  const facts = path.nodes.flatMap((node) => unitOf(node)?.facts ?? []);
  const prose = proseAt(facts, scalar);
  if (prose !== undefined) {
    return findQuantities(scalar.text).map(({ quantity, span }) =>
      place(sourceRange(scalar, span.start, span.end), { is: 'in-prose', quantity }),
    );
  }
  const value = valueAt(facts, scalar);
  const range = value.is === 'ref' ? value.ref.range : scalar;
  return [place(scalar === path.scalar ? range : { ...range, from: path.scalar.from }, value)];
}

/** The value behind a key where it is a scalar: `torque:` is asked about as its value is. */
function valueScalar({ scalar, isKey, pairs }: NodePath): ScalarNode {
  const value = pairs.at(-1)?.value;
  return isKey && value?.kind === 'scalar' && value.item === scalar.item ? value : scalar;
}

function proseAt(facts: readonly Facts[], scalar: ScalarNode): Prose | undefined {
  const all = facts.flatMap((one) => one.prose);
  return all.find(({ prose }) => prose.scalar === scalar || Object.values(prose.translations).includes(scalar))?.prose;
}

function valueAt(facts: readonly Facts[], scalar: ScalarNode): PlaceValue {
  for (const { quantities, refs } of facts) {
    const quantity = quantities.find(({ value }) => value.node === scalar);
    if (quantity !== undefined) return { is: 'quantity', value: quantity.value };
    const ref = refs.find((one) => one.ref.node === scalar);
    if (ref !== undefined) return { is: 'ref', ref: ref.ref };
  }
  return { is: 'whole' };
}
