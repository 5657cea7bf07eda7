/** What a receiver was told, made into the antenna position that it broadcast, and compared with the true one. */
import { geocentricOf } from '../../geodesy/geocentric.ts';
import { topocentricBetween } from '../../geodesy/topocentric.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
} from '../../quantities/brands.ts';
import { compute, computeAll } from '../../quantities/computed.ts';
import { hole, isHole, withSpread, type Hole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Antenna, LocalSurface, Quoted } from '../../session/entries.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import { separationFrom, type GeoidModel } from '../heights/geoid.ts';
import { ellipsoidalFrom, placedHeight } from '../heights/heights.ts';
import { locate, toGeocentric, type Located, type OwnSystems } from '../positions/locate.ts';
import type { Standing } from './antenna-height.ts';
import type { Datum } from '../../geodesy/system.ts';
import { heightOn, type MarkValues } from '../marks/mark.ts';
import type { KeyedState } from './timeline.ts';

export interface KeyedValues {
  readonly state: KeyedState;
  /** The position as keyed. */
  readonly located: Maybe<Located>;
  /** The height as keyed, above the ellipsoid. */
  readonly height: Maybe<Value>;
  /** The antenna height as keyed, brought to the ARP. */
  readonly antennaHeight: Maybe<Value>;
  /** The broadcast ARP, geocentric. */
  readonly broadcast: Maybe<{ readonly x: Value; readonly y: Value; readonly z: Value }>;
  /** What it should have been, as the antenna stood then. */
  readonly wanted: Pick<True, 'standing' | 'arp'>;
  /** Broadcast minus true ARP, in the mark's horizon. */
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  readonly up: Maybe<Value>;
  /** The recording that shows it, where it does not come from the notes. */
  readonly recorded?: Quoted;
}

export interface True {
  readonly mark: MarkValues | null;
  /** The mark in the datum that a receiver is to be told. */
  readonly keyable: Maybe<Located>;
  readonly standing: Standing;
  /** True ARP, geocentric. */
  readonly arp: Maybe<{ readonly x: Value; readonly y: Value; readonly z: Value }>;
}

export function keyedValues(
  state: KeyedState,
  truth: True,
  antenna: Antenna | null,
  frame: Frame,
  geoid: (name: string, file: boolean) => Maybe<GeoidModel>,
  surfaces: ReadonlyMap<string, LocalSurface>,
): KeyedValues {
  const about = 'the keyed position';
  const located = state.position
    ? exactly(
        locate(state.position, keyedSystems(frame), about, { sigma: 0, because: 'what was keyed is exact' }),
      )
    : hole('no position was keyed');
  const height = keyedHeight(state, located, geoid, surfaces);
  const antennaHeight = keyedAntennaHeight(state, antenna);
  const broadcast = broadcastArp(located, height, antennaHeight);
  const difference = differenceOf(located, height, antennaHeight, truth);
  const wanted = { standing: truth.standing, arp: truth.arp };
  return { state, located, height, antennaHeight, broadcast, wanted, ...difference };
}

/** Angles are keyed in the datum of the receiver, grid coordinates in the job's grid. */
export const keyedSystems = (frame: Frame): OwnSystems => ({
  grid: frame.grid,
  geographic: isHole(frame.keyed) ? frame.geographic : frame.keyed,
  grounds: frame.grounds,
});

/** What was keyed into the receiver is a fact without uncertainty. */
const exactly = (located: Maybe<Located>): Maybe<Located> =>
  isHole(located)
    ? located
    : { ...located, latitude: exact(located.latitude), longitude: exact(located.longitude) };
const exact = (value: Value): Value => (value.origin === 'given' ? withSpread(value, 0, 'as keyed') : value);

function keyedHeight(
  state: KeyedState,
  located: Maybe<Located>,
  geoid: (name: string, file: boolean) => Maybe<GeoidModel>,
  surfaces: ReadonlyMap<string, LocalSurface>,
): Maybe<Value> {
  if (!state.height) return !isHole(located) && located.height ? located.height : hole('no height was keyed');
  const placed = placedHeight(state.height, surfaces, 'the keyed height');
  if (isHole(placed)) return placed;
  if (placed.surface === 'ellipsoidal') return exact(placed.value);
  const named = state.height.geoid;
  if (!named)
    return hole(
      'an orthometric height was keyed, and by which geoid model the receiver makes it ellipsoidal is not said',
      state.height.place,
    );
  if (isHole(located)) return located;
  const model = geoid(named.name, named.name.includes('.'));
  if (isHole(model)) return model;
  const N = separationFrom(model, located, 'the keyed position');
  return isHole(N) ? N : ellipsoidalFrom(exact(placed.value), N, 'the keyed position');
}

