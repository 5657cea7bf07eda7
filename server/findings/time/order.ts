/** Times that run backwards: an end before its start, or a line that is earlier than the one above it. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole, type Maybe } from '../../quantities/value.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import type { Derivation } from '../../derive/derivation.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Bound, Check, Event, Job, Setup } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import type { Moment } from '../../session/moments.ts';
import { kind, type Severity } from '../finding.ts';
import type { Saying } from '../saying.ts';
import { setupDays, type SetupDay } from '../check/setup-checks.ts';
import { instantIn, typedOf } from '../when.ts';

interface Backwards {
  readonly place: Place;
  readonly severity: Severity;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  readonly earlier: Place;
}

export const timeOrder = kind<Backwards>({
  code: 'time/order',
  find: ({ session, derivation }) => {
    const { job } = session;
    const setups = valuesOf(session.setups);
    return [
      ...endsBeforeStart(setups, job),
      ...standsTooLong(setups, job),
      ...recordingsBackwards(session.checks, job),
      ...reviewsBeforeTheDay(session),
      ...linesBackwards(setups, job),
      ...occurrencesBackwards(session, derivation),
    ];
  },
  tell: ({ severity, headline, effect, action, earlier }) => ({
    severity,
    headline,
    effect,
    action,
    rests: [{ message: 'What it is compared with.', place: earlier }],
  }),
});

const MIDNIGHT = 'Past midnight, write the date before the time.';

const endsBeforeStart = foundInEach(({ name, at, until }: Setup, job: Job | null) =>
  backwards(job, at, until, 'error', (from, to) => ({
    headline: `${name} ends at ${to}, before it starts at ${from}.`,
    effect: 'No time falls into it.',
    action: MIDNIGHT,
  })),
);

/** Days; a base that stands on is noted day by day (common practice). */
const LONGEST_DAYS = 14;

/** A wrong digit in the date of the end. */
const standsTooLong = foundInEach(({ name, at, until, place }: Setup, job: Job | null): Backwards[] => {
  const [from, to] = [instantIn(job, at), instantIn(job, until)];
  if (from === null || to === null || !until || isHole(until)) return [];
  const days = Math.round((to - from) / 86_400);
  if (days <= LONGEST_DAYS) return [];
  return [
    {
      place: until.place,
      severity: 'warning',
      headline: `${name} stands for ${days} days, until ${typedOf(until)}.`,
      effect: 'The date is probably wrong, and hours that nobody saw count as proved.',
      action: 'Look at its year, month and day.',
      earlier: place,
    },
  ];
});

const recordingsBackwards = foundInEach(({ observed }: Check, job: Job | null) =>
  backwards(job, observed?.recording?.from ?? null, observed?.recording?.to ?? null, 'error', (from, to) => ({
    headline: `The stretch ends at ${to}, before it starts at ${from}.`,
    effect: 'Nothing is taken from the recording.',
    action: MIDNIGHT,
  })),
);

function reviewsBeforeTheDay({ job, reviews }: Session): Backwards[] {
  const day = job?.date;
  if (!day || isHole(day)) return [];
  return reviews.flatMap(({ by, date }) =>
    date && !isHole(date) && date.day < day.day
      ? [
          {
            place: date.place,
            earlier: day.place,
            severity: 'warning' as const,
            headline: `Review by ${by} on ${date.typed} is before the session on ${day.typed}.`,
            effect: 'One of the two dates is wrong.',
            action: 'Correct the wrong one.',
          },
        ]
      : [],
  );
}

/** A line earlier than its neighbour above is no error, but the way in which a wrong hour shows. */
const linesBackwards = foundInEach(({ measured, keyed }: Setup, job: Job | null) => [
  ...groupBackwards('This reading', measured, job),
  ...groupBackwards('This keyed value', keyed, job),
]);

interface Timed {
  readonly at: Maybe<Moment> | null;
}

