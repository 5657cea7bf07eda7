/** Nothing proves the base at its end: no check on a known mark within the last hour. */
import { foundInEach } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, isProvable, setupDays, type SetupDay } from './setup-checks.ts';
import { unreadChecks } from '../unread.ts';
import { clockTime } from '../words.ts';

/** Seconds; as at the start. */
const AT_THE_END = 3600;

export const checkMissingClosing = kind({
  code: 'check/missing-closing',
  find: ({ derivation }) => notClosed(setupDays(derivation)),
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

const notClosed = foundInEach((day: SetupDay) => {
  const { setup } = day;
  const last = isProvable(day) ? checksOnMarks(day).at(-1) : undefined;
  // Without any check the missing opening has told it all.
  if (!last || setup.until === null || last.instant === null) return [];
  return setup.until - last.instant <= AT_THE_END ? [] : [{ setup, last, place: namePlace(setup.setup) }];
});
