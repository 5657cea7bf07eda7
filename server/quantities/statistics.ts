/** Probabilities and quantiles of normal errors in one and two dimensions: half-widths, radii, ellipses, chi-square. */
/* eslint-disable no-loss-of-precision -- the coefficients are kept as published, to more digits than a double holds */

/** The half-width, in standard uncertainties, that a normal value stays within with this probability. */
export const normalHalfWidth = (probability: number) => normalQuantile((1 + probability) / 2);

/** The radius, in standard uncertainties of each axis, that a circular normal point stays within (Rayleigh). */
export const circularRadius = (probability: number) => Math.sqrt(-2 * Math.log1p(-probability));

/** The ellipse of one standard uncertainty. */
export interface Ellipse {
  readonly semiMajor: number;
  readonly semiMinor: number;
  /** Of the semi-major axis, in degrees from north over east, from 0 to below 180. */
  readonly bearing: number;
}

/** Principal axes of a covariance matrix, from standard uncertainties east and north and their covariance. */
export function ellipseOf(east: number, north: number, covariance: number): Ellipse {
  const mean = (east * east + north * north) / 2;
  const half = Math.hypot((north * north - east * east) / 2, covariance);
  const bearing = (Math.atan2(2 * covariance, north * north - east * east) * 90) / Math.PI;
  return {
    semiMajor: Math.sqrt(mean + half),
    semiMinor: Math.sqrt(Math.max(0, mean - half)),
    bearing: bearing < 0 ? bearing + 180 : bearing,
  };
}

/** The radius around the centre that holds this share of a normal distribution with these semi-axes, to a hundred-thousandth of it. */
export function ellipticalRadius(semiMajor: number, semiMinor: number, probability: number): number {
  let inside = 0;
  let outside = circularRadius(probability) * semiMajor;
  if (!(semiMinor > semiMajor / SLENDER)) return normalHalfWidth(probability) * semiMajor;
  for (let round = 0; round < 60 && outside - inside > 1e-12 * outside; round++) {
    const radius = (inside + outside) / 2;
    if (withinRadius(semiMajor, semiMinor, radius) < probability) inside = radius;
    else outside = radius;
  }
  return (inside + outside) / 2;
}

/** An ellipse more slender than this is a line, to a hundred-thousandth. */
const SLENDER = 300;

/** The integral over directions of the share within the radius, by the trapezoidal rule, which is exact for periodic functions but for rounding. */
function withinRadius(a: number, b: number, radius: number): number {
  const steps = 64 * Math.ceil(a / b);
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    const θ = (step * Math.PI) / steps;
    const q = (Math.cos(θ) / a) ** 2 + (Math.sin(θ) / b) ** 2;
    sum += -Math.expm1((-radius * radius * q) / 2) / q;
  }
  return sum / (steps * a * b);
}

/** The probability that chi-square with one, two or three degrees of freedom is larger than this. */
export function chiSquareBeyond(statistic: number, degrees: 1 | 2 | 3): number {
  if (degrees === 2) return Math.exp(-statistic / 2);
  const single = complementaryError(Math.sqrt(statistic / 2));
  // Abramowitz and Stegun (1964), 26.4.4.
  return degrees === 1 ? single : single + Math.sqrt((2 * statistic) / Math.PI) * Math.exp(-statistic / 2);
}

/** What chi-square with three degrees of freedom stays below with this probability of more, to a millionth of it. */
export function chiSquareLimit3(beyond: number): number {
  let low = 0;
  let high = 200;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (chiSquareBeyond(middle, 3) > beyond) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What chi-square stays below with this probability. */
export const chiSquareLimit = (probability: number, degrees: 1 | 2): number =>
  degrees === 2 ? circularRadius(probability) ** 2 : normalHalfWidth(probability) ** 2;

/** erfc, for x ≥ 0: NIST Digital Library of Mathematical Functions, series 7.6.2 and continued fraction 7.9.1. */
function complementaryError(x: number): number {
  if (x < 2) {
    let term = x;
    let sum = x;
    for (let n = 1; n < 100 && term > 1e-18 * sum; n++) {
      term *= (2 * x * x) / (2 * n + 1);
      sum += term;
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
  }
  let fraction = x;
  for (let n = 60; n > 0; n--) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / (fraction * Math.sqrt(Math.PI));
}

/** The value below which a standard normal one lies with this probability, to about 1e-16; Wichura (1988), AS 241, PPND16. */
export function normalQuantile(probability: number): number {
  const q = probability - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * horner(CENTRE_TOP, r)) / horner(CENTRE_BOTTOM, r);
  }
  const tail = Math.sqrt(-Math.log(q < 0 ? probability : 1 - probability));
  const far = tail > 5;
  const r = tail - (far ? 5 : 1.6);
  const size = far
    ? horner(FAR_TOP, r) / horner(FAR_BOTTOM, r)
    : horner(TAIL_TOP, r) / horner(TAIL_BOTTOM, r);
  return q < 0 ? -size : size;
}

const horner = (coefficients: readonly number[], r: number) =>
  coefficients.reduceRight((sum, coefficient) => sum * r + coefficient, 0);

const CENTRE_TOP = [
  3.387132872796366608, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4,
  4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4, 2.5090809287301226727e3,
];
const CENTRE_BOTTOM = [
  1, 4.2313330701600911252e1, 6.871870074920579083e2, 5.3941960214247511077e3, 2.1213794301586595867e4,
  3.930789580009271061e4, 2.8729085735721942674e4, 5.226495278852854561e3,
];
const TAIL_TOP = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 2.4178072517745061177e-1, 2.27238449892691845833e-2, 7.7454501427834140764e-4,
];
const TAIL_BOTTOM = [
  1, 2.05319162663775882187, 1.6763848301838038494, 6.8976733498510000455e-1, 1.4810397642748007459e-1,
  1.51986665636164571966e-2, 5.475938084995344946e-4, 1.05075007164441684324e-9,
];
const FAR_TOP = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 2.9656057182850489123e-1,
  2.6532189526576123093e-2, 1.2426609473880784386e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
];
const FAR_BOTTOM = [
  1, 5.9983220655588793769e-1, 1.3692988092273580531e-1, 1.48753612908506148525e-2, 7.868691311456132591e-4,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
];
