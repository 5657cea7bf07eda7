/** East and north, or latitude and longitude, in each other's place: of a mark, or as they were keyed. */
import { kind } from '../finding.ts';
import { tellDifference } from '../keyed/differences.ts';
import { marksElsewhere, marksOutOfArea, type Outside } from './marks-out-of-area.ts';
import { outOfReach, tellOutOfReach, type OutOfReach } from './reach.ts';
import { swappedKey, swappedObservations, type SwappedObservation } from './swapped-observed.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import type { Place } from '../../../grammar/tree.ts';

const CODE = 'position/swapped';

type Evidence = { readonly place: Place } & (
  | { readonly keyed: KeyedDifference }
  | { readonly mark: Outside }
  | { readonly beyond: OutOfReach }
  | { readonly observed: SwappedObservation }
);

export const positionSwapped = kind<Evidence>({
  code: CODE,
  find: (subject) => [
    ...marksOutOfArea(subject)
      .filter(({ swappedInside }) => swappedInside)
      .map((mark): Evidence => ({ mark, place: mark.position.place })),
    ...marksElsewhere(subject).map((mark): Evidence => ({ mark, place: mark.position.place })),
    ...outOfReach(subject)
      .filter(({ other }) => other?.what === 'swapped')
      .map((beyond): Evidence => ({ beyond, place: beyond.written.position.place })),
    ...keyedDifferences(subject.session, subject.derivation)
      .filter(({ named }) => named?.slip.code === CODE)
      .map((keyed): Evidence => ({ keyed, place: keyed.place })),
    ...swappedObservations(subject.derivation.checks).map((observed): Evidence => ({
      observed,
      place: observed.position.place,
    })),
  ],
  tell: (evidence, subject) =>
    'keyed' in evidence
      ? tellDifference(evidence.keyed, subject)
      : 'beyond' in evidence
        ? tellOutOfReach(evidence.beyond)
        : 'observed' in evidence
          ? tellObserved(evidence.observed)
          : tellMark(evidence.mark),
});

function tellObserved({ check }: SwappedObservation) {
  const { name } = check.check;
  return {
    severity: 'error' as const,
    headline: `East and north of ${name} are swapped.`,
    effect: `Swapped, it agrees with ${check.mark?.mark.name ?? 'its mark'}.`,
    action: 'Look at the controller, and note what it showed.',
    causes: [swappedKey(check)],
  };
}

function tellMark({ mark, system, position, distance }: Outside) {
  const inside = distance === 0;
  const which = position.form === 'grid' ? 'east and north' : 'latitude and longitude';
  return {
    severity: 'error' as const,
    headline: `Swapped ${which} of ${mark.name}?`,
    effect: inside
      ? 'Swapped, it agrees with where the receiver finds itself.'
      : `Outside the area of ${system.code ?? system.name}; swapped, it is inside.`,
    action: 'Look at the register: which of its columns is which.',
    causes: [`mark/${mark.name}/position`, `mark/${mark.name}/height`],
  };
}
