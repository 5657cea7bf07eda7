/**
 * A site's own ground grid: the projected grid scaled about a point so that its distances are those on the ground, and
 * shifted so that its coordinates cannot be taken for the projected ones.
 *
 * Common practice, with the combined factor as scale.ts gives it: ground = point + (grid − point)/factor + shift.
 */
import { gridEast, gridNorth, metres, type Grid, type Metres } from '../quantities/brands.ts';
import { METRE, type ProjectedSystem } from './system.ts';

export interface GroundGrid {
  /** The point that keeps its place but for the shift, in the projected grid. */
  readonly about: Grid;
  /** Grid distance over ground distance, as stated for the site. */
  readonly combinedFactor: number;
  readonly shift: { readonly east: Metres; readonly north: Metres };
}

/** The site's grid as a system of its own, in metres east and north, in the datum of the projected one. */
export const groundSystem = (
  name: string,
  projected: ProjectedSystem,
  ground: GroundGrid,
): ProjectedSystem => ({
  ...projected,
  code: undefined,
  name,
  unit: METRE,
  axes: { first: 'east', second: 'north' },
  ground,
});

export const groundFromGrid = ({ about, combinedFactor, shift }: GroundGrid, grid: Grid): Grid => ({
  east: gridEast(about.east + (grid.east - about.east) / combinedFactor + shift.east),
  north: gridNorth(about.north + (grid.north - about.north) / combinedFactor + shift.north),
});

export const gridFromGround = ({ about, combinedFactor, shift }: GroundGrid, ground: Grid): Grid => ({
  east: gridEast(about.east + (ground.east - shift.east - about.east) * combinedFactor),
  north: gridNorth(about.north + (ground.north - shift.north - about.north) * combinedFactor),
});

/** By how much the one factor is wrong, over a distance, at a place where the true combined factor is another. */
export const groundDistanceError = (
  { combinedFactor }: GroundGrid,
  trueFactor: number,
  distance: Metres,
): Metres => metres(distance * (trueFactor / combinedFactor - 1));
