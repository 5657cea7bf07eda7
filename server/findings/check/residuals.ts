/** How findings speak of a check's residual, and where it stands in the text. */
import { largestOf, smallestOf } from '../../quantities/extremes.ts';
import { showLength } from '../../quantities/show.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import type { Place } from '../../../grammar/tree.ts';

/** `60 mm high`, `45 mm horizontally`. */
export const saidResidual = (component: 'horizontal' | 'up', residual: number): string =>
  component === 'up'
    ? `${showLength(Math.abs(residual))} ${residual > 0 ? 'high' : 'low'}`
    : `${showLength(residual)} horizontally`;

/** The observed numbers, where there are any. */
export function residualPlace({ check }: CheckValues): Place {
  const { observed } = check;
  if (!observed) return namePlace(check);
  const position = observed.position?.place;
  const height = observed.height?.place;
  if (!position && !height) return observed.place;
  const parts = [position, height].filter((part) => part !== undefined);
  return {
    ...observed.place,
    start: smallestOf(parts.map(({ start }) => start)),
    end: largestOf(parts.map(({ end }) => end)),
  };
}

/** The name behind the entry's first word. */
export function namePlace({ entry, place }: Pick<CheckValues['check'], 'entry' | 'place'>): Place {
  const [name] = entry.header.items;
  return name ? { ...place, start: name.start, end: name.end } : place;
}
