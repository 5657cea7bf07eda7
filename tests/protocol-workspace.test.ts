/** Findings of sessions that are not open: asked for by a command or pulled, with progress, until they are opened or change. */
import { mkdirSync, writeFileSync } from 'node:fs';
import {
  CancellationTokenSource,
  type FullDocumentDiagnosticReport,
  type WorkspaceDiagnosticReport,
} from 'vscode-languageserver/node';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { WorkspaceCheck } from '../server/protocol/workspace-check.ts';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';
import { typist } from './typist.ts';

const marks = 'mark PM-14\n  height      6,284 m orthometric\n';
const day = 'use "marks.trib"\nsetup BASE on PM-15\n';
const fine = 'note "Nothing is wrong here."\n';
const texts = { 'marks.trib': marks, 'day.trib': day, 'fine.trib': fine };

beforeAll(buildProgram);

describe('files that an open session uses', () => {
  let client: Client;
  let folder: ReturnType<typeof folderWith>;
  const uses = 'use "marks.trib"\nsetup BASE on PM-14\n';
  const start = async (capabilities: Parameters<typeof startClient>[1]) => {
    folder = folderWith({ 'marks.trib': marks, 'other.trib': 'mark PM-15\n  height .5 m ellipsoidal\n' });
    client = await startClient(folder.path(), capabilities);
    return typist(client, 'day.trib', uses);
  };
  afterEach(() => {
    client.kill();
    folder.remove();
  });
  const codesOf = (name: string) =>
    client.published.get(client.uri(name))?.diagnostics.map(({ code }) => code) ?? null;
  const told = (name: string, code: string) =>
    expect.poll(() => codesOf(name), { timeout: 10_000 }).toContain(code);
  const cleared = (name: string) => expect.poll(() => codesOf(name), { timeout: 10_000 }).toEqual([]);
  const pull = (name: string) =>
    client.request<FullDocumentDiagnosticReport>('textDocument/diagnostic', {
      textDocument: { uri: client.uri(name) },
    });

  it('have their findings told although they are not open, until they are mended', async () => {
    await start({});
    await told('day.trib', 'syntax/used-file');
    await told('marks.trib', 'number/decimal-comma');
    writeFileSync(folder.path('marks.trib'), marks.replace(',', '.'));
    await client.notify('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('marks.trib'), type: 2 }],
    });
    await expect.poll(() => codesOf('marks.trib'), { timeout: 10_000 }).not.toContain('number/decimal-comma');
    await expect.poll(() => codesOf('day.trib'), { timeout: 10_000 }).not.toContain('syntax/used-file');
  });

  it('are told while they are used, and no longer', async () => {
    const hand = await start({});
    await told('marks.trib', 'number/decimal-comma');
    hand.type('marks', 0, 5, 'other');
    await told('other.trib', 'syntax/bare-point');
    await cleared('marks.trib');
    await client.notify('textDocument/didClose', { textDocument: { uri: hand.uri } });
    await cleared('other.trib');
  });

  it('are told to a client that pulls, and left to itself once it has them open', async () => {
    await start({ textDocument: { diagnostic: {} } });
    const { items } = await pull('day.trib');
    expect(items.map(({ code }) => code)).toContain('syntax/used-file');
    await told('marks.trib', 'number/decimal-comma');
    const hand = typist(client, 'marks.trib', marks);
    await cleared('marks.trib');
    await client.notify('textDocument/didClose', { textDocument: { uri: hand.uri } });
    await pull('day.trib');
    await told('marks.trib', 'number/decimal-comma');
  });
});

