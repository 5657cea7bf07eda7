/** Nothing proves the base at its end: no check on a known mark within the last hour. */
import { kind } from './finding.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, provableSetups } from './setup-checks.ts';
import { unreadChecks } from './unread.ts';
import { clockTime } from './words.ts';

/** Seconds; as at the start. */
const AT_THE_END = 3600;

export const checkMissingClosing = kind({
  code: 'check/missing-closing',
  find: (subject) =>
    provableSetups(subject).flatMap((setup) => {
      const last = checksOnMarks(setup, subject).at(-1);
      // Without any check the missing opening has told it all.
      if (!last || setup.until === null || last.instant === null) return [];
      return setup.until - last.instant <= AT_THE_END ? [] : [{ setup, last, place: namePlace(setup.setup) }];
    }),
  tell: ({ setup, last }, subject) => ({
    severity: 'information',
    follows: [`event/${setup.setup.name}`, `base-mark/${setup.setup.name}`, ...unreadChecks(subject)],
    message: `The last check on a known mark was ${last.check.name} at ${clockTime(last.instant, subject) ?? 'an unknown time'}, and ${setup.setup.name} went on until ${clockTime(setup.until, subject) ?? 'an unknown time'}. What was measured after it is not closed: a tripod that was knocked then would not have shown.`,
  }),
});
