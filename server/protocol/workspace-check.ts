/**
 * Findings of every session in the workspace, open or not. A command asks for them once; a client that pulls and starts
 * with `{ workspaceDiagnostics: true }` asks again whenever it likes. Each says how far it is, and stops when it is told to.
 * Unasked, the files that open sessions use are told for as long as they are used.
 */
import {
  DocumentDiagnosticReportKind,
  ErrorCodes,
  MessageType,
  ResponseError,
  ShowMessageNotification,
  type CancellationToken,
  type Connection,
  type Diagnostic,
  type InitializeParams,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import { addressOf, pathOf } from './addresses.ts';
import { diagnosticsIn } from './diagnostics.ts';
import type { Inspection } from '../inspect.ts';
import type { UsedFile } from '../session/session.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';

export const CHECK_WORKSPACE = 'tribrach.checkWorkspace';

/** What the command answers. */
export interface WorkspaceCheck {
  readonly sessions: number;
  /** Paths of session files that could not be read. */
  readonly unread: readonly string[];
  readonly findings: Readonly<Record<Severity, number>>;
  readonly cancelled: boolean;
}

interface Checked {
  readonly path: string;
  readonly address: string;
  /** Null where the file cannot be read. */
  readonly diagnostics: Diagnostic[] | null;
  readonly severities: readonly Severity[];
  readonly reads: ReadonlySet<string>;
}

interface Progress {
  begin(title: string, percentage?: number, message?: string, cancellable?: boolean): void;
  report(percentage: number, message: string): void;
  done(): void;
}

export function wantsWorkspace({ initializationOptions, capabilities }: InitializeParams): boolean {
  const asked = (initializationOptions ?? {}) as Readonly<Record<string, unknown>>;
  return asked['workspaceDiagnostics'] === true && capabilities.textDocument?.diagnostic !== undefined;
}

/** Hears what becomes of the texts and the files, so that what is told of those that are not open stays true. */
export interface ClosedFiles {
  opened(address: string): void;
  closed(address: string): void;
  /** An open session has been inspected: the files that it uses are told as well. */
  inspected(session: OpenSession, inspection: Inspection): void;
  filesChanged(paths: readonly string[]): void;
}

export function answerWorkspaceChecks(
  connection: Connection,
  sessions: OpenSessions,
  parameters: InitializeParams,
): ClosedFiles {
  /** Sessions that are not open and whose findings the client has been told. */
  const told = new Map<string, Checked>();
  /** Those of them that the client has asked for. */
  const asked = new Set<string>();
  const pulled = wantsWorkspace(parameters);
  const used = usedFiles();

  connection.onExecuteCommand(async ({ command, workDoneToken }, cancelled, given) => {
    if (command !== CHECK_WORKSPACE)
      throw new ResponseError(ErrorCodes.InvalidParams, `There is no command ${command}.`);
    const asks = workDoneToken === undefined && parameters.capabilities.window?.workDoneProgress === true;
    const own = asks ? await connection.window.createWorkDoneProgress() : null;
    const checked = await checkAll(own ?? given, [cancelled, ...(own ? [own.token] : [])]);
    if (own)
      void connection.sendNotification(ShowMessageNotification.type, {
        type: MessageType.Info,
        message: sentenceOf(checked),
      });
    return checked;
  });
  if (pulled) answerPulls(connection, sessions);

  async function checkAll(progress: Progress, tokens: readonly CancellationToken[]): Promise<WorkspaceCheck> {
    const findings = { error: 0, warning: 0, information: 0, hint: 0 };
    const unread: string[] = [];
    const found = new Set<string>();
    const finished = await eachSession(sessions, progress, tokens, (checked) => {
      found.add(checked.path);
      asked.add(checked.path);
      if (!checked.diagnostics) unread.push(checked.path);
      for (const severity of checked.severities) findings[severity] += 1;
      if (!pulled) tell(checked);
    });
    if (finished)
      for (const { path } of [...told.values()]) if (!found.has(path) && !used.has(path)) forget(path);
    if (pulled) connection.languages.diagnostics.refresh();
    return { sessions: found.size, unread, findings, cancelled: !finished };
  }

  /** Open sessions have theirs already. */
  function tell(checked: Checked): void {
    const { address, path, diagnostics } = checked;
    if (sessions.at(address) || !diagnostics) return forget(path);
    told.set(path, checked);
    void connection.sendDiagnostics({ uri: address, diagnostics });
  }

  function forget(path: string): void {
    const known = told.get(path);
    if (!told.delete(path) || !known) return;
    void connection.sendDiagnostics({ uri: known.address, diagnostics: [] });
  }

  async function tellUsed(path: string): Promise<void> {
    const checked = await checkedFile(path, sessions);
    if (used.has(path) && (told.has(path) || checked.severities.length > 0)) tell(checked);
  }
  const forgetUnused = (path: string) => {
    if (!asked.has(path) && !used.has(path)) forget(path);
  };

  return {
    opened: (address) => {
      const session = sessions.at(address);
      if (session) forget(session.path);
    },
    closed: (address) => {
      used.without(address).forEach(forgetUnused);
      // A session that uses it may have read it in the editor and on the disk alike, and then hears of no change.
      if (used.has(pathOf(address))) void tellUsed(pathOf(address));
    },
    inspected: ({ address }, { session }) => {
      // Who pulls for the whole workspace has them anyway.
      if (pulled) return;
      const { changed, gone } = used.by(address, session.used);
      gone.forEach(forgetUnused);
      for (const path of changed) void tellUsed(path);
    },
    filesChanged: (paths) => {
      const stale = [...told.values()].filter(({ reads }) => paths.some((path) => reads.has(path)));
      for (const { path } of stale) void checkedFile(path, sessions).then(tell);
    },
  };
}

/** Which files the open sessions use, and as what they were read last. */
function usedFiles() {
  const users = new Map<string, ReadonlyMap<string, UsedFile['document']>>();
  const NONE: ReadonlyMap<string, UsedFile['document']> = new Map();
  return {
    has: (path: string) => [...users.values()].some((own) => own.has(path)),
    by: (address: string, files: readonly UsedFile[]) => {
      const before = users.get(address) ?? NONE;
      const now = new Map(files.map(({ path, document }) => [path, document]));
      users.set(address, now);
      return {
        changed: [...now].flatMap(([path, document]) => (before.get(path) === document ? [] : [path])),
        gone: [...before.keys()].filter((path) => !now.has(path)),
      };
    },
    without: (address: string): string[] => {
      const before = [...(users.get(address) ?? NONE).keys()];
      users.delete(address);
      return before;
    },
  };
}

/** For somebody who asked by hand, and whose editor shows progress. */
function sentenceOf({ sessions, unread, findings, cancelled }: WorkspaceCheck): string {
  const many = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
  const found = `${many(findings.error, 'error')} and ${many(findings.warning, 'warning')}`;
  const rest =
    unread.length > 0 ? ` ${many(unread.length, 'file')} could not be read: ${unread.join(', ')}.` : '';
  return `${many(sessions, 'session')} checked${cancelled ? ', then stopped' : ''}: ${found}.${rest}`;
}

function answerPulls(connection: Connection, sessions: OpenSessions): void {
  connection.languages.diagnostics.onWorkspace(async (asked, cancelled, progress, partial) => {
    const known = new Map(asked.previousResultIds.map(({ uri, value }) => [uri, value]));
    const items: WorkspaceDocumentDiagnosticReport[] = [];
    await eachSession(sessions, progress, [cancelled], (checked) => {
      const report = toReport(checked, known, sessions);
      if (partial) partial.report({ items: [report] });
      else items.push(report);
    });
    return { items };
  });
}

function toReport(
  { address, diagnostics }: Checked,
  known: ReadonlyMap<string, string>,
  sessions: OpenSessions,
): WorkspaceDocumentDiagnosticReport {
  const open = sessions.at(address);
  const uri = open?.address ?? address;
  const version = open?.version ?? null;
  const items = diagnostics ?? [];
  const resultId = fingerprint(JSON.stringify(items));
  return known.get(uri) === resultId
    ? { kind: DocumentDiagnosticReportKind.Unchanged, uri, version, resultId }
    : { kind: DocumentDiagnosticReportKind.Full, uri, version, resultId, items };
}

/** Whether all have been checked, and it was not stopped on the way. */
async function eachSession(
  sessions: OpenSessions,
  progress: Progress,
  tokens: readonly CancellationToken[],
  heard: (checked: Checked) => void,
): Promise<boolean> {
  const paths = await sessions.paths();
  progress.begin('Checking the sessions', 0, `${paths.length} to check`, true);
  try {
    for (const [index, path] of paths.entries()) {
      progress.report(Math.round((100 * index) / paths.length), path.split('/').at(-1) ?? path);
      // What is typed meanwhile is answered between two sessions.
      await sessions.turn();
      if (tokens.some((token) => token.isCancellationRequested)) return false;
      heard(await checkedFile(path, sessions));
    }
    return true;
  } finally {
    progress.done();
  }
}

async function checkedFile(path: string, sessions: OpenSessions): Promise<Checked> {
  const address = addressOf(path);
  const found = await sessions.inspectionOfFile(path);
  if (!found) return { path, address, diagnostics: null, severities: [], reads: new Set([path]) };
  const diagnostics = diagnosticsIn(sessions, found.inspection);
  const severities = diagnostics.map(({ severity }) => SEVERITIES[(severity ?? 1) - 1] ?? 'error');
  return { path, address, diagnostics, severities, reads: found.reads };
}

/** FNV-1a over the text's UTF-16 units: tells whether findings are the ones that the client has. */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return `w${text.length}-${(hash >>> 0).toString(16)}`;
}
