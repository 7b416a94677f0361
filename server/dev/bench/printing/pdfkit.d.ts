/** As much of pdfkit as the bench calls; it has no types of its own. */
declare module 'pdfkit' {
  export default class PDFDocument {
    constructor(options: { size: string; autoFirstPage: boolean; margin: number });
    registerFont(name: string, font: Uint8Array): this;
    font(name: string): this;
    fontSize(points: number): this;
    addPage(): this;
    text(words: string): this;
    on(event: 'data', listener: (chunk: Uint8Array) => void): this;
    on(event: 'end', listener: () => void): this;
    end(): void;
  }
}
