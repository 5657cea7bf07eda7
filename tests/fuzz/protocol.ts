/** The protocol: whatever an editor sends in whatever order, every question is answered and the last state gets its findings. */
import fc from 'fast-check';
import { CancellationTokenSource, type Diagnostic, type Range } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { converse, type Conversation } from './conversation.ts';
import { placed, sessionText, stroke } from './sessions.ts';
import { law, same, target } from './target.ts';

const ADDRESSES = [
  'file:///jobs/day.trib',
  'file:///jobs/marks.trib',
  'file:///jobs/a%20b%25%F0%9D%84%9E.trib',
  'untitled:Untitled-1',
  'file:///jobs/__proto__',
];
const which = fc.nat(ADDRESSES.length - 1);
const place = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), beyond: fc.nat(3) });
const QUESTIONS = [
  ...['hover', 'completion', 'definition', 'declaration', 'references', 'documentHighlight', 'prepareRename'],
  ...[
    'rename',
    'linkedEditingRange',
    'inlayHint',
    'codeAction',
    'documentSymbol',
    'foldingRange',
    'codeLens',
  ],
  ...[
    'selectionRange',
    'documentLink',
    'formatting',
    'rangeFormatting',
    'rangesFormatting',
    'onTypeFormatting',
  ],
  ...['semanticTokens/full', 'semanticTokens/range'],
]
  .map((question) => `textDocument/${question}`)
  .concat('workspace/symbol', 'workspace/willRenameFiles', 'tribrach/drawings');
const anything = fc.oneof(
  fc.constantFrom(null, {}, [], 7, '', { textDocument: null }, { textDocument: {} }, { uri: 7 }),
  fc.constantFrom(
    { textDocument: { uri: ADDRESSES[0] }, position: { line: -1, character: -1 } },
    { textDocument: { uri: ADDRESSES[0] }, position: { line: 1e9, character: 2 ** 31 } },
    { textDocument: { uri: ADDRESSES[0] }, position: { line: 'x', character: null } },
    { textDocument: { uri: ADDRESSES[0], version: 2 }, contentChanges: [{ range: {}, text: 7 }] },
    { textDocument: { uri: ADDRESSES[0], version: 2 }, contentChanges: null },
    { textDocument: { uri: 'file:///%E0%A4%A', languageId: '', version: 1, text: null } },
    { changes: [{ uri: '__proto__', type: 9 }, {}] },
    { settings: { tribrach: { inlays: { __proto__: 1, heights: 'no' } } } },
  ),
  fc.jsonValue(),
);

const step = fc.oneof(
  { weight: 3, arbitrary: fc.record({ do: fc.constant('open'), which, text: sessionText }) },
  {
    weight: 8,
    arbitrary: fc.record({
      do: fc.constant('change'),
      which,
      strokes: fc.array(stroke, { minLength: 1, maxLength: 4 }),
      version: fc.constantFrom(1, 1, 1, 5, 0, -3),
      whole: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('close'), which }) },
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constant('ask'),
      which,
      question: fc.constantFrom(...QUESTIONS),
      from: place,
      to: place,
      name: fc.constantFrom('PM-9', '__proto__', '', '?', 'a b', '𝄞', 'mark'),
      cancelled: fc.boolean(),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('misuse'),
      method: fc.constantFrom(
        ...QUESTIONS,
        ...['textDocument/didOpen', 'textDocument/didChange', 'textDocument/didClose', 'workspace/symbol'],
        ...['workspace/didChangeWatchedFiles', 'workspace/didChangeConfiguration', '$/cancelRequest', 'x/y'],
        ...['tribrach/drawings', 'workspace/textDocumentContent', 'textDocument/diagnostic', '__proto__'],
      ),
      parameters: anything,
      asked: fc.boolean(),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('bytes'),
      text: fc.constantFrom(
        ...[
          '{',
          '{}',
          '[]',
          '7',
          'null',
          '""',
          '{"jsonrpc":"2.0"}',
          '{"jsonrpc":"2.0","id":{},"method":1}',
          '\0',
        ],
        ...['{"jsonrpc":"2.0","id":1,"result":null}', '{"jsonrpc":"1.0","method":"x"}', '\ud800'],
      ),
    }),
  },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('breathe'), late: fc.boolean() }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('task') }) },
);
type Step = typeof step extends fc.Arbitrary<infer Of> ? Of : never;

/** The texts as an editor keeps them, by an implementation of others. */
type Texts = Map<string, TextDocument>;

const conversation = target(
  'conversation',
  12,
  fc.array(step, { minLength: 3, maxLength: 25 }),
  async (steps) => {
    const talk = await converse({ textDocument: { publishDiagnostics: { versionSupport: true } } });
    try {
      const texts: Texts = new Map();
      const answers: Promise<void>[] = [];
      for (const one of steps) await take(one, talk, texts, answers);
      await talk.breathe(true);
      await within(Promise.all(answers), talk, 'a question was never answered');
      for (const { uri, diagnostics } of talk.published)
        law(diagnostics.length === 0 || ADDRESSES.includes(uri), `findings of ${uri}`);
      await compared(texts, talk);
    } finally {
      talk.end();
    }
  },
);

