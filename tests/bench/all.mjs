/**
 * Everything in one table: starting, and opening, a keystroke, a hover and formatting at 100 to 100,000 lines, beside an
 * echo server in the same run; then an archive, a million points and a gigabyte of corrections, each beside its own floor.
 *
 * `npm run bench:all [-- --quick]`; the quick run has smaller numbers everywhere and says so. What grows has its exponent:
 * 1 is in proportion, 0 does not grow. Compare ratios, not milliseconds.
 */
import { spawn, spawnSync } from 'node:child_process';
import { closeSync, existsSync, mkdtempSync, openSync, readSync, rmSync, statSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL, fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { sessionOf } from './sessions.mjs';

const quick = process.argv.includes('--quick');
const SIZES = quick ? [100, 1_000, 10_000] : [100, 1_000, 10_000, 100_000];
const EDITS = quick ? 20 : 60;
const [ARCHIVE, POINTS, CAPTURE_MB] = quick ? ['500', '100000', 100] : ['10000', '1000000', 1024];
const MISTAKES = `keystroke, amid up to ${EDITS} mistakes`;
const PROGRAM = resolve('dist/tribrach.cjs');
if (!existsSync(PROGRAM)) throw new Error(`there is no ${PROGRAM}; npm run build first`);

if (quick) console.log('QUICK: smaller numbers than those that are asked about');
await starting();
await editing();
await recording();
console.log(`\nan archive of ${ARCHIVE} sessions`);
other('archive.mjs', ARCHIVE);
console.log(`\n${POINTS} points`);
other('points.mjs', POINTS, '1');

/** Beside Node that does nothing. */
async function starting() {
  console.log('starting'.padEnd(34) + 'ms'.padStart(9) + '/ floor'.padStart(9));
  const rounds = quick ? 3 : 9;
  const run = (words) => {
    const start = performance.now();
    spawnSync(process.execPath, words, { stdio: 'ignore' });
    return performance.now() - start;
  };
  const editor = `const m = require('module'); const load = m._load; const any = new Proxy(function () {}, { get: (_, key) => key === Symbol.toPrimitive ? () => '' : any, apply: () => any, construct: () => any }); m._load = (name, ...rest) => name === 'vscode' ? any : load(name, ...rest); require(${JSON.stringify(resolve('dist/extension.cjs'))});`;
  const times = { floor: [], version: [], extension: [], server: [] };
  for (let round = 0; round < rounds; round++) {
    times.floor.push(run(['-e', '0']));
    times.version.push(run([PROGRAM, '--version']));
    times.extension.push(run(['-e', editor]));
    const start = performance.now();
    const server = await connected([PROGRAM, 'serve', '--stdio']);
    times.server.push(performance.now() - start);
    server.close();
  }
  const floor = median(times.floor);
  const row = (what, taken) => line(what, median(taken), floor);
  row('node alone', times.floor);
  row('tribrach --version', times.version);
  row('the extension, loaded', times.extension);
  row('the server, to its first answer', times.server);
  console.log(
    `the packaged extension: ${existsSync('dist/tribrach.vsix') ? `${(statSync('dist/tribrach.vsix').size / 1e6).toFixed(2)} MB` : 'not packaged'}`,
  );
}

async function editing() {
  const what = ['open', 'keystroke', 'keystroke, 95th percentile', MISTAKES, 'hover', 'format'];
  const measured = new Map(what.map((name) => [name, []]));
  for (const size of SIZES) {
    const ours = await opened([PROGRAM, 'serve', '--stdio'], size);
    const echo = await opened([fileURLToPath(new URL('echo.mjs', import.meta.url)), '--stdio'], size);
    const note = (name, own, floor) => measured.get(name).push({ size, own, floor });
    note('open', ours.opening, echo.opening);
    const [own, floor] = [[], []];
    for (let edit = 0; edit < EDITS; edit++) {
      for (const keystroke of ['mistake', 'mended']) {
        own.push(await ours[keystroke]());
        floor.push(await echo[keystroke]());
      }
    }
    note('keystroke', median(own), median(floor));
    note('keystroke, 95th percentile', quantile(own, 0.95), quantile(floor, 0.95));
    const [amid, echoed] = [[], []];
    for (let edit = 0; edit < EDITS; edit++) {
      amid.push(await ours.mistake());
      echoed.push(await echo.mistake());
    }
    note(MISTAKES, median(amid), median(echoed));
    for (const [name, method, rounds] of [
      ['hover', 'textDocument/hover', 15],
      ['format', 'textDocument/formatting', 3],
    ]) {
      const [mine, theirs] = [[], []];
      for (let round = 0; round < rounds; round++) {
        mine.push(await ours.ask(method));
        theirs.push(await echo.ask(method));
      }
      note(name, median(mine), median(theirs));
    }
    ours.close();
    echo.close();
  }
  for (const [name, rows] of measured) {
    console.log(`\n${name}`.padEnd(35) + 'ms'.padStart(9) + '/ echo'.padStart(9));
    for (const { size, own, floor } of rows) line(`${size.toLocaleString('en')} lines`, own, floor);
    console.log(`growth: ${exponent(rows.map(({ size, own }) => [size, own])).toFixed(2)}`);
  }
}

/** Made for this, and gone afterwards; beside reading the same file and doing nothing with it. */
async function recording() {
  const folder = mkdtempSync(join(tmpdir(), 'tribrach-capture-bench-'));
  try {
    const compiled = join(folder, 'recordings.mjs');
    const contents = `export { KEYED, MORNING, second } from './tests/recordings.ts';`;
    await build({
      stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
      ...{ outfile: compiled, bundle: true, format: 'esm', platform: 'node', logLevel: 'error' },
    });
    const { KEYED, MORNING, second } = await import(pathToFileURL(compiled).href);
    const minute = Buffer.concat(Array.from({ length: 600 }, (_, at) => second(KEYED, MORNING + at)));
    console.log(`\n${'a recording of corrections'.padEnd(34)}${'ms'.padStart(9)}${'/ read'.padStart(9)}`);
    const rows = [];
    for (const megabytes of [CAPTURE_MB / 4, CAPTURE_MB]) {
      const path = join(folder, 'long.rtcm3');
      const file = openSync(path, 'w');
      for (let written = 0; written < megabytes * 1024 * 1024; written += minute.length)
        writeSync(file, minute);
      closeSync(file);
      const start = performance.now();
      const { status } = spawnSync(process.execPath, [PROGRAM, 'capture', path], { stdio: 'ignore' });
      const own = performance.now() - start;
      if (status !== 0) throw new Error(`capture ended with ${status}`);
      const floor = readAlone(path);
      line(`${megabytes} MB`, own, floor);
      rows.push([megabytes, own]);
      rmSync(path);
    }
    console.log(`growth: ${exponent(rows).toFixed(2)}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readAlone(path) {
  const start = performance.now();
  const file = openSync(path, 'r');
  const piece = new Uint8Array(1 << 18);
  while (readSync(file, piece, 0, piece.length, null) > 0);
  closeSync(file);
  return performance.now() - start;
}

async function connected(words) {
  const child = spawn(process.execPath, words, { stdio: ['pipe', 'pipe', 'ignore'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  connection.onRequest(() => null);
  let heard = () => undefined;
  connection.onNotification('textDocument/publishDiagnostics', ({ version }) => heard(version));
  connection.listen();
  const capabilities = { textDocument: { publishDiagnostics: { versionSupport: true } } };
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities });
  await connection.sendNotification('initialized', {});
  return {
    connection,
    /** Until the findings of this version are there. */
    findings: (wanted) => new Promise((resolve) => (heard = (version) => version === wanted && resolve())),
    close: () => {
      connection.dispose();
      child.kill('SIGKILL');
    },
  };
}

async function opened(words, size) {
  const { connection, findings, close } = await connected(words);
  const uri = `file:///measured/${size}.trib`;
  const text = sessionOf(size);
  const lines = text.split('\n');
  const digits = lines.flatMap((content, number) => {
    const at = content.search(/\.\d/);
    return at < 0 ? [] : [{ line: number, character: at + 1 }];
  });
  const digitAt = ({ line, character }) => lines[line][character];
  let wrong = digits[0];
  let version = 1;
  const overtyped = (start, digit) => {
    const range = { start, end: { line: start.line, character: start.character + 1 } };
    version += 1;
    return timed(() =>
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ range, text: digit }],
      }),
    );
  };
  const timed = async (send) => {
    const start = performance.now();
    const done = findings(version);
    await send();
    await done;
    return performance.now() - start;
  };
  const textDocument = { uri, languageId: 'tribrach', version, text };
  const opening = await timed(() => connection.sendNotification('textDocument/didOpen', { textDocument }));
  return {
    opening,
    close,
    /** Overtypes a digit somewhere, each time somewhere else. */
    mistake: () => {
      wrong = digits[(version * 7919) % digits.length];
      return overtyped(wrong, String((Number(digitAt(wrong)) + 1 + (version % 9)) % 10));
    },
    /** Puts the last one right again. */
    mended: () => overtyped(wrong, digitAt(wrong)),
    ask: async (method) => {
      const start = performance.now();
      const position = digits[Math.floor(digits.length / 2)];
      const options = { tabSize: 2, insertSpaces: true };
      await connection.sendRequest(method, { textDocument: { uri }, position, options });
      return performance.now() - start;
    },
  };
}

function other(name, ...words) {
  const path = fileURLToPath(new URL(name, import.meta.url));
  const { status } = spawnSync(process.execPath, [path, ...words], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (status !== 0) throw new Error(`${name} ended with ${status}`);
}

function line(what, taken, floor) {
  console.log(
    what.padEnd(34) + taken.toFixed(taken < 10 ? 2 : 0).padStart(9) + (taken / floor).toFixed(2).padStart(9),
  );
}

function quantile(values, share) {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
function median(values) {
  return quantile(values, 0.5);
}

/** The slope of log time over log size, by least squares. */
function exponent(points) {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)]);
  const mean = (axis) => logs.reduce((sum, point) => sum + point[axis], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const over = logs.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0);
  return over / logs.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
}
