/**
 * The header of a RINEX observation file, versions 2, 3 and 4: what the receiver was told of antenna and place.
 *
 * Source: RINEX 2.11, 3.05 and 4.00, tables of the observation header. `ANTENNA: DELTA H/E/N` is the height of the
 * antenna reference point above the marker, then its offsets to east and north.
 */
import type { Geocentric, Metres, Seconds } from '../quantities/brands.ts';
import { metres, seconds } from '../quantities/brands.ts';
import { labelOf, numberAt, numbersAt, textAt, timeAt } from './columns.ts';
import { lineReader } from './lines.ts';
import type { EvidenceProblem } from './problems.ts';
import { problemList } from './problems.ts';

export interface RinexHeader {
  readonly version?: number;
  readonly markerName?: string;
  readonly markerNumber?: string;
  readonly receiver?: { readonly serial: string; readonly type: string; readonly firmware: string };
  /** The type has 20 characters, radome included; blanks at its end are left out. */
  readonly antenna?: { readonly serial: string; readonly type: string };
  readonly antennaDelta?: { readonly height: Metres; readonly east: Metres; readonly north: Metres };
  readonly approximatePosition?: Geocentric;
  readonly interval?: Seconds;
  /** Seconds since 1970 of the time scale that is named; GPS where the file names none. */
  readonly firstObservation?: { readonly time: number; readonly scale: string };
  readonly problems: readonly EvidenceProblem[];
}

/** Bytes of a file's beginning that are certain to hold the header of any sane file. */
export const rinexHeaderBytes = 1_048_576;

/** Reads the header from the beginning of a file; bytes beyond the header, or beyond the first megabyte, do not matter. */
export function readRinexHeader(fileBeginning: Uint8Array): RinexHeader {
  const problems = problemList();
  const seen = new Map<string, string>();
  let facts: Mutable<Omit<RinexHeader, 'problems'>> = {};
  let ended = false;
  let foreign = false;
  const reader = lineReader(
    'latin1',
    (line, number) => {
      if (ended || foreign) return;
      const label = labelOf(line);
      if (number === 1 && !firstLabels.has(label)) {
        foreign = true;
        problems.add({ sentence: 'This is not a RINEX file: its first line has no version.', line: 1 });
        return;
      }
      if (label === 'END OF HEADER') ended = true;
      const read = lineReaders[label];
      if (!read) return;
      const before = seen.get(label);
      if (before !== undefined && before !== line.slice(0, 60)) {
        problems.add({
          sentence: `${label} is stated a second time, and differently; the first is used.`,
          line: number,
        });
      }
      if (before !== undefined) return;
      seen.set(label, line.slice(0, 60));
      const answer = read(line);
      if (typeof answer === 'string') problems.add({ sentence: answer, line: number });
      else facts = { ...facts, ...answer };
    },
    1024,
  );
  reader.push(fileBeginning.subarray(0, rinexHeaderBytes));
  reader.finish();
  if (fileBeginning.length === 0) problems.add({ sentence: 'The file is empty.' });
  else if (!ended && !foreign)
    problems.add({ sentence: 'The header has no end; the file is cut short or not a RINEX file.' });
  return { ...facts, problems: problems.listed() };
}

type Mutable<Facts> = { -readonly [Key in keyof Facts]: Facts[Key] };

/** A file may begin with the two lines of its compression. */
const firstLabels = new Set(['RINEX VERSION / TYPE', 'CRINEX VERS   / TYPE']);

/** What each line says, or a sentence of what is wrong with it. */
const lineReaders: Readonly<Record<string, (line: string) => Omit<RinexHeader, 'problems'> | string>> = {
  'RINEX VERSION / TYPE': (line) => {
    const version = numberAt(line, 0, 9);
    const type = line.charAt(20).toUpperCase();
    if (version === undefined || version < 2 || version >= 5) {
      return `RINEX version "${textAt(line, 0, 9)}" is not known here; versions 2, 3 and 4 are.`;
    }
    return type === 'O' ? { version } : 'This RINEX file holds no observations.';
  },
  'MARKER NAME': (line) => ({ markerName: textAt(line, 0, 60) }),
  'MARKER NUMBER': (line) => ({ markerNumber: textAt(line, 0, 20) }),
  'REC # / TYPE / VERS': (line) => ({
    receiver: { serial: textAt(line, 0, 20), type: textAt(line, 20, 20), firmware: textAt(line, 40, 20) },
  }),
  'ANT # / TYPE': (line) => ({ antenna: { serial: textAt(line, 0, 20), type: textAt(line, 20, 20) } }),
  'ANTENNA: DELTA H/E/N': (line) => {
    const [height, east, north] = numbersAt(line, 3, 14) ?? [];
    return height === undefined || east === undefined || north === undefined
      ? 'The antenna height and offsets are not three numbers in columns of 14.'
      : { antennaDelta: { height: metres(height), east: metres(east), north: metres(north) } };
  },
  'APPROX POSITION XYZ': (line) => {
    const [x, y, z] = numbersAt(line, 3, 14) ?? [];
    if (x === undefined || y === undefined || z === undefined) {
      return 'The approximate position is not three numbers in columns of 14.';
    }
    return x === 0 && y === 0 && z === 0
      ? 'The approximate position is zero, which stands for not known.'
      : { approximatePosition: { x: metres(x), y: metres(y), z: metres(z) } };
  },
  INTERVAL: (line) => {
    const interval = numberAt(line, 0, 10);
    return interval === undefined ? 'The interval is not a number.' : { interval: seconds(interval) };
  },
  'TIME OF FIRST OBS': (line) => {
    const time = timeAt(line);
    return time === undefined
      ? 'The time of the first observation is not a date and time.'
      : { firstObservation: { time, scale: textAt(line, 48, 3) || 'GPS' } };
  },
};
