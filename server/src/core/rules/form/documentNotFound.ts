import { followPath } from '../../analysis/links';
import { type DocumentKind, filePatternOf } from '../../syntax/documentKind';
import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import { isOfOtherKind } from '../support/documentKinds';
import { replaceBy } from '../support/valueFixes';

const KINDS: Readonly<Record<string, string>> = { family: 'a family', kit: 'a kit', stores: 'stores' };

export const documentNotFound = defineRule({
  id: 'document-not-found',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A path that leads to no document, or to one of another kind.',
    why: 'Without its family, kit or stores a procedure cannot be checked: nothing says which torque, hand or part is right.',
    wrong: inHead(String.raw`kit: ..\kits\pellow-k1.kit.yaml`),
    right: inHead('kit: ../kits/pellow-k1.kit.yaml'),
  },
  messages: {
    missing: (path: string, kind: string) =>
      `No file is at "${path}"; write the path of ${kind} as it leads there from this document`,
    unreadable: (path: string, reason: string) => `The file at "${path}" cannot be read: ${reason}`,
    wrongKind: (path: string, found: string, kind: string, pattern: string) =>
      `"${path}" ${found}; here belongs ${kind}, named ${pattern}`,
    outside: (path: string) =>
      `"${path}" leads out of the folder that is open; open a folder that holds both, or move the file`,
    notRelative: (path: string) =>
      `"${path}" is no path from this document; write one like ../families/name.family.yaml, which holds on every computer`,
    backslash: (path: string) =>
      `"${path}" holds backslashes, which lead nowhere on other computers; write forward slashes`,
    none: (kind: string) => `The path of ${kind} is empty; write where it lies, seen from this document`,
  },
  check: {
    path(path, ctx) {
      const kind = KINDS[path.to];
      if (kind === undefined || isOfOtherKind(ctx.document)) return;
      const { path: text, node } = path;
      const about = { about: [text] };
      if (text.trim() === '') return ctx.report(node, 'none', [kind]);
      if (text.includes('\\') && !/^\\|^[a-z]:/i.test(text)) {
        const fixes = () => [replaceBy(node, text.replaceAll('\\', '/'))];
        return ctx.report(node, 'backslash', [text], { ...about, fixes });
      }
      const target = followPath(ctx.snapshot, ctx.document.uri, path);
      switch (target.is) {
        case 'missing':
          return ctx.report(node, 'missing', [text, kind], about);
        case 'unreadable':
          return ctx.report(node, 'unreadable', [text, target.reason.replace(/\.$/, '')], about);
        case 'wrong-kind': {
          const pattern = filePatternOf(path.to as DocumentKind);
          return ctx.report(node, 'wrongKind', [text, foundText(target.found), kind, pattern], about);
        }
        case 'outside':
          return ctx.report(node, 'outside', [text], about);
        case 'not-relative':
          return ctx.report(node, 'notRelative', [text], about);
        default:
          return;
      }
    },
  },
});

function foundText(found: DocumentKind | undefined): string {
  if (found === undefined) return 'is named like none of our documents';
  return `is named as ${KINDS[found] ?? (found === 'procedure' ? 'a procedure' : 'settings')}`;
}
