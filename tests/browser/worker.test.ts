/** The server's worker in a real browser: it finds what there is to find, and asks for nothing but itself. */
import { existsSync, readFileSync } from 'node:fs';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium, launchChromium, sayWhenMissing } from './chromium.ts';

sayWhenMissing('the server in a browser');

const SITE = 'http://worker.test';
const WORKER = 'dist/server-worker.js';
const broken = readFileSync('samples/broken/height-wrong-surface.trib', 'utf8');

describe.runIf(hasChromium)('the server in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    if (!existsSync(WORKER)) throw new Error(`There is no ${WORKER}; run "npm run build" before this test.`);
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  it('answers an editor and fetches nothing', async () => {
    const page = await browser.newPage();
    const asked: string[] = [];
    await page.context().route('**/*', (route) => {
      const { pathname } = new URL(route.request().url());
      asked.push(route.request().url());
      if (pathname === '/') return route.fulfill({ body: '<!doctype html>', contentType: 'text/html' });
      if (pathname === '/worker.js') return route.fulfill({ path: WORKER, contentType: 'text/javascript' });
      return route.abort();
    });
    await page.goto(`${SITE}/`);
    const codes = await page.evaluate(
      ([text, day]) =>
        new Promise<string[]>((resolve) => {
          const worker = new Worker('/worker.js');
          worker.onmessage = ({ data }: MessageEvent<Record<string, unknown>>) => {
            const { id, method, params } = data as {
              id?: number;
              method?: string;
              params?: { diagnostics: { code: string }[] };
            };
            if (id === 1 && method === undefined) {
              worker.postMessage({ jsonrpc: '2.0', method: 'initialized', params: {} });
              worker.postMessage({
                jsonrpc: '2.0',
                method: 'textDocument/didOpen',
                params: { textDocument: { uri: day, languageId: 'tribrach', version: 1, text } },
              });
            } else if (method === 'textDocument/publishDiagnostics')
              resolve((params?.diagnostics ?? []).map(({ code }) => code));
            else if (id !== undefined) worker.postMessage({ jsonrpc: '2.0', id, result: null });
          };
          worker.postMessage({
            jsonrpc: '2.0',
            id: 1,
            method: 'initialize',
            params: { processId: null, rootUri: null, capabilities: {} },
          });
        }),
      [broken, 'file:///day.trib'] as const,
    );
    expect(codes).toContain('height/wrong-surface');
    expect(asked.sort()).toEqual([`${SITE}/`, `${SITE}/worker.js`]);
    await page.close();
  });

  it.each([
    ['cannot be loaded', null],
    ['throws before anything is asked', 'throw new Error("no memory")'],
    ['throws while it is asked', 'onmessage = () => { throw new Error("no memory"); }'],
  ])('is at its end where its script %s', async (_how, script) => {
    const page = await browser.newPage();
    await page.route('**/*', (route) => {
      const { pathname } = new URL(route.request().url());
      if (pathname === '/') return route.fulfill({ body: '<!doctype html>', contentType: 'text/html' });
      return script === null
        ? route.abort()
        : route.fulfill({ body: script, contentType: 'text/javascript' });
    });
    await page.goto(`${SITE}/`);
    await page.addScriptTag({ content: await connectedWorker() });
    const heard = await page.evaluate(() => {
      const { connected } = window as unknown as {
        connected: { asked: (script: string) => Promise<string> };
      };
      return connected.asked('/worker.js');
    });
    expect(heard).toBe('ended');
    await page.close();
  });
});

/** The web extension's way to a worker, in a page of its own: `connected.asked(script)` is how a request of it ends. */
async function connectedWorker(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: `
        import { BrowserMessageWriter, createMessageConnection } from 'vscode-languageclient/browser';
        import { WorkerReader } from './client/worker-reader.ts';
        export function asked(script) {
          const worker = new Worker(script);
          const connection = createMessageConnection(new WorkerReader(worker), new BrowserMessageWriter(worker));
          const ended = new Promise((resolve) => connection.onClose(() => resolve('ended')));
          connection.onError(() => undefined);
          connection.listen();
          connection.sendRequest('initialize', {}).catch(() => undefined);
          return Promise.race([ended, new Promise((resolve) => setTimeout(resolve, 3000, 'still waited for'))]);
        }`,
      resolveDir: '.',
    },
    // The client library needs an editor around it; what it makes its transports from does not.
    alias: { 'vscode-languageclient/browser': 'vscode-jsonrpc/browser' },
    ...{ bundle: true, write: false, format: 'iife', globalName: 'connected', conditions: ['browser'] },
    platform: 'browser',
  });
  return outputFiles[0]?.text ?? '';
}
