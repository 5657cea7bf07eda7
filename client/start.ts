/** Starts, stops and restarts the language client that desktop and web share, and reports how that went. */
import { window, workspace, type ExtensionContext } from 'vscode';
import { State, type BaseLanguageClient, type LanguageClientOptions } from 'vscode-languageclient';
import { openPages, registerCommands } from './commands.ts';
import { registerCard } from './card.ts';
import { registerExplain } from './explain.ts';
import { linkedToPages } from './finding-pages.ts';
import { registerFirstMinutes } from './first-minutes.ts';
import { registerPanel } from './panel.ts';
import { registerPaths } from './path-completion.ts';
import { readFile } from './read-file.ts';
import { followsFromAnEnd, logWhatFollowsFromAnEnd, startedAgain } from './server-end.ts';
import { sessionFilesBelow } from './session-files.ts';
import { registerQuestions } from './questions.ts';
import { registerRecordCommands } from './record-commands.ts';
import { registerStatus } from './status.ts';

export type Connect = (options: LanguageClientOptions) => BaseLanguageClient;

let running: BaseLanguageClient | undefined;

/** Connects by the transport given; a server that does not start is told in a sentence, and the editor stays usable. */
export async function start(context: ExtensionContext, connect: Connect): Promise<void> {
  const client: BaseLanguageClient = connect({
    documentSelector: [{ language: 'tribrach' }],
    synchronize: { configurationSection: 'tribrach' },
    outputChannelName: 'Tribrach',
    initializationOptions: () => ({
      verdict: true,
      snippets: 'with time',
      trusted: workspace.isTrusted,
      pages: openPages(),
    }),
    middleware: linkedToPages,
    ...startedAgain(() => client.state === State.StartFailed),
  });
  logWhatFollowsFromAnEnd(client);
  client.onRequest('tribrach/readFile', readFile);
  client.onRequest('tribrach/sessionFiles', sessionFilesBelow);
  running = client;
  context.subscriptions.push(
    ...registerStatus(client),
    ...registerCommands(() => attempt(() => restart(client))),
    ...registerFirstMinutes(context.extensionUri, client),
    ...registerPanel(context.extensionUri, client),
    ...registerCard(context.extensionUri, client),
    ...registerRecordCommands(client),
    ...registerExplain(),
    ...registerQuestions(),
    registerPaths(),
    // Only now may files that sessions name be read.
    workspace.onDidGrantWorkspaceTrust(() => attempt(() => restartOnceMore(client))),
  );
  await attempt(() => client.start());
}

export async function stop(): Promise<void> {
  const client = running;
  running = undefined;
  if (client?.isRunning() === true) await client.stop();
}

let restarting: Promise<void> | null = null;

/** Asked for once more meanwhile, it is the same restart. */
function restart(client: BaseLanguageClient): Promise<void> {
  restarting ??= stopAndStart(client).finally(() => (restarting = null));
  return restarting;
}

/** A restart that is on its way may have told the server already that the workspace is not trusted. */
async function restartOnceMore(client: BaseLanguageClient): Promise<void> {
  await restarting?.catch(() => undefined);
  await restart(client);
}

/** A server that hangs is killed two seconds after it did not stop. One that was started before would be taken for it. */
async function stopAndStart(client: BaseLanguageClient): Promise<void> {
  if (client.isRunning())
    await client.stop().catch(() => new Promise<void>((resolve) => setTimeout(resolve, 4000)));
  // The extension may have been stopped meanwhile.
  if (running === client) await client.start();
}

async function attempt(action: () => Promise<void>): Promise<void> {
  try {
    await action();
  } catch (error) {
    if (followsFromAnEnd(error)) return;
    const reason = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(`The Tribrach language server could not be started: ${reason}`);
  }
}
