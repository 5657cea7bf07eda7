/** The built server under load: edits faster than analysis, thousands of files, files that use each other, bytes that are no messages, and a sudden end. */
import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { ClientCapabilities } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';

const eager: ClientCapabilities = { textDocument: { publishDiagnostics: { versionSupport: true } } };
const breakwater = readFileSync('samples/breakwater.trib', 'utf8');

const ended: (() => void)[] = [];
beforeAll(buildProgram);
afterAll(() => {
  for (const end of ended) end();
}, 60_000);

async function server(files: Readonly<Record<string, string>>) {
  const folder = folderWith({ ...files, 'watch.log': '' });
  const client = await startClient(folder.path(), eager, undefined, {
    flags: ['--expose-gc', '--require', resolve('tests/watched-process.cjs')],
    environment: { ...process.env, WATCH_LOG: folder.path('watch.log') },
  });
  ended.push(() => {
    client.kill();
    folder.remove();
  });
  return { folder, client };
}

const open = (client: Client, uri: string, text: string, version = 1) =>
  client.notify('textDocument/didOpen', {
    textDocument: { uri, languageId: 'tribrach', version, text },
  });
const close = (client: Client, uri: string) =>
  client.notify('textDocument/didClose', { textDocument: { uri } });

/** What the server's process tells of itself when it is asked. */
async function watched({ client, folder }: Awaited<ReturnType<typeof server>>) {
  const lines = () => readFileSync(folder.path('watch.log'), 'utf8').split('\n').slice(0, -1);
  const before = lines().length;
  client.signal('SIGUSR2');
  while (lines().length === before) await setTimeout(20);
  const [bytes = NaN, opened = NaN] = (lines().at(-1) ?? '').split(' ').map(Number);
  return { bytes, opened };
}

describe('edits that come faster than they can be looked at', () => {
  it('are looked at once they stop, the last state for certain, and those in between only where there is time', async () => {
    const { client } = await server({});
    const uri = client.uri('long.trib');
    const marks = Array.from(
      { length: 1500 },
      (_, at) => `mark M${at}\n  position ${at}.5 m E, 164904.902 m N\n  height 6.284 m ellipsoidal\n`,
    ).join('');
    await open(client, uri, `${breakwater}${marks}`);
    await client.findings(uri, 1);
    const line = breakwater.split('\n').findIndex((typed) => typed.startsWith('  grid'));
    const end = breakwater.split('\n')[line]?.search(/\d(?!.*\d)/) ?? 0;
    const gridDigit = { start: { line, character: end }, end: { line, character: end + 1 } };
    const before = client.publications.length;
    const edits = 400;
    for (let version = 2; version <= edits; version += 1)
      void client.notify('textDocument/didChange', {
        textDocument: { uri, version },
        // With another grid every mark lies elsewhere, so that each edit costs a good deal.
        contentChanges: [{ range: gridDigit, text: version % 2 ? '3' : '1' }],
      });
    await client.notify('textDocument/didChange', {
      textDocument: { uri, version: edits + 1 },
      contentChanges: [
        { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, text: 'mrak X\n' },
      ],
    });
    const found = await client.findings(uri, edits + 1);
    expect(found.some(({ code }) => code === 'syntax/unknown-word')).toBe(true);
    expect(client.publications.length - before).toBeLessThan(edits / 2);
    // Nothing older comes afterwards.
    await setTimeout(500);
    const versions = client.publications.slice(before).map(({ version }) => version ?? NaN);
    expect(versions).toEqual([...versions].sort((one, other) => one - other));
    expect(versions.at(-1)).toBe(edits + 1);
  });

  it('answer a question that was withdrawn, and those behind it', async () => {
    const { client } = await server({});
    const uri = client.uri('day.trib');
    await open(client, uri, breakwater);
    const at = { textDocument: { uri }, position: { line: 20, character: 4 } };
    // The server has no order for a message whose answer nobody wants any more: either is right, silence is not.
    const answers = Array.from({ length: 50 }, (_, number) => {
      const id = `withdrawn ${number}`;
      const message = (content: object) => {
        const text = JSON.stringify({ jsonrpc: '2.0', ...content });
        client.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
      };
      message({ id, method: 'textDocument/hover', params: at });
      message({ method: '$/cancelRequest', params: { id } });
      return client.request('textDocument/hover', at);
    });
    expect((await Promise.all(answers)).length).toBe(50);
  });
});

/** Whatever one session or one edit left behind, a thousandfold, would be several times what the program itself takes. */
const MOST = 1.2;

