/** The language server in a worker of a browser, where no disk is: files that a session names come from the editor. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { clientFiles, READ_FILE } from './client-files.ts';
import { serve } from './server.ts';

declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
const { files, reading } = clientFiles((address) => connection.sendRequest(READ_FILE, { address }));
serve(connection, {
  filesFor: () => files,
  sessionsBelow: () => [],
  reading,
  later: (task, milliseconds) => void setTimeout(task, milliseconds),
  now: () => performance.now(),
});
