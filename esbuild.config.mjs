/** Bundles the command line, what starts it, the extension, its web twin and its panel into dist/, and writes the colouring that the grammar derives. */
import { build } from 'esbuild';
import { createHash } from 'node:crypto';
import { chmod, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';

const shared = {
  bundle: true,
  minify: true,
  legalComments: 'none',
  target: 'es2022',
  loader: { '.bin': 'binary', '.md': 'text' },
  logLevel: 'warning',
};
const forNode = { ...shared, platform: 'node', target: 'node20', format: 'cjs' };
const forBrowser = { ...shared, platform: 'browser', conditions: ['browser'] };

/**
 * Tables that stand beside the program and are read when they are first asked for: as text of a program they would be
 * looked through at each start. For other hosts, which have no files, they stay in it.
 */
const apart = {
  name: 'tables apart',
  setup({ onLoad }) {
    onLoad(
      { filter: /\/geodesy\/(registry\/systems|datums\/parameters|egm96-grid)\.ts$/ },
      async ({ path }) => {
        const file = `${basename(path, '.ts')}.json`;
        const tables = await exportsOf(path);
        await writeFile(`dist/${file}`, JSON.stringify(tables));
        await inAscii(`dist/${file}`);
        const getters = Object.keys(tables).map((name) => `get ${name}() { return tables().${name}; }`);
        return {
          loader: 'js',
          contents: `let read;
          const tables = () => read ??= JSON.parse(require('node:fs').readFileSync(require('node:path').join(__dirname, '${file}'), 'latin1'));
          module.exports = { __esModule: true, ${getters.join(', ')} };`,
        };
      },
    );
  },
};

const bundles = [
  {
    ...forNode,
    plugins: [apart],
    entryPoints: ['server/command-line/main.ts'],
    outfile: 'dist/program.cjs',
  },
  {
    ...forNode,
    entryPoints: ['server/command-line/launch.ts'],
    outfile: 'dist/tribrach.cjs',
    banner: { js: '#!/usr/bin/env node' },
    define: async () => ({ PROGRAM_DIGEST: JSON.stringify(await digestOf('dist/program.cjs')) }),
  },
  {
    ...forNode,
    plugins: [apart],
    entryPoints: ['server/library/library.ts'],
    outfile: 'dist/library.cjs',
  },
  {
    ...forNode,
    entryPoints: ['client/extension.ts'],
    outfile: 'dist/extension.cjs',
    external: ['vscode'],
  },
  {
    ...forBrowser,
    format: 'cjs',
    entryPoints: ['client/extension-web.ts'],
    outfile: 'dist/extension-web.js',
    external: ['vscode'],
  },
  {
    ...forBrowser,
    format: 'iife',
    entryPoints: ['server/protocol/worker.ts'],
    outfile: 'dist/server-worker.js',
  },
  {
    ...forBrowser,
    format: 'iife',
    entryPoints: ['client/panel/page.ts'],
    outfile: 'dist/panel.js',
  },
  {
    ...forBrowser,
    format: 'iife',
    entryPoints: ['client/card/page.ts'],
    outfile: 'dist/card.js',
  },
  { ...forBrowser, entryPoints: ['client/panel/page.css'], outfile: 'dist/panel.css' },
];

const carried = new Map();
await mkdir('dist', { recursive: true });
for (const bundle of bundles) await write(bundle);
await writeLicences('dist/licences.txt');
await writeColouring('grammar/colouring.ts', 'dist/tribrach.tmLanguage.json');
await writeTypes('server/library/library.ts', 'dist/library.d.cts');
await writeGalleryPage('client/gallery.md', 'dist/gallery.md');

async function write(bundle) {
  const [entry] = bundle.entryPoints;
  await rm(bundle.outfile, { force: true });
  if (!existsSync(entry)) return say(`skipped ${bundle.outfile}: there is no ${entry} yet`);
  const define = await bundle.define?.();
  const { metafile } = await build({ ...bundle, ...(define && { define }), metafile: true });
  for (const path of Object.keys(metafile.inputs)) await carry(path);
  await inAscii(bundle.outfile);
  if (bundle.banner) await chmod(bundle.outfile, 0o755);
  say(`wrote ${bundle.outfile}`);
}

/**
 * One byte a character, which engines read and keep in half the time and space: what esbuild leaves as it is stands in
 * regular expressions, where an escape means the same. (In a raw template it would not; a test says that there is none.)
 */
async function inAscii(path) {
  const text = await readFile(path, 'utf8');
  const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
  if (/js(on)?$/.test(path)) await writeFile(path, text.replace(/[\u0080-\uffff]/g, escaped));
}

async function digestOf(path) {
  return createHash('sha256')
    .update(await readFile(path))
    .digest('hex');
}

/** Notes the package that a bundled file is from. */
async function carry(path) {
  const folder = /^.*\bnode_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0];
  if (folder === undefined || carried.has(folder)) return;
  const { name, version, license } = JSON.parse(await readFile(`${folder}/package.json`, 'utf8'));
  const file = (await readdir(folder)).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  if (file === undefined)
    throw new Error(`${name} has no text of its licence, and what is packaged must have it`);
  carried.set(folder, {
    title: `${name} ${version} (${license})`,
    text: await readFile(`${folder}/${file}`, 'utf8'),
  });
}