describe('a thousand edits of one session', () => {
  it('leave no more behind than the first hundred', async () => {
    const running = await server({});
    const { client } = running;
    const uri = client.uri('day.trib');
    await open(client, uri, breakwater);
    await client.findings(uri, 1);
    const lines = breakwater.split('\n');
    const numbered = lines.flatMap((typed, line) => {
      const digit = typed.search(/\d(?!.*\d)/);
      return typed.startsWith('  ') && digit >= 0 ? [{ line, digit, typed: typed[digit] ?? '' }] : [];
    });
    const held: number[] = [];
    for (let cycle = 1; cycle <= 1000; cycle += 1) {
      // Each number is overtyped, and put back by the next edit.
      const { line, digit, typed } = numbered[((cycle - 1) >> 1) % numbered.length] ?? {
        line: 0,
        digit: 0,
        typed: '',
      };
      const text = cycle % 2 ? String((Number(typed) + 1) % 10) : typed;
      const version = cycle + 1;
      const range = { start: { line, character: digit }, end: { line, character: digit + 1 } };
      await client.notify('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ range, text }],
      });
      await client.findings(uri, version);
      if (cycle % 100 === 0) held.push((await watched(running)).bytes);
    }
    const [first = NaN] = held;
    expect(Math.max(...held.slice(1)) / first).toBeLessThan(MOST);
  });
});

describe('a thousand files opened and closed', () => {
  it('leave no more behind than the first hundred', async () => {
    const running = await server({});
    const { client } = running;
    const held: number[] = [];
    for (let cycle = 1; cycle <= 1000; cycle += 1) {
      const uri = client.uri(`day-${cycle}.trib`);
      await open(client, uri, breakwater.replace('Breakwater', `Breakwater ${cycle}`));
      await client.findings(uri, 1);
      await client.request('textDocument/hover', {
        textDocument: { uri },
        position: { line: cycle % 30, character: 8 },
      });
      await close(client, uri);
      if (cycle % 100 === 0) held.push((await watched(running)).bytes);
    }
    const [first = NaN] = held;
    expect(Math.max(...held.slice(1)) / first).toBeLessThan(MOST);
  });
});

describe('a folder of ten thousand sessions', () => {
  it('is not read when one of them is opened, and in part when all are asked about', async () => {
    const files = Object.fromEntries(
      Array.from({ length: 10_000 }, (_, at) => [
        `year-${at % 100}/job-${at}.trib`,
        `job "${at}"\nmark M-${at}\n`,
      ]),
    );
    const running = await server({
      ...files,
      'marks.trib': 'mark PM-1\n',
      'day.trib': `use "marks.trib"\n${breakwater}`,
    });
    const { client } = running;
    const uri = client.uri('day.trib');
    await open(client, uri, `use "marks.trib"\n${breakwater}`);
    await client.findings(uri, 1);
    await client.request('textDocument/hover', {
      textDocument: { uri },
      position: { line: 4, character: 8 },
    });
    await client.request('textDocument/completion', {
      textDocument: { uri },
      position: { line: 8, character: 5 },
    });
    expect((await watched(running)).opened).toBeLessThanOrEqual(2);
    await client.request('workspace/symbol', { query: 'M-9' });
    const { opened } = await watched(running);
    expect(opened).toBeGreaterThan(100);
    expect(opened).toBeLessThan(5_000);
  });
});

describe('files that use each other', () => {
  const one = 'use "two.trib"\nmark A\n  height 1 m ellipsoidal\nsetup S on B\n';
  const two = 'use "one.trib"\nuse "two.trib"\nmark B\n  height 2 m ellipsoidal\nsetup T on A\n';

  it('are looked at so often as they change, and then there is quiet', async () => {
    const { client } = await server({ 'one.trib': one, 'two.trib': two });
    const [first, second] = [client.uri('one.trib'), client.uri('two.trib')];
    await open(client, first, one);
    await open(client, second, two);
    for (let version = 2; version <= 6; version += 1)
      await client.notify('textDocument/didChange', {
        textDocument: { uri: second, version },
        contentChanges: [{ text: two.replace('mark B', version % 2 ? 'mark B' : 'mark C') }],
      });
    const names = (news: { diagnostics: readonly { message: unknown }[] }) =>
      news.diagnostics.some(({ message }) => String(message).includes('B'));
    await client.findings(second, 6);
    await client.findings(first, 1, names);
    const before = client.publications.length;
    await setTimeout(700);
    expect(client.publications.length).toBe(before);
    expect(before).toBeLessThan(20);
  });
});

