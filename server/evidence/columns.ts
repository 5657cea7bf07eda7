/** Fields of a line in fixed columns, as observation headers and calibration files have them: label in columns 61 to 80. */
import { dayNumber, secondsOfDay } from './civil-time.ts';

/** The label of a header line. */
export function labelOf(line: string): string {
  return line.slice(60, 80).trim();
}

/** The text in `length` columns from `start`, which counts from 0. */
export function textAt(line: string, start: number, length: number): string {
  return line.slice(start, start + length).trim();
}

/** The decimal number in these columns; undefined where there is none. */
export function numberAt(line: string, start: number, length: number): number | undefined {
  const text = textAt(line, start, length);
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : undefined;
}

/** Numbers side by side in columns of one width; undefined unless all are there. */
export function numbersAt(line: string, count: number, width: number): readonly number[] | undefined {
  const numbers = Array.from({ length: count }, (_, index) => numberAt(line, index * width, width));
  return numbers.every((number) => number !== undefined) ? numbers : undefined;
}

/** A date and time, 5I6,F13.7, as seconds since 1970 of its own time scale; undefined where it is none. */
export function timeAt(line: string): number | undefined {
  const whole = numbersAt(line, 5, 6);
  const second = numberAt(line, 30, 13);
  if (!whole || second === undefined || !whole.every(Number.isInteger) || second < 0 || second >= 61)
    return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = whole;
  const days = dayNumber(year, month, day);
  if (days === undefined || hour < 0 || hour > 23 || minute < 0 || minute > 59) return undefined;
  return days * secondsOfDay + (hour * 60 + minute) * 60 + second;
}
