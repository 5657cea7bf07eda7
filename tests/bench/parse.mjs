/** Measures 10,000 lines without an editor: parse and check, cold and after one edited character, beside the floor of splicing the text. */
import { build } from 'esbuild';
import { mkdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { sessionOf } from './sessions.mjs';

const { openDocument, editDocument } = await bundled('grammar/document.ts');
const { inspect } = await bundled('server/inspect.ts');
const { NO_FILES } = await bundled('server/session/files.ts');

const text = sessionOf(10_000);
const cold = times(1, () => openDocument('bench.trib', text));
const warm = times(9, () => openDocument('bench.trib', text));

let document = openDocument('bench.trib', text);
const middle = text.indexOf(' m to foot', text.length / 2) - 1;
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

const fresh = openDocument('bench.trib', text);
const check = times(1, () => inspect(fresh, NO_FILES).findings.length);
let watched = fresh;
const editAndCheck = times(20, () => {
  digit = (digit + 1) % 10;
  watched = editDocument(watched, middle, middle + 1, String(digit));
  return inspect(watched, NO_FILES).findings.length;
});

print('splice the text', splice, 3);
print('edit to tree', edit, 3);
print('edit to findings', editAndCheck, 1);
print('parse, first', cold, 0);
print('parse, warm', warm, 0);
print('check, first', check, 0);
console.log(
  `an edit to the tree costs ${(edit / splice).toFixed(1)} splices, to findings ${(editAndCheck / splice).toFixed(0)}; ` +
    `checking anew costs ${(check / editAndCheck).toFixed(0)} edits`,
);

async function bundled(entry) {
  const outfile = `.cache/bench/${entry.replaceAll('/', '-')}.mjs`;
  await mkdir('.cache/bench', { recursive: true });
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    logLevel: 'error',
  });
  return import(pathToFileURL(outfile).href);
}

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
