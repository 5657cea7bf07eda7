/** Whether a residual can be chance: its size in standard uncertainties, and how seldom a right check is as far off. */
import { computePlain, covariance } from '../../quantities/computed.ts';
import { chiSquareBeyond, chiSquareLimit } from '../../quantities/statistics.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Residual } from './observation.ts';

export interface ResidualTest {
  /** Of chi-square: two for the horizontal residual, one for the vertical. */
  readonly degrees: 1 | 2;
  /** Chi-square. */
  readonly statistic: Value;
  /** How often a right check is this far off or farther, by chance. */
  readonly probability: Value;
  /** What chi-square stays below at the job's confidence. */
  readonly limit: number;
  readonly passes: boolean;
  /** `a right check is at least this far off once in 14`. */
  readonly words: string;
}

export interface ResidualTests {
  readonly horizontal: Maybe<ResidualTest>;
  readonly up: Maybe<ResidualTest>;
}

export function residualTests(residual: Residual, confidence: Value, name: string): ResidualTests {
  return { horizontal: horizontalTest(residual, confidence, name), up: upTest(residual, confidence, name) };
}

/** T = rᵀ C⁻¹ r, r the residual and C its covariance matrix. */
function horizontalTest(
  { east: e, north: n }: Residual,
  confidence: Value,
  name: string,
): Maybe<ResidualTest> {
  if (isHole(e)) return e;
  if (isHole(n)) return n;
  const c = covariance(e, n);
  if (e.sigma === null || n.sigma === null || c === null)
    return hole(`how well the residual of ${name} should be known is not known`);
  const determinant = (e.sigma * n.sigma) ** 2 - c * c;
  if (!(determinant > 0)) return hole(`the residual of ${name} has no uncertainty in one direction`);
  const T = ((e.value * n.sigma) ** 2 - 2 * c * e.value * n.value + (n.value * e.sigma) ** 2) / determinant;
  return tested(2, T, { e, n }, 'rᵀ C⁻¹ r, r = (e, n), C their covariance matrix', confidence, name);
}

function upTest({ up: u }: Residual, confidence: Value, name: string): Maybe<ResidualTest> {
  if (isHole(u)) return u;
  if (!u.sigma) return hole(`how well the vertical residual of ${name} should be known is not known`);
  return tested(1, (u.value / u.sigma) ** 2, { u }, '(u / its standard uncertainty)²', confidence, name);
}

function tested(
  degrees: 1 | 2,
  T: number,
  inputs: Readonly<Record<string, Value>>,
  expression: string,
  confidence: Value,
  name: string,
): ResidualTest {
  const direction = degrees === 2 ? 'horizontal' : 'vertical';
  const statistic = computePlain(
    `chi-square of the ${direction} residual of ${name}`,
    '',
    { symbol: 'T', expression, evaluable: false, decimals: 2, source: TEST_SOURCE },
    inputs,
    T,
  );
  const P = chiSquareBeyond(T, degrees);
  const probability = computePlain(
    `chance of so large a ${direction} residual at ${name}`,
    '',
    {
      symbol: 'P',
      expression: `P(χ² > T), ${degrees === 2 ? 'two degrees' : 'one degree'} of freedom`,
      evaluable: false,
      decimals: P < 0.001 ? 6 : 3,
      source: TEST_SOURCE,
    },
    { T: statistic },
    P,
  );
  const limit = chiSquareLimit(confidence.value, degrees);
  return { degrees, statistic, probability, limit, passes: T <= limit, words: inWords(P) };
}

const TEST_SOURCE = 'chi-square test of a residual against its covariance matrix (Baarda 1968)';

/** A probability as one says it: `4 right checks in 10 are at least this far off`. */
export function inWords(probability: number): string {
  const farther = 'at least this far off';
  if (probability >= 0.95) return `nearly every right check is ${farther}`;
  if (probability >= 0.15) return `${Math.round(probability * 10)} right checks in 10 are ${farther}`;
  if (probability < 1e-6) return `a right check is ${farther} less than once in a million`;
  const times = Number((1 / probability).toPrecision(2));
  return `a right check is ${farther} once in ${String(times).replace(/(\d)(?=(\d{3})+$)/g, '$1 ')}`;
}
