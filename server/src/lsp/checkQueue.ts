import type { Uri } from '../core/analysis/uri';
import type { Host } from './host';

/** Milliseconds without a key that count as a pause; people who type leave less between two keys. */
const QUIET = 150;

/** What the queue asks of whoever fills it. */
export interface CheckQueueOwner {
  check(uri: Uri): Promise<void>;
  /** Nothing is left to do. */
  done(): void;
  hear(work: () => Promise<void>): Promise<void>;
}

/**
 * The documents that wait to be checked: what is open first, once for all changes that have arrived, and everything else
 * one document at a time and never while somebody types, so that typing waits for nothing but its own document.
 */
export class CheckQueue {
  readonly #host: Host;
  readonly #owner: CheckQueueOwner;
  readonly #open = new Set<Uri>();
  readonly #closed = new Set<Uri>();
  #isRunning = false;
  /** Somebody has typed since work on what is not open last went on. */
  #isTyping = false;
  #wake: () => void = () => {};

  constructor(host: Host, owner: CheckQueueOwner) {
    this.#host = host;
    this.#owner = owner;
  }

  /** How many documents wait that are not open. */
  get waiting(): number {
    return this.#closed.size;
  }

  get isRunning(): boolean {
    return this.#isRunning;
  }

  add(uri: Uri, isOpen: boolean): void {
    if (isOpen) this.#open.add(uri);
    else this.#closed.add(uri);
  }

  typed(): void {
    this.#isTyping = true;
  }

  run(): void {
    this.#wake();
    if (this.#isRunning) return;
    this.#isRunning = true;
    void this.#owner.hear(() => this.#work());
  }

  async #work(): Promise<void> {
    try {
      for (;;) {
        await this.#host.nextTurn();
        if (this.#open.size === 0 && this.#closed.size > 0 && this.#isTyping) await this.#quiet();
        else if (!(await this.#checkNext())) break;
      }
    } finally {
      this.#isRunning = false;
      this.#owner.done();
    }
  }

  async #checkNext(): Promise<boolean> {
    const [next] = this.#open.size > 0 ? this.#open : this.#closed;
    if (next === undefined) return false;
    this.#open.delete(next);
    this.#closed.delete(next);
    // One document that cannot be checked must not keep the others from it.
    await this.#owner.hear(() => this.#owner.check(next));
    return true;
  }

  /** Waits until nobody has typed for a moment, or something new has come. */
  async #quiet(): Promise<void> {
    this.#isTyping = false;
    const woken = new Promise<void>((resolve) => {
      this.#wake = resolve;
    });
    await Promise.race([woken, this.#host.pause(QUIET)]);
  }
}
