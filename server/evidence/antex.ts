/**
 * Antenna calibrations in ANTEX 1.4: one antenna's phase-centre offsets, found in a file of any size.
 *
 * Source: ANTEX 1.4 (IGS, 2010). Offsets are in millimetres there; the mean phase centre is the antenna reference
 * point plus the offset. The patterns are passed over.
 */
import type { Metres } from '../quantities/brands.ts';
import { metres } from '../quantities/brands.ts';
import { nearest } from '../quantities/near.ts';
import { labelOf, numberAt, numbersAt, textAt, timeAt } from './columns.ts';
import { lineReader } from './lines.ts';
import type { EvidenceProblem } from './problems.ts';
import { problemList } from './problems.ts';

export type Calibration = 'absolute' | 'relative';

/** From the antenna reference point to the mean phase centre of one frequency. */
export interface PhaseCentreOffset {
  /** G01 for the first of GPS, say. */
  readonly frequency: string;
  readonly north: Metres;
  readonly east: Metres;
  readonly up: Metres;
}

export interface CalibratedAntenna {
  /** Name and radome in 20 characters. */
  readonly type: string;
  /** Empty where the calibration is that of the type. */
  readonly serial: string;
  readonly method: string;
  readonly agency: string;
  readonly date: string;
  /** Seconds since 1970, GPS time. */
  readonly validFrom?: number;
  readonly validUntil?: number;
  readonly offsets: readonly PhaseCentreOffset[];
}

export interface AntexFacts {
  readonly version?: number;
  readonly calibration?: Calibration;
  /** The antenna that relative calibrations refer to. */
  readonly referenceAntenna?: string;
  /** Receiver antennas of the type asked for: the type's own calibration first, then those of single antennas. */
  readonly found: readonly CalibratedAntenna[];
  /** Where none is found: the same antenna under other radomes, then types with nearly this name. */
  readonly nearTypes: readonly string[];
  /** Receiver antenna types in the file. */
  readonly types: number;
  readonly problems: readonly EvidenceProblem[];
}

export interface AntexReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => AntexFacts;
}

/** Looks for one antenna type in a calibration file, chunk by chunk; only that antenna's offsets are kept. */
export function antexReader(wantedType: string): AntexReader {
  const wanted = antennaType(wantedType);
  const problems = problemList();
  const types = new Set<string>();
  const found: CalibratedAntenna[] = [];
  let header: Pick<AntexFacts, 'version' | 'calibration' | 'referenceAntenna'> = {};
  let antenna: Draft | undefined;
  let frequency: string | undefined;

  const takeLine = (line: string, number: number) => {
    const label = labelOf(line);
    if (number === 1 && label !== 'ANTEX VERSION / SYST') {
      problems.add({ sentence: 'This is not an ANTEX file: its first line has no version.', line: 1 });
    } else if (label === 'ANTEX VERSION / SYST') {
      const version = numberAt(line, 0, 8);
      if (version !== undefined) header = { ...header, version };
    } else if (label === 'PCV TYPE / REFANT') {
      header = { ...header, ...calibrationIn(line) };
      if (!header.calibration)
        problems.add({ sentence: 'The calibration is neither absolute nor relative.', line: number });
    } else if (label === 'TYPE / SERIAL NO') {
      frequency = undefined;
      antenna = undefined;
      // Satellites have a code where receiver antennas have blanks.
      if (textAt(line, 40, 20) !== '') return;
      const type = antennaType(line.slice(0, 20));
      if (types.size < mostTypes) types.add(type);
      if (type === wanted && found.length < mostFound) {
        antenna = { type, serial: textAt(line, 20, 20), method: '', agency: '', date: '', offsets: [] };
      }
    } else if (antenna) {
      if (label === 'END OF ANTENNA') {
        found.push(antenna);
        antenna = undefined;
      } else if (label === 'START OF FREQUENCY') frequency = textAt(line, 3, 3).replace(' ', '0');
      else if (label === 'END OF FREQUENCY') frequency = undefined;
      else if (label === 'NORTH / EAST / UP' && frequency !== undefined) {
        const offset = offsetIn(line, frequency);
        if (offset && antenna.offsets.length < mostFrequencies) antenna.offsets.push(offset);
        else problems.add({ sentence: `The offsets of ${frequency} cannot be read.`, line: number });
      } else describe(antenna, label, line);
    }
  };
  const reader = lineReader('latin1', takeLine, 4096);

  return {
    push: reader.push,
    finish() {
      reader.finish();
      if (antenna)
        problems.add({ sentence: `The calibration of ${antenna.type} is cut short; it is not used.` });
      const bySerial = [...found].sort((one, other) => (one.serial < other.serial ? -1 : 1));
      return {
        ...header,
        found: bySerial,
        nearTypes: found.length > 0 ? [] : nearTypes(wanted, types),
        types: types.size,
        problems: problems.listed(),
      };
    },
  };
}

