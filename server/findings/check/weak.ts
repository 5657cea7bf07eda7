/** A check that was observed too poorly to prove much: not fixed, too short, too few satellites, poor geometry. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { foundInEach } from '../../session/each.ts';
import type { Limits } from '../../session/entries.ts';
import { provesNothing, shortfallsOf } from '../../derive/trust/quality.ts';
import { kind } from '../finding.ts';

export const checkWeak = kind({
  code: 'check/weak',
  find: ({ session, derivation }) => weak(derivation.checks, session.job?.limits ?? null),
  tell: ({ check, shortfalls }) => ({
    severity: 'warning',
    message: `${check.name} was ${shortfalls.map(({ sentence }) => sentence).join(', ')}${shortfalls.every(({ byJob }) => byJob) ? '' : ' (usual limits, as far as the job sets none)'}. ${provesNothing(shortfalls) ? 'It proves nothing, whether it agrees or not' : 'It proves less than it should'}. Observe it again.`,
  }),
});

const weak = foundInEach(({ check, quality }: CheckValues, limits: Limits | null) => {
  const shortfalls = shortfallsOf(quality, limits);
  return quality && shortfalls.length > 0 ? [{ check, shortfalls, place: quality.place }] : [];
});
