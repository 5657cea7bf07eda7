/** The desktop extension: the shared client, talking to the bundled command line over standard input and output. */
import type { ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { registerProgramTasks } from './program-tasks.ts';
import { start, stop } from './start.ts';

export async function activate(context: ExtensionContext): Promise<void> {
  const server = {
    module: context.asAbsolutePath('dist/tribrach.cjs'),
    args: ['serve'],
    transport: TransportKind.stdio,
  };
  context.subscriptions.push(...registerProgramTasks(context));
  await start(context, (options) => new LanguageClient('tribrach', 'Tribrach', server, options));
}

export async function deactivate(): Promise<void> {
  await stop();
}
