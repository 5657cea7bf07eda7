/** Nothing proves the base at its start: no check on a known mark within the first hour. */
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import type { Component } from '../../derive/checks/verdict.ts';
import { isMeasured } from '../../derive/points/measured.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { interned } from '../../derive/remembered.ts';
import { AT_THE_ENDS } from '../../derive/trust/needed.ts';
import { foundInEach } from '../../session/each.ts';
import type { Session } from '../../session/session.ts';
import { kind } from '../finding.ts';
import { addedEntry } from '../edits.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, isProvable, setupDays, type SetupDay } from './setup-checks.ts';
import { unreadChecks } from '../unread.ts';
import { clockTime } from '../words.ts';

export const checkMissingOpening = kind({
  code: 'check/missing-opening',
  find: ({ derivation }) => notOpened(setupDays(derivation), interned(derivation.points)),
  tell: ({ setup, first, unproved }, subject) => ({
    severity: 'information',
    follows: [`base-mark/${setup.setup.name}`, `undated/${setup.setup.name}`, ...unreadChecks(subject)],
    ...(unproved
      ? {
          headline: `No check of the ${WORDS[unproved]} from ${setup.setup.name}.`,
          effect: `The checks prove the ${WORDS[unproved === 'up' ? 'horizontal' : 'up']} alone.`,
          action: `Occupy a mark of known ${WORDS[unproved]} as well.`,
        }
      : first
        ? {
            headline: `No check before ${clockTime(first.instant, subject) ?? 'an unknown time'}; ${setup.setup.name} began at ${clockTime(setup.from, subject) ?? 'an unknown time'}.`,
            effect: `No check was made before the points measured until ${first.check.name}.`,
            action: 'Check a known mark before the first point.',
          }
        : {
            headline: `No check on a known mark from ${setup.setup.name}.`,
            effect: 'Nothing proves what was keyed.',
            action: 'Occupy a second known mark before the first point.',
          }),
  }),
  mend: ({ setup, first }, { session }) =>
    first
      ? []
      : [
          {
            title: 'Add a check to be filled in',
            edits: [
              addedEntry(setup.setup.place, [`check ${freeName(session)} on ? at ?`, '  observed    ?']),
            ],
          },
        ],
});

/** A second check of one name would not be used. */
function freeName({ checks }: Session): string {
  const taken = new Set(checks.map(({ name }) => name));
  let name = 'OPEN';
  for (let number = 2; taken.has(name); number++) name = `OPEN-${number}`;
  return name;
}

const WORDS = { horizontal: 'position', up: 'height' } as const;

interface NotOpened {
  readonly setup: SetupDay['setup'];
  readonly first: CheckValues | null;
  /** What no check has anything to compare with. */
  readonly unproved: Component | null;
  readonly place: Place;
}

const notOpened = foundInEach((day: SetupDay, points: readonly PointSet[]): readonly NotOpened[] => {
  if (!isProvable(day)) return [];
  const { setup } = day;
  const checks = checksOnMarks(day);
  const [first = null] = checks;
  const place = namePlace(setup.setup);
  // Where points are noted, only those that nothing opens or proves are missed.
  const missed = (until: number | null) =>
    points.length === 0 ||
    isMeasured(points, { setup: setup.setup.name, rover: null, from: setup.from, until });
  const unproved = first && missed(setup.until) ? unprovedIn(day, checks) : null;
  if (unproved) return [{ setup, first, unproved, place }];
  const opened =
    first && (setup.from === null || first.instant === null || first.instant - setup.from <= AT_THE_ENDS);
  return opened || !missed(first ? before(first.instant) : setup.until)
    ? []
    : [{ setup, first, unproved, place }];
});

/** A point in the very second of a check belongs to what it proves. */
const before = (instant: number | null) => (instant === null ? null : instant - 1);

/** The component that no check has anything to compare with. */
function unprovedIn({ setup: { mark } }: SetupDay, checks: readonly CheckValues[]): Component | null {
  const lacks = (component: Component) => checks.every(({ absent }) => absent.includes(component));
  if (lacks('horizontal')) return 'horizontal';
  return mark?.mark.height && lacks('up') ? 'up' : null;
}
