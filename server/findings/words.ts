/** Turns of phrase that several findings share. */
import { timeInWords } from '../derive/trust/words.ts';
import type { Subject } from './finding.ts';

/** An instant as the job's clock showed it: `08:31`; with its date where that is not the job's. */
export const clockTime = (instant: number | null, { session }: Subject): string | null =>
  timeInWords(instant, session.job);

/** More than this of what was typed would drown the sentence. */
const ENOUGH = 40;

/** What was typed, cut where it is long. */
export function short(typed: string): string {
  const letters = [...typed.slice(0, 2 * ENOUGH).replace(/\s+/gu, ' ')];
  return letters.length <= ENOUGH ? letters.join('') : `${letters.slice(0, ENOUGH).join('')} …`;
}

/** With a capital letter. */
export const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** `a, b or c`. */
export function oneOf(words: readonly string[]): string {
  const last = words[words.length - 1];
  if (last === undefined) return 'nothing';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}

/** Characters that a reader cannot see, by number: `U+200B`. */
export function codePoints(typed: string): string {
  const numbers = [...typed.slice(0, 8)].map((character) => character.codePointAt(0) ?? 0);
  return [...new Set(numbers)]
    .map((code) => `U+${code.toString(16).toUpperCase().padStart(4, '0')}`)
    .join(', ');
}
