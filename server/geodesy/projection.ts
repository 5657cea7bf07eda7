/**
 * Grid to geographic coordinates and back in a system's own datum: the only file that knows proj4, and guards it.
 *
 * proj4 gives plausible numbers in silence for much that is wrong, so nothing passes here without a definition that is
 * whole, coordinates in range, a finite answer, and the way back arriving where it began.
 */
import proj4 from 'proj4';
import {
  gridEast,
  gridNorth,
  latitude,
  longitude,
  type Geographic,
  type Grid,
} from '../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../quantities/refusal.ts';
import { halfTurn, toRadians } from './angles.ts';
import { degreesOutside } from './area.ts';
import { gridFromGround, groundFromGrid, type GroundGrid } from './ground-grid.ts';
import { cassiniSoldner } from './projections/cassini-soldner.ts';
import { colombiaUrban } from './projections/colombia-urban.ts';
import { parametersOf, type OwnProjection } from './projections/own.ts';
import type { AreaOfUse, ProjectedSystem } from './system.ts';

/** Geographic coordinates (longitude from Greenwich) in the system's datum, to its grid in metres east and north. */
export function forward(system: ProjectedSystem, position: Geographic): Grid | Refusal {
  const projection = projectionOf(system);
  if (isRefusal(projection)) return projection;
  const wrong = outsideEarth(position);
  if (wrong) return wrong;
  if (isFarFrom(system.area, position)) return outsideProjection(system);
  const grid = projection.forward(position);
  if (grid === undefined) return outsideProjection(system);
  const back = refined(projection, grid);
  if (back === undefined || metresApart(system, position, back) > CLOSURE) return outsideProjection(system);
  return grid;
}

/** Grid coordinates in metres east and north to geographic ones in the system's own datum. */
export function inverse(system: ProjectedSystem, grid: Grid): Geographic | Refusal {
  const projection = projectionOf(system);
  if (isRefusal(projection)) return projection;
  if (!(Math.abs(grid.east) < LARGEST && Math.abs(grid.north) < LARGEST))
    return refuse('A grid coordinate is not a number of metres that fits on the earth.');
  const position = refined(projection, grid);
  return position === undefined || isFarFrom(system.area, position) ? outsideProjection(system) : position;
}

/** The plain projection of a system without any guard, for differences around a point that has passed the guard. */
export interface PlainProjection {
  readonly forward: (position: Geographic) => Grid | undefined;
  readonly inverse: (grid: Grid) => Geographic | undefined;
}

const made = new WeakMap<ProjectedSystem, PlainProjection | Refusal>();

export function projectionOf(system: ProjectedSystem): PlainProjection | Refusal {
  const known = made.get(system);
  if (known) return known;
  const projection = makeProjection(system);
  const whole = system.ground && !isRefusal(projection) ? onTheGround(system.ground, projection) : projection;
  made.set(system, whole);
  return whole;
}

/** Scaled and shifted behind the projection. */
const onTheGround = (ground: GroundGrid, projection: PlainProjection): PlainProjection => ({
  forward(position) {
    const grid = projection.forward(position);
    return grid && groundFromGrid(ground, grid);
  },
  inverse: (grid) => projection.inverse(gridFromGround(ground, grid)),
});

/** How far the way back may end from the start, in metres. */
const CLOSURE = 1e-4;
/** No grid coordinate is farther from its origin, in metres. */
const LARGEST = 1e8;

function makeProjection(system: ProjectedSystem): PlainProjection | Refusal {
  const { projection, datum } = system;
  const name = system.code ?? system.name;
  const notComputed = `${name} (${system.name}) uses a projection that is not computed here.`;
  if (projection === undefined) return refuse(system.uncomputed ?? notComputed);
  const { semiMajor: a, flattening: f } = datum.ellipsoid;
  if (!(a > 6e6 && a < 7e6 && f >= 0 && f < 0.01))
    return refuse(`${name} has no plausible ellipsoid, without which its coordinates mean nothing.`);
  const ellipsoid = f === 0 ? `+a=${a} +b=${a}` : `+a=${a} +rf=${1 / f}`;
  const own = OWN[/^proj=(\w+)/.exec(projection)?.[1] ?? ''];
  if (own) return ownProjection(own, projection, system);
  const parameters = projection.split(' ').map((word) => `+${word}`);
  const meridian = datum.primeMeridian === 0 ? '' : ` +pm=${datum.primeMeridian}`;
  try {
    const converter = proj4(
      `+proj=longlat ${ellipsoid} +no_defs`,
      `${parameters.join(' ')} ${ellipsoid}${meridian} +units=m +no_defs`,
    );
    return plainly(converter);
  } catch {
    return refuse(notComputed);
  }
}

/** Methods that proj4 lacks, or computes to less than 0.1 mm within an area of use. */
const OWN: Readonly<Record<string, OwnProjection>> = { cass: cassiniSoldner, col_urban: colombiaUrban };

