/** Observations of a whole recording in columns: what a day at one epoch a second takes must fit in memory. */
import type { EvidenceProblem } from '../problems.ts';
import type { RinexHeader } from '../rinex-header.ts';

/** A satellite's number in the columns: GPS 1 to 63, Galileo 65 to 127. */
export type Satellite = number;
export const GALILEO = 64;
export const isGalileo = (satellite: Satellite) => satellite > GALILEO;
/** Its name, `G05` or `E31`. */
export const satelliteCode = (satellite: Satellite) =>
  `${isGalileo(satellite) ? 'E' : 'G'}${String(satellite % GALILEO).padStart(2, '0')}`;

/** The second frequency; the first is L1 or E1 (1575.42 MHz). */
export type GpsSecond = 'L2' | 'L5';
export type GalileoSecond = 'E5a' | 'E5b';

/** Bits of `flags`: loss of lock, and a half cycle that is not settled, on either frequency. */
export const LOST_1 = 1;
export const HALF_1 = 2;
export const LOST_2 = 4;
export const HALF_2 = 8;

export interface RawObservations {
  readonly header: RinexHeader;
  /** Seconds since 1970 on the GPS time scale, as tagged by the receiver; rising. */
  readonly times: Float64Array;
  /** The rows of epoch `i` are `starts[i]` up to `starts[i + 1]`. */
  readonly starts: Uint32Array;
  /** 1 where the receiver says that power failed since the epoch before. */
  readonly broken: Uint8Array;
  readonly satellites: Uint8Array;
  /** Pseudoranges in metres and phases in cycles; NaN where there is none. */
  readonly code1: Float64Array;
  readonly phase1: Float64Array;
  readonly code2: Float64Array;
  readonly phase2: Float64Array;
  readonly flags: Uint8Array;
  readonly second: { readonly G: GpsSecond; readonly E: GalileoSecond };
  /** Observations of satellites of other systems, which are not used, by RINEX letter. */
  readonly skipped: Readonly<Record<string, number>>;
  readonly problems: readonly EvidenceProblem[];
}

/** More rows than a day of 35 satellites at one epoch a second has. */
export const MOST_ROWS = 3_100_000;

export interface Columns {
  /** Begins an epoch; false where no more fit. An epoch without rows is dropped by the next. */
  readonly epoch: (time: number, broken: boolean) => boolean;
  readonly row: (
    satellite: Satellite,
    code1: number,
    phase1: number,
    code2: number,
    phase2: number,
    flags: number,
  ) => void;
  readonly lastTime: () => number;
  readonly taken: () => Pick<
    RawObservations,
    'times' | 'starts' | 'broken' | 'satellites' | 'code1' | 'phase1' | 'code2' | 'phase2' | 'flags'
  >;
}

/** Collects rows; the columns double when they are full. */
export function columns(): Columns {
  const numbers = Array.from({ length: 4 }, () => new Float64Array(4096));
  let satellites = new Uint8Array(4096);
  let flags = new Uint8Array(4096);
  let times = new Float64Array(256);
  let starts = new Uint32Array(256);
  let broken = new Uint8Array(256);
  let epochs = 0;
  let rows = 0;
  const grow = () => {
    satellites = larger(satellites, Uint8Array);
    flags = larger(flags, Uint8Array);
    for (let index = 0; index < 4; index += 1)
      numbers[index] = larger(numbers[index] ?? new Float64Array(1), Float64Array);
  };
  return {
    epoch(time, isBroken) {
      if (epochs > 0 && starts[epochs - 1] === rows) {
        epochs -= 1;
        isBroken ||= broken[epochs] === 1;
      }
      if (rows + 128 > MOST_ROWS) return false;
      if (epochs + 1 >= times.length) {
        times = larger(times, Float64Array);
        starts = larger(starts, Uint32Array);
        broken = larger(broken, Uint8Array);
      }
      times[epochs] = time;
      starts[epochs] = rows;
      broken[epochs] = isBroken ? 1 : 0;
      epochs += 1;
      return true;
    },
    row(satellite, code1, phase1, code2, phase2, flag) {
      if (epochs === 0) return;
      if (rows === satellites.length) grow();
      const [a, b, c, d] = numbers;
      if (!a || !b || !c || !d) return;
      satellites[rows] = satellite;
      a[rows] = code1;
      b[rows] = phase1;
      c[rows] = code2;
      d[rows] = phase2;
      flags[rows] = flag;
      rows += 1;
    },
    lastTime: () => (epochs > 0 ? (times[epochs - 1] ?? -Infinity) : -Infinity),
    taken() {
      if (epochs > 0 && starts[epochs - 1] === rows) epochs -= 1;
      starts[epochs] = rows;
      const column = (index: number) => (numbers[index] ?? new Float64Array(0)).subarray(0, rows);
      return {
        times: times.subarray(0, epochs),
        starts: starts.subarray(0, epochs + 1),
        broken: broken.subarray(0, epochs),
        satellites: satellites.subarray(0, rows),
        code1: column(0),
        phase1: column(1),
        code2: column(2),
        phase2: column(3),
        flags: flags.subarray(0, rows),
      };
    },
  };
}

function larger<Column extends { length: number; set(other: Column): void }>(
  column: Column,
  Kind: new (length: number) => Column,
): Column {
  const grown = new Kind(column.length * 2);
  grown.set(column);
  return grown;
}
