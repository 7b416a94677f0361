import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { drawingName, engineName, fontNames, type PdfAssets, templateNames } from '../../pdf/assets';

const packagedAt: Readonly<Record<string, string>> = {
  [fontNames.regular]: '@expo-google-fonts/noto-sans/400Regular',
  [fontNames.bold]: '@expo-google-fonts/noto-sans/700Bold',
  [fontNames.boldItalic]: '@expo-google-fonts/noto-sans/700Bold_Italic',
  [fontNames.symbols]: 'dejavu-fonts-ttf/ttf',
  [engineName]: '@myriaddreamin/typst-ts-web-compiler/pkg',
  [drawingName]: '@myriaddreamin/typst-ts-renderer/pkg',
};

let remembered: PdfAssets | undefined;

/** Read once and shared by both carriers. */
export function readPdfAssets(): PdfAssets {
  remembered ??= {
    templates: new Map(templateNames.map((name) => [name, readAsset(name).toString('utf8')])),
    fonts: {
      regular: readAsset(fontNames.regular),
      bold: readAsset(fontNames.bold),
      boldItalic: readAsset(fontNames.boldItalic),
      symbols: readAsset(fontNames.symbols),
    },
  };
  return remembered;
}

export function readEngineWasm(): Buffer {
  return readAsset(engineName);
}

export function readDrawingWasm(): Buffer {
  return readAsset(drawingName);
}

function readAsset(name: string): Buffer {
  try {
    return readFileSync(assetPath(name));
  } catch {
    throw new Error(`${name} is missing from this installation; install it again`);
  }
}

// A bundle has its assets in a folder beside it; from source they are still where their packages put them.
function assetPath(name: string): string {
  const bundled = join(__dirname, 'assets', name);
  if (existsSync(bundled)) return bundled;
  const folder = packagedAt[name];
  return folder === undefined
    ? join(__dirname, '../../pdf', name)
    : join(__dirname, '../../../../node_modules', folder, name);
}
