import * as vscode from 'vscode';

/** The page that a comparison is put into. Nothing runs in it but its own script, and nothing is fetched. */
export function changesPage(body: string, style: string, sum: string): string {
  const nonce = Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
  const policy = `default-src 'none'; img-src data:; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="en" data-sum="${escaped(sum)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(vscode.l10n.t('What changed'))}</title>
<style nonce="${nonce}">${style}</style>
</head>
<body>
${body}
<script nonce="${nonce}">
const editor = acquireVsCodeApi();
document.addEventListener('click', (event) => {
  const button = event.target.closest('button[data-uri]');
  if (button === null) return;
  const { side, uri, start } = button.dataset;
  editor.postMessage({ side, uri, start: Number(start) });
});
</script>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
