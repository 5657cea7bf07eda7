/** Where a number stands, in words for a story: `line 12`, and the file where it is another one. */
import type { TellPlace } from '../quantities/explain.ts';
import type { Session } from '../session/session.ts';
import { whereIs } from '../session/where.ts';

export const tellPlace =
  (session: Session): TellPlace =>
  (leaf) => {
    if (leaf.origin === 'assumed') return leaf.because;
    const { path, line } = whereIs(session, leaf.place);
    return path === session.document.path ? `line ${line}` : `line ${line} of ${path}`;
  };
