/**
 * Pair by pair: how far the antenna moved, against how far it seems to move when it stands.
 *
 * T = dᵀΣ⁻¹d is chi-square of three degrees of freedom for a standing antenna, with Σ scaled to the session's own
 * scatter, at its median and in its tail, whichever is larger. The threshold is the value that a standing antenna
 * exceeds by chance once in thirty sessions of eight hours.
 */
import { chiSquareLimit3 } from '../quantities/statistics.ts';
import { JOINT_FROM } from './joint.ts';
import type { Displacements } from './displacement.ts';
import { quantile } from './stood.ts';

export interface JudgedPairs extends Displacements {
  /** Of each pair; NaN where it is not solved. Covariances are scaled. */
  readonly statistic: Float64Array;
}

/** Seconds in which one false alarm is accepted: thirty sessions of eight hours. */
const ONE_FALSE_ALARM_IN = 30 * 8 * 3600;

/**
 * Waves in the ionosphere that pass over half an hour look like movements of a centimetre and more at half a minute; on
 * the one static day that was looked at (2020-06-25, 55° N) they reached 1.3 times the chi-square limit.
 */
const WAVES = 1.6;

export const stepThreshold = (interval: number) =>
  chiSquareLimit3(Math.min(0.001, Math.max(interval, 0.02) / ONE_FALSE_ALARM_IN)) *
  (interval >= JOINT_FROM ? WAVES : 1);

/** Chi-square with three degrees of freedom: median and 99th percentile (Abramowitz and Stegun 1964, table 26.8). */
const MEDIAN = 2.366;
const NINETY_NINTH = 11.345;

export function judged(pairs: Displacements): JudgedPairs {
  const statistic = new Float64Array(pairs.satellites.length);
  for (let pair = 0; pair < statistic.length; pair += 1)
    statistic[pair] = statisticOf(pairs.moved, pairs.covariance, pair);
  const known = [...statistic.filter((value) => !Number.isNaN(value))];
  if (known.length === 0) return { ...pairs, statistic };
  const scale = Math.max(
    quantile(known, 0.5) / MEDIAN,
    known.length >= 300 ? quantile(known, 0.99) / NINETY_NINTH : 1,
    0.25,
  );
  for (let pair = 0; pair < statistic.length; pair += 1) statistic[pair] = (statistic[pair] ?? 0) / scale;
  const covariance = pairs.covariance.map((value) => value * scale);
  return { ...pairs, covariance, statistic };
}

/** dᵀΣ⁻¹d by the adjugate of the symmetric matrix. */
export function statisticOf(moved: Float64Array, covariance: Float64Array, pair: number): number {
  const [e = 0, n = 0, u = 0] = moved.subarray(3 * pair, 3 * pair + 3);
  const [a = 0, b = 0, c = 0, d = 0, f = 0, g = 0] = covariance.subarray(6 * pair, 6 * pair + 6);
  const A = b * c - g * g;
  const B = f * g - d * c;
  const C = d * g - b * f;
  const determinant = a * A + d * B + f * C;
  return (
    (e * e * A +
      n * n * (a * c - f * f) +
      u * u * (a * b - d * d) +
      2 * (e * n * B + e * u * C + n * u * (d * f - a * g))) /
    determinant
  );
}
