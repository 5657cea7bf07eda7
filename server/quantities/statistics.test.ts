import { describe, expect, it } from 'vitest';
import {
  chiSquareBeyond,
  chiSquareLimit,
  circularRadius,
  ellipseOf,
  ellipticalRadius,
  normalHalfWidth,
  normalQuantile,
} from './statistics.ts';

/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1; digits beyond it from memory. */
it('has the published normal quantiles', () => {
  expect(normalHalfWidth(0.95)).toBeCloseTo(1.959964, 6);
  expect(normalHalfWidth(0.99)).toBeCloseTo(2.575829, 6);
  expect(normalQuantile(0.5)).toBe(0);
  // Wichura (1988), the algorithm's own check values.
  expect(normalQuantile(0.25)).toBeCloseTo(-0.674489750196082, 13);
  expect(normalQuantile(0.001)).toBeCloseTo(-3.09023230616781, 12);
  expect(normalQuantile(1e-20)).toBeCloseTo(-9.26234008979841, 12);
});

/** The square root of the published chi-square quantile of two degrees of freedom, 5.9915. */
it('has the radius of the 95 % circle', () => {
  expect(circularRadius(0.95)).toBeCloseTo(Math.sqrt(5.9915), 4);
  expect(circularRadius(0.95)).toBeCloseTo(2.447747, 6);
});

/** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values of chi-square. */
it.each([
  [1, 0.95, 3.841],
  [1, 0.99, 6.635],
  [1, 0.999, 10.828],
  [2, 0.95, 5.991],
  [2, 0.99, 9.21],
  [2, 0.999, 13.816],
] as const)('has the published chi-square limit for %i degrees at %f', (degrees, probability, limit) => {
  expect(chiSquareLimit(probability, degrees)).toBeCloseTo(limit, 3);
  expect(chiSquareBeyond(limit, degrees)).toBeCloseTo(1 - probability, 4);
});

it('knows chi-square far out and near nothing', () => {
  expect(chiSquareBeyond(0, 1)).toBe(1);
  expect(chiSquareBeyond(0, 2)).toBe(1);
  // erfc(5) = 1.537459794428e-12 and erfc(2) = 4.677734981047e-3 (NIST Digital Library, table of erfc; from memory).
  expect(chiSquareBeyond(50, 1) / 1.537459794428e-12).toBeCloseTo(1, 10);
  expect(chiSquareBeyond(8, 1) / 4.677734981047e-3).toBeCloseTo(1, 11);
});

describe('an ellipse', () => {
  it('has its axes and bearing from the covariance matrix', () => {
    // Semi-axes 5 and 2 at a bearing of 30°: east variance a² sin² + b² cos², north a² cos² + b² sin², covariance (a² − b²) sin cos.
    const east = Math.sqrt(25 * 0.25 + 4 * 0.75);
    const north = Math.sqrt(25 * 0.75 + 4 * 0.25);
    const found = ellipseOf(east, north, 21 * 0.5 * Math.sqrt(0.75));
    expect(found.semiMajor).toBeCloseTo(5, 12);
    expect(found.semiMinor).toBeCloseTo(2, 12);
    expect(found.bearing).toBeCloseTo(30, 10);
    expect(ellipseOf(3, 2, 0).bearing).toBeCloseTo(90, 12);
    expect(ellipseOf(2, 3, 0).bearing).toBe(0);
    expect(ellipseOf(2, 2, -1).bearing).toBeCloseTo(135, 10);
  });

  it('holds what is asked within its radius: a circle, a line, and between them', () => {
    expect(ellipticalRadius(1, 1, 0.95)).toBeCloseTo(circularRadius(0.95), 10);
    expect(ellipticalRadius(1, 0, 0.95)).toBeCloseTo(1.959964, 6);
    expect(ellipticalRadius(1, 1e-4, 0.95)).toBeCloseTo(1.959964, 3);
    // Counted on a fine net over the plane, which knows nothing of the integral over directions.
    const radius = ellipticalRadius(2, 1, 0.95);
    let inside = 0;
    const step = 0.02;
    for (let x = -radius; x <= radius; x += step)
      for (let y = -radius; y <= radius; y += step)
        if (Math.hypot(x, y) <= radius) inside += Math.exp(-(x * x) / 8 - (y * y) / 2);
    expect((inside * step * step) / (4 * Math.PI)).toBeCloseTo(0.95, 3);
  });
});
