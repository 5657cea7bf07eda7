/** The table of what is answered of the protocol, held against the library's list of messages and a real server; and what no other conversation asks. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import * as protocol from 'vscode-languageserver/node';
import type {
  CompletionList,
  LinkedEditingRanges,
  Location,
  SemanticTokens,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';
import { typist } from './typist.ts';

const TABLE = 'server/protocol/FEATURES.md';

interface Row {
  readonly method: string;
  readonly answered: string;
  readonly heldBy: string;
  readonly how: string;
}
const rows = [
  ...readFileSync(TABLE, 'utf8').matchAll(/^\| `([^`]+)` \| ([^|]*) \| ([^|]*) \| ([^|]*) \|$/gm),
].map(([, method = '', answered = '', heldBy = '', how = '']): Row => ({
  method,
  answered: answered.trim(),
  heldBy: heldBy.trim(),
  how: how.trim(),
}));
const isAnswered = (method: string) => rows.some((row) => row.method === method && row.answered === 'yes');

interface Message {
  readonly method: string;
  readonly isRequest: boolean;
  readonly toServer: boolean;
  /** Where the server announces it. */
  readonly announced: string | null;
}

/** As the library knows them; what only registers others is no message. */
const messages = Object.entries(protocol).flatMap(([name, value]): Message[] => {
  const said = value as unknown as {
    method?: unknown;
    messageDirection?: string;
    capabilities?: { server?: string };
  };
  if (typeof said.method !== 'string' || !/(Request|Notification)$/.test(name)) return [];
  return [
    {
      method: said.method,
      isRequest: name.endsWith('Request'),
      toServer: said.messageDirection !== 'serverToClient',
      announced: said.capabilities?.server ?? null,
    },
  ];
});
/** Below the library's messages, in the protocol itself. */
const BASE = ['$/cancelRequest', '$/progress', '$/setTrace', '$/logTrace'];

beforeAll(buildProgram);

describe('the table of the protocol', () => {
  it('has every message once, and no other', () => {
    expect(messages.length).toBeGreaterThan(85);
    expect(rows.map(({ method }) => method).sort()).toEqual(
      [...new Set([...messages.map(({ method }) => method), ...BASE])].sort(),
    );
  });

  it('says of each which test holds it, or why not', () => {
    for (const { method, answered, heldBy, how } of rows) {
      expect(['yes', 'no'], method).toContain(answered);
      if (answered === 'no') expect(how.length, method).toBeGreaterThan(15);
      else {
        const [, path = '', title = ''] = /\]\(\.\.\/\.\.\/([^)]+)\): (.+)$/.exec(heldBy) ?? [];
        expect(existsSync(path), `${method}: ${path}`).toBe(true);
        expect(readFileSync(path, 'utf8'), method).toContain(`it('${title}'`);
      }
    }
  });

  describe('beside a server', () => {
    const folder = folderWith({});
    let client: Client;
    beforeAll(async () => {
      client = await startClient(
        folder.path(),
        { textDocument: { diagnostic: {} }, workspace: { workspaceFolders: true } },
        { workspaceDiagnostics: true },
      );
    });
    afterAll(() => {
      client.kill();
      folder.remove();
    });

    it('says yes of what is announced, and of nothing else', () => {
      const announced = (path: string) =>
        path
          .split('.')
          .reduce<unknown>(
            (found, key) =>
              typeof found === 'object' && found !== null
                ? (found as Record<string, unknown>)[key]
                : undefined,
            client.capabilities,
          );
      const known = messages.flatMap(({ method, announced: path, toServer }) =>
        path !== null && toServer ? [{ method, path }] : [],
      );
      expect(known.length).toBeGreaterThan(50);
      for (const { method, path } of known)
        expect([method, isAnswered(method)]).toEqual([method, Boolean(announced(path))]);
    });

    it('says yes of every request that is answered, and of no other', async () => {
      const requests = messages.filter(
        ({ method, isRequest, toServer }) => isRequest && toServer && !/^(initialize|shutdown)$/.test(method),
      );
      expect(requests.length).toBeGreaterThan(40);
      for (const { method } of requests) {
        const textDocument = { uri: client.uri('nowhere.trib') };
        const parameters = {
          textDocument,
          position: { line: 0, character: 0 },
          items: [],
          previousResultIds: [],
        };
        const refused = await client.request(method, parameters).then(
          () => null,
          (error: { code?: number }) => error.code ?? 0,
        );
        const known = refused !== protocol.ErrorCodes.MethodNotFound;
        expect([method, known]).toEqual([method, isAnswered(method)]);
      }
    });
  });
});

