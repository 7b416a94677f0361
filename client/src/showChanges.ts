import * as vscode from 'vscode';
import { COMPARE, type CompareResult, SOURCES } from '../../server/src/lsp/protocol';
import { changesPage } from './changesPage';
import { type Earlier, GitHistory } from './gitHistory';
import type { LanguageServer } from './languageServer';

/** Asks since when, and shows beside the text what has changed; from then on the text and its sheet show it too. */
export async function showChangesSince(
  server: LanguageServer,
  uri: vscode.Uri,
  ref?: string,
): Promise<CompareResult | undefined> {
  const history = await GitHistory.of(uri);
  if (history === undefined) {
    void vscode.window.showInformationMessage(
      vscode.l10n.t('This file is in no Git repository that the editor knows, so there is nothing to compare it with.'),
    );
    return undefined;
  }
  const since = ref === undefined ? await pick(history, uri) : { ref, label: ref };
  if (since === undefined) return undefined;
  const options = {
    location: vscode.ProgressLocation.Notification,
    title: vscode.l10n.t('Comparing with {0}', since.label),
  };
  const result = await vscode.window.withProgress(options, () => compare(server, history, uri, since));
  if (result !== undefined) show(result, history, since);
  return result;
}

async function pick(history: GitHistory, uri: vscode.Uri): Promise<Earlier | undefined> {
  const choices = await history.choices(uri);
  return vscode.window.showQuickPick(
    choices.map((one) => ({ ...one, description: one.detail, detail: '' })),
    { title: vscode.l10n.t('Show what changed since'), matchOnDescription: true },
  );
}

async function compare(
  server: LanguageServer,
  history: GitHistory,
  uri: vscode.Uri,
  { ref, label }: Earlier,
): Promise<CompareResult | undefined> {
  const { uris } = await server.ask(SOURCES, { uri: uri.toString() });
  const read = await Promise.all(
    uris.map(async (one) => ({ uri: one, text: await history.text(vscode.Uri.parse(one), ref) })),
  );
  const texts = read.flatMap(({ uri: one, text }) => (text === undefined ? [] : [{ uri: one, text }]));
  if (!texts.some((one) => one.uri === uri.toString())) {
    void vscode.window.showInformationMessage(vscode.l10n.t('This procedure is not in {0}.', label));
    return undefined;
  }
  return server.ask(COMPARE, { uri: uri.toString(), label, texts });
}

/** The page of the changes; a click on a place opens it, on either side. */
function show({ body, style, sum }: CompareResult, history: GitHistory, { ref, label }: Earlier): void {
  const panel = vscode.window.createWebviewPanel(
    'witnessmark.changes',
    vscode.l10n.t('Changed since {0}', label),
    { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
    { enableScripts: true, localResourceRoots: [] },
  );
  panel.webview.onDidReceiveMessage((message: unknown) => {
    const place = placeOf(message);
    if (place === undefined) return;
    const uri = vscode.Uri.parse(place.uri);
    void open(place.side === 'before' ? history.uriOf(uri, ref) : uri, place.start);
  });
  panel.webview.html = changesPage(body, style, sum);
}

interface Place {
  readonly side: 'before' | 'after';
  readonly uri: string;
  readonly start: number;
}

/** What a page says is looked at before it is believed. */
function placeOf(message: unknown): Place | undefined {
  const { side, uri, start } = (message ?? {}) as Record<string, unknown>;
  if ((side !== 'before' && side !== 'after') || typeof uri !== 'string' || typeof start !== 'number') return undefined;
  return { side, uri, start };
}

async function open(uri: vscode.Uri, start: number): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const position = document.positionAt(start);
  await vscode.window.showTextDocument(document, {
    viewColumn: vscode.ViewColumn.One,
    selection: new vscode.Range(position, position),
  });
}

/** Compares no more: text and sheet look as they always do. */
export async function stopComparing(server: LanguageServer, uri: vscode.Uri): Promise<void> {
  await server.ask(COMPARE, { uri: uri.toString(), label: '' });
}
