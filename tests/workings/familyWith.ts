import { FamilyView } from '../../server/src/core/analysis/familyView';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inFamily } from '../../server/src/core/rules/examples';
import type { Working } from '../../server/src/core/workings/working';
import { openFiles } from '../support/memoryFiles';

/** The family of the examples with other entries. */
export async function familyWith(entries: string): Promise<FamilyView> {
  const { document } = await openFiles(inFamily(entries).files, EXAMPLE_PATHS.family);
  const family = FamilyView.of(document);
  if (family === undefined) throw new Error('The family cannot be read');
  return family;
}

export function rowsOf(working: Working | undefined): string[] {
  return (working?.rows ?? []).map(({ label, text }) => `${label}: ${text}`);
}
