/** A place that follows from grid coordinates as they were told, in whichever grid the receiver took them to be. */
import { inverse } from '../geodesy/projection.ts';
import type { ProjectedSystem } from '../geodesy/system.ts';
import { gridEast, gridNorth } from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import type { Place, Way } from './slip.ts';

/** Nothing where no projection takes such coordinates: the receiver would have refused them, too. */
export function toldGrid(system: ProjectedSystem, east: number, north: number, says: string): Way[] {
  const place = placeOf(system, east, north);
  return place ? [{ says, effect: { on: 'told', told: { place } } }] : [];
}

export function placeOf(system: ProjectedSystem, east: number, north: number): Place | null {
  const found = inverse(system, { east: gridEast(east), north: gridNorth(north) });
  return isRefusal(found) ? null : { latitude: found.latitude, longitude: found.longitude };
}