/** Those who wrote what is bundled are named, each with the licence under which it may be. */
async function writeLicences(target) {
  const parts = [...carried.values()].sort((one, other) => (one.title < other.title ? -1 : 1));
  const rule = '='.repeat(80);
  await writeFile(
    target,
    parts.map(({ title, text }) => `${rule}\n${title}\n${rule}\n\n${text.trim()}\n`).join('\n'),
  );
  say(`wrote ${target}, of ${parts.length} packages`);
}

/** The page that presents the extension resolves no addresses inside the package, so its pictures stand in its text. */
async function writeGalleryPage(source, target) {
  const text = await readFile(source, 'utf8');
  const pictures = new Map();
  for (const [, path] of text.matchAll(/\]\((pictures\/[^)]+\.png)\)/g))
    pictures.set(path, (await readFile(`client/${path}`)).toString('base64'));
  await writeFile(
    target,
    text.replace(/\]\((pictures\/[^)]+)\)/g, (_, path) => `](data:image/png;base64,${pictures.get(path)})`),
  );
  say(`wrote ${target}`);
}

/** The colouring module exports `textMateGrammar`, which makes a plain object; it is called here so that it cannot drift. */
async function writeColouring(source, target) {
  await rm(target, { force: true });
  if (!existsSync(source)) return say(`skipped ${target}: there is no ${source} yet`);
  const { textMateGrammar } = await exportsOf(source);
  if (typeof textMateGrammar !== 'function') throw new Error(`${source} exports no textMateGrammar`);
  await writeFile(target, JSON.stringify(textMateGrammar(), null, 2) + '\n');
  say(`wrote ${target}`);
}

/** The types of the library stand in one file, and name nothing that would have to be shipped beside it. */
async function writeTypes(source, target) {
  const { outputText, diagnostics } = ts.transpileDeclaration(await readFile(source, 'utf8'), {
    fileName: source,
    reportDiagnostics: true,
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, strict: true },
  });
  if (diagnostics.length > 0 || /\bimport\b/.test(outputText))
    throw new Error(`${source} does not say its types in full, or takes them from another file`);
  await writeFile(target, outputText);
  say(`wrote ${target}`);
}

/** What a module of ours exports, as a build may use it. */
async function exportsOf(source) {
  const compiled = `.cache/build/${basename(source, '.ts')}.mjs`;
  await build({ ...shared, platform: 'node', format: 'esm', entryPoints: [source], outfile: compiled });
  return { ...(await import(pathToFileURL(compiled).href)) };
}

function say(line) {
  console.log(line);
}
