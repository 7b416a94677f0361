import { shortProof } from '../core/sheet/htmlProof';
import type { Labels } from '../core/sheet/labels';
import { breakLongWords, printableText } from '../core/sheet/printableText';
import { qrCodeSvg } from '../core/sheet/proofCode';
import { codeText, proofText } from '../core/sheet/proofText';
import type { Sheet } from '../core/sheet/sheet';

/** What the template prints of the proof of origin, or null for a sheet without one. */
export interface PlacedProof {
  /** The digest's start with its label, for the foot of each page. */
  short: string;
  /** The code at the foot of each page. */
  codePath: string;
  files: { fileName: string; sha: string }[];
  /** For the properties of the file. */
  identification: string;
}

/** The proof as the template prints it, and the drawing that it shows. */
export function placeProof(sheet: Sheet, labels: Labels): { placed: PlacedProof | null; files: [string, string][] } {
  const { proof, header } = sheet;
  if (proof === undefined) return { placed: null, files: [] };
  const codePath = 'proof-code.svg';
  return {
    placed: {
      short: shortProof(proof, labels) ?? '',
      codePath,
      // A path is copied as one word; only one that would run off the page may break.
      files: proof.builtFrom.map(({ name, sha }) => ({ fileName: breakLongWords(printableText(name), 60, 30), sha })),
      identification: proofText(header, proof.digest),
    },
    files: [[codePath, qrCodeSvg(codeText(header, proof.digest))]],
  };
}
