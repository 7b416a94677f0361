import type { Sheet } from '../core/sheet/sheet';
import { documentDate } from './documentDate';
import type { PdfObject } from './finishPdf';

export interface Attachments {
  objects: PdfObject[];
  /** For the catalogue's name tree, and for the catalogue itself; empty where nothing is attached. */
  names: string;
  entry: string;
}

/**
 * The sheet's sources as files inside the file (ISO 32000-1, 7.11; related to the whole as ISO 19005-3 asks), with the
 * texts from which their digests are taken. `first` is the number of the first object.
 */
export function attachmentObjects({ header, proof }: Pick<Sheet, 'header' | 'proof'>, first: number): Attachments {
  const files = proof?.builtFrom ?? [];
  if (files.length === 0) return { objects: [], names: '', entry: '' };
  const modified =
    documentDate(header) === null ? '' : ` /ModDate (D:${header.revisionDate?.replaceAll('-', '')}000000Z)`;
  const objects = files.flatMap(({ name, text }, index): PdfObject[] => {
    const content = new TextEncoder().encode(text);
    const stream = `${first + 2 * index + 1} 0 R`;
    const type = name.endsWith('.svg') ? 'image#2Fsvg+xml' : 'application#2Fyaml';
    const parameters = `/Params << /Size ${content.length}${modified} >>`;
    return [
      {
        dictionary: `/Type /Filespec /AFRelationship /Source /F ${hexText(name)} /UF ${hexText(name)} /Desc ${hexText(name)} /EF << /F ${stream} /UF ${stream} >>`,
      },
      { dictionary: `/Type /EmbeddedFile /Subtype /${type} ${parameters}`, stream: content },
    ];
  });
  const numbers = files.map((_, index) => `${first + 2 * index} 0 R`);
  const named = files.map(({ name }, index) => `${hexText(name)} ${numbers[index]}`);
  return {
    objects,
    names: `/EmbeddedFiles << /Names [${named.join(' ')}] >>`,
    entry: `  /AF [${numbers.join(' ')}]\n`,
  };
}

/** Text in UTF-16, which sorts as the names are sorted. */
function hexText(text: string): string {
  const units = Array.from({ length: text.length }, (_, at) => text.charCodeAt(at).toString(16).padStart(4, '0'));
  return `<feff${units.join('')}>`;
}
