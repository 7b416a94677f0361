// The editor's window as the scenarios see it. Every wait is for a condition; nothing counts time but the patience.
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const patience = 60_000;

export class Workbench {
  /** @param page a browser page @param origin the server's address @param shots where screenshots go */
  constructor(page, origin, shots) {
    this.page = page;
    this.origin = origin;
    this.shots = shots;
    page.setDefaultTimeout(patience);
  }

  /** Loads the window on a folder, with files of it open. */
  async open(folder, ...files) {
    const payload = files.map((file) => ['openFile', this.uriOf(folder, file)]);
    const query = new URLSearchParams({ folder: this.folderName(folder), payload: JSON.stringify(payload) });
    await this.page.goto(`${this.origin}/?${query}`);
    await this.page.locator('.monaco-workbench').waitFor();
    if (files.length > 0) await this.text().first().waitFor();
  }

  /** A folder as the window's address names it. */
  folderName(folder) {
    return folder;
  }

  /** A file as the window's address names it. */
  uriOf(folder, file) {
    return `vscode-remote://${new URL(this.origin).host}${join(folder, file)}`;
  }

  /** A file as a dialog that asks for one names it. */
  pathOf(folder, file) {
    return join(folder, file);
  }

  /** The bytes of a file that the editor has written; undefined while there is none. */
  async written(folder, file) {
    const path = join(folder, file);
    return existsSync(path) ? readFileSync(path) : undefined;
  }

  /** Opens one more file of the folder by its name. */
  async openFile(name) {
    await this.#press('Control+P', this.#quickInput());
    await this.#quickInput().fill(name);
    await this.#quickRow(name).first().waitFor();
    await this.page.keyboard.press('Enter');
    await this.tab(name).waitFor();
    await this.text().first().waitFor();
  }

  tab(name) {
    return this.page.locator('.tabs-container .tab', { hasText: name });
  }

  /** The lines of text in view. */
  text() {
    return this.page.locator('.editor-instance .view-line');
  }

  /** Waits until the text has the focus. A window that still moves it would close a list that is opened too soon. */
  async focused() {
    await this.page.locator('.editor-instance .monaco-editor.focused').waitFor();
  }

  /** The wavy lines in view; severity is `error`, `warning`, `info` or `hint`. */
  squiggles(severity) {
    return this.page.locator(`.editor-instance .squiggly-${severity}`);
  }

  /** The rows of the Problems view; the view is opened when it is not. */
  async problems() {
    const panel = this.page.locator('.markers-panel');
    if (!(await panel.isVisible())) await this.#press('Control+Shift+M', panel);
    return panel.locator('.monaco-list-row');
  }

  /** Goes to the finding that holds the words: the caret then stands in it, and the view shows no other finding. */
  async goToProblem(words) {
    const rows = await this.problems();
    // Before its first row is there, the view would put back the filter that it had before.
    await rows.first().waitFor();
    // The list draws only the rows in view, and it holds the findings of closed documents too.
    await this.page.locator('.viewpane-filter input').first().fill(words);
    const row = rows.filter({ hasText: words });
    // The words are marked in it once the filter holds.
    // Farther on in the row there is a link to the page of the rule.
    await row.locator('.highlight').first().dblclick();
    await this.focused();
  }

  /** What the Problems view shows when its filter leaves no finding, or there is none at all. */
  noProblems() {
    return this.page.locator('.markers-panel .message-box-container:visible');
  }

  /** An item of the status bar. */
  statusItem(words) {
    return this.page.locator('.statusbar-item', { hasText: words });
  }

  /** Where the caret stands, as the status bar says it: `Ln 1, Col 1`. */
  caretLine() {
    return this.statusItem(/^Ln \d+, Col \d+/).textContent();
  }

  /** Puts the caret at the beginning of a line, counted from 1, of the text in front. */
  async goToLine(line) {
    await this.#press('Control+G', this.#quickInput());
    await this.#quickInput().fill(`:${line}`);
    await this.page.keyboard.press('Enter');
    await this.statusItem(new RegExp(`^Ln ${line}, `)).waitFor();
  }

  /** Moves the caret before the last character of its line. */
  async lineEnd() {
    await this.page.keyboard.press('End');
    await this.page.keyboard.press('ArrowLeft');
  }

  /** Puts the caret into a line that holds the words, at its end. */
  async clickLine(words) {
    await this.text().filter({ hasText: words }).first().click();
    await this.page.keyboard.press('End');
  }

  /** Applies the quick fix with that title where the caret is. */
  async quickFix(title) {
    const row = this.page.locator('.action-widget .monaco-list-row', { hasText: title }).first();
    await this.#lightBulb();
    await row.waitFor();
    // Chosen by pointer and not by Enter: the list takes keys only some moments after it is seen.
    // Some editors cover the list until the pointer has moved, so that nobody clicks what came up under it.
    await row.hover({ force: true });
    await row.click();
    await row.waitFor({ state: 'hidden' });
  }

  /** The titles that the quick fix menu offers where the caret is. */
  async quickFixes() {
    const rows = this.page.locator('.action-widget .monaco-list-row.action');
    await this.#lightBulb();
    await rows.first().waitFor();
    const titles = await rows.allInnerTexts();
    await this.page.keyboard.press('Escape');
    return titles.map((title) => title.trim());
  }

