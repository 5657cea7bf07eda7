/** Where an antenna log says a rover stood: the mean of its best epochs, reduced by the pole, in the place of what a controller showed. */
import { nmeaReader, type NmeaFacts } from '../../evidence/nmea/log.ts';
import type { TimeWindow } from '../../evidence/nmea/occupation.ts';
import type { NmeaMean } from '../../evidence/nmea/running-mean.ts';
import { degreesInMetres } from '../../evidence/nmea/running-mean.ts';
import { compute, exact } from '../../quantities/computed.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { given, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Named, Position } from '../../session/coordinates.ts';
import type {
  Accuracy,
  Check,
  Observed,
  Point,
  Quality,
  Recording,
  Rover,
  Stated,
} from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import type { Frame } from '../positions/frame.ts';
import { NOTHING, remembered, type Nothing } from '../remembered.ts';

export interface RecordingValues {
  readonly recording: Recording;
  /** Why the log cannot be read. */
  readonly refused: string | null;
  readonly facts: NmeaFacts | null;
  /** The epochs of the best quality in the time asked for. */
  readonly mean: NmeaMean | null;
  /** What takes the place of typed coordinates; a hole says why there are none. */
  readonly observed: Maybe<Observed>;
  readonly quality: Quality | null;
  readonly spread: Accuracy | null;
}

export function recordingValues(
  occupied: Check | Point,
  recording: Recording,
  bytes: Uint8Array | Refusal,
  rover: Rover | null,
  frame: Frame,
): RecordingValues {
  const { file } = recording;
  const none = { recording, facts: null, mean: null, quality: null, spread: null };
  if (isRefusal(bytes))
    return {
      ...none,
      refused: bytes.refused,
      observed: hole(`the log ${file.text} cannot be read: ${bytes.refused}`, file.place),
    };
  const facts = factsOf(bytes, windowOf(recording, frame));
  const mean = facts.means[0] ?? null;
  if (!mean)
    return {
      ...none,
      facts,
      refused: null,
      observed: hole(`the log ${file.text} has no position in the time asked for`, file.place),
    };
  return {
    recording,
    refused: null,
    facts,
    mean,
    observed: observedOf(occupied, facts, mean, recording, rover, frame),
    quality: qualityOf(facts, mean, recording),
    spread: spreadOf(mean, recording),
  };
}

/** The same entry with what its log says in the place of coordinates; itself where it names none, or the log gives none. */
export const withRecording = remembered(
  (point: Point, bytes: Uint8Array | Refusal, rover: Rover | Nothing, frame: Frame): Point => {
    const recording = point.observed?.recording;
    if (!recording) return point;
    const known = rover === NOTHING ? null : (rover as Rover);
    const { observed, quality, spread } = recordingValues(point, recording, bytes, known, frame);
    if (isHole(observed)) return point;
    return { ...point, observed, quality: point.quality ?? quality, spread: point.spread ?? spread };
  },
);

/** A log is read once for each span of time that is asked of it. */
function factsOf(bytes: Uint8Array, window: TimeWindow | null): NmeaFacts {
  const known = read.get(bytes) ?? new Map<string, NmeaFacts>();
  read.set(bytes, known);
  const key = window ? `${window.from} ${window.until} ${window.date ?? ''}` : '';
  const before = known.get(key);
  if (before) return before;
  const reader = nmeaReader(window ? { window } : {});
  for (let at = 0; at < bytes.length; at += CHUNK) reader.push(bytes.subarray(at, at + CHUNK));
  const facts = reader.finish();
  known.set(key, facts);
  return facts;
}
const read = new WeakMap<Uint8Array, Map<string, NmeaFacts>>();
const CHUNK = 1 << 18;
const DAY = 86_400;

/** In UTC: seconds from the midnight of the job's date, or of any day where the job has none. */
function windowOf({ from, to }: Recording, { job }: Frame): TimeWindow | null {
  const [start, end] = [instantOf(from, job), instantOf(to, job)];
  if (start === null || end === null) return null;
  const date = job?.date && !isHole(job.date) ? job.date : null;
  if (!date) return { from: start, until: end };
  const midnight = date.day * DAY;
  return { from: start - midnight, until: end - midnight, date: date.typed };
}

