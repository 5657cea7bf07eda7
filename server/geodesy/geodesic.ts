/**
 * The shortest line on an ellipsoid: its length and azimuths, and the point at its end.
 *
 * Source: C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, as implemented by its author in
 * geographiclib-geodesic.
 */
import geographiclib from 'geographiclib-geodesic';
import {
  degrees,
  latitude,
  longitude,
  metres,
  type Degrees,
  type Geographic,
  type Metres,
} from '../quantities/brands.ts';
import { fullTurn } from './angles.ts';
import type { Ellipsoid } from './ellipsoid.ts';

export interface GeodesicLine {
  /** Along the ellipsoid. */
  readonly distance: Metres;
  /** At the first point towards the second, clockwise from true north, 0° to 360°. */
  readonly azimuth: Degrees;
  /** At the second point towards the first. */
  readonly backAzimuth: Degrees;
}

export function geodesicBetween(ellipsoid: Ellipsoid, from: Geographic, to: Geographic): GeodesicLine {
  const { s12, azi1, azi2 } = solver(ellipsoid).Inverse(
    from.latitude,
    from.longitude,
    to.latitude,
    to.longitude,
  );
  return {
    distance: metres(s12 ?? NaN),
    azimuth: degrees(fullTurn(azi1 ?? NaN)),
    backAzimuth: degrees(fullTurn((azi2 ?? NaN) + 180)),
  };
}

/** The point at a distance along the ellipsoid in a direction. */
export function geodesicFrom(
  ellipsoid: Ellipsoid,
  from: Geographic,
  azimuth: Degrees,
  distance: Metres,
): Geographic {
  const end = solver(ellipsoid).Direct(from.latitude, from.longitude, azimuth, distance);
  return { latitude: latitude(end.lat2 ?? NaN), longitude: longitude(end.lon2 ?? NaN) };
}

type Solver = InstanceType<typeof geographiclib.Geodesic.Geodesic>;
const solvers = new WeakMap<Ellipsoid, Solver>();

function solver(ellipsoid: Ellipsoid): Solver {
  const known = solvers.get(ellipsoid);
  if (known) return known;
  const made = new geographiclib.Geodesic.Geodesic(ellipsoid.semiMajor, ellipsoid.flattening);
  solvers.set(ellipsoid, made);
  return made;
}
