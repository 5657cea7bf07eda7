/** What a base's raw observations say: their header beside the notes, and with ephemerides where the antenna stood and whether it moved. */
import { inflating } from '../../evidence/rinex/inflating.ts';
import { navigationReader, type NavigationFile } from '../../evidence/rinex/navigation-file.ts';
import { observationReader } from '../../evidence/rinex/observation-file.ts';
import { readRinexHeader, rinexHeaderBytes, type RinexHeader } from '../../evidence/rinex-header.ts';
import { routeBetween } from '../../geodesy/datums/route.ts';
import { geodeticOf } from '../../geodesy/geocentric.ts';
import { WGS84 } from '../../geodesy/ellipsoid.ts';
import { datumNamed } from '../../geodesy/registry/registry.ts';
import { topocentricBetween } from '../../geodesy/topocentric.ts';
import { metres, type Metres, type Topocentric } from '../../quantities/brands.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import type { Quoted } from '../../session/entries.ts';
import type { Stood, Testimony } from '../../witness/testimony.ts';
import { testimonyOf } from '../../witness/witness.ts';
import type { Frame } from '../positions/frame.ts';
import type { SetupValues } from './setup.ts';

export interface RawLogValues {
  readonly file: Quoted;
  /** Null where the file is not there, or no RINEX observation file. */
  readonly header: RinexHeader | null;
  /** What the observations say; null where there are no ephemerides. */
  readonly testimony: Testimony | null;
  /** Sentences of what is wrong with the ephemerides. */
  readonly navigation: readonly string[];
  /** From the antenna as the notes have it to where the observations place it. */
  readonly apart: Apart | null;
}

/** In the datum of the keyed values. */
export interface Apart extends Topocentric {
  readonly spatial: Metres;
  /** By how much the frame of the orbits lies off that datum on the day; null where no way between the two is known. */
  readonly frameShift: Metres | null;
}

export function rawLogValues(
  setup: Pick<SetupValues, 'arp'>,
  file: Quoted,
  bytes: Uint8Array | Refusal,
  ephemerides: Uint8Array | Refusal | null,
  frame: Frame,
): RawLogValues {
  const nothing = { file, header: null, testimony: null, navigation: [], apart: null };
  if (isRefusal(bytes)) return nothing;
  const read = headers.get(bytes) ?? readRinexHeader(headerBytes(bytes));
  headers.set(bytes, read);
  const header = read.version === undefined ? null : read;
  if (!header || !ephemerides) return { ...nothing, header };
  if (isRefusal(ephemerides)) return { ...nothing, header, navigation: [ephemerides.refused] };
  const { testimony, navigation } = heard(bytes, ephemerides);
  const sentences = navigation.problems.map(({ sentence }) => sentence);
  const apart = testimony.stood ? apartFrom(setup, testimony.stood, frame) : null;
  return { file, header, testimony, navigation: sentences, apart };
}
const headers = new WeakMap<Uint8Array, RinexHeader>();

/** The beginning of the file, expanded where it is packed. */
function headerBytes(bytes: Uint8Array): Uint8Array {
  if (bytes[0] !== 0x1f || bytes[1] !== 0x8b) return bytes.subarray(0, rinexHeaderBytes);
  const pieces: Uint8Array[] = [];
  const input = inflating(
    (piece) => pieces.push(piece.slice()),
    () => undefined,
  );
  input.push(bytes.subarray(0, 65_536));
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** GPS time is ahead of UTC by 18 s since 2017 (IERS Bulletin C 52). */
export const GPS_AHEAD = 18;

/** When the antenna was moved, in seconds since 1970 UTC. */
export const stepInstants = (values: RawLogValues | null): readonly number[] =>
  values?.testimony?.steps.map(({ from }) => from - GPS_AHEAD) ?? [];

interface Heard {
  readonly ephemerides: Uint8Array;
  readonly testimony: Testimony;
  readonly navigation: NavigationFile;
}
/** Kept with the bytes of the log, so that an edit of the notes does not read it again. */
const answers = new WeakMap<Uint8Array, Heard>();

function heard(bytes: Uint8Array, ephemerides: Uint8Array): Heard {
  const before = answers.get(bytes);
  if (before?.ephemerides === ephemerides) return before;
  const reader = navigationReader();
  reader.push(ephemerides);
  const navigation = reader.finish();
  const observations = observationReader();
  for (let at = 0; at < bytes.length; at += PIECE) observations.push(bytes.subarray(at, at + PIECE));
  const answer = { ephemerides, testimony: testimonyOf(observations.finish(), navigation), navigation };
  answers.set(bytes, answer);
  return answer;
}
const PIECE = 1 << 18;

/** The broadcast orbits are in WGS 84, which follows the ITRF to centimetres; ITRF2014 stands for it. */
const ORBIT_FRAME = 'ITRF2014';

function apartFrom({ arp }: Pick<SetupValues, 'arp'>, stood: Stood, frame: Frame): Apart | null {
  const from = datumNamed(ORBIT_FRAME);
  if (isHole(arp) || isHole(frame.keyed) || !from) return null;
  const noted = { x: metres(arp.x.value), y: metres(arp.y.value), z: metres(arp.z.value) };
  const origin = geodeticOf(WGS84, noted);
  const route = routeBetween(from, frame.keyed.datum, { at: origin, epoch: stood.epoch });
  const shifted = isRefusal(route) ? route : route.apply(stood.position);
  const place = isRefusal(shifted) ? stood.position : shifted;
  const difference = topocentricBetween(origin, noted, place);
  const by = topocentricBetween(origin, stood.position, place);
  const length = ({ east, north, up }: Topocentric) => metres(Math.hypot(east, north, up));
  return { ...difference, spatial: length(difference), frameShift: isRefusal(shifted) ? null : length(by) };
}
