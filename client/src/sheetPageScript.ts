import { PAGE_PATCH_SCRIPT } from './pagePatchScript';
import { PRINTED_PAGES_SCRIPT } from './printedPagesScript';
import { WALK_GRID_SCRIPT } from './walkGridScript';

/**
 * What runs in the page of a sheet, of its printed pages and of a walk. It is a text because it runs in another world than
 * the extension: it is put into the page as it stands.
 */
const SHEET_VIEW_SCRIPT = String.raw`
(() => {
  'use strict';
  const VIEWS = ['sheet', 'pages', 'walk'];
  const editor = acquireVsCodeApi();
  const byId = (id) => document.getElementById(id);
  const [sheet, pages, walk] = VIEWS.map(byId);
  const grid = walkGrid(walk, byId('readout'));
  const pieces = patchedPage(sheet);
  const printed = printedPages(pages);
  const { uri, view: first } = document.documentElement.dataset;
  let view = '';
  let sheetClasses = [];
  let caret = -1;
  let marked = null;
  switchTo(first);

  addEventListener('message', ({ data }) => {
    if (data.is === 'sheet' && !showSheet(data)) return;
    if (data.is === 'pages') showPages(data);
    if (data.is === 'walk') showWalk(data);
    if (data.is === 'caret') return showCaret(data.offset);
    if (!VIEWS.includes(data.is)) return;
    showBuilds(data);
    showErrors(data.errors);
  });

  function switchTo(next) {
    if (next === view) return;
    view = next;
    editor.setState({ uri, view });
    for (const one of VIEWS) {
      byId(one).hidden = view !== one;
      byId('show-' + one).setAttribute('aria-pressed', String(one === view));
    }
    // What is printed is the sheet.
    byId('print').hidden = view === 'walk';
    byId('skip').setAttribute('href', '#' + view);
    byId('readout').textContent = '';
    showStyles();
  }

  // The styles of a sheet are for the whole page, so that they count only while a sheet is shown.
  function showStyles() {
    for (const one of ['sheet', 'walk']) {
      const { sheet: rules } = byId(one + '-style');
      const isOff = (one === 'walk') !== (view === 'walk');
      if (rules !== null && rules.disabled !== isOff) rules.disabled = isOff;
    }
    const classes = [...ourClasses(), ...(view === 'walk' ? [] : sheetClasses)].join(' ');
    // Even what is set to what it was makes the whole page be styled anew.
    if (document.body.className !== classes) document.body.className = classes;
  }

  function ourClasses() {
    return [...document.body.classList].filter((name) => name.startsWith('vscode-'));
  }

  function putStyle(id, style) {
    const ours = byId(id);
    if (ours.textContent !== style) ours.textContent = style;
  }

  // False where the change is one of another page than the one that is here: then the whole of it is asked for.
  function showSheet({ page }) {
    if (!pieces.show(page)) {
      editor.postMessage({ is: 'ready' });
      return false;
    }
    switchTo('sheet');
    if (page.style !== undefined) putStyle('sheet-style', page.style);
    if (sheet.lang !== page.language) sheet.lang = page.language;
    sheetClasses = page.bodyClass.split(' ');
    showStyles();
    mark();
    return true;
  }

  function showPages(data) {
    switchTo('pages');
    showStyles();
    printed.show(data);
    printed.showCaret(caret);
  }

  function showWalk(data) {
    switchTo('walk');
    const page = new DOMParser().parseFromString(data.html, 'text/html');
    putStyle('walk-style', [...page.querySelectorAll('style')].map((one) => one.textContent).join('\n'));
    showStyles();
    const hadFocus = grid.hadFocus();
    patchChildren(walk, page.body);
    grid.shown();
    grid.showCaret(caret);
    if (hadFocus && !grid.hadFocus()) grid.focus();
  }

  function showErrors(count) {
    const { none, one, many } = byId('errors').dataset;
    byId('errors').textContent = count === 0 ? '' : count === 1 ? one : many.replace('{0}', count);
    announce(count === 0 ? none : byId('errors').textContent);
  }

  // Said once the typing rests, so that nobody is talked over at every key.
  let saying = 0;
  function announce(errors) {
    clearTimeout(saying);
    saying = setTimeout(() => {
      byId('announced').textContent = byId('announced').dataset.words.replace('{0}', errors);
    }, 1500);
  }

  function showBuilds({ builds, build }) {
    const select = byId('build');
    const key = JSON.stringify(builds);
    if (select.dataset.key !== key) {
      select.replaceChildren(...builds.map(({ id, label }) => new Option(label, id)));
      select.dataset.key = key;
    }
    select.disabled = builds.length === 0;
    byId('print').disabled = build === undefined;
    if (build !== undefined && select.value !== build.id) {
      if (![...select.options].some((option) => option.value === build.id)) select.add(new Option(build.label, build.id));
      select.value = build.id;
    }
  }

  function mark() {
    const current = pieces.stepAt(caret);
    if (current === marked && current?.hasAttribute('aria-current')) return current;
    marked?.removeAttribute('aria-current');
    current?.setAttribute('aria-current', 'step');
    marked = current;
    return current;
  }

  function showCaret(offset) {
    caret = offset;
    if (view === 'walk') return grid.showCaret(offset);
    if (view === 'pages') return printed.showCaret(offset);
    const current = mark();
    // Above the first step stands what the head of the sheet is made of.
    if (current === null) return scrollTo(0, 0);
    const { top, bottom } = current.getBoundingClientRect();
    // A step that is seen already stays where it is: jumping would lose the reader's place.
    if (top < 0 || Math.min(bottom, top + 120) > innerHeight) current.scrollIntoView({ block: 'start' });
  }

  function goToSource(target) {
    const step = target.closest('[data-source-offset], section.step');
    if (step === null || target.closest('a, button:not([data-source-offset]), select, input') !== null) return;
    const offset = step.dataset.sourceOffset ?? pieces.sourceOf(step);
    editor.postMessage({ is: 'source', offset: Number(offset) });
  }

  for (const shown of [sheet, pages, walk]) {
    shown.addEventListener('click', ({ target }) => {
      if (getSelection().isCollapsed) goToSource(target);
    });
    shown.addEventListener('keydown', (event) => {
      // A button is pressed by the key itself, and that is a click.
      if (event.key === 'Enter' && event.target.closest('button') === null) goToSource(event.target);
    });
  }
  for (const one of VIEWS) {
    byId('show-' + one).addEventListener('click', () => editor.postMessage({ is: 'view', view: one }));
  }
  byId('skip').addEventListener('click', (event) => {
    // The address of a webview is not for links within it.
    event.preventDefault();
    byId(view).focus();
    byId(view).scrollIntoView();
  });
  byId('build').addEventListener('change', ({ target }) => editor.postMessage({ is: 'build', id: target.value }));
  byId('print').addEventListener('click', () => editor.postMessage({ is: 'print' }));
  editor.postMessage({ is: 'ready' });
})();
`;

/** All of the page's script. */
export const SHEET_PAGE_SCRIPT = `${WALK_GRID_SCRIPT}${PAGE_PATCH_SCRIPT}${PRINTED_PAGES_SCRIPT}${SHEET_VIEW_SCRIPT}`;
