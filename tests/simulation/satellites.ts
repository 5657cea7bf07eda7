/** Two constellations of satellites on circular orbits, and which of them stand above a place's mask at a time. */
import type { Geocentric, Geodetic } from './world.ts';
import { DEGREE, WGS84, distance, localFrame, subtract, toGeocentric, toLocal } from './world.ts';

/** One satellite as seen from a place; angles in radians. */
export interface Sight {
  /** Which constellation: each has its own receiver clock offset. */
  readonly system: number;
  readonly satellite: Geocentric;
  readonly elevation: number;
  readonly azimuth: number;
}

/** Satellites above the mask (degrees) at a time in seconds from any fixed instant. */
export function visibleSatellites(place: Geodetic, seconds: number, maskDegrees: number): readonly Sight[] {
  const here = toGeocentric(place, WGS84);
  const frame = localFrame(place);
  const sights: Sight[] = [];
  CONSTELLATIONS.forEach((constellation, system) => {
    for (const satellite of positions(constellation, seconds)) {
      const ray = toLocal(subtract(satellite, here), frame);
      const elevation = Math.asin(ray.up / distance(satellite, here));
      if (elevation < maskDegrees * DEGREE) continue;
      sights.push({ system, satellite, elevation, azimuth: Math.atan2(ray.east, ray.north) });
    }
  });
  return sights;
}

interface Constellation {
  readonly planes: number;
  readonly perPlane: number;
  /** Metres. */
  readonly radius: number;
  readonly inclinationDegrees: number;
  /** Walker phasing between neighbouring planes, in units of 360° / satellites. */
  readonly phasing: number;
}

/** Nominal geometry (from memory): 6 planes at 55°, 26 560 km; 3 planes at 64.8°, 25 510 km. */
const CONSTELLATIONS: readonly Constellation[] = [
  { planes: 6, perPlane: 5, radius: 26_560_000, inclinationDegrees: 55, phasing: 2 },
  { planes: 3, perPlane: 8, radius: 25_510_000, inclinationDegrees: 64.8, phasing: 1 },
];

/** WGS 84 defining constants: gravitational constant of the earth, m³/s², and its rotation, rad/s. */
const GM = 3.986004418e14;
const EARTH_ROTATION = 7.292115e-5;

/** Earth-fixed positions at one instant. Signal travel time and clocks act alike on both receivers and on both sides of every difference, so they are left out. */
function positions(constellation: Constellation, seconds: number): readonly Geocentric[] {
  const { planes, perPlane, radius, phasing } = constellation;
  const motion = Math.sqrt(GM / radius ** 3) * seconds;
  const cosI = Math.cos(constellation.inclinationDegrees * DEGREE);
  const sinI = Math.sin(constellation.inclinationDegrees * DEGREE);
  const found: Geocentric[] = [];
  for (let plane = 0; plane < planes; plane++) {
    const node = (2 * Math.PI * plane) / planes - EARTH_ROTATION * seconds;
    const [sinΩ, cosΩ] = [Math.sin(node), Math.cos(node)];
    for (let slot = 0; slot < perPlane; slot++) {
      const u = 2 * Math.PI * (slot / perPlane + (phasing * plane) / (planes * perPlane)) + motion;
      const along = radius * Math.cos(u);
      const across = radius * Math.sin(u);
      found.push({
        x: along * cosΩ - across * cosI * sinΩ,
        y: along * sinΩ + across * cosI * cosΩ,
        z: across * sinI,
      });
    }
  }
  return found;
}
