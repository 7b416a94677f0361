// Unpacks a packed extension, with the reader that the packer itself brings along.
import { mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { promisify } from 'node:util';

const require = createRequire(createRequire(import.meta.url).resolve('@vscode/vsce/package.json'));
const yauzl = require('yauzl');

/** Writes what lies below a folder of the archive into another folder. */
export async function unpack(archive, target, below) {
  const zip = await promisify(yauzl.open)(archive, { lazyEntries: true });
  const openEntry = promisify(zip.openReadStream.bind(zip));
  await new Promise((resolve, reject) => {
    zip.once('end', resolve).once('error', reject);
    zip.on('entry', (entry) => write(entry).then(() => zip.readEntry(), reject));
    zip.readEntry();
  });

  async function write(entry) {
    if (!entry.fileName.startsWith(below) || entry.fileName.endsWith('/')) return;
    const path = join(target, entry.fileName.slice(below.length));
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, await buffer(await openEntry(entry)));
  }
}
