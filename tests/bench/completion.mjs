/**
 * From a typed character to what is offered behind it, over standard input and output, beside an echo server.
 *
 * `node tests/bench/completion.mjs [SERVER]`, by default dist/tribrach.cjs. Both take turns within one run, in a session of
 * ten thousand lines; compare the ratios, not the milliseconds.
 */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { sessionOf } from './sessions.mjs';

const lineCount = 10_000;
const turns = 30;
const aim = 50;
/** What is typed in the middle of the session, character by character, and asked about at its end. */
const places = [
  { name: 'an entry', line: 'ch' },
  { name: 'a detail', line: '  ' },
  { name: 'a mark', line: 'check NEW on ' },
  { name: 'a mark begun', line: 'check NEW on PM-1' },
  { name: 'a time', line: 'check NEW on PM-1 at ' },
  { name: 'a unit', line: '  extension 250 ' },
  { name: 'a system', line: '  position 1 m E, 2 m N in portugal tm' },
];

const ours = process.argv[2] ?? 'dist/tribrach.cjs';
if (!existsSync(ours)) throw new Error(`there is no ${ours}; build it first or name a server`);
const echo = await open([fileURLToPath(new URL('echo.mjs', import.meta.url)), '--stdio']);
const tribrach = await open([ours, 'serve', '--stdio']);

const rows = [];
for (const place of places) {
  const times = { echo: [], tribrach: [] };
  for (let turn = 0; turn < turns; turn += 1) {
    times.echo.push((await echo.offered(place.line)).took);
    times.tribrach.push((await tribrach.offered(place.line)).took);
  }
  const { count } = await tribrach.offered(place.line);
  rows.push({
    ...place,
    count,
    ...Object.fromEntries(Object.entries(times).map(([name, took]) => [name, median(took)])),
  });
}
print(['offered behind', 'offers', 'echo ms', 'tribrach ms', 'ratio']);
for (const { name, count, echo: least, tribrach: took } of rows)
  print([name, count, least.toFixed(2), took.toFixed(2), (took / least).toFixed(1)]);
const all = median(rows.map(({ tribrach: took }) => took));
console.log(`\nmedian over the places: ${all.toFixed(1)} ms; the aim is less than ${aim} ms`);
echo.close();
tribrach.close();

async function open(args) {
  const child = spawn('node', args, { stdio: ['pipe', 'pipe', 'ignore'] });
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  connection.onRequest(() => null);
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: { textDocument: { diagnostic: {} } },
  });
  connection.sendNotification('initialized', {});
  const uri = 'file:///measured/day.trib';
  const text = sessionOf(lineCount);
  // Below the first line that is empty in the middle of the session.
  const lines = text.split('\n');
  const line = lines.indexOf('', lineCount / 2) + 1;
  const textDocument = { uri, languageId: 'tribrach', version: 1, text };
  connection.sendNotification('textDocument/didOpen', { textDocument });
  let version = 1;
  const change = (from, to, inserted) => {
    version += 1;
    connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [
        { range: { start: { line, character: from }, end: { line, character: to } }, text: inserted },
      ],
    });
  };
  const ask = (character) =>
    connection.sendRequest('textDocument/completion', {
      textDocument: { uri },
      position: { line, character },
    });
  change(0, 0, '\n');
  await ask(0);
  return {
    /** All but the last character are there already; that one is typed, and asked about at once. */
    offered: async (typed) => {
      change(0, 0, typed.slice(0, -1));
      await ask(typed.length - 1);
      const start = performance.now();
      change(typed.length - 1, typed.length - 1, typed.slice(-1));
      const answer = await ask(typed.length);
      const took = performance.now() - start;
      change(0, typed.length, '');
      await ask(0);
      return { took, count: answer?.items?.length ?? 0 };
    },
    close: () => {
      connection.dispose();
      child.kill('SIGKILL');
    },
  };
}

function median(values) {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)];
}

function print(cells) {
  console.log(cells.map((cell) => String(cell).padStart(15)).join(''));
}
