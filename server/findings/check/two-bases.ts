/** A check that could have been made from either of two bases that stood at once: it proves neither. */
import { basesOf } from '../../derive/checks/base-of-check.ts';
import { allOf } from '../../quantities/show.ts';
import { valuesOf } from '../../session/each.ts';
import { addedDetail } from '../edits.ts';
import { kind, type Subject } from '../finding.ts';
import { unreadIn } from '../unread.ts';
import { namePlace } from './residuals.ts';

export const checkTwoBases = kind({
  code: 'check/two-bases',
  find: (subject) => ambiguous(subject),
  tell: ({ check, bases, place }) => ({
    severity: 'warning',
    headline: `${check.name} could be from ${allOf(bases)}: all stood then.`.replace(
      /: all(?= stood)/,
      bases.length === 2 ? ': both' : ': all',
    ),
    effect: 'It proves none of them, and clears none.',
    action: `Write which one it was: from ${bases[0] ?? 'BASE'}.`,
    causes: bases.map((base) => `undated/${base}`),
    follows: unreadIn(place, 'from'),
  }),
  mend: ({ check }) =>
    check.entry.details.some(({ word }) => word?.word === 'from')
      ? []
      : [
          {
            title: 'Add a line for the base, still open',
            edits: [addedDetail(check.place.path, check.entry, 'from', '?')],
          },
        ],
});

function ambiguous({ session, derivation }: Subject) {
  if (session.setups.size < 2) return [];
  const setups = valuesOf(derivation.setups);
  return derivation.checks.flatMap(({ check, setup, instant }) => {
    if (setup !== null || check.from !== null || instant === null) return [];
    const bases = basesOf(instant, setups).map(({ setup: one }) => one.name);
    return bases.length < 2 ? [] : [{ check, bases, place: namePlace(check) }];
  });
}
