/**
 * What a residual says: of each component whether it passes, and of one that does not whether chance would do it among all
 * that is tested on the day.
 *
 * Each of m tests at P^(1/m) lets a day without mistakes pass with at least P (Šidák 1967 for independent tests; for residuals
 * that share a base, a mark or a tape by the Gaussian correlation inequality, Royen 2014, since each test accepts a convex set
 * that is symmetric about nothing wrong).
 */
import { computePlain } from '../../quantities/computed.ts';
import { circularRadius, ellipticalRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { assumed, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Quality } from '../../session/entries.ts';
import type { Budget } from './budget.ts';
import type { Residual } from './observation.ts';
import { weakReach } from './quality.ts';
import type { ExpectedValues } from './right-check.ts';

/** `marginal`: beyond the tolerance, by no more than chance does somewhere in a day; `undecided`: nothing says what is right. */
export type Verdict = 'passes' | 'marginal' | 'fails' | 'undecided';
export type Component = 'horizontal' | 'up';
/** Null where there is nothing to compare, or nothing to judge by. */
export type Judgement = Readonly<Record<Component, Exclude<Verdict, 'undecided'> | null>>;
export type Sizes = Readonly<Record<Component, number | null>>;

/** What a residual is judged by. */
export interface Yardstick {
  readonly tolerance: Budget;
  readonly expected: ExpectedValues;
  readonly quality: Quality | null;
  readonly weak: boolean;
}

/**
 * Without a tolerance a check fails only where chance is out of the question: a right one is beyond what is expected once
 * in so many by definition, and beyond this many times as much once in millions.
 */
export const BEYOND_CHANCE = 2.5;

/** Where nobody states how good the marks are, they are good to this, an axis and up; it condemns blunders and proves nothing. */
const UNSTATED = assumed(
  'marks of unstated uncertainty, and all else',
  0.08,
  'm',
  0,
  'two marks to 50 mm each, and 30 mm for the rest (common practice)',
);

/**
 * Real errors have longer tails than normal ones: satellites that are low, trees, water. So the limits of chance are a tenth
 * wider, which keeps simulated days without mistakes below the 5 % that they are meant to stay below.
 */
export const LONG_TAILS = 1.1;

export const sizesOf = ({ horizontal, up }: Residual): Sizes => ({
  horizontal: isHole(horizontal) ? null : horizontal.value,
  up: isHole(up) ? null : up.value,
});

/** As if it were the only test of the day. */
export const judgedAlone = (residual: Residual, by: Yardstick, confidence: number): Judgement =>
  judgedOn(sizesOf(residual), by, confidence);

/** A component that only a transformation makes fail, as far as it is good, says nothing. */
export function excused(
  judged: Judgement,
  by: Yardstick,
  each: number,
  without: () => Sizes | null,
): Judgement {
  if (judged.horizontal !== 'fails' && judged.up !== 'fails') return judged;
  const sizes = without();
  if (!sizes) return judged;
  const left = judgedOn(sizes, by, each);
  // What fails in one component without it fails as a whole.
  if (left.horizontal === 'fails' || left.up === 'fails') return judged;
  const open = (component: Component) => (judged[component] === 'fails' ? null : judged[component]);
  return { horizontal: open('horizontal'), up: open('up') };
}

/** @param each the probability that a right component stays within its limit */
export const judgedOn = (sizes: Sizes, by: Yardstick, each: number): Judgement => ({
  horizontal: judgedComponent('horizontal', sizes.horizontal, by, each),
  up: judgedComponent('up', sizes.up, by, each),
});

function judgedComponent(
  component: Component,
  residual: number | null,
  by: Yardstick,
  each: number,
): Judgement[Component] {
  if (residual === null) return null;
  const size = Math.abs(residual);
  const [tolerance, expected] = [by.tolerance[component], by.expected[component]];
  if (by.weak) return size > weakLimit(component, by) ? 'fails' : null;
  if (!isHole(tolerance)) {
    if (size <= tolerance.value) return 'passes';
    return size <= (chanceLimit(component, by.expected, each) ?? 0) ? 'marginal' : 'fails';
  }
  if (isHole(expected)) return size > blunderLimit(component).value ? 'fails' : null;
  if (size > BEYOND_CHANCE * expected.value) return 'fails';
  return size <= expected.value ? 'passes' : null;
}

/** What a right residual stays within with this probability, with room for long tails; null where nobody can say. */
export function chanceLimit(
  component: Component,
  { spread }: Pick<ExpectedValues, 'spread'>,
  probability: number,
): number | null {
  if (component === 'up')
    return spread.up === null ? null : LONG_TAILS * normalHalfWidth(probability) * spread.up;
  const ellipse = spread.horizontal;
  return ellipse && LONG_TAILS * ellipticalRadius(ellipse.semiMajor, ellipse.semiMinor, probability);
}

/** An observation that is too weak to decide shows a blunder from here on. */
function weakLimit(component: Component, { tolerance, expected, quality }: Yardstick): number {
  const known = (limit: Maybe<Value>) => (isHole(limit) ? 0 : limit.value);
  return Math.max(
    weakReach(quality)[component],
    known(tolerance[component]),
    BEYOND_CHANCE * known(expected[component]),
  );
}

/** Beyond what every right check stays within, with the assumption that it rests on. */
export function blunderLimit(component: Component): Value {
  const factor = component === 'up' ? normalHalfWidth(0.95) : circularRadius(0.95);
  const k = assumed('factor', BEYOND_CHANCE * factor, '', 0, 'far beyond the 95 % level (common practice)');
  return computePlain(
    `farthest that a check may be off without any accuracy stated, ${component === 'up' ? 'up' : 'horizontally'}`,
    'm',
    { symbol: 'L', expression: 'k · u', evaluable: true, source: UNSTATED.because },
    { k, u: UNSTATED },
    k.value * UNSTATED.value,
  );
}

/** The limit that decided, in metres, and where it comes from; null where nothing was to be judged. */
export function limitOf(
  component: Component,
  by: Yardstick,
): { readonly size: number; readonly from: 'job' | 'expected' | 'assumed' | 'weak' } {
  if (by.weak) return { size: weakLimit(component, by), from: 'weak' };
  const [tolerance, expected] = [by.tolerance[component], by.expected[component]];
  if (!isHole(tolerance)) return { size: tolerance.value, from: 'job' };
  if (!isHole(expected)) return { size: BEYOND_CHANCE * expected.value, from: 'expected' };
  return { size: blunderLimit(component).value, from: 'assumed' };
}

/** The worst component decides; a component that neither mark nor observation has takes nothing from the other. */
export function verdictOf({ horizontal, up }: Judgement, absent: readonly Component[] = []): Verdict {
  const judged = [horizontal, up];
  if (judged.includes('fails')) return 'fails';
  if (judged.includes('marginal')) return 'marginal';
  const proved = (component: Component, found: Judgement[Component]) =>
    found === 'passes' || absent.includes(component);
  return judged.includes('passes') && proved('horizontal', horizontal) && proved('up', up)
    ? 'passes'
    : 'undecided';
}
