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

// A page that is held in pieces, each known by its key.
const patchedPage = (host) => {
  'use strict';
  let version;
  let pieces = new Map();
  let steps = [];
  const template = document.createElement('template');

  function parsed(html) {
    template.innerHTML = html;
    return document.adoptNode(template.content).firstElementChild;
  }

  function show(page) {
    if (page.since !== undefined && page.since !== version) return false;
    version = page.version;
    const next = new Map();
    const wanted = new Set(keysOf(page.blocks));
    for (const [key, element] of pieces) if (!wanted.has(key)) element.remove();
    place(host, page.blocks, next);
    pieces = next;
    steps = [...host.querySelectorAll('section.step')];
    steps.forEach((step, at) => {
      if (step.tabIndex !== 0) step.tabIndex = 0;
      const offset = String(page.sources[at]);
      if (step.dataset.sourceOffset !== offset) step.dataset.sourceOffset = offset;
    });
    return true;
  }

  function keysOf(blocks) {
    return blocks.flatMap((block) => [block.key, ...keysOf(block.parts ?? [])]);
  }

  function place(parent, blocks, next) {
    let at = parent.firstElementChild;
    for (const block of blocks) {
      const known = pieces.get(block.key);
      const element = elementOf(block, known);
      next.set(block.key, element);
      // It may have taken the place of the one that was here.
      if (known === at) at = element;
      if (element === at) at = at.nextElementSibling;
      else parent.insertBefore(element, at);
      if (block.parts !== undefined) place(element, block.parts, next);
    }
    while (at !== null) {
      const gone = at;
      at = at.nextElementSibling;
      gone.remove();
    }
  }

  function elementOf(block, known) {
    if (block.parts !== undefined) {
      const element = known ?? document.createElement(block.element);
      for (const [name, value] of Object.entries(block.attributes)) {
        if (element.getAttribute(name) !== value) element.setAttribute(name, value);
      }
      return element;
    }
    if (block.html === undefined) return known;
    const made = parsed(block.html);
    return known === undefined ? made : patch(known, made);
  }

  return { show, steps: () => steps };
};
`;
