/** Points that cannot be read: the file, its columns, or single rows of it, with the file's own line numbers. */
import type { Place } from '../../../grammar/tree.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { kind, type Severity } from '../finding.ts';
import { unreadIn } from '../unread.ts';
import { short } from '../words.ts';

interface Unreadable {
  readonly place: Place;
  readonly severity: Severity;
  readonly sentence: string;
}

export const pointsUnreadable = kind({
  code: 'points/unreadable',
  find: ({ derivation }) => derivation.points.flatMap(problemsOf),
  tell: ({ severity, sentence, place }) => ({
    severity,
    message: sentence,
    follows: unreadIn(place, 'columns', 'separator', 'decimal'),
  }),
});

function problemsOf(set: PointSet): Unreadable[] {
  const { problems, refused } = set.scan();
  const file = set.path ?? '';
  if (refused !== null)
    return [
      {
        place: set.placeOf(1),
        severity: 'warning',
        sentence: `The points in ${short(file)} cannot be read: ${refused}. Nothing can be said of them here.`,
      },
    ];
  const columns = set.problems.map(({ sentence, place }): Unreadable => ({
    place,
    severity: 'warning',
    sentence,
  }));
  const told = new Set(columns.map(({ sentence }) => sentence));
  const spoilt = set.problems.some(({ spoilsRows }) => spoilsRows);
  const own = spoilt ? [] : problems.filter(({ sentence }) => !told.has(sentence));
  const rows = own.slice(0, MOST).map(({ sentence, line }): Unreadable => ({
    place: set.placeOf(line ?? 1),
    severity: 'warning',
    sentence:
      set.kind === 'file' ? `${short(file)}${line === undefined ? '' : `:${line}`}: ${sentence}` : sentence,
  }));
  const rest = own.length - rows.length;
  const more: Unreadable = {
    place: set.placeOf(1),
    severity: 'warning',
    sentence: `${short(file)}: ${rest} more ${rest === 1 ? 'problem is' : 'problems are'} not told here.`,
  };
  return [...columns, ...rows, ...(rest > 0 ? [more] : [])];
}

/** A file that is wrong throughout must not drown the rest. */
const MOST = 20;
