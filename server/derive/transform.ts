/** A place in another datum than its own, by a published transformation with its stated accuracy. */
import { geocentricOf, geodeticOf } from '../geodesy/geocentric.ts';
import { routeBetween, type DatumRoute } from '../geodesy/datums/route.ts';
import { meridianRadius, primeVerticalRadius } from '../geodesy/radii.ts';
import { toRadians } from '../geodesy/angles.ts';
import type { CoordinateSystem } from '../geodesy/system.ts';
import { ellipsoidalHeight, latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { computeAll } from '../quantities/computed.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Named } from '../session/coordinates.ts';
import { sameDatum } from './frame.ts';
import type { Located } from './locate.ts';

export interface TransformWishes {
  readonly about: string;
  /** The transformation that the notes name. */
  readonly by: Named | null;
  /** A decimal year, for what depends on time; coordinates are never moved to another epoch unasked. */
  readonly epoch: number | null;
}

/**
 * The place in the datum of `wanted`. Between datums realised by satellite positioning the height goes along; an old
 * network's own ellipsoidal height means nothing, so there the height of the result is null and the orthometric one stays.
 */
export function transformed(
  located: Located,
  height: Maybe<Value>,
  wanted: CoordinateSystem,
  wishes: TransformWishes,
): Maybe<Located> {
  const own = located.system.datum;
  if (sameDatum(own, wanted.datum)) return located;
  const at = {
    latitude: asLatitude(located.latitude.value),
    longitude: asLongitude(located.longitude.value),
  };
  const route = routeBetween(own, wanted.datum, {
    at,
    ...(wishes.epoch === null ? {} : { epoch: wishes.epoch }),
    ...(wishes.by ? { named: wishes.by.name } : {}),
  });
  if (isRefusal(route)) return hole(route.refused, wishes.by?.place ?? null);
  const spatial = own.realisation === 'gnss' && wanted.datum.realisation === 'gnss' && !isHole(height);
  return applied(
    located,
    spatial ? height : null,
    isHole(height) ? 0 : height.value,
    wanted,
    route,
    wishes.about,
  );
}

/** Within a site one transformation is wrong by the same everywhere, so that its error cancels between two marks. */
function sharedError(name: string, size: number, because: string): Value {
  const known = sharedErrors.get(name);
  if (known?.sigma === size) return known;
  const error = assumed(name, 0, 'm', size, because);
  sharedErrors.set(name, error);
  return error;
}
const sharedErrors = new Map<string, Value>();

function applied(
  located: Located,
  height: Value | null,
  level: number,
  wanted: CoordinateSystem,
  route: DatumRoute,
  about: string,
): Maybe<Located> {
  const own = located.system.datum.ellipsoid;
  const convert = (φ: number, λ: number, h: number): readonly [number, number, number] | string => {
    const moved = route.apply(
      geocentricOf(own, { latitude: asLatitude(φ), longitude: asLongitude(λ), height: ellipsoidalHeight(h) }),
    );
    if (isRefusal(moved)) return moved.refused;
    const found = geodeticOf(wanted.datum.ellipsoid, moved);
    return [found.latitude, found.longitude, found.height];
  };
  const refusal = convert(located.latitude.value, located.longitude.value, height?.value ?? level);
  if (typeof refusal === 'string') return hole(refusal);
  const names = route.steps.map(
    ({ transformation, reversed }) => `${transformation.name}${reversed ? ', reversed' : ''}`,
  );
  const formula = (symbol: string) => ({
    symbol,
    expression: `${names.join('; ')} (φ, λ, h) + ε`,
    evaluable: false,
    source: route.steps.map(({ transformation }) => transformation.source).join('; '),
  });
  const φ = asLatitude(located.latitude.value);
  const perMetre = {
    latitude: 1 / (meridianRadius(own, φ) * toRadians(1)),
    longitude: 1 / (primeVerticalRadius(own, φ) * Math.cos(toRadians(φ)) * toRadians(1)),
  };
  const because = `the transformation is published as good to ${Number(route.accuracy.toPrecision(2))} m`;
  const error = (axis: string) =>
    sharedError(`error of ${names.join('; ')}, ${axis}`, route.accuracy, because);
  const results = computeAll(
    [
      { name: `latitude of ${about} in ${wanted.datum.name}`, unit: '°', formula: formula('φ') },
      { name: `longitude of ${about} in ${wanted.datum.name}`, unit: '°', formula: formula('λ') },
      { name: `ellipsoidal height of ${about} in ${wanted.datum.name}`, unit: 'm', formula: formula('h') },
    ],
    {
      φ: located.latitude,
      λ: located.longitude,
      ...(height ? { h: height } : {}),
      ε_n: error('north'),
      ε_e: error('east'),
      ...(height ? { ε_u: error('up') } : {}),
    },
    (v: Readonly<Record<string, number>>) => {
      const found = convert(v['φ'] ?? NaN, v['λ'] ?? NaN, v['h'] ?? level);
      if (typeof found === 'string') return [NaN, NaN, NaN];
      return [
        found[0] + (v['ε_n'] ?? 0) * perMetre.latitude,
        found[1] + (v['ε_e'] ?? 0) * perMetre.longitude,
        found[2] + (v['ε_u'] ?? 0),
      ];
    },
  );
  const [latitude, longitude, up] = results;
  if (!latitude || !longitude || !up) return hole('the transformation gave nothing');
  return { latitude, longitude, height: height ? up : null, system: wanted };
}
