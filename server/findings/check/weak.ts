/** A check that was observed too poorly: not fixed, too short, too few satellites, poor geometry. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { limitOf } from '../../derive/checks/verdict.ts';
import { shortfallsOf } from '../../derive/checks/quality.ts';
import { showLength } from '../../quantities/show.ts';
import { foundInEach } from '../../session/each.ts';
import type { Limits } from '../../session/entries.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind } from '../finding.ts';
import { saidResidual } from './residuals.ts';

export const checkWeak = kind({
  code: 'check/weak',
  find: ({ session, derivation }) => weak(derivation.checks, session.job?.limits ?? null),
  tell: ({ check, shortfalls }) => {
    const usual = shortfalls.every(({ byJob }) => byJob) ? '' : ' (usual limits)';
    return {
      severity: 'warning',
      headline: `Weak check ${check.check.name}: ${shortfalls.map(({ sentence }) => sentence).join(', ')}.`,
      effect: `${check.weak ? `${shown(check)} It decides nothing` : 'It proves less than it should'}${usual}.`,
      action: 'Observe it again.',
    };
  },
});

/** What it shows all the same, beside what such an observation may be off by itself. */
function shown(check: CheckValues): string {
  const parts = (['horizontal', 'up'] as const).flatMap((component) => {
    const residual = numberOf(check.residual[component]);
    if (residual === null) return [];
    return [`${saidResidual(component, residual)} (may be ${showLength(limitOf(component, check).size)})`];
  });
  return parts.length === 0 ? 'It shows nothing.' : `It shows ${parts.join(' and ')}.`;
}

const weak = foundInEach((check: CheckValues, limits: Limits | null) => {
  const { quality } = check;
  const shortfalls = shortfallsOf(quality, limits);
  return quality && shortfalls.length > 0 ? [{ check, shortfalls, place: quality.place }] : [];
});
