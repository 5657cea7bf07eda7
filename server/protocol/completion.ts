/** Offers as completion items, each with the stretch that it replaces; of a name, its entry is shown when one looks at it. */
import {
  CompletionItemKind,
  InsertTextFormat,
  MarkupKind,
  type CompletionItem,
  type CompletionList,
  type Connection,
  type InitializeParams,
  type MarkupContent,
} from 'vscode-languageserver';
import { completionAt, type Offer } from '../features/completion/completion.ts';
import { wholeEntriesFor, type WholeEntry } from '../features/completion/whole-entries.ts';
import type { Now } from '../features/completion/offered-times.ts';
import { writtenDown } from '../features/names.ts';
import type { Document } from '../../grammar/document.ts';
import type { OpenSessions } from './open-sessions.ts';
import { fenced } from './markdown.ts';
import { toOffset, toRange } from './to-protocol.ts';

/** What a name's item carries, to be found again. */
interface Meaning {
  readonly uri: string;
  readonly means: NonNullable<Offer['means']>;
}

export function answerCompletion(
  connection: Connection,
  sessions: OpenSessions,
  { capabilities, initializationOptions }: InitializeParams,
): void {
  const client = capabilities.textDocument?.completion?.completionItem;
  const asked = (initializationOptions ?? {}) as Readonly<Record<string, unknown>>;
  const whole =
    (asked['snippets'] === true || asked['snippets'] === 'with time') && client?.snippetSupport === true;
  const formats = client?.documentationFormat ?? [];
  const beside = client?.labelDetailsSupport === true;
  const markdown = formats.includes(MarkupKind.Markdown);
  const shown = (text: string): MarkupContent | string =>
    markdown ? { kind: MarkupKind.Markdown, value: fenced(text.split('\n'), 'tribrach') } : text;

  connection.onCompletion(({ textDocument, position }): CompletionList | null => {
    const session = sessions.at(textDocument.uri);
    if (!session) return null;
    const offset = toOffset(session.document, position);
    const offers = completionAt(sessions.inspectionOf(session), offset, session.files, now());
    const items = offers.flatMap((offer, index) => {
      const item = toItem(offer, index, session.document, offset, textDocument.uri);
      const entries = whole ? wholeEntriesFor(offer, asked['snippets'] === 'with time') : [];
      const items = [item, ...entries.map((entry) => toSnippet(entry, item))];
      return beside ? items.map(toldBeside) : items;
    });
    return { isIncomplete: offers.some(({ kind }) => kind === 'system'), items };
  });
  connection.onCompletionResolve((item): CompletionItem => {
    const { uri, means } = (item.data ?? {}) as Partial<Meaning>;
    const session = uri === undefined ? null : sessions.inspectionAt(uri)?.session;
    const text = session && means ? writtenDown(session, means) : null;
    return text === null ? item : { ...item, documentation: shown(text) };
  });
}

/** As the computer's clock has it. */
function now(): Now {
  const seconds = Math.floor(Date.now() / 1000);
  return { day: Math.floor(seconds / 86_400), seconds: seconds % 86_400 };
}

function toItem(
  offer: Offer,
  index: number,
  document: Document,
  offset: number,
  uri: string,
): CompletionItem {
  const { kind, label, beside, says, text, start, end = offset, matches, means } = offer;
  return {
    label,
    kind: KINDS[kind],
    detail: beside,
    ...(says === undefined ? {} : { documentation: says }),
    ...(means ? { data: { uri, means } satisfies Meaning } : {}),
    sortText: String(index).padStart(4, '0'),
    filterText: matches ?? label,
    textEdit: { range: toRange(document, { start, end }), newText: text },
  };
}

/** In the list itself, so that all of it can be compared; what is said at length does not repeat it. */
function toldBeside({ detail, ...item }: CompletionItem): CompletionItem {
  if (detail === undefined) return item;
  const said = typeof item.documentation === 'string' && item.documentation.includes(detail);
  return { ...item, labelDetails: { description: detail }, ...(said ? {} : { detail }) };
}

/** Behind the word alone, in the place of the same characters. */
const toSnippet = ({ name, says, body }: WholeEntry, word: CompletionItem): CompletionItem => ({
  ...word,
  label: name,
  kind: CompletionItemKind.Snippet,
  detail: says,
  documentation: body.replace(/\$\{\d+[:|]([^}|]*)\|?\}|\$0/g, '$1'),
  sortText: `${word.sortText ?? ''}-`,
  insertTextFormat: InsertTextFormat.Snippet,
  ...(word.textEdit ? { textEdit: { ...word.textEdit, newText: body } } : {}),
});

const KINDS: Readonly<Record<Offer['kind'], CompletionItemKind>> = {
  entry: CompletionItemKind.Class,
  detail: CompletionItemKind.Property,
  word: CompletionItemKind.Keyword,
  value: CompletionItemKind.EnumMember,
  unit: CompletionItemKind.Unit,
  name: CompletionItemKind.Reference,
  system: CompletionItemKind.Module,
  time: CompletionItemKind.Constant,
};