const marks = 'mark PM-14\n  height 6.284 m orthometric\n';
const day = `use "marks.trib"
mark PM-15   "nail"
setup BASE on PM-14 at 07:50
check ONE on  PM-15 at 08:10
`;

describe('what no other conversation asks', () => {
  const folder = folderWith({ 'marks.trib': marks });
  let client: Client;
  let hand: ReturnType<typeof typist>;
  beforeAll(async () => {
    client = await startClient(folder.path(), {
      workspace: {
        semanticTokens: { refreshSupport: true },
        codeLens: { refreshSupport: true },
        inlayHint: { refreshSupport: true },
      },
    });
    hand = typist(client, 'day.trib', day);
    await client.findings(hand.uri, 1);
  });
  afterAll(() => {
    client.kill();
    folder.remove();
  });
  const under = (wanted: string) => ({
    textDocument: { uri: hand.uri },
    position: hand.place(wanted, 1),
  });
  const after = (edits: TextEdit[]) =>
    TextDocument.applyEdits(TextDocument.create('', '', 0, hand.text()), edits);
  const options = { tabSize: 2, insertSpaces: true };

  it('goes to where a name is written down, by either question', async () => {
    const places = await Promise.all(
      ['definition', 'declaration'].map((question) =>
        client.request<Location>(`textDocument/${question}`, under('PM-14 at')),
      ),
    );
    expect(places[0]?.uri).toBe(client.uri('marks.trib'));
    expect(places[1]).toEqual(places[0]);
  });

  it('says what would be renamed', async () => {
    const found = await client.request<{ placeholder: string; range: unknown }>(
      'textDocument/prepareRename',
      under('PM-14 at'),
    );
    const range = { start: hand.place('PM-14 at'), end: hand.place('PM-14 at', 5) };
    expect(found).toEqual({ placeholder: 'PM-14', range });
    expect(await client.request('textDocument/prepareRename', under('setup'))).toBeNull();
  });

  it('edits a name at all its places', async () => {
    const linked = await client.request<LinkedEditingRanges>(
      'textDocument/linkedEditingRange',
      under('PM-15 '),
    );
    expect(linked.ranges.map(({ start }) => start)).toEqual([hand.place('PM-15 '), hand.place('PM-15 at')]);
    expect(new RegExp(`^(?:${linked.wordPattern ?? ''})$`).test('PM-15')).toBe(true);
    expect(await client.request('textDocument/linkedEditingRange', under('PM-14 at'))).toBeNull();
  });

  it('lays out selections, and each line that is left', async () => {
    const about = { textDocument: { uri: hand.uri }, options };
    const line = (wanted: string) => {
      const start = hand.place(wanted);
      return { start, end: { line: start.line, character: 99 } };
    };
    const one = await client.request<TextEdit[]>('textDocument/rangeFormatting', {
      ...about,
      range: line('check ONE'),
    });
    expect(after(one)).toBe(day.replace('on  PM', 'on PM'));
    const both = await client.request<TextEdit[]>('textDocument/rangesFormatting', {
      ...about,
      ranges: [line('check ONE'), line('mark PM-15'), line('check ONE')],
    });
    expect(after(both)).toBe(day.replace('on  PM', 'on PM').replace('15   "', '15 "'));
    const left = await client.request<TextEdit[]>('textDocument/onTypeFormatting', {
      ...about,
      position: hand.place('setup BASE'),
      ch: '\n',
    });
    expect(after(left)).toBe(day.replace('15   "', '15 "'));
  });

  it('colours names by what they stand for', async () => {
    const legend = (client.capabilities['semanticTokensProvider'] as { legend: { tokenTypes: string[] } })
      .legend;
    const kinds = ({ data }: SemanticTokens) =>
      data.filter((_, index) => index % 5 === 3).map((type) => legend.tokenTypes[type]);
    const textDocument = { uri: hand.uri };
    const full = await client.request<SemanticTokens>('textDocument/semanticTokens/full', { textDocument });
    expect(kinds(full)).toEqual(['variable', 'function', 'variable', 'method', 'variable']);
    const range = { start: hand.place('check'), end: hand.place('at 08:10') };
    const part = await client.request<SemanticTokens>('textDocument/semanticTokens/range', {
      textDocument,
      range,
    });
    expect(kinds(part)).toEqual(['method', 'variable']);
  });

  it('goes on naming files that are moved', async () => {
    const edit = await client.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: client.uri('marks.trib'), newUri: client.uri('control.trib') }],
    });
    expect(after(edit.changes?.[hand.uri] ?? [])).toBe(day.replace('marks.trib', 'control.trib'));
    const files = [{ oldUri: client.uri('other.trib'), newUri: client.uri('another.trib') }];
    expect(await client.request('workspace/willRenameFiles', { files })).toBeNull();
  });

  it('asks for pages again when their session changes', async () => {
    const uri = `tribrach:/day.trib/check?${encodeURIComponent(hand.uri)}`;
    await client.request('workspace/textDocumentContent', { uri });
    hand.type('ONE', 0, 3, 'TWO');
    await client.findings(hand.uri, hand.version());
    hand.type('TWO', 0, 3, 'ONE');
    await client.findings(hand.uri, hand.version());
    expect(client.asked).toContain('workspace/textDocumentContent/refresh');
  });

  it('asks for pages again that stood open before it was started', async () => {
    const session = client.uri('reopened.trib');
    const page = `tribrach:/reopened.trib/check?${encodeURIComponent(session)}`;
    const asked = async (pages: unknown) => {
      const next = await startClient(folder.path(), {}, { pages });
      const reopened = typist(next, 'reopened.trib', 'mark A\n');
      await next.findings(reopened.uri, 1);
      await next.request('tribrach/newSession', { date: '2026-05-19' });
      next.kill();
      return next.asked;
    };
    expect(await asked([page])).toContain('workspace/textDocumentContent/refresh');
    expect(await asked([7])).not.toContain('workspace/textDocumentContent/refresh');
    expect(await asked(page)).not.toContain('workspace/textDocumentContent/refresh');
  });

  it('hands over the card, the report and a comparison of a session that is open', async () => {
    const { uri } = typist(client, 'handed.trib', 'mark A\nsetup S on A at 07:50\n  measured 1.5 m to arp\n');
    const card = await client.request<{ html: string; here: string | null }>('tribrach/keyCard', {
      uri,
      line: 3,
    });
    expect(card.here).toBe('S');
    expect(card.html).toContain('1.500 m');
    const report = await client.request<{ text: string }>('tribrach/report', { uri });
    expect(report.text).toMatch(/^<!doctype html>/);
    const old = 'mark A\nsetup S on A at 07:50\n  measured 1.6 m to arp\n';
    const compared = await client.request<{ text: string }>('tribrach/compare', { uri, old, oldName: 'old' });
    expect(compared.text).toMatch(/1\.6000? m|100 mm/);
    await expect(client.request('tribrach/report', { uri: 'file:///nowhere.trib' })).rejects.toThrow(
      'not open',
    );
  });

  it('explains the code of a finding on a page', async () => {
    const uri = `tribrach:/syntax%20indent.md?${encodeURIComponent('explains=syntax/indent')}`;
    const page = await client.request<{ text: string }>('workspace/textDocumentContent', { uri });
    expect(page.text).toMatch(/^# syntax\/indent\n[^]*\*\*What to do\.\*\*/);
  });

  it('asks for everything again that another file has made stale', async () => {
    writeFileSync(folder.path('marks.trib'), marks.replace('PM-14', 'PM-16'));
    await client.notify('workspace/didChangeWatchedFiles', {
      changes: [{ uri: client.uri('marks.trib'), type: 2 }],
    });
    await client.findings(hand.uri, hand.version(), ({ diagnostics }) =>
      diagnostics.some(({ code }) => code === 'mark/unknown'),
    );
    const wanted = ['semanticTokens', 'codeLens', 'inlayHint'].map((kind) => `workspace/${kind}/refresh`);
    await expect.poll(() => wanted.filter((method) => !client.asked.includes(method))).toEqual([]);
  });

  it('offers whole entries to clients that want them, with stops to fill in', async () => {
    const offered = async (...more: [Parameters<typeof startClient>[1], unknown?]) => {
      const other = await startClient(folder.path(), ...more);
      const { uri } = typist(other, 'new.trib', 'ma');
      const position = { line: 0, character: 2 };
      const list = await other.request<CompletionList>('textDocument/completion', {
        textDocument: { uri },
        position,
      });
      other.kill();
      return list.items.filter(
        ({ insertTextFormat }) => insertTextFormat === protocol.InsertTextFormat.Snippet,
      );
    };
    const able = { textDocument: { completion: { completionItem: { snippetSupport: true } } } };
    const mark = (await offered(able, { snippets: true })).find(({ filterText }) => filterText === 'mark');
    expect(mark?.textEdit?.newText).toContain('\n  height      ${5:?} ${6|orthometric,ellipsoidal|}\n');
    expect(mark?.documentation).toContain('\n  height      ? orthometric,ellipsoidal\n');
    expect(await offered(able)).toEqual([]);
    expect(await offered({}, { snippets: true })).toEqual([]);
  });

  it('takes what says nothing about a session', async () => {
    for (const value of ['verbose', 'off']) await client.notify('$/setTrace', { value });
    expect(await client.stop()).toEqual({ status: 0, complained: '' });
  });
});
