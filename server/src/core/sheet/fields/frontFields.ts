import type { KitList, Sheet } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { always } from './formField';

/** What is laid out before the work starts. */
export function nameFront(sheet: Sheet, asking: Asking): Partial<Sheet> {
  const { labels } = asking;
  const tools: FieldPlace = { path: ['tools'], words: labels.tools, need: always };
  const consumables: FieldPlace = { path: ['consumables'], words: labels.consumables, need: always };
  return {
    tools: sheet.tools.map((tool) => ({
      ...tool,
      field: asking.tick(tools, tool.id, `${tool.name}: ${labels.atHand}`),
    })),
    consumables: sheet.consumables.map((line) => ({
      ...line,
      field: asking.tick(consumables, line.id, `${line.name}: ${labels.atHand}`),
    })),
    kits: sheet.kits.map((kit) => nameKit(kit, asking)),
  };
}

function nameKit(kit: KitList, asking: Asking): KitList {
  const { labels } = asking;
  const words = `${labels.pickList} ${kit.number}`;
  const lines = kit.lines.map((line, index) => {
    const path = ['kit', kit.number, line.item === '' ? `line-${index + 1}` : line.item];
    const { at, entry } = asking.condition({ path, words, need: always }, line.condition);
    const field = asking.tick(at, 'picked', `${line.part} ${line.number}: ${labels.picked}`);
    return withNames({ ...line, ...entry }, { field });
  });
  return { ...kit, lines };
}
