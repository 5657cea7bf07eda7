/** Two marks, antennas, rovers, surfaces, setups, radios, checks or points of one name. */
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { short } from '../words.ts';

export const syntaxDuplicateName = kind({
  code: 'syntax/duplicate-name',
  find: (subject) => remarksAbout(subject, 'duplicate-name'),
  tell: ({ kind: what, name, first }) => ({
    severity: 'error',
    headline: `Second ${what} called ${short(name)}.`,
    effect: 'Only the first one is used.',
    action: 'Give this one another name.',
    rests: [{ message: `The first ${what} of this name.`, place: first }],
  }),
});
