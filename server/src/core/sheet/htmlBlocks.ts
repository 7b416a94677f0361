import { formsOf } from './forms';
import { backBlocks, footerHtml } from './htmlBack';
import { frontBlocks, headerHtml } from './htmlFront';
import { type HtmlBlock, type HtmlGroup, piecesOf, withOwnKeys } from './htmlPieces';
import { findingsHtml, phaseBlocks, phaseId } from './htmlSteps';
import type { HtmlContext } from './htmlText';

export type { HtmlBlock } from './htmlPieces';

/** The body of the page, piece by piece: a preview replaces only those that have changed. */
export function bodyBlocks(context: HtmlContext): HtmlBlock[] {
  const { sheet, labels, options } = context;
  const forms = formsOf(sheet, labels);
  const findings = options.mode === 'preview' ? findingsHtml(sheet.findings, context) : undefined;
  const parts = [
    ...piecesOf([findings], 'front'),
    ...frontBlocks(forms, context),
    ...phaseGroups(context),
    ...backBlocks(forms, context),
  ];
  return withOwnKeys([
    { key: 'header', html: headerHtml(context) },
    { key: 'main', element: 'main', attributes: {}, parts },
    { key: 'footer', html: footerHtml(context) },
  ]);
}

function phaseGroups(context: HtmlContext): HtmlGroup[] {
  let firstStep = 0;
  return context.sheet.phases.map((phase, index) => {
    const key = phaseId(index + 1);
    const parts = phaseBlocks(phase, { number: index + 1, firstStep }, context);
    firstStep += phase.steps.length;
    return { key, element: 'section', attributes: { class: 'phase', 'aria-labelledby': key }, parts };
  });
}
