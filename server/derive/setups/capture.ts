/** What a base really broadcast, as a recording of its corrections shows it, beside what is true and what was noted as keyed. */
import { captureReader, type Capture, type CapturedStation } from '../../evidence/rtcm3/capture.ts';
import type { BroadcastPosition } from '../../evidence/rtcm3/capture.ts';
import type { Sighting } from '../../evidence/rtcm3/sightings.ts';
import { topocentricOf } from '../../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geographic,
  type Topocentric,
} from '../../quantities/brands.ts';
import { compute, computeAll } from '../../quantities/computed.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { given, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Position } from '../../session/coordinates.ts';
import type { Quoted } from '../../session/entries.ts';
import { begunAt } from './antenna-height.ts';
import type { Frame } from '../positions/frame.ts';
import type { KeyedValues } from './keyed.ts';
import { locate, type Located } from '../positions/locate.ts';
import type { SetupValues } from './setup.ts';
import type { KeyedState } from './timeline.ts';

export interface CaptureValues {
  readonly file: Quoted;
  /** Why the recording cannot be read. */
  readonly refused: string | null;
  readonly capture: Capture | null;
  /** The station of this base: the one that broadcasts the position nearest to the true one. */
  readonly station: CapturedStation | null;
  /** What it broadcast, in order of time. */
  readonly positions: readonly CapturedPosition[];
  /** By its weekday the recording is of another day. */
  readonly otherDay: boolean;
}

export interface CapturedPosition {
  readonly sighting: Sighting<BroadcastPosition>;
  /** What was broadcast, with its error, in the place of what was keyed. */
  readonly values: KeyedValues;
  /** Until the next other position; null where nothing limits it. */
  readonly from: number | null;
  readonly until: number | null;
  /** It comes and goes beside another one: two bases share a number. */
  readonly inTurn: boolean;
  /** The state of the notes that it agrees with. */
  readonly agrees: KeyedValues | null;
  /** The state of the notes at that time. */
  readonly noted: KeyedValues | null;
  /** Broadcast minus noted, in the horizon of the place; null where it is not known what was keyed. */
  readonly fromNoted: Topocentric | null;
}

/** What is keyed is rounded to 0.00001″ and a millimetre, and broadcast to 0.1 mm. */
const CAPTURE_ROUNDING = 0.002;

/** Notes of a minute may be a few minutes off. */
const NOTED_TIMES = 600;
const DAY = 86_400;

export function captureValues(
  setup: SetupValues,
  file: Quoted,
  bytes: Uint8Array | Refusal,
  frame: Frame,
): CaptureValues {
  const none = { file, capture: null, station: null, positions: [], otherDay: false };
  if (isRefusal(bytes)) return { ...none, refused: bytes.refused };
  const capture = captureOf(bytes);
  const clock = clockOf(capture, setup, frame);
  const station = ownStation(capture, setup);
  if (!station) return { ...none, refused: null, capture, otherDay: clock.otherDay };
  const sightings = [...station.positions].sort((one, other) => one.first.offset - other.first.offset);
  const positions = sightings.map((sighting, index): CapturedPosition => {
    const from = index === 0 ? null : clock.instant(sighting.first.time);
    const until = clock.instant(sightings[index + 1]?.first.time);
    const span = { from: clock.instant(sighting.first.time), until: clock.instant(sighting.last.time) };
    const sent = broadcastValues(sighting, station, { from, until }, file, frame);
    const beside = besideNotes(sent, span, setup);
    const wanted = beside.noted?.wanted ?? { standing: begunAt(setup.height), arp: setup.arp };
    return {
      sighting,
      values: { ...sent, wanted, ...errorOf(sent.broadcast, wanted.arp, setup) },
      from,
      until,
      inTurn: sightings.some((other) => isInTurn(sighting, other)),
      ...beside,
    };
  });
  return { file, refused: null, capture, station, positions, otherDay: clock.otherDay };
}

/**
 * What the base broadcast from when on: the keyed states of the notes, and in the place of those that a recording
 * contradicts what it shows. The recording wins for as long as the state that it contradicts was noted to last.
 */
export function broadcastsOf(setup: SetupValues, captured: CaptureValues | null): readonly KeyedValues[] {
  const usable = captured?.positions.filter(({ inTurn }) => !inTurn) ?? [];
  if (usable.length === 0 || captured?.positions.some(({ inTurn }) => inTurn)) return setup.keyed;
  const states: (KeyedValues | null)[] = setup.keyed.length > 0 ? [...setup.keyed] : [null];
  const broadcasts = states.flatMap((state) => {
    const shown = usable.filter(({ noted, agrees }) => (agrees ?? noted) === state);
    if (shown.length === 0 || shown.every(({ agrees }) => agrees !== null)) return state ? [state] : [];
    const start = state?.state.from ?? setup.from;
    const end = state ? state.state.until : setup.until;
    return shown.map(({ values, from, agrees }, index): KeyedValues => {
      const span = {
        from: index === 0 ? start : from,
        until: index === shown.length - 1 ? end : (shown[index + 1]?.from ?? null),
      };
      const base = agrees ?? values;
      return { ...base, state: { ...(state?.state ?? values.state), ...span } };
    });
  });
  return broadcasts.every((broadcast, index) => broadcast === setup.keyed[index]) ? setup.keyed : broadcasts;
}

