// Who may import whom: the one list of it. `layers.test.ts` proves that every rule here can fail.
import type { IFlattenedRuleSet, IRegularForbiddenRuleType } from 'dependency-cruiser';

type ForbiddenRule = IRegularForbiddenRuleType;

/** The core's folders from the lowest to the highest; a folder imports itself and those before it. */
export const coreLayers = [
  'text',
  'quantity',
  'standards',
  'syntax',
  'builds',
  'model',
  'analysis',
  'walk',
  'workings',
  'rules',
  'review',
  'ide',
] as const;

/**
 * The sheet and the chart stand beside rules and interactive features, on what is below them: they meet neither. The page
 * of a review stands on the sheet and the review.
 */
export const coreFolders: readonly string[] = [...coreLayers, 'sheet', 'chart', 'reviewPage'];

/** Files beside the layers that every layer may import, because they themselves import the text layer at most. */
export const coreBaseFiles = ['host.ts', 'settings.ts'] as const;

const core = '^server/src/core/';
const base = `${core}(?:${coreBaseFiles.map((file) => file.replace('.', '\\.')).join('|')})$`;

function forbid(name: string, from: ForbiddenRule['from'], to: ForbiddenRule['to']): ForbiddenRule {
  return { name, severity: 'error', from, to };
}

function upward(layer: string, index: number): ForbiddenRule[] {
  const above = [...coreLayers.slice(index + 1), 'sheet', 'chart', 'reviewPage'].join('|');
  return [forbid(`core-upward-${layer}`, { path: `${core}${layer}/` }, { path: `${core}(?:${above})/` })];
}

const coreRules: ForbiddenRule[] = [
  ...coreLayers.flatMap(upward),
  forbid('core-upward-sheet', { path: `${core}sheet/` }, { path: `${core}(?:rules|review|ide|chart|reviewPage)/` }),
  forbid('core-upward-chart', { path: `${core}chart/` }, { path: `${core}(?:rules|review|ide|reviewPage)/` }),
  // The page of a review shows pieces of two sheets, and nothing stands on it but the shells.
  forbid('core-upward-review-page', { path: `${core}reviewPage/` }, { path: `${core}(?:ide|chart)/` }),
  // Of the sheet the chart takes how markup is written, and nothing of what a sheet says.
  forbid('chart-markup-only', { path: `${core}chart/` }, { path: `${core}sheet/(?!htmlText\\.ts$)` }),
  forbid('core-base-low', { path: base }, { path: `${core}(?!text/)[^/]+/` }),
  forbid('core-whole-not-from-layers', { path: `${core}[^/]+/` }, { path: `${core}[^/]+\\.ts$`, pathNot: base }),
  forbid('core-alone', { path: core }, { path: '^(?:server/src/(?!core/)|client/)' }),
  forbid(
    'core-packages',
    { path: core },
    {
      path: 'node_modules/',
      pathNot: 'node_modules/(?:yaml|fastest-levenshtein|ajv/dist/runtime|@noble/hashes|uqr)/',
    },
  ),
];

const shellRules: ForbiddenRule[] = [
  forbid('node-only-in-shells', { path: '^server/src/(?:core|lsp|pdf|browser)/' }, { dependencyTypes: ['core'] }),
  forbid(
    'node-entry-only-in-shells',
    { path: '^server/src/(?:core|lsp|pdf|browser)/' },
    {
      path: 'vscode-(?:languageserver|languageserver-protocol|jsonrpc)/(?:lib/)?node',
    },
  ),
  forbid('lsp-on-core', { path: '^server/src/lsp/' }, { path: '^(?:server/src/(?!core/|lsp/)|client/)' }),
  forbid(
    'lsp-packages',
    { path: '^server/src/lsp/' },
    {
      path: 'node_modules/',
      pathNot: 'node_modules/vscode-(?:languageserver|languageserver-protocol|languageserver-types|jsonrpc)/',
    },
  ),
  // Printing is the same everywhere: it makes files for the engine of a sheet, and knows no server and no platform.
  forbid('pdf-on-core', { path: '^server/src/pdf/' }, { path: '^(?:server/src/(?!core/|pdf/)|client/)' }),
  forbid('pdf-on-sheet', { path: '^server/src/pdf/' }, { path: '^server/src/core/(?!sheet/|text/)' }),
  forbid(
    'pdf-packages',
    { path: '^server/src/pdf/' },
    {
      path: 'node_modules/',
      pathNot: 'node_modules/(?:@myriaddreamin/typst-ts-(?:web-compiler|renderer)|@libpdf/core)/',
    },
  ),
  forbid('browser-without-node', { path: '^server/src/browser/' }, { path: '^(?:server/src/(?:node|cli)/|client/)' }),
  forbid('node-below-cli', { path: '^server/src/node/' }, { path: '^(?:server/src/(?:cli|browser)/|client/)' }),
  forbid('cli-without-lsp', { path: '^server/src/cli/' }, { path: '^(?:server/src/lsp/|client/)' }),
  forbid(
    'client-by-protocol',
    { path: '^client/' },
    {
      path: '^server/',
      pathNot: '^server/src/lsp/protocol\\.ts$',
    },
  ),
  forbid('vscode-only-in-client', { path: '^(?:server|tests)/' }, { path: '^vscode$|node_modules/@types/vscode/' }),
];

const wholeRules: ForbiddenRule[] = [
  forbid('product-without-tests', { path: '^(?:server|client)/src/' }, { path: '^(?:tests|server/dev)/' }),
  // The editor gives `vscode` at run time, and the native engine is there on some platforms only.
  forbid(
    'import-resolves',
    {},
    {
      couldNotResolve: true,
      pathNot: '^vscode$|^@myriaddreamin/typst-ts-node-compiler$',
    },
  ),
  // Types may refer to each other in a ring; code that runs may not.
  forbid(
    'no-cycle',
    { path: '^(?:server|client)/src/' },
    {
      circular: true,
      viaOnly: { dependencyTypesNot: ['type-only'] },
    },
  ),
];

export const layerRules: IFlattenedRuleSet & { forbidden: ForbiddenRule[] } = {
  forbidden: [...coreRules, ...shellRules, ...wholeRules],
};
