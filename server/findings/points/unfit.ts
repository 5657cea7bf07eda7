/** Points that are not what they are taken for: observed too weakly, too far from their base, or of a name that stands elsewhere. */
import type { Place } from '../../../grammar/tree.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { pointCounts } from '../../derive/repair/points-counts.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import { showLength } from '../../quantities/show.ts';
import { valuesOf } from '../../session/each.ts';
import { kind, type Subject } from '../finding.ts';
import { setInWords } from './set-in-words.ts';

interface Unfit {
  readonly place: Place;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  /** A base that is put elsewhere puts all its points far off. */
  readonly follows: readonly string[];
}

export const pointsUnfit = kind<Unfit>({
  code: 'points/unfit',
  find: (subject) => subject.derivation.points.flatMap((set) => [...flawed(set, subject), ...ofOneName(set)]),
  tell: ({ headline, effect, action, follows }) => ({
    severity: 'warning',
    headline,
    effect,
    action,
    follows,
  }),
});

function flawed(set: PointSet, { session, derivation }: Subject): Unfit[] {
  const { classes, examples, total } = pointCounts(set, session, derivation, trustOf(session, derivation));
  return (['too-weak', 'misplaced'] as const).flatMap((found): Unfit[] => {
    const example = examples[found];
    if (!example) return [];
    const count = classes[found];
    const { subject, be } = setInWords(set, count, total);
    const first =
      set.kind === 'point' ? '' : `First ${set.kind === 'file' ? 'line' : 'row'} ${example.line}: `;
    const reason = unrepeated(example.reason);
    const line = set.placeOf(example.line);
    return found === 'too-weak'
      ? [
          {
            place: line,
            headline: `${subject} ${be} observed too weakly.`,
            effect: `${first}${reason} It gets no class or uncertainty.`,
            action: 'Measure again what matters.',
            follows: [],
          },
        ]
      : [
          {
            place: line,
            headline: `${subject} ${be} too far from the base.`,
            effect: `${first}${reason} It gets no class or uncertainty.`,
            action: 'Compare the columns and the base (from) with the controller.',
            follows: valuesOf(derivation.setups).flatMap(({ mark }) =>
              mark ? [`mark/${mark.mark.name}/position`] : [],
            ),
          },
        ];
  });
}

/** Without what the headline has just said. */
function unrepeated(reason: string): string {
  const said = reason.replace(/^Observed too weakly: /, '');
  return said.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
}

function ofOneName(set: PointSet): Unfit[] {
  const { count, worst } = set.scan().clashes;
  if (!worst) return [];
  const { name, lines, apart } = worst;
  return [
    {
      place: set.placeOf(lines[1]),
      headline: `The name ${name} stands for places ${showLength(apart)} apart.`,
      effect: `${set.kind === 'file' ? 'Lines' : 'Rows'} ${lines.join(' and ')}${count > 1 ? `; ${count} points in all have the name of another place` : ''}.`,
      action: 'Give each place a name of its own.',
      follows: [],
    },
  ];
}
