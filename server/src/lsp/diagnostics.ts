import { isInside, type Uri } from '../core/analysis/uri';
import { documentKindOf } from '../core/syntax/documentKind';
import { AskedDiagnostics } from './askedDiagnostics';
import type { CheckedDocument } from './checkedDocuments';
import { CheckQueue } from './checkQueue';
import { findingsReport } from './findingsReport';
import { FindingsStore } from './findingsStore';
import { SHEET_CHANGED } from './protocol';
import { PushedDiagnostics } from './pushedDiagnostics';
import { refreshViews } from './refreshViews';
import { ScanProgress } from './scanProgress';
import type { Session } from './session';

/**
 * Keeps what is known of the findings in step with the files: a change is felt by every document that depends on it,
 * whether or not it is open. The client is sent what differs, or told to ask for it where it prefers to ask.
 */
export class Diagnostics {
  readonly found = new FindingsStore();
  readonly asked: AskedDiagnostics;
  readonly #session: Session;
  readonly #queue: CheckQueue;
  /** What each checked document depends on: all that is kept of a document that is not open, beside what was found. */
  readonly #dependencies = new Map<Uri, ReadonlySet<Uri>>();
  readonly #progress: ScanProgress;
  #isMemorySpared = false;
  /** How many folders are being looked through. */
  #scans = 0;
  #settled: (() => void)[] = [];
  /** What the client has drawn into an open text may be about something that has changed elsewhere. */
  #isViewStale = false;

