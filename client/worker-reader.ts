/** What a worker says; one that fails is at its end, and the library alone would wait for its answers for ever. */
import { BrowserMessageReader } from 'vscode-languageclient/browser';

type Port = ConstructorParameters<typeof BrowserMessageReader>[0];
export type WorkerPort = Port & { addEventListener(event: 'error', heard: () => void): void };

export class WorkerReader extends BrowserMessageReader {
  constructor(worker: WorkerPort) {
    super(worker);
    // The script could not be loaded, or threw something that nobody caught: as with a process, that is the end.
    worker.addEventListener('error', () => this.fireClose());
  }
}
