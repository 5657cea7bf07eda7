/** A tolerance that is tighter than what right checks with this gear and these marks stay within. */
import { contributionsOf } from '../../quantities/computed.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { isGeoidShare, isReceiversShare } from '../../derive/checks/right-check.ts';
import type { Component } from '../../derive/checks/verdict.ts';
import { foundInEach } from '../../session/each.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import type { Place } from '../../../grammar/tree.ts';

export const checkToleranceTooTight = kind({
  code: 'check/tolerance-too-tight',
  find: (subject) => tight(subject),
  tell: ({ check, component, tolerance, expected, cause }) => ({
    severity: cause === 'assumed receivers' ? 'information' : 'warning',
    headline: `Tolerance of ${showLength(tolerance)} ${component === 'up' ? 'in height' : 'horizontally'} is too tight: ${check.check.name} can prove ${showLength(expected)}.`,
    effect: 'Right checks will exceed it now and then.',
    action: ACTIONS[cause],
    causes: ['tolerance'],
    follows: [check.mark, check.setup?.mark].flatMap((mark) =>
      mark ? [`mark/${mark.mark.name}/position`] : [],
    ),
  }),
});

/** What makes the budget so wide that the tolerance is too tight. */
type Cause = 'geoid' | 'assumed receivers' | 'marks';
const ACTIONS: Readonly<Record<Cause, string>> = {
  geoid:
    'The coarse geoid model of the rover makes it so: it is good to 10 ppm of the distance. Name a regional geoid model, or compare ellipsoidal heights.',
  'assumed receivers':
    'That rests on an assumed accuracy of the receivers (8 mm + 1 ppm, 15 mm + 1 ppm up). Write down what yours are good to (rover, uncertainty).',
  marks: 'Widen the tolerance, or use better marks, shorter vectors and longer observations.',
};

interface Tight {
  readonly place: Place;
  readonly check: CheckValues;
  readonly component: Component;
  readonly tolerance: number;
  readonly expected: number;
  readonly cause: Cause;
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
    if (!tightest) return [];
    // An assumption is no fact: it is spoken of where it matters, which is where a check came out beyond.
    const matters =
      tightest.cause !== 'assumed receivers' ||
      derivation.checks.some((check) => check.judged[component] === 'marginal');
    return matters ? [{ place, ...tightest }] : [];
  });
}

const tighterThanRight = foundInEach((check: CheckValues) =>
  (['horizontal', 'up'] as const).flatMap((component): Omit<Tight, 'place'>[] => {
    const tolerance = numberOf(check.tolerance[component]);
    const expected = numberOf(check.expected[component]);
    if (tolerance === null || expected === null || tolerance >= expected) return [];
    return [{ check, component, tolerance, expected, cause: causeOf(check, component, tolerance, expected) }];
  }),
);

/** The first without which the tolerance would have room for a right check. */
function causeOf(check: CheckValues, component: Component, tolerance: number, expected: number): Cause {
  const error = component === 'up' ? check.residual.up : check.residual.east;
  if (isHole(error) || !error.sigma) return 'marks';
  const shares = [...contributionsOf(error)];
  const roomWithout = (isIt: (leaf: string) => boolean) => {
    const own = shares.filter(([leaf]) => isIt(leaf.name)).map(([, share]) => share);
    const rest = Math.sqrt(Math.max(0, (error.sigma ?? 0) ** 2 - Math.hypot(...own) ** 2));
    return own.length > 0 && (expected * rest) / (error.sigma ?? NaN) <= tolerance;
  };
  if (component === 'up' && roomWithout(isGeoidShare)) return 'geoid';
  const stated = check.rover?.uncertainty?.[component === 'up' ? 'vertical' : 'horizontal'];
  return !stated && roomWithout(isReceiversShare) ? 'assumed receivers' : 'marks';
}
