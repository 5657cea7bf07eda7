/** What a capture of an RTCM 3 stream holds: stations, positions, equipment, observations, rates, gaps and damage. */
import type { Constellation } from '../../link/message-size.ts';
import type { Geocentric, Metres, Seconds } from '../../quantities/brands.ts';
import type { EvidenceProblem } from '../problems.ts';
import { problemList } from '../problems.ts';
import type { GlonassBiases } from './biases.ts';
import type { Equipment } from './equipment.ts';
import type { Frame, Stray } from './frames.ts';
import { frameReader } from './frames.ts';
import type { Message } from './message.ts';
import { readMessage } from './message.ts';
import type { MessageEpoch, Observations } from './observations.ts';
import type { Gap, Rhythm } from './rhythm.ts';
import { rhythm } from './rhythm.ts';
import type { Moment, Sighting, Sightings } from './sightings.ts';
import { sightings } from './sightings.ts';
import type { StationPosition } from './station-position.ts';
import type { StationText } from './text.ts';

/** A position as it was broadcast; height above the mark where a 1006 gave it. */
export interface BroadcastPosition {
  readonly position: Geocentric;
  readonly antennaHeight?: Metres;
  readonly frameYear: number;
  readonly virtual: boolean;
}

export interface MessageCount {
  readonly number: number;
  readonly count: number;
  /** Frames included. */
  readonly bytes: number;
  readonly largest: number;
  /** The usual time between two sendings, from the epochs in the stream. */
  readonly interval?: Seconds;
  readonly gaps: readonly Gap[];
}

export interface ObservedConstellation {
  readonly constellation: Constellation;
  readonly numbers: readonly number[];
  readonly satellites: readonly string[];
  readonly signals: readonly string[];
  readonly epochs: number;
  readonly fewestSatellites: number;
  readonly mostSatellites: number;
}

export interface CapturedStation {
  readonly station: number;
  /** More than one means that the base was moved or keyed anew, or that two bases share a number. */
  readonly positions: readonly Sighting<BroadcastPosition>[];
  readonly equipment: readonly Sighting<Equipment>[];
  readonly biases: readonly Sighting<GlonassBiases>[];
  readonly texts: readonly Sighting<StationText>[];
  readonly observed: readonly ObservedConstellation[];
  readonly messages: readonly MessageCount[];
}

/** Facts of a whole capture. Times are GPS seconds, counted on from the week in which the capture begins. */
export interface Capture {
  readonly bytes: number;
  readonly frames: number;
  readonly strayBytes: number;
  readonly damagedFrames: number;
  readonly malformed: number;
  readonly stations: readonly CapturedStation[];
  /** Messages that name no station, ephemerides above all. */
  readonly stationless: readonly MessageCount[];
  readonly begin?: number;
  readonly end?: number;
  /** GPS time less UTC, an assumption: it puts the GLONASS epochs beside the others. */
  readonly leapSeconds: number;
  readonly averageBytesPerSecond?: number;
  readonly fullestSecond?: { readonly time: number; readonly bytes: number };
  readonly problems: readonly EvidenceProblem[];
}

export interface CaptureReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => Capture;
}

