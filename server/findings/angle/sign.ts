/** An angle that has both a sign and a hemisphere, which may say the same thing or its opposite. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const angleSign = kind({
  code: 'angle/sign',
  find: (subject) => remarksAbout(subject, 'angle-sign'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    headline: `Sign on an angle: ${short(typed)}.`,
    effect: `It can mean ${oneOf(readings)}; not used.`,
    action: 'Write N, S, E or W and no sign.',
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
