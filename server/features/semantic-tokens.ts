/** What colouring by letters alone cannot tell: of which kind a name is, and which numbers are holes. */
import { entryAt } from '../../grammar/document.ts';
import type { Entry, Span } from '../../grammar/tree.ts';
import type { Session } from '../session/session.ts';
import type { Bound } from '../session/entries.ts';
import { linesOf } from './cursor.ts';
import { declarationOf, namesIn, type NameKind } from './names.ts';

export interface SemanticToken extends Span {
  readonly kind: NameKind | 'number';
  readonly declares: boolean;
  /** A number that nothing is computed from, or a name that nothing answers to. */
  readonly hole: boolean;
}

/** In the order of the text, none over another, each within its line. */
export function semanticTokensIn(session: Session, start: number, end: number): SemanticToken[] {
  const { starts } = session.document;
  const first = entryAt(starts, start);
  const last = entryAt(starts, end);
  return session.entries.slice(first, last + 1).flatMap((bound, index) => {
    const offset = starts[first + index] ?? 0;
    return tokensOf(bound, session)
      .map((token) => ({ ...token, start: token.start + offset, end: token.end + offset }))
      .filter((token) => start <= token.start && token.end <= end);
  });
}

function tokensOf(bound: Bound, session: Session): SemanticToken[] {
  const names = namesIn(bound).flatMap((use): SemanticToken[] => {
    const { kind, declares, place } = use;
    const hole = declarationOf(session, use) === null;
    // A coordinate system that is not the session's own has a name all the same.
    if (kind === 'ground' && hole) return [];
    return [{ kind, declares, hole, start: place.start, end: place.end }];
  });
  const tokens = [...names, ...holesIn(bound.entry)].sort((one, other) => one.start - other.start);
  return tokens.filter((token, index) => token.start >= (tokens[index - 1]?.end ?? 0));
}

function holesIn(entry: Entry): SemanticToken[] {
  return linesOf(entry)
    .flatMap(({ items }) => items)
    .flatMap((item) => (item.kind === 'sum' ? item.terms : []))
    .flatMap(({ measure, uncertainty }) => [...(measure?.parts ?? []), ...(uncertainty?.parts ?? [])])
    .filter(({ numeral }) => numeral.value === null)
    .map(({ numeral: { start, end } }) => ({ kind: 'number', declares: false, hole: true, start, end }));
}
