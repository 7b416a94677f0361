/**
 * What this server and its own client say to each other beyond the Language Server Protocol. Both sides import this one
 * file, so it knows neither Node nor the editor. Every `uri` is a string as the protocol writes it: percent-encoded.
 */

/** The name of a request with the types that belong to it; the types exist while compiling only. */
export interface RequestName<Params, Result> {
  readonly method: string;
  readonly types?: (params: Params) => Result;
}

export interface NotificationName<Params> {
  readonly method: string;
  readonly types?: (params: Params) => void;
}

/** One build as a person chooses it. */
export interface BuildChoice {
  /** As on a command line: `v4-28r,cover-44,wheel-44`. */
  readonly id: string;
  /** For people: `V4-28R + compressor cover bored for the 44 mm wheel`. */
  readonly label: string;
}

export interface BuildsParams {
  readonly uri: string;
}

export interface BuildsResult {
  /** The plainest first. */
  readonly builds: readonly BuildChoice[];
  /** How many there are; more than are listed where a family has very many. */
  readonly count: number;
}

/** Asks how many builds have no error; who asks is told by `witnessmark/sheetChanged` when that may have changed. */
export interface BuildsPassingParams {
  readonly uri: string;
}

/** Both undefined where the builds are not known, because the family cannot be read. */
export interface BuildsPassingResult {
  readonly count: number | undefined;
  readonly passing: number | undefined;
}

export interface FailingBuild extends BuildChoice {
  /** The first error in the text that holds for the build, and where it stands, in UTF-16 code units. */
  readonly error: { readonly message: string; readonly start: number; readonly end: number };
}

export interface FailingBuildsResult {
  /** The plainest first. */
  readonly builds: readonly FailingBuild[];
  /** How many there are; more than are listed where a family has very many. */
  readonly count: number;
}

export interface SheetHtmlParams {
  readonly uri: string;
  /** Id of a build; the first one where it is absent or no longer exists. */
  readonly build?: string;
  /** Paper where the settings document names none. */
  readonly paper?: 'a4' | 'letter';
}

export interface SheetHtmlResult extends BuildsResult {
  /** A whole page. Its steps carry `data-source-offset`: where the step stands, in UTF-16 code units. */
  readonly html: string;
  /** The build that is shown; absent where none exists. */
  readonly build?: BuildChoice | undefined;
  /** How many errors stand. */
  readonly errors: number;
}

/** Asks for the page as a change of the one that was answered last. */
export interface SheetPatchParams extends SheetHtmlParams {
  /** The version of the page that the reader has; absent where it has none. */
  readonly since?: number;
}

/**
 * A piece of a page. Its `key` stays the same as long as it is about the same thing. A piece without `html` is the one that
 * the reader has by that key; one with `parts` is an element that holds them.
 */
export type PageBlock =
  | { readonly key: string; readonly html?: string }
  | {
      readonly key: string;
      readonly element: 'main' | 'section' | 'div' | 'table' | 'tbody';
      readonly attributes: Readonly<Record<string, string>>;
      readonly parts: readonly PagePart[];
    };

/** So many parts that the element of this key has in the reader's page, from a place on, just as they are there. */
export interface KeptParts {
  readonly kept: number;
  /** Counted from 0. */
  readonly from: number;
}

export type PagePart = PageBlock | KeptParts;

/** Where each step stands in the source, in UTF-16 code units, in the order of the sheet: what has changed of it. */
export interface SourcesPatch {
  /** So many at the beginning are as the reader has them. */
  readonly same: number;
  /** What stands between these and the last ones. */
  readonly between: readonly number[];
  /** So many at the end are those at the end of the reader's, each moved by as much. */
  readonly moved: number;
  readonly by: number;
}

export interface PagePatch {
  readonly version: number;
  /** The version that pieces without markup are taken from; absent where every piece has its own. */
  readonly since?: number;
  /** Tag of the language that the page is in. */
  readonly language: string;
  readonly bodyClass: string;
  /** Absent where it is as it was. */
  readonly style?: string;
  /** The whole body, in its order. */
  readonly blocks: readonly PagePart[];
  readonly sources: SourcesPatch;
}

export interface SheetPatchResult extends BuildsResult {
  readonly page: PagePatch;
  /** The build that is shown; absent where none exists. */
  readonly build?: BuildChoice | undefined;
  /** How many errors stand. */
  readonly errors: number;
}

/** One printed page as a drawing, its size in points. */
export interface SheetPagePicture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** Where a step is on the printed pages, and where it stands in the source. */
export interface StepMark {
  readonly number: number;
  readonly title: string;
  /** Counted from 1. */
  readonly page: number;
  /** How far down on the page it begins, in points. */
  readonly y: number;
  /** In UTF-16 code units. */
  readonly offset: number;
}

export interface SheetPagesResult extends BuildsResult {
  /** None where they cannot be drawn; `why` then says it in words. */
  readonly pages: readonly SheetPagePicture[];
  readonly marks: readonly StepMark[];
  readonly why?: string;
  readonly build?: BuildChoice | undefined;
  readonly errors: number;
}

