/** An angle whose degrees, minutes and seconds run into one another. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const anglePacked = kind({
  code: 'angle/packed',
  find: (subject) => remarksAbout(subject, 'angle-packed'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    headline: `Angle without its marks: ${short(typed)}.`,
    effect:
      readings.length > 1
        ? `It can be read as ${oneOf(readings)}, kilometres apart; not used.`
        : 'Position not used.',
    action:
      readings.length === 1
        ? `Write ${readings[0] ?? ''}.`
        : 'Write the marks of degrees, minutes and seconds.',
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
