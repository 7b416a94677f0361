/**
 * A PDF as the engine writes it, cut so that its last two objects, what is said of the file and its catalogue, can be
 * written anew. Text here is one character for each byte.
 */
export interface EngineFile {
  /** Everything before the last two objects, which stays as it is. */
  readonly front: Uint8Array;
  /** Where each object of the front begins, by its number; the first entry stands for no object. */
  readonly offsets: readonly number[];
  readonly metadata: { readonly number: number; readonly xmp: Uint8Array };
  /** The inside of the catalogue's dictionary. */
  readonly catalogue: { readonly number: number; readonly inside: string };
  /** Number of the object with the file's properties. */
  readonly properties: string;
  /** The lasting name of the document, as it stands in the trailer. */
  readonly documentId: string;
}

/** Takes apart what the engine wrote; undefined where it is laid out in a way that we do not know. */
export function readEngineFile(bytes: Uint8Array): EngineFile | undefined {
  const tableAt = Number(/startxref\n(\d+)\n%%EOF\s*$/u.exec(latin1(bytes.subarray(-64)))?.[1]);
  if (!(tableAt > 0)) return undefined;
  const table = /^xref\n0 (\d+)\n([\s\S]*)trailer\s*<<([\s\S]*)>>\s*startxref/u.exec(latin1(bytes.subarray(tableAt)));
  const offsets = [...(table?.[2] ?? '').matchAll(/(\d{10}) \d{5} [fn]/gu)].map((entry) => Number(entry[1]));
  const trailer = /\/Root (\d+) 0 R\s+\/Info (\d+ 0 R)\s+\/ID \[(\((?:[^()\\]|\\.)*\)|<[0-9A-F]*>)/iu.exec(
    table?.[3] ?? '',
  );
  if (offsets.length !== Number(table?.[1]) || trailer === null) return undefined;
  const [, root, properties = '', documentId = ''] = trailer;
  return lastTwo(bytes, { tableAt, offsets, root: Number(root), properties, documentId });
}

interface Ends {
  tableAt: number;
  offsets: number[];
  root: number;
  properties: string;
  documentId: string;
}

function lastTwo(bytes: Uint8Array, { tableAt, offsets, root, properties, documentId }: Ends): EngineFile | undefined {
  const catalogueAt = offsets[root] ?? 0;
  const inside = /^\d+ 0 obj\s*<<([\s\S]*)>>\s*endobj\s*$/u.exec(latin1(bytes.subarray(catalogueAt, tableAt)))?.[1];
  const number = Number(/\/Metadata (\d+) 0 R/u.exec(inside ?? '')?.[1]);
  const metadataAt = offsets[number] ?? Number.NaN;
  const isLast =
    root === offsets.length - 1 && number === root - 1 && offsets.slice(0, -2).every((at) => at < metadataAt);
  const object = latin1(bytes.subarray(metadataAt, catalogueAt));
  const stream = /\nstream\n([\s\S]*)\nendstream\s+endobj\s*$/u.exec(object);
  if (inside === undefined || !isLast || stream === null || object.includes('/Filter')) return undefined;
  const from = metadataAt + stream.index + '\nstream\n'.length;
  return {
    front: bytes.subarray(0, metadataAt),
    offsets: offsets.slice(0, -2),
    metadata: { number, xmp: bytes.subarray(from, from + (stream[1] ?? '').length) },
    catalogue: { number: root, inside },
    properties,
    documentId,
  };
}

export function latin1(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return text;
}

export function latin1Bytes(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}
