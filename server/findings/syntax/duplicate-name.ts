/** Two marks, antennas, rovers, surfaces, setups, radios, checks or points of one name. */
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { short } from '../words.ts';

export const syntaxDuplicateName = kind({
  code: 'syntax/duplicate-name',
  find: (subject) => remarksAbout(subject, 'duplicate-name'),
  tell: ({ kind: what, name, first }) => ({
    severity: 'error',
    message: `A second ${what} is called ${short(name)}. The first one counts wherever the name is used, and this one is not used at all; give it a name of its own.`,
    rests: [{ message: `The first ${what} of this name.`, place: first }],
  }),
});
