/** Least squares for few unknowns: normal equations, their inverse by Gauss and Jordan, written for speed. */

/** Inverts a symmetric matrix of n × n in place, rows one after the other; false where it is singular. */
export function invert(matrix: Float64Array, n: number): boolean {
  for (let pivot = 0; pivot < n; pivot += 1) {
    const value = matrix[pivot * n + pivot] ?? 0;
    if (!(value > 1e-14)) return false;
    const inverse = 1 / value;
    for (let column = 0; column < n; column += 1)
      matrix[pivot * n + column] = (matrix[pivot * n + column] ?? 0) * inverse;
    matrix[pivot * n + pivot] = inverse;
    for (let row = 0; row < n; row += 1) {
      if (row === pivot) continue;
      const factor = matrix[row * n + pivot] ?? 0;
      matrix[row * n + pivot] = 0;
      for (let column = 0; column < n; column += 1)
        matrix[row * n + column] =
          (matrix[row * n + column] ?? 0) - factor * (matrix[pivot * n + column] ?? 0);
    }
  }
  return true;
}

export interface Fit {
  readonly n: number;
  readonly solution: Float64Array;
  /** The inverse of the normal matrix: with weights 1/σ² the covariance. */
  readonly inverse: Float64Array;
  readonly residuals: Float64Array;
  readonly used: Uint8Array;
  rejected: number;
  count: number;
}
export const fitOf = (n: number, most: number): Fit => ({
  n,
  solution: new Float64Array(n),
  inverse: new Float64Array(n * n),
  residuals: new Float64Array(most),
  used: new Uint8Array(most),
  rejected: 0,
  count: 0,
});

/**
 * Weighted least squares of `rows` equations; then the largest normalised residual above `limit` is rejected, and so
 * on, down to `fewest` equations. `design` has n numbers a row. Returns false where too few are left or all lie in
 * one plane.
 */
export function robustFit(
  fit: Fit,
  rows: number,
  design: Float64Array,
  observed: Float64Array,
  sigmas: Float64Array,
  limit: number,
  fewest: number,
): boolean {
  fit.used.fill(1, 0, rows);
  fit.rejected = 0;
  fit.count = rows;
  for (;;) {
    if (fit.count < fewest || !solve(fit, rows, design, observed, sigmas)) return false;
    const worst = worstOf(fit, rows, design, sigmas, limit);
    if (worst < 0) return true;
    if (fit.count - 1 < fewest) return true;
    fit.used[worst] = 0;
    fit.rejected += 1;
    fit.count -= 1;
  }
}

function solve(fit: Fit, rows: number, design: Float64Array, observed: Float64Array, sigmas: Float64Array) {
  const { n, inverse, solution, residuals, used } = fit;
  const right = RIGHT;
  inverse.fill(0);
  right.fill(0);
  for (let row = 0; row < rows; row += 1) {
    if (used[row] === 0) continue;
    const sigma = sigmas[row] ?? 1;
    const weight = 1 / (sigma * sigma);
    for (let i = 0; i < n; i += 1) {
      const weighted = weight * (design[row * n + i] ?? 0);
      right[i] = (right[i] ?? 0) + weighted * (observed[row] ?? 0);
      for (let j = 0; j <= i; j += 1)
        inverse[i * n + j] = (inverse[i * n + j] ?? 0) + weighted * (design[row * n + j] ?? 0);
    }
  }
  for (let i = 0; i < n; i += 1) for (let j = 0; j < i; j += 1) inverse[j * n + i] = inverse[i * n + j] ?? 0;
  if (!invert(inverse, n)) return false;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += (inverse[i * n + j] ?? 0) * (right[j] ?? 0);
    solution[i] = sum;
  }
  for (let row = 0; row < rows; row += 1) {
    let modelled = 0;
    for (let i = 0; i < n; i += 1) modelled += (design[row * n + i] ?? 0) * (solution[i] ?? 0);
    residuals[row] = (observed[row] ?? 0) - modelled;
  }
  return true;
}
const RIGHT = new Float64Array(8);

/** The row whose residual is largest in units of its own uncertainty, with its redundancy; -1 where none is above the limit. */
function worstOf(fit: Fit, rows: number, design: Float64Array, sigmas: Float64Array, limit: number): number {
  const { residuals, used } = fit;
  let worst = -1;
  let largest = limit;
  for (let row = 0; row < rows; row += 1) {
    if (used[row] === 0) continue;
    const sigma = sigmas[row] ?? 1;
    const plain = Math.abs(residuals[row] ?? 0) / sigma;
    // A redundancy below 1 only makes it larger; far below the limit it need not be computed.
    if (plain < largest * 0.3) continue;
    const redundancy = redundancyOf(fit, row, design, sigma);
    if (redundancy < 0.02) continue;
    const normalised = plain / Math.sqrt(redundancy);
    if (normalised > largest) {
      largest = normalised;
      worst = row;
    }
  }
  return worst;
}

/** What part of an error of this row shows in its residual, from 0 to 1. */
export function redundancyOf({ n, inverse }: Fit, row: number, design: Float64Array, sigma: number): number {
  let share = 0;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += (inverse[i * n + j] ?? 0) * (design[row * n + j] ?? 0);
    share += sum * (design[row * n + i] ?? 0);
  }
  return 1 - share / (sigma * sigma);
}
