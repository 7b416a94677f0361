import { shortDigest } from './build/proof';
import { el, escapeHtml, type Html, type HtmlContext, section, table } from './htmlText';
import { fillLabel, type Labels } from './labels';
import type { SheetProof } from './sheet';

/** From which texts the sheet was made, with the digest of all in full and the start of each one's own. */
export function proofHtml({ sheet, labels }: HtmlContext): Html | undefined {
  const { proof } = sheet;
  if (proof === undefined) return undefined;
  const rows = proof.builtFrom.map(({ name, sha }) => [escapeHtml(name), el('code', {}, escapeHtml(shortDigest(sha)))]);
  return section(
    'proof',
    labels.proof,
    el('p', {}, escapeHtml(`${labels.proofDigest}: `), el('code', {}, escapeHtml(grouped(proof.digest)))),
    table('sources', [labels.proofFile, labels.proofSha], rows),
    el('p', {}, escapeHtml(labels.proofNote)),
  );
}

/** The digest's start with its label, as at the foot of each printed page. */
export function shortProof(proof: SheetProof | undefined, labels: Labels): string | undefined {
  return proof === undefined ? undefined : fillLabel(labels.proofShort, { digest: proof.short });
}

/** In groups of eight, so that two can be compared and a line can break. */
export function grouped(digest: string): string {
  return digest.match(/.{1,8}/gu)?.join(' ') ?? '';
}
