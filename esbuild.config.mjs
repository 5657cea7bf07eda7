/** Bundles the command line, the extension, its web twin and its panel into dist/, and writes the colouring that the grammar derives. */
import { build } from 'esbuild';
import { chmod, mkdir, rm, writeFile } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

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

const bundles = [
  {
    ...forNode,
    entryPoints: ['server/command-line/main.ts'],
    outfile: 'dist/tribrach.cjs',
    banner: { js: '#!/usr/bin/env node' },
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
  { ...forBrowser, entryPoints: ['client/panel/page.css'], outfile: 'dist/panel.css' },
];

for (const bundle of bundles) await write(bundle);
await writeColouring('grammar/colouring.ts', 'dist/tribrach.tmLanguage.json');

async function write(bundle) {
  const [entry] = bundle.entryPoints;
  await rm(bundle.outfile, { force: true });
  if (!existsSync(entry)) return say(`skipped ${bundle.outfile}: there is no ${entry} yet`);
  await build(bundle);
  if (bundle.banner) await chmod(bundle.outfile, 0o755);
  say(`wrote ${bundle.outfile}`);
}

/** The colouring module exports `textMateGrammar`, which makes a plain object; it is called here so that it cannot drift. */
async function writeColouring(source, target) {
  await rm(target, { force: true });
  if (!existsSync(source)) return say(`skipped ${target}: there is no ${source} yet`);
  const compiled = '.cache/build/colouring.mjs';
  await mkdir('dist', { recursive: true });
  await build({ ...shared, platform: 'node', format: 'esm', entryPoints: [source], outfile: compiled });
  const { textMateGrammar } = await import(pathToFileURL(compiled).href);
  if (typeof textMateGrammar !== 'function') throw new Error(`${source} exports no textMateGrammar`);
  await writeFile(target, JSON.stringify(textMateGrammar(), null, 2) + '\n');
  say(`wrote ${target}`);
}

function say(line) {
  console.log(line);
}