function groupBackwards(name: string, lines: readonly Timed[], job: Job | null): Backwards[] {
  const timed = lines.filter(isTimed);
  return timed.flatMap((line, index) => lineBackwards(name, timed[index - 1] ?? null, line, job));
}

const isTimed = ({ at }: Timed) => at !== null && !isHole(at);

function lineBackwards(name: string, above: Timed | null, line: Timed, job: Job | null): Backwards[] {
  return backwards(
    job,
    above?.at ?? null,
    line.at,
    'hint',
    (earlier, here) => ({
      headline: `${name} at ${here} is below one at ${earlier}.`,
      effect: 'Most often the hour is wrong.',
      action: 'If the order is meant, leave it.',
    }),
    'strictly',
  );
}

/** Checks and events of each base, in the order of the text; with one base all are its. */
function occurrencesBackwards(session: Session, derivation: Derivation): readonly Backwards[] {
  const { job, setups } = session;
  const named = new Set(eventsOnSetups(session.events).flatMap(({ on }) => (on ? [on.name] : [])));
  const together = setups.size <= 1;
  const quiet = together
    ? []
    : checksBackwards(setupDays(derivation), job).filter(({ setup }) => !named.has(setup));
  if (!together && named.size === 0 && withoutSetup(derivation.checks).length === 0) return quiet;
  const key = (entry: Check | Event, check: CheckValues | undefined) => {
    if (together) return '';
    if (entry.kind === 'event') return entry.on?.name;
    const base = check?.setup?.setup.name ?? '';
    return base === '' || named.has(base) ? base : undefined;
  };
  const above = new Map<string, Check | Event>();
  const found: Backwards[] = [...quiet];
  let count = 0;
  for (const entry of happened(session.entries)) {
    const group = key(entry, entry.kind === 'check' ? derivation.checks[count++] : undefined);
    if (group === undefined || !isTimed(entry)) continue;
    found.push(...occurrenceBackwards(above.get(group) ?? null, entry, job));
    above.set(group, entry);
  }
  return found;
}

const happened = foundInEach((entry: Bound) =>
  entry.kind === 'check' || entry.kind === 'event' ? [entry] : [],
);
const eventsOnSetups = foundInEach((event: Event) => (event.on ? [event] : []));
const withoutSetup = foundInEach((check: CheckValues) => (check.setup ? [] : [check]));

/** Of a base without events of its own: its checks follow one another. */
const checksBackwards = foundInEach(({ setup, checks }: SetupDay, job: Job | null) => {
  const timed = checks.map(({ check }) => check).filter(isTimed);
  return timed.flatMap((check, index) =>
    occurrenceBackwards(timed[index - 1] ?? null, check, job).map((found) => ({
      ...found,
      setup: setup.setup.name,
    })),
  );
});

function occurrenceBackwards(
  before: Check | Event | null,
  entry: Check | Event,
  job: Job | null,
): Backwards[] {
  if (!before || !isEarlier(entry, before, job)) return [];
  return lineBackwards(entry.kind === 'check' ? `Check ${entry.name}` : 'This event', before, entry, job);
}

function isEarlier(one: Timed, other: Timed, job: Job | null): boolean {
  const [first, second] = [instantIn(job, one.at), instantIn(job, other.at)];
  return first !== null && second !== null && first < second;
}

/** @param strictly the same time twice is in order */
function backwards(
  job: Job | null,
  first: Maybe<Moment> | null,
  second: Maybe<Moment> | null,
  severity: Severity,
  saying: (first: string, second: string) => Saying,
  strictly?: 'strictly',
): Backwards[] {
  const from = instantIn(job, first);
  const to = instantIn(job, second);
  if (from === null || to === null || !first || !second || isHole(first) || isHole(second)) return [];
  if (strictly ? to >= from : to > from) return [];
  return [
    {
      place: second.place,
      earlier: first.place,
      severity,
      ...saying(typedOf(first), typedOf(second)),
    },
  ];
}
