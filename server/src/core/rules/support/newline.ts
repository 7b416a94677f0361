/** The line end that a text is written with, so that a fix keeps it. */
export function newlineOf(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n';
}
