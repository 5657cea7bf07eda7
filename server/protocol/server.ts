/** The language server: what it announces, and which part of the protocol each file answers. */
import {
  CodeLensRefreshRequest,
  TextDocumentSyncKind,
  type ClientCapabilities,
  type Connection,
  type InitializeParams,
  type ServerCapabilities,
} from 'vscode-languageserver';
import { attempted, isFault } from '../../grammar/fault.ts';
import type { Inspection } from '../inspect.ts';
import { faultMessage } from '../findings/program/fault.ts';
import { answerCodeActions, CODE_ACTION_KINDS } from './code-actions.ts';
import { answerCompletion } from './completion.ts';
import { answerDiagnostics, publishDiagnostics } from './diagnostics.ts';
import { answerDrawings } from './drawings.ts';
import { answerFormatting } from './formatting.ts';
import { answerHover } from './hover.ts';
import { answerInlayHints } from './inlay-hints.ts';
import { answerKeyCard } from './key-card.ts';
import { refuseOutOfTurn } from './lifecycle.ts';
import { answerMoves, MOVES } from './moved-files.ts';
import { answerNames } from './names.ts';
import { answerNewSession } from './new-session.ts';
import { openedOnly } from './opened-only.ts';
import { openSessions, type OpenSession, type OpenSessions, type Platform } from './open-sessions.ts';
import { answerPages, PAGE_SCHEME } from './pages.ts';
import { answerRecord } from './record.ts';
import { answerSemanticTokens, LEGEND } from './semantic-tokens.ts';
import { answerStructure } from './structure.ts';
import { hearFiles, hearFolders, hearSettings, hearTexts } from './synchronise.ts';
import { tellVerdicts } from './verdict.ts';
import {
  answerWorkspaceChecks,
  CHECK_WORKSPACE,
  wantsWorkspace,
  type ClosedFiles,
} from './workspace-check.ts';

export function serve(connection: Connection, platform: Platform): void {
  refuseOutOfTurn(connection);
  connection.onInitialize((parameters) => {
    const lent = guarded(connection, platform);
    start(connection, isTrusted(parameters) ? lent : openedOnly(lent), parameters);
    return { capabilities: capabilities(parameters), serverInfo: { name: 'tribrach' } };
  });
  connection.listen();
}

/** What fails over a request or a notice is told by the library; here what was put off, which would end the server. */
const guarded = (connection: Connection, platform: Platform): Platform => ({
  ...platform,
  later: (task, milliseconds) =>
    platform.later(() => {
      const done = attempted(task);
      if (isFault(done)) connection.console.error(faultMessage(done.fault));
    }, milliseconds),
});

function start(connection: Connection, platform: Platform, parameters: InitializeParams): void {
  const client = parameters.capabilities;
  const eager = !pulls(client);
  const tellVerdict = tellVerdicts(connection, parameters);
  const sessions = openSessions(platform, {
    eager,
    changed: (session) => {
      if (eager) {
        publishDiagnostics(connection, sessions, session);
        inspected(session, sessions.inspectionOf(session));
      } else askedEarlier(session);
      pagesChanged(session);
    },
    othersChanged: () => askAgain(connection, client),
  });
  function inspected(session: OpenSession, inspection: Inspection): void {
    tellVerdict(session, inspection);
    others.inspected(session, inspection);
  }
  hearFolders(connection, sessions, parameters);
  const askedEarlier: (session: OpenSession) => void = answerDiagnostics(connection, sessions, inspected);
  const pagesChanged: (session: OpenSession) => void = answerPages(connection, sessions, parameters);
  const others: ClosedFiles = answerWorkspaceChecks(connection, sessions, parameters);
  hearTexts(connection, sessions, others);
  hearFiles(connection, sessions, client, others.filesChanged);
  const wanted = hearSettings(connection, () => {
    if (client.workspace?.inlayHint?.refreshSupport === true) connection.languages.inlayHint.refresh();
  });
  answerInlayHints(connection, sessions, wanted);
  answerHover(connection, sessions, client);
  answerCompletion(connection, sessions, parameters);
  answerAll(connection, sessions);
}

function answerAll(connection: Connection, sessions: OpenSessions): void {
  answerCodeActions(connection, sessions);
  answerNames(connection, sessions);
  answerMoves(connection, sessions);
  answerStructure(connection, sessions);
  answerFormatting(connection, sessions);
  answerSemanticTokens(connection, sessions);
  answerDrawings(connection, sessions);
  answerKeyCard(connection, sessions);
  answerRecord(connection, sessions);
  answerNewSession(connection);
}

const pulls = (client: ClientCapabilities) => client.textDocument?.diagnostic !== undefined;

/** What another file's change has made stale is asked for again; of its own changes a client knows. */
function askAgain(connection: Connection, { workspace }: ClientCapabilities): void {
  if (workspace?.diagnostics?.refreshSupport === true) connection.languages.diagnostics.refresh();
  if (workspace?.inlayHint?.refreshSupport === true) void connection.languages.inlayHint.refresh();
  if (workspace?.semanticTokens?.refreshSupport === true) connection.languages.semanticTokens.refresh();
  if (workspace?.codeLens?.refreshSupport === true) void connection.sendRequest(CodeLensRefreshRequest.type);
}

/** A client that starts with `{ trusted: false }` has only its opened texts read. */
const isTrusted = ({ initializationOptions: asked }: InitializeParams): boolean =>
  (asked as Readonly<Record<string, unknown>> | null | undefined)?.['trusted'] !== false;

const capabilities = (parameters: InitializeParams): ServerCapabilities => ({
  positionEncoding: 'utf-16',
  textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
  ...(pulls(parameters.capabilities)
    ? {
        diagnosticProvider: {
          interFileDependencies: true,
          workspaceDiagnostics: wantsWorkspace(parameters),
          workDoneProgress: true,
        },
      }
    : {}),
  hoverProvider: true,
  inlayHintProvider: true,
  codeActionProvider: { codeActionKinds: CODE_ACTION_KINDS },
  completionProvider: { triggerCharacters: [' ', ':', '"'], resolveProvider: true },
  definitionProvider: true,
  declarationProvider: true,
  linkedEditingRangeProvider: true,
  referencesProvider: true,
  documentHighlightProvider: true,
  renameProvider: { prepareProvider: true },
  documentSymbolProvider: true,
  workspaceSymbolProvider: true,
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  documentLinkProvider: {},
  codeLensProvider: {},
  documentFormattingProvider: true,
  documentRangeFormattingProvider: { rangesSupport: true },
  documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
  semanticTokensProvider: { legend: LEGEND, full: true, range: true },
  executeCommandProvider: { commands: [CHECK_WORKSPACE], workDoneProgress: true },
  workspace: {
    workspaceFolders: { supported: true, changeNotifications: true },
    fileOperations: { willRename: MOVES },
    textDocumentContent: { schemes: [PAGE_SCHEME] },
  },
});
