/** How far points lie from their base, near enough for an uncertainty. */
import { halfTurn, toRadians } from '../../geodesy/angles.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import type { CoordinateSystem } from '../../geodesy/system.ts';
import { latitude as asLatitude, metres, type Geocentric } from '../../quantities/brands.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { PointsForm } from '../points/plan.ts';
import type { SetupValues } from '../setups/setup.ts';

export type DistanceAt = (first: number, second: number, third: number) => number;

/** In metres along the ellipsoid, for geocentric points along the chord; not a number where the base's place is not known. */
export function distanceFrom(
  setup: SetupValues,
  { form, system }: { readonly form: PointsForm; readonly system: CoordinateSystem },
): DistanceAt {
  const { mark, arp } = setup;
  const value = (found: Maybe<Value> | undefined) => (found && !isHole(found) ? found.value : NaN);
  if (form === 'grid') {
    const [east, north] = [value(mark?.east), value(mark?.north)];
    return (first, second) => Math.sqrt((first - east) ** 2 + (second - north) ** 2);
  }
  if (form === 'geographic') {
    const [φ, λ] = [value(mark?.latitude), value(mark?.longitude)];
    const { ellipsoid } = system.datum;
    const M = toRadians(1) * meridianRadius(ellipsoid, asLatitude(φ));
    const ν = toRadians(1) * primeVerticalRadius(ellipsoid, asLatitude(φ)) * Math.cos(toRadians(φ));
    return (first, second) => Math.hypot((first - φ) * M, halfTurn(second - λ) * ν);
  }
  const there: Geocentric | null = isHole(arp)
    ? null
    : { x: metres(arp.x.value), y: metres(arp.y.value), z: metres(arp.z.value) };
  return (x, y, z) => (there ? Math.hypot(x - there.x, y - there.y, z - there.z) : NaN);
}
