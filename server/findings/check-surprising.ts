/** A check within the tolerance, or without one, that is farther off than a right check with this gear stays. */
import { showLength } from '../quantities/show.ts';
import { BEYOND_CHANCE, type CheckValues } from '../derive/check.ts';
import { numberOf } from '../slips/situation.ts';
import { kind } from './finding.ts';
import { residualPlace, saidResidual } from './residuals.ts';

export const checkSurprising = kind({
  code: 'check/surprising',
  find: ({ derivation }) =>
    derivation.checks.flatMap((check) =>
      (['horizontal', 'up'] as const).flatMap((component) => surprise(check, component)),
    ),
  tell: ({ check, component, residual, expected }, { derivation }) => ({
    severity: 'information',
    message: `${check.check.name} is off by ${saidResidual(component, residual)}, within what is tolerated and beyond the ${showLength(expected)} that a right check with this gear stays within in ${Math.round(derivation.frame.confidence.value * 1000) / 10} of 100 cases. Now and then that is chance; if the next one is, too, something is wrong.`,
    ...(check.keyed && check.setup
      ? { follows: [`keyed/${check.setup.setup.name}/${check.keyed.state.number}/${component}`] }
      : {}),
  }),
});

/** One for each component, so that each is surprising once in so many checks by chance alone. */
function surprise(check: CheckValues, component: 'horizontal' | 'up') {
  if (check.verdict === 'fails' && !withinTolerance(check, component)) return [];
  const residual = numberOf(check.residual[component]);
  const expected = numberOf(check.expected[component]);
  if (residual === null || expected === null || Math.abs(residual) <= expected) return [];
  return [{ check, component, residual, expected, place: residualPlace(check) }];
}

function withinTolerance(check: CheckValues, component: 'horizontal' | 'up'): boolean {
  const residual = numberOf(check.residual[component]);
  const tolerance = numberOf(check.tolerance[component]);
  const expected = numberOf(check.expected[component]);
  const limit = tolerance ?? (expected === null ? null : BEYOND_CHANCE * expected);
  return residual !== null && limit !== null && Math.abs(residual) <= limit;
}
