/** The language server for an editor that runs it as a process of its own. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { clientDisk } from './client-sessions.ts';
import { framingWatch } from './framing.ts';
import { inTurn } from './lifecycle.ts';
import type { Platform } from './open-sessions.ts';
import { serve } from './server.ts';

export function serveStdio(disk: Pick<Platform, 'filesFor' | 'sessionsBelow'>): void {
  endWhereNothingIsUnderstood();
  const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout, {
    messageStrategy: inTurn(),
  });
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

/** An editor that is told why its server ended can start another; one that waits cannot. */
function endWhereNothingIsUnderstood(): void {
  const watch = framingWatch();
  process.stdin.on('data', (piece: Buffer) => {
    const broken = watch(piece);
    if (broken === null) return;
    process.stderr.write(`tribrach: the connection ends, since ${broken}\n`);
    process.exit(1);
  });
}
