/** A session without what the program failed over, so that the rest of it can be answered. */
import type { Document } from '../../grammar/document.ts';
import type { Place } from '../../grammar/tree.ts';
import { NO_FILES } from './files.ts';
import { sessionOf, type Session } from './session.ts';

/** As if the document held nothing that means anything. */
export function emptySession(document: Document): Session {
  const nothing = { ...document, length: 0, text: '', entries: [], starts: [] };
  const documents = new Map([[document.path, document]]);
  return { ...sessionOf(nothing, { ...NO_FILES }), document, documents };
}

/** As if the entry at this place were not there; null where the session does not hold it. */
export function sessionWithout(session: Session, { entry }: Place): Session | null {
  let found = false;
  const isOther = (thing: unknown) => {
    const same = typeof thing === 'object' && thing !== null && 'entry' in thing && thing.entry === entry;
    found ||= same;
    return !same;
  };
  const lesser = Object.fromEntries(
    Object.entries(session as unknown as Readonly<Record<string, unknown>>).map(([name, part]) => {
      if (Array.isArray(part)) return [name, part.every(isOther) ? part : part.filter(isOther)];
      if (!(part instanceof Map)) return [name, part];
      const kept = [...part].filter(([, thing]) => isOther(thing));
      return [name, kept.length === part.size ? part : new Map(kept)];
    }),
  );
  return found ? (lesser as unknown as Session) : null;
}
