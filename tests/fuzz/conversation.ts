/** A conversation with the language server in this very process, over streams, with a clock that the test winds by hand. */
import { PassThrough } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import {
  createConnection,
  createMessageConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import { serve } from '../../server/protocol/server.ts';
import { NO_FILES } from '../../server/session/files.ts';

export type Conversation = Awaited<ReturnType<typeof converse>>;

export async function converse(capabilities: ClientCapabilities) {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const tasks: (() => void)[] = [];
  let clock = 0;
  const faults: unknown[] = [];
  const server = createConnection(
    ProposedFeatures.all,
    new StreamMessageReader(toServer),
    new StreamMessageWriter(toClient),
  );
  serve(server, {
    filesFor: () => NO_FILES,
    sessionsBelow: () => [],
    later: (task) => void tasks.push(task),
    now: () => clock++ * 7,
  });
  const client = createMessageConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  client.onError(([error]) => faults.push(error));
  const published: PublishDiagnosticsParams[] = [];
  client.onNotification('textDocument/publishDiagnostics', (news: PublishDiagnosticsParams) => {
    published.push(news);
  });
  client.onRequest(() => null);
  client.listen();

  /** Everything that is on its way arrives, and where `late` is set everything that was put off is done. */
  const breathe = async (late: boolean) => {
    // Each message takes a turn to be read, and a conversation sends dozens before it listens.
    for (let turn = 0; turn < 60; turn += 1) await setImmediate();
    if (!late) return;
    for (let task = tasks.shift(); task; task = tasks.shift()) {
      task();
      for (let turn = 0; turn < 4; turn += 1) await setImmediate();
    }
  };
  const started = client.sendRequest('initialize', {
    processId: null,
    rootUri: 'file:///jobs',
    workspaceFolders: [{ uri: 'file:///jobs', name: 'jobs' }],
    capabilities,
  });
  await started;
  await client.sendNotification('initialized', {});

  return {
    client,
    published,
    faults,
    breathe,
    /** One thing that was put off. */
    oneTask: () => tasks.shift()?.(),
    /** Bytes as they are, whatever they say. */
    write: (text: string) => void toServer.write(text),
    end: () => {
      client.dispose();
      server.dispose();
      toServer.destroy();
      toClient.destroy();
    },
  };
}
