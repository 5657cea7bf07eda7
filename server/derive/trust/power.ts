/** The smallest movement that a comparison of two checks finds with a given probability: the power of the test. */
import { circularRadius, normalHalfWidth, normalQuantile } from '../../quantities/statistics.ts';

/**
 * In standard uncertainties of the difference, vertically: the test is two-sided at `confidence`.
 * The far tail is left out: beyond a power of a half it adds less than 1e-4.
 * Source: W. Baarda (1968), A testing procedure for use in geodetic networks, with one degree of freedom.
 */
export function smallestUp(confidence: number, power: number): number {
  return normalHalfWidth(confidence) + normalQuantile(power);
}

/**
 * In standard uncertainties of each axis of the difference, horizontally: the test is on the length of the vector.
 * Source: W. Baarda (1968), as above, with two degrees of freedom; found by halving.
 */
export function smallestHorizontal(confidence: number, power: number): number {
  const radius = circularRadius(confidence);
  let low = 0;
  let high = radius + 10;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (beyond(radius, middle) < power) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * The probability that a circular normal point around a centre `offset` away lies farther out than `radius`, both in
 * standard uncertainties: the noncentral χ² with two degrees of freedom as a Poisson mixture of central ones.
 * Source: N. L. Johnson and S. Kotz (1970), Continuous Univariate Distributions 2, chapter 28.
 */
export function beyond(radius: number, offset: number): number {
  const halfNoncentrality = (offset * offset) / 2;
  const halfSquare = (radius * radius) / 2;
  let weight = Math.exp(-halfNoncentrality);
  let term = Math.exp(-halfSquare);
  let tail = term;
  let sum = weight * tail;
  let weights = weight;
  for (let j = 1; j < 1000 && weights < 1 - 1e-15; j++) {
    weight *= halfNoncentrality / j;
    term *= halfSquare / j;
    tail += term;
    sum += weight * tail;
    weights += weight;
  }
  return Math.min(1, sum);
}
