/** The seeded generator: the same seed draws the same numbers, and they are spread as they claim. */
import { describe, expect, it } from 'vitest';
import { seededRandom } from './random.ts';

const draws = (seed: string, count: number): readonly number[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => random.normal(1));
};

describe('seeded random', () => {
  it('repeats itself for a seed, and differs for another', () => {
    expect(draws('a', 5)).toEqual(draws('a', 5));
    expect(draws('a', 5)).not.toEqual(draws('b', 5));
    const used = seededRandom(1);
    used.normal(1);
    expect(used.fork('x').uniform(0, 1)).toBe(seededRandom(1).fork('x').uniform(0, 1));
    expect(used.fork('x').uniform(0, 1)).not.toBe(used.fork('y').uniform(0, 1));
  });

  it('draws normals whose quartiles pass the chi-square test as often as they should', () => {
    // Quartiles of the normal distribution ±0.674490; χ² 95 % for 3 degrees of freedom 7.8147 (standard tables).
    const rejected = Array.from({ length: 1000 }, (_, seed) => {
      const counts = [0, 0, 0, 0];
      for (const value of draws(`quartiles ${String(seed)}`, 400)) {
        const quarter = value < -0.67449 ? 0 : value < 0 ? 1 : value < 0.67449 ? 2 : 3;
        counts[quarter] = (counts[quarter] ?? 0) + 1;
      }
      return counts.reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0) > 7.8147;
    }).filter(Boolean).length;
    // 50 expected; 99 % of a binomial: 2.5758 · √(1000 · 0.05 · 0.95) = 17.8.
    expect(Math.abs(rejected - 50)).toBeLessThan(18);
  });

  it('draws normals of unit variance', () => {
    const count = 100_000;
    const sum = draws('variance', count).reduce((total, value) => total + value ** 2, 0);
    // The standard deviation of a χ² sum is √(2n).
    expect(Math.abs(sum - count)).toBeLessThan(2.5758 * Math.sqrt(2 * count));
  });
});
