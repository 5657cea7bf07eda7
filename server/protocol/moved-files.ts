/** Before files are renamed or moved in the editor: the sessions that name them are made to name them so. */
import type { Connection, FileOperationRegistrationOptions, WorkspaceEdit } from 'vscode-languageserver';
import { namesAfter } from '../features/moved-files.ts';
import { pathOf } from './addresses.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toWorkspaceEdit } from './to-protocol.ts';

/** Any file or folder may be one that a session names, or that it lies in. */
export const MOVES: FileOperationRegistrationOptions = { filters: [{ pattern: { glob: '**/*' } }] };

export function answerMoves(connection: Connection, sessions: OpenSessions): void {
  connection.workspace.onWillRenameFiles(async ({ files }): Promise<WorkspaceEdit | null> => {
    const moves = files.map(({ oldUri, newUri }) => ({ from: pathOf(oldUri), to: pathOf(newUri) }));
    const changes = namesAfter(
      (await sessions.everySession()).map(({ document }) => document),
      moves,
    );
    return changes.length > 0 ? toWorkspaceEdit(sessions, changes) : null;
  });
}
