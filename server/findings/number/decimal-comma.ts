/** A comma between digits: a decimal sign, a group of thousands, or two numbers. */
import type { Place } from '../../../grammar/tree.ts';
import { unitNamed } from '../../../grammar/units.ts';
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from '../syntax/remarks.ts';

export const numberDecimalComma = kind({
  code: 'number/decimal-comma',
  find: (subject) => letterSlips(subject, 'decimal-comma'),
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `Comma in ${short(slip.typed)}: it could be ${oneOf(slip.readings.map((reading) => reading.replaceAll(', ', ' and ')))}.`,
    effect: 'Not used.',
    action: 'Write a point for decimals.',
  }),
  mend: ({ place, slip }) =>
    readingFixes(
      place,
      mayBeTwo(place) ? slip.readings : slip.readings.filter((reading) => !reading.includes(', ')),
    ),
});

/** `1,60 epochs` may be 1 and 60 epochs; of two numbers with one unit or letter behind them the first would have none. */
function mayBeTwo({ entry, end }: Place): boolean {
  const [, word] = /^\s*(\p{L}[\p{L}\d]*)/u.exec(entry.text.slice(end)) ?? [];
  return word !== undefined && !unitNamed(word) && !/^[NSEWO]$/.test(word);
}
