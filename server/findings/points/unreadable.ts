/** Points that cannot be read: the file, its columns, or single rows of it, with the file's own line numbers. */
import type { Place } from '../../../grammar/tree.ts';
import { decimalCommasTold, type DecimalCommas } from '../../evidence/points/points-file.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { addedDetail } from '../edits.ts';
import { kind, type Fix, type Severity } from '../finding.ts';
import { unreadIn } from '../unread.ts';
import { sentence, short } from '../words.ts';

interface Unreadable {
  readonly place: Place;
  readonly severity: Severity;
  readonly message: string;
  readonly fixes?: readonly Fix[];
}

export const pointsUnreadable = kind({
  code: 'points/unreadable',
  find: ({ derivation }) => derivation.points.flatMap(problemsOf),
  tell: ({ severity, message, place }) => ({
    severity,
    message,
    follows: unreadIn(place, 'columns', 'separator', 'decimal'),
  }),
  mend: ({ fixes }) => fixes ?? [],
});

function problemsOf(set: PointSet): Unreadable[] {
  const { problems, refused, decimalCommas } = set.scan();
  const file = set.path ?? '';
  if (refused !== null)
    return [
      {
        place: set.placeOf(1),
        severity: 'warning',
        message: `Points not readable: ${short(file)}. ${sentence(refused)}.`,
      },
    ];
  const columns = set.problems.map(({ sentence: message, place }): Unreadable => ({
    place,
    severity: 'warning',
    message,
  }));
  const told = new Set(columns.map(({ message }) => message));
  const spoilt = set.problems.some(({ spoilsRows }) => spoilsRows);
  const own = spoilt ? [] : problems.filter((problem) => !told.has(problem.sentence));
  const rows = own.slice(0, MOST).map(({ sentence: problem, line }): Unreadable => ({
    place: set.placeOf(line ?? 1),
    severity: 'warning',
    ...(decimalCommas && problem === decimalCommasTold(decimalCommas)
      ? { fixes: commaFixes(set, decimalCommas) }
      : {}),
    message:
      set.kind === 'file' ? `${short(file)}${line === undefined ? '' : `:${line}`}: ${problem}` : problem,
  }));
  const rest = own.slice(MOST).reduce((sum, { unlisted = 1 }) => sum + unlisted, 0);
  const more: Unreadable = {
    place: set.placeOf(1),
    severity: 'warning',
    message: `${short(file)}: ${rest} more ${rest === 1 ? 'problem is' : 'problems are'} not shown.`,
  };
  return [...columns, ...rows, ...(rest > 0 ? [more] : [])];
}

/** How the file is written is no fact of the day; between cells that commas part, a decimal comma cannot be told. */
function commaFixes({ entry, plan }: PointSet, { isHabit }: DecimalCommas): Fix[] {
  if (entry.kind !== 'points' || entry.decimal || plan.separator === ',' || !isHabit) return [];
  const edits = [addedDetail(entry.place.path, entry.entry, 'decimal', 'comma')];
  return [{ title: 'Add the line: decimal comma', edits }];
}

/** A file that is wrong throughout must not drown the rest; with the one that counts the others, no more than a line may have. */
const MOST = 19;
