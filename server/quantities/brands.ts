/** Number types that keep their unit: a length never compiles where an angle is wanted, nor east for north. */

declare const unit: unique symbol;
type Branded<Name extends string> = number & { readonly [unit]: Name };

/** A length or height difference, in metres. */
export type Metres = Branded<'m'>;
/** An angle, in decimal degrees. */
export type Degrees = Branded<'degree'>;
/** A geodetic latitude, in decimal degrees, north positive. */
export type Latitude = Branded<'latitude'>;
/** A geodetic longitude, in decimal degrees, east positive. */
export type Longitude = Branded<'longitude'>;
/** A height above the ellipsoid, in metres. */
export type EllipsoidalHeight = Branded<'h'>;
/** A height above the geoid or the levelling datum, in metres. */
export type OrthometricHeight = Branded<'H'>;
/** A grid coordinate towards east, in metres (also in systems whose own axis counts west or in feet). */
export type GridEast = Branded<'E'>;
/** A grid coordinate towards north, in metres. */
export type GridNorth = Branded<'N'>;

export const metres = (value: number) => value as Metres;
export const degrees = (value: number) => value as Degrees;
export const latitude = (value: number) => value as Latitude;
export const longitude = (value: number) => value as Longitude;
export const ellipsoidalHeight = (value: number) => value as EllipsoidalHeight;
export const orthometricHeight = (value: number) => value as OrthometricHeight;
export const gridEast = (value: number) => value as GridEast;
export const gridNorth = (value: number) => value as GridNorth;

/** Geodetic coordinates on some ellipsoid. */
export interface Geographic {
  readonly latitude: Latitude;
  readonly longitude: Longitude;
}
/** Geodetic coordinates with the height above the ellipsoid. */
export interface Geodetic extends Geographic {
  readonly height: EllipsoidalHeight;
}
/** Earth-centred, earth-fixed coordinates, in metres. */
export interface Geocentric {
  readonly x: Metres;
  readonly y: Metres;
  readonly z: Metres;
}
/** Projected coordinates, in metres, towards east and north whatever the system's own axes are. */
export interface Grid {
  readonly east: GridEast;
  readonly north: GridNorth;
}
/** A difference in the local horizon of a point, in metres. */
export interface Topocentric {
  readonly east: Metres;
  readonly north: Metres;
  readonly up: Metres;
}

/** A duration, in seconds. */
export type Seconds = Branded<'s'>;
/** A frequency, bandwidth or channel spacing, in hertz. */
export type Hertz = Branded<'Hz'>;
/** An amount of data, in bits. */
export type Bits = Branded<'bit'>;
/** An amount of data, in bytes of eight bits. */
export type Bytes = Branded<'byte'>;
/** A data rate, in bits per second. */
export type BitsPerSecond = Branded<'bit/s'>;
/** A ratio of powers, in decibels. */
export type Decibels = Branded<'dB'>;
/** A power relative to one milliwatt, in decibels. */
export type DecibelMilliwatts = Branded<'dBm'>;

export const seconds = (value: number) => value as Seconds;
export const hertz = (value: number) => value as Hertz;
export const bits = (value: number) => value as Bits;
export const bytes = (value: number) => value as Bytes;
export const bitsPerSecond = (value: number) => value as BitsPerSecond;
export const decibels = (value: number) => value as Decibels;
export const decibelMilliwatts = (value: number) => value as DecibelMilliwatts;
