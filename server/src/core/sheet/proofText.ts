import type { SheetHeader } from './sheet';

/** What a sheet says of itself, for a program or a camera: in its properties whole, in its code with half the digest. */
export interface ProofText {
  readonly document: string;
  readonly revision: string;
  readonly build: string;
  /** SHA-256 of the sources, at least the first 32 of its 64 hexadecimal digits. */
  readonly digest: string;
}

const MARK = 'WITNESSMARK';

/** Half the digest is still 128 bits, and makes the squares of the code a fifth wider. */
const DIGITS_IN_CODE = 32;

/** With more than this the squares would be too small to be read off an oily page, so that the build is left out. */
const LONGEST_CODE = 122;

/** For the properties of the printed file. */
export function proofText({ document, revision, buildId }: SheetHeader, digest: string): string {
  return [MARK, document, revision, buildId, digest].map(field).join(';');
}

/** For the code at the foot of the page. */
export function codeText(header: SheetHeader, digest: string): string {
  const text = proofText(header, digest.slice(0, DIGITS_IN_CODE));
  return text.length <= LONGEST_CODE ? text : proofText({ ...header, buildId: '' }, digest.slice(0, DIGITS_IN_CODE));
}

/** Reads either back; undefined where a text is nothing of ours. */
export function readProofText(text: string): ProofText | undefined {
  const fields = /^WITNESSMARK;([^;]*);([^;]*);([^;]*);([0-9a-f]{32,64})$/u.exec(text.trim());
  if (fields === null) return undefined;
  const [document = '', revision = '', build = '', digest = ''] = fields.slice(1);
  return { document: unfield(document), revision: unfield(revision), build: unfield(build), digest };
}

function field(text: string): string {
  return text.replace(/[%;\s\p{Cc}\p{Cf}]/gu, encodeURIComponent);
}

function unfield(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
