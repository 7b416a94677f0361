import { fillLabel } from '../labels';
import type { Condition, LooseEnd, Sheet, TemporaryLine } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { always, never } from './formField';
import type { AskedInSteps } from './stepFields';

/** The templates print so many boxes, and one blank for more. */
const MOST_BOXES = 12;

/** What is put on before the work. */
export function nameWear({ safety }: Sheet, asking: Asking): Sheet['safety'] {
  const at: FieldPlace = { path: ['wear'], words: asking.labels.safety, need: always };
  return withNames(safety, { fields: safety.wear.map((item, index) => asking.tick(at, index + 1, item)) });
}

/** The tables behind the steps. What a step asks for already is the same field once more. */
export function nameTables(sheet: Sheet, asked: AskedInSteps, asking: Asking): Partial<Sheet> {
  return {
    temporaries: sheet.temporaries.map((line, index) => nameTemporary(line, index, asking)),
    fates: sheet.fates.map((group) => ({
      ...group,
      lines: group.lines.map((line, index) => {
        const at: FieldPlace = { path: ['fate', group.kind, index + 1], words: asking.labels.fates, need: never };
        return { ...line, ...asking.condition(at, line.condition).entry };
      }),
    })),
    torqueTable: sheet.torqueTable.map((row, index) => {
      const { applies, actual = [], at } = asked.torques[index] ?? {};
      const what = `${row.fastener}: ${asking.labels.toolNumber}`;
      const toolField = at === undefined ? undefined : asking.text({ ...at, need: never }, 'tool', what);
      return withNames({ ...row, ...appliesAgain(row.condition, applies) }, { fields: actual, toolField });
    }),
  };
}

function appliesAgain(condition: Condition | undefined, field: string | undefined): { condition?: Condition } {
  if (condition === undefined) return {};
  return { condition: field === undefined ? condition : withNames(condition, { field }) };
}

/** A box for each piece that came out, or one blank where there are too many to count by boxes. */
function nameTemporary(line: TemporaryLine, index: number, asking: Asking): TemporaryLine {
  const place: FieldPlace = { path: ['temporary', index + 1], words: asking.labels.temporaries, need: always };
  const { at, entry } = asking.condition(place, line.condition);
  const named = { ...line, ...entry };
  if (line.count > MOST_BOXES) {
    const what = `${line.part}: ${asking.labels.cameOut} ${fillLabel(asking.labels.cameOutOf, { count: line.count })}`;
    return withNames(named, { fields: [asking.text(at, 'out', what)] });
  }
  const fields = Array.from({ length: line.count }, (_, piece) =>
    asking.field(at, ['out', piece + 1], { kind: 'tick', what: `${line.part}: ${piece + 1}` }),
  );
  return withNames(named, { fields });
}

export function nameLooseEnds(ends: readonly LooseEnd[], phase: FieldPlace, asking: Asking): LooseEnd[] {
  return ends.map((end, index) => {
    const at = { ...phase, path: [...phase.path, 'loose', index + 1], need: never };
    return { ...end, ...asking.condition(at, end.condition).entry };
  });
}
