/** The text of a first session, for a client that opens it as a new file. */
import { ErrorCodes, ResponseError, type Connection } from 'vscode-languageserver';
import { isDay, newSession } from '../record/notes/new-session.ts';

/** Asked with `{ date?, name? }`: the day as `YYYY-MM-DD`, and the name of the job; what is not said stays a question. */
const NEW_SESSION = 'tribrach/newSession';

export function answerNewSession(connection: Connection): void {
  connection.onRequest(NEW_SESSION, (asked: unknown): { text: string } => {
    const { date, name } = (asked ?? {}) as Readonly<Record<string, unknown>>;
    if (typeof date === 'string' && !isDay(date))
      throw new ResponseError(ErrorCodes.InvalidParams, `${date} is no day written as YYYY-MM-DD`);
    return {
      text: newSession(typeof date === 'string' ? date : null, typeof name === 'string' ? name : null),
    };
  });
}