async function take(one: Step, talk: Conversation, texts: Texts, answers: Promise<void>[]): Promise<void> {
  const { client } = talk;
  if (one.do === 'breathe' && 'late' in one) return talk.breathe(one.late);
  if (one.do === 'task') return talk.oneTask();
  if (one.do === 'bytes' && 'text' in one) {
    const length = Buffer.byteLength(one.text);
    return talk.write(`Content-Length: ${length}\r\n\r\n${one.text}`);
  }
  if ('method' in one) {
    // What opens or changes a text would be heard, and the two sides would no longer speak of the same one.
    if (/did(?:Open|Change|Close)$/.test(one.method) && speaksOfAText(one.parameters)) return;
    if (one.asked && !one.method.includes('did')) {
      const answer = client.sendRequest(one.method, one.parameters).then(
        () => undefined,
        () => undefined,
      );
      answers.push(answer);
    } else await client.sendNotification(one.method, one.parameters);
    return;
  }
  if (!('which' in one)) return;
  const uri = ADDRESSES[one.which] ?? '';
  const document = texts.get(uri);
  if ('text' in one) {
    texts.set(uri, TextDocument.create(uri, 'tribrach', 1, one.text));
    const textDocument = { uri, languageId: 'tribrach', version: 1, text: one.text };
    await client.sendNotification('textDocument/didOpen', { textDocument });
  } else if ('strokes' in one) await change(one, uri, document, talk, texts);
  else if ('question' in one) ask(one, uri, document, talk, answers);
  else {
    texts.delete(uri);
    await client.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }
}

const speaksOfAText = (parameters: unknown) => JSON.stringify(parameters)?.includes('"uri"') ?? false;

async function change(
  { strokes, version, whole }: Extract<Step, { strokes: unknown }>,
  uri: string,
  before: TextDocument | undefined,
  talk: Conversation,
  texts: Texts,
): Promise<void> {
  let document = before ?? TextDocument.create(uri, 'tribrach', 1, '');
  const next = document.version + version;
  const contentChanges = strokes.map((one, index) => {
    const { start, end, put } = placed(one, document.getText());
    const event =
      whole && index === 0
        ? { text: document.getText() + put }
        : { range: { start: document.positionAt(start), end: document.positionAt(end) }, text: put };
    document = TextDocument.update(document, [event], next);
    return event;
  });
  if (before) texts.set(uri, document);
  await talk.client.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: next },
    contentChanges,
  });
}

function ask(
  { question, from, to, name, cancelled }: Extract<Step, { question: unknown }>,
  uri: string,
  document: TextDocument | undefined,
  talk: Conversation,
  answers: Promise<void>[],
): void {
  const text = document?.getText() ?? 'x';
  const position = ({ at, beyond }: { at: number; beyond: number }) => {
    const { line, character } = document?.positionAt(Math.floor(at * text.length)) ?? {
      line: 3,
      character: 4,
    };
    return { line: line + (beyond === 1 ? 1000 : 0), character: character + (beyond === 2 ? 5000 : 0) };
  };
  const [start, end] = [position(from), position(to)];
  const source = new CancellationTokenSource();
  const answer = talk.client.sendRequest(
    question,
    {
      textDocument: { uri },
      uri,
      width: to.at * 2000,
      query: name,
      files: [{ oldUri: uri, newUri: `${uri}.moved` }],
      ch: '\n',
      ranges: [{ start, end }],
      position: start,
      positions: [start, end],
      range: { start, end },
      context: { diagnostics: [], includeDeclaration: true },
      options: { tabSize: 2, insertSpaces: true },
      newName: name,
    },
    source.token,
  );
  if (cancelled) source.cancel();
  answers.push(
    answer.then(
      () => undefined,
      (error: { code?: number; message?: string }) => {
        // -32603 is a fault of the server; a name that cannot be given and a question that was withdrawn are answers.
        law(error.code !== -32603, `${question} fails: ${error.message ?? ''}`);
      },
    ),
  );
}

/** The last findings of each open text are those that a server gives who meets the texts as they are now. */
async function compared(texts: Texts, talk: Conversation): Promise<void> {
  const fresh = await converse({ textDocument: { publishDiagnostics: { versionSupport: true } } });
  try {
    for (const [uri, document] of texts)
      await fresh.client.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'tribrach', version: document.version, text: document.getText() },
      });
    await fresh.breathe(true);
    for (const [uri, document] of texts) {
      const last = talk.published.findLast((news) => news.uri === uri);
      const wanted = fresh.published.findLast((news) => news.uri === uri);
      law(last !== undefined && wanted !== undefined, `there are no findings of ${uri}`);
      law(last?.version === document.version, `findings of version ${last?.version ?? NaN} stand last`);
      same(
        last?.diagnostics,
        wanted?.diagnostics,
        `the last findings of ${uri} are not those of its last text`,
      );
      for (const one of last?.diagnostics ?? []) liesIn(document, one);
    }
  } finally {
    fresh.end();
  }
}

function liesIn(document: TextDocument, { range, code }: Diagnostic): void {
  const inside = ({ line, character }: Range['start']) => {
    const offset = document.offsetAt({ line, character });
    const back = document.positionAt(offset);
    return back.line === line && back.character === character;
  };
  law(inside(range.start) && inside(range.end), `${String(code)} stands outside the text`);
}

async function within(done: Promise<unknown>, talk: Conversation, sentence: string): Promise<void> {
  let settled = false;
  const end = done.finally(() => (settled = true));
  for (let turn = 0; turn < 400 && !settled; turn += 1) await talk.breathe(true);
  law(settled, sentence);
  await end;
}

export const PROTOCOL = [conversation];
