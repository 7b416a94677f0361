/**
 * What runs in the page of a sheet and of a walk. It is a text because it runs in another world than the extension: it
 * is put into the page as it stands. What is new replaces only what differs, so that the reader's place and focus are
 * kept.
 */
export const SHEET_PAGE_SCRIPT = String.raw`
(() => {
  'use strict';
  const editor = acquireVsCodeApi();
  const byId = (id) => document.getElementById(id);
  const sheet = byId('sheet');
  const walk = byId('walk');
  const grid = walkGrid(walk, byId('readout'));
  const { uri, view: first } = document.documentElement.dataset;
  let view = '';
  let caret = -1;
  switchTo(first);

  addEventListener('message', ({ data }) => {
    if (data.is === 'page') {
      switchTo(data.view);
      if (view === 'walk') showWalk(data);
      else showSheet(data);
      showBuilds(data);
      showErrors(data.errors);
    }
    if (data.is === 'caret') showCaret(data.offset);
  });

  function switchTo(next) {
    if (next === view) return;
    view = next;
    editor.setState({ uri, view });
    sheet.hidden = view !== 'sheet';
    walk.hidden = view !== 'walk';
    // What is printed is the sheet.
    byId('print').hidden = view !== 'sheet';
    byId('readout').textContent = '';
    for (const one of ['sheet', 'walk']) byId('show-' + one).setAttribute('aria-pressed', String(one === view));
    showStyles();
  }

  // The styles of a sheet are for the whole page, so that they count only while a sheet is shown.
  function showStyles() {
    for (const one of ['sheet', 'walk']) {
      const { sheet: rules } = byId(one + '-style');
      if (rules !== null) rules.disabled = one !== view;
    }
    if (view === 'walk') document.body.className = ourClasses().join(' ');
  }

  function ourClasses() {
    return [...document.body.classList].filter((name) => name.startsWith('vscode-'));
  }

  function parsed(html) {
    const page = new DOMParser().parseFromString(html, 'text/html');
    const style = [...page.querySelectorAll('style')].map((one) => one.textContent).join('\n');
    const ours = byId(view + '-style');
    if (ours.textContent !== style) ours.textContent = style;
    showStyles();
    for (const script of page.querySelectorAll('script')) script.remove();
    return page;
  }

  function showWalk(data) {
    const page = parsed(data.html);
    const hadFocus = grid.hadFocus();
    patchChildren(walk, page.body);
    grid.shown();
    grid.showCaret(caret);
    if (hadFocus && !grid.hadFocus()) grid.focus();
  }

  function showSheet(data) {
    const page = parsed(data.html);
    document.body.className = [...ourClasses(), ...page.body.classList].join(' ');
    for (const step of stepsIn(page)) step.tabIndex = 0;
    mark(page);
    patchChildren(sheet, page.body);
  }

  function showErrors(count) {
    const { one, many } = byId('errors').dataset;
    byId('errors').textContent = count === 0 ? '' : count === 1 ? one : many.replace('{0}', count);
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

  // Only blocks that hold other blocks are gone into; any other that differs is replaced whole.
  const BLOCKS = 'main, section.phase, .walk-frame, .walk-frame > svg';

  function patch(old, next) {
    if (old.isEqualNode(next)) return;
    if (old.nodeName !== next.nodeName || !next.matches(BLOCKS)) {
      old.replaceWith(document.adoptNode(next));
      return;
    }
    for (const { name, value } of next.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
    patchChildren(old, next);
  }

  function patchChildren(old, next) {
    let at = old.firstElementChild;
    for (const child of [...next.children]) {
      const same = partner(old, at, child);
      if (same === null) {
        old.insertBefore(document.adoptNode(child), at);
        continue;
      }
      if (same === at) at = at.nextElementSibling;
      else old.insertBefore(same, at);
      patch(same, child);
    }
    while (at !== null) {
      const gone = at;
      at = at.nextElementSibling;
      gone.remove();
    }
  }

  function partner(old, at, child) {
    if (child.id !== '') return [...old.children].find((one) => one.id === child.id) ?? null;
    if (at === null || at.id !== '' || at.nodeName !== child.nodeName) return null;
    return at.className === child.className ? at : null;
  }

  function stepsIn(root) {
    return [...root.querySelectorAll('[data-source-offset]')];
  }

  // The step at the caret is the last one that begins before it.
  function mark(root) {
    const before = stepsIn(root).filter((step) => Number(step.dataset.sourceOffset) <= caret);
    const current = before.at(-1);
    for (const step of stepsIn(root)) {
      if (step === current) step.setAttribute('aria-current', 'step');
      else step.removeAttribute('aria-current');
    }
    return current;
  }

  function showCaret(offset) {
    caret = offset;
    if (view === 'walk') return grid.showCaret(offset);
    const current = mark(sheet);
    // Above the first step stands what the head of the sheet is made of.
    if (current === undefined) return scrollTo(0, 0);
    const { top, bottom } = current.getBoundingClientRect();
    // A step that is seen already stays where it is: jumping would lose the reader's place.
    if (top < 0 || Math.min(bottom, top + 120) > innerHeight) current.scrollIntoView({ block: 'start' });
  }

  function goToSource(target) {
    const step = target.closest('[data-source-offset]');
    if (step === null || target.closest('a, button, select, input') !== null) return;
    editor.postMessage({ is: 'source', offset: Number(step.dataset.sourceOffset) });
  }

  for (const shown of [sheet, walk]) {
    shown.addEventListener('click', ({ target }) => {
      if (getSelection().isCollapsed) goToSource(target);
    });
    shown.addEventListener('keydown', (event) => {
      if (event.key === 'Enter') goToSource(event.target);
    });
  }
  for (const one of ['sheet', 'walk']) {
    byId('show-' + one).addEventListener('click', () => editor.postMessage({ is: 'view', view: one }));
  }
  byId('build').addEventListener('change', ({ target }) => editor.postMessage({ is: 'build', id: target.value }));
  byId('print').addEventListener('click', () => editor.postMessage({ is: 'print' }));
  editor.postMessage({ is: 'ready' });
})();
`;