/** Reads a capture chunk by chunk; what it keeps does not grow with the length of the capture. */
export function captureReader(leapSeconds = 18): CaptureReader {
  const problems = problemList();
  const stations = new Map<number, StationNotes>();
  const stationless = new Map<number, CountNotes>();
  const clock = streamClock(leapSeconds, problems.add);
  let bytes = 0;
  let frames = 0;
  let strayBytes = 0;
  let damagedFrames = 0;
  let malformed = 0;

  const takeFrame = (frame: Frame) => {
    frames += 1;
    const message = readMessage(frame.payload);
    if (message.kind === 'observations') clock.set(message.epoch, frame.offset);
    clock.spend(frame.length);
    const station = stationOf(message);
    if (message.kind === 'malformed') {
      malformed += 1;
      problems.add({ sentence: message.sentence, offset: frame.offset });
    }
    if (station === undefined) {
      note(countOf(stationless, message.number), message, frame, clock.now());
      return;
    }
    const notes = stations.get(station) ?? stationNotes();
    if (stations.size === mostStations && !stations.has(station)) {
      problems.add({
        sentence: `Station ${station} is left out: there are too many stations.`,
        offset: frame.offset,
      });
      return;
    }
    stations.set(station, notes);
    note(countOf(notes.messages, message.number), message, frame, clock.now());
    learn(notes, message, momentOf(frame, clock.now()));
  };
  const takeStray = (stray: Stray) => {
    strayBytes += stray.length;
    if (stray.damaged) damagedFrames += 1;
    // Streams stored with a line feed after each burst are no trouble to anyone.
    if (stray.length <= 2) return;
    const what = stray.damaged ? 'look like a damaged message' : 'belong to no message';
    problems.add({ sentence: `${stray.length} bytes ${what}.`, offset: stray.offset });
  };
  const reader = frameReader(takeFrame, takeStray);

  return {
    push(chunk) {
      bytes += chunk.length;
      reader.push(chunk);
    },
    finish() {
      reader.finish();
      if (frames === 0) {
        problems.add({
          sentence: bytes === 0 ? 'The file is empty.' : 'There is no RTCM 3 message in this file.',
        });
      }
      const facts = [...stations].map(([station, notes]) => capturedStation(station, notes));
      for (const station of facts) for (const sentence of quarrels(station)) problems.add({ sentence });
      return {
        ...{ bytes, frames, strayBytes, damagedFrames, malformed, leapSeconds },
        stations: facts,
        stationless: [...stationless].map(([number, notes]) => messageCount(number, notes)),
        ...clock.facts(),
        problems: problems.listed(),
      };
    },
  };
}

/** Two positions under one number, one after the other or in turn. */
function quarrels({ station, positions }: CapturedStation): readonly string[] {
  const [first, second] = positions;
  if (!first || !second) return [];
  const apart = distanceBetween(first.value.position, second.value.position).toFixed(4);
  const inTurn = positions.some((one) =>
    positions.some(
      (other) =>
        one !== other && one.first.offset < other.first.offset && other.first.offset < one.last.offset,
    ),
  );
  return [
    inTurn
      ? `Station ${station} broadcasts ${positions.length} positions in turn, ${apart} m apart: two bases may share this number.`
      : `Station ${station} broadcast ${positions.length} positions one after the other, the first two ${apart} m apart: the base was moved or keyed anew.`,
  ];
}

function distanceBetween(first: Geocentric, second: Geocentric) {
  return Math.hypot(first.x - second.x, first.y - second.y, first.z - second.z);
}

interface CountNotes {
  count: number;
  bytes: number;
  largest: number;
  readonly rhythm: Rhythm;
  /** The message's own clock where it has one, else the stream's; milliseconds. */
  last?: { readonly reading: number; readonly time: number };
}

interface ObservedNotes {
  readonly numbers: Set<number>;
  readonly satellites: Set<string>;
  readonly signals: Set<string>;
  epochs: number;
  fewest: number;
  most: number;
  /** The epoch that is being gathered, message by message. */
  epoch?: number;
  readonly present: Set<string>;
}

interface StationNotes {
  readonly positions: Sightings<BroadcastPosition>;
  readonly equipment: Sightings<Equipment>;
  readonly biases: Sightings<GlonassBiases>;
  readonly texts: Sightings<StationText>;
  readonly observed: Map<Constellation, ObservedNotes>;
  readonly messages: Map<number, CountNotes>;
}

function stationNotes(): StationNotes {
  return {
    positions: sightings(({ position: { x, y, z }, antennaHeight }) =>
      [x, y, z, antennaHeight ?? '-'].join(),
    ),
    equipment: sightings((value) => JSON.stringify(value)),
    biases: sightings((value) => JSON.stringify(value)),
    texts: sightings((value) => value.text),
    observed: new Map(),
    messages: new Map(),
  };
}

