/** The heads of observation messages: when, which satellites, which signals (RTCM 10403.3, §3.5.1, §3.5.4 and §3.5.16). */
import type { Constellation } from '../../link/message-size.ts';
import {
  legacyObservations,
  mostSignalCells,
  signalMessage,
  signalMessageBits,
} from '../../link/message-size.ts';
import type { BitReader } from './bits.ts';
import { bitReader } from './bits.ts';
import type { Malformed } from './message.ts';
import { legacyGpsSatelliteName, satelliteName, signalName } from './satellites.ts';

/** A message's own clock reading. GLONASS counts Moscow days; a legacy GLONASS message does not say which day. */
export interface MessageEpoch {
  readonly milliseconds: number;
  /** After which it starts again: a week or a day. */
  readonly period: number;
  /** What to add for GPS time of the week or day, leap seconds aside. */
  readonly toGps: number;
  /** The reading follows UTC, so that the leap seconds have to be added too. */
  readonly followsUtc: boolean;
}

export interface Observations {
  readonly kind: 'observations';
  readonly number: number;
  readonly station: number;
  readonly constellation: Constellation;
  readonly epoch: MessageEpoch;
  /** More messages of the same epoch follow. */
  readonly more: boolean;
  readonly satellites: readonly string[];
  /** Legacy messages do not name theirs. */
  readonly signals: readonly string[];
  /** Signals of satellites that are filled. */
  readonly cells: number;
}

/** Reads the head of any observation message, legacy or multiple signal. */
export function observations(number: number, payload: Uint8Array): Observations | Malformed {
  return signalMessage(number) ? signalObservations(number, payload) : legacyHead(number, payload);
}

function signalObservations(number: number, payload: Uint8Array): Observations | Malformed {
  const signal = signalMessage(number);
  if (!signal || payload.length * 8 < 169) return tooShort(number);
  const { constellation, kind } = signal;
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  const epoch =
    constellation === 'GLONASS' ? moscowEpoch(field) : weekEpoch(field.unsigned(30), constellation);
  if (!isPossible(epoch)) return impossible(number);
  const more = field.unsigned(1) === 1;
  field.skip(18);
  const satellites = mask(field, 64);
  const signals = mask(field, 32);
  const places = satellites.length * signals.length;
  if (places > mostSignalCells) {
    return {
      kind: 'malformed',
      number,
      sentence: `A ${number} claims ${satellites.length} satellites on ${signals.length} signals, more than a message can hold; it is not read.`,
    };
  }
  const cells = mask(field, Math.min(places, field.left())).length;
  if (payload.length * 8 < signalMessageBits(kind, satellites.length, signals.length, cells))
    return tooShort(number);
  return {
    kind: 'observations',
    number,
    station,
    constellation,
    epoch,
    more,
    satellites: satellites.map((index) => satelliteName(constellation, index)),
    signals: signals.map((index) => signalName(constellation, index)),
    cells,
  };
}

function legacyHead(number: number, payload: Uint8Array): Observations | Malformed {
  const legacy = legacyObservations[number];
  if (!legacy || payload.length * 8 < legacy.header) return tooShort(number);
  const { constellation, signals, header, satellite } = legacy;
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  const epoch =
    constellation === 'GPS'
      ? weekEpoch(field.unsigned(30), 'GPS')
      : { milliseconds: field.unsigned(27), period: day, toGps: -moscowAhead, followsUtc: true };
  if (!isPossible(epoch)) return impossible(number);
  const more = field.unsigned(1) === 1;
  const count = field.unsigned(5);
  field.skip(4);
  if (payload.length * 8 < header + count * satellite) return tooShort(number);
  const name =
    constellation === 'GPS' ? legacyGpsSatelliteName : (index: number) => satelliteName('GLONASS', index);
  const satellites = Array.from({ length: count }, () => {
    const index = field.unsigned(6);
    field.skip(satellite - 6);
    return name(index);
  });
  const cells = count * signals;
  return {
    kind: 'observations',
    number,
    station,
    constellation,
    epoch,
    more,
    satellites,
    signals: [],
    cells,
  };
}

const day = 86_400_000;
const week = 7 * day;
const moscowAhead = 3 * 3_600_000;
/** BeiDou time was set on UTC in 2006, GPS time in 1980; 14 leap seconds lie between. */
const beidouBehind = 14_000;

function weekEpoch(milliseconds: number, constellation: Constellation): MessageEpoch {
  const toGps = constellation === 'BeiDou' ? beidouBehind : 0;
  return { milliseconds, period: week, toGps, followsUtc: false };
}

function moscowEpoch(field: BitReader): MessageEpoch {
  const weekday = field.unsigned(3);
  const milliseconds = field.unsigned(27);
  const common = { toGps: -moscowAhead, followsUtc: true };
  return weekday === 7
    ? { milliseconds, period: day, ...common }
    : {
        milliseconds: milliseconds < day + 1000 ? weekday * day + milliseconds : Infinity,
        period: week,
        ...common,
      };
}

/** GLONASS days may be a leap second longer; whatever is beyond that is no time. */
function isPossible({ milliseconds, period, followsUtc }: MessageEpoch) {
  return milliseconds < period + (followsUtc ? 1000 : 0);
}

function impossible(number: number): Malformed {
  return { kind: 'malformed', number, sentence: `A ${number} has an impossible time; it is not read.` };
}

/** Places of the ones in a mask, from 1; taken 32 bits at a time, since every observation message has three masks. */
function mask(field: BitReader, length: number): readonly number[] {
  const places: number[] = [];
  for (let before = 0; before < length; before += 32) {
    const count = Math.min(32, length - before);
    const word = field.unsigned(count);
    for (let index = 0; index < count; index += 1) {
      if ((word >>> (count - 1 - index)) & 1) places.push(before + index + 1);
    }
  }
  return places;
}

function tooShort(number: number): Malformed {
  return {
    kind: 'malformed',
    number,
    sentence: `A ${number} ends before its observations do; it is not read.`,
  };
}
