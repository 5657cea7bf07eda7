/** The stub in the place of the worker that serves an editor in the browser. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { answer } from './answers.ts';

declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

answer(
  createConnection(ProposedFeatures.all, new BrowserMessageReader(self), new BrowserMessageWriter(self)),
);
