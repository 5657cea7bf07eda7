/** Each planted slip, seen at the checks without noise, does what a surveyor would expect of it. */
import { describe, expect, it } from 'vitest';
import type { Scene } from './day.ts';
import { drawScene, liveSilently } from './day.ts';
import type { Planted, SlipName } from './planted.ts';
import { SLIP_NAMES, neighboursSwapped, plantVector, waysOf, waysToSlip } from './planted.ts';
import { checkResiduals } from './predict.ts';
import type { EastNorthUp } from './world.ts';

/** A day within a kilometre, so that the bend of the vectors stays under some millimetres. */
const near = (seed: number): Scene =>
  drawScene({ seed: `planted ${String(seed)}`, distance: 300, form: 'grid', keyedForm: 'grid', points: 0 });

/** What the slip does at each check, against the careful day. */
function effects(scene: Scene, planted: Planted): readonly (EastNorthUp & { readonly minutes: number })[] {
  const careful = checkResiduals(scene, liveSilently(scene));
  return checkResiduals(scene, liveSilently(scene, planted)).map(({ residual, minutes }, index) => {
    const before = careful[index]?.residual ?? { east: 0, north: 0, up: 0 };
    return {
      minutes,
      east: residual.east - before.east,
      north: residual.north - before.north,
      up: residual.up - before.up,
    };
  });
}

const scenes = Array.from({ length: 20 }, (_, seed) => near(seed));

/** What a slip must do to the shown heights, from the day's own numbers. */
const RISES: readonly (readonly [SlipName, (scene: Scene) => number])[] = [
  ['extension-left-out', ({ situation }) => -situation.careful.extension],
  ['extension-twice', ({ situation }) => situation.careful.extension],
  ['antenna-height-left-out', ({ situation }) => -situation.careful.setting.antennaHeight],
  ['pole-left-out', ({ roverPole }) => roverPole],
  ['pole-twice', ({ roverPole }) => -roverPole],
  ['rise-forgotten', ({ baseAntenna }) => baseAntenna.rim.rise],
  ['phase-centre-for-arp', ({ baseAntenna }) => baseAntenna.phaseCentre],
  ['arp-for-phase-centre', ({ baseAntenna }) => -baseAntenna.phaseCentre],
  ['base-antenna-type-missing', ({ baseAntenna }) => -baseAntenna.phaseCentre],
  ['rover-antenna-type-missing', ({ roverAntenna }) => roverAntenna.phaseCentre],
  ['orthometric-for-ellipsoidal', ({ situation }) => -situation.mark.separation],
  ['separation-sign', ({ situation }) => -2 * situation.mark.separation],
  ['separation-twice', ({ situation }) => situation.mark.separation],
  ['chart-for-ellipsoidal', ({ situation }) => situation.chartBelow - situation.mark.separation],
];

describe('planted slips', () => {
  it.each(RISES)('%s lifts or lowers every check by its own amount', (name, rise) => {
    let seen = 0;
    for (const scene of scenes) {
      for (const planted of waysOf(name, scene.situation)) {
        for (const { east, north, up } of effects(scene, planted)) {
          seen += 1;
          // Up at the base leans 300 m / 6370 km from up at the check, the vectors bend by some 0.03 ppm of 300 m for
          // each metre; and heights are keyed to the millimetre.
          const bend = 7e-5 * Math.abs(rise(scene));
          expect(Math.abs(up - rise(scene))).toBeLessThan(0.002 + bend);
          expect(Math.hypot(east, north)).toBeLessThan(0.001 + bend);
        }
      }
    }
    expect(seen).toBeGreaterThan(0);
  });

  it('a pole told too long lowers the ground', () => {
    for (const planted of waysOf('rover-pole', near(1).situation)) {
      const told = planted.rover.pole - near(1).roverPole;
      for (const { up } of effects(near(1), planted)) expect(Math.abs(up + told)).toBeLessThan(0.001);
    }
  });

  it('a controller without its geoid shows heights too high by the separation', () => {
    const scene = near(2);
    const [planted] = waysOf('rover-geoid-off', scene.situation);
    if (planted === undefined) throw new Error('no way');
    for (const { up } of effects(scene, planted)) {
      expect(Math.abs(up - scene.situation.mark.separation)).toBeLessThan(0.05);
    }
  });

  it('a base that moves takes the rover the other way, from then on', () => {
    for (const scene of scenes) {
      const [planted] = waysOf('base-moved', scene.situation);
      if (planted?.moved === undefined) throw new Error('no way');
      const { by, minutes: from } = planted.moved;
      const seen = effects(scene, planted);
      expect(seen.some(({ minutes }) => minutes < from)).toBe(true);
      expect(seen.some(({ minutes }) => minutes >= from)).toBe(true);
      for (const { minutes, east, north, up } of seen) {
        const share = minutes < from ? 0 : -1;
        expect(Math.hypot(east - share * by.east, north - share * by.north)).toBeLessThan(0.0005);
        expect(Math.abs(up - share * by.up)).toBeLessThan(0.0005);
      }
    }
  });

  it('a keyed vector is seen as that vector', () => {
    const vector = { east: 0.4, north: -0.3, up: 1.2 };
    for (const scene of scenes) {
      for (const { east, north, up } of effects(scene, plantVector(scene.situation, vector))) {
        expect(Math.hypot(east - 0.4, north + 0.3, up - 1.2)).toBeLessThan(0.002);
      }
    }
  });

  it('a swapped digit moves the keyed number by nine times a power of ten', () => {
    for (const planted of waysOf('digits-swapped', near(3).situation)) {
      if (!planted.detail.startsWith('antenna height')) continue;
      const changed = planted.base.antennaHeight - near(3).situation.careful.setting.antennaHeight;
      expect(Math.abs(Math.round(changed * 1000) % 9)).toBe(0);
      expect(Math.abs(changed)).toBeGreaterThan(0.0005);
    }
    expect(neighboursSwapped('1.533')).toEqual(['5.133', '1.353']);
  });

  it('each has a way on some day, and each way differs from the careful day', () => {
    const found = new Set<SlipName>();
    for (let seed = 0; seed < 40; seed++) {
      const scene = drawScene({ seed, points: 0 });
      for (const planted of waysToSlip(scene.situation)) {
        found.add(planted.slip);
        const { base, rover, moved, slip, detail } = planted;
        const careful = scene.situation.careful;
        const same = { base: careful.setting, rover: careful.rover, moved: undefined };
        expect([slip, detail, { base, rover, moved }]).not.toEqual([slip, detail, same]);
      }
    }
    expect([...found].sort()).toEqual([...SLIP_NAMES].sort());
  });

  it('notes of a faithful writer hold what the receiver was told', () => {
    for (const scene of scenes) {
      for (const planted of waysToSlip(scene.situation)) {
        expect(planted.faithful.setting).toEqual(planted.base);
        expect(planted.faithful.rover).toEqual(planted.rover);
      }
    }
  });
});
