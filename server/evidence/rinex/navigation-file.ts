/**
 * Reads a RINEX navigation file of version 2, 3 or 4, plain or gzip, as its bytes come: GPS LNAV, Galileo F/NAV and
 * I/NAV, and the ionosphere of GPS. Other records are counted.
 *
 * Source: RINEX 2.11, tables A3 and A4; 3.05, tables A5, A6 and A8; 4.00, section on navigation files.
 */
import { dayNumber, secondsOfDay } from '../civil-time.ts';
import type { EvidenceProblem } from '../problems.ts';
import { clipped, problemList } from '../problems.ts';
import { lineReader } from '../lines.ts';
import { GPS_EPOCH, isOrbit, WEEK, type Ephemeris, type Klobuchar } from './ephemeris.ts';
import { inflating } from './inflating.ts';
import { GALILEO } from './raw-observations.ts';

export interface NavigationFile {
  readonly records: readonly Ephemeris[];
  readonly ionosphere: Klobuchar | null;
  /** Records of other systems and messages. */
  readonly skipped: number;
  readonly problems: readonly EvidenceProblem[];
}

/** More than the records of all satellites in a week. */
const MOST_RECORDS = 200_000;

interface Pending {
  readonly head: string;
  readonly line: number;
  readonly ion: boolean;
  readonly message: string;
  readonly lines: string[];
}

export function navigationReader() {
  const problems = problemList();
  const records: Ephemeris[] = [];
  let skipped = 0;
  let version = Number.NaN;
  let inHeader = true;
  let foreign = false;
  let alpha: readonly number[] | null = null;
  let beta: readonly number[] | null = null;
  let pending: Pending | null = null;
  let announced: { ion: boolean; message: string } | null = null;
  let nothing = true;

  const headerLine = (line: string, number: number) => {
    const label = line.slice(60, 80).trim();
    if (number === 1) {
      version = Number(line.slice(0, 9));
      foreign = label !== 'RINEX VERSION / TYPE' || !(version >= 2 && version < 5) || line.charAt(20) !== 'N';
      if (foreign)
        problems.add({ sentence: 'This is not a RINEX navigation file of version 2, 3 or 4.', line: 1 });
    }
    if (label === 'ION ALPHA' || (label === 'IONOSPHERIC CORR' && line.startsWith('GPSA')))
      alpha = ionosphere(line, version < 3 ? 2 : 5) ?? alpha;
    if (label === 'ION BETA' || (label === 'IONOSPHERIC CORR' && line.startsWith('GPSB')))
      beta = ionosphere(line, version < 3 ? 2 : 5) ?? beta;
    if (label === 'END OF HEADER') inHeader = false;
  };
  const close = () => {
    if (!pending) return;
    const { head, line, ion, message, lines } = pending;
    pending = null;
    const width = version < 3 ? 22 : 23;
    const numbers = [head, ...lines].flatMap((text, index) =>
      numbersOf(text, index === 0 ? width : width - 19),
    );
    if (ion) {
      if (
        head.startsWith(' ') &&
        numbers.length >= 8 &&
        !alpha &&
        numbers.slice(0, 8).every(Number.isFinite)
      ) {
        alpha = numbers.slice(0, 4);
        beta = numbers.slice(4, 8);
      }
      return;
    }
    const record = recordOf(head, numbers, message, version);
    if (record === null) skipped += 1;
    else if (typeof record === 'string') problems.add({ sentence: record, line });
    else if (records.length < MOST_RECORDS) records.push(record);
  };
  const dataLine = (line: string, number: number) => {
    if (line.startsWith('>')) {
      close();
      announced = { ion: line.startsWith('> ION G'), message: line.slice(10, 14).trim() };
      if (!announced.ion && !line.startsWith('> EPH ')) announced = { ion: true, message: 'none' };
      return;
    }
    const begins = version < 3 ? /^[ \d]\d /.test(line) : /^[A-Z]/.test(line);
    if (begins || (announced?.ion && !pending)) {
      close();
      const { ion, message } = announced ?? { ion: false, message: '' };
      pending = { head: line, line: number, ion: ion && message !== 'none', message, lines: [] };
    } else if (pending && pending.lines.length < 8) pending.lines.push(line);
  };
  const lines = lineReader(
    'latin1',
    (line, number) => {
      nothing = false;
      if (foreign) return;
      if (inHeader) headerLine(line, number);
      else dataLine(line, number);
    },
    256,
  );
  const input = inflating(lines.push, (sentence) => problems.add({ sentence }));
  return {
    push: input.push,
    finish(): NavigationFile {
      input.finish();
      lines.finish();
      close();
      if (nothing) problems.add({ sentence: 'The file is empty.' });
      else if (!foreign && records.length === 0)
        problems.add({ sentence: 'The file has no ephemerides of GPS (LNAV) or Galileo.' });
      return {
        records,
        ionosphere: alpha && beta ? { alpha, beta } : null,
        skipped,
        problems: problems.listed(),
      };
    },
  };
}

