/** The language server for an editor that runs it as a process of its own. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import type { Platform } from './open-sessions.ts';
import { serve } from './server.ts';

export function serveStdio(disk: Pick<Platform, 'filesFor' | 'sessionsBelow'>): void {
  const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
  serve(connection, {
    ...disk,
    later: (task, milliseconds) =>
      void (milliseconds > 0 ? setTimeout(task, milliseconds) : setImmediate(task)),
    now: () => performance.now(),
  });
}
