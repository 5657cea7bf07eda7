/** The distance between slips, by hand and by what it must be. */
import { describe, expect, it } from 'vitest';
import { drawScene } from './day.ts';
import { plantVector, waysOf } from './planted.ts';
import { slipDistance, squaredLength } from './predict.ts';

describe('the distance between two slips', () => {
  it('weighs a vector by its covariance', () => {
    // By hand: the inverse of [[4, 2], [2, 3]] is [[3, −2], [−2, 4]] / 8; (1, 2) gives (3 − 8 + 16) / 8.
    expect(
      squaredLength(
        [
          [4, 2],
          [2, 3],
        ],
        [1, 2],
      ),
    ).toBeCloseTo(11 / 8, 12);
  });

  it('is nothing for the same slip, the same both ways, and grows with the slip', () => {
    const scene = drawScene({ seed: 'distance', form: 'grid' });
    const small = plantVector(scene.situation, { east: 0, north: 0, up: 0.05 });
    const large = plantVector(scene.situation, { east: 0, north: 0, up: 0.5 });
    expect(slipDistance(scene, small, small)).toBe(0);
    expect(slipDistance(scene, small, large)).toBeCloseTo(slipDistance(scene, large, small), 9);
    expect(slipDistance(scene, large, undefined) / slipDistance(scene, small, undefined)).toBeCloseTo(10, 0);
  });

  it('cannot tell a missing antenna type from a receiver set to the phase centre, and can tell feet from metres', () => {
    const { situation, ...rest } = drawScene({ seed: 'tell', form: 'grid' });
    const scene = { situation, ...rest };
    const [missing] = waysOf('base-antenna-type-missing', situation);
    const [reference] = waysOf('arp-for-phase-centre', situation);
    const [feet] = waysOf('feet', situation);
    expect(slipDistance(scene, missing, reference)).toBeLessThan(0.5);
    expect(slipDistance(scene, missing, feet)).toBeGreaterThan(4);
  });

  it('is limited by what all checks share, however many they are', () => {
    // One vector at the base mark: even perfect checks leave the mark's own 12 mm; 24 mm can be two of them at most.
    const noise = {
      pairHorizontal: { constant: 1e-5, ppm: 0 },
      pairUp: { constant: 1e-5, ppm: 0 },
      tapeReading: 0,
      tapeCommon: 0,
      extension: 0,
      phaseCentre: 0,
      markVertical: 0.012,
    };
    const scene = drawScene({ seed: 'limit', noise, checkMarks: 1, distance: 100, form: 'grid' });
    const lifted = plantVector(scene.situation, { east: 0, north: 0, up: 0.024 });
    // Base mark and check mark, each 12 mm: 24 / (12 · √2).
    expect(slipDistance(scene, lifted, undefined)).toBeCloseTo(Math.SQRT2, 1);
  });
});
