/** Nothing is fetched from any network, and nothing that a session says is run: the built program works with every way out trapped. */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { startClient } from './language-client.ts';

const PROGRAM = resolve('dist/tribrach.cjs');
const TRAP = resolve('tests/no-way-out.cjs');
const BUILT = [
  'tribrach.cjs',
  'program.cjs',
  'extension.cjs',
  'extension-web.js',
  'library.cjs',
  'server-worker.js',
  'panel.js',
  'card.js',
];

const at = folderWith({ 'ways.log': '', 'rows.csv': 'PM-1,1.5,2.5,6.284\n' });
const trapped = { ...process.env, NODE_OPTIONS: `--require ${TRAP}`, WAY_OUT_LOG: at.path('ways.log') };
const spoken = () => readFileSync(at.path('ways.log'), 'utf8').trim();

beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error(`There is no ${PROGRAM}; run "npm run build" before this test.`);
  cpSync('samples', at.path('samples'), { recursive: true });
  writeFileSync(at.path('whole.part'), run(['check', 'samples/breakwater.trib', '--shard', '1/1']).stdout);
});
afterAll(() => at.remove());

/** No text becomes code in this process. */
const WORDS_STAY_WORDS = '--disallow-code-generation-from-strings';

const run = (words: readonly string[]) =>
  spawnSync(process.execPath, [WORDS_STAY_WORDS, PROGRAM, ...words], {
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
    "require('child_process').execFileSync('true')",
    "import('node:https').then(({ default: https }) => https.get('https://127.0.0.1:9/'))",
  ])('catches %s', (code) => {
    const log = folderWith({ 'ways.log': '' });
    const { status } = spawnSync(process.execPath, ['-e', code], {
      env: { ...trapped, WAY_OUT_LOG: log.path('ways.log') },
    });
    expect([status, readFileSync(log.path('ways.log'), 'utf8')]).not.toEqual([0, '']);
    expect(readFileSync(log.path('ways.log'), 'utf8')).not.toBe('');
    log.remove();
  });
});

const COMMANDS: Readonly<Record<string, readonly string[]>> = {
  check: ['check', 'samples'],
  join: ['join', 'whole.part'],
  completion: ['completion', 'bash'],
  explain: ['explain', 'height/extension'],
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
    expect(stderr).not.toContain('out of here');
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

describe('what a session says is never run', () => {
  const HOSTILE = [
    'job "$(touch owned) `touch owned` ${process.exit(7)}"',
    '  date        2026-05-19',
    '  grid        EPSG:3763',
    'use "| touch owned"',
    'use "http://127.0.0.1:9/marks.trib"',
    'use "file:///etc/passwd"',
    'mark __proto__ "<script>alert(1)</script><img src=x onerror=alert(1)>"',
    '  position    -41203.118 m E, 164904.902 m N',
    '  height      6.284 m orthometric',
    '  photo       "http://127.0.0.1:9/x.png"',
    'mark "constructor" "javascript:alert(1)"',
    'setup toString on __proto__ at 07:50',
    '  captured    "\\\\127.0.0.1\\share\\base.rtcm3"',
    'points "inline"',
    '  columns     name, east m, north m',
    '  row         =cmd|x!A1, 1, 2',
    '',
  ].join('\n');
  const commands = Object.entries(COMMANDS).filter(
    ([, words]) => words.length > 1 && words[1] !== 'rows.csv',
  );

  it.each(commands)('by %s', (name, [command = '', , ...rest]) => {
    const day = folderWith({ 'hostile.trib': HOSTILE, 'owned.txt': '' });
    const words = name === 'compare' ? [day.path('hostile.trib')] : rest.filter((word) => word !== 'out');
    const { stderr, stdout } = run([
      command,
      name === 'new' ? day.path('fresh.trib') : day.path('hostile.trib'),
      ...words.filter((word) => word !== '--out'),
    ]);
    expect(stderr).not.toContain('fault in tribrach');
    expect(spoken()).toBe('');
    expect([existsSync(at.path('owned')), existsSync(day.path('owned'))]).toEqual([false, false]);
    if (name === 'report') expect(stdout).not.toMatch(/<script>alert|<img src=x/);
    day.remove();
  });
});

describe('what is built', () => {
  const texts = BUILT.map((name) => [name, readFileSync(`dist/${name}`, 'utf8')] as const);
  /** `net` is there because the protocol's library can be told to use a socket; ours gives it standard input and output. */
  const LENT = new Set([
    ...['fs', 'path', 'os', 'util', 'url', 'crypto', 'child_process', 'events', 'process', 'worker_threads'],
    ...['readline', 'net', 'vscode'],
    // What starts the program runs the file beside it.
    ...['vm', 'module'],
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

  it.each(texts)('%s makes no code out of words', (_, text) => {
    const made = [...text.matchAll(/\beval\s*\(|\bFunction\s*\([^)]{0,40}\)|\bvm\.run/g)].map(
      ([found]) => found,
    );
    // A library's way to the global object where it has no name, which no host here lacks.
    expect(made.filter((found) => found !== 'Function("return this")')).toEqual([]);
  });

  it('is all that is packaged', () => {
    const scripts = readdirSync('dist').filter((name) => /\.c?js$/.test(name));
    expect(scripts.sort()).toEqual([...BUILT].sort());
  });
});
