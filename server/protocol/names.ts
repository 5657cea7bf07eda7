/** Going to names, finding and renaming them, in every session that can be found. */
import {
  DocumentHighlightKind,
  ResponseError,
  ErrorCodes,
  type Connection,
  type Location,
  type Position,
} from 'vscode-languageserver';
import { cursorAt } from '../features/cursor.ts';
import {
  declarationOf,
  editedTogether,
  everywhere,
  nameAt,
  rename,
  usesOf,
  type NameUse,
} from '../features/names.ts';
import type { Session } from '../session/session.ts';
import { offsetsOf } from '../session/where.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toLocation, toOffset, toRange, toWorkspaceEdit } from './to-protocol.ts';

interface Asked {
  readonly textDocument: { readonly uri: string };
  readonly position: Position;
}
interface Found {
  readonly session: Session;
  readonly use: NameUse;
  readonly declaration: NameUse;
}

export function answerNames(connection: Connection, sessions: OpenSessions): void {
  const writtenDownAt = (asked: Asked): Location | null => {
    const found = nameUnder(asked, sessions);
    const at = found && offsetsOf(found.session, found.declaration.place);
    return at ? toLocation(sessions, at) : null;
  };
  connection.onDefinition(writtenDownAt);
  connection.onDeclaration(writtenDownAt);
  connection.onReferences(async (asked): Promise<Location[]> => {
    const everySession = await sessions.everySession();
    const found = nameUnder(asked, sessions);
    if (!found) return [];
    return everywhere(everySession, found.declaration)
      .filter(({ declares }) => asked.context.includeDeclaration || !declares)
      .flatMap(({ at }) => toLocation(sessions, at) ?? []);
  });
  connection.onDocumentHighlight((asked) => {
    const found = nameUnder(asked, sessions);
    if (!found) return [];
    const { session, declaration } = found;
    return usesOf(session, declaration).flatMap(({ place, declares }) => {
      const at = offsetsOf(session, place);
      const kind = declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read;
      return at ? [{ range: toRange(session.document, at), kind }] : [];
    });
  });
  connection.languages.onLinkedEditingRange((asked) => {
    const found = nameUnder(asked, sessions);
    const stretches = found && editedTogether(found.session, found.use, found.declaration);
    return (
      stretches && {
        ranges: stretches.map((at) => toRange(found.session.document, at)),
        wordPattern: NAME_PATTERN,
      }
    );
  });
  answerRename(connection, sessions);
}

/** What may be typed into a name without quotes. */
const NAME_PATTERN = '[^\\s,"]+';

function answerRename(connection: Connection, sessions: OpenSessions): void {
  connection.onPrepareRename((asked) => {
    const found = nameUnder(asked, sessions);
    const at = found && offsetsOf(found.session, found.use.place);
    if (!found || !at) return null;
    return { range: toRange(found.session.document, at), placeholder: found.use.name };
  });
  connection.onRenameRequest(async (asked) => {
    // The names are looked up when every file is there: what is found before may be of a text that has changed.
    const everySession = await sessions.everySession();
    const found = nameUnder(asked, sessions);
    if (!found) return null;
    const renamed = rename(found.session, everySession, found.declaration, asked.newName);
    if ('refused' in renamed) throw new ResponseError(ErrorCodes.InvalidParams, renamed.refused);
    return toWorkspaceEdit(sessions, renamed.edits);
  });
}

function nameUnder({ textDocument, position }: Asked, sessions: OpenSessions): Found | null {
  const session = sessions.inspectionAt(textDocument.uri)?.session;
  if (!session) return null;
  const offset = toOffset(session.document, position);
  const cursor = cursorAt(session, offset);
  const use = cursor && nameAt(session, cursor.bound, offset);
  const declaration = use && declarationOf(session, use);
  return use && declaration ? { session, use, declaration } : null;
}
