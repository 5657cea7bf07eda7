import { describe, expect, it } from 'vitest';
import { decibelMilliwatts, decibels, hertz, metres } from '../quantities/brands.ts';
import { loraRate, loraSensitivity } from './lora.ts';
import {
  freeSpaceLoss,
  fresnelClearance,
  fresnelRadius,
  linkMargin,
  pathLoss,
  planeEarthBegins,
  planeEarthLoss,
  radioHorizon,
  reach,
} from './range.ts';

const path = (carrier: number, distance: number, baseAerial: number, roverAerial: number) => ({
  carrier: hertz(carrier),
  distance: metres(distance),
  baseAerial: metres(baseAerial),
  roverAerial: metres(roverAerial),
});

describe('range', () => {
  it('loses 32.4 + 20 log f + 20 log d in free space (ITU-R P.525)', () => {
    expect(freeSpaceLoss(hertz(1e6), metres(1000))).toBeCloseTo(32.4, 9);
    expect(freeSpaceLoss(hertz(100e6), metres(10_000))).toBeCloseTo(92.4, 9);
    // From the physics itself, (4 pi d f / c)^2: the recommendation rounds 32.45 to 32.4.
    expect(freeSpaceLoss(hertz(868e6), metres(5000))).toBeCloseTo(
      20 * Math.log10((4 * Math.PI * 5000 * 868e6) / 299_792_458),
      0,
    );
  });

  it('loses 40 log d - 20 log h1 h2 over a plane earth (from memory)', () => {
    expect(planeEarthLoss(path(868e6, 1000, 10, 1))).toBeCloseTo(120 - 20, 9);
  });

  it('free space alone is 27 dB too kind at 5 km with aerials at 3 m and 2 m (at 868 MHz)', () => {
    const far = path(868e6, 5000, 3, 2);
    expect(pathLoss(far) - freeSpaceLoss(far.carrier, far.distance)).toBeCloseTo(27, 0);
  });

  it('takes the larger of the two: free space near by, plane earth far away', () => {
    const near = path(868e6, 30, 3, 2);
    expect(pathLoss(near)).toBe(freeSpaceLoss(near.carrier, near.distance));
    const far = path(868e6, 5000, 3, 2);
    expect(pathLoss(far)).toBe(planeEarthLoss(far));
    expect(planeEarthBegins(far)).toBeCloseTo((4 * 3 * 2) / (299_792_458 / 868e6), 9);
  });

  it('has a first Fresnel zone of 550 sqrt(d1 d2 / (d f)) (ITU-R P.526)', () => {
    // Half way along 4 km at 100 MHz: 550 * sqrt(2 * 2 / (4 * 100)) = 55 m.
    expect(fresnelRadius(path(100e6, 4000, 3, 2), metres(2000))).toBeCloseTo(55, 9);
    // From the physics itself, sqrt(lambda d1 d2 / d).
    const half = Math.sqrt((299_792_458 / 461e6) * 1250);
    expect(fresnelRadius(path(461e6, 5000, 3, 2), metres(2500)) / half).toBeCloseTo(1, 2);
  });

  it('says how much of the Fresnel zone the ground leaves free', () => {
    expect(fresnelClearance(path(461e6, 100, 10, 10))).toBeGreaterThan(1);
    expect(fresnelClearance(path(461e6, 5000, 3, 2))).toBeLessThan(0.6);
    expect(fresnelClearance(path(461e6, 40_000, 3, 2))).toBeLessThan(0);
  });

  it('sees 4.12 (sqrt h1 + sqrt h2) km (from memory)', () => {
    expect(radioHorizon(metres(4), metres(1))).toBeCloseTo(12_360, 9);
    // From the geometry itself: tangents to a sphere of 4/3 radius.
    const tangent = (height: number) => Math.sqrt(2 * (4 / 3) * 6_371_000 * height);
    expect(radioHorizon(metres(4), metres(1)) / (tangent(4) + tangent(1))).toBeCloseTo(1, 2);
  });

  it('leaves a margin, and reaches as far as it lasts', () => {
    const budget = { power: decibelMilliwatts(27), sensitivity: decibelMilliwatts(-120) };
    const at5km = path(868e6, 5000, 3, 2);
    expect(linkMargin(at5km, budget)).toBeCloseTo(147 - pathLoss(at5km), 9);
    const distance = reach(at5km, budget, decibels(10));
    expect(linkMargin({ ...at5km, distance }, budget)).toBeCloseTo(10, 6);
    expect(linkMargin(at5km, { ...budget, gains: decibels(3) }) - linkMargin(at5km, budget)).toBeCloseTo(
      3,
      9,
    );
  });

  it('a longer baseline wants a slower air rate (common practice)', () => {
    const fast = { spreading: 7, bandwidth: hertz(250_000), coding: 6 } as const;
    const slow = { ...fast, spreading: 10 } as const;
    const reachOf = (settings: typeof fast | typeof slow) =>
      reach(
        path(868e6, 0, 3, 2),
        {
          power: decibelMilliwatts(20),
          sensitivity: loraSensitivity(settings) ?? decibelMilliwatts(Number.NaN),
        },
        decibels(10),
      );
    expect(loraRate(slow)).toBeLessThan(loraRate(fast));
    // 9 dB more over a plane earth, 40 dB a decade: 10^(9/40) = 1.68 times as far.
    expect(reachOf(slow) / reachOf(fast)).toBeCloseTo(10 ** (9 / 40), 3);
  });
});
