import { resolve } from 'node:path';
import { uriOfPath } from '../../../src/node/nodeFiles';
import { type ServerStart, StdioServer } from './stdioServer';

const ours: ServerStart = { name: 'ours', args: [resolve('server/dist/server.js'), '--stdio'], settings: () => null };

/** The peer checks against the same schema and nothing else: no store of schemas, no delay. */
const peer: ServerStart = {
  name: 'peer',
  args: [
    '-r',
    resolve('server/dev/bench/editing/noDelay.cjs'),
    resolve('node_modules/yaml-language-server/bin/yaml-language-server'),
    '--stdio',
  ],
  settings: (section) =>
    section === 'yaml'
      ? {
          schemas: { [uriOfPath('schemas/procedure.schema.json')]: '**/*.procedure.yaml' },
          schemaStore: { enable: false },
          validate: true,
          completion: true,
          hover: true,
        }
      : null,
};

export const startOurs = (folder?: string): Promise<StdioServer> => StdioServer.start(ours, folder);
export const startPeer = (folder?: string): Promise<StdioServer> => StdioServer.start(peer, folder);
