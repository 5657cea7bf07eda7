/** A base's day cut into stretches: at setup, re-level, power loss, re-keyed value and disturbance. */
import type { Event, Job } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import type { CheckValues } from '../checks/check.ts';
import { stepInstants } from '../setups/raw-log.ts';
import type { SetupValues } from '../setups/setup.ts';
import type { KeyedState } from '../setups/timeline.ts';

export interface Boundary {
  /** `other` is an event of a kind that the language does not know. */
  readonly kind: 'setup' | 'disturbance' | 're-level' | 'power-loss' | 're-keyed' | 'other';
  /** Seconds since 1970-01-01 UTC; null where the notes do not say. */
  readonly at: number | null;
  readonly event: Event | null;
}

export interface Stretch {
  readonly opened: Boundary;
  /** What ended it; null where the setup itself did. */
  readonly closed: Boundary | null;
  readonly from: number | null;
  readonly until: number | null;
}

/** The stretches of one base, in order of time; an event without a time cuts nowhere and is told apart. */
export function stretchesOf(setup: SetupValues, events: readonly Event[], job: Job | null): Stretch[] {
  const opening: Boundary = { kind: 'setup', at: setup.from, event: null };
  const noted = eventBoundaries(events, job);
  const inside = [...noted, ...movedBoundaries(setup, noted), ...keyedBoundaries(setup)]
    .filter(({ at }) => at !== null)
    .filter(({ at }) => setup.from === null || (at ?? 0) > setup.from)
    .filter(({ at }) => setup.until === null || (at ?? 0) < setup.until)
    .sort((one, other) => (one.at ?? 0) - (other.at ?? 0) || ORDER[one.kind] - ORDER[other.kind]);
  const boundaries = [opening, ...inside];
  return boundaries.map((opened, index) => {
    const closed = boundaries[index + 1] ?? null;
    return { opened, closed, from: opened.at, until: closed ? closed.at : setup.until };
  });
}

/** Events of this base whose time is not known: they may lie anywhere in the day. */
export const undatedEvents = (events: readonly Event[], job: Job | null): Event[] =>
  events.filter((event) => instantOf(event.at, job) === null);

/** The stretch that a check lies in; in one minute events come first, then what is keyed, then checks. */
export function stretchOf(stretches: readonly Stretch[], { instant }: CheckValues): number {
  let index = 0;
  if (instant === null) return index;
  stretches.forEach(({ opened }, at) => {
    if (at > 0 && opened.at !== null && opened.at <= instant) index = at;
  });
  return index;
}

/** A disturbance that leaves the base where it was is the only thing that two stretches can be joined across. */
const ORDER: Readonly<Record<Boundary['kind'], number>> = {
  setup: 0,
  disturbance: 1,
  'power-loss': 2,
  're-level': 3,
  other: 4,
  're-keyed': 5,
};

/** A step in the raw observations that nobody noted within some minutes parts the day as a disturbance does. */
function movedBoundaries({ rawLog }: SetupValues, noted: readonly Boundary[]): Boundary[] {
  return stepInstants(rawLog)
    .filter((at) => !noted.some((event) => event.at !== null && Math.abs(event.at - at) <= NEAR))
    .map((at) => ({ kind: 'disturbance', at, event: null }));
}
const NEAR = 300;

function eventBoundaries(events: readonly Event[], job: Job | null): Boundary[] {
  return events.map((event) => ({
    kind:
      event.what === 'disturbance' || event.what === 're-level' || event.what === 'power-loss'
        ? event.what
        : 'other',
    at: instantOf(event.at, job),
    event,
  }));
}

/** Telling the receiver what it had not been told at all changes nothing that was measured before. */
function keyedBoundaries(setup: SetupValues): Boundary[] {
  return setup.broadcasts.slice(1).flatMap(({ state, recorded }, index) => {
    const before = setup.broadcasts[index];
    return before && (recorded || before.recorded || changes(before.state, state))
      ? [{ kind: 're-keyed', at: state.from, event: null }]
      : [];
  });
}

const changes = (before: KeyedState, { lines }: KeyedState) =>
  lines.some(
    (line) =>
      (line.position !== null && before.position !== null) ||
      (line.height !== null && before.height !== null) ||
      (line.antennaHeight !== null && before.antennaHeight !== null) ||
      (line.antennaType !== null && before.antennaType !== null),
  );

/** Events that name no base happened to all of them. */
export const eventsOf = (setup: SetupValues, events: readonly Event[]): Event[] =>
  events.filter((event) => event.on === null || event.on.name === setup.setup.name);