/** Fields of D19.12 from a column on; a blank one is 0, as spare fields are. */
function numbersOf(line: string, from: number): readonly number[] {
  const numbers: number[] = [];
  for (let at = from; at < from + 76 && numbers.length < (from > 20 ? 3 : 4); at += 19) {
    numbers.push(numberOf(line.slice(at, at + 19)));
  }
  return numbers;
}
function numberOf(field: string): number {
  const text = field.trim();
  if (text === '') return 0;
  return /^[-+]?\d*\.?\d+([DdEe][-+]?\d{1,3})?$/.test(text) ? Number(text.replace(/[Dd]/, 'E')) : Number.NaN;
}

function ionosphere(line: string, from: number): readonly number[] | undefined {
  const numbers = Array.from({ length: 4 }, (_, index) =>
    line.slice(from + 12 * index, from + 12 * index + 12),
  );
  const read = numbers.map(numberOf);
  return read.every(Number.isFinite) ? read : undefined;
}

/** A record, null where it is of another kind, or what is wrong with it. */
function recordOf(head: string, n: readonly number[], message: string, version: number) {
  const system = version < 3 ? 'G' : head.charAt(0);
  if (system !== 'G' && system !== 'E') return null;
  const prn = Number(version < 3 ? head.slice(0, 2) : head.slice(1, 3));
  if (!(prn >= 1 && prn <= 36) || (system === 'G' && prn > 32)) return null;
  if (message !== '' && !['LNAV', 'FNAV', 'INAV'].includes(message)) return null;
  const clockTime = version < 3 ? timeOf(head, 3, 2) : timeOf(head, 4, 4);
  const at = (index: number) => n[index] ?? Number.NaN;
  const week = at(21);
  const sources = at(20);
  const galileo = system === 'E';
  const own = message || (!galileo ? 'LNAV' : sources & 0x102 ? 'FNAV' : 'INAV');
  const record: Ephemeris = {
    satellite: galileo ? GALILEO + prn : prn,
    message: own === 'LNAV' || own === 'FNAV' ? own : 'INAV',
    clockTime,
    time: GPS_EPOCH + week * WEEK + at(11),
    secondOfWeek: at(11),
    clock: [at(0), at(1), at(2)],
    Crs: at(4),
    Δn: at(5),
    M0: at(6),
    Cuc: at(7),
    e: at(8),
    Cus: at(9),
    rootA: at(10),
    Cic: at(12),
    Ω0: at(13),
    Cis: at(14),
    i0: at(15),
    Crc: at(16),
    ω: at(17),
    Ωdot: at(18),
    idot: at(19),
    groupDelay: at(25),
    groupDelayE5b: galileo ? at(26) : 0,
    healthy: isHealthy(own, at(24)),
  };
  return isOrbit(record)
    ? record
    : `The ephemerides of ${system}${String(prn).padStart(2, '0')} ("${clipped(head)}") are not those of an orbit; not used.`;
}

/** Galileo: validity and health of E5a in bits 3 to 5, of E1-B in 0 to 2, of E5b in 6 to 8. */
function isHealthy(message: string, health: number) {
  if (message === 'LNAV') return health === 0;
  return (health & (message === 'FNAV' ? 0b111000 : 0b111000111)) === 0;
}

function timeOf(head: string, from: number, digits: 2 | 4): number {
  const [y = NaN, month = NaN, day = NaN, hour = NaN, minute = NaN, second = NaN] = head
    .slice(from, 22 + (digits - 2) / 2)
    .trim()
    .split(/ +/)
    .map(Number);
  const year = digits === 2 ? y + (y < 80 ? 2000 : 1900) : y;
  const days = dayNumber(year, month, day);
  return days === undefined ? Number.NaN : days * secondsOfDay + hour * 3600 + minute * 60 + second;
}
