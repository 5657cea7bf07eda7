/** What removing a base's error does to coordinates: the error is taken off in geocentric space, wherever the point lies. */
import { geocentricOf, geodeticOf } from '../../geodesy/geocentric.ts';
import { forward, inverse } from '../../geodesy/projection.ts';
import { halfTurn } from '../../geodesy/angles.ts';
import { geocentricVectorOf } from '../../geodesy/topocentric.ts';
import type { CoordinateSystem } from '../../geodesy/system.ts';
import {
  ellipsoidalHeight,
  gridEast,
  gridNorth,
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
  type Geographic,
  type Topocentric,
} from '../../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import type { GeoidModel } from '../heights/geoid.ts';
import type { HeightSurface } from '../points/points.ts';
import type { PointsForm } from '../points/plan.ts';

/** What the coordinates of a set are, as far as a shift depends on it. */
export interface ShiftSpace {
  readonly form: PointsForm;
  readonly system: CoordinateSystem;
  /** Null where the points have no heights. */
  readonly height: HeightSurface | null;
  /** The geoid model of the controller, where it is known. */
  readonly geoid: GeoidModel | null;
  /** Stand in where a point has no height, or no model gives its separation; both from the base. */
  readonly base: { readonly height: number; readonly separation: number };
  /** A scale that the controller laid on the grid about the base. */
  readonly scale: { readonly factor: number; readonly east: number; readonly north: number } | null;
}

/** What is to be taken off: an error of the base, the same vector everywhere, and one of the rover, the same in every horizon. */
export interface Removal {
  readonly base: Geocentric;
  readonly rover: Topocentric;
}

/**
 * Added to coordinates: metres east and north, degrees of latitude and longitude, or metres of x and y; and metres of
 * height, or of z.
 */
export interface Shift {
  readonly first: number;
  readonly second: number;
  readonly third: number;
}
export type ShiftAt = (first: number, second: number, third: number | undefined) => Shift | Refusal;

/** The shift at a point, by the whole way there and back. */
export function exactShift(space: ShiftSpace, removal: Removal): ShiftAt {
  if (space.form === 'geocentric') return geocentricShift(space, removal);
  return (first, second, third) => {
    const from = geographicOf(space, first, second);
    if (isRefusal(from)) return from;
    const N = separationAt(space, from);
    const h = third === undefined || !space.height ? space.base.height : third + space.height.offset + N;
    const there = geocentricOf(space.system.datum.ellipsoid, { ...from, height: ellipsoidalHeight(h) });
    const to = geodeticOf(space.system.datum.ellipsoid, removed(there, from, removal));
    const shown = shownAs(space, to);
    if (isRefusal(shown)) return shown;
    const up = to.height - h - (separationAt(space, to) - N);
    const turned = space.form === 'geographic' ? halfTurn(shown.second - second) : shown.second - second;
    return { first: shown.first - first, second: turned, third: up };
  };
}

function geocentricShift({ system }: ShiftSpace, removal: Removal): ShiftAt {
  return (x, y, z) => {
    if (z === undefined) return refuse('A geocentric point needs its z.');
    const there = { x: metres(x), y: metres(y), z: metres(z) };
    const to = removed(there, geodeticOf(system.datum.ellipsoid, there), removal);
    return { first: to.x - x, second: to.y - y, third: to.z - z };
  };
}

function removed(there: Geocentric, at: Geographic, { base, rover }: Removal): Geocentric {
  const own = geocentricVectorOf(at, rover);
  return {
    x: metres(there.x - base.x - own.x),
    y: metres(there.y - base.y - own.y),
    z: metres(there.z - base.z - own.z),
  };
}

function geographicOf(
  { form, system, scale }: ShiftSpace,
  first: number,
  second: number,
): Geographic | Refusal {
  if (form === 'geographic') return { latitude: asLatitude(first), longitude: asLongitude(second) };
  if (system.kind !== 'projected') return refuse(`${system.name} is no grid.`);
  const k = scale?.factor ?? 1;
  const [east, north] = scale
    ? [scale.east + (first - scale.east) / k, scale.north + (second - scale.north) / k]
    : [first, second];
  return inverse(system, { east: gridEast(east), north: gridNorth(north) });
}

function shownAs(
  { form, system, scale }: ShiftSpace,
  to: Geographic,
): { readonly first: number; readonly second: number } | Refusal {
  if (form === 'geographic') return { first: to.latitude, second: to.longitude };
  if (system.kind !== 'projected') return refuse(`${system.name} is no grid.`);
  const grid = forward(system, to);
  if (isRefusal(grid)) return grid;
  if (!scale) return { first: grid.east, second: grid.north };
  return {
    first: scale.east + (grid.east - scale.east) * scale.factor,
    second: scale.north + (grid.north - scale.north) * scale.factor,
  };
}

/** Of an orthometric height; a model that does not reach here leaves the base's separation, which drops out of the difference. */
function separationAt({ height, geoid, base }: ShiftSpace, at: Geographic): number {
  if (height?.surface !== 'orthometric') return 0;
  const found = geoid?.undulation(at.latitude, at.longitude);
  return found === undefined || isRefusal(found) ? base.separation : found;
}
