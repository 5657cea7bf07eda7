/** The one place that turns numbers into text: the uncertainty decides how many digits are printed. */
import type { Unit, Value } from './value.ts';

const MINUS = '\u2212';

const LARGEST = 1e15;

/** A number with a fixed count of decimals and a true minus sign; `-0.0` never appears. */
export function showNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return 'not a number';
  // Beyond this the digits of a number are no longer its own, and soon it would be written with an exponent.
  if (Math.abs(value) >= LARGEST)
    return `${value < 0 ? 'below ' : 'over '}${value < 0 ? MINUS : ''}${LARGEST}`;
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? MINUS + text : text;
}

/** Decimals that an uncertainty earns: its second significant digit, or from 3.55 up its first; at most a tenth of a millimetre. */
export function decimalsFor(unit: Unit, sigma: number | null): number {
  const most = unit === '°' ? 10 : unit === '' ? 9 : 4;
  const usual = USUAL_DECIMALS[unit];
  if (sigma === null || sigma === 0) return usual;
  const leading = Math.floor(Math.log10(sigma));
  return Math.min(most, Math.max(0, (sigma / 10 ** leading < 3.55 ? 1 : 0) - leading));
}

/** Decimals of a number whose uncertainty nobody has said. */
const USUAL_DECIMALS: Readonly<Record<Unit, number>> = {
  ...{ m: 4, '°': 9, s: 4, '': 8, W: 3 },
  ...{ B: 0, 'B/s': 0, 'bit/s': 0, Hz: 0, dB: 1, dBm: 1 },
};

/** Decimals that a value is printed with. */
export const decimalsOf = (value: Value): number =>
  (value.origin === 'computed' ? value.formula.decimals : undefined) ?? decimalsFor(value.unit, value.sigma);

/** `1.5331 m ± 0.0012 m`. */
export function showValue(value: Value): string {
  const decimals = decimalsOf(value);
  const number = withUnit(showNumber(value.value, decimals), value.unit);
  if (value.sigma === null || value.sigma === 0) return number;
  return `${number} ± ${showSigma(value.sigma, value.unit)}`;
}

export function showSigma(sigma: number, unit: Unit): string {
  if (unit === 'm') return sigma >= 1 ? `${showNumber(sigma, sigma < 9.95 ? 1 : 0)} m` : showLength(sigma);
  return withUnit(showNumber(sigma, decimalsFor(unit, sigma)), unit);
}

/** A length in the unit that people say it in: `0.3 mm`, `35 mm`, `1.284 m`, `4.2 km`. */
export function showLength(length: number): string {
  const size = Math.abs(length);
  if (size >= 10_000) return `${showNumber(length / 1000, 1)} km`;
  if (size >= 100) return `${showNumber(length, 1)} m`;
  if (size >= 1) return `${showNumber(length, 3)} m`;
  if (size >= 0.01) return `${showNumber(length * 1000, 0)} mm`;
  return `${showNumber(length * 1000, 1)} mm`;
}

/** Degrees, minutes and seconds to 0.00001″ (0.3 mm), with the hemisphere: `41°09'08.18286"N`. */
export function showAngle(angle: number, positive: 'N' | 'E', decimals = 5): string {
  const negative = positive === 'N' ? 'S' : 'W';
  const unit = 10 ** decimals;
  const ticks = Math.round(Math.abs(angle) * 3600 * unit);
  const seconds = (ticks % (60 * unit)) / unit;
  const minutes = Math.floor(ticks / (60 * unit)) % 60;
  const whole = Math.floor(ticks / (3600 * unit));
  const pad = (number: string, width: number) => number.padStart(width, '0');
  const width = decimals > 0 ? decimals + 3 : 2;
  const text = `${whole}°${pad(String(minutes), 2)}'${pad(seconds.toFixed(decimals), width)}"`;
  return text + (angle < 0 && ticks > 0 ? negative : positive);
}

/** Seconds of arc that an uncertainty in degrees comes to, with the decimals that it earns: `0.00026"`. */
export const showSeconds = (sigma: number) => `${showNumber(sigma * 3600, secondsFor(sigma))}"`;

/** Decimals of the seconds of an angle; a hundred-thousandth of a second is 0.3 mm on the ground. */
export const secondsFor = (sigma: number | null) =>
  sigma === null || sigma === 0 ? 5 : Math.min(5, decimalsFor('', sigma * 3600));

/** A direction or a difference of directions, which has a sign instead of a letter: `−0°19'22.87"`. */
export const showTurn = (angle: number, decimals = 2) =>
  (angle < 0 ? MINUS : '') + showAngle(Math.abs(angle), 'N', decimals).replace(/N$/, '');

const withUnit = (number: string, unit: Unit) =>
  unit === '' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`;

/** `A`, `A and B`, `A, B and C`; nothing of nothing. */
export const allOf = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`;
