/** Nothing is fetched from any network: the built program runs with every way to one trapped, and what is built names none. */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { startClient } from './language-client.ts';

const PROGRAM = resolve('dist/tribrach.cjs');
const TRAP = resolve('tests/no-network.cjs');
const BUILT = ['tribrach.cjs', 'extension.cjs', 'extension-web.js', 'server-worker.js', 'panel.js'];

const at = folderWith({ 'network.log': '', 'rows.csv': 'PM-1,1.5,2.5,6.284\n' });
const trapped = { ...process.env, NODE_OPTIONS: `--require ${TRAP}`, NETWORK_LOG: at.path('network.log') };
const spoken = () => readFileSync(at.path('network.log'), 'utf8').trim();

beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error(`There is no ${PROGRAM}; run "npm run build" before this test.`);
  cpSync('samples', at.path('samples'), { recursive: true });
});
afterAll(() => at.remove());

const run = (words: readonly string[]) =>
  spawnSync(process.execPath, [PROGRAM, ...words], {
    cwd: at.path(),
    encoding: 'utf8',
    env: { ...trapped, XDG_CACHE_HOME: at.path('cache') },
    maxBuffer: 1 << 28,
  });

describe('the trap', () => {
  it.each([
    "fetch('http://127.0.0.1:9/')",
    "require('http').get('http://127.0.0.1:9/')",
    "require('https').request('https://127.0.0.1:9/')",
    "require('net').connect(9, '127.0.0.1')",
    "require('net').createServer().listen(0)",
    "require('dns').lookup('localhost', () => undefined)",
    "require('dgram').createSocket('udp4')",
    "import('node:https').then(({ default: https }) => https.get('https://127.0.0.1:9/'))",
  ])('catches %s', (code) => {
    const log = folderWith({ 'network.log': '' });
    const { status } = spawnSync(process.execPath, ['-e', code], {
      env: { ...trapped, NETWORK_LOG: log.path('network.log') },
    });
    expect([status, readFileSync(log.path('network.log'), 'utf8')]).not.toEqual([0, '']);
    expect(readFileSync(log.path('network.log'), 'utf8')).not.toBe('');
    log.remove();
  });
});

const COMMANDS: Readonly<Record<string, readonly string[]>> = {
  check: ['check', 'samples'],
  derive: ['derive', 'samples/recorded.trib', '--format', 'json'],
  tell: ['tell', 'samples/breakwater.trib'],
  report: ['report', 'samples/recorded.trib'],
  format: ['format', 'samples', '--check'],
  points: ['points', 'samples/breakwater.trib', '--out', 'out'],
  capture: ['capture', 'samples/recordings/base.rtcm3'],
  compare: ['compare', 'samples/breakwater.trib', 'samples/two-setups.trib'],
  seal: ['seal', 'samples/breakwater.trib', '--by', 'L. Brandt', '--date', '2026-05-21'],
  new: ['new', 'first.trib'],
  marks: ['marks', 'rows.csv', '--columns', 'name, east m, north m, height m orthometric'],
  serve: [],
};

describe('the built program speaks to no network', () => {
  it('and no command is left out here', () => {
    const help = run(['--help']).stdout;
    const named = [...help.matchAll(/^ {2}(\w+) .*/gm)].map(([, name = '']) => name);
    const commands = named.filter((name) => name !== 'help');
    expect(commands.length).toBeGreaterThan(10);
    expect(commands.filter((name) => !(name in COMMANDS))).toEqual([]);
  });

  it.each(Object.entries(COMMANDS).filter(([name]) => name !== 'serve'))('in %s', (_, words) => {
    const { status, stderr, stdout } = run(words);
    expect(stderr).not.toContain('network');
    expect(status === 0 || status === 1).toBe(true);
    expect(stdout).not.toBe('');
    expect(spoken()).toBe('');
  });

  it('in a conversation with an editor', async () => {
    const client = await startClient(at.path('samples'), {}, undefined, {
      program: PROGRAM,
      environment: trapped,
    });
    const uri = client.uri('recorded.trib');
    const text = readFileSync('samples/recorded.trib', 'utf8');
    await client.notify('textDocument/didOpen', {
      textDocument: { uri, languageId: 'tribrach', version: 1, text },
    });
    expect((await client.findings(uri, 1)).length).toBeGreaterThanOrEqual(0);
    await client.request('textDocument/hover', {
      textDocument: { uri },
      position: { line: 1, character: 4 },
    });
    await client.request('workspace/symbol', { query: '' });
    expect(await client.stop()).toEqual({ status: 0, complained: '' });
    expect(spoken()).toBe('');
  });
});

describe('what is built', () => {
  const texts = BUILT.map((name) => [name, readFileSync(`dist/${name}`, 'utf8')] as const);
  /** `net` is there because the protocol's library can be told to use a socket; ours gives it standard input and output. */
  const LENT = new Set([
    ...['fs', 'path', 'os', 'util', 'url', 'crypto', 'child_process', 'events', 'process', 'worker_threads'],
    ...['readline', 'net', 'vscode'],
  ]);

  it.each(texts)('%s asks for no module of a network', (_, text) => {
    const asked = [...text.matchAll(/\b(?:require|import)\(\s*["'`]([^"'`]+)["'`]\s*\)/g)].map(
      ([, name = '']) => name.replace(/^node:/, ''),
    );
    expect(asked.filter((name) => !LENT.has(name))).toEqual([]);
  });

  it.each(texts)('%s calls nothing that fetches', (_, text) => {
    const calls =
      /\b(?:fetch\s*\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|WebTransport)/;
    expect(calls.exec(text)?.[0] ?? null).toBeNull();
  });

  it('is all that is packaged', () => {
    const scripts = readdirSync('dist').filter((name) => /\.c?js$/.test(name));
    expect(scripts.sort()).toEqual([...BUILT].sort());
  });
});
