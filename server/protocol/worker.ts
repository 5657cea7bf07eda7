/** The language server in a worker of a browser, where no disk is: files come from the editor. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { clientDisk } from './client-sessions.ts';
import { inTurn } from './lifecycle.ts';
import { serve } from './server.ts';

declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self), {
  messageStrategy: inTurn(),
});
const { files, sessionsBelow, reading } = clientDisk(
  (method, asked) => connection.sendRequest(method, asked),
  false,
);
serve(connection, {
  filesFor: () => files,
  sessionsBelow,
  reading,
  later: (task, milliseconds) => void setTimeout(task, milliseconds),
  now: () => performance.now(),
});
