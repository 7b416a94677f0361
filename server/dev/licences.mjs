// The licence texts of the packages whose code is inside the bundles, or lies beside them.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fromRoot } from './tree.mjs';

// The code of the engine and of what draws its pages reaches the product as assets, which the bundler does not see.
const besideTheBundles = ['@myriaddreamin/typst-ts-web-compiler', '@myriaddreamin/typst-ts-renderer'];

/** One text from the bundler's input paths: each package with its version, licence name and licence text. */
export function licenceTexts(inputs) {
  const names = new Set(besideTheBundles);
  for (const input of inputs) {
    const name = /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*\/node_modules\/)/.exec(input)?.[1];
    if (name !== undefined) names.add(name);
  }
  return [...names].sort().map(licenceOf).join('\n');
}

function licenceOf(name) {
  const folder = fromRoot(`node_modules/${name}`);
  // A package nested under another one is not at the top; its parent's listing names it all the same.
  if (!existsSync(join(folder, 'package.json'))) return `== ${name} ==\n`;
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file === undefined ? standardText(license) : readFileSync(join(folder, file), 'utf8');
  return `== ${name} ${version} (${license}) ==\n\n${text.trim()}\n`;
}

/** The text for a package that only names its licence; the compiler's own package carries the Apache text whole. */
function standardText(license) {
  if (license !== 'Apache-2.0') return 'The package carries no licence text.';
  return readFileSync(fromRoot('node_modules/typescript/LICENSE.txt'), 'utf8');
}
