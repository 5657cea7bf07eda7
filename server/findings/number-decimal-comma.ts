/** A comma between digits: a decimal sign, a group of thousands, or two numbers. */
import { oneOf, short } from './words.ts';
import { kind, readingFixes } from './finding.ts';
import { letterSlips } from './remarks.ts';

export const numberDecimalComma = kind({
  code: 'number/decimal-comma',
  find: (subject) => letterSlips(subject, 'decimal-comma'),
  tell: ({ slip }) => ({
    severity: 'error',
    message: `${short(slip.typed)} can be read as ${oneOf(slip.readings.map((reading) => reading.replaceAll(', ', ' and ')))}, and the readings lie far apart, so it counts as missing. The decimal sign is a point; a comma that parts two values has a blank behind it.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
