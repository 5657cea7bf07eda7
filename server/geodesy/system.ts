/** What a coordinate reference system is to this program: a datum, an area, axes, a unit and a projection. */
import type { Ellipsoid } from './ellipsoid.ts';
import type { GroundGrid } from './ground-grid.ts';

/** How the coordinates of a datum were brought to the ground, which decides what a receiver may be told. */
export type Realisation =
  /** By satellite positioning: a receiver's own coordinates are, to some decimetres, in this datum. */
  | 'gnss'
  /** By triangulation on an older ellipsoid or origin: a receiver's coordinates differ by up to hundreds of metres. */
  | 'terrestrial'
  /** Nothing in the definition tells. */
  | 'unknown';

export interface Datum {
  /** As the geographic system is named, for example `ETRS89`. */
  readonly name: string;
  /** The geographic system, for example `EPSG:4258`; undefined where the definition gives none. */
  readonly geographic: string | undefined;
  readonly ellipsoid: Ellipsoid;
  /** Greenwich longitude of the prime meridian, in degrees; longitudes here are always counted from Greenwich. */
  readonly primeMeridian: number;
  readonly realisation: Realisation;
  /** What a surveyor should know of this datum before trusting it, as a sentence. */
  readonly caution?: string;
}

/** The area that a system is meant for, in degrees; `east` is less than `west` where it crosses 180°. */
export interface AreaOfUse {
  readonly name: string;
  readonly south: number;
  readonly west: number;
  readonly north: number;
  readonly east: number;
}

export interface LinearUnit {
  readonly name: string;
  /** One of it, in metres. */
  readonly metres: number;
}

/** A cardinal direction that an axis counts towards. */
export type AxisDirection = 'east' | 'north' | 'west' | 'south';

interface SystemBase {
  /** For example `EPSG:3763`; undefined for a system given by its definition. */
  readonly code: string | undefined;
  readonly name: string;
  readonly datum: Datum;
  readonly area: AreaOfUse | undefined;
}

export interface ProjectedSystem extends SystemBase {
  readonly kind: 'projected';
  /** Of the system's own axes; our grid coordinates are in metres all the same. */
  readonly unit: LinearUnit;
  /** The system's own axes in their own order; our grid coordinates are east and north all the same. */
  readonly axes: { readonly first: AxisDirection; readonly second: AxisDirection };
  /** PROJ parameters of the projection alone (no ellipsoid, datum, unit or axes), or undefined where there is no way. */
  readonly projection: string | undefined;
  /** Why there is no way, as a sentence. */
  readonly uncomputed?: string;
  /** What makes it a site's own grid with distances as they are on the ground, out of the projected one. */
  readonly ground?: GroundGrid;
}

export interface GeographicSystem extends SystemBase {
  readonly kind: 'geographic' | 'geographic-3d';
}

export interface GeocentricSystem extends SystemBase {
  readonly kind: 'geocentric';
}

export type CoordinateSystem = ProjectedSystem | GeographicSystem | GeocentricSystem;

/** A height system, by name: what its heights are above, and their unit. */
export interface VerticalSystem {
  readonly kind: 'vertical';
  readonly code: string;
  readonly name: string;
  readonly datumName: string;
  readonly unit: LinearUnit;
  readonly direction: 'up' | 'down';
  readonly area: AreaOfUse | undefined;
}

/** A horizontal system and a height system under one code. */
export interface CompoundSystem {
  readonly kind: 'compound';
  readonly code: string;
  readonly name: string;
  readonly horizontal: CoordinateSystem;
  readonly vertical: VerticalSystem | undefined;
  readonly area: AreaOfUse | undefined;
}

export type AnySystem = CoordinateSystem | VerticalSystem | CompoundSystem;

export const METRE: LinearUnit = { name: 'metre', metres: 1 };
