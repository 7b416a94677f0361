/**
 * What runs in the page of a walk: a cursor among its cells, moved by the arrow keys, and the column of the caret. The
 * chart holds a cell only where something happens; for any other the cursor makes one, and takes it away again when it
 * moves on. It is a text because it runs in the page and not in the extension.
 */
export const WALK_GRID_SCRIPT = `
const walkGrid = (host, readout) => {
  'use strict';
  const SVG = 'http://www.w3.org/2000/svg';
  let at = { row: '', column: 3 };
  let here = null;

  const heads = () => [...host.querySelectorAll('.step-head')];
  const rows = () => [host.querySelector('.head'), ...host.querySelectorAll('.row')].filter((row) => row !== null);
  const rowAt = () => rows().find((row) => row.id === at.row) ?? rows()[0];
  const headAt = (column) => heads()[column - 2];
  const columnOf = (cell) => Number(cell.getAttribute('aria-colindex'));
  const cellsIn = (row) => [...row.children].filter((one) => one.hasAttribute('aria-colindex'));

  function made(name, attributes) {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    return element;
  }

  function cellAt(row, column) {
    return cellsIn(row).find((cell) => columnOf(cell) === column) ?? makeCell(row, column);
  }

  function makeCell(row, column) {
    const head = headAt(column);
    const { x, width } = head.querySelector('.hit').attributes;
    const cell = made('g', { class: 'cell', role: 'gridcell', tabindex: -1, 'aria-colindex': column, 'data-made': '' });
    if (head.dataset.sourceOffset !== undefined) cell.dataset.sourceOffset = head.dataset.sourceOffset;
    const title = made('title', {});
    title.textContent = head.dataset.words + ': ' + row.getAttribute('aria-label') + ', ' + standingAt(row, column);
    cell.append(title, made('rect', { class: 'hit', x: x.value, width: width.value, y: 0.5, height: 19 }));
    row.append(cell);
    return cell;
  }

  function standingAt(row, column) {
    const before = cellsIn(row).filter((cell) => columnOf(cell) < column && cell.dataset.standing !== undefined);
    before.sort((one, other) => columnOf(one) - columnOf(other));
    return (before.at(-1) ?? row).dataset.standing;
  }

  // One cell at a time can be reached with the Tab key: the one that the cursor stands on.
  function putCursor(row, column, focus) {
    const cell = cellAt(row, column);
    for (const old of host.querySelectorAll('[aria-colindex][tabindex="0"]')) {
      if (old === cell) continue;
      if (old.hasAttribute('data-made')) old.remove();
      else old.setAttribute('tabindex', '-1');
    }
    cell.setAttribute('tabindex', '0');
    at = { row: row.id, column };
    if (focus) cell.focus();
  }

  function move(event) {
    const all = rows();
    const last = heads().length + 1;
    const index = all.indexOf(rowAt());
    const { column } = at;
    const next = {
      ArrowLeft: [index, event.ctrlKey ? 2 : column - 1],
      ArrowRight: [index, event.ctrlKey ? last : column + 1],
      ArrowUp: [event.ctrlKey ? 0 : index - 1, column],
      ArrowDown: [event.ctrlKey ? all.length - 1 : index + 1, column],
      Home: [event.ctrlKey ? 0 : index, 2],
      End: [event.ctrlKey ? all.length - 1 : index, last],
    }[event.key];
    if (next === undefined || event.altKey || event.metaKey || all.length === 0) return;
    event.preventDefault();
    const within = (value, from, to) => Math.min(to, Math.max(from, value));
    putCursor(all[within(next[0], 0, all.length - 1)], within(next[1], 2, last), true);
  }

  function tell(target) {
    const cell = target.closest?.('[aria-colindex], .name, .phase');
    readout.textContent = cell?.querySelector('title')?.textContent ?? '';
  }

  function shown() {
    const frame = host.querySelector('.walk-frame');
    if (frame === null || rows().length === 0) return;
    frame.tabIndex = -1;
    putCursor(rowAt(), Math.min(at.column, heads().length + 1), false);
    here = null;
  }

  // The step at the caret is the last one that begins before it.
  function showCaret(offset) {
    const current = heads().findLast((head) => Number(head.dataset.sourceOffset ?? Infinity) <= offset);
    if (current === here) return;
    for (const old of host.querySelectorAll('.here-step')) old.remove();
    here?.removeAttribute('aria-current');
    here = current ?? null;
    if (here === null) return;
    here.setAttribute('aria-current', 'step');
    const { x, width, y } = here.querySelector('.hit').attributes;
    const body = host.querySelector('.walk-body');
    const column = { class: 'here-step', x: x.value, width: width.value };
    body.append(made('rect', { ...column, y: 0, height: body.getAttribute('height') }));
    host.querySelector('.walk-head').append(made('rect', { ...column, y: y.value, height: 32 }));
    bringIntoView(Number(x.value), Number(width.value));
  }

  function bringIntoView(x, width) {
    const frame = host.querySelector('.walk-frame');
    const room = frame.clientWidth - host.querySelector('.walk-names').clientWidth;
    if (x < frame.scrollLeft || x + width > frame.scrollLeft + room) frame.scrollLeft = x - room / 3;
  }

  host.addEventListener('keydown', move);
  host.addEventListener('focusin', ({ target }) => {
    const cell = target.closest('[aria-colindex]');
    if (cell !== null) putCursor(cell.closest('.row, .head'), columnOf(cell), false);
    tell(target);
  });
  host.addEventListener('pointerover', ({ target }) => tell(target));
  return { shown, showCaret, hadFocus: () => host.contains(document.activeElement), focus: () => putCursor(rowAt(), at.column, true) };
};
`;
