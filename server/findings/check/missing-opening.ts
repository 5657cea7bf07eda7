/** Nothing proves the base at its start: no check on a known mark within the first hour. */
import { foundInEach } from '../../session/each.ts';
import type { Session } from '../../session/session.ts';
import { kind } from '../finding.ts';
import { addedEntry } from '../edits.ts';
import { namePlace } from './residuals.ts';
import { checksOnMarks, isProvable, setupDays, type SetupDay } from './setup-checks.ts';
import { unreadChecks } from '../unread.ts';
import { clockTime } from '../words.ts';

/** An opening check later than this after the start leaves too much of the day without one (common practice), seconds. */
const AT_THE_START = 3600;

export const checkMissingOpening = kind({
  code: 'check/missing-opening',
  find: ({ derivation }) => notOpened(setupDays(derivation)),
  tell: ({ setup, first }, subject) => ({
    severity: 'information',
    follows: [`base-mark/${setup.setup.name}`, `undated/${setup.setup.name}`, ...unreadChecks(subject)],
    ...(first
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

const notOpened = foundInEach((day: SetupDay) => {
  if (!isProvable(day)) return [];
  const { setup } = day;
  const [first = null] = checksOnMarks(day);
  const opened =
    first && (setup.from === null || first.instant === null || first.instant - setup.from <= AT_THE_START);
  return opened ? [] : [{ setup, first, place: namePlace(setup.setup) }];
});