function ownProjection(own: OwnProjection, projection: string, { datum }: ProjectedSystem): PlainProjection {
  const parameters = parametersOf(projection);
  const centralMeridian = datum.primeMeridian + (parameters.numbers['lon_0'] ?? 0);
  const { forward: plain, near } = own(parameters, datum.ellipsoid, centralMeridian);
  const finite = <Answer extends object>(answer: Answer) =>
    Object.values(answer).every(Number.isFinite) ? answer : undefined;
  return { forward: (position) => finite(plain(position)), inverse: (grid) => finite(near(grid)) };
}

function plainly(converter: proj4.Converter): PlainProjection {
  const answer = (compute: () => readonly number[]) => {
    try {
      const [first = NaN, second = NaN] = compute();
      return Number.isFinite(first) && Number.isFinite(second) ? { first, second } : undefined;
    } catch {
      return undefined;
    }
  };
  return {
    forward(position) {
      const found = answer(() => converter.forward([position.longitude, position.latitude]));
      return found && { east: gridEast(found.first), north: gridNorth(found.second) };
    },
    inverse(grid) {
      const found = answer(() => converter.inverse([grid.east, grid.north]));
      return found && { longitude: longitude(halfTurn(found.first)), latitude: latitude(found.second) };
    },
  };
}

/**
 * The inverse, brought to full precision by Newton's method on the forward projection: some of proj4's inverses stop
 * tenths of a millimetre, or even millimetres, away.
 */
function refined(projection: PlainProjection, grid: Grid): Geographic | undefined {
  let position = projection.inverse(grid);
  for (let round = 0; round < 10 && position; round++) {
    const reached = projection.forward(position);
    if (reached === undefined) return undefined;
    const east = grid.east - reached.east;
    const north = grid.north - reached.north;
    if (Math.hypot(east, north) < 1e-7 + 1e-15 * Math.hypot(grid.east, grid.north)) return position;
    const next = stepTowards(projection, position, reached, east, north);
    if (next === undefined) break;
    position = next;
  }
  const reached = position && projection.forward(position);
  if (position === undefined || reached === undefined) return undefined;
  const miss = Math.hypot(grid.east - reached.east, grid.north - reached.north);
  return miss < CLOSURE && !outsideEarth(position) ? position : undefined;
}

function stepTowards(
  projection: PlainProjection,
  at: Geographic,
  reached: Grid,
  east: number,
  north: number,
): Geographic | undefined {
  const δ = at.latitude > 0 ? -1e-5 : 1e-5;
  const byLatitude = projection.forward({ ...at, latitude: latitude(at.latitude + δ) });
  const byLongitude = projection.forward({ ...at, longitude: longitude(at.longitude + δ) });
  if (byLatitude === undefined || byLongitude === undefined) return undefined;
  const Eφ = (byLatitude.east - reached.east) / δ;
  const Nφ = (byLatitude.north - reached.north) / δ;
  const Eλ = (byLongitude.east - reached.east) / δ;
  const Nλ = (byLongitude.north - reached.north) / δ;
  const determinant = Eφ * Nλ - Eλ * Nφ;
  const Δφ = (east * Nλ - north * Eλ) / determinant;
  const Δλ = (north * Eφ - east * Nφ) / determinant;
  if (!Number.isFinite(Δφ) || !Number.isFinite(Δλ)) return undefined;
  const φ = at.latitude + Δφ;
  if (Math.abs(φ) > 90) return undefined;
  return { latitude: latitude(φ), longitude: longitude(halfTurn(at.longitude + Δλ)) };
}

function outsideEarth({ latitude: φ, longitude: λ }: Geographic): Refusal | undefined {
  if (!(Math.abs(φ) <= 90)) return refuse('The latitude is not between 90° south and 90° north.');
  if (!(Math.abs(λ) <= 360)) return refuse('The longitude is not within a full turn of Greenwich.');
  return undefined;
}

/** Some projections close on themselves and would take the other side of the earth; no grid is meant for that. */
function isFarFrom(area: AreaOfUse | undefined, position: Geographic): boolean {
  if (area === undefined) return false;
  const { beside, below, above } = degreesOutside(area, position);
  return Math.max(beside, below, above) > FARTHEST;
}

/** In degrees beyond the bounding box of the area of use. */
const FARTHEST = 30;

const outsideProjection = (system: ProjectedSystem) =>
  refuse(
    `The position is too far from the area of ${system.code ?? system.name} (${system.name}) for its projection.`,
  );

function metresApart(system: ProjectedSystem, one: Geographic, other: Geographic): number {
  const a = system.datum.ellipsoid.semiMajor;
  const north = toRadians(one.latitude - other.latitude) * a;
  const east = toRadians(halfTurn(one.longitude - other.longitude)) * a * Math.cos(toRadians(one.latitude));
  return Math.hypot(north, east);
}
