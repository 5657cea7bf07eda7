/**
 * How likely residuals are under a hypothesis that predicts them up to some unknown amounts.
 *
 * Residuals y = m + Σ t_k d_k + noise, t_k independent and standard normal, noise normal with covariance C; the t_k are
 * integrated out. In units of the noise (L y with C = L Lᵀ solved away) the covariance is I + D Dᵀ, and by the matrix
 * inversion and determinant lemmas only a system as large as the number of unknown amounts is solved (Rasmussen and
 * Williams 2006, Gaussian Processes for Machine Learning, appendix A.3).
 */

/** A symmetric matrix by rows. */
export type Matrix = readonly (readonly number[])[];

/** Noise, factored once for many hypotheses. */
export interface Noise {
  /** The lower factor of Cholesky. */
  readonly factor: Matrix;
  readonly logDeterminant: number;
}

export interface Fit {
  /** Natural logarithm of the density, but for a constant that all hypotheses on the same residuals share. */
  readonly log: number;
  /** What the hypothesis says the residuals are, its unknown amounts estimated. */
  readonly fitted: readonly number[];
}

/** Null where the matrix is not positive definite. */
export function noiseOf(covariance: Matrix): Noise | null {
  const factor = cholesky(covariance);
  if (!factor) return null;
  const logDeterminant = factor.reduce((sum, row, index) => sum + 2 * Math.log(row[index] ?? 1), 0);
  return { factor, logDeterminant };
}

export function fitOf(
  residuals: readonly number[],
  predicted: readonly number[],
  directions: readonly (readonly number[])[],
  noise: Noise,
): Fit {
  const off = residuals.map((value, index) => value - (predicted[index] ?? 0));
  const y = whitened(off, noise);
  const D = directions.map((direction) => whitened(direction, noise));
  const M = D.map((one, row) => D.map((other, column) => dot(one, other) + (row === column ? 1 : 0)));
  const factor = cholesky(M) ?? [];
  const b = D.map((direction) => dot(direction, y));
  const amounts = solved(factor, b);
  const quadratic = dot(y, y) - dot(b, amounts);
  const logDeterminant = factor.reduce((sum, row, index) => sum + 2 * Math.log(row[index] ?? 1), 0);
  return {
    log: -0.5 * (quadratic + logDeterminant + noise.logDeterminant),
    fitted: predicted.map((value, index) =>
      directions.reduce((sum, direction, k) => sum + (amounts[k] ?? 0) * (direction[index] ?? 0), value),
    ),
  };
}

/** The length of a vector in standard deviations of the noise. */
export const lengthIn = (vector: readonly number[], noise: Noise): number =>
  Math.sqrt(Math.max(0, dot(whitened(vector, noise), whitened(vector, noise))));

/** ln Σ exp(x), without overflow. */
export function logSum(logs: readonly number[]): number {
  const largest = logs.reduce((max, log) => Math.max(max, log), -Infinity);
  if (largest === -Infinity) return -Infinity;
  return largest + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - largest), 0));
}

function whitened(vector: readonly number[], { factor }: Noise): number[] {
  return forward(factor, vector);
}

function cholesky(matrix: Matrix): number[][] | null {
  const factor: number[][] = [];
  for (let row = 0; row < matrix.length; row++) {
    const built: number[] = [];
    for (let column = 0; column <= row; column++) {
      const other = column === row ? built : (factor[column] ?? []);
      let value = matrix[row]?.[column] ?? 0;
      for (let k = 0; k < column; k++) value -= (built[k] ?? 0) * (other[k] ?? 0);
      if (column < row) built.push(value / (other[column] ?? 1));
      else if (value > 0 && Number.isFinite(value)) built.push(Math.sqrt(value));
      else return null;
    }
    factor.push(built);
  }
  return factor;
}

/** L x = b. */
function forward(factor: Matrix, b: readonly number[]): number[] {
  const x: number[] = [];
  factor.forEach((row, index) => {
    let value = b[index] ?? 0;
    for (let k = 0; k < index; k++) value -= (row[k] ?? 0) * (x[k] ?? 0);
    x.push(value / (row[index] ?? 1));
  });
  return x;
}

/** L Lᵀ x = b. */
function solved(factor: Matrix, b: readonly number[]): number[] {
  const y = forward(factor, b);
  const x = y.map(() => 0);
  for (let row = y.length - 1; row >= 0; row--) {
    let value = y[row] ?? 0;
    for (let k = row + 1; k < y.length; k++) value -= (factor[k]?.[row] ?? 0) * (x[k] ?? 0);
    x[row] = value / (factor[row]?.[row] ?? 1);
  }
  return x;
}

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);
