/** The likelihood against its definition: the density of a normal vector with the covariance written out. */
import { describe, expect, it } from 'vitest';
import { fitOf, lengthIn, logSum, noiseOf, type Noise } from './likelihood.ts';

const COVARIANCE = [
  [4, 1, 0.5],
  [1, 3, 0.2],
  [0.5, 0.2, 2],
];
const RESIDUALS = [1.5, -2, 0.7];
const PREDICTED = [0.5, 0, -0.3];
const DIRECTION = [2, 1, -1];

const noise = (covariance: number[][]): Noise => {
  const found = noiseOf(covariance);
  if (!found) throw new Error('not positive definite');
  return found;
};

describe('a hypothesis with unknown amounts', () => {
  it('is as likely as the normal density with the whole covariance', () => {
    const whole = COVARIANCE.map((row, i) =>
      row.map((value, j) => value + (DIRECTION[i] ?? 0) * (DIRECTION[j] ?? 0)),
    );
    const byLemma = fitOf(RESIDUALS, PREDICTED, [DIRECTION], noise(COVARIANCE)).log;
    expect(byLemma).toBeCloseTo(density(RESIDUALS, PREDICTED, whole), 10);
  });

  it('is the plain density without any', () => {
    expect(fitOf(RESIDUALS, PREDICTED, [], noise(COVARIANCE)).log).toBeCloseTo(
      density(RESIDUALS, PREDICTED, COVARIANCE),
      10,
    );
  });

  it('estimates an amount that the noise hardly hides', () => {
    const small = COVARIANCE.map((row) => row.map((value) => value * 1e-8));
    const seen = PREDICTED.map((value, index) => value + 0.7 * (DIRECTION[index] ?? 0));
    fitOf(seen, PREDICTED, [DIRECTION], noise(small)).fitted.forEach((value, index) =>
      expect(value).toBeCloseTo(seen[index] ?? NaN, 6),
    );
  });
});

describe('noise', () => {
  it('refuses a covariance that is none', () => {
    expect(
      noiseOf([
        [1, 2],
        [2, 1],
      ]),
    ).toBeNull();
  });
  it('measures in its own standard deviations', () => {
    expect(
      lengthIn(
        [2, 3],
        noise([
          [4, 0],
          [0, 1],
        ]),
      ),
    ).toBeCloseTo(Math.sqrt(1 + 9), 12);
  });
});

it('sums densities far below what a number can hold', () => {
  expect(logSum([-2000, -2000])).toBeCloseTo(-2000 + Math.LN2, 12);
  expect(logSum([])).toBe(-Infinity);
});

/** ln of the density but for the factor of 2π: −½ (rᵀ C⁻¹ r + ln det C), inverse and determinant by cofactors. */
function density(residuals: number[], predicted: number[], covariance: number[][]): number {
  const r = residuals.map((value, index) => value - (predicted[index] ?? 0));
  const at = (row: number, column: number) => covariance[row % 3]?.[column % 3] ?? NaN;
  const cofactor = (row: number, column: number) =>
    at(row + 1, column + 1) * at(row + 2, column + 2) - at(row + 1, column + 2) * at(row + 2, column + 1);
  const determinant = [0, 1, 2].reduce((sum, column) => sum + at(0, column) * cofactor(0, column), 0);
  let quadratic = 0;
  for (const row of [0, 1, 2])
    for (const column of [0, 1, 2])
      quadratic += ((r[row] ?? 0) * (r[column] ?? 0) * cofactor(row, column)) / determinant;
  return -0.5 * (quadratic + Math.log(determinant));
}
