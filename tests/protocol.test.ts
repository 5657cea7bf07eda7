/** One conversation with the built language server over a real connection, as an editor holds it. */
import { readFileSync, writeFileSync } from 'node:fs';
import type {
  ClientCapabilities,
  CodeAction,
  CompletionItem,
  CompletionList,
  Diagnostic,
  DocumentDiagnosticReport,
  Hover,
  InlayHint,
  Location,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { NO_FILES } from '../server/session/files.ts';
import type { SessionDrawings } from '../server/record/drawings/session-drawings.ts';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';
import { typist } from './typist.ts';

const marks = `job "Control of the harbour"
  grid        EPSG:3763
mark PM-14 "brass bolt, pier deck"
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2026-04-02
  found       intact
`;
const day = `job "Breakwater"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
use "marks.trib"
antenna A1 "choke ring"
  phase-centre 92 mm above arp
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1,284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
  remark      "𝄞 flat 𝄞" 5
`;
const other = `job "Quay"
  grid        EPSG:3763
use "marks.trib"
check ODD on PM-14 at 09:00
`;

const withCode = (code: string) => (diagnostic: Diagnostic) => diagnostic.code === code;

beforeAll(buildProgram);

describe('a conversation with the built server', () => {
  const folder = folderWith({ 'marks.trib': marks, 'day.trib': day, 'quay work.trib': other });
  let client: Client;
  let hand: ReturnType<typeof typist>;

  beforeAll(async () => {
    client = await startClient(folder.path(), {
      textDocument: { publishDiagnostics: { versionSupport: true }, hover: { contentFormat: ['markdown'] } },
      workspace: {
        inlayHint: { refreshSupport: true },
        didChangeWatchedFiles: { dynamicRegistration: true },
      },
    });
    hand = typist(client, 'day.trib', day);
  });
  afterAll(() => {
    client.kill();
    folder.remove();
  });

  it('counts in UTF-16 units and takes changes in pieces', () => {
    expect(client.capabilities).toMatchObject({
      positionEncoding: 'utf-16',
      textDocumentSync: { openClose: true, change: 2 },
      hoverProvider: true,
      inlayHintProvider: true,
      renameProvider: { prepareProvider: true },
    });
  });

  it('publishes findings at their place, with the version that they are about', async () => {
    const found = await client.findings(hand.uri, 1);
    const comma = found.find(withCode('number/decimal-comma'));
    expect(comma).toMatchObject({ severity: 1, source: 'tribrach' });
    expect(comma?.range).toEqual({ start: hand.place('1,284'), end: hand.place('1,284', 5) });
    expect(found.filter(withCode('syntax/unreadable-file'))).toEqual([]);
  });

  it('keeps its columns through edits in a line with surrogate pairs, and within one', async () => {
    const start = async () => {
      const found = await client.findings(hand.uri, hand.version());
      return found.find(withCode('syntax/leftover'))?.range.start;
    };
    expect(await start()).toEqual(hand.place('" 5', 2));
    hand.type('flat', 0, 4, 'sharp𝄞');
    expect(await start()).toEqual(hand.place('" 5', 2));
    hand.type('𝄞 sharp', 1, 1, '');
    expect(hand.text()).toContain('"\ud834 sharp');
    expect(await start()).toEqual(hand.place('" 5', 2));
    hand.type('\ud834 sharp', 0, 1, '𝄞');
    expect(await start()).toEqual(hand.place('" 5', 2));
    expect(hand.text()).toContain('"𝄞 sharp𝄞 𝄞" 5');
  });

  it('offers fixes, and the finding leaves when one is applied', async () => {
    const [comma] = (await client.findings(hand.uri, hand.version())).filter(
      withCode('number/decimal-comma'),
    );
    const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: hand.uri },
      range: comma?.range,
      context: { diagnostics: [comma] },
    });
    const fix = actions.find(({ title }) => title.includes('1.284'));
    expect(fix?.diagnostics).toEqual([comma]);
    hand.apply(fix?.edit?.changes?.[hand.uri] ?? []);
    expect(hand.text()).toContain('  measured    1.284 m to foot, 48 mm off centre, at 07:52\n');
    const left = await client.findings(hand.uri, hand.version());
    expect(left.filter(withCode('number/decimal-comma'))).toEqual([]);
  });

  it('shows derived heights at line ends and can be told not to', async () => {
    const ask = () =>
      client.request<InlayHint[]>('textDocument/inlayHint', {
        textDocument: { uri: hand.uri },
        range: hand.whole(),
      });
    // √(1.284² − 0.048²) + 0.250 = 1.5331 m, by hand.
    const arp = (await ask()).find(({ label }) => label === '→ ARP 1.533 m');
    expect(arp?.position).toEqual(hand.place('at 07:52', 'at 07:52'.length));
    const heights = (wanted: boolean) =>
      client.notify('workspace/didChangeConfiguration', {
        settings: { tribrach: { inlays: { heights: wanted, residuals: true, differences: true } } },
      });
    await heights(false);
    expect((await ask()).filter(({ label }) => String(label).includes('ARP'))).toEqual([]);
    expect(client.asked).toContain('workspace/inlayHint/refresh');
    await heights(true);
    expect((await ask()).length).toBeGreaterThan(0);
  });

  it('tells the derivation when asked about a value', async () => {
    const hover = await client.request<Hover>('textDocument/hover', {
      textDocument: { uri: hand.uri },
      position: hand.place('1.284', 2),
    });
    expect(JSON.stringify(hover.contents)).toContain('√(1.284² − 0.048²) + 0.25');
    expect(hover.range).toEqual({ start: hand.place('1.284'), end: hand.place('1.284', 7) });
  });

  it('offers marks with their coordinates', async () => {
    const offers = await client.request<CompletionList>('textDocument/completion', {
      textDocument: { uri: hand.uri },
      position: hand.place('PM-14 with', 2),
    });
    expect(offers.items.find(({ label }) => label === 'PM-14')).toMatchObject({
      detail: expect.stringContaining('-41203.118 m E'.replace('-', '−')) as string,
      textEdit: {
        range: { start: hand.place('PM-14 with'), end: hand.place('PM-14 with', 2) },
        newText: 'PM-14',
      },
    });
  });

  it('shows the entry of a mark that is looked at', async () => {
    const offers = await client.request<CompletionList>('textDocument/completion', {
      textDocument: { uri: hand.uri },
      position: hand.place('PM-14 with', 2),
    });
    const mark = offers.items.find(({ label }) => label === 'PM-14');
    const looked = await client.request<CompletionItem>('completionItem/resolve', mark);
    expect(looked).toEqual({ ...mark, documentation: marks.slice(marks.indexOf('mark PM-14')).trimEnd() });
    expect(await client.request('completionItem/resolve', { label: 'BASE', data: { uri: 'x' } })).toEqual({
      label: 'BASE',
      data: { uri: 'x' },
    });
  });

  it('goes to the file that writes a mark down, and finds every session that speaks of it', async () => {
    const asked = { textDocument: { uri: hand.uri }, position: hand.place('PM-14 with', 1) };
    const definition = await client.request<Location>('textDocument/definition', asked);
    expect(definition).toEqual({
      uri: client.uri('marks.trib'),
      range: { start: { line: 2, character: 5 }, end: { line: 2, character: 10 } },
    });
    const references = await client.request<Location[]>('textDocument/references', {
      ...asked,
      context: { includeDeclaration: true },
    });
    expect(references.map(({ uri }) => uri).sort()).toEqual(
      ['day.trib', 'marks.trib', 'quay work.trib'].map(client.uri).sort(),
    );
  });

  it('renames a mark in the files that lie on the disk, too', async () => {
    const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
      textDocument: { uri: hand.uri },
      position: hand.place('PM-14 with', 1),
      newName: 'pier bolt',
    });
    for (const [name, wanted] of [
      ['marks.trib', 'mark "pier bolt" "brass bolt, pier deck"'],
      ['quay work.trib', 'check ODD on "pier bolt" at 09:00'],
    ] as const) {
      const text = readFileSync(folder.path(name), 'utf8');
      const document = TextDocument.create('', 'tribrach', 0, text);
      expect(TextDocument.applyEdits(document, edit.changes?.[client.uri(name)] ?? [])).toContain(wanted);
    }
    expect(edit.changes?.[hand.uri]).toHaveLength(1);
    const taken = client.request('textDocument/rename', {
      textDocument: { uri: hand.uri },
      position: hand.place('A1 "choke'),
      newName: '?',
    });
    await expect(taken).rejects.toThrow('A name is a word');
  });

  it('hears of a file that changes on the disk', async () => {
    const unknown = (news: { diagnostics: Diagnostic[] }) =>
      news.diagnostics.some(({ message }) => String(message).includes('PM-14'));
    writeFileSync(folder.path('marks.trib'), marks.replaceAll('PM-14', 'PM-15'));
    const changed = { changes: [{ uri: client.uri('marks.trib'), type: 2 }] };
    await client.notify('workspace/didChangeWatchedFiles', changed);
    await client.findings(hand.uri, hand.version(), unknown);
    writeFileSync(folder.path('marks.trib'), marks);
    await client.notify('workspace/didChangeWatchedFiles', changed);
    await client.findings(hand.uri, hand.version(), (news) => !unknown(news));
    expect(client.asked).toContain('client/registerCapability');
  });

  it('takes a text open in the editor before the one on the disk', async () => {
    const used = typist(client, 'marks.trib', marks);
    used.type('mark PM-14', 5, 5, 'PM-16');
    await client.findings(hand.uri, hand.version(), ({ diagnostics }) =>
      diagnostics.some(({ message }) => String(message).includes('PM-14')),
    );
    await client.notify('textDocument/didClose', { textDocument: { uri: used.uri } });
    await client.findings(hand.uri, hand.version(), ({ diagnostics }) =>
      diagnostics.every(({ message }) => !String(message).includes('PM-14')),
    );
  });

  it('gives the last of many keystrokes its findings', async () => {
    for (let count = 0; count < 200; count += 1) hand.type('1.284 m', 5, 0, ' ');
    hand.type('1.284 ', 1, 1, ',');
    const found = await client.findings(hand.uri, hand.version());
    expect(found.find(withCode('number/decimal-comma'))?.range.start).toEqual(hand.place('1,284'));
  });

  it('answers every other question without a complaint', async () => {
    const at = { textDocument: { uri: hand.uri }, position: hand.place('BASE') };
    const about = { textDocument: { uri: hand.uri } };
    const answers = {
      outline: await client.request<unknown[]>('textDocument/documentSymbol', about),
      folds: await client.request<unknown[]>('textDocument/foldingRange', about),
      lenses: await client.request<unknown[]>('textDocument/codeLens', about),
      links: await client.request<{ target: string }[]>('textDocument/documentLink', about),
      highlights: await client.request<unknown[]>('textDocument/documentHighlight', at),
      selections: await client.request<unknown[]>('textDocument/selectionRange', {
        ...about,
        positions: [at.position],
      }),
      symbols: await client.request<unknown[]>('workspace/symbol', { query: 'pm' }),
      formatting: await client.request<TextEdit[]>('textDocument/formatting', {
        ...about,
        options: { tabSize: 2, insertSpaces: true },
      }),
    };
    for (const [question, answer] of Object.entries(answers))
      expect(answer.length, question).toBeGreaterThan(0);
    // Written down in this line, and nowhere else.
    expect(answers.highlights).toEqual([expect.objectContaining({ kind: 3 })]);
    expect(answers.links[0]?.target).toBe(client.uri('marks.trib'));
    const page = await client.request<{ text: string }>('workspace/textDocumentContent', {
      uri: `tribrach:/day.trib/what%20to%20key?${encodeURIComponent(hand.uri)}`,
    });
    expect(page.text).toContain('61.201 m');
  });

  it('draws the session for the width that it is told, and says where nothing is open', async () => {
    const drawn = (asked?: unknown) => client.request<SessionDrawings | null>('tribrach/drawings', asked);
    const answer = await drawn({ uri: hand.uri, width: 400 });
    expect(answer?.drawings.map(({ name }) => name)).toEqual(['height BASE', 'plan', 'day', 'residuals']);
    for (const { svg } of answer?.drawings ?? []) expect(svg).toMatch(/^<svg [^>]*width="400"/);
    expect((await drawn({ uri: hand.uri, width: 'wide' }))?.drawings[0]?.svg).toContain(' width="680"');
    expect((await drawn({ uri: hand.uri, width: 1e9 }))?.drawings[0]?.svg).toContain(' width="1200"');
    for (const strange of [{ uri: client.uri('unopened.trib'), width: 400 }, { uri: 7 }, [], undefined])
      expect(await drawn(strange)).toBeNull();
  });

  it('writes a first session, with the day and the name that it is told', async () => {
    const written = (asked?: unknown) => client.request<{ text: string }>('tribrach/newSession', asked);
    const { text } = await written({ date: '2026-05-19', name: 'Quay "north"\nand root' });
    const { session } = inspect(openDocument('new.trib', text), NO_FILES);
    expect(session.job).toMatchObject({ title: 'Quay "north" and root', date: { typed: '2026-05-19' } });
    const open = await written();
    expect(open.text).toBe(text.replace('2026-05-19', '?').replace('"Quay ""north"" and root"', '"?"'));
    for (const strange of [{ date: 7, name: {} }, [], 'today']) expect(await written(strange)).toEqual(open);
    await expect(written({ date: '2026-02-30' })).rejects.toThrow('2026-02-30 is no day');
    await expect(written({ date: 'today' })).rejects.toThrow('today is no day');
  });

  it('ends when it is told to, having said nothing aside', async () => {
    expect(await client.stop()).toEqual({ status: 0, complained: '' });
  });
});

