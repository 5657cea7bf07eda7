/** East and north of an observation in each other's place: it fails, and would pass the other way round. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { limitOf } from '../../derive/checks/verdict.ts';
import type { Position } from '../../session/coordinates.ts';
import { foundInEach } from '../../session/each.ts';
import { numberOf } from '../../slips/situation.ts';

export interface SwappedObservation {
  readonly check: CheckValues;
  readonly position: Position;
}

/** The key by which a failing check is told under it. */
export const swappedKey = ({ check }: CheckValues) => `observed/${check.name}/swapped`;

export const swappedObservations = foundInEach((check: CheckValues): readonly SwappedObservation[] =>
  isSwapped(check) && check.check.observed?.position
    ? [{ check, position: check.check.observed.position }]
    : [],
);

/** By the numbers themselves: in grids whose axes are alike both ways are places, and only one is near the mark. */
export function isSwapped(values: CheckValues): boolean {
  const { check, mark, judged } = values;
  const position = check.observed?.position;
  if (judged.horizontal !== 'fails' || !mark || position?.form !== 'grid') return false;
  const [east, north] = [numberOf(position.east), numberOf(position.north)];
  const [markEast, markNorth] = [numberOf(mark.east), numberOf(mark.north)];
  if (east === null || north === null || markEast === null || markNorth === null) return false;
  const off = Math.hypot(east - markNorth, north - markEast);
  const { size: limit } = limitOf('horizontal', values);
  // As they were typed, the numbers must be another place altogether.
  return off <= limit && Math.hypot(east - markEast, north - markNorth) > APART * limit;
}

const APART = 10;
