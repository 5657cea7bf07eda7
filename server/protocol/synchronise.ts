/** Texts as the editor has them, files that change on the disk, and settings. */
import {
  DidChangeWatchedFilesNotification,
  DidChangeWorkspaceFoldersNotification,
  type ClientCapabilities,
  type Connection,
  type InitializeParams,
} from 'vscode-languageserver';
import type { InlayKind } from '../features/inlays.ts';
import { pathOf } from './addresses.ts';
import type { OpenSessions } from './open-sessions.ts';

export function hearTexts(
  connection: Connection,
  sessions: OpenSessions,
  heard: { opened(address: string): void; closed(address: string): void },
): void {
  connection.onDidOpenTextDocument(({ textDocument: { uri, version, text } }) => {
    sessions.open(uri, version, text);
    heard.opened(uri);
  });
  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) =>
    sessions.change(uri, version, contentChanges),
  );
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    sessions.close(uri);
    void connection.sendDiagnostics({ uri, diagnostics: [] });
    heard.closed(uri);
  });
}

/** Any file may be one that a session names, so all are watched and those that none has read are passed over. */
export function hearFiles(
  connection: Connection,
  sessions: OpenSessions,
  client: ClientCapabilities,
  changed: (paths: readonly string[]) => void,
): void {
  connection.onDidChangeWatchedFiles(({ changes }) => {
    const paths = changes.map(({ uri }) => pathOf(uri));
    sessions.filesChanged(paths);
    changed(paths);
  });
  if (client.workspace?.didChangeWatchedFiles?.dynamicRegistration !== true) return;
  connection.onInitialized(() => {
    const watchers = [{ globPattern: '**/*' }];
    void connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
  });
}

/** Folders that are added to the workspace, or taken out of it, while it is open. */
export function hearFolders(
  connection: Connection,
  sessions: OpenSessions,
  { workspaceFolders, rootUri }: InitializeParams,
): void {
  const known = new Set(
    (workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : [])).map(folderOf),
  );
  sessions.setFolders([...known]);
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event }) => {
    for (const { uri } of event.removed) known.delete(folderOf(uri));
    for (const { uri } of event.added) known.add(folderOf(uri));
    sessions.setFolders([...known]);
  });
}

const folderOf = (address: string) => pathOf(address).replace(/\/+$/, '');

/** Answers whether a kind of inlay is wanted; all are until a setting says otherwise. */
export function hearSettings(connection: Connection, changed: () => void): (kind: InlayKind) => boolean {
  let inlays: Readonly<Record<string, unknown>> = {};
  connection.onDidChangeConfiguration((change) => {
    inlays = recordIn(recordIn(recordIn(change.settings)['tribrach'])['inlays']);
    changed();
  });
  return (kind) => inlays[kind] !== false;
}

const recordIn = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
