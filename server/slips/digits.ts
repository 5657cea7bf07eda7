/** Numbers as they were typed: how many digits, and what neighbouring digits make when they change places. */
import type { Maybe, Value } from '../quantities/value.ts';
import { isHole } from '../quantities/value.ts';

/** The value of the last digit typed, in metres or degrees; null where nothing was typed. */
export function lastDigit(value: Maybe<Value> | null | undefined): number | null {
  if (!value || isHole(value) || value.origin !== 'given') return null;
  const numbers = value.typed.match(/\d+(?:\.\d+)?/g) ?? [];
  const last = numbers[numbers.length - 1];
  if (last === undefined) return null;
  const decimals = last.split('.')[1]?.length ?? 0;
  return unitOf(value, numbers.length) * 10 ** -decimals;
}

/** The last unit of what was typed, in metres or degrees. */
function unitOf(value: Value & { origin: 'given' }, parts: number): number {
  if (value.unit === '°') return /gon/.test(value.typed) ? 0.9 : 60 ** (1 - Math.min(parts, 3));
  const unit = /(mm|cm|km|usft|ft|in|m)\b(?!.*\d)/.exec(value.typed)?.[1] ?? 'm';
  return LENGTHS[unit] ?? 1;
}

const LENGTHS: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  km: 1000,
  m: 1,
  ft: 0.3048,
  usft: 1200 / 3937,
  in: 0.0254,
};

/** Every text that two neighbouring, different digits make by changing places; a point between them stays where it is. */
export function swappedDigits(text: string): string[] {
  const digits = [...text].flatMap((character, index) => (/\d/.test(character) ? [index] : []));
  return digits.slice(1).flatMap((second, index) => {
    const first = digits[index] ?? 0;
    if (text[first] === text[second]) return [];
    const letters = [...text];
    letters[first] = text[second] ?? '';
    letters[second] = text[first] ?? '';
    return [letters.join('')];
  });
}
