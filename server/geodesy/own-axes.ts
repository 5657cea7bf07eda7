/** Grid coordinates in a system's own axes and unit, as its documents print them, and back to metres east and north. */
import { gridEast, gridNorth, type Grid } from '../quantities/brands.ts';
import type { AxisDirection, ProjectedSystem } from './system.ts';

/** In the system's own unit, in its own order. */
export interface OwnCoordinates {
  readonly first: number;
  readonly second: number;
}

export const inOwnAxes = ({ axes, unit }: ProjectedSystem, grid: Grid): OwnCoordinates => ({
  first: along(axes.first, grid) / unit.metres,
  second: along(axes.second, grid) / unit.metres,
});

export function fromOwnAxes({ axes, unit }: ProjectedSystem, { first, second }: OwnCoordinates): Grid {
  const east = eastward(axes.first, first) + eastward(axes.second, second);
  const north = northward(axes.first, first) + northward(axes.second, second);
  return { east: gridEast(east * unit.metres), north: gridNorth(north * unit.metres) };
}

function along(direction: AxisDirection, { east, north }: Grid): number {
  if (direction === 'east') return east;
  if (direction === 'west') return -east;
  return direction === 'north' ? north : -north;
}

const eastward = (direction: AxisDirection, value: number) =>
  direction === 'east' ? value : direction === 'west' ? -value : 0;
const northward = (direction: AxisDirection, value: number) =>
  direction === 'north' ? value : direction === 'south' ? -value : 0;
