/** Asks the server for the drawings of a session; what stands in their way is told with what to do about it. */
import type { Uri } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { SessionDrawings } from '../server/record/drawings/session-drawings.ts';
import { nameOf } from './in-front.ts';
import type { ToPage } from './panel/messages.ts';
import { openedFor } from './session-editor.ts';

export async function drawingsOf(
  client: BaseLanguageClient,
  uri: Uri,
  width: number,
  line: number | null,
): Promise<ToPage> {
  const address = uri.toString();
  const ask = () =>
    client.sendRequest<SessionDrawings | null>('tribrach/drawings', { uri: address, width, line });
  if (!client.isRunning())
    return trouble(
      'The language server is not running, so the drawings may be out of date. Use “Tribrach: Restart the Language Server”.',
    );
  try {
    const answer = await openedFor(uri, ask);
    if (!answer)
      return trouble(
        `${nameOf(uri)} cannot be read. If it was moved, open it from where it is now, and show its drawings again.`,
      );
    return { kind: 'drawings', session: nameOf(uri), address, ...answer };
  } catch {
    return trouble(
      'The language server could not draw the session. Use “Tribrach: Restart the Language Server” and try again.',
    );
  }
}

const trouble = (sentence: string): ToPage => ({ kind: 'trouble', sentence });