/**
 * A type as the standard writes it: the name in 16 characters, the radome in 4, NONE where it is left out. Takes the
 * words with any blanks between.
 */
export function antennaType(text: string): string {
  const words = text.trim().split(/\s+/);
  const last = words.at(-1) ?? '';
  const hasRadome = words.length > 1 && last.length === 4;
  const name = (hasRadome ? words.slice(0, -1) : words).join(' ');
  return `${name.padEnd(16)}${hasRadome ? last : 'NONE'}`.toUpperCase();
}

/** Whether a calibration holds at a time, in seconds since 1970. */
export function isValidAt({ validFrom, validUntil }: CalibratedAntenna, time: number): boolean {
  return (validFrom ?? -Infinity) <= time && time <= (validUntil ?? Infinity);
}

type Draft = { -readonly [Key in keyof CalibratedAntenna]: CalibratedAntenna[Key] } & {
  offsets: PhaseCentreOffset[];
};

const mostTypes = 20_000;
const mostFound = 200;
const mostFrequencies = 100;

function calibrationIn(line: string): Pick<AntexFacts, 'calibration' | 'referenceAntenna'> {
  const letter = line.charAt(0).toUpperCase();
  const reference = textAt(line, 20, 20);
  return {
    ...(letter === 'A' ? { calibration: 'absolute' } : letter === 'R' ? { calibration: 'relative' } : {}),
    ...(reference === '' ? {} : { referenceAntenna: antennaType(reference) }),
  };
}

function offsetIn(line: string, frequency: string): PhaseCentreOffset | undefined {
  const [north, east, up] = numbersAt(line, 3, 10) ?? [];
  return north === undefined || east === undefined || up === undefined
    ? undefined
    : { frequency, north: metres(north / 1000), east: metres(east / 1000), up: metres(up / 1000) };
}

function describe(antenna: Draft, label: string, line: string) {
  if (label === 'METH / BY / # / DATE') {
    antenna.method = textAt(line, 0, 20);
    antenna.agency = textAt(line, 20, 20);
    antenna.date = textAt(line, 50, 10);
  } else if (label === 'VALID FROM' || label === 'VALID UNTIL') {
    const time = timeAt(line);
    if (time !== undefined) antenna[label === 'VALID FROM' ? 'validFrom' : 'validUntil'] = time;
  }
}

/** The same name with other radomes, then near names, the radome asked for first. */
function nearTypes(wanted: string, types: ReadonlySet<string>): readonly string[] {
  const nameOf = (type: string) => type.slice(0, 16);
  const names = new Set([...types].map(nameOf));
  return [nameOf(wanted), ...nearest(nameOf(wanted), names)]
    .flatMap((name) => [...types].filter((type) => nameOf(type) === name).sort(radomeFirst(wanted.slice(16))))
    .slice(0, 8);
}

const radomeFirst = (radome: string) => (one: string, other: string) =>
  Number(other.endsWith(radome)) - Number(one.endsWith(radome)) || (one < other ? -1 : 1);
