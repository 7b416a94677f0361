// What the bundles read at run time: the typesetting engine, the fonts with their licences, and the sheet's templates.
import { cpSync, existsSync, mkdirSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { filesUnder, fromRoot, root } from './tree.mjs';

const packaged = [
  {
    from: '@myriaddreamin/typst-ts-web-compiler/pkg/typst_ts_web_compiler_bg.wasm',
    to: 'typst_ts_web_compiler_bg.wasm',
  },
  { from: '@myriaddreamin/typst-ts-renderer/pkg/typst_ts_renderer_bg.wasm', to: 'typst_ts_renderer_bg.wasm' },
  { from: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf', to: 'NotoSans_400Regular.ttf' },
  { from: '@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf', to: 'NotoSans_700Bold.ttf' },
  {
    from: '@expo-google-fonts/noto-sans/700Bold_Italic/NotoSans_700Bold_Italic.ttf',
    to: 'NotoSans_700Bold_Italic.ttf',
  },
  { from: '@expo-google-fonts/noto-sans/LICENSE_FONT', to: 'LICENCE-NotoSans.txt' },
  { from: 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf', to: 'DejaVuSans.ttf' },
  { from: 'dejavu-fonts-ttf/LICENSE', to: 'LICENCE-DejaVuSans.txt' },
];

/** Copies the assets flat into one folder and returns their paths from the root; two of one name are an error. */
export function copyAssets(folder) {
  mkdirSync(folder, { recursive: true });
  const templates = filesUnder(fromRoot('server/src'))
    .filter((file) => file.endsWith('.typ'))
    .map((file) => ({ from: file, to: basename(file) }));
  const wanted = [...packaged.map(({ from, to }) => ({ from: fromRoot(`node_modules/${from}`), to })), ...templates];
  return wanted.map(({ from, to }) => copyOne(from, join(folder, to)));
}

function copyOne(from, to) {
  if (existsSync(to)) throw new Error(`two assets are called ${basename(to)}; rename ${relative(root, from)}`);
  cpSync(from, to);
  return relative(root, to);
}
