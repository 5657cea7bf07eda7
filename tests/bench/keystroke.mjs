/**
 * From keystroke to published findings over standard input and output, beside an echo server and a JSON language server.
 *
 * `node tests/bench/keystroke.mjs [SERVER]`, by default dist/tribrach.cjs. The servers take turns within one run, so that
 * what else the machine does falls on all of them; compare the ratios, not the milliseconds.
 */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { jsonOf, sessionOf } from './sessions.mjs';

const sizes = [300, 3_000, 10_000];
const turns = 12;
const editsPerTurn = 20;
const patience = 60_000;

const ours = process.argv[2] ?? 'dist/tribrach.cjs';
if (!existsSync(ours)) throw new Error(`there is no ${ours}; build it first or name a server`);
const jsonServer = createRequire(import.meta.url).resolve(
  'vscode-json-languageserver/bin/vscode-json-languageserver',
);
const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const servers = [
  { name: 'echo', args: [here('echo.mjs'), '--stdio'], language: 'tribrach', textOf: sessionOf },
  { name: 'tribrach', args: [ours, 'serve', '--stdio'], language: 'tribrach', textOf: sessionOf },
  {
    name: 'json',
    args: ['-r', here('no-wait.cjs'), jsonServer, '--stdio'],
    language: 'json',
    textOf: jsonOf,
  },
];

const rows = [];
for (const size of sizes) rows.push(...(await measure(size)));
printTable(rows);
printGrowth(rows);
printAims(rows);

async function measure(size) {
  const sessions = [];
  for (const server of servers) sessions.push(await open(server, size));
  for (let turn = 0; turn <= turns; turn += 1)
    for (const session of sessions) {
      const times = [];
      for (let edit = 0; edit < editsPerTurn; edit += 1) times.push(await session.keystroke());
      if (turn > 0) session.times.push(...times); // the first turn warms up
    }
  for (const session of sessions) session.close();
  const echo = sessions[0];
  return sessions.map(({ name, opening, times }) => ({
    size,
    name,
    opening,
    median: quantile(times, 0.5),
    p95: quantile(times, 0.95),
    medianRatio: quantile(times, 0.5) / quantile(echo.times, 0.5),
    p95Ratio: quantile(times, 0.95) / quantile(echo.times, 0.95),
  }));
}

/** Starts a server on a text of `size` lines; `keystroke()` overtypes a digit and resolves to the milliseconds to findings. */
async function open({ name, args, language, textOf }, size) {
  const child = spawn('node', args, { stdio: ['pipe', 'pipe', 'ignore'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const uri = `file:///measured/${size}.${language === 'json' ? 'json' : 'trib'}`;
  let version = 1;
  let heard = () => {};
  connection.onNotification('textDocument/publishDiagnostics', (published) => {
    if (published.uri === uri && (published.version ?? version) === version) heard();
  });
  for (const asked of ['workspace/configuration'])
    connection.onRequest(asked, ({ items }) => items.map(() => null));
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('workspace/inlayHint/refresh', () => null);
  connection.onRequest('workspace/semanticTokens/refresh', () => null);
  connection.onRequest('workspace/codeLens/refresh', () => null);
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.listen();

  const findings = () =>
    new Promise((resolve, reject) => {
      const late = () =>
        reject(new Error(`${name} published nothing for version ${version} of ${size} lines`));
      const timer = setTimeout(late, patience);
      heard = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  const timed = async (send) => {
    const published = findings();
    const start = performance.now();
    send();
    await published;
    return performance.now() - start;
  };

  const capabilities = { textDocument: { publishDiagnostics: { versionSupport: true } } };
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities });
  connection.sendNotification('initialized', {});
  const text = textOf(size);
  const opening = await timed(() =>
    connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: language, version, text },
    }),
  );
  const digits = digitsOf(text);
  const random = randomNumbers(size);
  let undo;
  return {
    name,
    opening,
    times: [],
    keystroke: () => {
      const edit = undo ?? overtype(digits[Math.floor(random() * digits.length)]);
      undo = undo === undefined ? { ...edit, digit: edit.old } : undefined;
      version += 1;
      return timed(() =>
        connection.sendNotification('textDocument/didChange', {
          textDocument: { uri, version },
          contentChanges: [{ range: edit.range, text: edit.digit }],
        }),
      );
    },
    close: () => {
      connection.dispose();
      child.kill('SIGKILL');
    },
  };
}

/** The last digit of each decimal number: where a hand corrects a reading. */
function digitsOf(text) {
  return text.split('\n').flatMap((content, line) =>
    [...content.matchAll(/\.\d+/g)].map((match) => {
      const end = match.index + match[0].length;
      return {
        range: { start: { line, character: end - 1 }, end: { line, character: end } },
        old: content[end - 1],
      };
    }),
  );
}

function overtype({ range, old }) {
  return { range, old, digit: String((Number(old) + 1) % 10) };
}

/** The same places every run (minimal standard generator, Park and Miller 1988). */
function randomNumbers(seed) {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

function quantile(values, share) {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}

/** The slope of log time over log lines, by least squares: 1 is linear, 0 does not grow. */
function growthOf(points) {
  const logs = points.map(({ size, median }) => ({ x: Math.log(size), y: Math.log(median) }));
  const meanOf = (axis) => logs.reduce((sum, point) => sum + point[axis], 0) / logs.length;
  const [x, y] = [meanOf('x'), meanOf('y')];
  const over = logs.reduce((sum, point) => sum + (point.x - x) * (point.y - y), 0);
  return over / logs.reduce((sum, point) => sum + (point.x - x) ** 2, 0);
}

function printTable(measured) {
  print(['lines', 'server', 'median ms', 'p95 ms', 'median/echo', 'p95/echo', 'opening ms']);
  for (const row of measured)
    print([
      row.size,
      row.name,
      row.median.toFixed(2),
      row.p95.toFixed(2),
      row.medianRatio.toFixed(2),
      row.p95Ratio.toFixed(2),
      row.opening.toFixed(0),
    ]);
}

function printGrowth(measured) {
  console.log('\ngrowth of the median with the number of lines (1 is linear):');
  for (const { name } of servers)
    print([name, growthOf(measured.filter((row) => row.name === name)).toFixed(2)]);
  console.log('json: the 300 ms that it waits after each keystroke are taken out');
}

function printAims(measured) {
  const largest = measured.find((row) => row.name === 'tribrach' && row.size === sizes.at(-1));
  const growth = growthOf(measured.filter((row) => row.name === 'tribrach'));
  const verdict = (met) => (met ? 'met' : 'missed');
  console.log(
    `\naim, at most 1.5 times the echo at ${largest.size} lines: ${verdict(largest.medianRatio <= 1.5)}`,
  );
  console.log(`aim, growth below linear: ${verdict(growth < 1)}`);
}

function print(cells) {
  console.log(cells.map((cell) => String(cell).padStart(12)).join(''));
}
