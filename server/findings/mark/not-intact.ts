/** A mark that was found damaged, disturbed or gone, and that the day rests on all the same. */
import type { MarkValues } from '../../derive/marks/mark.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { placeOfUse, saidOfUse, usedAmong } from '../uses.ts';

export const markNotIntact = kind({
  code: 'mark/not-intact',
  find: (subject) =>
    usedAmong(unsound(valuesOf(subject.derivation.marks)), subject).flatMap((used) => {
      const { found } = used.values.mark;
      return found ? [{ used, found, place: placeOfUse(used, subject, found.place) }] : [];
    }),
  tell: ({ used, found }) => ({
    severity: 'warning',
    headline: `Mark ${used.values.mark.name} was found ${said(found.name)}.`,
    effect: `${saidOfUse(used)}, and it may have moved.`,
    action: 'Use another mark, or prove this one against two others.',
  }),
});

/** Words for `found` that make a mark unfit. */
const UNSOUND = ['damaged', 'disturbed', 'destroyed', 'not-found'] as const;

const unsound = foundInEach((values: MarkValues) =>
  UNSOUND.some((word) => word === values.mark.found?.name) ? [values] : [],
);

const said = (word: string) => word.replace('-', ' ');