/** A receiver that was told a slant or a height to another point takes it to the ARP by the antenna type it knows. */
export function keyedAntennaHeight(state: KeyedState, antenna: Antenna | null): Maybe<Value> {
  const keyed = state.antennaHeight;
  if (!keyed) return hole('no antenna height was keyed');
  if (isHole(keyed.value)) return keyed.value;
  const value = exact(keyed.value);
  const to = keyed.to?.name ?? 'arp';
  if (to === 'arp' || to === 'foot') return value;
  const name = 'keyed antenna height, to the ARP';
  const source = 'what a receiver makes of the height it is told (common practice)';
  if (to === 'phase-centre') {
    const offset = antenna?.phaseCentre;
    if (!offset || isHole(offset))
      return offset ?? hole('the antenna has no phase centre described', keyed.place);
    return compute(
      name,
      'm',
      { symbol: 'a', expression: 'H − o', evaluable: true, source },
      { H: value, o: exact(offset) },
      (v) => v.H - v.o,
    );
  }
  const point = antenna?.tapePoints.find((candidate) => candidate.name === to);
  if (!point) return hole(`the antenna has no tape point ${to}`, keyed.to?.place ?? keyed.place);
  if (isHole(point.radius)) return point.radius;
  if (isHole(point.above)) return point.above;
  const inputs = { s: value, r: exact(point.radius), v: exact(point.above) };
  if (keyed.manner === 'vertical')
    return compute(
      name,
      'm',
      { symbol: 'a', expression: 's − v', evaluable: true, source },
      { s: inputs.s, v: inputs.v },
      (n) => n.s - n.v,
    );
  if (inputs.s.value <= inputs.r.value)
    return hole('the keyed slant is not longer than the radius of its tape point', keyed.place);
  return compute(
    name,
    'm',
    { symbol: 'a', expression: '√(s² − r²) − v', evaluable: true, source },
    inputs,
    (n) => Math.sqrt(n.s * n.s - n.r * n.r) - n.v,
  );
}

function broadcastArp(located: Maybe<Located>, height: Maybe<Value>, antennaHeight: Maybe<Value>) {
  if (isHole(located)) return located;
  if (isHole(height)) return height;
  if (isHole(antennaHeight)) return antennaHeight;
  return toGeocentric(
    located,
    sumOf('height of the broadcast ARP', height, antennaHeight),
    'the broadcast ARP',
  );
}

/** ARP height above the ellipsoid; along the ellipsoid's normal, some tenths of a millimetre from the plumb line. */
export const sumOf = (name: string, h: Value, a: Value): Value =>
  compute(
    name,
    'm',
    {
      symbol: 'h_ARP',
      expression: 'h + a',
      evaluable: true,
      source: 'the ARP lies above the mark along the ellipsoid normal',
    },
    { h, a },
    (v) => v.h + v.a,
  );

/** The mark in the datum of what was keyed. */
function knownIn(datum: Datum, located: Maybe<Located>, keyable: Maybe<Located>): Maybe<Located> {
  for (const known of [located, keyable])
    if (!isHole(known) && sameDatum(known.system.datum, datum)) return known;
  if (isHole(keyable)) return keyable;
  return hole(`the keyed position is in ${datum.name} and the mark in ${keyable.system.datum.name}`);
}

/** East and north need the position alone; up needs every height. */
function differenceOf(
  located: Maybe<Located>,
  height: Maybe<Value>,
  antennaHeight: Maybe<Value>,
  truth: True,
) {
  const { mark } = truth;
  const missing = (because: Hole) => ({ east: because, north: because, up: because });
  if (!mark) return missing(hole('the setup stands on no known mark'));
  if (isHole(located)) return missing(located);
  const known = knownIn(located.system.datum, mark.located, truth.keyable);
  if (isHole(known)) return missing(known);
  const trueHeight = heightOn(known, mark);
  const arpHeight = truth.standing.arp;
  const gap = [height, antennaHeight, trueHeight, arpHeight].find(isHole);
  const zero = isHole(trueHeight) ? null : trueHeight;
  const inputs = {
    φ_k: located.latitude,
    λ_k: located.longitude,
    φ: known.latitude,
    λ: known.longitude,
    ...(gap || isHole(height) || isHole(antennaHeight) || isHole(trueHeight) || isHole(arpHeight)
      ? {}
      : { h_k: height, a_k: antennaHeight, h: trueHeight, a: arpHeight }),
  };
  const formula = (symbol: string) => ({
    symbol,
    expression: 'topocentric difference, broadcast ARP (φ_k, λ_k, h_k + a_k) minus true ARP (φ, λ, h + a)',
    evaluable: false,
    source: 'IOGP 373-07-2, geocentric/topocentric conversion (EPSG method 9836)',
  });
  const { ellipsoid } = known.system.datum;
  const names = ['east', 'north', 'up'] as const;
  const results = computeAll(
    names.map((name) => ({
      name: `keyed ARP minus true ARP, ${name}`,
      unit: 'm' as const,
      formula: formula(name[0]?.toUpperCase() ?? ''),
    })),
    inputs,
    (numbers: Readonly<Record<string, number>>) => {
      const at = (φ: number | undefined, λ: number | undefined, h: number) =>
        geocentricOf(ellipsoid, {
          latitude: asLatitude(φ ?? NaN),
          longitude: asLongitude(λ ?? NaN),
          height: ellipsoidalHeight(h),
        });
      const level = zero?.value ?? 0;
      const trueArp = at(
        numbers['φ'],
        numbers['λ'],
        numbers['h'] === undefined ? level : numbers['h'] + (numbers['a'] ?? 0),
      );
      const told = at(
        numbers['φ_k'],
        numbers['λ_k'],
        numbers['h_k'] === undefined ? level : numbers['h_k'] + (numbers['a_k'] ?? 0),
      );
      const origin = {
        latitude: asLatitude(numbers['φ'] ?? NaN),
        longitude: asLongitude(numbers['λ'] ?? NaN),
      };
      const vector = topocentricBetween(origin, trueArp, told);
      return [vector.east, vector.north, vector.up];
    },
  );
  const [east, north, up] = results;
  const none = hole('the comparison gave nothing');
  return { east: east ?? none, north: north ?? none, up: gap ?? up ?? none };
}
