// A browser page that shows the pages of the extension and of the command line, as an editor or a reader would.
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const criteria = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

export class PageBench {
  constructor(page, _origin, shots) {
    this.page = page;
    this.shots = shots;
    page.setDefaultTimeout(60_000);
  }

  /** Shows a page as a browser shows a file. */
  async showFile(html, { scheme = 'light', forcedColors = 'none' } = {}) {
    await this.page.emulateMedia({ colorScheme: scheme, contrast: 'no-preference', forcedColors });
    await this.page.setContent(html);
  }

  /** Shows a page as an editor with that theme shows it; `messages` then holds what the page says. */
  async showPreview(html, { body, scheme, contrast, variables }) {
    await this.page.emulateMedia({ colorScheme: scheme, contrast, forcedColors: 'none' });
    // Another document first, so that nothing of the last one is left.
    await this.page.goto('about:blank');
    await this.page.evaluate(() => {
      globalThis.messages = [];
      globalThis.acquireVsCodeApi = () => ({ postMessage: (said) => messages.push(said), setState() {} });
    });
    await this.page.setContent(html);
    await this.page.evaluate(
      ([names, values]) => {
        document.body.classList.add(...names.split(' '));
        document.documentElement.style.cssText = values;
      },
      [body, variables],
    );
  }

  /** Sends the page what the extension would send, and waits until it has been drawn. */
  async send(message) {
    await this.page.evaluate((data) => {
      dispatchEvent(new MessageEvent('message', { data }));
      document.body.getBoundingClientRect();
    }, message);
  }

  /** What is wrong with the page as it is now, one line for each element. */
  async faults() {
    await this.page.evaluate(axe);
    const { violations } = await this.page.evaluate(
      (values) => globalThis.axe.run(document, { runOnly: { type: 'tag', values }, resultTypes: ['violations'] }),
      criteria,
    );
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map(({ html, any }) => `${id}: ${help}: ${html.slice(0, 160)} ${any[0]?.message ?? ''}`),
    );
  }

  /** Keeps a picture of the page; returns its path. */
  async screenshot(name) {
    mkdirSync(this.shots, { recursive: true });
    const path = join(this.shots, `${name}.png`);
    await this.page.screenshot({ path });
    return path;
  }
}
