/** A tolerance that is tighter than what right checks with this gear and these marks stay within. */
import { foundInEach } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import type { Place } from '../../../grammar/tree.ts';

export const checkToleranceTooTight = kind({
  code: 'check/tolerance-too-tight',
  find: (subject) => tight(subject),
  tell: ({ check, component, tolerance, expected }) => ({
    severity: 'warning',
    message: `${showLength(tolerance)} ${component === 'up' ? 'in height' : 'horizontally'} is tighter than the ${showLength(expected)} that a right ${check.check.name} stays within: the marks, the centring and the receivers together are no better. Right checks will fail it now and then. Widen the tolerance, or use better marks, shorter vectors and longer observations.`,
    causes: ['tolerance'],
    follows: [check.mark, check.setup?.mark].flatMap((mark) =>
      mark ? [`mark/${mark.mark.name}/position`] : [],
    ),
  }),
});

interface Tight {
  readonly place: Place;
  readonly check: CheckValues;
  readonly component: 'horizontal' | 'up';
  readonly tolerance: number;
  readonly expected: number;
}

/** For each direction the check for which it is tightest. */
function tight({ session, derivation }: Subject): Tight[] {
  const stated = session.job?.tolerance;
  if (!stated) return [];
  return (['horizontal', 'up'] as const).flatMap((component) => {
    const place = (component === 'up' ? stated.vertical : stated.horizontal)?.place ?? stated.place;
    const [tightest] = tighterThanRight(derivation.checks)
      .filter((found) => found.component === component)
      .sort((one, other) => one.tolerance / one.expected - other.tolerance / other.expected);
    return tightest ? [{ place, ...tightest }] : [];
  });
}

const tighterThanRight = foundInEach((check: CheckValues) =>
  (['horizontal', 'up'] as const).flatMap((component): Omit<Tight, 'place'>[] => {
    const tolerance = numberOf(check.tolerance[component]);
    const expected = numberOf(check.expected[component]);
    if (tolerance === null || expected === null || tolerance >= expected) return [];
    return [{ check, component, tolerance, expected }];
  }),
);
