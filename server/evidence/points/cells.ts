/** Reads the cells of a points file: numbers, lengths, angles and times; what cannot be read is undefined, never 0. */
import { unitNamed } from '../../../grammar/units.ts';
import { dayNumberOfIso, modulo, secondsOfDay } from '../civil-time.ts';
import type { ColumnClock, ColumnPlan, ColumnUnit } from './column-plan.ts';

/** A plain decimal number, without exponent and without grouping. */
export const numberOf = (cell: string, decimal: '.' | ','): number | undefined =>
  numberIn(cell, 0, cell.length, decimal);

/** The same of a piece of a text. */
export function numberIn(text: string, from: number, to: number, decimal: '.' | ','): number | undefined {
  const short = shortNumber(text, from, to, decimal === ',' ? COMMA : POINT);
  return short ?? longNumber(text.slice(from, to), decimal);
}

function longNumber(cell: string, decimal: '.' | ','): number | undefined {
  // It may part thousands.
  if (decimal === ',' && cell.includes('.')) return undefined;
  const text = decimal === ',' ? cell.replace(',', '.') : cell;
  return isPlainNumber(text)
    ? Number(text)
    : cell.startsWith('\u2212')
      ? numberOf(`-${cell.slice(1)}`, decimal)
      : undefined;
}

/**
 * The same for up to fifteen digits, as nearly every cell has: their whole number and the power of ten are both exact, so
 * that one division rounds rightly (W. D. Clinger 1990, How to read floating point numbers accurately).
 */
function shortNumber(text: string, from: number, to: number, sign: number): number | undefined {
  if (to - from > 17 || to === from) return undefined;
  const first = text.charCodeAt(from);
  const start = first === 45 || first === 43 ? from + 1 : from;
  let whole = 0;
  let point = -1;
  for (let at = start; at < to; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) whole = whole * 10 + (code - 48);
    else if (code === sign && point < 0 && at > start) point = at;
    else return undefined;
  }
  const digits = to - start - (point < 0 ? 0 : 1);
  const decimals = point < 0 ? 0 : to - point - 1;
  if (digits === 0 || digits > 15 || (point >= 0 && decimals === 0)) return undefined;
  const value = decimals > 0 ? whole / (POWERS[decimals] ?? NaN) : whole;
  return first === 45 ? -value : value;
}
const POINT = 46;
const COMMA = 44;
const POWERS = Array.from({ length: 16 }, (_, exponent) => 10 ** exponent);

/**
 * A text, without the apostrophe that keeps a spreadsheet from running it as a formula: `'=A1` is the name `=A1`.
 * What is written out with one is so read back as it was.
 */
export const textOf = (cell: string) =>
  cell.startsWith("'") && /^'+[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/.test(cell) ? cell.slice(1) : cell;

/** How many metres a unit makes; undefined where it measures no length. */
export function metresIn(unit: ColumnUnit): number | undefined {
  const spec = unitNamed(unit);
  return spec?.measures === 'length' ? (spec.factor ?? undefined) : undefined;
}

/** An angle in degrees, not beyond `most`; a letter from `letters`, positive first, may stand at its end. */
export function angleOf(
  cell: string,
  unit: ColumnUnit,
  decimal: '.' | ',',
  most: number,
  letters: readonly [positive: string, negative: string],
): number | undefined {
  const letter = cell.slice(-1).toUpperCase();
  const isLettered = letters.includes(letter);
  const body = (isLettered ? cell.slice(0, -1) : cell).trim();
  const value = unit === 'dms' ? sexagesimal(body, decimal) : numberOf(body.replace(/°$/, ''), decimal);
  if (value === undefined || (isLettered && value < 0)) return undefined;
  const signed = letter === letters[1] ? -value : value;
  return Math.abs(signed) <= most ? signed : undefined;
}

/** A time in UTC: seconds since 1970 where a date is known, else of the day. */
export interface CellTime {
  readonly seconds: number;
  readonly dated: boolean;
}

/**
 * Reads `HH:MM`, `HH:MM:SS.s` or `YYYY-MM-DD HH:MM:SS`, with Z or an offset where the cell knows better than the
 * column. The day is worked out once for all rows of one date.
 */
