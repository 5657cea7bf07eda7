/** Sessions typed into the built server, a character at a time and with slips of the fingers, end as if they had been opened so. */
import type { FoldingRange, InlayHint, SemanticTokens } from 'vscode-languageserver/node';
import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildProgram, startClient, type Client } from './language-client.ts';
import { withoutMarkers } from './markers.ts';
import { allSamples } from './samples.ts';
import { typist } from './typist.ts';

beforeAll(buildProgram);

/** Every other line first, then those between them; now and then a wrong letter, taken back, and what a user asks meanwhile. */
async function typed(client: Client, name: string, text: string) {
  const hand = typist(client, name, '');
  const put = (at: number, cut: number, written: string) => hand.type('', at, cut, written);
  const lines = text.split(/(?<=\n)/);
  const standing = lines.map((_, index) => index % 2 === 0);
  const asked: Promise<unknown>[] = [];
  let keys = 0;
  async function typeLine(line: string, start: number) {
    let at = start;
    // An editor's cursor does not stand between a CR and its LF.
    for (const [character] of line.matchAll(/\r\n|[^]/gu)) {
      keys += 1;
      if (keys % 13 === 5 || at === start) {
        put(at, 0, SLIPS[keys % SLIPS.length] ?? 'x');
        put(at, 1, '');
      }
      put(at, 0, character);
      at += character.length;
      if (keys % 29 === 0) asked.push(...ask(client, hand.uri, hand.place('', at)));
      if (keys % 290 === 0) await Promise.all(asked.splice(0));
    }
  }
  for (const [index, line] of lines.entries()) if (standing[index]) await typeLine(line, hand.text().length);
  let at = 0;
  for (const [index, line] of lines.entries()) {
    if (!standing[index]) await typeLine(line, at);
    at += line.length;
  }
  await Promise.all(asked);
  expect(hand.text()).toBe(text);
  return hand;
}
const SLIPS = ['q', '"', '\n', ',', '?', '7', '#', ' '];

const ask = (client: Client, uri: string, position: { line: number; character: number }) => {
  const textDocument = { uri };
  const range = { start: { line: 0, character: 0 }, end: position };
  return [
    client.request('textDocument/completion', { textDocument, position }),
    client.request('textDocument/hover', { textDocument, position }),
    client.request('textDocument/inlayHint', { textDocument, range }),
    client.request('textDocument/codeAction', { textDocument, range, context: { diagnostics: [] } }),
    client.request('textDocument/documentSymbol', { textDocument }),
  ];
};

/** What an editor shows of a text. */
async function shown(client: Client, uri: string, version: number, end: { line: number; character: number }) {
  const textDocument = { uri };
  const range = { start: { line: 0, character: 0 }, end };
  return {
    findings: await client.findings(uri, version),
    inlays: await client.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range }),
    tokens: (await client.request<SemanticTokens>('textDocument/semanticTokens/full', { textDocument })).data,
    folds: await client.request<FoldingRange[]>('textDocument/foldingRange', { textDocument }),
    symbols: await client.request('textDocument/documentSymbol', { textDocument }),
    lenses: await client.request('textDocument/codeLens', { textDocument }),
  };
}

/** Two of them, since each takes some ten thousand messages; with TYPED=all all of them, in ten minutes. */
const samples = allSamples().filter(
  ({ file }) => process.env['TYPED'] === 'all' || /\/(breakwater|reservoir-feet)\.trib$/.test(file),
);

describe('a session typed character by character', () => {
  const root = resolve('samples');
  let client: Client;
  let fresh: Client;
  beforeAll(async () => {
    const capabilities = { textDocument: { publishDiagnostics: { versionSupport: true } } };
    client = await startClient(root, capabilities);
    fresh = await startClient(root, capabilities);
  });
  afterAll(() => [client, fresh].forEach((one) => one.kill()));

  it.each(samples)(
    '$file',
    async ({ file, text: marked }) => {
      const plain = withoutMarkers(marked);
      const text = file.includes('reservoir')
        ? `\ufeff# 𝄞 as typed\n${plain}`.replaceAll('\n', '\r\n')
        : plain;
      const name = file.replace('samples/', '');
      const hand = await typed(client, name, text);
      const end = hand.place('', text.length);
      const opened = typist(fresh, name, text);
      const got = await shown(client, hand.uri, hand.version(), end);
      expect(got).toEqual(await shown(fresh, opened.uri, 1, end));
      expect(client.complaints()).toBe('');
    },
    600_000,
  );
});
