import { followPath } from '../../analysis/links';
import type { Figure, ProcedureFigure } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { FigureImage, SheetFigure } from '../sheet';
import type { BuildContext } from './buildContext';

/** The figures that are named, as the sheet shows them; one whose picture is missing still shows its words. */
export function figuresOf(refs: readonly (Ref | undefined)[], context: BuildContext): SheetFigure[] {
  return refs.flatMap((ref) => (ref === undefined ? [] : [figureOf(ref.id, context)]));
}

function figureOf(id: string, context: BuildContext): SheetFigure {
  const { procedure, names } = context;
  const own = procedure.value.figures?.find((one) => one.id.id === id);
  const shared = procedure.family?.value.figures?.find((one) => one.id.id === id);
  const figure = (own ?? shared)?.value;
  const owner = own === undefined ? procedure.family?.document : procedure.document;
  const caption = names.written(figure?.caption);
  const alt = names.written(figure?.alt) ?? caption ?? id;
  const image = imageOf(figure, owner, context);
  const words = figure?.alt ?? figure?.caption;
  const lang = words && names.otherLanguageOf(words);
  return { id, alt, ...(caption === undefined ? {} : { caption }), image, ...(lang === undefined ? {} : { lang }) };
}

function imageOf(
  figure: Figure | ProcedureFigure | undefined,
  owner: SyntaxDocument | undefined,
  { procedure, options }: BuildContext,
): FigureImage {
  const name = figure?.file?.path ?? '';
  const none: FigureImage = { kind: 'file', name, mediaType: 'image/png' };
  if (figure?.file === undefined || owner === undefined) return none;
  const target = followPath(procedure.snapshot, owner.uri, figure.file);
  const svg = target.is === 'file' ? target.text : 'uri' in target ? options.readFigure?.(target.uri) : undefined;
  return svg?.includes('<svg') === true ? { kind: 'svg', svg } : none;
}