export interface ChartHtmlParams {
  readonly uri: string;
  /** Id of a build; the first one where it is absent or no longer exists. */
  readonly build?: string;
}

/**
 * A page with the parts of the build against the steps. Its steps and cells carry `data-source-offset` as those of a
 * sheet do, and `data-words` and `data-standing`: what a cell without anything in it has to say.
 */
export type ChartHtmlResult = SheetHtmlResult;

export interface PrintSheetParams {
  readonly uri: string;
  readonly build?: string;
  readonly paper?: 'a4' | 'letter';
  /** The file to write, as a URI. */
  readonly target: string;
  /** `fillable`: with a field for every box and blank. Left out, it is for paper. */
  readonly variant?: 'print' | 'fillable';
}

export type PrintSheetResult =
  | { readonly is: 'printed'; readonly build: BuildChoice; readonly errors: number }
  | { readonly is: 'refused'; readonly why: string };

export interface SourcesParams {
  readonly uri: string;
}

/** Everything that a procedure is printed from: itself, what it links to, settings; also what is not there yet. */
export interface SourcesResult {
  readonly uris: readonly string[];
}

/** Compares a procedure with an earlier text from now on; without `texts` it is compared no more. */
export interface CompareParams {
  readonly uri: string;
  /** What a person calls the earlier text, for example a revision of git. */
  readonly label: string;
  readonly texts?: readonly { readonly uri: string; readonly text: string }[];
}

/** What has changed, for a page that the client frames: its content, what it looks like, and a sentence about it. */
export interface CompareResult {
  /** Places in it are buttons with `data-side`, `data-uri` and `data-start`, in UTF-16 code units. */
  readonly body: string;
  readonly style: string;
  readonly sum: string;
}

/** Said of every procedure whose sheet or passing builds were asked for: they may be different now. */
export interface SheetChangedParams {
  readonly uri: string;
}

export const BUILDS: RequestName<BuildsParams, BuildsResult> = { method: 'witnessmark/builds' };
export const BUILDS_PASSING: RequestName<BuildsPassingParams, BuildsPassingResult> = {
  method: 'witnessmark/buildsPassing',
};
export const FAILING_BUILDS: RequestName<BuildsParams, FailingBuildsResult> = { method: 'witnessmark/failingBuilds' };
export const SHEET_HTML: RequestName<SheetHtmlParams, SheetHtmlResult> = { method: 'witnessmark/sheetHtml' };
export const SHEET_PATCH: RequestName<SheetPatchParams, SheetPatchResult> = { method: 'witnessmark/sheetPatch' };
/** The pages as they are printed. */
export const SHEET_PAGES: RequestName<SheetHtmlParams, SheetPagesResult> = { method: 'witnessmark/sheetPages' };
export const CHART_HTML: RequestName<ChartHtmlParams, ChartHtmlResult> = { method: 'witnessmark/chartHtml' };
export const PRINT_SHEET: RequestName<PrintSheetParams, PrintSheetResult> = { method: 'witnessmark/printSheet' };
export const SOURCES: RequestName<SourcesParams, SourcesResult> = { method: 'witnessmark/sources' };
export const COMPARE: RequestName<CompareParams, CompareResult> = { method: 'witnessmark/compare' };
export const SHEET_CHANGED: NotificationName<SheetChangedParams> = { method: 'witnessmark/sheetChanged' };

/*
 * What the server asks of its client: files that the client alone can reach, since its file systems are not the
 * machine's. A server in a browser has no others.
 */

export interface ClientFileParams {
  readonly uri: string;
}

export type ClientTextResult =
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'missing' }
  | { readonly is: 'unreadable'; readonly reason: string };

export interface ClientFolderEntry {
  readonly name: string;
  readonly is: 'file' | 'folder';
}

/** Nothing where there is no such folder; links are left out. */
export interface ClientFolderResult {
  readonly entries: readonly ClientFolderEntry[];
}

export interface ClientWriteParams {
  readonly uri: string;
  /** The whole content, as the protocol's JSON can carry it. */
  readonly base64: string;
}

export type ClientWriteResult = { readonly is: 'written' } | { readonly is: 'refused'; readonly why: string };

export interface ProductFileParams {
  /** Path below the folder that the product is installed in. */
  readonly path: string;
}

/** Bytes as they are: between a page and its worker they need no JSON. */
export interface ProductFileResult {
  readonly bytes: Uint8Array;
}

export const CLIENT_TEXT: RequestName<ClientFileParams, ClientTextResult> = { method: 'witnessmark/clientText' };
export const CLIENT_FOLDER: RequestName<ClientFileParams, ClientFolderResult> = { method: 'witnessmark/clientFolder' };
export const CLIENT_WRITE: RequestName<ClientWriteParams, ClientWriteResult> = { method: 'witnessmark/clientWrite' };
/** Asked by a server in a browser only. */
export const PRODUCT_FILE: RequestName<ProductFileParams, ProductFileResult> = { method: 'witnessmark/productFile' };
