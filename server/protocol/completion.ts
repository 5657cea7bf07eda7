/** Offers as completion items, each with the stretch that it replaces. */
import {
  CompletionItemKind,
  type CompletionItem,
  type CompletionList,
  type Connection,
} from 'vscode-languageserver';
import { completionAt, type Offer } from '../features/completion/completion.ts';
import type { Document } from '../../grammar/document.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toOffset, toRange } from './to-protocol.ts';

export function answerCompletion(connection: Connection, sessions: OpenSessions): void {
  connection.onCompletion(({ textDocument, position }): CompletionList | null => {
    const session = sessions.at(textDocument.uri);
    if (!session) return null;
    const offset = toOffset(session.document, position);
    const offers = completionAt(sessions.inspectionOf(session), offset);
    const items = offers.map((offer, index) => toItem(offer, index, session.document, offset));
    return { isIncomplete: offers.some(({ kind }) => kind === 'system'), items };
  });
}

function toItem(offer: Offer, index: number, document: Document, offset: number): CompletionItem {
  const { kind, label, beside, says, text, start, matches } = offer;
  return {
    label,
    kind: KINDS[kind],
    detail: beside,
    ...(says === undefined ? {} : { documentation: says }),
    sortText: String(index).padStart(4, '0'),
    filterText: matches ?? label,
    textEdit: { range: toRange(document, { start, end: offset }), newText: text },
  };
}

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
