/** Typed digits: what the last one is worth, and what swapped neighbours make. */
import { describe, expect, it } from 'vitest';
import { given, type Unit } from '../quantities/value.ts';
import { lastDigit, swappedDigits } from './digits.ts';
import { swapBack } from './digits-swapped.ts';

const NOWHERE = {
  path: '',
  entry: {
    text: '',
    header: { start: 0, end: 0, word: null, items: [], comment: null, indented: false },
    details: [],
    slips: [],
  },
  start: 0,
  end: 0,
};
const typed = (text: string, unit: Unit) => given('number', 0, unit, null, text, NOWHERE);

describe('the last digit', () => {
  it.each([
    ['1.533 m', 'm', 0.001],
    ['250 mm', 'm', 0.001],
    ['4.21 ft', 'm', 0.01 * 0.3048],
    ['5 ft 2 in', 'm', 0.0254],
    ['41°09\'08.18286"N', '°', 1e-5 / 3600],
    ["41°09.136'N", '°', 0.001 / 60],
    ['41.152273017°N', '°', 1e-9],
  ] as const)('of %s', (text, unit, worth) => {
    expect((lastDigit(typed(text, unit)) ?? NaN) / worth).toBeCloseTo(1, 9);
  });
  it('of nothing is not known', () => expect(lastDigit(null)).toBeNull());
});

describe('swapped neighbours', () => {
  it('change places across the point, and equal ones do not count', () => {
    expect(swappedDigits('1.533').sort()).toEqual(['1.353', '5.133']);
  });
  it('are found back within the tolerance', () => {
    expect(swapBack('61.021', 61.201, 0.002)).toBe('two digits changed places, 61.021 for 61.201');
    expect(swapBack('61.021', 61.3, 0.002)).toBeNull();
  });
});
