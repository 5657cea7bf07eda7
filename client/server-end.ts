/** A server that ends by itself is started again; one that goes on ending is told of in a sentence, with the way to restart it. */
import { commands, window } from 'vscode';
import {
  CloseAction,
  ErrorAction,
  ErrorCodes,
  ResponseError,
  type BaseLanguageClient,
  type LanguageClientOptions,
} from 'vscode-languageclient';

/** A server that has ended so often within so many milliseconds would go on so. */
const TOO_OFTEN = { times: 5, within: 180_000 };
/** Milliseconds after which a start that nobody asked for has failed for good. */
const STARTED_WITHIN = 10_000;

/** @param hasFailed whether there is no server because the last start failed */
export function startedAgain(
  hasFailed: () => boolean,
): Pick<LanguageClientOptions, 'errorHandler' | 'initializationFailedHandler'> {
  let ends: readonly number[] = [];
  const tellLater = (end: readonly number[]) =>
    setTimeout(() => {
      if (ends !== end || !hasFailed()) return;
      void window.showErrorMessage(
        'The language server has ended and could not be started again, so nothing is checked. Reload the window to try once more; the output Tribrach says why.',
      );
    }, STARTED_WITHIN);
  return {
    errorHandler: {
      // Who types while the server dies writes to nobody. That is no reason to give up: the end itself follows.
      error: () => ({ action: ErrorAction.Continue, handled: true }),
      closed: () => {
        const now = Date.now();
        ends = [...ends.filter((end) => now - end < TOO_OFTEN.within), now];
        if (ends.length < TOO_OFTEN.times) {
          tellLater(ends);
          return { action: CloseAction.Restart };
        }
        ends = [];
        void offerRestart(
          'The language server has ended five times within three minutes, so it is not started again by itself. Nothing is checked until you restart it.',
        );
        return { action: CloseAction.DoNotRestart, handled: true };
      },
    },
    // A start that failed is told by whoever asked for it.
    initializationFailedHandler: () => false,
  };
}

/** Says what the server's absence prevents; resolves to whether it was restarted thereupon. */
export async function offerRestart(sentence: string): Promise<boolean> {
  const restart = 'Restart the Language Server';
  const chosen = await window.showErrorMessage(sentence, restart);
  if (chosen !== restart) return false;
  await commands.executeCommand('tribrach.restartServer');
  return true;
}

/** The library would show each request and each start that fails with the server; what is no answer of it goes to the output, and the end is told. */
export function logWhatFollowsFromAnEnd(client: BaseLanguageClient): void {
  const log = client.error.bind(client);
  client.error = (message, data, show) =>
    log(message, data, data instanceof ResponseError && !followsFromAnEnd(data) ? show : false);
}

export const followsFromAnEnd = (error: unknown): boolean =>
  error instanceof ResponseError && OF_THE_CONNECTION.has(error.code);

const OF_THE_CONNECTION: ReadonlySet<number> = new Set([
  ErrorCodes.MessageWriteError,
  ErrorCodes.PendingResponseRejected,
  ErrorCodes.ConnectionInactive,
]);
