import type { Connection } from 'vscode-languageserver';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';
import type {
  BuildsParams,
  ChartHtmlParams,
  RequestName,
  SheetHtmlParams,
  SheetPagesResult,
  SheetPatchParams,
} from '../protocol';
import {
  BUILDS,
  CHART_HTML,
  PRINT_SHEET,
  type PrintSheetParams,
  type PrintSheetResult,
  SHEET_HTML,
  SHEET_PAGES,
  SHEET_PATCH,
} from '../protocol';
import { SentPages } from '../sentPages';
import type { Session } from '../session';
import {
  askForSheet,
  buildsOfProcedure,
  chartPage,
  errorsIn,
  type ShownSheet,
  sheetPage,
  sheetPieces,
  sheetShown,
} from '../sheetService';

/** The step sheet: its builds, its page beside the text, its print; and the chart of the walk. Requests of our own, for our own client. */
export const sheets: Feature = {
  register(connection, session) {
    const checked = (uri: string) => session.checked.of(toCoreUri(uri));
    answer(connection, session, BUILDS, async ({ uri }: BuildsParams) => buildsOfProcedure(await checked(uri)));
    answer(connection, session, SHEET_HTML, async ({ uri, build, paper }: SheetHtmlParams) => {
      session.sheetsShown.add(toCoreUri(uri));
      return sheetPage(await checked(uri), build, paper, session.comparisons);
    });
    const sent = new SentPages();
    answer(connection, session, SHEET_PATCH, async ({ uri, build, paper, since }: SheetPatchParams) => {
      session.sheetsShown.add(toCoreUri(uri));
      const { page, ...shown } = sheetPieces(await checked(uri), build, paper, session.comparisons);
      return { ...shown, page: sent.patch(toCoreUri(uri), page, since) };
    });
    answer(connection, session, SHEET_PAGES, async ({ uri, build, paper }: SheetHtmlParams) => {
      session.sheetsShown.add(toCoreUri(uri));
      return printedPages(sheetShown(await checked(uri), build, paper, session.comparisons), session);
    });
    answer(connection, session, CHART_HTML, async ({ uri, build }: ChartHtmlParams) => {
      session.sheetsShown.add(toCoreUri(uri));
      return chartPage(await checked(uri), build);
    });
    answer(connection, session, PRINT_SHEET, (params: PrintSheetParams) => print(session, params));
  },
};

function answer<Params, Result>(
  connection: Connection,
  session: Session,
  request: RequestName<Params, Result>,
  work: (params: Params) => Promise<Result>,
): void {
  connection.onRequest(request.method, (params: Params, token) => session.answer(token, () => work(params)));
}

/** The pages with a mark for each step; where they cannot be drawn, why. */
async function printedPages({ asked, ...shown }: ShownSheet, { host }: Session): Promise<SheetPagesResult> {
  const none = { ...shown, pages: [], marks: [] };
  if (asked.is === 'none') return { ...none, why: asked.why };
  const drawn = await host.draw(asked.sheet);
  if (drawn.is === 'refused') return { ...none, why: `The pages cannot be shown. ${drawn.why}` };
  const steps = asked.sheet.phases.flatMap((phase) => phase.steps);
  const byNumber = new Map(steps.map((step) => [step.number, step]));
  const marks = drawn.steps.flatMap((place) => {
    const step = byNumber.get(place.number);
    const offset = asked.sheet.source?.offsets[place.number - 1] ?? 0;
    return step === undefined ? [] : [{ ...place, title: step.title, offset }];
  });
  return { ...shown, pages: drawn.pages, marks };
}

async function print(session: Session, params: PrintSheetParams): Promise<PrintSheetResult> {
  const checked = await session.checked.of(toCoreUri(params.uri));
  const asked = askForSheet(checked, params.build, params.paper, session.comparisons);
  if (asked.is === 'none') return { is: 'refused', why: asked.why };
  const outcome = await session.host.print(asked.sheet, toCoreUri(params.target), params.variant ?? 'print');
  return outcome.is === 'refused' ? outcome : { is: 'printed', build: asked.build, errors: errorsIn(checked) };
}
