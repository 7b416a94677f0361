/**
 * What runs in the page of a sheet. It is a text because it runs in another world than the extension: it is put into
 * the page as it stands. A new sheet replaces only what differs, so that the reader's place and focus are kept.
 */
export const SHEET_PAGE_SCRIPT = String.raw`
(() => {
  'use strict';
  const editor = acquireVsCodeApi();
  const byId = (id) => document.getElementById(id);
  const sheet = byId('sheet');
  let caret = -1;
  editor.setState({ uri: document.documentElement.dataset.uri });

  addEventListener('message', ({ data }) => {
    if (data.is === 'sheet') showSheet(data);
    if (data.is === 'caret') showCaret(data.offset);
  });

  function showSheet(data) {
    const page = new DOMParser().parseFromString(data.html, 'text/html');
    byId('sheet-style').textContent = [...page.querySelectorAll('style')].map((style) => style.textContent).join('\n');
    const ours = [...document.body.classList].filter((name) => name.startsWith('vscode-'));
    document.body.className = [...ours, ...page.body.classList].join(' ');
    for (const step of stepsIn(page)) step.tabIndex = 0;
    mark(page);
    for (const script of page.querySelectorAll('script')) script.remove();
    patchChildren(sheet, page.body);
    showBuilds(data);
    byId('errors').textContent =
      data.errors === 0 ? '' : data.errors === 1 ? '1 error stands' : data.errors + ' errors stand';
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
  function patch(old, next) {
    if (old.isEqualNode(next)) return;
    if (old.nodeName !== next.nodeName || !next.matches('main, section.phase')) old.replaceWith(document.adoptNode(next));
    else patchChildren(old, next);
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

  sheet.addEventListener('click', ({ target }) => {
    if (getSelection().isCollapsed) goToSource(target);
  });
  sheet.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') goToSource(event.target);
  });
  byId('build').addEventListener('change', ({ target }) => editor.postMessage({ is: 'build', id: target.value }));
  byId('print').addEventListener('click', () => editor.postMessage({ is: 'print' }));
  editor.postMessage({ is: 'ready' });
})();
`;
