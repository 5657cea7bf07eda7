/** The broadcast antenna position that follows from told numbers, less the right one: the error that every rover takes over. */
import { geocentricOf } from '../geodesy/geocentric.ts';
import type { Datum } from '../geodesy/system.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
} from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { Situation } from './situation.ts';
import type { Told } from './slip.ts';

/** Geocentric; null where what should have been told is not known. */
export function broadcastShift(told: Told, situation: Situation): Geocentric | null {
  const { right } = situation;
  const datum = keyedDatum(situation);
  if (!datum || !right.place) return null;
  // Without a height horizontal slips can still be judged, at the level of the ellipsoid.
  const level = right.height ?? 0;
  const above = right.antennaHeight ?? 0;
  if (told.height !== undefined && right.height === null) return null;
  if (told.antennaHeight !== undefined && right.antennaHeight === null) return null;
  const at = (place: { latitude: number; longitude: number }, height: number) =>
    geocentricOf(datum.ellipsoid, {
      latitude: asLatitude(place.latitude),
      longitude: asLongitude(place.longitude),
      height: ellipsoidalHeight(height),
    });
  const wrong = at(told.place ?? right.place, (told.height ?? level) + (told.antennaHeight ?? above));
  const good = at(right.place, level + above);
  const shift = { x: wrong.x - good.x, y: wrong.y - good.y, z: wrong.z - good.z };
  return { x: metres(shift.x), y: metres(shift.y), z: metres(shift.z) };
}

/** The datum that the receiver is told coordinates in. */
export function keyedDatum({ frame, setup }: Pick<Situation, 'frame' | 'setup'>): Datum | null {
  if (!isHole(frame.keyed)) return frame.keyed.datum;
  const located = setup.mark?.located;
  return !located || isHole(located) ? null : located.system.datum;
}
