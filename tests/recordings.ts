/**
 * Recordings of an invented day on the breakwater, made without the program's own geodesy: what a base broadcast, what a
 * rover's antenna logged, and the header of a raw file. `npm run record` writes them to samples/recordings.
 */
import { gzipSync } from 'fflate';
import {
  biasMessage,
  descriptionMessage,
  framed,
  joinedBytes,
  positionMessage,
  signalMessageBytes,
} from '../server/evidence/rtcm3/encoder.test-support.ts';
import { transverseMercator } from './simulation/transverse-mercator.ts';
import { GRS80, toGeocentric, type Geodetic } from './simulation/world.ts';
import { seededRandom } from './simulation/random.ts';
import { record } from './simulation/raw/observe.ts';

/** ETRS89 / Portugal TM06, EPSG:3763 (EPSG registry). */
const GRID = transverseMercator('EPSG:3763', {
  ellipsoid: GRS80,
  originLatitude: 39 + 40 / 60 + 5.73 / 3600,
  centralMeridian: -(8 + 7 / 60 + 59.19 / 3600),
  scale: 1,
  falseEasting: 0,
  falseNorthing: 0,
});

/** Seconds since the Sunday before 2026-05-19, a Tuesday, in UTC. */
const TUESDAY = 2 * 86_400;
const LEAP_SECONDS = 18;

export interface Broadcast {
  readonly station: number;
  /** The antenna reference point. */
  readonly arp: Geodetic;
  /** Metres above the mark; null for a 1005. */
  readonly antennaHeight: number | null;
  readonly antenna: string;
}

/** What the receiver of the breakwater sample was told, and so broadcasts: 41°09'08.18286"N, 8°37'26.27078"W, 61.201 m and 1.533 m. */
export const KEYED: Broadcast = {
  station: 12,
  arp: {
    latitude: 41 + 9 / 60 + 8.18286 / 3600,
    longitude: -(8 + 37 / 60 + 26.27078 / 3600),
    height: 61.201 + 1.533,
  },
  antennaHeight: 1.533,
  antenna: 'TRB-CHOKE       NONE',
};

/** The height above sea level keyed for the ellipsoidal one: 54.917 m too low. */
export const SEA_LEVEL: Broadcast = { ...KEYED, arp: { ...KEYED.arp, height: 6.284 + 1.533 } };

/** One second of a stream: GPS every second, GLONASS every other, the rest every ten. */
export function second(broadcast: Broadcast, utc: number, dayOfWeek = TUESDAY): Uint8Array {
  const { station, arp, antennaHeight, antenna } = broadcast;
  const gps = Math.round((dayOfWeek + utc + LEAP_SECONDS) * 1000);
  const glonass = Math.round((dayOfWeek + utc + 3 * 3600) * 1000);
  const parts: Uint8Array[] = [];
  if (utc % 10 === 0) {
    const { x, y, z } = toGeocentric(arp, GRS80);
    const tenths = (length: number) => Math.round(length * 10_000);
    parts.push(
      positionMessage({
        station,
        x: tenths(x),
        y: tenths(y),
        z: tenths(z),
        ...(antennaHeight === null ? {} : { height: tenths(antennaHeight) }),
      }),
      descriptionMessage(station, 0, [antenna, '0413', 'TRB-R1', '2.1', '2207']),
      biasMessage(station, true, [0, undefined, 0, undefined]),
    );
  }
  const signals = [2, 15];
  parts.push(
    signalMessageBytes({
      number: 1077,
      station,
      epoch: gps,
      satellites: [2, 5, 7, 9, 13, 16, 20, 26, 29, 30],
      signals,
    }),
  );
  if (utc % 2 === 0)
    parts.push(
      signalMessageBytes({
        number: 1087,
        station,
        epoch: Math.floor(glonass / 86_400_000) * 2 ** 27 + (glonass % 86_400_000),
        satellites: [1, 2, 8, 9, 17, 23, 24],
        signals: [2, 8],
      }),
    );
  return joinedBytes(...parts.map(framed));
}

/** @param from seconds of the UTC day */
export const stream = (broadcast: Broadcast, from: number, length: number, dayOfWeek = TUESDAY): Uint8Array =>
  joinedBytes(...Array.from({ length }, (_, index) => second(broadcast, from + index, dayOfWeek)));

/** 07:52 by the job's clock. */
export const MORNING = 6 * 3600 + 52 * 60;

export interface LoggedEpoch {
  readonly antenna: Geodetic;
  /** The receiver's geoid above the ellipsoid. */
  readonly separation: number;
  /** 4 fixed, 5 float. */
  readonly quality: 4 | 5;
  readonly age?: number;
}

/** A sentence with its checksum. */
export function sentence(body: string): string {
  let sum = 0;
  for (const character of body) sum ^= character.charCodeAt(0);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
}

