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
  return `${sign}${String(whole)}.${String(scaled - whole * unit).padStart(decimals, '0')}`;
}
const POWERS = Array.from({ length: 13 }, (_, decimals) => 10 ** decimals);

/** A tenth of a millimetre, and in degrees a hundredth of that. */
export const LENGTH_DECIMALS = 4;
export const ANGLE_DECIMALS = 11;

/** `2026-05-19T07:25:30Z`; empty where there is no time. */
export function utcTime(seconds: number | undefined): string {
  if (seconds === undefined || !Number.isFinite(seconds)) return '';
  const whole = new Date(Math.round(seconds * 1000)).toISOString();
  return whole.endsWith('.000Z') ? `${whole.slice(0, 19)}Z` : whole;
}
