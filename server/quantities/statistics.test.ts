import { expect, it } from 'vitest';
import { circularRadius, normalHalfWidth, normalQuantile } from './statistics.ts';

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
