/** A reading, a keyed value, a check, an event or rows of points at a time when its base did not stand. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole, type Maybe } from '../../quantities/value.ts';
import type { Named } from '../../session/coordinates.ts';
import type { Moment } from '../../session/moments.ts';
import { answersToEach, foundInEach, steadyList, valuesOf } from '../../session/each.ts';
import type { Check, Event, Job, Point } from '../../session/entries.ts';
import { instantWithin } from '../../session/session.ts';
import { kind } from '../finding.ts';
import { rowsOutside, type RowsOutside } from './rows-outside.ts';
import { anyStood, instantIn, standingOf, typedOf, type Standing } from '../when.ts';

interface Outside {
  readonly place: Place;
  readonly what: string;
  readonly typed: string;
  /** By name: what was found stays found when something else is edited in them. */
  readonly setups: readonly string[];
}

export const timeOutsideSetup = kind<Outside | RowsOutside>({
  code: 'time/outside-setup',
  find: ({ session, derivation }) => {
    const { job, checks, singlePoints, events } = session;
    const standings = standingsOf(valuesOf(session.setups), job);
    const times = steadyTimes(standings);
    return [
      ...ownLines(standings, job),
      ...checksOutside(checks, times, job),
      ...pointsOutside(singlePoints, times, job),
      ...eventsOutside(events, times, job),
      ...derivation.points.flatMap((set) => rowsOutside(set, derivation, job) ?? []),
    ];
  },
  tell: (found, { session }) => {
    if ('headline' in found) return { severity: 'warning', ...found };
    const { what, typed, setups } = found;
    const standings = standingsOf(valuesOf(session.setups), session.job);
    const meant = standings.filter(({ setup }) => setups.includes(setup.name));
    return {
      severity: 'warning',
      headline: `${what} at ${typed} is outside ${meant.length === 1 ? `the setup ${meant[0]?.setup.name ?? ''}` : 'every setup'}.`,
      effect: `${meant.map(said).join('; ')}.`,
      action: 'Correct the wrong time.',
      rests: meant.map(({ setup }) => ({ message: `The setup ${setup.name}.`, place: setup.place })),
    };
  },
});

const standingsOf = answersToEach(standingOf);
/** The same list as long as nobody stood at another time, whatever else is edited in a setup. */
const steadyTimes = steadyList<Standing>(
  (one, other) => one.setup.name === other.setup.name && one.from === other.from && one.until === other.until,
);

const ownLines = foundInEach((standing: Standing, job: Job | null): Outside[] => {
  const { measured, keyed } = standing.setup;
  return [
    ...measured.flatMap(({ at }) => outside(job, at, [standing], 'The reading')),
    ...keyed.flatMap(({ at }) => outside(job, at, [standing], 'The keyed value')),
  ];
});

/** A check or a point, at the setup that it names, else at any. */
const occupationOutside = (
  { kind: sort, name, at, from }: Check | Point,
  standings: readonly Standing[],
  job: Job | null,
) => outside(job, at, named(from, standings), `${sort === 'check' ? 'Check' : 'Point'} ${name}`);
const checksOutside = foundInEach(occupationOutside);
const pointsOutside = foundInEach(occupationOutside);
const eventsOutside = foundInEach(({ at, on }: Event, standings: readonly Standing[], job: Job | null) =>
  outside(job, at, named(on, standings), 'The event'),
);

const named = (name: Named | null, standings: readonly Standing[]) =>
  name ? standings.filter(({ setup }) => setup.name === name.name) : standings;

function outside(
  job: Job | null,
  at: Maybe<Moment> | null,
  standings: readonly Standing[],
  what: string,
): Outside[] {
  const instant = instantIn(job, at);
  if (!at || isHole(at) || instant === null || standings.length === 0) return [];
  if (anyStood(standings, instant)) return [];
  // Past midnight a time without a date follows the base; an event is asked for its date.
  if (what !== 'The event' && instantWithin(at, job, standings) !== instant) return [];
  return [{ place: at.place, what, typed: at.typed, setups: standings.map(({ setup }) => setup.name) }];
}

function said({ setup, from, until }: Standing): string {
  const start = from === null ? '' : ` from ${typedOf(setup.at)}`;
  const end = until === null ? '' : ` until ${typedOf(setup.until)}`;
  return `${setup.name} stood${start}${end}`;
}
