import { plain } from '../sentences/grammar';
import type { Condition, FateGroup, Sheet, TemporaryLine } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { always } from './formField';
import type { AskedInSteps } from './stepFields';

/** The tables behind the steps. What a step asks for already is the same field once more. */
export function nameBack(sheet: Sheet, asked: AskedInSteps, asking: Asking): Partial<Sheet> {
  return {
    temporaries: sheet.temporaries.map((line, index) => nameTemporary(line, index, asking)),
    fates: sheet.fates.map((group) => nameFates(group, asking)),
    torqueTable: sheet.torqueTable.map((row, index) => {
      const fields = asked.torques[index];
      return { ...row, ...appliesAgain(row.condition, fields?.applies), fields: fields?.actual ?? [] };
    }),
    recordTable: sheet.recordTable.map((row, index) => {
      const fields = asked.readings[index];
      return { ...row, ...appliesAgain(row.condition, fields?.applies), fields: fields?.blanks ?? [] };
    }),
    ...nameInstallation(sheet, asking),
  };
}

function appliesAgain(condition: Condition | undefined, field: string | undefined): { condition?: Condition } {
  if (condition === undefined) return {};
  return { condition: field === undefined ? condition : withNames(condition, { field }) };
}

/** A box for each piece that came out. */
function nameTemporary(line: TemporaryLine, index: number, asking: Asking): TemporaryLine {
  const { labels } = asking;
  const path = ['temporary', index + 1];
  const { at, entry } = asking.condition({ path, words: labels.temporaries, need: always }, line.condition);
  const fields = Array.from({ length: line.count }, (_, piece) =>
    asking.field(at, ['out', piece + 1], { kind: 'tick', what: `${line.part}: ${piece + 1}` }),
  );
  return withNames({ ...line, ...entry }, { fields });
}

function nameFates(group: FateGroup, asking: Asking): FateGroup {
  const { labels } = asking;
  const lines = group.lines.map((line, index) => {
    const place: FieldPlace = { path: ['fate', group.kind, index + 1], words: labels.fates, need: always };
    const { at, entry } = asking.condition(place, line.condition);
    const named = { ...line, ...entry };
    if (group.kind !== 'bench') return named;
    const values = [labels.fateBenchUsed, labels.fateBenchRenewed];
    return withNames(named, { fields: asking.choice(at, 'decided', values, line.part) });
  });
  return { ...group, lines };
}

function nameInstallation(sheet: Sheet, asking: Asking): object {
  const at: FieldPlace = { path: ['installation'], words: asking.labels.atInstallation, need: always };
  return { installationFields: sheet.atInstallation.map((text, index) => asking.tick(at, index + 1, plain(text))) };
}