/** A recording is read once, however often it is asked. */
function captureOf(bytes: Uint8Array): Capture {
  const known = captures.get(bytes);
  if (known) return known;
  const reader = captureReader();
  for (let at = 0; at < bytes.length; at += CHUNK) reader.push(bytes.subarray(at, at + CHUNK));
  const capture = reader.finish();
  captures.set(bytes, capture);
  return capture;
}
const captures = new WeakMap<Uint8Array, Capture>();
const CHUNK = 1 << 18;

interface CaptureClock {
  /** Seconds since 1970-01-01 UTC; null where the recording or the notes tell no time. */
  readonly instant: (time: number | undefined) => number | null;
  readonly otherDay: boolean;
}

/** The recording counts seconds of a week, or of a day where it is of GLONASS alone; the notes say of which. */
function clockOf(
  { begin, leapSeconds, stations }: Capture,
  { from, until }: SetupValues,
  { job }: Frame,
): CaptureClock {
  const date = job?.date && !isHole(job.date) ? job.date.day : null;
  if (date === null || begin === undefined) return { instant: () => null, otherDay: false };
  const middle = from === null ? date * DAY + DAY / 2 : until === null ? from : (from + until) / 2;
  const near = (every: number) => {
    // 1970-01-04 was a Sunday, with which weeks of GPS begin.
    const since = begin - leapSeconds + 3 * DAY;
    return since + every * Math.round((middle - since) / every);
  };
  const knowsWeekday = stations.some(({ observed }) =>
    observed.some(({ constellation }) => constellation !== 'GLONASS'),
  );
  const inWeek = near(7 * DAY);
  // A base may stand for days; one that has not been taken down yet still does.
  const first = Math.min(from ?? Infinity, middle - DAY / 2);
  const last = from !== null && until === null ? Infinity : Math.max(until ?? -Infinity, middle + DAY / 2);
  const otherDay = knowsWeekday && (inWeek < first || inWeek > last);
  const start = knowsWeekday && !otherDay ? inWeek : near(DAY);
  return { instant: (time) => (time === undefined ? null : start + time - begin), otherDay };
}

function ownStation({ stations }: Capture, setup: SetupValues): CapturedStation | null {
  const placed = stations.filter(({ positions }) => positions.length > 0);
  const { arp } = setup;
  if (isHole(arp)) return placed.sort((one, other) => sightingsOf(other) - sightingsOf(one))[0] ?? null;
  const distance = ({ positions }: CapturedStation) =>
    Math.min(
      ...positions.map(({ value: { position } }) =>
        Math.hypot(position.x - arp.x.value, position.y - arp.y.value, position.z - arp.z.value),
      ),
    );
  return placed.sort((one, other) => distance(one) - distance(other))[0] ?? null;
}
const sightingsOf = ({ positions }: CapturedStation) => positions.reduce((sum, { count }) => sum + count, 0);

const isInTurn = (one: Sighting<unknown>, other: Sighting<unknown>) =>
  one !== other &&
  ((one.first.offset < other.first.offset && other.first.offset < one.last.offset) ||
    (other.first.offset < one.first.offset && one.first.offset < other.last.offset));

/** The broadcast position as values; what a message says is exact to its own rounding. */
function broadcastValues(
  { value: { position, antennaHeight } }: Sighting<BroadcastPosition>,
  { station }: CapturedStation,
  span: { readonly from: number | null; readonly until: number | null },
  file: Quoted,
  frame: Frame,
): Broadcast {
  const message = antennaHeight === undefined ? 1005 : 1006;
  const { place } = file;
  const read = (name: string, value: number) =>
    given(
      name,
      value,
      'm',
      0,
      `${value.toFixed(4)} m in ${file.text}, station ${station}, message ${message}`,
      place,
    );
  const broadcast = {
    x: read('X of the broadcast ARP', position.x),
    y: read('Y of the broadcast ARP', position.y),
    z: read('Z of the broadcast ARP', position.z),
  };
  const system = isHole(frame.keyed) ? null : (frame.keyed.code ?? null);
  const typed: Position = {
    form: 'geocentric',
    ...broadcast,
    place,
    system: system === null ? null : { name: system, place },
    by: null,
  };
  const arp = locate(typed, frame, 'the broadcast ARP', null);
  const height: Maybe<Value> =
    antennaHeight === undefined
      ? hole('message 1005 carries no antenna height', place)
      : read('broadcast antenna height', antennaHeight);
  return {
    state: stateOf(span),
    located: arp,
    height: markHeight(arp, height),
    antennaHeight: height,
    broadcast,
    recorded: file,
  };
}
type Broadcast = Omit<KeyedValues, 'wanted' | 'broadcast' | 'east' | 'north' | 'up'> & {
  readonly broadcast: Readonly<Record<'x' | 'y' | 'z', Value>>;
};

