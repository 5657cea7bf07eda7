/** Outline, folding, growing selections, links to files, lenses and symbols of the whole workspace. */
import {
  FoldingRangeKind,
  SymbolKind,
  type CodeLens,
  type Connection,
  type DocumentSymbol,
  type FoldingRange,
  type Position,
  type SelectionRange,
  type WorkspaceSymbol,
} from 'vscode-languageserver';
import { lensesOf, type Lens } from '../features/lenses.ts';
import { linksIn, type FileLink } from '../features/links.ts';
import {
  foldsIn,
  outlineOf,
  selectionsAt,
  thingsIn,
  type Fold,
  type NamedThing,
  type OutlineNode,
} from '../features/outline.ts';
import type { Document } from '../../grammar/document.ts';
import { addressOf } from './addresses.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toLocation, toOffset, toPosition, toRange } from './to-protocol.ts';

export function answerStructure(connection: Connection, sessions: OpenSessions): void {
  connection.onDocumentSymbol(({ textDocument }) => {
    const inspection = sessions.inspectionAt(textDocument.uri);
    return inspection && outlineOf(inspection).map((node) => toSymbol(node, inspection.session.document));
  });
  connection.onFoldingRanges(({ textDocument }) => {
    const document = sessions.at(textDocument.uri)?.document;
    return document && foldsIn(document).map((fold) => toFold(fold, document));
  });
  connection.onSelectionRanges(({ textDocument, positions }) => {
    const document = sessions.at(textDocument.uri)?.document;
    return document && positions.flatMap((position) => toSelection(document, position));
  });
  connection.onDocumentLinks(({ textDocument }) => {
    const document = sessions.at(textDocument.uri)?.document;
    return document && linksIn(document).map((link) => toLink(link, document));
  });
  connection.onCodeLens(({ textDocument }) => {
    const inspection = sessions.inspectionAt(textDocument.uri);
    return inspection && lensesOf(inspection).map((lens) => toLens(lens, inspection.session.document));
  });
  connection.onWorkspaceSymbol(async ({ query }) =>
    (await sessions.everySession())
      .flatMap(thingsIn)
      .filter(({ name }) => name.toLowerCase().includes(query.toLowerCase()))
      .slice(0, MOST_SYMBOLS)
      .flatMap((thing) => toWorkspaceSymbol(thing, sessions) ?? []),
  );
}

/** More of a workspace's names nobody looks through; a longer word finds fewer. */
const MOST_SYMBOLS = 1_000;

const toFold = (fold: Fold, document: Document): FoldingRange => ({
  startLine: toPosition(document, fold.start).line,
  endLine: toPosition(document, fold.end).line,
  kind: FoldingRangeKind.Region,
});

function toSelection(document: Document, position: Position): SelectionRange[] {
  const chain = selectionsAt(document, toOffset(document, position));
  const inner = chain.reduceRight<SelectionRange | undefined>(
    (parent, at) => ({ range: toRange(document, at), ...(parent ? { parent } : {}) }),
    undefined,
  );
  return inner ? [inner] : [];
}

const toLink = ({ at, path }: FileLink, document: Document) => ({
  range: toRange(document, at),
  target: addressOf(path),
});

const toLens = ({ at, says, opensCard }: Lens, document: Document): CodeLens => ({
  range: toRange(document, at),
  command: { title: says, command: opensCard ? 'tribrach.showWhatToKey' : '' },
});

function toWorkspaceSymbol({ kind, name, at }: NamedThing, sessions: OpenSessions): WorkspaceSymbol | null {
  const location = toLocation(sessions, at);
  return location && { name, kind: SYMBOLS[kind] ?? SymbolKind.Key, containerName: kind, location };
}

function toSymbol(node: OutlineNode, document: Document): DocumentSymbol {
  return {
    name: node.name,
    detail: node.detail,
    kind: SYMBOLS[node.kind] ?? SymbolKind.Property,
    range: toRange(document, node.whole),
    selectionRange: toRange(document, node.heading),
    children: node.children.map((child) => toSymbol(child, document)),
  };
}

const SYMBOLS: Readonly<Record<string, SymbolKind>> = {
  job: SymbolKind.Package,
  use: SymbolKind.File,
  mark: SymbolKind.Constant,
  antenna: SymbolKind.Class,
  rover: SymbolKind.Class,
  surface: SymbolKind.Interface,
  ground: SymbolKind.Interface,
  setup: SymbolKind.Method,
  check: SymbolKind.Boolean,
  event: SymbolKind.Event,
  point: SymbolKind.Field,
  points: SymbolKind.Array,
  radio: SymbolKind.Object,
  stream: SymbolKind.Object,
  'tape-point': SymbolKind.EnumMember,
};
