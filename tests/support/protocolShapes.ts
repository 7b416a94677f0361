import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Shape } from './valueShapes';

/** What belongs to one method. The numbers are places in the table of shapes; absent where nothing is sent. */
export interface MethodShapes {
  readonly is: 'request' | 'notification';
  readonly params?: number;
  readonly result?: number;
  readonly partialResult?: number;
  readonly registration?: number;
  /** The announcement that stands for it: `hoverProvider`, `renameProvider.prepareProvider`. */
  readonly announcedBy?: string;
}

export interface ProtocolShapes {
  readonly table: readonly Shape[];
  readonly methods: Readonly<Record<string, MethodShapes>>;
  /** Of the messages about how far long work has come. */
  readonly workDone: number;
}

const root = join(import.meta.dirname, '../..');
const PROTOCOL = join(root, 'node_modules/vscode-languageserver-protocol/lib/common/api.d.ts');
const OWN = join(root, 'server/src/lsp/protocol.ts');
/** What the shapes are made from and by: where one of these changes, they are made anew. */
const SOURCES = [
  join(root, 'node_modules/vscode-languageserver-protocol/package.json'),
  join(root, 'node_modules/typescript/package.json'),
  OWN,
  ...['protocolShapes', 'readProtocol', 'shapesOfTypes'].map((name) => join(import.meta.dirname, `${name}.ts`)),
];

let shapes: Promise<ProtocolShapes> | undefined;

/** The shapes of all messages of the protocol, and of our own. Reading the types takes seconds, so it is done once. */
export function protocolShapes(): Promise<ProtocolShapes> {
  shapes ??= cachedShapes();
  return shapes;
}

async function cachedShapes(): Promise<ProtocolShapes> {
  const hash = createHash('sha256');
  for (const path of SOURCES) hash.update(readFileSync(path));
  const cached = join(root, `.cache/lsp-tests/protocol-${hash.digest('hex').slice(0, 16)}.json`);
  if (existsSync(cached)) return JSON.parse(readFileSync(cached, 'utf8'));
  const { readProtocol } = await import('./readProtocol');
  const read = readProtocol([PROTOCOL, OWN]);
  mkdirSync(dirname(cached), { recursive: true });
  // Several test files may do this at once; each writes a whole file of its own.
  writeFileSync(`${cached}.${process.pid}`, JSON.stringify(read));
  renameSync(`${cached}.${process.pid}`, cached);
  return read;
}
