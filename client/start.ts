/** Starts, stops and restarts the language client that desktop and web share, and reports how that went. */
import { window, type ExtensionContext } from 'vscode';
import { State, type BaseLanguageClient, type LanguageClientOptions } from 'vscode-languageclient';
import { registerCommands } from './commands.ts';
import { registerPanel } from './panel.ts';
import { createStatus } from './status.ts';

export type Connect = (options: LanguageClientOptions) => BaseLanguageClient;

let running: BaseLanguageClient | undefined;

/** Connects by the transport given; a server that does not start is told in a sentence, and the editor stays usable. */
export async function start(context: ExtensionContext, connect: Connect): Promise<void> {
  const status = createStatus();
  const client = connect({
    documentSelector: [{ language: 'tribrach' }],
    synchronize: { configurationSection: 'tribrach' },
    outputChannelName: 'Tribrach',
  });
  running = client;
  context.subscriptions.push(
    status,
    client.onDidChangeState(({ newState }) => status.show(stateInWords[newState])),
    ...registerCommands(() => attempt(() => restart(client))),
    ...registerPanel(context.extensionUri, client),
  );
  await attempt(() => client.start());
}

export async function stop(): Promise<void> {
  const client = running;
  running = undefined;
  if (client?.isRunning() === true) await client.stop();
}

async function restart(client: BaseLanguageClient): Promise<void> {
  if (client.isRunning()) await client.stop();
  await client.start();
}

async function attempt(action: () => Promise<void>): Promise<void> {
  try {
    await action();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(`The Tribrach language server could not be started: ${reason}`);
  }
}

const stateInWords: Readonly<Record<State, 'starting' | 'running' | 'stopped'>> = {
  [State.Starting]: 'starting',
  [State.StartFailed]: 'stopped',
  [State.Running]: 'running',
  [State.Stopped]: 'stopped',
};
