/** The extension for an editor in the browser: the shared client, talking to the server in a worker. */
import { commands, Uri, window, type Disposable, type ExtensionContext } from 'vscode';
import { BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { start, stop } from './start.ts';
import { WorkerReader, type WorkerPort } from './worker-reader.ts';

declare const Worker: new (script: string) => WorkerPort & { terminate(): void };

export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'dist', 'server-worker.js').toString(true);
  let worker: InstanceType<typeof Worker> | undefined;
  // The transports are made here because an extension host wraps its workers, and the client then does not know them.
  const connect = async () => {
    worker?.terminate();
    worker = new Worker(script);
    return { reader: new WorkerReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  context.subscriptions.push({ dispose: () => worker?.terminate() }, ...onDesktopAlone());
  await start(context, (options) => new LanguageClient('tribrach', 'Tribrach', connect, options));
}

/** A browser starts no programs; the palette does not show these commands there. */
const onDesktopAlone = (): readonly Disposable[] =>
  ['tribrach.repairPoints', 'tribrach.lookIntoRecording', 'tribrach.marksFromRegister'].map((name) =>
    commands.registerCommand(name, () =>
      window.showInformationMessage('The command line does this, and a browser cannot start it.'),
    ),
  );

export async function deactivate(): Promise<void> {
  await stop();
}
