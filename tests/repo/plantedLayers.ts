// Imports that must not be, one for each rule: the proof that the layer check sees what it should.
import { coreLayers } from './layerRules';

/** A file to plant, the import it makes, and the rule that has to speak. */
export interface Plant {
  rule: string;
  file: string;
  text: string;
}

/** Harmless files of every layer, for the plants to import. */
export const innocentFiles: readonly string[] = [
  ...coreLayers.map((layer) => `server/src/core/${layer}/innocent.ts`),
  'server/src/core/sheet/innocent.ts',
  'server/src/core/chart/innocent.ts',
  'server/src/core/index.ts',
  'server/src/lsp/innocent.ts',
  'server/src/lsp/protocol.ts',
  'server/src/pdf/innocent.ts',
  'server/src/node/innocent.ts',
  'server/src/browser/innocent.ts',
  'server/src/cli/innocent.ts',
  'client/src/innocent.ts',
  'tests/support/innocent.ts',
];

function plant(rule: string, folder: string, target: string): Plant {
  return {
    rule,
    file: `${folder}/breaks-${rule}.ts`,
    text: `import { value } from '${target}';\nexport const used = value;\n`,
  };
}

function typePlant(rule: string, folder: string, target: string): Plant {
  return {
    rule,
    file: `${folder}/types-${rule}.ts`,
    text: `import type { Value } from '${target}';\nexport type Used = Value;\n`,
  };
}

const coreFolder = 'server/src/core';

/** A layer reaching one up, and the top one reaching aside to the sheet. */
const upwardPlants = coreLayers.map((layer, index) =>
  plant(`core-upward-${layer}`, `${coreFolder}/${layer}`, `../${coreLayers[index + 1] ?? 'sheet'}/innocent`),
);

export const plants: readonly Plant[] = [
  ...upwardPlants,
  typePlant('core-upward-text', `${coreFolder}/text`, '../ide/innocent'),
  plant('core-upward-sheet', `${coreFolder}/sheet`, '../rules/innocent'),
  typePlant('core-upward-sheet', `${coreFolder}/sheet`, '../ide/innocent'),
  plant('core-upward-chart', `${coreFolder}/chart`, '../rules/innocent'),
  typePlant('core-upward-chart', `${coreFolder}/chart`, '../ide/innocent'),
  plant('core-upward-review-page', `${coreFolder}/reviewPage`, '../ide/innocent'),
  plant('chart-markup-only', `${coreFolder}/chart`, '../sheet/innocent'),
  typePlant('core-upward-rules', `${coreFolder}/rules`, '../sheet/innocent'),
  { ...plant('core-base-low', coreFolder, './model/innocent'), file: `${coreFolder}/host.ts` },
  plant('core-whole-not-from-layers', `${coreFolder}/text`, '../index'),
  typePlant('core-alone', `${coreFolder}/rules`, '../../lsp/protocol'),
  plant('core-packages', `${coreFolder}/syntax`, 'vscode-languageserver'),
  typePlant('core-packages', `${coreFolder}/syntax`, 'vscode-languageserver'),
  plant('core-packages', `${coreFolder}/model`, 'ajv'),
  plant('node-only-in-shells', 'server/src/lsp', 'node:fs'),
  plant('node-only-in-shells', `${coreFolder}/model`, 'path'),
  plant('node-entry-only-in-shells', 'server/src/lsp', 'vscode-languageserver/node'),
  typePlant('lsp-on-core', 'server/src/lsp', '../cli/innocent'),
  plant('lsp-on-core', 'server/src/lsp', '../node/innocent'),
  plant('lsp-packages', 'server/src/lsp', 'yaml'),
  plant('node-only-in-shells', 'server/src/pdf', 'node:path'),
  plant('node-only-in-shells', 'server/src/browser', 'node:path'),
  plant('pdf-on-core', 'server/src/pdf', '../node/innocent'),
  typePlant('pdf-on-core', 'server/src/pdf', '../lsp/innocent'),
  plant('pdf-on-sheet', 'server/src/pdf', '../core/rules/innocent'),
  plant('pdf-packages', 'server/src/pdf', 'yaml'),
  plant('browser-without-node', 'server/src/browser', '../node/innocent'),
  plant('node-below-cli', 'server/src/node', '../cli/innocent'),
  plant('cli-without-lsp', 'server/src/cli', '../lsp/innocent'),
  plant('client-by-protocol', 'client/src', '../../server/src/core/text/innocent'),
  typePlant('client-by-protocol', 'client/src', '../../server/src/lsp/innocent'),
  plant('vscode-only-in-client', 'server/src/lsp', 'vscode'),
  plant('product-without-tests', 'server/src/node', '../../../tests/support/innocent'),
  plant('import-resolves', 'server/src/node', './thereIsNoSuchFile'),
  plant('import-resolves', 'tests/support', '../../server/src/core/text/thereIsNoSuchFile'),
  { ...plant('no-cycle', `${coreFolder}/text`, './ringB'), file: `${coreFolder}/text/ringA.ts` },
];

/** The other half of the planted ring; and imports that are allowed, which must stay unreported. */
export const innocentPlants: readonly Omit<Plant, 'rule'>[] = [
  {
    file: `${coreFolder}/text/ringB.ts`,
    text: "import { used } from './ringA';\nexport const value: unknown = used;\n",
  },
  {
    file: 'client/src/allowed.ts',
    text: "import { value } from '../../server/src/lsp/protocol';\nimport * as fs from 'node:fs';\nimport * as vscode from 'vscode';\nimport { LanguageClient } from 'vscode-languageclient/node';\nexport const used = [value, fs, vscode, LanguageClient];\n",
  },
  {
    file: `${coreFolder}/ide/allowed.ts`,
    text: "import { parseDocument } from 'yaml';\nimport { distance } from 'fastest-levenshtein';\nimport equal from 'ajv/dist/runtime/equal';\nimport { value } from '../rules/innocent';\nexport const used = [parseDocument, distance, equal, value];\n",
  },
  {
    file: 'server/src/browser/allowed.ts',
    text: "import { createConnection } from 'vscode-languageserver/browser';\nimport { value as lsp } from '../lsp/innocent';\nimport { value } from '../pdf/innocent';\nexport const used = [createConnection, lsp, value];\n",
  },
  {
    file: 'server/src/cli/allowed.ts',
    text: "import * as fs from 'node:fs';\nimport { value } from '../core/index';\nimport { value as node } from '../node/innocent';\nexport const used = [fs, value, node];\n",
  },
];
