/** Nothing proves the base at its end: no check on a known mark within the last hour. */
import { isMeasured } from '../../derive/points/measured.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { interned } from '../../derive/remembered.ts';
import { AT_THE_ENDS } from '../../derive/trust/needed.ts';
import { foundInEach } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, isProvable, setupDays, type SetupDay } from './setup-checks.ts';
import { unreadChecks } from '../unread.ts';
import { clockTime } from '../words.ts';

export const checkMissingClosing = kind({
  code: 'check/missing-closing',
  find: ({ derivation }) => notClosed(setupDays(derivation), interned(derivation.points)),
  tell: ({ setup, last }, subject) => ({
    severity: 'information',
    follows: [
      `event/${setup.setup.name}`,
      `undated/${setup.setup.name}`,
      `base-mark/${setup.setup.name}`,
      ...unreadChecks(subject),
    ],
    headline: `No check after ${clockTime(last.instant, subject) ?? 'an unknown time'}; ${setup.setup.name} worked until ${clockTime(setup.until, subject) ?? 'an unknown time'}.`,
    effect: `A knock to the tripod after ${last.check.name} would not show.`,
    action: 'Measure some later points again.',
  }),
});

const notClosed = foundInEach((day: SetupDay, points: readonly PointSet[]) => {
  const { setup } = day;
  const last = isProvable(day) ? checksOnMarks(day).at(-1) : undefined;
  // Without any check the missing opening has told it all.
  if (!last || setup.until === null || last.instant === null) return [];
  // Where points are noted, only those that nothing closes are missed.
  const part = { setup: setup.setup.name, rover: null, from: last.instant + 1, until: setup.until };
  if (points.length > 0 && !isMeasured(points, part)) return [];
  return setup.until - last.instant <= AT_THE_ENDS ? [] : [{ setup, last, place: namePlace(setup.setup) }];
});
