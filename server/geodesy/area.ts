/** Whether a position lies in a system's area of use, and how far away from it. */
import { latitude, longitude, metres, type Geographic, type Metres } from '../quantities/brands.ts';
import { halfTurn } from './angles.ts';
import { WGS84 } from './ellipsoid.ts';
import { geodesicBetween } from './geodesic.ts';
import type { AreaOfUse } from './system.ts';

/** Whether a position lies in the area's bounding box or on its edge. */
export function isWithin(area: AreaOfUse, position: Geographic): boolean {
  const { beside, below, above } = degreesOutside(area, position);
  return Math.max(beside, below, above) <= ROUNDING;
}

/** In degrees: a tenth of a millimetre. */
const ROUNDING = 1e-9;

/** How many degrees a position lies beyond each side of the box; negative within it. */
export function degreesOutside(area: AreaOfUse, { latitude: φ, longitude: λ }: Geographic) {
  const { middle, halfWidth } = across(area);
  return {
    beside: Math.abs(halfTurn(λ - middle)) - halfWidth,
    below: area.south - φ,
    above: φ - area.north,
  };
}

/** 0 within the area or on its edge; else the distance to the nearest point of its bounding box, near enough for a warning. */
export function distanceOutside(area: AreaOfUse, position: Geographic): Metres {
  if (isWithin(area, position)) return metres(0);
  const { middle, halfWidth } = across(area);
  const fromMiddle = halfTurn(position.longitude - middle);
  const nearest = {
    latitude: latitude(Math.min(Math.max(position.latitude, area.south), area.north)),
    longitude: longitude(halfTurn(middle + Math.min(Math.max(fromMiddle, -halfWidth), halfWidth))),
  };
  return geodesicBetween(WGS84, position, nearest).distance;
}

/** A box whose east is less than its west crosses 180°. */
function across({ west, east }: AreaOfUse) {
  const halfWidth = (east < west ? east + 360 - west : east - west) / 2;
  return { middle: west + halfWidth, halfWidth };
}
