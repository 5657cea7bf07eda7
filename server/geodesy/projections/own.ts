/** What a projection of our own is: a forward formula, and a first guess from which the inverse is refined. */
import type { Geographic, Grid } from '../../quantities/brands.ts';
import type { Ellipsoid } from '../ellipsoid.ts';

/** PROJ parameters, as `lat_0=49 hyperbolic`, apart. */
export interface ProjectionParameters {
  readonly numbers: Readonly<Record<string, number>>;
  readonly flags: ReadonlySet<string>;
}

/** Longitudes, the central one among them, count from Greenwich. */
export type OwnProjection = (
  parameters: ProjectionParameters,
  ellipsoid: Ellipsoid,
  centralMeridian: number,
) => {
  readonly forward: (position: Geographic) => Grid;
  readonly near: (grid: Grid) => Geographic;
};

export function parametersOf(projection: string): ProjectionParameters {
  const words = projection.split(' ').map((word) => word.split('=', 2));
  const valued = words.filter((word) => word.length === 2 && word[0] !== 'proj');
  return {
    numbers: Object.fromEntries(valued.map(([name = '', value = '']) => [name, Number(value)])),
    flags: new Set(words.filter((word) => word.length === 1).map(([name = '']) => name)),
  };
}
