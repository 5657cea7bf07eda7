/** The extension for an editor in the browser: the shared client, talking to the server in a worker. */
import { Uri, type ExtensionContext } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { start, stop } from './start.ts';

declare const Worker: new (script: string) => ConstructorParameters<typeof LanguageClient>[2];

export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'dist', 'server-worker.js').toString(true);
  await start(
    context,
    (options) => new LanguageClient('tribrach', 'Tribrach', async () => new Worker(script), options),
  );
}

export async function deactivate(): Promise<void> {
  await stop();
}
