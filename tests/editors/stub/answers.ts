/** A language server of few answers, enough to prove that the editors' tests reach a server and hear it. */
import {
  DiagnosticSeverity,
  TextDocuments,
  TextDocumentSyncKind,
  type Connection,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';

export function answer(connection: Connection): void {
  const documents = new TextDocuments(TextDocument);
  let heights = true;

  connection.onInitialize(() => ({
    capabilities: {
      textDocumentSync: TextDocumentSyncKind.Incremental,
      hoverProvider: true,
      codeActionProvider: true,
      inlayHintProvider: true,
      renameProvider: true,
      definitionProvider: true,
      workspace: { textDocumentContent: { schemes: ['tribrach'] } },
    },
  }));
  connection.onDidChangeConfiguration(({ settings }) => {
    heights = settings?.tribrach?.inlays?.heights ?? true;
    void connection.languages.inlayHint.refresh();
  });
  const pages = new Set<string>();
  documents.onDidChangeContent(({ document }) => {
    void connection.sendDiagnostics({ uri: document.uri, diagnostics: commasIn(document) });
    for (const uri of pages) void connection.workspace.textDocumentContent.refresh(uri);
  });
  connection.onHover(({ textDocument }) => ({ contents: `reduced to ${heightOf(read(textDocument.uri))}` }));
  connection.languages.inlayHint.on(({ textDocument }) => {
    const document = read(textDocument.uri);
    const line = document
      .getText()
      .split('\n')
      .findIndex((text) => text.includes('extension'));
    return heights && line >= 0
      ? [{ position: { line, character: 99 }, label: `⇒ ${heightOf(document)}` }]
      : [];
  });
  connection.onCodeAction(({ textDocument }) =>
    commasIn(read(textDocument.uri)).map((diagnostic) => ({
      title: 'Read it as 1.283',
      kind: 'quickfix',
      diagnostics: [diagnostic],
      edit: { changes: { [textDocument.uri]: [{ range: diagnostic.range, newText: '1.283' }] } },
    })),
  );
  connection.onRenameRequest(({ textDocument, newName }) => ({
    changes: {
      [textDocument.uri]: marksIn(read(textDocument.uri)).map((range) => ({ range, newText: newName })),
    },
  }));
  connection.onDefinition(({ textDocument }) =>
    marksIn(read(textDocument.uri))
      .slice(0, 1)
      .map((range) => ({ uri: textDocument.uri, range })),
  );
  connection.workspace.textDocumentContent.on(({ uri }) => {
    pages.add(uri);
    return { text: `height to key: ${heightOf(read(decodeURIComponent(uri.split('?')[1] ?? '')))}` };
  });
  documents.listen(connection);
  connection.listen();

  function read(uri: string): TextDocument {
    const wanted = decodeURIComponent(uri);
    const found = documents.all().find((document) => decodeURIComponent(document.uri) === wanted);
    return found ?? TextDocument.create(uri, 'tribrach', 0, '');
  }
}

function commasIn(document: TextDocument) {
  return rangesOf(document, /\d,\d+/g).map((range) => ({
    range,
    severity: DiagnosticSeverity.Error,
    source: 'tribrach',
    code: 'number/decimal-comma',
    message: 'A decimal comma; write a point.',
  }));
}

function marksIn(document: TextDocument) {
  return rangesOf(document, /PM-14/g);
}

function rangesOf(document: TextDocument, pattern: RegExp) {
  return [...document.getText().matchAll(pattern)].map((match) => ({
    start: document.positionAt(match.index),
    end: document.positionAt(match.index + match[0].length),
  }));
}

function heightOf(document: TextDocument): string {
  const taped = Number(/measured +([\d.]+) m/.exec(document.getText())?.[1]);
  return `${(Math.sqrt(taped ** 2 - 0.048 ** 2) + 0.25).toFixed(3)} m`;
}
