import type { Build } from '../../builds';
import type { RevisionLine, SheetHeader } from '../sheet';
import type { BuildContext } from './buildContext';

export function headerOf(context: BuildContext): SheetHeader {
  const { procedure, names, picked } = context;
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
    build: buildWords(picked.build, context),
    buildId: picked.build.id,
    kits: kitNames(context),
    ...Object.fromEntries(named),
  };
}

function buildWords({ variant, finished, arrives }: Build, { names, writing }: BuildContext): string {
  const options = (ids: readonly string[]) => ids.map((id) => names.option(id));
  return writing.phrases.build({
    variant: variant === '' ? undefined : names.variant(variant),
    finished: options(finished),
    ...(arrives === undefined ? {} : { arrives: options(arrives) }),
  });
}

function kitNames({ procedure, writing }: BuildContext): string[] {
  return procedure.kits.map(({ value }) =>
    value.revision === undefined
      ? (value.kit?.text ?? '')
      : writing.phrases.kit(value.kit?.text ?? '', value.revision.text).trim(),
  );
}

export function revisionLines({ procedure, names }: BuildContext): RevisionLine[] {
  return (procedure.value.revisions ?? []).map((one) => ({
    revision: one.revision?.text ?? '',
    date: one.date?.day ?? '',
    what: names.written(one.what) ?? '',
  }));
}