describe('the whole workspace', () => {
  let client: Client;
  let folder: ReturnType<typeof folderWith>;
  const start = async (...more: [Parameters<typeof startClient>[1], unknown?]) => {
    folder = folderWith(texts);
    client = await startClient(folder.path(), ...more);
  };
  afterEach(() => {
    client.kill();
    folder.remove();
  });

  const check = (more: object = {}) =>
    client.request<WorkspaceCheck>('workspace/executeCommand', {
      command: 'tribrach.checkWorkspace',
      ...more,
    });
  const codesOf = (name: string) =>
    client.published.get(client.uri(name))?.diagnostics.map(({ code }) => code) ?? null;
  const codes = async (name: string, wanted: (found: readonly unknown[] | null) => boolean) =>
    expect.poll(() => wanted(codesOf(name)), { timeout: 10_000, message: `codes of ${name}` }).toBe(true);

  it('is checked on request, and says how far it is', async () => {
    await start({});
    expect(client.capabilities['executeCommandProvider']).toMatchObject({
      commands: ['tribrach.checkWorkspace'],
    });
    const told = await check({ workDoneToken: 'mine' });
    expect(told).toMatchObject({ sessions: 3, unread: [], cancelled: false });
    expect(told.findings.error).toBeGreaterThanOrEqual(2);
    expect(codesOf('marks.trib')).toContain('number/decimal-comma');
    expect(codesOf('day.trib')).toContain('mark/unknown');
    expect(client.progress[0]).toMatchObject({ kind: 'begin', cancellable: true });
    expect(client.progress.at(-1)).toMatchObject({ kind: 'end' });
    expect(client.progress).toHaveLength(5);
  });

  it('is looked at again where a file changes, with what rests on it, and forgets one that goes', async () => {
    await start({});
    await check();
    writeFileSync(folder.path('marks.trib'), marks.replace('PM-14', 'PM-15').replace(',', '.'));
    await client.notify('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('marks.trib'), type: 2 }],
    });
    await codes('marks.trib', (found) => !found?.includes('number/decimal-comma'));
    await codes('day.trib', (found) => !found?.includes('mark/unknown'));
  });

  it('is not told twice of a session that is open', async () => {
    await start({ textDocument: { diagnostic: {} } });
    const hand = typist(client, 'marks.trib', marks);
    await check();
    expect(codesOf('marks.trib')).toBeNull();
    expect(codesOf('day.trib')).toContain('mark/unknown');
    typist(client, 'day.trib', day);
    await codes('day.trib', (found) => found?.length === 0);
    expect(hand.version()).toBe(1);
  });

  it('counts a file that cannot be read', async () => {
    await start({});
    writeFileSync(folder.path('spoilt.trib'), new Uint8Array([0x6d, 0xff, 0xfe]));
    const told = await check();
    expect(told.unread).toEqual([folder.path('spoilt.trib')]);
  });

  it('stops when it is told to', async () => {
    await start({});
    for (let count = 0; count < 400; count += 1) writeFileSync(folder.path(`d${count}.trib`), day);
    const cancel = new CancellationTokenSource();
    const asked = client.request<WorkspaceCheck>(
      'workspace/executeCommand',
      { command: 'tribrach.checkWorkspace', workDoneToken: 'mine' },
      cancel.token,
    );
    await expect.poll(() => client.progress.length, { timeout: 10_000 }).toBeGreaterThan(3);
    cancel.cancel();
    const told = await asked;
    expect(told.cancelled).toBe(true);
    expect(told.sessions).toBeLessThan(403);
  });

  it('stops when somebody cancels it in the window', async () => {
    await start({ window: { workDoneProgress: true } });
    for (let count = 0; count < 400; count += 1) writeFileSync(folder.path(`d${count}.trib`), day);
    const asked = check();
    await expect.poll(() => client.progress.length, { timeout: 10_000 }).toBeGreaterThan(3);
    await client.notify('window/workDoneProgress/cancel', { token: client.tokens[0] });
    expect(await asked).toMatchObject({ cancelled: true });
  });

  it('is looked for in folders that are added later', async () => {
    await start({});
    mkdirSync(folder.path('in'));
    const other = folderWith({ 'elsewhere.trib': fine });
    const change = (event: object) => client.notify('workspace/didChangeWorkspaceFolders', { event });
    const there = [{ uri: `file://${other.path()}`, name: 'elsewhere' }];
    await change({ added: there, removed: [] });
    expect((await check()).sessions).toBe(4);
    await change({ added: [], removed: there });
    expect((await check()).sessions).toBe(3);
    other.remove();
  });

  it('is told in a sentence to somebody whose editor shows progress', async () => {
    await start({ window: { workDoneProgress: true } });
    const { findings } = await check();
    expect(client.asked).toContain('window/workDoneProgress/create');
    const shown = client.told.filter(({ method }) => method === 'window/showMessage');
    expect(shown.map(({ parameters }) => parameters)).toEqual([
      {
        type: 3,
        message: `3 sessions checked: ${findings.error} errors and ${findings.warning} warning${findings.warning === 1 ? '' : 's'}.`,
      },
    ]);
  });

  it('knows no other command', async () => {
    await start({});
    await expect(check({ command: 'tribrach.other' })).rejects.toThrow('There is no command tribrach.other');
  });

  it('is pulled by a client that wants to, which is told what has not changed', async () => {
    await start({ textDocument: { diagnostic: {} } }, { workspaceDiagnostics: true });
    expect(client.capabilities['diagnosticProvider']).toMatchObject({ workspaceDiagnostics: true });
    typist(client, 'marks.trib', marks);
    const pull = (previousResultIds: { uri: string; value: string }[]) =>
      client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds });
    const first = await pull([]);
    expect(first.items.map(({ uri, version, kind }) => [uri, version, kind]).sort()).toEqual([
      [client.uri('day.trib'), null, 'full'],
      [client.uri('fine.trib'), null, 'full'],
      [client.uri('marks.trib'), 1, 'full'],
    ]);
    const again = await pull(first.items.map(({ uri, resultId }) => ({ uri, value: resultId ?? '' })));
    expect(again.items.map(({ kind }) => kind)).toEqual(['unchanged', 'unchanged', 'unchanged']);
    expect(client.published.size).toBe(0);
  });

  it('is not offered for pulling unasked', async () => {
    await start({ textDocument: { diagnostic: {} } });
    expect(client.capabilities['diagnosticProvider']).toMatchObject({ workspaceDiagnostics: false });
  });
});
