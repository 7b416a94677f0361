// Serves VS Code for the web until it is ended: node serveWeb.mjs SERVER_MODULE PORT CONFIG_AS_JSON
import process from 'node:process';
import { pathToFileURL } from 'node:url';

const [module, port, config] = process.argv.slice(2);
const { runServer } = (await import(pathToFileURL(module).href)).default;
await runServer('localhost', Number(port), JSON.parse(config));
