/** When what is shown of a session may have changed: a session's text, findings, or the server itself. */
import { languages, workspace, type Disposable } from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import { isSession } from './in-front.ts';

/** A session may use others, so that any of them can change what is shown of it. */
export function whenSessionsChange(client: BaseLanguageClient, refresh: () => void): readonly Disposable[] {
  return [
    workspace.onDidChangeTextDocument(({ document }) => {
      if (isSession(document)) refresh();
    }),
    languages.onDidChangeDiagnostics(({ uris }) => {
      const changed = new Set(uris.map(String));
      if (workspace.textDocuments.some((one) => isSession(one) && changed.has(one.uri.toString()))) refresh();
    }),
    client.onDidChangeState(({ newState }) => {
      if (newState !== State.Starting) refresh();
    }),
  ];
}
