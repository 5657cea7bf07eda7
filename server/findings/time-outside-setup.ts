/** A reading, a keyed value, a check or an event at a time when its base did not stand. */
import type { Place } from '../../grammar/tree.ts';
import { isHole, type Maybe } from '../quantities/value.ts';
import type { Named } from '../session/coordinates.ts';
import type { Moment } from '../session/moments.ts';
import { kind, type Subject } from './finding.ts';
import { instantIn, standingOf, stoodAt, typedOf, type Standing } from './when.ts';

interface Outside {
  readonly place: Place;
  readonly what: string;
  readonly follows: string;
  readonly typed: string;
  readonly standings: readonly Standing[];
}

export const timeOutsideSetup = kind<Outside>({
  code: 'time/outside-setup',
  find: (subject) => {
    const standings = [...subject.session.setups.values()].map((setup) => standingOf(subject, setup));
    return [
      ...standings.flatMap((standing) => ownLines(subject, standing)),
      ...occurrences(subject, standings),
    ];
  },
  tell: ({ what, follows, typed, standings }) => ({
    severity: 'warning',
    message: `${what} is noted at ${typed}, and ${standings.map(said).join('; ')}. ${follows} One of the times is wrong, or the setup lasted longer.`,
    rests: standings.map(({ setup }) => ({ message: `The setup ${setup.name}.`, place: setup.place })),
  }),
});

function ownLines(subject: Subject, standing: Standing): Outside[] {
  const { measured, keyed } = standing.setup;
  return [
    ...measured.flatMap(({ at }) =>
      outside(
        subject,
        at,
        [standing],
        'The reading',
        'If it was taken at another setup, it says nothing about this one.',
      ),
    ),
    ...keyed.flatMap(({ at }) =>
      outside(
        subject,
        at,
        [standing],
        'The keyed value',
        'Keyed then, it says nothing about what this base sent out.',
      ),
    ),
  ];
}

/** Checks, points and events: at the setup that they name, else at any. */
function occurrences(subject: Subject, standings: readonly Standing[]): Outside[] {
  const { checks, singlePoints, events } = subject.session;
  const of = (named: Named | null) =>
    named ? standings.filter(({ setup }) => setup.name === named.name) : standings;
  return [
    ...[...checks, ...singlePoints].flatMap(({ kind: sort, name, at, from }) =>
      outside(
        subject,
        at,
        of(from),
        `${sort === 'check' ? 'Check' : 'Point'} ${name}`,
        'No base stood then that it could prove or rest on.',
      ),
    ),
    ...events.flatMap(({ at, on }) =>
      outside(subject, at, of(on), 'The event', 'No base stood then that it could have moved.'),
    ),
  ];
}

function outside(
  subject: Subject,
  at: Maybe<Moment> | null,
  standings: readonly Standing[],
  what: string,
  follows: string,
): Outside[] {
  const instant = instantIn(subject, at);
  if (!at || isHole(at) || instant === null || standings.length === 0) return [];
  if (standings.some((standing) => stoodAt(standing, instant))) return [];
  return [{ place: at.place, what, follows, typed: at.typed, standings }];
}

function said({ setup, from, until }: Standing): string {
  const start = from === null ? '' : ` from ${typedOf(setup.at)}`;
  const end = until === null ? '' : ` until ${typedOf(setup.until)}`;
  return `${setup.name} stood${start}${end}`;
}
