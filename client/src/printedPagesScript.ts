/**
 * What runs in the page to show the printed pages of a sheet, each as a picture with a button over every step. It is a
 * text because it runs in the page and not in the extension.
 */
export const PRINTED_PAGES_SCRIPT = `
const printedPages = (host) => {
  'use strict';
  const { title, page: pageWords, step: stepWords } = host.dataset;
  let marked = null;

  function show({ pages, marks, why }) {
    const main = document.createElement('main');
    const heading = document.createElement('h1');
    heading.textContent = title;
    main.append(heading);
    if (why !== undefined) {
      const said = document.createElement('p');
      said.textContent = why;
      main.append(said);
    }
    pages.forEach((page, at) => main.append(pageOf(page, at, pages.length, marks)));
    patchChildren(host, { childNodes: [main] });
    for (const one of host.querySelectorAll('.mark')) one.style.top = one.dataset.top + '%';
  }

  function pageOf({ svg, height }, at, count, marks) {
    const page = document.createElement('section');
    page.className = 'printed-page';
    page.id = 'printed-page-' + (at + 1);
    const picture = document.createElement('img');
    picture.alt = pageWords.replace('{0}', at + 1).replace('{1}', count);
    picture.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(svg);
    page.setAttribute('aria-label', picture.alt);
    page.append(picture, ...marks.filter((mark) => mark.page === at + 1).map((mark) => markOf(mark, height)));
    return page;
  }

  function markOf({ y, number, title, offset }, height) {
    const mark = document.createElement('button');
    mark.type = 'button';
    mark.className = 'mark';
    mark.dataset.sourceOffset = offset;
    mark.dataset.top = (100 * y) / height;
    mark.setAttribute('aria-label', stepWords.replace('{0}', number).replace('{1}', title));
    return mark;
  }

  function marks() {
    return [...host.querySelectorAll('.mark')];
  }

  function showCaret(offset) {
    const current = marks().findLast((mark) => Number(mark.dataset.sourceOffset) <= offset) ?? null;
    marked?.removeAttribute('aria-current');
    current?.setAttribute('aria-current', 'step');
    marked = current;
    if (current === null) return;
    const { top, bottom } = current.getBoundingClientRect();
    if (top < 0 || bottom > innerHeight) current.scrollIntoView({ block: 'start' });
  }

  return { show, showCaret };
};
`;
