/** How far counts may lie from their true rate by chance. */

export interface Interval {
  readonly least: number;
  readonly most: number;
}

/** The interval that a count stays within in 99 of 100 cases when its rate is known, by the normal approximation. */
export function binomialInterval(trials: number, probability: number): Interval {
  const middle = trials * probability;
  const half = 2.575829 * Math.sqrt(middle * (1 - probability));
  return { least: middle - half, most: middle + half };
}

/** The rates that a count is compatible with, at 95 % (Wilson 1927, the score interval). */
export function ratesBehind(part: number, whole: number): Interval {
  const z = 1.959964;
  const share = part / whole;
  const middle = (share + z ** 2 / (2 * whole)) / (1 + z ** 2 / whole);
  const half =
    (z / (1 + z ** 2 / whole)) * Math.sqrt((share * (1 - share)) / whole + z ** 2 / (4 * whole ** 2));
  return { least: middle - half, most: middle + half };
}
