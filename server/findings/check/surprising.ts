/** A check within the tolerance, or without one, that is farther off than a right check with this gear stays. */
import { foundInEach } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind } from '../finding.ts';
import { residualPlace, saidResidual } from './residuals.ts';

export const checkSurprising = kind({
  code: 'check/surprising',
  find: ({ derivation }) => surprises(derivation.checks),
  tell: ({ check, component, residual, expected }, { derivation }) => {
    const cases = `${Math.round(derivation.frame.confidence.value * 1000) / 10} of 100 cases`;
    const test = check.tests[component];
    const seldom = isHole(test) ? `That holds in ${cases}.` : sentence(test.words);
    return {
      severity: 'information',
      headline: `${check.check.name} is ${saidResidual(component, residual)}; right checks stay within ${showLength(expected)}.`,
      effect: seldom,
      action: 'If the next is off too, look for a slip.',
      follows: keyedBehind(check, component, expected),
    };
  },
});

const sentence = (words: string) => `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}.`;

/** The keyed difference that the surprise goes away with. */
function keyedBehind(check: CheckValues, component: 'horizontal' | 'up', expected: number): string[] {
  const { keyed, setup, residual, explained } = check;
  if (!keyed || !setup) return [];
  const axes = component === 'up' ? (['up'] as const) : (['east', 'north'] as const);
  const known = axes.map((axis) => numberOf(explained[axis]));
  const rest = axes.map((axis, index) => (numberOf(residual[axis]) ?? 0) - (known[index] ?? 0));
  return known.includes(null) || Math.hypot(...rest) > expected
    ? []
    : [`keyed/${setup.setup.name}/${keyed.state.number}/${component}`];
}

const surprises = foundInEach((check: CheckValues) => [
  ...surprise(check, 'horizontal'),
  ...surprise(check, 'up'),
]);

/** One for each component, so that each is surprising once in so many checks by chance alone. */
function surprise(check: CheckValues, component: 'horizontal' | 'up') {
  if (check.judged[component] === 'fails' || check.judged[component] === 'marginal') return [];
  const residual = numberOf(check.residual[component]);
  const expected = numberOf(check.expected[component]);
  if (residual === null || expected === null || Math.abs(residual) <= expected) return [];
  return [{ check, component, residual, expected, place: residualPlace(check) }];
}