const stateOf = (span: Pick<KeyedState, 'from' | 'until'>): KeyedState => ({
  number: 1,
  ...span,
  ...{ position: null, height: null, antennaHeight: null, antennaType: null, lines: [] },
});

function markHeight(arp: Maybe<Located>, antennaHeight: Maybe<Value>): Maybe<Value> {
  if (isHole(arp)) return arp;
  if (isHole(antennaHeight)) return antennaHeight;
  if (!arp.height) return hole('the broadcast ARP has no height');
  return compute(
    'broadcast height of the mark',
    'm',
    { symbol: 'h', expression: 'h_ARP − a', evaluable: true, source: 'RTCM 10403.3, message 1006' },
    { h_ARP: arp.height, a: antennaHeight },
    (v) => v.h_ARP - v.a,
  );
}

/** Broadcast minus true ARP, in the mark's horizon. */
function errorOf(broadcast: Broadcast['broadcast'], arp: SetupValues['arp'], { mark }: SetupValues) {
  const missing = (because: ReturnType<typeof hole>) => ({ east: because, north: because, up: because });
  if (isHole(arp)) return missing(arp);
  if (!mark || isHole(mark.located)) return missing(hole('the setup stands on no known mark'));
  const origin = placeOf(mark.located);
  const names = ['east', 'north', 'up'] as const;
  const [east, north, up] = computeAll(
    names.map((name) => ({
      name: `broadcast ARP minus true ARP, ${name}`,
      unit: 'm' as const,
      formula: {
        symbol: name[0]?.toUpperCase() ?? '',
        expression: 'broadcast ARP (X_b, Y_b, Z_b) minus true ARP (X, Y, Z), in the horizon of the mark',
        evaluable: false,
        source: 'IOGP 373-07-2, geocentric/topocentric conversion (EPSG method 9836)',
      },
    })),
    { X_b: broadcast.x, Y_b: broadcast.y, Z_b: broadcast.z, X: arp.x, Y: arp.y, Z: arp.z },
    (v) => {
      const vector = topocentricOf(origin, {
        x: metres(v.X_b - v.X),
        y: metres(v.Y_b - v.Y),
        z: metres(v.Z_b - v.Z),
      });
      return [vector.east, vector.north, vector.up];
    },
  );
  const none = hole('the comparison gave nothing');
  return { east: east ?? none, north: north ?? none, up: up ?? none };
}

const placeOf = ({ latitude, longitude }: Located): Geographic => ({
  latitude: asLatitude(latitude.value),
  longitude: asLongitude(longitude.value),
});

/** The state of the notes that it agrees with, else the one that was in force for most of the time. */
function besideNotes(
  values: Broadcast,
  seen: { readonly from: number | null; readonly until: number | null },
  { keyed }: SetupValues,
): Pick<CapturedPosition, 'agrees' | 'noted' | 'fromNoted'> {
  const during = keyed.filter(({ state }) => overlap(state, seen) > -NOTED_TIMES);
  const possible = during.length > 0 ? during : keyed;
  const agrees = possible.find((noted) => {
    const vector = vectorFrom(noted, values);
    return vector !== null && Math.hypot(vector.east, vector.north, vector.up) <= CAPTURE_ROUNDING;
  });
  const noted =
    agrees ??
    [...possible].sort((one, other) => overlap(other.state, seen) - overlap(one.state, seen))[0] ??
    null;
  return { agrees: agrees ?? null, noted, fromNoted: noted ? vectorFrom(noted, values) : null };
}

/** Seconds that two spans have in common; negative where they are apart. */
function overlap(
  state: Pick<KeyedState, 'from' | 'until' | 'number'>,
  seen: { readonly from: number | null; readonly until: number | null },
): number {
  const from = Math.max(state.number === 1 ? -Infinity : (state.from ?? -Infinity), seen.from ?? -Infinity);
  const until = Math.min(state.until ?? Infinity, seen.until ?? Infinity);
  return from === -Infinity && until === Infinity ? Infinity : until - from;
}

function vectorFrom(noted: KeyedValues, { broadcast, located }: Broadcast): Topocentric | null {
  if (isHole(noted.broadcast) || isHole(located)) return null;
  return topocentricOf(placeOf(located), {
    x: metres(broadcast.x.value - noted.broadcast.x.value),
    y: metres(broadcast.y.value - noted.broadcast.y.value),
    z: metres(broadcast.z.value - noted.broadcast.z.value),
  });
}
