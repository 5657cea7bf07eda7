/** What is handed over of an open session: its report, its key card to print, the line of its review, a comparison. */
import { ErrorCodes, ResponseError, type Connection } from 'vscode-languageserver';
import { openDocument } from '../../grammar/document.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { cardDocument } from '../record/card/card-html.ts';
import { compareInspections, isSame } from '../record/compare/compare.ts';
import { comparisonText } from '../record/compare/text.ts';
import { reviewLine } from '../record/notes/review-line.ts';
import { reportPage } from '../record/report/report.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';

/** Each is asked with `{ uri, … }` and answers `{ text }`; a session that is not open is refused. */
type Answer = (session: OpenSession, inspection: Inspection, asked: Asked) => string;
type Asked = Readonly<Record<string, unknown>>;

const ANSWERS: Readonly<Record<string, Answer>> = {
  'tribrach/report': (_, inspection) => reportPage([inspection]),
  'tribrach/cardToPrint': (session, inspection) => cardDocument(inspection, nameOf(session.path)),
  /** With `{ by, date }`. */
  'tribrach/seal': ({ files }, { session }, { by, date }) => {
    const line = reviewLine(session, files, textOf(by), textOf(date));
    if (typeof line === 'string') return line;
    throw refused(`The session cannot be sealed: ${line.unsealed.join('; ')}`);
  },
  /** With `{ old, oldName }`, the text of the older version and what to call it. */
  'tribrach/compare': (session, inspection, { old, oldName }) => {
    const before = inspect(openDocument(session.path, textOf(old)), session.files);
    const comparison = compareInspections(before, inspection);
    const title = `${textOf(oldName)} → ${nameOf(session.path)}`;
    return isSame(comparison) ? `${title}\n\nNo result differs.\n` : comparisonText(title, comparison);
  },
};

export function answerRecord(connection: Connection, sessions: OpenSessions): void {
  for (const [method, answer] of Object.entries(ANSWERS))
    connection.onRequest(method, async (params: unknown): Promise<{ text: string }> => {
      const asked = (params ?? {}) as Asked;
      const session = sessions.at(textOf(asked['uri']));
      if (!session) throw refused('The session is not open.');
      return { text: answer(session, await sessions.settled(session), asked) };
    });
}

const refused = (sentence: string) => new ResponseError(ErrorCodes.InvalidRequest, sentence);

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

const nameOf = (path: string): string => path.split('/').at(-1) ?? path;
