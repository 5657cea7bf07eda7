/** Times that run backwards: an end before its start, or a line that is earlier than the one above it. */
import type { Place } from '../../grammar/tree.ts';
import { isHole, type Maybe } from '../quantities/value.ts';
import type { Check, Event } from '../session/entries.ts';
import type { Moment } from '../session/moments.ts';
import { kind, type Severity, type Subject } from './finding.ts';
import { instantIn, typedOf } from './when.ts';

interface Backwards {
  readonly place: Place;
  readonly severity: Severity;
  readonly message: string;
  readonly earlier: Place;
}

export const timeOrder = kind<Backwards>({
  code: 'time/order',
  find: (subject) => [
    ...endsBeforeStart(subject),
    ...recordingsBackwards(subject),
    ...reviewsBeforeTheDay(subject),
    ...linesBackwards(subject),
  ],
  tell: ({ severity, message, earlier }) => ({
    severity,
    message,
    rests: [{ message: 'What it is compared with.', place: earlier }],
  }),
});

function endsBeforeStart(subject: Subject): Backwards[] {
  return [...subject.session.setups.values()].flatMap(({ name, at, until }) =>
    backwards(
      subject,
      at,
      until,
      'error',
      (from, to) =>
        `${name} ends at ${to} and starts at ${from}, so no time falls into it. Past midnight, write the date before the time.`,
    ),
  );
}

function recordingsBackwards(subject: Subject): Backwards[] {
  return subject.session.checks.flatMap(({ observed }) =>
    backwards(
      subject,
      observed?.recording?.from ?? null,
      observed?.recording?.to ?? null,
      'error',
      (from, to) =>
        `The stretch of the recording ends at ${to} and starts at ${from}, so nothing is taken from it. Past midnight, write the date before the time.`,
    ),
  );
}

function reviewsBeforeTheDay({ session: { job, reviews } }: Subject): Backwards[] {
  const day = job?.date;
  if (!day || isHole(day)) return [];
  return reviews.flatMap(({ by, date }) =>
    date && !isHole(date) && date.day < day.day
      ? [
          {
            place: date.place,
            earlier: day.place,
            severity: 'warning' as const,
            message: `The review by ${by} is dated ${date.typed}, before the day of the session, ${day.typed}. One of the two dates is wrong.`,
          },
        ]
      : [],
  );
}

/** A line earlier than its neighbour above is no error, but the way in which a wrong hour shows. */
function linesBackwards(subject: Subject): Backwards[] {
  const { session } = subject;
  const groups: (readonly Timed[])[] = [...session.setups.values()].flatMap(({ measured, keyed }) => [
    measured.map(({ at }) => ({ name: 'This reading', at })),
    keyed.map(({ at }) => ({ name: 'This keyed value', at })),
  ]);
  groups.push(...occurrences(subject));
  return groups.flatMap((group) => {
    const timed = group.filter(({ at }) => at !== null && !isHole(at));
    return timed.flatMap((line, index) =>
      backwards(
        subject,
        timed[index - 1]?.at ?? null,
        line.at,
        'hint',
        (above, here) =>
          `${line.name} is noted at ${here}, below one at ${above}. If the order is meant, all is well; most often the hour is wrong.`,
        'strictly',
      ),
    );
  });
}

interface Timed {
  readonly name: string;
  readonly at: Maybe<Moment> | null;
}

/** Checks and events of each base, in the order of the text. */
function occurrences({ session, derivation }: Subject): Timed[][] {
  const base = new Map(derivation.checks.map(({ check, setup }) => [check, setup?.setup.name ?? '']));
  const only = session.setups.size <= 1;
  const groups = new Map<string, Timed[]>();
  const happened = session.entries.filter(
    (entry): entry is Check | Event => entry.kind === 'check' || entry.kind === 'event',
  );
  for (const entry of happened) {
    const key = only ? '' : entry.kind === 'check' ? base.get(entry) : entry.on?.name;
    if (key === undefined) continue;
    const name = entry.kind === 'check' ? `Check ${entry.name}` : 'This event';
    groups.set(key, [...(groups.get(key) ?? []), { name, at: entry.at }]);
  }
  return [...groups.values()];
}

/** @param strictly the same time twice is in order */
function backwards(
  subject: Subject,
  first: Maybe<Moment> | null,
  second: Maybe<Moment> | null,
  severity: Severity,
  message: (first: string, second: string) => string,
  strictly?: 'strictly',
): Backwards[] {
  const from = instantIn(subject, first);
  const to = instantIn(subject, second);
  if (from === null || to === null || !first || !second || isHole(first) || isHole(second)) return [];
  if (strictly ? to >= from : to > from) return [];
  return [
    {
      place: second.place,
      earlier: first.place,
      severity,
      message: message(typedOf(first), typedOf(second)),
    },
  ];
}