function observedOf(
  occupied: Check | Point,
  facts: NmeaFacts,
  mean: NmeaMean,
  { file }: Recording,
  rover: Rover | null,
  frame: Frame,
): Observed {
  const place = file.place;
  const { rounding } = facts;
  const perDegree = degreesInMetres(mean.position);
  const of = `the mean of ${mean.epochs} ${mean.quality} epochs in ${file.text}`;
  const latitude = given(
    'observed latitude',
    mean.position.latitude,
    '°',
    (rounding?.north ?? 0) / perDegree.north,
    of,
    place,
  );
  const longitude = given(
    'observed longitude',
    mean.position.longitude,
    '°',
    (rounding?.east ?? 0) / perDegree.east,
    of,
    place,
  );
  const value = heightOf(occupied, facts, mean, of, rover, file.place);
  const position: Position = {
    form: 'geographic',
    latitude: { ...latitude, spread: LAST_DIGIT },
    longitude: { ...longitude, spread: LAST_DIGIT },
    place,
    system: systemOf(frame, place),
    by: null,
  };
  return { position, height: { value, surface: 'ellipsoidal', geoid: null, place }, recording: null, place };
}

const LAST_DIGIT = 'the last digit printed';

/** The rover works in the datum that its base was keyed in. */
const systemOf = ({ keyed }: Frame, place: Named['place']): Named | null =>
  isHole(keyed) || !keyed.code ? null : { name: keyed.code, place };

/** The antenna stands on the pole, so the ground lies its length below. */
function heightOf(
  occupied: Check | Point,
  { rounding, separation }: NmeaFacts,
  mean: NmeaMean,
  of: string,
  rover: Rover | null,
  place: Named['place'],
): Maybe<Value> {
  if (mean.height === undefined)
    return hole('not every epoch of the log has an altitude with a separation, so it tells no height', place);
  const pole = occupied.pole ?? rover?.pole ?? null;
  if (!pole)
    return hole(`no pole is noted for ${occupied.name}, so the log is not reduced to the ground`, place);
  if (isHole(pole.length)) return pole.length;
  const geoid = separation
    ? `, altitude plus the separation in each sentence (${separation.mean.toFixed(3)} m in the mean, by the receiver's own geoid)`
    : '';
  const antenna = {
    ...given(
      'ellipsoidal height of the antenna',
      mean.height,
      'm',
      rounding?.up ?? 0,
      `${of}${geoid}`,
      place,
    ),
    spread: LAST_DIGIT,
  };
  return compute(
    `observed height of ${occupied.name}, above the ellipsoid`,
    'm',
    { symbol: 'h', expression: 'h_a − L', evaluable: true, source: 'the pole taken off (common practice)' },
    { h_a: antenna, L: pole.length.sigma === null ? exact(pole.length) : pole.length },
    (v) => v.h_a - v.L,
  );
}

const SOLUTIONS: Readonly<Record<NmeaMean['quality'], string>> = {
  ...{ fixed: 'fixed', float: 'float', differential: 'differential', autonomous: 'autonomous' },
  ...{ precise: 'autonomous', estimated: 'autonomous', manual: 'autonomous', simulated: 'autonomous' },
};

function qualityOf(facts: NmeaFacts, mean: NmeaMean, { file: { text, place } }: Recording): Quality {
  const counted = (name: string, count: number) => given(name, count, '', null, `counted in ${text}`, place);
  return {
    solution: { name: SOLUTIONS[mean.quality], place },
    epochs: counted('epochs', mean.epochs),
    pdop: null,
    satellites: facts.satellites ? counted('satellites', Math.round(facts.satellites.mean)) : null,
    place,
  };
}

function spreadOf({ spread }: NmeaMean, { file: { text, place } }: Recording): Accuracy | null {
  if (!spread) return null;
  const stated = (name: string, size: number): Stated => ({
    constant: given(name, size, 'm', null, `scatter of the epochs in ${text}`, place),
    perDistance: null,
    confidence: null,
    place,
  });
  return {
    horizontal: stated('horizontal spread', Math.hypot(spread.east, spread.north)),
    vertical: spread.up === undefined ? null : stated('vertical spread', spread.up),
    place,
  };
}
