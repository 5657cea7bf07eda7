/** Reference ellipsoids: their defining constants and the eccentricities that the formulas want. */
import { metres, type Metres } from '../quantities/brands.ts';

/** An oblate ellipsoid of revolution, or a sphere where the flattening is 0. */
export interface Ellipsoid {
  readonly name: string;
  /** The semi-major axis a. */
  readonly semiMajor: Metres;
  /** The flattening f = (a − b)/a. */
  readonly flattening: number;
}

/** Semi-major axis in metres and inverse flattening, as definitions print them; an inverse flattening of 0 is a sphere. */
export const ellipsoidOf = (name: string, semiMajor: number, inverseFlattening: number): Ellipsoid => ({
  name,
  semiMajor: metres(semiMajor),
  flattening: inverseFlattening === 0 ? 0 : 1 / inverseFlattening,
});

/** Moritz (2000), Geodetic Reference System 1980, Journal of Geodesy 74: derived inverse flattening. */
export const GRS80 = ellipsoidOf('GRS 1980', 6378137, 298.257222101);
/** NGA.STND.0036 (2014), World Geodetic System 1984. */
export const WGS84 = ellipsoidOf('WGS 84', 6378137, 298.257223563);
/** EPSG ellipsoid 7001. */
export const AIRY_1830 = ellipsoidOf('Airy 1830', 6377563.396, 299.3249646);
/** EPSG ellipsoid 7004. */
export const BESSEL_1841 = ellipsoidOf('Bessel 1841', 6377397.155, 299.1528128);
/** EPSG ellipsoid 7008, defined by its two axes: a 6378206.4 m, b 6356583.8 m. */
export const CLARKE_1866 = ellipsoidOf('Clarke 1866', 6378206.4, 6378206.4 / (6378206.4 - 6356583.8));
/** EPSG ellipsoid 7022. */
export const INTERNATIONAL_1924 = ellipsoidOf('International 1924', 6378388, 297);

/** The first eccentricity squared, e² = f(2 − f). */
export const eccentricitySquared = ({ flattening: f }: Ellipsoid) => f * (2 - f);

/** The semi-minor axis, b = a(1 − f). */
export const semiMinor = ({ semiMajor: a, flattening: f }: Ellipsoid): Metres => metres(a * (1 - f));