function stationOf(message: Message): number | undefined {
  return message.kind === 'malformed' ? undefined : message.station;
}

function momentOf(frame: Frame, time: number | undefined): Moment {
  return time === undefined ? { offset: frame.offset } : { offset: frame.offset, time: time / 1000 };
}

function learn(notes: StationNotes, message: Message, moment: Moment) {
  if (message.kind === 'position') notes.positions.see(broadcastPosition(message), moment);
  else if (message.kind === 'equipment') notes.equipment.see(message, moment);
  else if (message.kind === 'biases') notes.biases.see(message, moment);
  else if (message.kind === 'text') notes.texts.see(message, moment);
  else if (message.kind === 'observations') observe(notes.observed, message);
}

function broadcastPosition({
  position,
  antennaHeight,
  frameYear,
  virtual,
}: StationPosition): BroadcastPosition {
  const common = { position, frameYear, virtual };
  return antennaHeight === undefined ? common : { ...common, antennaHeight };
}

function countOf(counts: Map<number, CountNotes>, number: number): CountNotes {
  const known = counts.get(number);
  if (known) return known;
  const fresh: CountNotes = { count: 0, bytes: 0, largest: 0, rhythm: rhythm() };
  counts.set(number, fresh);
  return fresh;
}

/** Counts a message. A second one of the same epoch belongs to the same sending. */
function note(notes: CountNotes, message: Message, frame: Frame, now: number | undefined) {
  notes.count += 1;
  notes.bytes += frame.length;
  notes.largest = Math.max(notes.largest, frame.length);
  if (now === undefined) return;
  const epoch = message.kind === 'observations' ? message.epoch : undefined;
  const reading = epoch?.milliseconds ?? now;
  if (notes.last) {
    const passed = epoch ? forward(reading - notes.last.reading, epoch.period) : reading - notes.last.reading;
    if (passed > 0) notes.rhythm.beat(passed, notes.last.time / 1000, frame.offset);
    if (passed === 0) return;
  }
  notes.last = { reading, time: now };
}

/** A difference of two readings of a clock that starts again after `period`; negative where it went back. */
function forward(difference: number, period: number) {
  const wrapped = ((difference % period) + period) % period;
  return wrapped > period / 2 ? wrapped - period : wrapped;
}

function observe(observed: Map<Constellation, ObservedNotes>, message: Observations) {
  const notes = observed.get(message.constellation) ?? {
    ...{ numbers: new Set<number>(), satellites: new Set<string>(), signals: new Set<string>() },
    ...{ epochs: 0, fewest: Infinity, most: 0, present: new Set<string>() },
  };
  observed.set(message.constellation, notes);
  notes.numbers.add(message.number);
  if (notes.epoch !== message.epoch.milliseconds) {
    closeEpoch(notes);
    notes.epoch = message.epoch.milliseconds;
  }
  for (const satellite of message.satellites) {
    notes.satellites.add(satellite);
    notes.present.add(satellite);
  }
  for (const signal of message.signals) notes.signals.add(signal);
}

function closeEpoch(notes: ObservedNotes) {
  if (notes.epoch === undefined) return;
  notes.epochs += 1;
  notes.fewest = Math.min(notes.fewest, notes.present.size);
  notes.most = Math.max(notes.most, notes.present.size);
  notes.present.clear();
}

function capturedStation(station: number, notes: StationNotes): CapturedStation {
  return {
    station,
    positions: withHeights(notes.positions.all()),
    equipment: notes.equipment.all(),
    biases: notes.biases.all(),
    texts: notes.texts.all(),
    observed: [...notes.observed].map(([constellation, seen]) => {
      closeEpoch(seen);
      return {
        constellation,
        numbers: [...seen.numbers].sort((one, other) => one - other),
        satellites: [...seen.satellites].sort(),
        signals: [...seen.signals].sort(),
        epochs: seen.epochs,
        fewestSatellites: seen.fewest,
        mostSatellites: seen.most,
      };
    }),
    messages: [...notes.messages].map(([number, count]) => messageCount(number, count)),
  };
}

