/**
 * How far a point on a tectonic plate moves between two epochs.
 *
 * Source: Z. Altamimi, L. Métivier, P. Rebischung, H. Rouby, X. Collilieux (2017), ITRF2014 plate motion model,
 * Geophysical Journal International 209, table 1: the residuals of its sites are about 0.3 mm a year. It says nothing
 * of the deforming zones at a plate's edge, nor of earthquakes.
 */
import type { Geocentric } from '../../quantities/brands.ts';
import { helmert, NO_CHANGE, type Triple } from './helmert.ts';

/** In milliarc-seconds a year. */
const ROTATIONS = {
  Antarctica: { x: -0.248, y: -0.324, z: 0.675 },
  Arabia: { x: 1.154, y: -0.136, z: 1.444 },
  Australia: { x: 1.51, y: 1.182, z: 1.215 },
  Eurasia: { x: -0.085, y: -0.531, z: 0.77 },
  India: { x: 1.154, y: -0.005, z: 1.454 },
  Nazca: { x: -0.333, y: -1.544, z: 1.623 },
  'North America': { x: 0.024, y: -0.694, z: -0.063 },
  Nubia: { x: 0.099, y: -0.614, z: 0.733 },
  Pacific: { x: -0.409, y: 1.047, z: -2.169 },
  'South America': { x: -0.27, y: -0.301, z: -0.14 },
  Somalia: { x: -0.121, y: -0.794, z: 0.884 },
} as const satisfies Readonly<Record<string, Triple>>;

export type Plate = keyof typeof ROTATIONS;

export const PLATES = Object.keys(ROTATIONS) as readonly Plate[];

/** A point of an ITRF carried along with its plate; epochs are years with their fractions. */
export const carriedByPlate = (plate: Plate, point: Geocentric, from: number, to: number): Geocentric =>
  helmert({ ...NO_CHANGE, rotation: plateRotation(plate, to - from) }, point);

/** The plate's turn over some years, in arc-seconds, position vector convention. */
export function plateRotation(plate: Plate, years: number): Triple {
  const { x, y, z } = ROTATIONS[plate];
  return { x: (x * years) / 1000, y: (y * years) / 1000, z: (z * years) / 1000 };
}
