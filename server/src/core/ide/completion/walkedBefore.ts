import { documentValue } from '../../analysis/documentUnit';
import { followPath } from '../../analysis/links';
import { ProcedureView } from '../../analysis/procedureView';
import type { Uri } from '../../analysis/uri';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { CompletionScene, InstructionScene } from './scene';

/** Readings of procedures that were looked at before, by their family: what was walked of them holds as long as it does. */
const known = new WeakMap<SyntaxDocument, Map<Uri, ProcedureView>>();

/**
 * A reading of the procedure that is the same up to the instruction at the cursor. How the unit stands there does not
 * depend on what comes behind, so that one who types behind the cursor waits for no walk but the first.
 */
export function walkedBefore(scene: CompletionScene, there: InstructionScene): ProcedureView | undefined {
  const { snapshot, document } = scene;
  const path = documentValue(document, 'procedure')?.family;
  const target = path === undefined ? undefined : followPath(snapshot, document.uri, path);
  if (target?.is !== 'document') return undefined;
  const views = known.get(target.document) ?? new Map<Uri, ProcedureView>();
  known.set(target.document, views);
  const before = views.get(document.uri);
  if (before !== undefined && holdsFor(before, scene, there)) return before;
  const view = ProcedureView.of(snapshot, document);
  if (view !== undefined) views.set(document.uri, view);
  return view;
}

function holdsFor(before: ProcedureView, { snapshot, document }: CompletionScene, there: InstructionScene): boolean {
  if (before.document === document && before.snapshot === snapshot) return true;
  const step = before.steps[there.stepIndex];
  const isSame = before.document.text.slice(0, there.at) === document.text.slice(0, there.at);
  if (step === undefined || !isSame || before.document.spanOf(step.step.node).start > there.at) return false;
  const stores = before.value.stores ?? [];
  return stores.every((path) => {
    const [was, is] = [before.snapshot, snapshot].map((one) => followPath(one, document.uri, path));
    return was?.is === 'document' && is?.is === 'document' && was.document === is.document;
  });
}
