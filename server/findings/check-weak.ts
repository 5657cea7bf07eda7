/** A check that was observed too poorly to prove much: not fixed, too short, too few satellites, poor geometry. */
import { provesNothing, shortfallsOf } from '../derive/trust-quality.ts';
import { kind } from './finding.ts';

export const checkWeak = kind({
  code: 'check/weak',
  find: ({ session, derivation }) =>
    derivation.checks.flatMap(({ check, quality }) => {
      const shortfalls = shortfallsOf(quality, session.job?.limits ?? null);
      return quality && shortfalls.length > 0 ? [{ check, shortfalls, place: quality.place }] : [];
    }),
  tell: ({ check, shortfalls }) => ({
    severity: 'warning',
    message: `${check.name} was ${shortfalls.map(({ sentence }) => sentence).join(', ')}${shortfalls.every(({ byJob }) => byJob) ? '' : ' (usual limits, as far as the job sets none)'}. ${provesNothing(shortfalls) ? 'It proves nothing, whether it agrees or not' : 'It proves less than it should'}. Observe it again.`,
  }),
});
