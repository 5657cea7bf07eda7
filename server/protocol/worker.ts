/** The language server in a worker of a browser, where no disk is: it knows the texts that the editor has open. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { NO_FILES } from '../session/files.ts';
import { serve } from './server.ts';

declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
serve(connection, {
  filesFor: () => NO_FILES,
  sessionsBelow: () => [],
  later: (task, milliseconds) => void setTimeout(task, milliseconds),
  now: () => performance.now(),
});
