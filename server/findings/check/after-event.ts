/** Something happened to the base, and no check was made after it. */
import { NOTHING, remembered, type Nothing } from '../../derive/remembered.ts';
import { foundInEach } from '../../session/each.ts';
import type { Event, Job } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { kind, type Subject } from '../finding.ts';
import { setupDays, type SetupDay } from './setup-checks.ts';
import { clockTime } from '../words.ts';
import type { Place } from '../../../grammar/tree.ts';

interface Unproved {
  readonly place: Place;
  readonly event: Event;
  readonly setup: SetupValues;
  readonly instant: number;
}

export const checkAfterEvent = kind({
  code: 'check/after-event',
  find: (subject) => unproved(subject),
  tell: ({ setup, instant, event }, subject) => ({
    severity: 'information',
    headline: `No check after the ${event.what} at ${clockTime(instant, subject) ?? ''} (${setup.setup.name}).`,
    effect: 'Later points are not bracketed.',
    action: 'Measure some of them again from a checked base.',
    causes: [`event/${setup.setup.name}`],
  }),
});

interface Happened {
  readonly event: Event;
  readonly instant: number;
}

const unproved = ({ session, derivation }: Subject) =>
  unprovedAt(setupDays(derivation), happened(session.events, session.job ?? NOTHING));

const happened = remembered((events: readonly Event[], job: Job | Nothing): readonly Happened[] =>
  events
    .map((event) => ({ event, instant: instantOf(event.at, job === NOTHING ? null : (job as Job)) }))
    .filter((one): one is Happened => one.instant !== null)
    .sort((one, other) => one.instant - other.instant),
);

/** A check on any mark, a nail among them, that was made after the event and before the next one to the same base. */
const unprovedAt = foundInEach(({ setup, checks }: SetupDay, events: readonly Happened[]): Unproved[] => {
  if (setup.setup.until === null) return [];
  const own = events.filter(
    ({ event: { on }, instant }) =>
      (setup.from === null || instant >= setup.from) &&
      (setup.until === null || instant <= setup.until) &&
      (on === null || on.name === setup.setup.name),
  );
  return own.flatMap(({ event, instant }, index) => {
    const next = own[index + 1]?.instant ?? Infinity;
    const seen = checks.some(
      (check) => check.instant !== null && check.instant >= instant && check.instant <= next,
    );
    return seen ? [] : [{ event, setup, instant, place: wordPlace(event) }];
  });
});

function wordPlace({ entry, place }: Event): Place {
  const first = entry.header.items[0];
  return first ? { ...place, start: first.start, end: first.end } : place;
}
