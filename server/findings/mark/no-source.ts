/** Coordinates that the day rests on, without the register that they were taken from. */
import type { MarkValues } from '../../derive/marks/mark.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { unreadDetail } from '../unread.ts';
import { hasDetail, nameIn, placeOfUse, saidOfUse, usedAmong } from '../uses.ts';

export const markNoSource = kind({
  code: 'mark/no-source',
  find: (subject) =>
    usedAmong(withoutSource(valuesOf(subject.derivation.marks)), subject).map((used) => ({
      used,
      place: placeOfUse(used, subject, nameIn(used.values.mark)),
    })),
  tell: ({ used }) => ({
    severity: 'information',
    follows: [unreadDetail(used.values.mark.name, 'source')],
    headline: `No source noted for the coordinates of ${used.values.mark.name}.`,
    effect: `${saidOfUse(used)}.`,
    action: 'Add the register and the day.',
  }),
  mend: ({ used: { values }, place }) =>
    place.entry === values.mark.entry
      ? [
          {
            title: 'Add a line for the source',
            edits: [addedDetail(place.path, place.entry, 'source', '?')],
          },
        ]
      : [],
});

const withoutSource = foundInEach((values: MarkValues) =>
  isHole(values.located) || hasDetail(values.mark, 'source') ? [] : [values],
);
