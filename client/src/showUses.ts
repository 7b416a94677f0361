import * as vscode from 'vscode';

/** A place as the protocol writes it. */
interface WirePosition {
  readonly line: number;
  readonly character: number;
}
interface WireLocation {
  readonly uri: string;
  readonly range: { readonly start: WirePosition; readonly end: WirePosition };
}

/** Shows the places that a lens counts. The server knows the protocol's plain data only, the editor wants its own objects. */
export async function showUses(uri: string, position: WirePosition, locations: readonly WireLocation[]): Promise<void> {
  await vscode.commands.executeCommand(
    'editor.action.showReferences',
    vscode.Uri.parse(uri),
    positionOf(position),
    locations.map(
      ({ uri: where, range }) =>
        new vscode.Location(vscode.Uri.parse(where), new vscode.Range(positionOf(range.start), positionOf(range.end))),
    ),
  );
}

function positionOf({ line, character }: WirePosition): vscode.Position {
  return new vscode.Position(line, character);
}
