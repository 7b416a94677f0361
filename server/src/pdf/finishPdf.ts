import type { Sheet } from '../core/sheet/sheet';
import { sha256Hex } from '../core/text/sha256';
import { attachmentObjects } from './attachments';
import { documentDate } from './documentDate';
import { type EngineFile, latin1, latin1Bytes, readEngineFile } from './engineFile';
import type { PdfProblem } from './problem';
import { srgbProfile } from './srgbProfile';
import { identifiedXmp, type PdfStandard } from './xmp';

/** An object of the file without its number: a dictionary, and the bytes of a stream where it is one. */
export interface PdfObject {
  readonly dictionary: string;
  readonly stream?: Uint8Array;
}

/**
 * What the engine cannot do in both its forms: names the standards that the file is made to and attaches the sheet's
 * sources. The last two objects are written anew and others put behind them; nothing that is read or drawn changes. The
 * bytes depend on the arguments alone.
 */
export function finishPdf(
  bytes: Uint8Array,
  sheet: Pick<Sheet, 'header' | 'proof'>,
  standard: PdfStandard,
): Uint8Array | { problem: PdfProblem } {
  if (standard === 'archive' && documentDate(sheet.header) === null) return { problem: { kind: 'archiveWithoutDate' } };
  const file = readEngineFile(bytes);
  if (file === undefined) return { problem: { kind: 'refused', message: 'the engine wrote a file of another kind' } };
  const instance = sha256Hex(latin1Bytes(`${sha256Hex(bytes)} ${standard} ${sheet.proof?.digest ?? ''}`)).slice(0, 32);
  const first = file.catalogue.number + 1;
  const attached = attachmentObjects(sheet, first);
  const archived = standard === 'archive' ? outputIntent(first + attached.objects.length) : { objects: [], entry: '' };
  const xmp = identifiedXmp(latin1(file.metadata.xmp), standard, instance);
  const objects: PdfObject[] = [
    { dictionary: '/Type /Metadata /Subtype /XML', stream: latin1Bytes(xmp) },
    { dictionary: catalogueWith(file.catalogue.inside, attached.names, attached.entry + archived.entry) },
    ...attached.objects,
    ...archived.objects,
  ];
  return assembled(file, objects, instance);
}

/** The catalogue shows the title instead of the file's name, and knows what was added. */
function catalogueWith(inside: string, embedded: string, entries: string): string {
  const titled = inside.replace('/ViewerPreferences <<', '/ViewerPreferences << /DisplayDocTitle true');
  if (embedded === '') return titled + entries;
  const named = titled.includes('/Names <<')
    ? titled.replace('/Names <<', `/Names << ${embedded}`)
    : `${titled}  /Names << ${embedded} >>\n`;
  return named + entries;
}

/** Says in which colour space the archived page is meant. */
function outputIntent(first: number): { objects: PdfObject[]; entry: string } {
  const intent = `/Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB) /Info (sRGB, IEC 61966-2-1) /DestOutputProfile ${first + 1} 0 R`;
  const objects = [{ dictionary: intent }, { dictionary: '/N 3', stream: srgbProfile() }];
  return { objects, entry: `  /OutputIntents [${first} 0 R]\n` };
}

/** The file again, with the objects numbered on from where its front ends, and one new table of where each begins. */
function assembled(file: EngineFile, objects: readonly PdfObject[], instance: string): Uint8Array {
  const parts: Uint8Array[] = [file.front];
  const offsets = [...file.offsets];
  let length = file.front.length;
  const write = (part: Uint8Array) => {
    parts.push(part);
    length += part.length;
  };
  objects.forEach(({ dictionary, stream }, index) => {
    offsets.push(length);
    const size = stream === undefined ? '' : ` /Length ${stream.length}`;
    write(latin1Bytes(`${file.metadata.number + index} 0 obj\n<<${dictionary}${size}>>\n`));
    if (stream !== undefined) write(latin1Bytes('stream\n'));
    if (stream !== undefined) write(stream);
    write(latin1Bytes(stream === undefined ? 'endobj\n\n' : '\nendstream\nendobj\n\n'));
  });
  write(latin1Bytes(tail(file, offsets, length, instance)));
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function tail(file: EngineFile, offsets: readonly number[], start: number, instance: string): string {
  const lines = offsets.slice(1).map((at) => `${String(at).padStart(10, '0')} 00000 n\r\n`);
  const entries = `/Size ${offsets.length} /Root ${file.catalogue.number} 0 R /Info ${file.properties}`;
  const table = `xref\n0 ${offsets.length}\n0000000000 65535 f\r\n${lines.join('')}`;
  return `${table}trailer\n<<${entries} /ID [${file.documentId} <${instance}>]>>\nstartxref\n${start}\n%%EOF\n`;
}
