/** Details under an entry that has no such details; lines that belong together are told together. */
import type { Place } from '../../../grammar/tree.ts';
import type { RemarkOf } from '../../session/remark.ts';
import { kind, type Subject } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { missingEntry, unreadIn } from '../unread.ts';
import { oneOf } from '../words.ts';

interface Misplaced {
  readonly place: Place;
  readonly remark: RemarkOf<'misplaced-detail'>;
  /** More such lines of the same entry. */
  readonly others: readonly Place[];
  /** The entries that alone have such details. */
  readonly homes: readonly string[];
  /** What they would have said of the last entry above them that has such details. */
  readonly unread: readonly string[];
}

export const syntaxMisplacedDetail = kind<Misplaced>({
  code: 'syntax/misplaced-detail',
  find: misplacedByEntry,
  tell: ({ remark: { word, entry, belongs }, others, homes, unread }) => ({
    severity: 'error',
    headline: `${word} belongs to ${oneOf(belongs)}, not ${entry === '' ? 'here' : `to ${entry}`}.`,
    effect: others.length > 0 ? `This line and ${others.length} more are not read.` : 'The line is not read.',
    action: 'Move it below its entry, or add the line that opens it.',
    rests: others.map((place) => ({ message: 'This line is not read either.', place })),
    causes: [...homes.map(missingEntry), ...unread],
  }),
});

/** Where a line that opens an entry is missing, all the lines below it are misplaced for that one reason. */
function misplacedByEntry(subject: Subject): Misplaced[] {
  const byEntry = new Map<Place['entry'], RemarkOf<'misplaced-detail'>[]>();
  for (const remark of remarksAbout(subject, 'misplaced-detail')) {
    const before = byEntry.get(remark.place.entry);
    if (before) before.push(remark);
    else byEntry.set(remark.place.entry, [remark]);
  }
  return [...byEntry.values()].flatMap((remarks) => {
    const [first, ...others] = remarks;
    if (!first) return [];
    const homes = remarks.flatMap(({ belongs }) => (belongs.length === 1 ? belongs : []));
    return [
      {
        place: first.place,
        remark: first,
        others: others.map(({ place }) => place),
        homes: [...new Set(homes)],
        unread: [...new Set(remarks.flatMap((remark) => unreadAbove(subject, remark)))],
      },
    ];
  });
}

/** An entry put between others takes the lines below it away from the one above. */
function unreadAbove({ session }: Subject, { place, word, belongs }: RemarkOf<'misplaced-detail'>): string[] {
  const { entries } = session.document;
  const above = entries.slice(0, Math.max(0, entries.indexOf(place.entry)));
  const entry = above.findLast(({ header }) => belongs.includes(header.word?.word ?? ''));
  return entry ? unreadIn({ entry }, word) : [];
}
