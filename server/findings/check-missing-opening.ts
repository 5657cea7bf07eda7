/** Nothing proves the base at its start: no check on a known mark within the first hour. */
import { kind } from './finding.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, provableSetups } from './setup-checks.ts';
import { unreadChecks } from './unread.ts';
import { clockTime } from './words.ts';

/** An opening check later than this after the start leaves too much of the day without one (common practice), seconds. */
const AT_THE_START = 3600;

export const checkMissingOpening = kind({
  code: 'check/missing-opening',
  find: (subject) =>
    provableSetups(subject).flatMap((setup) => {
      const checks = checksOnMarks(setup, subject);
      const [first] = checks;
      if (
        first &&
        (setup.from === null || first.instant === null || first.instant - setup.from <= AT_THE_START)
      )
        return [];
      return [{ setup, first: first ?? null, place: namePlace(setup.setup) }];
    }),
  tell: ({ setup, first }, subject) => ({
    severity: 'information',
    follows: [`base-mark/${setup.setup.name}`, ...unreadChecks(subject)],
    message: first
      ? `The first check on a known mark came at ${clockTime(first.instant, subject) ?? 'an unknown time'}, and ${setup.setup.name} began at ${clockTime(setup.from, subject) ?? 'an unknown time'}. What was measured before it has no check in front of it: a slip in what was keyed would have shown before the first point.`
      : `No check on a known mark was made from ${setup.setup.name}: nothing proves what was keyed, and every point rests on it. Occupy a second known mark before the first point.`,
  }),
  mend: ({ setup, first }) =>
    first
      ? []
      : [
          {
            title: 'Add a check to be filled in',
            edits: [
              {
                place: {
                  ...setup.setup.place,
                  start: setup.setup.entry.text.length,
                  end: setup.setup.entry.text.length,
                },
                text: 'check OPEN on ? at ?\n  observed    ?\n',
              },
            ],
          },
        ],
});
