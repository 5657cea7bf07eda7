/** Numbers and times as files of points carry them: plain digits, the same count for every row. */

import { FileText } from '../file-text.ts';

/** With a fixed count of decimals; empty where there is no number. */
export function fixed(value: number, decimals: number): string {
  alone.fixed(value, decimals);
  return String.fromCharCode(...alone.taken());
}
const alone = new FileText();

/** A tenth of a millimetre, and in degrees a hundredth of that. */
export const LENGTH_DECIMALS = 4;
export const ANGLE_DECIMALS = 11;

/** `2026-05-19T07:25:30Z`; empty where there is no time. */
export function utcTime(seconds: number | undefined): string {
  writeUtcTime(seconds, alone);
  return String.fromCharCode(...alone.taken());
}

export function writeUtcTime(seconds: number | undefined, into: FileText): void {
  if (seconds === undefined || !Number.isFinite(seconds)) return;
  if (!Number.isInteger(seconds)) return into.text(new Date(Math.round(seconds * 1000)).toISOString());
  const day = Math.floor(seconds / 86_400);
  if (day !== lastDay.day) lastDay = { day, date: new Date(day * 86_400_000).toISOString().slice(0, 11) };
  const ofDay = seconds - day * 86_400;
  const minutes = Math.floor(ofDay / 60);
  into.text(lastDay.date);
  into.digits(Math.floor(minutes / 60), 2);
  into.sign(COLON);
  into.digits(minutes % 60, 2);
  into.sign(COLON);
  into.digits(ofDay % 60, 2);
  into.sign(Z);
}
/** Rows of one day follow one another, so its date is written out once. */
let lastDay = { day: NaN, date: '' };
const COLON = 58;
const Z = 90;
