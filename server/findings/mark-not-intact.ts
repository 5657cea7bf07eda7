/** A mark that was found damaged, disturbed or gone, and that the day rests on all the same. */
import { kind } from './finding.ts';
import { placeOfUse, saidOfUse, usedMarks } from './uses.ts';

export const markNotIntact = kind({
  code: 'mark/not-intact',
  find: (subject) =>
    usedMarks(subject).flatMap((used) => {
      const { found } = used.values.mark;
      if (!found || !UNSOUND.some((word) => word === found.name)) return [];
      return [{ used, found, place: placeOfUse(used, subject, found.place) }];
    }),
  tell: ({ used, found }) => ({
    severity: 'warning',
    message: `${used.values.mark.name} was found ${said(found.name)}, and ${saidOfUse(used)}. It may no longer be where its coordinates say, and everything that rests on it is off by as much; use another mark, or prove it against two others first.`,
  }),
});

/** Words for `found` that make a mark unfit. */
const UNSOUND = ['damaged', 'disturbed', 'destroyed', 'not-found'] as const;

const said = (word: string) => word.replace('-', ' ');
