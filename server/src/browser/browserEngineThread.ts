import type { PdfAssets } from '../pdf/assets';
import type { EngineThread, TypesetRequest, TypesetResponse } from '../pdf/engineThread';
import type { JobFiles } from '../pdf/printJob';

/** What the thread is started with, in its first message. */
export interface EngineStart {
  program: Uint8Array;
  /** The program that draws pages. */
  drawing: Uint8Array;
  assets: PdfAssets;
}

/** All that a thread takes to start: its own script too, since a page may not start a worker from another origin. */
export interface EngineParts extends EngineStart {
  script: Uint8Array<ArrayBuffer>;
}

/** A worker of this worker that holds the engine. */
export class BrowserEngineThread implements EngineThread {
  hasEnded = false;
  readonly #started: Promise<Worker>;
  #answer: ((response: TypesetResponse) => void) | undefined;
  #next = 0;

  constructor(parts: () => Promise<EngineParts>) {
    this.#started = this.#start(parts);
  }

  async typeset(files: JobFiles, as: TypesetRequest['as']): Promise<TypesetResponse> {
    this.#next += 1;
    const request: TypesetRequest = { id: this.#next, files, as };
    const answer = new Promise<TypesetResponse>((resolve) => {
      this.#answer = resolve;
    });
    this.#started.then(
      (worker) => worker.postMessage(request),
      (error) => this.#fail(error instanceof Error ? error.message : String(error)),
    );
    return answer;
  }

  async end(): Promise<void> {
    this.hasEnded = true;
    (await this.#started).terminate();
  }

  async #start(parts: () => Promise<EngineParts>): Promise<Worker> {
    const { script, program, drawing, assets } = await parts();
    const url = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
    const worker = new Worker(url, { name: 'Witnessmark typesetting' });
    worker.onmessage = ({ data }: MessageEvent<TypesetResponse>) => {
      if (data.last) worker.terminate();
      this.#settle(data);
    };
    worker.onerror = ({ message }) => this.#fail(message || 'its worker did not start');
    worker.postMessage({ program, drawing, assets } satisfies EngineStart, [program.buffer, drawing.buffer]);
    return worker;
  }

  #fail(message: string): void {
    this.hasEnded = true;
    this.#settle({ id: this.#next, result: { problem: { kind: 'noEngine', message } }, last: true });
  }

  #settle(response: TypesetResponse): void {
    this.#answer?.(response);
    this.#answer = undefined;
  }
}