export function timeReader(
  clock: ColumnClock,
  plan: ColumnPlan,
): (text: string, from: number, to: number) => CellTime | undefined {
  let date: string | undefined;
  let day: number | undefined;
  const ahead = aheadOfUtc(undefined, clock, plan);
  const start = plan.date === undefined ? undefined : dayNumberOfIso(plan.date);
  const datedOf = dateGiver(plan);
  return (text, from, to) => {
    const plainly = start === undefined ? undefined : plainTime(text, from, to);
    if (plainly !== undefined && start !== undefined)
      return { seconds: datedOf(start, plainly - ahead), dated: true };
    const parts = timePattern.exec(text.slice(from, to));
    if (!parts) return undefined;
    const [hour, minute, second] = [
      Number(parts[2]),
      Number(parts[3]),
      Number((parts[4] ?? '0').replace(',', '.')),
    ];
    if (hour > 23 || minute > 59 || second >= 61) return undefined;
    const ofDay = (hour * 60 + minute) * 60 + second - aheadOfUtc(parts[5], clock, plan);
    const stated = parts[1] ?? plan.date;
    if (stated === undefined) return { seconds: modulo(ofDay, secondsOfDay), dated: false };
    if (stated !== date) [date, day] = [stated, dayNumberOfIso(stated)];
    if (day === undefined) return undefined;
    return {
      seconds: parts[1] === undefined ? datedOf(day, ofDay) : day * secondsOfDay + ofDay,
      dated: true,
    };
  };
}

/**
 * The instant of a UTC time of day that has no date: on the local day, whatever the day is in UTC; on the next one where
 * a base stood then and none does at that time of the day itself, since notes of a night have two days.
 */
function dateGiver({ utcOffset = 0, stood = [] }: ColumnPlan): (day: number, ofDay: number) => number {
  const isStanding = (time: number) => stood.some(({ from, until }) => from <= time && time <= until);
  return (day, ofDay) => {
    const time = day * secondsOfDay + modulo(ofDay + utcOffset, secondsOfDay) - utcOffset;
    const next = time + secondsOfDay;
    return stood.length > 0 && !isStanding(time) && isStanding(next) ? next : time;
  };
}

const timePattern =
  /^(?:(\d{4}-\d{2}-\d{2})[T ])?(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d{1,9})?))?(Z|[+-]\d{2}:?\d{2})?$/;

/** Seconds of the day of `HH:MM:SS` and nothing else, as nearly every cell has it. */
function plainTime(text: string, from: number, to: number): number | undefined {
  if (to - from !== 8 || text.charCodeAt(from + 2) !== COLON || text.charCodeAt(from + 5) !== COLON)
    return undefined;
  const hour = twoDigits(text, from);
  const minute = twoDigits(text, from + 3);
  const second = twoDigits(text, from + 6);
  return hour <= 23 && minute <= 59 && second <= 60 ? (hour * 60 + minute) * 60 + second : undefined;
}
const COLON = 58;

/** Not a number where they are none. */
function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at) - 48;
  const ones = text.charCodeAt(at + 1) - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : NaN;
}

function aheadOfUtc(
  zone: string | undefined,
  clock: ColumnClock,
  { utcOffset = 0, leapSeconds = 18 }: ColumnPlan,
) {
  if (zone === 'Z') return 0;
  if (zone !== undefined) {
    const minutes = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(-2));
    return (zone.startsWith('-') ? -60 : 60) * minutes;
  }
  return clock === 'local' ? utcOffset : clock === 'gps' ? leapSeconds : 0;
}

function sexagesimal(body: string, decimal: '.' | ','): number | undefined {
  const isNegative = /^[-\u2212]/.test(body);
  const parts = body
    .replace(/^[-+\u2212]/, '')
    .split(/[°º'′’"″”:\s]+/)
    .filter((part) => part !== '');
  const [degrees, minutes, seconds] = parts.map((part, index) => numberOf(part, index === 2 ? decimal : '.'));
  if (parts.length !== 3 || degrees === undefined || minutes === undefined || seconds === undefined)
    return undefined;
  if (!Number.isInteger(degrees) || !Number.isInteger(minutes)) return undefined;
  // The sign stands before all, and a second one would be lost in a zero.
  if (parts.some((part) => !/^\d/.test(part)) || minutes >= 60 || seconds >= 60) return undefined;
  const value = degrees + minutes / 60 + seconds / 3600;
  return isNegative ? -value : value;
}

/** Written out, since it is asked of every cell of a million rows. */
function isPlainNumber(text: string) {
  const length = text.length;
  let at = text[0] === '-' || text[0] === '+' ? 1 : 0;
  let digits = 0;
  let points = 0;
  for (; at < length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) digits += 1;
    else if (code === 46 && digits > 0 && points === 0) points += 1;
    else return false;
  }
  return digits > 0 && length < 40 && text.charCodeAt(length - 1) !== 46;
}
