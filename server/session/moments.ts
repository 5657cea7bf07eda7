/** Reads dates and times of day; a clock's offset and the day make them moments. */
import type { Item, Place } from '../../grammar/tree.ts';
import { hole, type Hole, type Maybe } from '../quantities/value.ts';
import type { LineReader } from './binding/line-reader.ts';

/** A time of day, with its date where one was typed. */
export interface Moment {
  /** Seconds since midnight of the clock, or of UTC. */
  readonly seconds: number;
  /** Days from 1970-01-01; null means the job's day. */
  readonly day: number | null;
  readonly utc: boolean;
  readonly typed: string;
  readonly place: Place;
}

/** The word before it (`at`, `until`) has been taken. */
export function takeMoment(reader: LineReader, what: string): Maybe<Moment> {
  const first = reader.peek();
  const date = first?.kind === 'date' ? first : undefined;
  if (date) reader.next();
  const styled = takeStyled(reader, what, date);
  if (styled) return styled;
  const item = reader.peek();
  if (item?.kind === 'time') {
    reader.next();
    const place = reader.at({ start: date?.start ?? item.start, end: item.end });
    if (item.seconds === null || (date && !isWithin(date.day, FIRST_DAY))) {
      reader.remark({ about: 'time-impossible', place, typed: reader.typed(place) });
      return hole(`no clock shows ${reader.typed(place)}`, place);
    }
    return {
      seconds: item.seconds,
      day: date?.day ?? null,
      utc: item.utc,
      typed: reader.typed(place),
      place,
    };
  }
  if (isOpen(item)) {
    reader.next();
    reader.remark({ about: 'open-value', place: reader.at(item), word: what });
    return hole(`${what} is still open (?)`, reader.at(item));
  }
  const place = item ? reader.at(item) : reader.place;
  reader.remark({ about: 'missing-value', place, word: what, expects: 'a time (07:50)' });
  if (item?.kind === 'sum' || item?.kind === 'junk') reader.next();
  return hole(`${what} is missing`, place);
}

const STYLED =
  /^(\d{1,2})(?::(\d{2}(?::\d{2}(?:\.\d+)?)?))?\s*(?:([ap])\.?\s?m(?:\.|(?![\p{L}\p{N}]))|(?:UTC|GMT|Z)(?![\p{L}\p{N}+\-−]))/iu;

/** `4:40pm`, `07:50 UTC`: without the letters behind it the time would be another one, so none of it counts. */
function takeStyled(reader: LineReader, what: string, date: Item | undefined): Hole | null {
  const item = reader.peek();
  if ((item?.kind !== 'time' && item?.kind !== 'sum') || (item.kind === 'time' && item.utc)) return null;
  const [whole, hours, minutes, half] = STYLED.exec(reader.typed({ ...item, end: reader.line.end })) ?? [];
  if (whole === undefined || hours === undefined || (minutes === undefined && !half)) return null;
  const end = item.start + whole.length;
  while ((reader.peek()?.start ?? end) < end) reader.next();
  const readings = half
    ? byTheClock(Number(hours), minutes ?? '00', half.toLowerCase())
    : [`${hours}:${minutes}Z`];
  const typed = reader.typed({ start: item.start, end });
  reader.remark({ about: 'time-style', place: reader.at({ start: item.start, end }), typed, readings });
  return hole(
    `${what} is not written as a time (${typed})`,
    reader.at({ start: date?.start ?? item.start, end }),
  );
}

/** Twelve o'clock comes before one; an hour of the afternoon that counts on from noon already is what it is. */
function byTheClock(hours: number, minutes: string, half: string): string[] {
  if (hours > 23 || (half === 'a' && hours > 12) || (half === 'p' && hours === 0)) return [];
  const inDay = hours > 12 ? hours : (hours % 12) + (half === 'p' ? 12 : 0);
  return [`${String(inDay).padStart(2, '0')}:${minutes}`];
}

/** A day, counted from 1970-01-01, as a year with its fraction: what the epoch of coordinates is given in. */
export function decimalYear(day: number): number {
  const year = new Date(day * 86_400_000).getUTCFullYear();
  const [start, end] = [year, year + 1].map((one) => Date.UTC(one, 0, 1) / 86_400_000);
  return year + (day - (start ?? NaN)) / ((end ?? NaN) - (start ?? NaN));
}

/** Days from 1970-01-01: no satellite could be measured before 1980, and no register is older than the first surveys of a whole country. */
const FIRST_DAY = Date.UTC(1980, 0, 1) / 86_400_000;
const FIRST_SURVEY = Date.UTC(1750, 0, 1) / 86_400_000;
const LAST_DAY = Date.UTC(2101, 0, 1) / 86_400_000;
/** A year with a wrong digit would stretch a day to thousands of years. */
const isWithin = (day: number | null, first: number) => day !== null && first <= day && day < LAST_DAY;

/** Days from 1970-01-01. Only `YYYY-MM-DD` can be read in one way. */
export function takeDate(
  reader: LineReader,
  what: string,
): Maybe<{ readonly day: number; readonly typed: string; readonly place: Place }> {
  const item = reader.peek();
  const place = item ? reader.at(item) : reader.place;
  if (item?.kind === 'date') {
    reader.next();
    if (item.day !== null && isWithin(item.day, FIRST_SURVEY))
      return { day: item.day, typed: item.typed, place };
    reader.remark({ about: 'time-impossible', place, typed: item.typed });
    return hole(`there is no ${item.typed}`, place);
  }
  if (isOpen(item)) {
    reader.next();
    reader.remark({ about: 'open-value', place, word: what });
    return hole(`${what} is still open (?)`, place);
  }
  if (item?.kind === 'sum') {
    reader.next();
    const typed = reader.typed(item);
    reader.remark({ about: 'date-format', place, typed, readings: dateReadings(typed) });
    return hole(`${what} can be read in more than one way`, place);
  }
  reader.remark({ about: 'missing-value', place, word: what, expects: 'a date (2026-05-19)' });
  return hole(`${what} is missing`, place);
}

/** Day first, month first, and year first, where the calendar allows it. */
function dateReadings(typed: string): string[] {
  const parts = typed.split(/[-./]/);
  if (parts.length !== 3 || !parts.every((part) => /^\s*\d{1,4}\s*$/.test(part))) return [];
  const [first = 0, second = 0, third = 0] = parts.map(Number);
  const year = third < 100 ? 2000 + third : third;
  const readings = [
    isoDate(year, second, first),
    isoDate(year, first, second),
    isoDate(first < 100 ? 2000 + first : first, second, third),
  ];
  return [...new Set(readings.filter((reading): reading is string => reading !== null))];
}

function isoDate(year: number, month: number, day: number): string | null {
  if (year < 1980 || year > 2100 || month < 1 || month > 12 || day < 1) return null;
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 ? date.toISOString().slice(0, 10) : null;
}

export function isOpen(item: Item | undefined): item is Item & { kind: 'sum' } {
  return item?.kind === 'sum' && item.terms[0]?.measure?.parts[0]?.numeral.open === true;
}
