/** Measures the grammar alone: a cold parse of 10,000 lines and one edited character, beside the floor of splicing the text. */
import { build } from 'esbuild';
import { mkdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';

const compiled = '.cache/bench/grammar.mjs';
await mkdir('.cache/bench', { recursive: true });
await build({
  entryPoints: ['grammar/document.ts'],
  outfile: compiled,
  bundle: true,
  format: 'esm',
  platform: 'node',
});
const { openDocument, editDocument } = await import(pathToFileURL(compiled).href);

const text = sessionOf(10_000);
const cold = times(1, () => openDocument('bench.trib', text));
const warm = times(9, () => openDocument('bench.trib', text));

let document = openDocument('bench.trib', text);
const middle = text.indexOf('1.28', text.length / 2) + 3;
let digit = 0;
const edit = times(200, () => {
  digit = (digit + 1) % 10;
  document = editDocument(document, middle, middle + 1, String(digit));
});
let spliced = text;
const splice = times(200, () => {
  digit = (digit + 1) % 10;
  spliced = spliced.slice(0, middle) + digit + spliced.slice(middle + 1);
  // Without a look inside, the engine only notes that it will have to splice.
  spliced.charCodeAt(middle);
});

print('splice the text', splice, 3);
print('edit to tree', edit, 3);
print('parse, first', cold, 0);
print('parse, warm', warm, 0);
console.log(
  `an edit costs ${(edit / splice).toFixed(1)} splices, a warm parse ${(warm / edit).toFixed(0)} edits`,
);

/** The median of several runs, in milliseconds. */
function times(runs, work) {
  const taken = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    work();
    taken.push(performance.now() - start);
  }
  return taken.sort((one, other) => one - other)[Math.floor(runs / 2)];
}

function print(what, milliseconds, digits) {
  console.log(`${what.padEnd(18)} ${milliseconds.toFixed(digits).padStart(9)} ms`);
}

function sessionOf(lines) {
  const day = [
    'mark PM-14 "brass bolt, pier deck"',
    '  position    -41203.118 m E, 164904.902 m N',
    '  height      6.284 m orthometric',
    '  uncertainty 8 mm horizontal, 12 mm vertical',
    'setup BASE on PM-14 with A1 at 07:50 until 15:40',
    '  measured    1.284 m to foot, 48 mm off centre, at 07:52   # first reading',
    '  extension   250 mm',
    `  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal`,
    'check OPEN on PM-09 at 08:25 by R1',
    '  observed    -40311.876 m E, 165377.410 m N, height 5.203 m orthometric',
  ];
  return Array.from({ length: lines }, (_, index) => day[index % day.length]).join('\n') + '\n';
}