  /** Shows the hover where the caret is and returns it. */
  async hover() {
    const hover = this.page.locator('.monaco-hover:visible .hover-contents').first();
    await this.#press(['Control+K', 'Control+I'], hover);
    return hover;
  }

  /** Opens the completion list where the caret is and returns its rows. */
  async completions() {
    const rows = this.page.locator('.suggest-widget.visible .monaco-list-row');
    await this.#press('Control+Space', rows.first());
    return rows;
  }

  /** Takes one of the completions that the typing has brought up, or asks for them. */
  async acceptCompletion(label) {
    const rows = this.page.locator('.suggest-widget.visible .monaco-list-row', { hasText: label });
    await this.page.keyboard.press('Control+Space');
    await rows.first().waitFor();
    await rows.first().click();
    await rows.first().waitFor({ state: 'hidden' });
  }

  /** Gives what the caret is in another name. */
  async rename(name) {
    const input = this.page.locator('.rename-box input');
    await this.#press('F2', input);
    await input.fill(name);
    await this.page.keyboard.press('Enter');
    await input.waitFor({ state: 'hidden' });
  }

  /** Runs a command by its title in the palette. */
  async command(title) {
    await this.#press('F1', this.#quickInput());
    await this.#quickInput().fill(`>${title}`);
    await this.#quickRow(title).first().click();
  }

  /** Chooses a row of a list that a command has opened. */
  async pick(words) {
    await this.#quickRow(words).first().click();
  }

  /** Accepts the one-line answer that a command asks for, as it stands or with another text. */
  async answer(text) {
    await this.#quickInput().waitFor();
    if (text !== undefined) await this.#quickInput().fill(text);
    await this.page.keyboard.press('Enter');
  }

  /** Says yes to the question whether a file may be replaced, as the one-line dialog of the editor asks it. */
  async confirmReplacing() {
    const question = this.page.locator('.quick-input-widget:visible', { hasText: 'already exists' });
    await question.waitFor();
    await question.getByRole('button', { name: 'OK' }).click();
  }

  /** The name of a task's terminal, marked as failed. */
  failedTask(name) {
    return this.page.locator('.single-terminal-tab:has(.codicon-error)', { hasText: name });
  }

  /** Answers one of several questions that a command asks: the box is the same for all, so its words tell which it is. */
  async answerTo(question, text) {
    await this.page.locator('.quick-input-widget:visible', { hasText: question }).waitFor();
    await this.answer(text);
  }

  /** Names the file that a dialog asks for. */
  async answerFile(question, path) {
    await this.#fillPath(question, path);
    await this.page.keyboard.press('Enter');
  }

  /** Names the folder that a dialog asks for, and presses its button. */
  async answerFolder(question, path, button) {
    const dialog = await this.#fillPath(question, path);
    // The dialog takes its answer only once it has looked at the folder that was typed.
    await dialog.locator('.monaco-list-row', { hasText: '..' }).first().waitFor();
    await dialog.locator('.monaco-button', { hasText: button }).click();
  }

  /** The dialog proposes a path of its own, which would write over what is typed before it. */
  async #fillPath(question, path) {
    const dialog = this.page.locator('.quick-input-widget:visible', { hasText: question });
    await dialog.waitFor();
    await until('a path that the dialog proposes', async () => (await this.#quickInput().inputValue()) !== '');
    await dialog.locator('.monaco-list-row', { hasText: '..' }).first().waitFor();
    await this.#quickInput().fill(path);
    return dialog;
  }

  /** The document inside the webview that is open. */
  webview() {
    return this.page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');
  }

  notification(words) {
    return this.page.locator('.notification-toast', { hasText: words });
  }

  async save() {
    await this.page.keyboard.press('Control+S');
    await this.page.locator('.tabs-container .tab.active:not(.dirty)').waitFor();
  }

  /** Keeps a picture of the window; returns its path. */
  async screenshot(name) {
    mkdirSync(this.shots, { recursive: true });
    const path = join(this.shots, `${name}.png`);
    await this.page.screenshot({ path });
    return path;
  }

  #quickInput() {
    return this.page.locator('.quick-input-widget:visible input[type="text"]');
  }

  #quickRow(words) {
    return this.page.locator('.quick-input-widget:visible .monaco-list-row', { hasText: words });
  }

  /**
   * Opens the menu of fixes by its light bulb, which is there once the fixes are. The keys for it may still belong to the
   * list of problems in which somebody has clicked, and go nowhere while the editor asks for fixes.
   */
  async #lightBulb() {
    await this.page.locator('.lightBulbWidget:visible, [class*="codicon-gutter-lightbulb"]').first().click();
  }

  /** Presses the keys, one chord after another, and waits until the thing is seen. */
  async #press(keys, locator) {
    for (const chord of [keys].flat()) await this.page.keyboard.press(chord);
    await locator.waitFor();
  }
}

/** Waits until a function gives something true, asking the page between tries; throws naming what was waited for. */
export async function until(what, ask, seconds = patience / 1000) {
  const end = Date.now() + seconds * 1000;
  for (;;) {
    const value = await ask();
    if (value) return value;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
