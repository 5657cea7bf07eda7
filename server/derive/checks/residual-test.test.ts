import { expect, it } from 'vitest';
import { assumed } from '../../quantities/value.ts';
import { hole, isHole } from '../../quantities/value.ts';
import { inWords, residualTests } from './residual-test.ts';

const known = (name: string, value: number, sigma: number | null) =>
  assumed(name, value, 'm', sigma, 'for the test');
const none = hole('not looked at');
const residual = (east: number, north: number, up: number, sigma: number | null = 0.01) => ({
  east: known('east', east, sigma),
  north: known('north', north, sigma),
  up: known('up', up, sigma),
  horizontal: none,
  gridEast: none,
  gridNorth: none,
});
const at95 = assumed('confidence', 0.95, '', 0, 'for the test');

/** Published chi-square limits at 95 %: 5.991 of two degrees of freedom, 3.841 of one (NIST/SEMATECH e-Handbook). */
it.each([
  ['horizontal', 2.447, 0, 0, true],
  ['horizontal', 2.449, 0, 0, false],
  ['horizontal', 1.73, 1.73, 0, true],
  ['horizontal', 1.74, 1.74, 0, false],
  ['up', 0, 0, -1.959, true],
  ['up', 0, 0, -1.961, false],
] as const)('tests %s at %f, %f, %f standard uncertainties', (direction, e, n, u, passes) => {
  const test = residualTests(residual(e * 0.01, n * 0.01, u * 0.01), at95, 'C')[direction];
  expect(!isHole(test) && test.passes).toBe(passes);
  expect(!isHole(test) && Math.abs(test.probability.value - 0.05)).toBeLessThan(0.002);
});

it('tests nothing where nobody has said how good it is', () => {
  const tests = residualTests(residual(0, 0, 0, null), at95, 'C');
  expect(isHole(tests.horizontal) && isHole(tests.up)).toBe(true);
});

it.each([
  [0.99, 'nearly every right check is at least this far off'],
  [0.42, '4 right checks in 10 are at least this far off'],
  [0.05, 'a right check is at least this far off once in 20'],
  [0.00123, 'a right check is at least this far off once in 810'],
  [0.0000123, 'a right check is at least this far off once in 81 000'],
  [1e-9, 'a right check is at least this far off less than once in a million'],
])('says %f as “%s”', (probability, words) => {
  expect(inWords(probability)).toBe(words);
});
