/** The language server for an editor that runs it as a process of its own. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { clientDisk } from './client-sessions.ts';
import type { Platform } from './open-sessions.ts';
import { serve } from './server.ts';

export function serveStdio(disk: Pick<Platform, 'filesFor' | 'sessionsBelow'>): void {
  const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
  const { files, sessionsBelow, reading } = clientDisk(
    (method, asked) => connection.sendRequest(method, asked),
    true,
  );
  serve(connection, {
    // What does not lie on the disk is known to the editor alone.
    filesFor: (path, folders) => (path.startsWith('/') ? disk.filesFor(path, folders) : files),
    sessionsBelow: (folder) => (folder.startsWith('/') ? disk : { sessionsBelow }).sessionsBelow(folder),
    reading,
    later: (task, milliseconds) =>
      void (milliseconds > 0 ? setTimeout(task, milliseconds) : setImmediate(task)),
    now: () => performance.now(),
  });
}