describe('a server that is killed', () => {
  it('is followed by another that finds the same in the same texts', async () => {
    const first = await server({ 'marks.trib': 'mark PM-1\n' });
    const texts = new Map([
      ['day.trib', `${breakwater}use "marks.trib"\nmrak X\n`],
      ['other.trib', readFileSync('samples/broken/height-extension.trib', 'utf8')],
    ]);
    const findingsIn = async (client: Client, version: number) => {
      const found = [];
      for (const name of texts.keys()) found.push(await client.findings(client.uri(name), version));
      return found;
    };
    for (const [name, text] of texts) await open(first.client, first.client.uri(name), text, 3);
    const before = await findingsIn(first.client, 3);
    expect(before.flat().length).toBeGreaterThan(2);
    first.client.kill();
    expect(await first.client.ended).toBeNull();
    const next = await startClient(first.folder.path(), eager);
    ended.push(() => next.kill());
    for (const [name, text] of texts) await open(next, next.uri(name), text, 4);
    expect(await findingsIn(next, 4)).toEqual(before);
  });
});

describe('bytes that are no messages', () => {
  const message = (content: string) => `Content-Length: ${Buffer.byteLength(content)}\r\n\r\n${content}`;

  it.each([
    ['no JSON', message('{')],
    ['JSON that is no message', message('[1, null, {"id": {}}]') + message('7') + message('null')],
    ['an answer to nothing', message('{"jsonrpc":"2.0","id":99,"result":1}')],
    [
      'parameters of another shape',
      message('{"jsonrpc":"2.0","method":"textDocument/didOpen","params":[7]}'),
    ],
  ])('%s: what follows is answered', async (_, bytes) => {
    const { client } = await server({});
    const uri = client.uri('day.trib');
    await open(client, uri, 'mark A\n');
    await client.findings(uri, 1);
    client.write(bytes);
    // What came in one piece with it may be lost; the library goes on with the next piece.
    await setTimeout(100);
    await open(client, client.uri('next.trib'), 'mrak A\n');
    expect((await client.findings(client.uri('next.trib'), 1)).length).toBeGreaterThan(0);
    expect(client.complaints()).toBe('');
  });

  // Where a message ends is not known any more, so that whatever follows would be waited for in vain.
  it.each([
    ['a header without a length', 'Content-Type: x\r\n\r\n', 'a message has no Content-Length'],
    ['a length that is none', 'Content-Length: many\r\n\r\n', 'a message has the Content-Length "many"'],
    ['a negative length', 'Content-Length: -5\r\n\r\n', 'a message has the Content-Length "-5"'],
    ['a length beyond any text', 'Content-Length: 99999999999\r\n\r\n', 'it is to be at most 536870912'],
  ])('%s: the connection ends, and standard error says why', async (_, bytes, reason) => {
    const { client } = await server({});
    const uri = client.uri('day.trib');
    await open(client, uri, 'mark A\n');
    await client.findings(uri, 1);
    client.write(bytes);
    expect(await client.ended).toBe(1);
    await expect.poll(client.complaints).toContain(reason);
    expect(client.complaints()).toMatch(/^tribrach: the connection ends, since .*\n$/);
  });

  it.each([
    ['ten megabytes of comments', `${'# nothing of interest\n'.repeat(450_000)}mrak X\n`],
    ['a line of ten megabytes', `mrak ${'x'.repeat(10_000_000)}`],
    ['ten thousand lines, all wrong', 'note "\ud834 x\r\n\u2028'.repeat(10_000)],
  ])('%s are answered', async (_, text) => {
    const { client } = await server({});
    const uri = client.uri('huge.trib');
    await open(client, uri, text);
    expect((await client.findings(uri, 1)).length).toBeGreaterThan(0);
  });
});

describe('a file that changes on the disk while it is open', () => {
  it('is what the editor says until it is closed, and then what the disk says', async () => {
    const { client, folder } = await server({ 'marks.trib': 'mark PM-1\n' });
    const [day, marks] = [client.uri('day.trib'), client.uri('marks.trib')];
    await open(client, marks, 'mark PM-2\n');
    await open(client, day, 'use "marks.trib"\nsetup S on PM-2\nsetup T on PM-3\n');
    const unknown =
      (name: string) => (news: { diagnostics: readonly { code?: unknown; message: unknown }[] }) =>
        news.diagnostics.some(
          ({ code, message }) =>
            code === 'mark/unknown' && String(message).startsWith(`Unknown mark ${name}.\n`),
        );
    await client.findings(day, 1, (news) => unknown('PM-3')(news) && !unknown('PM-2')(news));
    writeFileSync(folder.path('marks.trib'), 'mark PM-3\n');
    await client.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: marks, type: 2 }] });
    await client.findings(day, 1, unknown('PM-3'));
    await close(client, marks);
    await client.findings(day, 1, (news) => unknown('PM-2')(news) && !unknown('PM-3')(news));
  });
});
