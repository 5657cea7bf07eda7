/** An angle that has both a sign and a hemisphere, which may say the same thing or its opposite. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const angleSign = kind({
  code: 'angle/sign',
  find: (subject) => remarksAbout(subject, 'angle-sign'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    message: `${short(typed)} has a sign, which may say the hemisphere, or say it a second time, or turn it round: it can mean ${oneOf(readings)}, so the position counts as missing. Leave the sign out and write the letter.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
