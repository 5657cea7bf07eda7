/** An angle that no instrument shows: sixty minutes or more, or beyond the pole. */
import { short } from '../words.ts';
import { kind } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const angleRange = kind({
  code: 'angle/range',
  find: (subject) => remarksAbout(subject, 'angle-range'),
  tell: ({ typed, limit }) => ({
    severity: 'error',
    headline: `Angle out of range: ${short(typed)}.`,
    effect: limit.endsWith('°')
      ? `It must be within ${limit}. The position is not used.`
      : 'Minutes and seconds must be below 60. The position is not used.',
    action: 'Look for swapped digits, or decimals read as minutes.',
  }),
});
