/** An angle that no instrument shows: sixty minutes or more, or beyond the pole. */
import { short } from '../words.ts';
import { kind } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const angleRange = kind({
  code: 'angle/range',
  find: (subject) => remarksAbout(subject, 'angle-range'),
  tell: ({ typed, limit }) => ({
    severity: 'error',
    message: `${short(typed)} is out of range: ${limit.endsWith('°') ? `such an angle ends at ${limit}` : 'minutes and seconds end below 60, and stand behind whole ones'}. Most often two digits are swapped, or decimals were read as minutes; the position counts as missing until it is put right.`,
  }),
});
