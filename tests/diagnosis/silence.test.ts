/** The law of SILENCE.md over a fixed thirtieth of all ways to spoil a number; `npm run silence` counts them all. */
import { expect, it } from 'vitest';
import { goodDays, inWords, silenceOf } from './silence.ts';

it('one spoiled number in a hundred at most changes a result in silence', () => {
  const all = silenceOf(goodDays(), 30);
  const depending = all.filter(({ answer }) => answer !== 'nothing');
  expect(depending.length).toBeGreaterThan(80);
  const silent = depending.filter(({ answer }) => answer === 'silent');
  expect(silent.length / depending.length, silent.map(inWords).join('\n')).toBeLessThan(0.01);
}, 120_000);
