/** A client of the language server for tests: starts the built program and holds a real conversation over its standard streams. */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { renameSync } from 'node:fs';
import { build } from 'esbuild';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type CancellationToken,
  type ClientCapabilities,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';

export const PROGRAM = '.cache/protocol/tribrach.cjs';

/** The program as it is packaged, from the sources as they are now; put in place whole, for tests run beside one another. */
export async function buildProgram(): Promise<void> {
  const outfile = `${PROGRAM}.${process.pid}`;
  await build({
    entryPoints: ['server/command-line/main.ts'],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    loader: { '.bin': 'binary', '.md': 'text' },
    logLevel: 'warning',
  });
  renameSync(outfile, PROGRAM);
}

export type Client = Awaited<ReturnType<typeof startClient>>;

interface Circumstances {
  readonly program?: string;
  readonly environment?: NodeJS.ProcessEnv;
  /** Of Node itself. */
  readonly flags?: readonly string[];
}

export async function startClient(
  folder: string,
  capabilities: ClientCapabilities,
  initializationOptions?: unknown,
  { program = PROGRAM, environment = process.env, flags = [] }: Circumstances = {},
) {
  if (!existsSync(program)) throw new Error(`There is no ${program}; build it before this test.`);
  const child = spawn(process.execPath, [...flags, program, 'serve', '--stdio'], {
    stdio: ['pipe', 'pipe', 'pipe'],
    env: environment,
  });
  let complained = '';
  child.stderr.on('data', (data) => (complained += String(data)));
  const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const published = new Map<string, PublishDiagnosticsParams>();
  const publications: PublishDiagnosticsParams[] = [];
  const waiting = new Set<() => void>();
  const asked: string[] = [];
  connection.onNotification('textDocument/publishDiagnostics', (news: PublishDiagnosticsParams) => {
    published.set(news.uri, news);
    publications.push(news);
    for (const look of [...waiting]) look();
  });
  const told: { method: string; parameters: unknown }[] = [];
  connection.onNotification((method, parameters) => void told.push({ method, parameters }));
  const progress: unknown[] = [];
  connection.onUnhandledProgress(({ value }) => void progress.push(value));
  const tokens: unknown[] = [];
  connection.onRequest((method, parameters) => {
    asked.push(method);
    if (method === 'window/workDoneProgress/create')
      tokens.push((parameters as unknown as { token: unknown }).token);
    return null;
  });
  connection.listen();
  const root = `file://${folder}`;
  const initialized: { capabilities: Record<string, unknown> } = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: root,
    workspaceFolders: [{ uri: root, name: 'jobs' }],
    capabilities,
    initializationOptions,
  });
  await connection.sendNotification('initialized', {});

  /** What was published for this version, or a later publication of it that `wanted` accepts. */
  const findings = (
    uri: string,
    version: number,
    wanted: (news: PublishDiagnosticsParams) => boolean = () => true,
  ) =>
    new Promise<PublishDiagnosticsParams['diagnostics']>((resolve, reject) => {
      const timer = setTimeout(() => {
        waiting.delete(look);
        const last = JSON.stringify(published.get(uri));
        reject(
          new Error(`no such findings of version ${version}; last came ${last}; complaints: ${complained}`),
        );
      }, 15_000);
      const look = () => {
        const news = published.get(uri);
        if (news?.version !== version || !wanted(news)) return;
        clearTimeout(timer);
        waiting.delete(look);
        resolve(news.diagnostics);
      };
      waiting.add(look);
      look();
    });

  return {
    capabilities: initialized.capabilities,
    uri: (name: string) => `${root}/${encodeURIComponent(name)}`,
    request: <Answer>(method: string, parameters?: unknown, cancel?: CancellationToken): Promise<Answer> =>
      cancel
        ? connection.sendRequest(method, parameters, cancel)
        : connection.sendRequest(method, parameters),
    notify: (method: string, parameters?: unknown) => connection.sendNotification(method, parameters),
    findings,
    asked,
    /** Notifications other than findings. */
    told,
    /** What was last published of each file. */
    published,
    /** All of it, in order. */
    publications,
    /** What was said of how far something is. */
    progress,
    /** By which the server says how far something is that it was not asked to say. */
    tokens,
    /** Shuts the server down as a client must, and gives back its exit status. */
    stop: async () => {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      const status = await ended;
      connection.dispose();
      return { status, complained };
    },
    kill: () => child.kill('SIGKILL'),
    signal: (name: NodeJS.Signals) => child.kill(name),
    /** Bytes as they are, whatever they say. */
    write: (text: string) => void child.stdin.write(text),
    ended,
    complaints: () => complained,
  };
}
