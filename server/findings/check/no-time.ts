/** Checks without a time: they stand neither before nor after anything, and prove no part of the day. */
import { foundInEach } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { namePlace } from './residuals.ts';
import { setupDays, type SetupDay } from './setup-checks.ts';

export const checkNoTime = kind({
  code: 'check/no-time',
  find: ({ derivation }) => undated(setupDays(derivation)),
  tell: ({ setup, first, others, fails }) => ({
    severity: 'information',
    headline: `No time noted for ${first.name}.`,
    effect: fails
      ? 'It fails, so all of the day is in doubt.'
      : `It passes, but opens or closes no part of the day from ${setup.name}.`,
    action: 'Look it up in the controller, and note it.',
    rests: others.map((check) => ({
      message: `${check.name} has no time either.`,
      place: namePlace(check),
    })),
    causes: [`undated/${setup.name}`],
  }),
});

/** Told once for each base: at a check that fails, else at the first. What cannot be judged proves nothing at any time. */
const undated = foundInEach(({ setup: { setup, mark }, checks }: SetupDay) => {
  const own = checks.filter(
    (check) =>
      check.instant === null &&
      check.check.at === null &&
      check.verdict !== 'undecided' &&
      check.mark !== mark,
  );
  const failing = own.find(({ verdict }) => verdict === 'fails');
  const first = failing ?? own[0];
  if (!first) return [];
  const others = own.filter((check) => check !== first).map(({ check }) => check);
  const fails = failing !== undefined;
  return [{ setup, first: first.check, others, fails, place: namePlace(first.check) }];
});
