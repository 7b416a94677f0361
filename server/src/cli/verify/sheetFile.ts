import { readFileSync, statSync } from 'node:fs';
import { digestOfFiles } from '../../core/sheet/build/proof';
import { type ProofText, readProofText } from '../../core/sheet/proofText';
import { sha256Hex } from '../../core/text/sha256';
import { reasonOf } from '../../node/nodeFiles';
import { pdfLibrary } from '../../pdf/form/pdfObjects';
import { shown } from '../report/text';

/** A file larger than this is no sheet of ours. */
const LARGEST = 256 * 1024 * 1024;

/** A source as it is attached to a printed sheet. */
export interface AttachedSource {
  readonly name: string;
  readonly sha: string;
}

/** What a printed sheet says of itself. */
export interface SheetIdentity extends ProofText {
  /** Empty for a sheet of which only the code was read, and where somebody took the attachments off. */
  readonly attached: readonly AttachedSource[];
  /** Whether the attached sources are those that the digest stands for; undefined where none is attached. */
  readonly isWhole: boolean | undefined;
  /** ISO 8601 calendar date of the revision, where the file has one. */
  readonly date: string | undefined;
}

export type ReadSheetFile =
  | { readonly is: 'sheet'; readonly sheet: SheetIdentity }
  | { readonly is: 'none'; readonly why: string };

/** Reads a printed sheet, whichever engine printed it and whatever was filled in since. Never throws. */
export async function readSheetFile(path: string): Promise<ReadSheetFile> {
  const bytes = readBytes(path);
  if (typeof bytes === 'string') return { is: 'none', why: bytes };
  if (!bytes.subarray(0, 1024).includes('%PDF-')) return { is: 'none', why: `${shown(path)} is no PDF` };
  try {
    return await readPdf(path, bytes);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { is: 'none', why: `${shown(path)} is broken: ${reason}` };
  }
}

function readBytes(path: string): Buffer | string {
  try {
    const stats = statSync(path);
    if (!stats.isFile()) return `${shown(path)} is not a file`;
    if (stats.size > LARGEST) return `${shown(path)} is larger than any printed sheet`;
    return readFileSync(path);
  } catch (error) {
    return `Cannot read ${shown(path)}: ${reasonOf(error)}`;
  }
}

async function readPdf(path: string, bytes: Buffer): Promise<ReadSheetFile> {
  const pdf = await (await pdfLibrary()).PDF.load(bytes);
  if (pdf.isEncrypted && !pdf.isAuthenticated)
    return { is: 'none', why: `${shown(path)} is locked with a password; verify the sheet as it was printed` };
  if (pdf.getPageCount() === 0) return { is: 'none', why: `${shown(path)} is broken: it has no pages` };
  const proof = readProofText(pdf.getKeywords()?.join(' ') ?? '');
  if (proof === undefined)
    return {
      is: 'none',
      why: `${shown(path)} does not say from which sources it was made: it is no step sheet of ours, or from before sheets said so`,
    };
  const attached = attachedSources(pdf.attachments);
  const isWhole = attached.length === 0 ? undefined : digestOfFiles(attached) === proof.digest;
  const date = pdf.getCreationDate()?.toISOString().slice(0, 10);
  return { is: 'sheet', sheet: { ...proof, attached, isWhole, date } };
}

interface Attachments {
  list(): Map<string, unknown>;
  get(name: string): Uint8Array | null;
}

/** What else somebody may have attached is no source. */
function attachedSources(attachments: Attachments): AttachedSource[] {
  const names = [...attachments.list().keys()].filter((name) => /\.(?:ya?ml|svg|png|jpe?g)$/iu.test(name));
  const sources = names.map((name) => ({ name, sha: sha256Hex(attachments.get(name) ?? new Uint8Array()) }));
  return sources.sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** A sheet of which only the code at the foot of a page is at hand; undefined where the text is none. */
export function sheetOfCode(text: string): SheetIdentity | undefined {
  const proof = readProofText(text);
  return proof === undefined ? undefined : { ...proof, attached: [], isWhole: undefined, date: undefined };
}
