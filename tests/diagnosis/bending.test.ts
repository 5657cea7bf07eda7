/** The bending of vectors from a wrong base against vectors that are solved from ranges to a sky full of satellites. */
import { describe, expect, it } from 'vitest';
import { bending } from '../../server/slips/bending.ts';
import { recordRanges, solveVector } from '../simulation/receiver.ts';
import type { Sight } from '../simulation/satellites.ts';
import type { EastNorthUp } from '../simulation/world.ts';
import {
  add,
  DEGREE,
  distance,
  fromLocal,
  localFrame,
  subtract,
  toGeocentric,
  toLocal,
  WGS84,
} from '../simulation/world.ts';

const PLACE = { latitude: 41, longitude: -8, height: 0 };
const HERE = toGeocentric(PLACE, WGS84);
const FRAME = localFrame(PLACE);

/** Evenly over the sphere of the orbits by the golden angle, as far as it stands above 12°. */
function evenSky(count: number): readonly Sight[] {
  const golden = Math.PI * (3 - Math.sqrt(5));
  return Array.from({ length: count }, (_, index) => {
    const z = 1 - (2 * index + 1) / count;
    const level = Math.sqrt(1 - z ** 2);
    const radius = 26_560_000;
    const satellite = {
      x: radius * level * Math.cos(index * golden),
      y: radius * level * Math.sin(index * golden),
      z: radius * z,
    };
    const ray = toLocal(subtract(satellite, HERE), FRAME);
    const elevation = Math.asin(ray.up / distance(satellite, HERE));
    return { system: 0, satellite, elevation, azimuth: Math.atan2(ray.east, ray.north) };
  }).filter(({ elevation }) => elevation > 12 * DEGREE);
}
const SKY = evenSky(4000);

/** What the solved vector has too much, in the base's horizon. */
function solvedBending(error: EastNorthUp, vector: EastNorthUp): EastNorthUp {
  const rover = add(HERE, fromLocal(vector, FRAME));
  const told = add(HERE, fromLocal(error, FRAME));
  const solution = solveVector(recordRanges(HERE, rover, SKY), told);
  if (!solution) throw new Error('a full sky has a solution');
  return toLocal(subtract(subtract(solution.rover, told), subtract(rover, HERE)), FRAME);
}

describe('a vector from a base that was told a wrong place', () => {
  it.each<[string, EastNorthUp, EastNorthUp]>([
    ['rises with an error along it', { east: 300, north: 0, up: 0 }, { east: 8000, north: 0, up: 0 }],
    ['sinks with an error against it', { east: 0, north: -300, up: 0 }, { east: 0, north: 8000, up: 0 }],
    ['shrinks under a base too high', { east: 0, north: 0, up: 300 }, { east: 6000, north: -5000, up: 0 }],
    ['stays with an error across it', { east: 300, north: 0, up: 0 }, { east: 0, north: 8000, up: 0 }],
    ['does all of it at once', { east: -200, north: 350, up: -150 }, { east: 3000, north: 7000, up: 0 }],
  ])('%s', (_, error, vector) => {
    const solved = solvedBending(error, vector);
    const said = bending(error, vector);
    // The whole effect is some 0.1 m here; 2 % of what an error of this size can do at most.
    const most = 0.02 * 0.04e-6 * Math.hypot(...Object.values(error)) * Math.hypot(...Object.values(vector));
    for (const axis of ['east', 'north', 'up'] as const)
      expect(Math.abs(said[axis] - solved[axis]), axis).toBeLessThan(most);
  });
});
