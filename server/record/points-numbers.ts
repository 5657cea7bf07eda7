/** Numbers and times as files of points carry them: plain digits, the same count for every row. */

/** With a fixed count of decimals; empty where there is no number. Written out, since it is asked for every cell of a million rows. */
export function fixed(value: number, decimals: number): string {
  if (Number.isNaN(value)) return '';
  const unit = POWERS[decimals] ?? 10 ** decimals;
  const scaled = Math.round(Math.abs(value) * unit);
  if (scaled >= Number.MAX_SAFE_INTEGER) return value.toFixed(decimals);
  const whole = Math.floor(scaled / unit);
  const sign = value < 0 && scaled > 0 ? '-' : '';
  if (decimals === 0) return sign + String(whole);
  const part = scaled - whole * unit;
  const digits = decimals === 4 ? FOUR_DIGITS[part] : String(part).padStart(decimals, '0');
  return `${sign}${String(whole)}.${digits ?? ''}`;
}
const POWERS = Array.from({ length: 13 }, (_, decimals) => 10 ** decimals);
const FOUR_DIGITS = Array.from({ length: 10_000 }, (_, part) => String(part).padStart(4, '0'));

/** A tenth of a millimetre, and in degrees a hundredth of that. */
export const LENGTH_DECIMALS = 4;
export const ANGLE_DECIMALS = 11;

/** `2026-05-19T07:25:30Z`; empty where there is no time. */
export function utcTime(seconds: number | undefined): string {
  if (seconds === undefined || !Number.isFinite(seconds)) return '';
  if (!Number.isInteger(seconds)) return new Date(Math.round(seconds * 1000)).toISOString();
  const day = Math.floor(seconds / 86_400);
  if (day !== lastDay.day) lastDay = { day, date: new Date(day * 86_400_000).toISOString().slice(0, 11) };
  const ofDay = seconds - day * 86_400;
  const minutes = Math.floor(ofDay / 60);
  return `${lastDay.date}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}:${two(ofDay % 60)}Z`;
}
/** Rows of one day follow one another, so its date is written out once. */
let lastDay = { day: NaN, date: '' };
const two = (number: number) => (number < 10 ? `0${number}` : String(number));
