/** Code actions over a real connection: which kinds a client gets for what it asks, and edits over several files. */
import type { CodeAction, Diagnostic } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';
import { typist } from './typist.ts';

const marks = `job "Control"
  grid        EPSG:3763
`;
const mark = `mark PM-14 "brass bolt"
  position    -41203.118 m E, 164904.902 m N
  height      .5 m orthometric
  separation  .25 m
`;
const day = `job "Quay"
  grid        EPSG:3763
use "marks.trib"
${mark}setup BASE on PM-14
  EXTENSION   250 mm + 100 mm
`;

beforeAll(buildProgram);

describe('code actions', () => {
  const folder = folderWith({ 'marks.trib': marks });
  let client: Client;
  let hand: ReturnType<typeof typist>;
  let known: Diagnostic[];

  beforeAll(async () => {
    client = await startClient(folder.path(), {});
    hand = typist(client, 'day.trib', day);
    known = await client.findings(hand.uri, 1);
  });
  afterAll(() => {
    client.kill();
    folder.remove();
  });

  const ask = (at: string, only?: string[]) =>
    client.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: hand.uri },
      range: { start: hand.place(at), end: hand.place(at) },
      context: { diagnostics: known, ...(only ? { only } : {}) },
    });
  const after = ({ edit }: CodeAction, name: string, text: string) =>
    TextDocument.applyEdits(TextDocument.create('', '', 0, text), edit?.changes?.[client.uri(name)] ?? []);

  it('are announced by their kinds', () => {
    expect(client.capabilities['codeActionProvider']).toEqual({
      codeActionKinds: ['quickfix', 'source.fixAll.tribrach', 'refactor.rewrite', 'refactor.move'],
    });
  });

  it('mend all findings of a kind, and say which', async () => {
    const all = (await ask('.25 m')).find(({ title }) => title.startsWith('Mend all 2'));
    expect(all?.kind).toBe('quickfix');
    expect(all?.diagnostics?.map(({ code }) => code)).toEqual(['syntax/bare-point', 'syntax/bare-point']);
    expect(all && after(all, 'day.trib', day)).toBe(day.replace(' .5', ' 0.5').replace(' .25', ' 0.25'));
  });

  it('move a mark into another file', async () => {
    const [move, ...others] = await ask('PM-14 "brass', ['refactor.move']);
    expect(others).toEqual([]);
    expect(move).toMatchObject({ kind: 'refactor.move', title: 'Move mark PM-14 to marks.trib' });
    expect(move && after(move, 'marks.trib', marks)).toBe(marks + mark);
    expect(move && after(move, 'day.trib', day)).toBe(day.replace(mark, ''));
  });

  it('are only fixes where nobody has asked, but the client by itself', async () => {
    const ofItself = await client.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: hand.uri },
      range: { start: hand.place('250 mm'), end: hand.place('250 mm') },
      context: { diagnostics: known, triggerKind: 2 },
    });
    expect(ofItself.filter(({ kind }) => kind !== 'quickfix')).toEqual([]);
    expect((await ask('250 mm')).some(({ kind }) => kind === 'refactor.rewrite')).toBe(true);
  });

  it('come as they are asked for: refactorings alone, or what is mended on saving', async () => {
    const kinds = async (at: string, only?: string[]) => (await ask(at, only)).map(({ kind }) => kind);
    expect(await kinds('250 mm', ['refactor'])).toEqual(['refactor.rewrite']);
    expect(await kinds('250 mm', ['refactor.move'])).toEqual([]);
    expect(await kinds('250 mm', ['quickfix'])).toEqual([]);
    expect(await kinds('EXTENSION')).toEqual(['quickfix']);
    const [all, ...others] = await ask('Quay', ['source.fixAll']);
    expect(others).toEqual([]);
    expect(all && after(all, 'day.trib', day)).toBe(day.replace('EXTENSION', 'extension'));
  });
});
