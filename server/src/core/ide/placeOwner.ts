import { documentValue } from '../analysis/documentUnit';
import { FamilyView } from '../analysis/familyView';
import { ProcedureView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import type { Entry } from '../model/values';
import type { Node, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { NodePath } from './nodePath';
import type { PlaceOwner } from './place';

export interface OwnedKey {
  readonly owner: PlaceOwner;
  readonly key: string;
}

/** Finds out what places of a document belong to; what is needed for it is made once and only when asked. */
export class PlaceOwners {
  #procedure: ProcedureView | undefined;

  constructor(
    readonly snapshot: Snapshot,
    readonly document: SyntaxDocument,
  ) {}

  of(path: NodePath): OwnedKey {
    const key = path.pairs.at(-1)?.key.text ?? '';
    switch (this.document.kind) {
      case 'family':
        return this.#inFamily(path) ?? other(key);
      case 'procedure':
        return this.#inProcedure(path) ?? other(key);
      case 'stores':
        return this.#inStores(path) ?? other(key);
      default:
        return other(key);
    }
  }

  #inFamily({ pairs }: NodePath): OwnedKey | undefined {
    const [group, entry, inner] = pairs;
    const family = FamilyView.of(this.document);
    if (family === undefined || group === undefined || entry === undefined) return undefined;
    const owner = ownerInFamily(family, group.key.text, entry.key);
    return owner && { owner, key: inner?.key.text ?? entry.key.text };
  }

  #inStores({ pairs }: NodePath): OwnedKey | undefined {
    const [group, entry, inner] = pairs;
    if (group?.key.text !== 'tools' || entry === undefined) return undefined;
    const tool = entryAt(documentValue(this.document, 'stores')?.tools, entry.key);
    if (tool === undefined) return undefined;
    return { owner: { is: 'tool', id: tool.id.id, tool: tool.value }, key: inner?.key.text ?? entry.key.text };
  }

  /** The innermost instruction counts: what stands in `if-not` belongs to the instructions there. */
  #inProcedure({ nodes, pairs }: NodePath): OwnedKey | undefined {
    this.#procedure ??= ProcedureView.of(this.snapshot, this.document);
    const procedure = this.#procedure;
    const step = procedure?.steps.find((one) => nodes.includes(one.step.node));
    if (procedure === undefined || step === undefined) return undefined;
    for (const node of nodes.toReversed()) {
      const view = step.instructions.find(({ instruction }) => instruction.node === node);
      if (view !== undefined) return { owner: { is: 'instruction', procedure, step, view }, key: keyIn(node, pairs) };
    }
    return undefined;
  }
}

function other(key: string): OwnedKey {
  return { owner: { is: 'other' }, key };
}

function keyIn(node: Node, pairs: NodePath['pairs']): string {
  const inside = node.kind === 'map' ? pairs.find((pair) => node.pairs.includes(pair)) : undefined;
  return inside?.key.text ?? 'say';
}

function ownerInFamily(family: FamilyView, group: string, key: ScalarNode): PlaceOwner | undefined {
  const { value } = family;
  const id = key.text;
  switch (group) {
    case 'parts': {
      const part = entryAt(value.parts, key)?.value;
      return part && { is: 'part', family, id, part };
    }
    case 'limits': {
      const limit = entryAt(value.limits, key)?.value;
      return limit && { is: 'limit', family, id, limit };
    }
    case 'dimensions': {
      const dimension = entryAt(value.dimensions, key)?.value;
      return dimension && { is: 'dimension', family, id, dimension };
    }
    case 'balance-groups': {
      const found = entryAt(value.balanceGroups, key)?.value;
      return found && { is: 'balance-group', family, id, group: found };
    }
    default:
      return undefined;
  }
}

/** Found by its place and not by its id, which may stand twice. */
function entryAt<Value>(entries: readonly Entry<Value>[] | undefined, key: ScalarNode): Entry<Value> | undefined {
  return entries?.find(({ id }) => id.node === key);
}
