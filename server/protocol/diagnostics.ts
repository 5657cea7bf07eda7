/** Findings as diagnostics: pulled by clients that can, published to the others. */
import {
  DiagnosticSeverity,
  DocumentDiagnosticReportKind,
  type Connection,
  type Diagnostic,
} from 'vscode-languageserver';
import type { Document } from '../../grammar/document.ts';
import { attempted, isFault, type Fault } from '../../grammar/fault.ts';
import type { Severity } from '../findings/finding.ts';
import { faultMessage, PROGRAM_FAULT } from '../findings/program/fault.ts';
import type { Inspection } from '../inspect.ts';
import { noticesOf, type Notice } from '../features/notices.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';
import { toLocation, toRange } from './to-protocol.ts';

const SOURCE = 'tribrach';

export function publishDiagnostics(
  connection: Connection,
  sessions: OpenSessions,
  session: OpenSession,
): void {
  const { address: uri, version } = session;
  void connection.sendDiagnostics({ uri, version, diagnostics: diagnosticsOf(sessions, session) });
}

/** `told` hears of each session whose findings were asked for; the function given back, of each that is opened or changes. */
export function answerDiagnostics(
  connection: Connection,
  sessions: OpenSessions,
  told: (session: OpenSession, inspection: Inspection) => void,
): (session: OpenSession) => void {
  // After a restart some clients ask about a text before they open it, and not again afterwards.
  const tooEarly = new Set<string>();
  connection.languages.diagnostics.on(async ({ textDocument: { uri }, previousResultId }) => {
    const session = sessions.at(uri);
    if (!session) {
      tooEarly.add(uri);
      return { kind: DocumentDiagnosticReportKind.Full, items: [] };
    }
    told(session, await sessions.settled(session));
    const items = diagnosticsOf(sessions, session);
    const resultId = String(session.edition);
    return resultId === previousResultId
      ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId }
      : { kind: DocumentDiagnosticReportKind.Full, resultId, items };
  });
  return ({ address }) => {
    if (tooEarly.delete(address)) connection.languages.diagnostics.refresh();
  };
}

const diagnosticsOf = (sessions: OpenSessions, session: OpenSession) =>
  diagnosticsIn(sessions, sessions.inspectionOf(session));

/** Of the inspected session's own file, which need not be open. */
export function diagnosticsIn(sessions: OpenSessions, inspection: Inspection): Diagnostic[] {
  const { document } = inspection.session;
  const told = attempted(() =>
    noticesOf(inspection).map((notice) => toDiagnostic(sessions, document, notice)),
  );
  return isFault(told) ? [faultDiagnostic(told)] : told;
}

/** Findings that cannot be told are one at the head of the file, and never none. */
const faultDiagnostic = ({ fault }: Fault): Diagnostic => ({
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  severity: DiagnosticSeverity.Error,
  source: SOURCE,
  code: PROGRAM_FAULT,
  message: faultMessage(fault),
});

function toDiagnostic(sessions: OpenSessions, document: Document, notice: Notice): Diagnostic {
  const { at, code, severity, headline, below, related } = notice;
  const relatedInformation = related.flatMap((rest) => {
    const location = toLocation(sessions, rest.at);
    return location ? [{ location, message: rest.message }] : [];
  });
  return {
    range: toRange(document, at),
    severity: SEVERITIES[severity],
    source: SOURCE,
    code,
    // A list of problems shows the first line, a hover all of them.
    message: below === '' ? headline : `${headline}\n${below}`,
    ...(relatedInformation.length > 0 ? { relatedInformation } : {}),
  };
}

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};
