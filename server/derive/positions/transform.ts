/** A place in another datum than its own, by a published transformation with its stated accuracy. */
import { geocentricOf, geodeticOf } from '../../geodesy/geocentric.ts';
import { carriedByPlate, PLATES } from '../../geodesy/datums/plates.ts';
import { routeBetween, type DatumRoute } from '../../geodesy/datums/route.ts';
import { isTimeDependent } from '../../geodesy/datums/transformation.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import { toRadians } from '../../geodesy/angles.ts';
import type { CoordinateSystem, Datum } from '../../geodesy/system.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
  type Geocentric,
} from '../../quantities/brands.ts';
import { computeAll } from '../../quantities/computed.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Named } from '../../session/coordinates.ts';
import { sameDatum, type Frame } from './frame.ts';
import type { Located } from './locate.ts';
import { transformationError } from './transformation-error.ts';

export interface TransformWishes {
  readonly about: string;
  /** The transformation that the notes name. */
  readonly by: Named | null;
  /** Of the coordinates as published, a decimal year; null where nobody has said. */
  readonly epoch: number | null;
  /** What the job asks for; coordinates are never moved to another epoch unasked. */
  readonly asked: Pick<Frame, 'epoch' | 'plate'>;
}

/** One transformation or several, or the motion of a plate, with what a place is good to afterwards. */
interface Way {
  readonly names: readonly string[];
  readonly source: string;
  readonly accuracy: number;
  readonly because: string;
  readonly apply: (point: Geocentric) => Geocentric | Refusal;
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
  const ways = waysTo(located, wanted, wishes);
  if (isRefusal(ways)) return hole(ways.refused, wishes.by?.place ?? null);
  const way = joined(ways);
  if (!way) return located;
  const spatial = own.realisation === 'gnss' && wanted.datum.realisation === 'gnss' && !isHole(height);
  return applied(
    located,
    spatial ? height : null,
    isHole(height) ? 0 : height.value,
    wanted,
    way,
    wishes.about,
  );
}

/**
 * Between datums at the epoch of the moving one; from one epoch of a moving frame to the one that is asked for with the
 * plate that the job names.
 */
function waysTo(
  located: Located,
  wanted: CoordinateSystem,
  wishes: TransformWishes,
): readonly Way[] | Refusal {
  const own = located.system.datum;
  const { asked, epoch, about } = wishes;
  const [from, to] = [isMoving(own), isMoving(wanted.datum)];
  const carried = from && to ? plateMotion(wanted.datum, wishes) : [];
  if (sameDatum(own, wanted.datum) || isRefusal(carried)) return carried;
  const at = {
    latitude: asLatitude(located.latitude.value),
    longitude: asLongitude(located.longitude.value),
  };
  const when = from ? epoch : (asked.epoch ?? epoch);
  const route = routeBetween(own, wanted.datum, {
    at,
    ...(when === null ? {} : { epoch: when }),
    ...(wishes.by ? { named: wishes.by.name } : {}),
  });
  if (isRefusal(route)) return route;
  if (when === null && route.steps.some(({ transformation }) => isTimeDependent(transformation.parameters)))
    return refuse(
      from
        ? `${own.name} moves against ${wanted.datum.name}, and the epoch of ${about} is not said. Say it with the mark (epoch 2010.0).`
        : `${wanted.datum.name} moves against ${own.name}, and for which epoch its coordinates are wanted is not said. Say it in the job (datum ${wanted.datum.name} epoch 2026.38).`,
    );
  return [wayOf(route), ...carried];
}

function wayOf({ steps, accuracy, apply }: DatumRoute): Way {
  return {
    names: steps.map(
      ({ transformation, reversed }) => `${transformation.name}${reversed ? ', reversed' : ''}`,
    ),
    source: steps.map(({ transformation }) => transformation.source).join('; '),
    accuracy,
    because: `published as good to ${Number(accuracy.toPrecision(2))} m`,
    apply,
  };
}

/** Frames in which the ground moves by centimetres a year; coordinates in them mean nothing without their epoch. */
const isMoving = ({ name }: Datum) => /^(ITRF|IGS|IGb|WGS 84 \(G)/.test(name);

function plateMotion(frame: Datum, { asked, epoch, about }: TransformWishes): readonly Way[] | Refusal {
  const to = asked.epoch;
  if (to === null) return [];
  if (epoch === null)
    return refuse(
      `${about} is in ${frame.name}, which moves, and its epoch is not said. Say it with the mark (epoch 2010.0).`,
    );
  const years = to - epoch;
  if (Math.abs(years) < SAME_EPOCH) return [];
  const plate = PLATES.find((known) => known === asked.plate?.name);
  if (!plate)
    return refuse(
      `${about} is in ${frame.name} at ${epoch.toFixed(1)} and wanted at ${to.toFixed(1)}; which plate carries it is not said. Say it in the job (plate Eurasia), or give coordinates of that epoch.`,
    );
  const accuracy = PLATE_RATE * Math.abs(years);
  return [
    {
      names: [`motion of the plate ${plate} from ${epoch.toFixed(2)} to ${to.toFixed(2)}`],
      source: 'Altamimi et al. (2017), ITRF2014 plate motion model, table 1',
      accuracy,
      because: `${PLATE_RATE * 1000} mm a year beside the plate’s own motion, in stable ground (common practice)`,
      apply: (point) => carriedByPlate(plate, point, epoch, to),
    },
  ];
}

/** Years; a plate moves half a millimetre in them. */
const SAME_EPOCH = 0.01;
/** Metres a year: the model's own sites agree to 0.3 mm a year, heights and the ground between them less well. */
const PLATE_RATE = 0.001;

/** Null for no way at all. */
function joined(ways: readonly Way[]): Way | null {
  const [first] = ways;
  if (!first || ways.length === 1) return first ?? null;
  return {
    names: ways.flatMap(({ names }) => names),
    source: ways.map(({ source }) => source).join('; '),
    accuracy: Math.hypot(...ways.map(({ accuracy }) => accuracy)),
    because: ways.map(({ because }) => because).join('; '),
    apply: (point) =>
      ways.reduce<Geocentric | Refusal>(
        (reached, { apply }) => (isRefusal(reached) ? reached : apply(reached)),
        point,
      ),
  };
}

function applied(
  located: Located,
  height: Value | null,
  level: number,
  wanted: CoordinateSystem,
  { names, source, accuracy, because, apply }: Way,
  about: string,
): Maybe<Located> {
  const own = located.system.datum.ellipsoid;
  const convert = (φ: number, λ: number, h: number): readonly [number, number, number] | string => {
    const moved = apply(
      geocentricOf(own, { latitude: asLatitude(φ), longitude: asLongitude(λ), height: ellipsoidalHeight(h) }),
    );
    if (isRefusal(moved)) return moved.refused;
    const found = geodeticOf(wanted.datum.ellipsoid, moved);
    return [found.latitude, found.longitude, found.height];
  };
  const refusal = convert(located.latitude.value, located.longitude.value, height?.value ?? level);
  if (typeof refusal === 'string') return hole(refusal);
  const formula = (symbol: string) => ({
    symbol,
    expression: `${names.join('; ')} (φ, λ, h) + ε`,
    evaluable: false,
    source,
  });
  const φ = asLatitude(located.latitude.value);
  const perMetre = {
    latitude: 1 / (meridianRadius(own, φ) * toRadians(1)),
    longitude: 1 / (primeVerticalRadius(own, φ) * Math.cos(toRadians(φ)) * toRadians(1)),
  };
  const error = (axis: string) =>
    transformationError(`error of ${names.join('; ')}, ${axis}`, accuracy, because);
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
