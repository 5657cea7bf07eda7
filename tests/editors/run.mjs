/**
 * Tests the packaged extension and its server in real editors, installed into .cache/, and ends with one line of counts.
 *
 * `node tests/editors/run.mjs [vscode] [vscode-web] [neovim] [emacs]`: all four where none is named.
 */
import { existsSync } from 'node:fs';
import { cp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { launchBrowser } from './browser.mjs';
import { runToEnd } from './child.mjs';
import { testEmacs } from './emacs.mjs';
import { buildInsideTests, runInside } from './inside.mjs';
import { cache } from './install.mjs';
import { killServer } from './killed.mjs';
import { testNeovim } from './neovim.mjs';
import { lookAtPage } from './page.mjs';
import { lookUntrusted } from './untrusted.mjs';
import { createResults } from './results.mjs';
import { serveVscode } from './vscode-host.mjs';
import { serveVscodeWeb } from './vscode-web-host.mjs';

const editors = { vscode, 'vscode-web': vscodeWeb, neovim, emacs };
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in editors));
const vsix = resolve('dist/tribrach.vsix');
const workspace = join(cache, 'workspace');
const expected = JSON.parse(await readFile('tests/editors/expected.json', 'utf8'));
const results = createResults();
/** Outside the folder that is made anew: an editor that sees its own workspace file go has no folders any more. */
const twoFolders = join(cache, 'two-folders.code-workspace');

if (unknown.length > 0)
  throw new Error(`no such editor: ${unknown.join(', ')}; there are ${Object.keys(editors).join(', ')}`);
if (!existsSync(vsix)) throw new Error('there is no dist/tribrach.vsix; run "npm run package" first');
const server = resolve('dist/tribrach.cjs');
for (const name of asked.length > 0 ? asked : Object.keys(editors)) {
  await freshWorkspace();
  await editors[name]();
}
const { failed, line } = results.summary();
console.log(line);
process.exit(failed === 0 ? 0 : 1);

async function vscode() {
  await withHost('vscode', serveVscode);
}

async function vscodeWeb() {
  await withHost('vscode-web', serveVscodeWeb);
}

async function withHost(name, serve) {
  let host;
  let browser;
  try {
    await results.run(name, async (report) => {
      host = await serve({ vsix, workspace });
      browser = await launchBrowser();
      report('passed the host starts with the packaged extension');
    });
    if (browser === undefined) return;
    await results.run(`${name}, inside`, async (report) => {
      const folder = await buildInsideTests();
      await runInside(browser, host.runInside(folder, 'tests.js'), report);
    });
    await freshWorkspace();
    if (host.opensWorkspaceFiles) {
      await results.run(`${name}, two folders`, (report) =>
        withFolders((told) =>
          runInside(browser, host.runInside(join(cache, 'inside'), 'folders.js', twoFolders), told),
        ).then((lines) => lines.forEach(report)),
      );
      await freshWorkspace();
    }
    await results.run(`${name}, page`, (report) =>
      lookAtPage(browser, name, host.openFile(expected.session), expected, report),
    );
    if (host.servers) {
      await freshWorkspace();
      await results.run(`${name}, killed`, (report) => killServer(browser, name, host, expected, report));
    }
    if (!host.distrusts) return;
    await host.stop();
    host = await serve({ vsix, workspace, trusted: false });
    await results.run(`${name}, not trusted`, (report) =>
      lookUntrusted(browser, name, host.openFile(expected.untrusted.session), expected.untrusted, report),
    );
  } finally {
    await browser?.close();
    await host?.stop();
  }
}

/** A host that came up without any folder of its workspace has tried nothing, and is started again, thrice at most. */
async function withFolders(run) {
  for (let attempt = 1; ; attempt += 1) {
    const lines = [];
    await run((line) => lines.push(line));
    if (attempt === 3 || !lines.some((line) => line.includes('in vain for the folders'))) return lines;
  }
}

async function neovim() {
  await results.run('neovim', (report) => testNeovim({ server, workspace, report }));
}

async function emacs() {
  await results.run('emacs', (report) => testEmacs({ server, workspace, report }));
}

/** The session under test, and the samples with what the command line finds in the broken ones. */
async function freshWorkspace() {
  await rm(workspace, { recursive: true, force: true });
  await cp('tests/editors/workspace', workspace, { recursive: true });
  await cp('samples', join(workspace, 'samples'), { recursive: true });
  const broken = (await readdir('samples/broken')).filter((name) => name.endsWith('.trib'));
  const { output } = await runToEnd(
    'node',
    [server, 'check', '--format', 'json', ...broken.map((name) => `samples/broken/${name}`)],
    { limit: 60_000, cwd: workspace },
  );
  await writeFile(join(workspace, 'found-by-command-line.json'), output);
  // Written once: an editor that reads it between its lines being cut and written again has no folders.
  const folders = JSON.stringify({
    folders: [{ path: 'workspace' }, { uri: 'elsewhere:/', name: 'elsewhere' }],
  });
  const written = existsSync(twoFolders) ? await readFile(twoFolders, 'utf8') : null;
  if (written !== folders) await writeFile(twoFolders, folders);
}
