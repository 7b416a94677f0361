import {
  CodeLensRefreshRequest,
  InlayHintRefreshRequest,
  type RequestType0,
  SemanticTokensRefreshRequest,
} from 'vscode-languageserver';
import type { Session } from './session';

type Refresh = RequestType0<void, void>;

/**
 * Asks the client to ask again for what it draws into the text, since it may look different without a key having been
 * pressed there. A client that cannot be asked asks by itself at the next key.
 */
export function refreshViews(session: Session): void {
  const { workspace } = session.client;
  const wanted: [boolean | undefined, Refresh][] = [
    [workspace?.inlayHint?.refreshSupport, InlayHintRefreshRequest.type],
    [workspace?.codeLens?.refreshSupport, CodeLensRefreshRequest.type],
    [workspace?.semanticTokens?.refreshSupport, SemanticTokensRefreshRequest.type],
  ];
  for (const [isUnderstood, request] of wanted) if (isUnderstood === true) refresh(session, request);
}

/** Nobody waits for the answer, and a client that refuses is let be. */
export function refresh(session: Session, request: Refresh): void {
  void session.hear(async () => {
    await session.connection.sendRequest(request);
  });
}
