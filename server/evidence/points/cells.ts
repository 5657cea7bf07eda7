/** Reads the cells of a points file: numbers, lengths, angles and times; what cannot be read is undefined, never 0. */
import { unitNamed } from '../../../grammar/units.ts';
import { dayNumberOfIso, modulo, secondsOfDay } from '../civil-time.ts';
import type { ColumnClock, ColumnPlan, ColumnUnit } from './column-plan.ts';

/** A plain decimal number, without exponent and without grouping. */
export function numberOf(cell: string, decimal: '.' | ','): number | undefined {
  const text = decimal === ',' ? cell.replace(',', '.') : cell;
  return isPlainNumber(text)
    ? Number(text)
    : cell.startsWith('\u2212')
      ? numberOf(`-${cell.slice(1)}`, decimal)
      : undefined;
}

/**
 * A text, without the apostrophe that keeps a spreadsheet from running it as a formula: `'=A1` is the name `=A1`.
 * What is written out with one is so read back as it was.
 */
export const textOf = (cell: string) => (/^'+[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell);

/** A length in metres. */
export function lengthOf(cell: string, unit: ColumnUnit, decimal: '.' | ','): number | undefined {
  const spec = unitNamed(unit);
  const number = numberOf(cell, decimal);
  if (number === undefined || spec?.measures !== 'length' || spec.factor === null) return undefined;
  return number * spec.factor;
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
export function timeReader(clock: ColumnClock, plan: ColumnPlan): (cell: string) => CellTime | undefined {
  let date: string | undefined;
  let day: number | undefined;
  return (cell) => {
    const parts = timePattern.exec(cell);
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
    return day === undefined ? undefined : { seconds: day * secondsOfDay + ofDay, dated: true };
  };
}

const timePattern =
  /^(?:(\d{4}-\d{2}-\d{2})[T ])?(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d{1,9})?))?(Z|[+-]\d{2}:?\d{2})?$/;

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
  const isNegative = body.startsWith('-');
  const parts = body
    .replace(/^[-+]/, '')
    .split(/[°º'′’"″”:\s]+/)
    .filter((part) => part !== '');
  const [degrees, minutes, seconds] = parts.map((part, index) => numberOf(part, index === 2 ? decimal : '.'));
  if (parts.length !== 3 || degrees === undefined || minutes === undefined || seconds === undefined)
    return undefined;
  if (!Number.isInteger(degrees) || !Number.isInteger(minutes) || minutes < 0 || seconds < 0)
    return undefined;
  if (degrees < 0 || minutes >= 60 || seconds >= 60) return undefined;
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
