/** What stands before the cursor in its line, as far as it decides what may go on there. */
import { unitNamed, type Dimension } from '../../../grammar/units.ts';
import type { Item, Part } from '../../../grammar/tree.ts';

export interface Spot {
  readonly items: readonly Item[];
  readonly last: Item | null;
  /** Words that have been said, as one writes them. */
  readonly said: ReadonlySet<string>;
  /** How many quantities or numbers have been said. */
  readonly numbers: number;
  readonly atStart: boolean;
  readonly afterComma: boolean;
  /** The last thing said is a quantity with its unit. */
  readonly behindQuantity: boolean;
  /** The last thing said is a number without a unit. */
  readonly behindNumber: boolean;
  /** What the first unit typed measures. */
  readonly measured: Dimension | null;
}

export function spotAfter(items: readonly Item[]): Spot {
  const last = items.at(-1) ?? null;
  const part = last ? lastPart(last) : null;
  const parts = items.map(lastPart).filter((found) => found !== null);
  const unit = parts.find((found) => found.unit)?.unit;
  return {
    items,
    last,
    said: new Set(items.flatMap((item) => (item.kind === 'word' ? [item.word] : []))),
    numbers: items.filter(({ kind }) => kind === 'sum').length,
    atStart: items.length === 0,
    afterComma: last?.kind === 'comma',
    behindQuantity: part !== null && part.unit !== null,
    behindNumber: part !== null && part.unit === null && !part.numeral.open,
    measured: (unit && unitNamed(unit.unit)?.measures) ?? null,
  };
}

/** The number that a sum ends with, or its uncertainty. */
function lastPart(item: Item): Part | null {
  if (item.kind !== 'sum') return null;
  const term = item.terms.at(-1);
  return (term?.uncertainty ?? term?.measure)?.parts.at(-1) ?? null;
}
