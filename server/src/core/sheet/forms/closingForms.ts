import type { Labels } from '../labels';
import { capital } from '../sentences/grammar';
import type { Prose, Sheet, ToolLine } from '../sheet';
import { formTable, words } from './cells';
import type { Form, FormBlock, FormCell } from './form';

/** The tools once more, two in a row, to be counted out to the unit and back from it. */
export function tallyForm({ tools }: Sheet, labels: Labels): Form[] {
  if (tools.length === 0) return [];
  const heads = [
    [labels.countedIn, 'tick'],
    [labels.countedOut, 'tick'],
    [labels.tool, 'rest'],
  ] as const;
  const half = Math.ceil(tools.length / 2);
  const rows = tools.slice(0, half).map((tool, place) => {
    const beside = tools[half + place];
    return [...tallyCells(tool, labels), ...(beside === undefined ? EMPTY : tallyCells(beside, labels))];
  });
  const columns = tools.length > 1 ? [...heads, ...heads] : heads;
  const table = formTable('tally-list', columns, tools.length > 1 ? rows : rows.map((row) => row.slice(0, 3)));
  return [
    {
      name: 'tally',
      title: labels.toolTally,
      page: 'flow',
      blocks: [{ kind: 'note', text: labels.toolTallyNote }, table],
    },
  ];
}

const EMPTY: readonly FormCell[] = [words(), words(), words()];

function tallyCells({ name, count }: ToolLine, labels: Labels): FormCell[] {
  return [
    { kind: 'tick', name: `${labels.countedIn}: ${name}` },
    { kind: 'tick', name: `${labels.countedOut}: ${name}` },
    words(count > 1 ? `${count} × ${name}` : name),
  ];
}

/** What is looked at once more; what the steps leave loose is said here, for it must never be found on the engine. */
export function lastLookForm({ record }: Sheet, labels: Labels): Form {
  const loose = record.looseAtEnd ?? [];
  const left: FormBlock[] =
    loose.length === 0
      ? []
      : [
          { kind: 'strong', text: labels.looseAtTheEnd },
          { kind: 'note', text: `${loose.map(({ what }) => capital(what)).join('; ')}.` },
        ];
  const items: Prose[] = [labels.toolsAllBack, labels.nothingLoose].map((text) => [{ kind: 'text', text }]);
  return {
    name: 'last-look',
    title: labels.lastLook,
    page: 'flow',
    blocks: [...left, { kind: 'ticks', items }],
  };
}
