import type { WorkDoneProgressServerReporter } from 'vscode-languageserver';
import type { Session } from './session';

/** Shows how far the first check of a folder has come, where the client shows such things. */
export class ScanProgress {
  readonly #session: Session;
  #reporter: WorkDoneProgressServerReporter | undefined;
  #total = 0;
  #percent = 0;
  #isUnderWay = false;

  constructor(session: Session) {
    this.#session = session;
  }

  async begin(total: number): Promise<void> {
    if (this.#isUnderWay || total === 0 || this.#session.client.window?.workDoneProgress !== true) return;
    this.#isUnderWay = true;
    const reporter = await this.#session.connection.window.createWorkDoneProgress();
    // The client may answer when all is done.
    if (!this.#isUnderWay) return;
    this.#reporter = reporter;
    this.#total = total;
    this.#percent = 0;
    reporter.begin('Checking the documents of the folder', 0);
  }

  report(waiting: number): void {
    if (this.#reporter === undefined) return;
    const percent = Math.max(this.#percent, Math.floor(100 - (100 * waiting) / Math.max(this.#total, waiting)));
    if (percent === this.#percent) return;
    this.#percent = percent;
    this.#reporter.report(percent);
  }

  end(): void {
    this.#reporter?.done();
    this.#reporter = undefined;
    this.#isUnderWay = false;
  }
}
