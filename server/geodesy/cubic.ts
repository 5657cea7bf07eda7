/**
 * Cubic convolution between four equally spaced values.
 *
 * Source: R. G. Keys (1981), Cubic convolution interpolation for digital image processing, IEEE Transactions on
 * Acoustics, Speech, and Signal Processing 29, eq. (8), with a = −1/2: exact for any parabola.
 */

/** The value at `s`, 0 ≤ s ≤ 1, between `one` and `two`; `before` and `after` are their outer neighbours. */
export function cubicBetween(before: number, one: number, two: number, after: number, s: number): number {
  const a = 3 * (one - two) + after - before;
  const b = 2 * before - 5 * one + 4 * two - after;
  return one + (s / 2) * (two - before + s * (b + s * a));
}
