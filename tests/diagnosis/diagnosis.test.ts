/**
 * The diagnosis against simulated days, whose vectors are solved from satellites and ranges by code that shares nothing
 * with it. Here over a few draws of each slip, of the series that the diagnosis was developed with;
 * `node tests/diagnosis/full-rates.mjs 1000` counts over as many of the other one as are asked for.
 */
import { describe, expect, it } from 'vitest';
import { SLIP_NAMES } from '../simulation/planted.ts';
import { binomialInterval } from './binomial.ts';
import { cleanDays } from './clean-days.ts';
import { diagnosisOf, plantedDay } from './days.ts';
import { falselyClaimed, falselyNamed, ratesOf, type Rates } from './rates.ts';

const DRAWS = 6;
const SLIPS = SLIP_NAMES.filter((name) => name !== 'unlisted');

describe('a slip that was planted', () => {
  const rates = new Map<string, Rates>();
  it.each(SLIPS)('%s is drawn', { timeout: 120_000 }, (slip) => {
    const found = ratesOf(slip, DRAWS, 'development');
    rates.set(slip, found);
    expect(found.draws).toBeGreaterThan(1);
  });

  const total = (of: (rate: Rates) => number) => [...rates.values()].reduce((sum, rate) => sum + of(rate), 0);
  const missed = () => [...rates.values()].flatMap((rate) => rate.missed);

  it('is named first in 95 % of the days in which it can be told apart', () => {
    const days = total((rate) => rate.distinguishable);
    expect(days).toBeGreaterThan(80);
    // What a true rate of 95 % stays above in 99 of 100 runs.
    expect(
      total((rate) => rate.first),
      missed().join('\n'),
    ).toBeGreaterThan(binomialInterval(days, 0.95).least);
  });

  it('is among those named where others lie close', () => {
    const days = total((rate) => rate.alike);
    expect(days).toBeGreaterThan(20);
    expect(
      total((rate) => rate.held),
      missed().join('\n'),
    ).toBeGreaterThan(binomialInterval(days, 0.95).least);
  });
});

describe('a day without a listed slip', () => {
  it('is answered "none" where an error of the base has no name', { timeout: 120_000 }, () => {
    const days = 60;
    expect(falselyNamed(days, 'development')).toBeLessThan(binomialInterval(days, 0.05).most);
  });

  it('is not told a slip that excludes all else where heights alone are wrong', { timeout: 120_000 }, () => {
    const days = 60;
    expect(falselyClaimed(days, 'development')).toBeLessThan(binomialInterval(days, 0.05).most);
  });

  it('surprises as often as the confidence says, and is never called wrong', { timeout: 120_000 }, () => {
    const { judged, surprising, errors } = cleanDays(250, 'development');
    expect(errors).toEqual([]);
    expect(judged).toBe(500);
    const { least, most } = binomialInterval(judged, 0.05);
    expect(surprising).toBeGreaterThan(least);
    expect(surprising).toBeLessThan(most);
  });
});

describe('notes that show the wrong number', () => {
  it.each([
    ['orthometric-for-ellipsoidal', 'height/wrong-surface'],
    ['separation-sign', 'height/separation-sign'],
    ['extension-twice', 'height/extension'],
    ['wrong-mark', 'position/keyed-differs'],
    ['millimetres-for-metres', 'unit/thousandfold'],
    ['survey-feet', 'unit/feet'],
  ] as const)('%s: the slip is read off the notes themselves', (slip, code) => {
    let seen = 0;
    for (let number = 0; number < 40 && seen < 3; number++) {
      const day = plantedDay(slip, number, 'development');
      if (!day) continue;
      const diagnosis = diagnosisOf(day.scene, day.planted, 'faithful');
      if (!diagnosis) continue;
      seen++;
      expect(diagnosis.shown.map(({ named }) => named?.slip.code)).toContain(code);
    }
    expect(seen).toBe(3);
  });
});