describe('a client that asks for findings itself', () => {
  it('gets them, and is told when nothing has changed', async () => {
    const folder = folderWith({});
    const client = await startClient(folder.path(), { textDocument: { diagnostic: {} } });
    try {
      expect(client.capabilities).toHaveProperty('diagnosticProvider');
      // Some clients ask before they open.
      await client.request('textDocument/diagnostic', { textDocument: { uri: client.uri('day.trib') } });
      const hand = typist(client, 'day.trib', day);
      const ask = (previousResultId?: string) =>
        client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
          textDocument: { uri: hand.uri },
          ...(previousResultId === undefined ? {} : { previousResultId }),
        });
      const first = await ask();
      expect(first.kind === 'full' && first.items.some(withCode('number/decimal-comma'))).toBe(true);
      expect(await ask(first.resultId)).toMatchObject({ kind: 'unchanged' });
      expect(client.asked).toContain('workspace/diagnostic/refresh');
      hand.type('1,284', 1, 1, '.');
      const second = await ask(first.resultId);
      expect(second.kind === 'full' && second.items.some(withCode('number/decimal-comma'))).toBe(false);
    } finally {
      client.kill();
      folder.remove();
    }
  });
});

describe('the verdict beside the findings', () => {
  const wanting = async (capabilities: ClientCapabilities, options?: unknown) => {
    const folder = folderWith({});
    const client = await startClient(folder.path(), capabilities, options);
    const mark = marks.slice(marks.indexOf('mark PM-14'));
    const hand = typist(client, 'day.trib', day.replace('use "marks.trib"\n', mark));
    const asked = () =>
      client.request('textDocument/diagnostic', { textDocument: { uri: hand.uri } }).catch(() => null);
    const verdicts = () => client.told.filter(({ method }) => method === 'tribrach/verdict');
    return { client, hand, asked, verdicts, end: () => (client.kill(), folder.remove()) };
  };

  it.each([
    ['published', {}],
    ['pulled', { textDocument: { diagnostic: {} } }],
  ])('comes with findings that are %s, and again when it is another', async (_, capabilities) => {
    const { client, hand, asked, verdicts, end } = await wanting(capabilities, { verdict: true });
    const settled = async () => {
      if ('textDocument' in capabilities) await asked();
      else await client.findings(hand.uri, hand.version());
      await client.request('textDocument/documentSymbol', { textDocument: { uri: hand.uri } });
    };
    try {
      await settled();
      // The comma and the number behind the remark.
      expect(verdicts().map(({ parameters }) => parameters)).toEqual([
        {
          uri: hand.uri,
          state: 'unchecked',
          verdict: expect.stringMatching(/\.$/) as string,
          next: expect.stringContaining('number/decimal-comma') as string,
          findings: expect.objectContaining({ error: 2 }) as object,
        },
      ]);
      hand.type('1,284', 1, 1, '.');
      await settled();
      expect(verdicts().at(-1)?.parameters).toMatchObject({ findings: { error: 1 } });
      const many = verdicts().length;
      hand.type('choke ring', 0, 5, 'CHOKE');
      await settled();
      expect(verdicts()).toHaveLength(many);
    } finally {
      end();
    }
  });

  it('is not sent to a client that has not asked', async () => {
    const { client, hand, verdicts, end } = await wanting({});
    try {
      await client.findings(hand.uri, hand.version());
      await client.request('textDocument/documentSymbol', { textDocument: { uri: hand.uri } });
      expect(verdicts()).toEqual([]);
    } finally {
      end();
    }
  });
});
