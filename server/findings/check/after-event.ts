/** Something happened to the base, and no check was made after it, or the checks around it differ. */
import { NOTHING, remembered, type Nothing } from '../../derive/remembered.ts';
import { foundInEach } from '../../session/each.ts';
import type { Event, Job } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import type { Movement } from '../../derive/trust/movement.ts';
import { kind, type Subject, type Told } from '../finding.ts';
import { residualPlace } from './residuals.ts';
import { setupDays, type SetupDay } from './setup-checks.ts';
import { clockTime } from '../words.ts';
import type { Place } from '../../../grammar/tree.ts';

interface Unproved {
  readonly place: Place;
  readonly event: Event;
  readonly setup: SetupValues;
  readonly instant: number;
}

/** Two checks of one mark around an event that differ by more than chance. */
interface Apart {
  readonly place: Place;
  readonly event: Event;
  readonly setup: SetupValues;
  readonly movement: Movement;
}

export const checkAfterEvent = kind<Unproved | Apart>({
  code: 'check/after-event',
  find: (subject) => [...unproved(subject), ...apart(subject)],
  tell: (found, subject) => ('movement' in found ? tellApart(found) : tellUnproved(found, subject)),
});

const tellUnproved = ({ setup, instant, event }: Unproved, subject: Subject): Told => ({
  severity: 'information',
  headline: `No check after the ${event.what} at ${clockTime(instant, subject) ?? ''} (${setup.setup.name}).`,
  effect: 'Later points are not bracketed.',
  action: 'Measure some of them again from a checked base.',
  causes: [`event/${setup.setup.name}`],
});

/** Whether the base moved or the mark did, or one of the two was read or written wrongly, nobody can say from here. */
const tellApart = ({ event, setup, movement: { from, to, horizontal, up } }: Apart): Told => ({
  severity: 'information',
  headline: `${from.check.name} and ${to.check.name} differ across the ${event.what} (${setup.setup.name}).`,
  effect: `${sizesOf(horizontal, up)}: more than chance. The checks do not prove that the base stood still.`,
  action: `Look at both readings, then at the tripod and at ${to.mark?.mark.name ?? 'the mark'}.`,
  rests: [{ message: 'The earlier check.', place: residualPlace(from) }],
  follows: [`moved/${setup.setup.name}`, `check/${from.check.name}`, `check/${to.check.name}`],
});

const sizesOf = (horizontal: Maybe<Value>, up: Maybe<Value>) =>
  [
    ...(isHole(horizontal) ? [] : [`${showLength(horizontal.value)} horizontally`]),
    ...(isHole(up) ? [] : [`${showLength(Math.abs(up.value))} in height`]),
  ].join(' and ');

/** One for each pair, however many rovers saw it. */
function apart({ session, derivation }: Subject): Apart[] {
  if (session.events.length === 0) return [];
  const seen = new Set<unknown>();
  return trustOf(session, derivation).events.flatMap(({ event, setup, held, movements }): Apart[] => {
    const movement = held ? undefined : movements.find(({ verdict }) => verdict === 'moved');
    if (!movement || seen.has(movement.to)) return [];
    seen.add(movement.to);
    return [{ place: residualPlace(movement.to), event, setup, movement }];
  });
}

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
