import type { RevisionLine, SheetHeader } from '../sheet';
import type { BuildContext } from './buildContext';

export function headerOf({ procedure, names, picked }: BuildContext): SheetHeader {
  const { value, family } = procedure;
  const revision = value.revision?.text ?? '';
  const date = (value.revisions ?? []).find((one) => one.revision?.text === revision)?.date?.day;
  const people = { preparedBy: value.preparedBy, checkedBy: value.checkedBy, approvedBy: value.approvedBy };
  const named = Object.entries(people).flatMap(([key, person]) => (person === undefined ? [] : [[key, person.text]]));
  return {
    document: value.procedure?.text ?? '',
    title: names.written(value.title) ?? '',
    revision,
    ...(date === undefined ? {} : { revisionDate: date }),
    // Whoever left the status out has not released it.
    status: value.status?.value ?? 'draft',
    family: names.written(family?.value.name) ?? family?.value.family?.id ?? '',
    build: picked.build.label,
    buildId: picked.build.id,
    kits: kitNames(procedure),
    ...Object.fromEntries(named),
  };
}

function kitNames(procedure: BuildContext['procedure']): string[] {
  return procedure.kits.map(({ value }) =>
    [value.kit?.text, value.revision && `revision ${value.revision.text}`].filter((one) => one !== undefined).join(' '),
  );
}

export function revisionLines({ procedure, names }: BuildContext): RevisionLine[] {
  return (procedure.value.revisions ?? []).map((one) => ({
    revision: one.revision?.text ?? '',
    date: one.date?.day ?? '',
    what: names.written(one.what) ?? '',
  }));
}
