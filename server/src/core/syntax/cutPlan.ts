import type { DocumentKind } from './documentKind';

/**
 * Where a document is cut into items that are read alone: `entries` cuts a map at each of its keys, `items` a list at
 * each of its dashes, and a nested plan goes on inside each list item.
 */
export type Cut = 'entries' | 'items' | CutPlan;
export interface CutPlan {
  readonly [key: string]: Cut;
}

/** Only containers that grow long are cut; a short one is read together with its key. */
export const CUT_PLANS: Readonly<Record<DocumentKind, CutPlan>> = {
  procedure: { phases: { steps: 'items' }, concessions: 'items', revisions: 'items', figures: 'entries' },
  family: {
    variants: 'entries',
    options: 'entries',
    identify: 'entries',
    parts: 'entries',
    assemblies: 'entries',
    'balance-groups': 'entries',
    checks: 'entries',
    dimensions: 'entries',
    limits: 'entries',
    readings: 'entries',
    figures: 'entries',
  },
  kit: { lines: 'items' },
  stores: { tools: 'entries', consumables: 'entries' },
  settings: { severities: 'entries' },
};
