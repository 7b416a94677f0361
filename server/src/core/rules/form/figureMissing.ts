import { followPath } from '../../analysis/links';
import { defineRule } from '../defineRule';
import { inFamily, withFiles } from '../examples';

const SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0h10v10z"/></svg>';
const SHOWN = 'figures:\n  section: { file: ../figures/section.svg, alt: The cover in section }';

export const figureMissing = defineRule({
  id: 'figure-missing',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'The file of a figure is not there, cannot be read, or is no SVG drawing.',
    why: 'The sheet has an empty frame where the fitter should see which way the part faces.',
    wrong: inFamily(SHOWN),
    right: withFiles(inFamily(SHOWN), { 'figures/section.svg': SVG }),
  },
  messages: {
    missing: (path: string) =>
      `No file is at "${path}"; write the path of the figure as it leads there from this document`,
    unreadable: (path: string, reason: string) => `The file at "${path}" cannot be read: ${reason}`,
    noSvgName: (path: string) => `"${path}" is not named *.svg; a figure is an SVG drawing, which stays sharp in print`,
    noSvg: (path: string) => `The file at "${path}" holds no SVG drawing; save the figure as SVG`,
    outside: (path: string) => `"${path}" leads out of the folder that is open; put the figure inside it`,
    notRelative: (path: string) =>
      `"${path}" is no path from this document; write one like ../figures/name.svg, with forward slashes`,
  },
  check: {
    path(path, ctx) {
      if (path.to !== 'figure') return;
      const { node, path: text } = path;
      const about = { about: [text] };
      const target = followPath(ctx.snapshot, ctx.document.uri, path);
      switch (target.is) {
        case 'missing':
          return ctx.report(node, 'missing', [text], about);
        case 'unreadable':
          return ctx.report(node, 'unreadable', [text, target.reason.replace(/\.$/, '')], about);
        case 'wrong-kind':
          return ctx.report(node, 'noSvgName', [text], about);
        case 'outside':
          return ctx.report(node, 'outside', [text], about);
        case 'not-relative':
          return ctx.report(node, 'notRelative', [text], about);
        case 'file':
          return /<svg[\s>/]|<\w+:svg[\s>]/i.test(target.text) ? undefined : ctx.report(node, 'noSvg', [text], about);
        default:
          return;
      }
    },
  },
});
