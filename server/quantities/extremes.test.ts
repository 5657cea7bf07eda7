import { describe, expect, it } from 'vitest';
import { largestOf, smallestOf } from './extremes.ts';

describe('the largest and the smallest', () => {
  it('are found in a list that is too long for arguments', () => {
    const many = Array.from({ length: 300_000 }, (_, index) => (index * 7919) % 300_007);
    expect(largestOf(many)).toBe([...many].sort((one, other) => other - one)[0]);
    expect(smallestOf(many)).toBe(0);
  });

  it('of nothing are what was said to be enough', () => {
    expect([largestOf([]), smallestOf([]), largestOf([], 0), smallestOf([3], 1)]).toEqual([
      -Infinity,
      Infinity,
      0,
      1,
    ]);
  });

  it('are no number where one of them is none', () => {
    expect([largestOf([1, NaN, 2]), smallestOf([1, NaN, 2])]).toEqual([NaN, NaN]);
  });
});
