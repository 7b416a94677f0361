import { documentValue } from '../../analysis/documentUnit';
import { FamilyView } from '../../analysis/familyView';
import { followPath } from '../../analysis/links';
import { RE_USED, RENEWED } from '../../builds/condition';
import type { PathRef } from '../../model/values';
import type { Candidate } from './candidate';
import { thingCandidate } from './ids';
import type { CompletionScene } from './scene';

/** The names that a condition can be put together from: variants, options, options as received, and outcomes. */
export function conditionCandidates(scene: CompletionScene): Candidate[] {
  const { names } = scene;
  const options = [...names.all('option').values()];
  return [
    ...[...names.all('variant').values()].map((one) => thingCandidate(one)),
    ...options.map((one) => thingCandidate(one)),
    ...outcomeCandidates(scene),
    ...options.map((one) => ({ ...thingCandidate(one), label: `arrives=${one.id}`, why: 'as received' })),
    ...renewalCandidates(scene),
  ];
}

/** The keys of a condition that is a map. */
export const CONDITION_KEYS: readonly (readonly [string, string])[] = [
  ['all', 'All of these must hold.'],
  ['any', 'At least one of these must hold.'],
  ['none', 'None of these may hold.'],
];

function outcomeCandidates(scene: CompletionScene): Candidate[] {
  return (familyOf(scene)?.value.identify ?? []).flatMap(({ id, value }) =>
    (value.values ?? []).map(
      ({ text }): Candidate => ({
        kind: 'condition',
        label: `${id.id}=${text}`,
        detail: value.name?.text,
        about: { is: 'thing', kind: 'outcome', id: id.id },
      }),
    ),
  );
}

/** Whether a part was re-used or renewed, where the family leaves that to the bench. */
function renewalCandidates(scene: CompletionScene): Candidate[] {
  const parts = [...(familyOf(scene)?.parts.values() ?? [])];
  return parts
    .filter(({ value }) => value.renew?.value === 'on-condition')
    .flatMap(({ id, value }) =>
      [RENEWED, RE_USED].map(
        (word): Candidate => ({
          kind: 'condition',
          label: `${id.id}=${word}`,
          detail: value.name?.text,
          about: { is: 'thing', kind: 'part', id: id.id },
        }),
      ),
    );
}

/** The family of a document, itself where it is one. */
export function familyOf({ snapshot, document }: CompletionScene): FamilyView | undefined {
  if (document.kind === 'family') return FamilyView.of(document);
  const path: PathRef | undefined =
    documentValue(document, 'procedure')?.family ?? documentValue(document, 'kit')?.family;
  const target = path === undefined ? undefined : followPath(snapshot, document.uri, path);
  return target?.is === 'document' ? FamilyView.of(target.document) : undefined;
}
