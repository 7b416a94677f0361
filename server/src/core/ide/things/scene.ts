import { FamilyView } from '../../analysis/familyView';
import { type KitView, kitViewOf } from '../../analysis/kitView';
import { ProcedureView } from '../../analysis/procedureView';
import type { Snapshot } from '../../analysis/snapshot';
import type { BuildSpace } from '../../builds';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { StepUses } from './stepUses';

/** From where a thing is looked at: its steps and torques are those of this procedure, its builds those of this document. */
export interface Scene {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly procedure: ProcedureView | undefined;
  /** What the steps of the procedure do; without a procedure nothing. */
  readonly uses: StepUses;
  readonly family: FamilyView | undefined;
  readonly kits: readonly KitView[];
  /** Undefined where no family can be read, so that nobody knows what a condition means. */
  readonly space: BuildSpace | undefined;
}

/** The scene of a document; the same object as long as neither the snapshot nor the document changes. */
export function sceneOf(snapshot: Snapshot, document: SyntaxDocument): Scene {
  const known = remembered.get(document);
  if (known?.snapshot === snapshot) return known;
  const scene = makeScene(snapshot, document);
  remembered.set(document, scene);
  return scene;
}

const remembered = new WeakMap<SyntaxDocument, Scene>();

function makeScene(snapshot: Snapshot, document: SyntaxDocument): Scene {
  const procedure = ProcedureView.of(snapshot, document);
  const kit = kitViewOf(snapshot, document);
  const family = procedure?.family ?? kit?.family ?? FamilyView.of(document);
  return {
    snapshot,
    document,
    procedure,
    uses: StepUses.of(procedure),
    family,
    kits: procedure?.kits ?? (kit === undefined ? [] : [kit]),
    space: family === undefined ? undefined : (procedure?.space ?? family.space),
  };
}
