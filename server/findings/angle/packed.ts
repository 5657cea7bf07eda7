/** An angle whose degrees, minutes and seconds run into one another. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const anglePacked = kind({
  code: 'angle/packed',
  find: (subject) => remarksAbout(subject, 'angle-packed'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    message:
      readings.length > 1
        ? `${short(typed)} can be read as ${oneOf(readings)}: kilometres apart, so the position counts as missing. Write the marks of degrees, minutes and seconds.`
        : `${short(typed)} lacks the marks of degrees, minutes and seconds, so the position counts as missing. Write them${readings[0] ? `: ${readings[0]}` : ''}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
