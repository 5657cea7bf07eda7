/** A mark without a stated uncertainty, where a check could be judged by one. */
import { allOf } from '../../quantities/show.ts';
import type { MarkValues } from '../../derive/marks/mark.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { unreadDetail } from '../unread.ts';
import { hasDetail, nameIn, placeOfUse, usedAmong } from '../uses.ts';

export const markNoUncertainty = kind({
  code: 'mark/no-uncertainty',
  find: (subject) =>
    usedAmong(withoutUncertainty(valuesOf(subject.derivation.marks)), subject).flatMap((used) => {
      const { mark, sigmaHorizontal, sigmaVertical } = used.values;
      const checks = subject.derivation.checks.filter(
        ({ mark: on, setup, occupation, expected }) =>
          occupation !== null &&
          (on === used.values || setup?.mark === used.values) &&
          ((sigmaHorizontal === null && isHole(expected.horizontal)) ||
            (sigmaVertical === null && isHole(expected.up))),
      );
      if (checks.length === 0) return [];
      return [{ used, checks, place: placeOfUse(used, subject, nameIn(mark)) }];
    }),
  tell: ({ used, checks }) => ({
    severity: 'information',
    follows: [unreadDetail(used.values.mark.name, 'uncertainty')],
    headline: `No uncertainty noted for ${used.values.mark.name}.`,
    effect: `Noise and blunder cannot be told apart in ${allOf(checks.map(({ check }) => check.name))}.`,
    action: 'Add what the register says.',
  }),
  mend: ({ used: { values }, place }) =>
    place.entry === values.mark.entry
      ? [
          {
            title: 'Add a line for the uncertainty',
            edits: [addedDetail(place.path, place.entry, 'uncertainty', '? horizontal, ? vertical')],
          },
        ]
      : [],
});

const withoutUncertainty = foundInEach((values: MarkValues) =>
  hasDetail(values.mark, 'uncertainty') ? [] : [values],
);
