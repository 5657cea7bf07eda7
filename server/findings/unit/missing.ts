/** A number that stands where a quantity belongs, without its unit. */
import { kind, readingFixes, standsAlone } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const unitMissing = kind({
  code: 'unit/missing',
  find: (subject) => remarksAbout(subject, 'unit-missing'),
  tell: ({ typed, measures, readings }) => ({
    severity: 'error',
    headline: `No unit: ${measures} is ${typed}.`,
    effect: `It could be ${readings.some((reading) => reading.endsWith('°')) ? 'degrees, metres or feet' : 'metres, millimetres or feet'}, so it is not used.`,
    action: 'Write the unit that was read.',
  }),
  mend: ({ place, readings }) => (standsAlone(place) ? readingFixes(place, readings) : []),
});
