/** Runs the tests of inside/ in an editor's extension host, and hands on the lines they report. */
import { build } from 'esbuild';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { within } from './child.mjs';
import { cache } from './install.mjs';

const limit = 240_000;

/**
 * An extension that does nothing but lend its place to the tests, in its folder: a host runs tests only beside a developed
 * one. `tests.js` is for one folder, `folders.js` for a workspace of two, `measures.js` measures.
 */
export async function buildInsideTests() {
  const folder = join(cache, 'inside');
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'package.json'), JSON.stringify(placeholder, null, 2));
  await build({
    bundle: true,
    format: 'cjs',
    external: ['vscode'],
    entryPoints: {
      tests: 'tests/editors/inside/run.ts',
      folders: 'tests/editors/inside/run-folders.ts',
      measures: 'tests/editors/inside/run-measures.ts',
    },
    outdir: folder,
    logLevel: 'warning',
  });
  return folder;
}

export async function runInside(browser, address, report) {
  const context = await browser.newContext();
  const page = await context.newPage();
  const heard = [];
  const finished = new Promise((resolve) => {
    page.on('console', (message) => {
      const text = message.text();
      heard.push(text);
      const line = /\[test\] (.*?)(?: color: [^]*)?$/s.exec(text)?.[1];
      if (line === undefined) return;
      if (line.startsWith('finished')) resolve();
      else report(line);
    });
  });
  try {
    await page.goto(address);
    await within(limit, 'the tests inside the editor', finished);
  } catch (error) {
    throw new Error(`${error.message}; the console last said: ${heard.slice(-8).join(' | ')}`, {
      cause: error,
    });
  } finally {
    await context.close();
  }
}

const placeholder = {
  name: 'inside-tests',
  publisher: 'tribrach',
  version: '0.0.1',
  engines: { vscode: '^1.91.0' },
};
