/** A real VS Code with a Node extension host, served to a browser: installed into the cache, with the packaged extension. */
import { chmod, copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { URLSearchParams } from 'node:url';
import { freePort, runToEnd, startServer } from './child.mjs';
import { cache, installed } from './install.mjs';

/** code-server 4.100.3 carries VS Code 1.100.3 and is the last that runs on Node 20. */
const hostVersion = '4.100.3';
const searchVersion = '1.18.0';

/** Serves `workspace` with the extension in `vsix`; `settings` come on top of the quiet ones. */
export async function serveVscode({ vsix, workspace, settings = {}, trusted = true }) {
  const host = join(
    await installed(`vscode-host-${hostVersion}`, `code-server@${hostVersion}`, finishHost),
    'lib/vscode',
  );
  const profile = join(cache, 'vscode-profile');
  await rm(profile, { recursive: true, force: true });
  await writeSettings(join(profile, 'data'), { ...quietSettings, ...trustSettings(trusted), ...settings });
  const folders = ['--server-data-dir', profile, '--extensions-dir', join(profile, 'extensions')];
  const quiet = ['--accept-server-license-terms', '--telemetry-level', 'off'];
  const server = join(host, 'out/server-main.js');

  const installing = await runToEnd(
    'node',
    [server, ...folders, ...quiet, '--install-extension', vsix, '--force'],
    { limit: 60_000 },
  );
  if (installing.status !== 0 || !installing.output.includes('successfully installed'))
    throw new Error(`the extension did not install: ${installing.output}`);

  const port = await freePort();
  const stop = await startServer(
    'node',
    [
      server,
      '--host',
      '127.0.0.1',
      '--port',
      String(port),
      '--without-connection-token',
      ...(trusted ? ['--disable-workspace-trust'] : []),
      ...folders,
      ...quiet,
      '--default-folder',
      workspace,
    ],
    { ready: /Extension host agent listening/, limit: 60_000 },
  );
  const authority = `127.0.0.1:${port}`;
  const remote = (path) => `vscode-remote://${authority}${path}`;
  const address = (payload, workspaceFile) => {
    const opened = workspaceFile ? ['workspace', workspaceFile] : ['folder', workspace];
    return `http://${authority}/?${new URLSearchParams([opened, ['payload', JSON.stringify(payload)]])}`;
  };
  return {
    stop,
    workspace,
    servers: () => serversOf(join(profile, 'extensions')),
    programOf,
    folder: address([]),
    opensWorkspaceFiles: true,
    distrusts: true,
    openFile: (path) => address([['openFile', remote(join(workspace, path))]]),
    runInside: (developed, tests, workspaceFile) =>
      address(
        [
          ['extensionDevelopmentPath', remote(developed)],
          ['extensionTestsPath', remote(join(developed, tests))],
        ],
        workspaceFile,
      ),
  };
}

/** The processes, by number, in which extension hosts run the language server of an extension in `folder`. */
async function serversOf(folder) {
  const numbers = (await readdir('/proc')).filter((name) => /^\d+$/.test(name));
  const runs = await Promise.all(
    numbers.map(async (number) => {
      const line = await readFile(`/proc/${number}/cmdline`, 'utf8').catch(() => '');
      const [, program = '', ...words] = line.split('\0');
      return program.startsWith(folder) && words.includes('serve');
    }),
  );
  return numbers.filter((_, at) => runs[at]).map(Number);
}

/** The file that the process of that number runs. */
async function programOf(number) {
  const [, program] = (await readFile(`/proc/${number}/cmdline`, 'utf8')).split('\0');
  return program;
}

/** Three native modules are replaced: logging and the watchdog by a few lines, file search by its prebuilt program. */
async function finishHost(folder) {
  const host = join(folder, 'lib/vscode');
  const npm = await runToEnd(
    'npm',
    ['install', '--ignore-scripts', '--omit=dev', '--no-audit', '--no-fund'],
    {
      cwd: host,
      limit: 300_000,
    },
  );
  if (npm.status !== 0) throw new Error(`the host's own packages did not install: ${npm.output}`);
  await writeFile(join(host, 'node_modules/@vscode/spdlog/index.js'), silentLogger);
  await writeFile(join(host, 'node_modules/native-watchdog/index.js'), 'exports.start = () => {};\n');

  const platform = `${process.platform}-${process.arch}`;
  const search = await installed(`ripgrep-${searchVersion}`, `@vscode/ripgrep-${platform}@${searchVersion}`);
  const bin = join(host, 'node_modules/@vscode/ripgrep/bin');
  await mkdir(bin, { recursive: true });
  await copyFile(join(search, 'bin/rg'), join(bin, 'rg'));
  await chmod(join(bin, 'rg'), 0o755);

  const product = JSON.parse(await readFile(join(host, 'product.json'), 'utf8'));
  delete product.extensionsGallery;
  await writeFile(join(host, 'product.json'), JSON.stringify(product, null, 2));
}

const silentLogger = `
const ignore = () => {};
const logger = new Proxy({}, { get: (_, name) => (name === 'then' ? undefined : ignore) });
exports.version = 0;
exports.setLevel = ignore;
exports.setFlushOn = ignore;
exports.shutdown = ignore;
exports.createRotatingLogger = async () => logger;
exports.createAsyncRotatingLogger = async () => logger;
`;

async function writeSettings(data, wanted) {
  const settings = JSON.stringify(wanted, null, 2);
  for (const level of ['User', 'Machine']) {
    await mkdir(join(data, level), { recursive: true });
    await writeFile(join(data, level, 'settings.json'), settings);
  }
}

/** Where a folder is not trusted, nobody is asked whether it is. */
const trustSettings = (trusted) => ({
  'security.workspace.trust.enabled': !trusted,
  'security.workspace.trust.startupPrompt': 'never',
  'security.workspace.trust.emptyWindow': false,
});

/** Hot exit is off so that one run's unsaved text does not come back in the next. */
export const quietSettings = {
  'telemetry.telemetryLevel': 'off',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.enableExperiments': false,
  'files.autoSave': 'off',
  'files.hotExit': 'off',
  'editor.inlayHints.enabled': 'on',
  'editor.hover.delay': 100,
  'editor.minimap.enabled': false,
  'git.enabled': false,
};