/** RMC for the date, then GGA. */
export function logged(utc: number, { antenna, separation, quality, age = 1.2 }: LoggedEpoch): string {
  const pad = (number: number, width: number) => String(Math.floor(number)).padStart(width, '0');
  const time = `${pad(utc / 3600, 2)}${pad((utc % 3600) / 60, 2)}${pad(utc % 60, 2)}.00`;
  const angle = (degrees: number, width: number) => {
    const size = Math.abs(degrees);
    const minutes = (size - Math.floor(size)) * 60;
    return pad(size, width) + minutes.toFixed(7).padStart(10, '0');
  };
  const place = [
    angle(antenna.latitude, 2),
    antenna.latitude < 0 ? 'S' : 'N',
    angle(antenna.longitude, 3),
    antenna.longitude < 0 ? 'W' : 'E',
  ].join(',');
  const altitude = (antenna.height - separation).toFixed(3);
  return (
    sentence(`GNRMC,${time},A,${place},0.0,,190526,,,R`) +
    sentence(
      `GNGGA,${time},${place},${quality},16,0.7,${altitude},M,${separation.toFixed(3)},M,${age.toFixed(1)},0012`,
    )
  );
}

/** PM-09 of the samples, on the ellipsoid. */
export const PM_09: Geodetic = {
  ...GRID.inverse({ east: -40311.882, north: 165377.404 }),
  height: 5.196 + 54.915,
};

/** Where the antenna is when the pole stands on PM-09, off by some millimetres that come back to the same mean. */
export function onPole(
  index: number,
  pole: number,
  off: { east: number; north: number; up: number },
): Geodetic {
  const wave = Math.sin((2 * Math.PI * index) / 20);
  const perDegree = 111_000;
  return {
    latitude: PM_09.latitude + (off.north + 0.003 * wave) / perDegree,
    longitude:
      PM_09.longitude + (off.east - 0.004 * wave) / (perDegree * Math.cos((PM_09.latitude * Math.PI) / 180)),
    height: PM_09.height + pole + off.up + 0.006 * wave,
  };
}

/** 08:25 by the job's clock. */
const OPENING = 7 * 3600 + 25 * 60;

export const log = (epochs: readonly LoggedEpoch[], from = OPENING): Uint8Array =>
  new TextEncoder().encode(epochs.map((epoch, index) => logged(from + index, epoch)).join(''));

const occupied = (length: number, quality: (index: number) => 4 | 5): LoggedEpoch[] =>
  Array.from({ length }, (_, index) => ({
    antenna: onPole(index, 2, { east: 0.005, north: -0.004, up: 0.006 }),
    separation: 54.83,
    quality: quality(index),
  }));

/** Columns of 60 and a label. */
function rinexHeader(antennaHeight: number): Uint8Array {
  const { x, y, z } = toGeocentric({ ...KEYED.arp, height: 61.2 }, GRS80);
  const column = (value: number) => value.toFixed(4).padStart(14);
  const lines: [string, string][] = [
    ['     3.05           OBSERVATION DATA    M', 'RINEX VERSION / TYPE'],
    ['PM-14', 'MARKER NAME'],
    ['0413                TRB-CHOKE       NONE', 'ANT # / TYPE'],
    [column(x) + column(y) + column(z), 'APPROX POSITION XYZ'],
    [column(antennaHeight) + column(0) + column(0), 'ANTENNA: DELTA H/E/N'],
    ['', 'END OF HEADER'],
  ];
  return new TextEncoder().encode(lines.map(([said, label]) => `${said.padEnd(60)}${label}\n`).join(''));
}

/** By the names of their files. */
export function recordings(): Readonly<Record<string, Uint8Array>> {
  const neighbour: Broadcast = {
    ...KEYED,
    station: 7,
    arp: { ...KEYED.arp, latitude: KEYED.arp.latitude + 0.02 },
  };
  const twin: Broadcast = { ...neighbour, station: 12 };
  const inTurn = Array.from({ length: 40 }, (_, index) =>
    second(index % 20 < 10 ? KEYED : twin, MORNING + index),
  );
  const knocked = record(seededRandom('knocked'), {
    ...{ interval: 1, epochs: 60, systems: 'GE' },
    knock: { at: 35, by: [0.03, 0, 0] },
  });
  const packed = (text: string) => gzipSync(new TextEncoder().encode(text), { mtime: 0 });
  return {
    'knocked.26o.gz': packed(knocked.observations),
    'knocked.26n.gz': packed(knocked.navigation),
    'base.rtcm3': stream(KEYED, MORNING, 31),
    'sea-level.rtcm3': stream(SEA_LEVEL, MORNING, 31),
    'neighbour.rtcm3': joinedBytes(stream(KEYED, MORNING, 20), stream(neighbour, MORNING + 20, 11)),
    'twins.rtcm3': joinedBytes(...inTurn),
    'other-antenna.rtcm3': stream({ ...KEYED, antenna: 'TRB-PATCH       NONE' }, MORNING, 31),
    'monday.rtcm3': stream(KEYED, MORNING, 31, 86_400),
    'rover.nmea': log(occupied(180, () => 4)),
    'float.nmea': log(occupied(180, (index) => (index < 60 ? 5 : 4))),
    'base.26o': rinexHeader(1.533),
    'no-extension.26o': rinexHeader(1.283),
  };
}
