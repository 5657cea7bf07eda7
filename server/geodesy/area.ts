/** Whether a position lies in a system's area of use, and how far away from it. */
import { latitude, longitude, metres, type Geographic, type Metres } from '../quantities/brands.ts';
import { halfTurn } from './angles.ts';
import { WGS84 } from './ellipsoid.ts';
import { geodesicBetween } from './geodesic.ts';
import type { AreaOfUse } from './system.ts';

/** 0 within the area or on its edge; else the distance to the nearest point of its bounding box, near enough for a warning. */
export function distanceOutside(area: AreaOfUse, position: Geographic): Metres {
  const width = area.east < area.west ? area.east + 360 - area.west : area.east - area.west;
  const middle = area.west + width / 2;
  const fromMiddle = halfTurn(position.longitude - middle);
  const east = Math.abs(fromMiddle) <= width / 2 ? fromMiddle : (Math.sign(fromMiddle) * width) / 2;
  const north = Math.min(Math.max(position.latitude, area.south), area.north);
  if (east === fromMiddle && north === position.latitude) return metres(0);
  const nearest = { latitude: latitude(north), longitude: longitude(halfTurn(middle + east)) };
  return geodesicBetween(WGS84, position, nearest).distance;
}
