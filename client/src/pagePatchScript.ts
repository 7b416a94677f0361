/**
 * What runs in the page of a sheet to change it: only what differs is touched, so that the reader's place, selection and
 * focus are kept. It is a text because it runs in the page and not in the extension.
 */
export const PAGE_PATCH_SCRIPT = `
const PUT_BY_THE_PAGE = ['aria-current', 'data-source-offset', 'data-source-uri', 'tabindex'];

// Makes one element what another is.
function patch(old, next) {
  if (old.isEqualNode(next)) return old;
  if (old.nodeName !== next.nodeName) {
    old.replaceWith(next);
    return next;
  }
  if (old.nodeType !== Node.ELEMENT_NODE) {
    old.nodeValue = next.nodeValue;
    return old;
  }
  patchAttributes(old, next);
  patchChildren(old, next);
  return old;
}

function patchAttributes(old, next) {
  for (const { name, value } of [...next.attributes]) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  for (const { name } of [...old.attributes]) {
    if (!next.hasAttribute(name) && !PUT_BY_THE_PAGE.includes(name)) old.removeAttribute(name);
  }
}

function patchChildren(old, next) {
  let at = old.firstChild;
  for (const child of [...next.childNodes]) {
    const same = partner(old, at, child);
    if (same === null) {
      old.insertBefore(child, at);
      continue;
    }
    if (same !== at) old.insertBefore(same, at);
    at = patch(same, child).nextSibling;
  }
  while (at !== null) {
    const gone = at;
    at = at.nextSibling;
    gone.remove();
  }
}

// What a child was before: the one of its id, or else the one in its place.
function partner(old, at, child) {
  if (child.id) return [...old.children].find((one) => one.id === child.id) ?? null;
  return at === null || at.id ? null : at;
}

// A page that is held in pieces, each known by its key. An element that has not changed is not even looked at: a sheet may
// have thousands of them.
const patchedPage = (host) => {
  'use strict';
  let version;
  // Each piece and group by its key, and the keys of the parts of each group in their order; those of the page by ''.
  const pieces = new Map();
  const orders = new Map();
  let gone = [];
  let isReordered = false;
  let steps = [];
  let sources = [];
  const template = document.createElement('template');

  function parsed(html) {
    template.innerHTML = html;
    return document.adoptNode(template.content).firstElementChild;
  }

  function show(page) {
    if (page.since !== undefined && page.since !== version) return false;
    version = page.version;
    place(host, '', page.blocks);
    forget();
    const { same, between, moved, by } = page.sources;
    const behind = moved === 0 ? [] : sources.slice(-moved).map((offset) => offset + by);
    sources = [...sources.slice(0, same), ...between, ...behind];
    if (isReordered) findSteps();
    return true;
  }

  function findSteps() {
    isReordered = false;
    steps = [...host.querySelectorAll('section.step')];
    for (const step of steps) if (step.tabIndex !== 0) step.tabIndex = 0;
  }

  function place(parent, group, parts) {
    const before = orders.get(group) ?? [];
    const changed = new Map();
    const after = parts.flatMap((part) => {
      if (part.kept !== undefined) return before.slice(part.from, part.from + part.kept);
      changed.set(part.key, part);
      return [part.key];
    });
    orders.set(group, after);
    if (after.length !== before.length || after.some((key, at) => key !== before[at])) putInOrder(parent, before, after, changed);
    else for (const block of changed.values()) made(block);
  }

  function putInOrder(parent, before, after, changed) {
    isReordered = true;
    const wanted = new Set(after);
    for (const key of before) if (!wanted.has(key)) letGo(key, parent);
    let at = parent.firstElementChild;
    for (const key of after) {
      const known = pieces.get(key);
      const element = changed.has(key) ? made(changed.get(key)) : known;
      // It may have taken the place of the one that was here.
      if (known === at) at = element;
      if (element === at) at = at.nextElementSibling;
      else parent.insertBefore(element, at);
    }
    while (at !== null) {
      const extra = at;
      at = at.nextElementSibling;
      extra.remove();
    }
  }

  // What stood here may have been taken to another place already, or be wanted there yet.
  function letGo(key, parent) {
    const element = pieces.get(key);
    if (element.parentNode === parent) element.remove();
    gone.push(key);
  }

  function forget() {
    for (const key of gone) {
      if (pieces.get(key)?.isConnected !== false) continue;
      pieces.delete(key);
      gone.push(...(orders.get(key) ?? []));
      orders.delete(key);
    }
    gone = [];
  }

  // The element of a block as it is now.
  function made(block) {
    const known = pieces.get(block.key);
    const element = block.parts === undefined ? pieceOf(block, known) : groupOf(block, known);
    pieces.set(block.key, element);
    if (block.parts !== undefined) place(element, block.key, block.parts);
    return element;
  }

  function pieceOf({ html }, known) {
    if (html === undefined) return known;
    const next = parsed(html);
    return known === undefined ? next : patch(known, next);
  }

  function groupOf({ element: name, attributes }, known) {
    const element = known?.localName === name ? known : document.createElement(name);
    if (known !== undefined && known !== element) known.replaceWith(element);
    for (const [attribute, value] of Object.entries(attributes)) {
      if (element.getAttribute(attribute) !== value) element.setAttribute(attribute, value);
    }
    return element;
  }

  // Where a step stands in the source.
  function sourceOf(step) {
    return sources[steps.indexOf(step)];
  }

  // The step at a place of the source is the last one that begins before it.
  function stepAt(offset) {
    return steps[sources.findLastIndex((source) => source <= offset)] ?? null;
  }

  return { show, sourceOf, stepAt };
};
`;
