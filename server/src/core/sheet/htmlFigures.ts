import { el, escapeHtml, type Html, type HtmlContext, svgDataUrl } from './htmlText';
import type { SheetFigure } from './sheet';

/** A picture with its caption; its words stand in where it is not to be had. */
export function figureHtml(figure: SheetFigure, context: HtmlContext): Html {
  return el(
    'figure',
    {},
    pictureHtml(figure, context),
    figure.caption === undefined ? undefined : el('figcaption', { lang: figure.lang }, escapeHtml(figure.caption)),
  );
}

export function pictureHtml({ image, alt, lang }: SheetFigure, { options }: HtmlContext): Html {
  const url = image.kind === 'svg' ? svgDataUrl(image.svg) : options.figureUrl?.(image.name);
  if (url === undefined) return el('p', { class: 'no-picture', lang }, escapeHtml(alt));
  return el('img', { src: url, alt, lang });
}
