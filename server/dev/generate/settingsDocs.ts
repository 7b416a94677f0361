import { readFileSync } from 'node:fs';

/** A setting or a key, as far as it is described. */
interface Described {
  readonly description?: string;
  readonly markdownDescription?: string;
  readonly enum?: readonly string[];
  readonly enumDescriptions?: readonly string[];
  readonly default?: unknown;
  readonly properties?: Readonly<Record<string, Described>>;
}

/** The page about all settings, made from the manifest of the extension and the schema of the settings document. */
export function settingsDocs(): string {
  const manifest = JSON.parse(translated(readFileSync('package.json', 'utf8')));
  const settings: Record<string, Described> = manifest.contributes.configuration.properties;
  const schema: Described = JSON.parse(readFileSync('schemas/settings.schema.json', 'utf8'));
  return [
    '# Settings',
    '',
    'Made from the manifest and the schema by `npm run generate`; do not edit.',
    '',
    '## In the folder: `witnessmark.yaml`',
    '',
    'Everybody who opens the folder reads these, and the command line does too, so they come first. The nearest one counts,',
    'from the folder of the document up to the folder that is opened.',
    '',
    '| key | what it says | values |',
    '|---|---|---|',
    ...rows(schema.properties ?? {}),
    '',
    '## In the editor',
    '',
    'What one person prefers. A client of the Language Server Protocol is asked for the section `witnessmark`, once for each',
    'folder; where it cannot be asked, it sends the same as `initializationOptions` or with',
    '`workspace/didChangeConfiguration`, nested or with dotted names.',
    '',
    'Findings are sent as soon as they are known, or asked for by a client that announces `textDocument.diagnostic`. One that',
    'announces it and prefers to be sent them says so with `{ "diagnostics": "push" }` among its `initializationOptions`.',
    '',
    '| setting | what it says | values |',
    '|---|---|---|',
    ...rows(settings),
    '',
  ].join('\n');
}

/** The manifest with its texts, which stand in a file beside it. */
function translated(manifest: string): string {
  const texts = JSON.parse(readFileSync('package.nls.json', 'utf8'));
  return manifest.replaceAll(/"%([\w.-]+)%"/g, (_, key: string) => JSON.stringify(texts[key]));
}

function rows(all: Readonly<Record<string, Described>>, before = ''): string[] {
  return Object.entries(all).flatMap(([name, one]) => {
    const key = `${before}${name}`;
    const says = one.markdownDescription ?? one.description ?? 'A remark for the writer and the reviewer.';
    return [`| \`${key}\` | ${cell(says)} | ${cell(valuesOf(one))} |`, ...rows(one.properties ?? {}, `${key}.`)];
  });
}

function valuesOf(one: Described): string {
  const values = one.enum?.map((value) => `\`${value}\``).join(', ');
  const usual = one.default === undefined ? undefined : `usually \`${JSON.stringify(one.default)}\``;
  return [values, usual].filter((part) => part !== undefined).join('; ');
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
