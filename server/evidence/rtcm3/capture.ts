/** What a capture of an RTCM 3 stream holds: stations, positions, equipment, observations, rates, gaps and damage. */
import type { Constellation } from '../../link/message-size.ts';
import type { Geocentric, Metres } from '../../quantities/brands.ts';
import type { EvidenceProblem } from '../problems.ts';
import { problemList } from '../problems.ts';
import type { GlonassBiases } from './biases.ts';
import type { Equipment } from './equipment.ts';
import type { Frame, Stray } from './frames.ts';
import { frameReader } from './frames.ts';
import type { Message } from './message.ts';
import { readMessage } from './message.ts';
import type { CountNotes, MessageCount } from './message-count.ts';
import { countOf, messageCount, note } from './message-count.ts';
import type { ObservedConstellation, ObservedNotes } from './observed.ts';
import { observe, observedConstellation } from './observed.ts';
import type { Moment, Sighting, Sightings } from './sightings.ts';
import { sightings } from './sightings.ts';
import type { StreamSpan } from './stream-clock.ts';
import { streamClock } from './stream-clock.ts';
import type { StationPosition } from './station-position.ts';
import type { StationText } from './text.ts';

/** A position as it was broadcast; height above the mark where a 1006 gave it. */
export interface BroadcastPosition {
  readonly position: Geocentric;
  readonly antennaHeight?: Metres;
  readonly frameYear: number;
  readonly virtual: boolean;
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
export interface Capture extends StreamSpan {
  readonly bytes: number;
  readonly frames: number;
  readonly strayBytes: number;
  readonly damagedFrames: number;
  readonly malformed: number;
  readonly stations: readonly CapturedStation[];
  /** Messages that name no station, ephemerides above all. */
  readonly stationless: readonly MessageCount[];
  /** GPS time less UTC, an assumption: it puts the GLONASS epochs beside the others. */
  readonly leapSeconds: number;
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
        ...clock.span(),
        problems: problems.listed(),
      };
    },
  };
}

/** Two positions under one number, one after the other or in turn. */
function quarrels({ station, positions }: CapturedStation): readonly string[] {
  const [first, second] = positions;
  if (!first || !second) return [];
  const distance = distanceBetween(first.value.position, second.value.position);
  const apart = distance > 0 ? `${distance.toFixed(4)} m apart` : 'the same but for the antenna height';
  const inTurn = positions.some((one) =>
    positions.some(
      (other) =>
        one !== other && one.first.offset < other.first.offset && other.first.offset < one.last.offset,
    ),
  );
  return [
    inTurn
      ? `Station ${station} broadcasts ${positions.length} positions in turn, the first two ${apart}: two bases may share this number.`
      : `Station ${station} broadcast ${positions.length} positions one after the other, the first two ${apart}: the base was moved or keyed anew.`,
  ];
}

function distanceBetween(first: Geocentric, second: Geocentric) {
  return Math.hypot(first.x - second.x, first.y - second.y, first.z - second.z);
}

interface StationNotes {
  readonly positions: Sightings<BroadcastPosition>;
  /** What the last 1006 said, which holds for a 1005 of that place, too. */
  withHeight?: BroadcastPosition;
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
  if (message.kind === 'position') learnPosition(notes, broadcastPosition(message), moment);
  else if (message.kind === 'equipment') notes.equipment.see(message, moment);
  else if (message.kind === 'biases') notes.biases.see(message, moment);
  else if (message.kind === 'text') notes.texts.see(message, moment);
  else if (message.kind === 'observations') observe(notes.observed, message);
}

function learnPosition(notes: StationNotes, broadcast: BroadcastPosition, moment: Moment) {
  const { withHeight: known } = notes;
  if (broadcast.antennaHeight !== undefined) notes.withHeight = broadcast;
  const isKnown =
    broadcast.antennaHeight === undefined &&
    known !== undefined &&
    distanceBetween(known.position, broadcast.position) === 0;
  notes.positions.see(isKnown ? known : broadcast, moment);
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

function capturedStation(station: number, notes: StationNotes): CapturedStation {
  return {
    station,
    positions: withHeights(notes.positions.all()),
    equipment: notes.equipment.all(),
    biases: notes.biases.all(),
    texts: notes.texts.all(),
    observed: [...notes.observed].map(([constellation, seen]) => observedConstellation(constellation, seen)),
    messages: [...notes.messages].map(([number, count]) => messageCount(number, count)),
  };
}

/** A base that sends both 1005 and 1006 says the same place twice: one sighting, with the first height told of it. */
function withHeights(
  positions: readonly Sighting<BroadcastPosition>[],
): readonly Sighting<BroadcastPosition>[] {
  const fullOf = (bare: Sighting<BroadcastPosition>) => positions.find((other) => isBareTwin(bare, other));
  return positions.flatMap((one) => {
    const bare = positions.find((other) => isBareTwin(other, one));
    if (bare) return [fullOf(bare) === one ? merged(one, bare) : one];
    return fullOf(one) ? [] : [one];
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

const mostStations = 64;
