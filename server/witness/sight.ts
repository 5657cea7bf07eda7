/**
 * The line from a receiver to a satellite at the time its signal left.
 *
 * Source: IS-GPS-200, 20.3.3.4.3.2 and 20.3.3.3.3.1: the time of transmission from the pseudorange, and the earth's
 * rotation while the signal travels. The receiver's clock cancels in it, so that its jumps of a millisecond do not matter.
 */
import type { Ephemeris } from '../evidence/rinex/ephemeris.ts';
import { clockPolynomial, orbit, satelliteState, SPEED_OF_LIGHT, ΩE } from './orbit.ts';

/** A receiver's place with its local axes: rows east, north, up. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** In radians and metres. */
  readonly latitude: number;
  readonly longitude: number;
  readonly height: number;
  readonly axes: readonly number[];
}

/** Overwritten by each call. */
export interface Sight {
  /** Distance with the earth's rotation, in metres. */
  range: number;
  /** Unit vector to the satellite, east, north and up; and earth-centred. */
  east: number;
  north: number;
  up: number;
  ex: number;
  ey: number;
  ez: number;
  elevation: number;
  azimuth: number;
  /** Of the satellite, in seconds. */
  clock: number;
}
export const sightOf = (): Sight => ({
  range: 0,
  east: 0,
  north: 0,
  up: 0,
  ex: 0,
  ey: 0,
  ez: 0,
  elevation: 0,
  azimuth: 0,
  clock: 0,
});

const state = satelliteState();

/** `tag` is the receiver's own time of reception, `pseudorange` in metres. */
export function see(record: Ephemeris, tag: number, pseudorange: number, place: Place, into: Sight): void {
  const left = tag - pseudorange / SPEED_OF_LIGHT;
  orbit(record, left - clockPolynomial(record, left), state);
  into.clock = state.clock;
  const away = Math.hypot(state.x - place.x, state.y - place.y, state.z - place.z);
  const angle = (ΩE * away) / SPEED_OF_LIGHT;
  const sin = Math.sin(angle);
  const cos = Math.cos(angle);
  const dx = state.x * cos + state.y * sin - place.x;
  const dy = state.y * cos - state.x * sin - place.y;
  const dz = state.z - place.z;
  const range = Math.sqrt(dx * dx + dy * dy + dz * dz);
  into.range = range;
  into.ex = dx / range;
  into.ey = dy / range;
  into.ez = dz / range;
  const a = place.axes;
  into.east = (a[0] ?? 0) * into.ex + (a[1] ?? 0) * into.ey + (a[2] ?? 0) * into.ez;
  into.north = (a[3] ?? 0) * into.ex + (a[4] ?? 0) * into.ey + (a[5] ?? 0) * into.ez;
  into.up = (a[6] ?? 0) * into.ex + (a[7] ?? 0) * into.ey + (a[8] ?? 0) * into.ez;
  into.elevation = Math.asin(Math.max(-1, Math.min(1, into.up)));
  into.azimuth = Math.atan2(into.east, into.north);
}