/** A base that sends both 1005 and 1006 says the same place twice: one sighting, with the height. */
function withHeights(
  positions: readonly Sighting<BroadcastPosition>[],
): readonly Sighting<BroadcastPosition>[] {
  return positions.flatMap((bare) => {
    if (bare.value.antennaHeight !== undefined) {
      const twin = positions.find((other) => isBareTwin(other, bare));
      return [twin ? merged(bare, twin) : bare];
    }
    return positions.some((other) => isBareTwin(bare, other)) ? [] : [bare];
  });
}

function isBareTwin(bare: Sighting<BroadcastPosition>, full: Sighting<BroadcastPosition>) {
  return (
    bare.value.antennaHeight === undefined &&
    full.value.antennaHeight !== undefined &&
    distanceBetween(bare.value.position, full.value.position) === 0
  );
}

function merged<Value>(one: Sighting<Value>, other: Sighting<Value>): Sighting<Value> {
  return {
    value: one.value,
    count: one.count + other.count,
    first: one.first.offset < other.first.offset ? one.first : other.first,
    last: one.last.offset > other.last.offset ? one.last : other.last,
  };
}

function messageCount(number: number, notes: CountNotes): MessageCount {
  const { count, bytes, largest } = notes;
  const interval = notes.rhythm.interval();
  const common = { number, count, bytes, largest, gaps: notes.rhythm.gaps() };
  return interval === undefined ? common : { ...common, interval };
}

/** One clock for the whole stream, in milliseconds of GPS time, driven by the epochs in it. */
function streamClock(leapSeconds: number, addProblem: (problem: EvidenceProblem) => void) {
  let now: number | undefined;
  let begin: number | undefined;
  let beforeClock = 0;
  let spent = 0;
  let inSecond = 0;
  let second: number | undefined;
  let fullest = { time: 0, bytes: 0 };

  const closeSecond = () => {
    if (second !== undefined && inSecond > fullest.bytes) fullest = { time: second, bytes: inSecond };
    inSecond = 0;
  };
  return {
    now: () => now,
    set(epoch: MessageEpoch, offset: number) {
      const reading = epoch.milliseconds + epoch.toGps + (epoch.followsUtc ? 1000 * leapSeconds : 0);
      if (now === undefined) {
        now = reading;
        begin = reading;
        return;
      }
      const step = forward(reading - now, epoch.period);
      if (step < -jumpBack) {
        const back = (-step / 1000).toFixed(0);
        addProblem({
          sentence: `The clock of the stream jumps back by ${back} s: captures may have been joined.`,
          offset,
        });
      }
      now += step;
      begin = Math.min(begin ?? now, now);
    },
    /** Books the bytes of a message to the current second. */
    spend(length: number) {
      if (now === undefined) {
        beforeClock += length;
        return;
      }
      spent += length;
      const current = Math.floor(now / 1000);
      if (second === undefined || current > second) {
        closeSecond();
        second = current;
      }
      inSecond += length;
    },
    facts() {
      closeSecond();
      if (now === undefined || begin === undefined) return {};
      const duration = (now - begin) / 1000;
      const span = { begin: begin / 1000, end: now / 1000, fullestSecond: fullest };
      // The last epoch lasts as long as the others: a stream of n epochs a second apart covers n seconds.
      return duration < 1
        ? span
        : { ...span, averageBytesPerSecond: (spent + beforeClock) / (Math.floor(duration) + 1) };
    },
  };
}

const mostStations = 64;

/** Messages of one burst may be out of order by the leap second assumed wrongly; more is a jump. */
const jumpBack = 30_000;
