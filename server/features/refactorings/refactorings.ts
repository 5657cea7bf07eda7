/** Other ways to write what a session says already: each is tried first, and none is offered that would change a derived value. */
import type { Inspection } from '../../inspect.ts';
import type { Files } from '../../session/files.ts';
import { cursorAt, type Cursor } from '../cursor.ts';
import { inspectedAfter, sameValues, type TextChange } from '../trial.ts';
import { movedMark } from './moved-mark.ts';
import { offCentre } from './off-centre.ts';
import { splitSum } from './split-sum.ts';

export interface Refactoring {
  readonly kind: 'rewrite' | 'move';
  readonly title: string;
  readonly edits: readonly TextChange[];
  /** Whether what has become of the session is what it was; where nothing is said, every value must be. */
  readonly keeps?: (before: Inspection, after: Inspection) => boolean;
}

/** What a kind of refactoring could do where the cursor is, before it is tried. */
export type Proposal = (cursor: Cursor, inspection: Inspection) => readonly Refactoring[];

const PROPOSALS: readonly Proposal[] = [splitSum, offCentre, movedMark];

export function refactoringsAt(inspection: Inspection, files: Files, offset: number): Refactoring[] {
  const cursor = cursorAt(inspection.session, offset);
  if (!cursor) return [];
  return PROPOSALS.flatMap((propose) => propose(cursor, inspection)).filter(({ edits, keeps = sameValues }) =>
    keeps(inspection, inspectedAfter(inspection, files, edits)),
  );
}