  constructor(session: Session) {
    this.#session = session;
    this.asked = new AskedDiagnostics(session);
    this.#progress = new ScanProgress(session);
    this.#queue = new CheckQueue(session.host, {
      check: (uri) => this.#check(uri),
      done: () => this.#done(),
      hear: (work) => session.hear(work),
    });
    const pushed = new PushedDiagnostics(session);
    this.found.listen((uri, found) => {
      if (!session.asksForFindings) pushed.send(uri, found);
    });
  }

  /** A document has new text, or a file has come, gone or changed: it and all that depends on it are checked again. */
  changed(uri: Uri): void {
    if (this.#session.openUris.some((open) => open !== uri)) this.#isViewStale = true;
    this.#enqueueWithDependents(uri);
  }

  /** The same for a document in which somebody types: what is not open waits for a moment of quiet. */
  typed(uri: Uri): void {
    this.asked.forget(uri);
    this.#queue.typed();
    const isSeen = this.#session.openUris.some((open) => this.#dependencies.get(open)?.has(uri));
    if (isSeen) this.#isViewStale = true;
    this.#enqueueWithDependents(uri);
  }

  /** Everything below a folder has gone. */
  folderGone(folder: Uri): void {
    const { snapshot } = this.#session.workspace;
    const known = new Set([...snapshot.uris, ...[...this.#dependencies.values()].flatMap((on) => [...on])]);
    for (const uri of new Set([...known, ...this.#dependencies.keys()])) {
      if (!isInside(uri, folder) || this.#session.openDocument(uri) !== undefined) continue;
      this.#session.workspace.forget(uri);
      this.changed(uri);
    }
  }

  /** A folder has come: its documents are new, and others may have waited for them. */
  async folderCame(folder: Uri): Promise<void> {
    for await (const uri of this.#session.host.documentsBelow(folder)) {
      this.#session.filesChanged([uri]);
    }
  }

  /** Finds and checks all documents below a folder. */
  async scan(folder: Uri): Promise<void> {
    this.#scans++;
    try {
      for await (const uri of this.#session.host.documentsBelow(folder)) {
        if (!this.#dependencies.has(uri)) this.#enqueue(uri);
      }
    } finally {
      this.#scans--;
      void this.#session.hear(() => this.#progress.begin(this.#queue.waiting));
      this.#queue.run();
    }
  }

  /** Resolves once nothing is left to be looked through or checked. */
  settled(): Promise<void> {
    if (this.#isSettled) return Promise.resolve();
    return new Promise((resolve) => this.#settled.push(resolve));
  }

  get #isSettled(): boolean {
    return this.#scans === 0 && !this.#queue.isRunning;
  }

  /** Checks everything that is known again, and lets go of what is no longer anybody's. */
  recheckAll(): void {
    for (const uri of new Set([...this.#dependencies.keys(), ...this.#session.openUris])) this.#enqueue(uri);
    this.#queue.run();
  }

  /** Checks what is open again, for a client that does not say when files change. */
  recheckOpen(): void {
    for (const uri of this.#session.openUris) this.#enqueue(uri);
    this.#queue.run();
  }

  #enqueueWithDependents(uri: Uri): void {
    if (this.#isChecked(uri)) this.#enqueue(uri);
    for (const [dependent, on] of this.#dependencies) if (on.has(uri)) this.#enqueue(dependent);
    this.#queue.run();
  }

  #enqueue(uri: Uri): void {
    this.#queue.add(uri, this.#session.openDocument(uri) !== undefined);
  }

  #isChecked(uri: Uri): boolean {
    if (documentKindOf(uri) === undefined) return false;
    return this.#session.openDocument(uri) !== undefined || this.#session.isInFolders(uri) || this.found.has(uri);
  }

  async #check(uri: Uri): Promise<void> {
    this.#spareMemory(this.#queue.waiting > 0);
    const wanted = this.#isWanted(uri);
    const checked = wanted ? await this.#session.checked.of(uri) : undefined;
    this.#progress.report(this.#queue.waiting);
    if (checked === undefined) return this.#gone(uri);
    this.#dependencies.set(uri, checked.dependencies);
    this.#show(uri, checked);
    if (this.#session.openDocument(uri) === undefined) this.#letGo(uri);
  }

  #isWanted(uri: Uri): boolean {
    return this.#session.openDocument(uri) !== undefined || this.#session.isInFolders(uri);
  }

  #gone(uri: Uri): void {
    this.#dependencies.delete(uri);
    this.found.set(uri, undefined);
    this.#session.checked.forget(uri);
  }

  #show(uri: Uri, checked: CheckedDocument): void {
    const open = this.#session.openDocument(uri);
    // Newer text has arrived while files were read; its own check is already waiting.
    if (open !== undefined && !open.content.isSame(checked.document.content)) return;
    const report = findingsReport(this.#session, checked);
    this.found.set(uri, { ...report, version: open?.version });
    this.#tellSheet(uri);
  }

  #tellSheet(uri: Uri): void {
    if (!this.#session.sheetsShown.has(uri)) return;
    void this.#session.connection.sendNotification(SHEET_CHANGED.method, { uri: this.#session.clientUriOf(uri) });
  }

  /** A procedure that is not open is read for its own sake only; families, kits and stores serve many while work goes on. */
  #letGo(uri: Uri): void {
    this.#session.checked.forget(uri);
    if (documentKindOf(uri) === 'procedure') this.#session.workspace.forget(uri);
  }

  /** Each of many documents is garbage once it is checked, and a heap left to itself grows over hundreds of them first. */
  #spareMemory(isSpared: boolean): void {
    if (isSpared === this.#isMemorySpared) return;
    this.#isMemorySpared = isSpared;
    this.#session.host.spareMemory?.(isSpared);
  }

  /** Lets go of every file that nothing open depends on. */
  #done(): void {
    this.#progress.end();
    this.#spareMemory(false);
    const { openUris, workspace } = this.#session;
    const kept = new Set(openUris.flatMap((uri) => [uri, ...(this.#dependencies.get(uri) ?? [])]));
    for (const uri of [...workspace.snapshot.uris]) if (!kept.has(uri)) workspace.forget(uri);
    this.#tellSettled();
  }

  #tellSettled(): void {
    if (!this.#isSettled) return;
    for (const resolve of this.#settled.splice(0)) resolve();
    if (this.#session.asksForFindings) this.asked.settled();
    if (this.#isViewStale) refreshViews(this.#session);
    this.#isViewStale = false;
  }
}
