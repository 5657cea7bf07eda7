/** What an account of a set tells, gathered while its points pass by; nothing of the points is kept. */
import { repeatedFinder, type PointSet, type PointsScan } from '../derive/points.ts';
import { BEND_WORTH_PROCESSING } from '../derive/repair-bend.ts';
import type { RepairedPoint } from '../derive/repair-row.ts';
import type { PointsFacts } from '../evidence/points/points-file.ts';
import { isRefusal, type Refusal } from '../quantities/refusal.ts';

export interface Tally extends Pick<PointsScan, 'repeated' | 'manyNames'> {
  readonly set: PointSet;
  readonly total: number;
  readonly repaired: number;
  readonly withoutTime: number;
  /** Points by what is written of their class. */
  readonly labels: ReadonlyMap<string, number>;
  /** Points by the reason given; the most frequent ones. */
  readonly reasons: ReadonlyMap<string, number>;
  /** Points whose vectors are bent so far that the raw observations are worth processing again. */
  readonly bent: number;
  readonly largestBend: number;
  readonly facts: PointsFacts | Refusal;
}

/** Reads a whole set, hands each point on, and tells what there was. */
export function tallied(
  set: PointSet,
  repair: (row: RepairedPoint['row']) => RepairedPoint,
  take: (point: RepairedPoint) => void,
): Tally {
  const labels = new Map<string, number>();
  const reasons = new Map<string, number>();
  const finder = repeatedFinder();
  let total = 0;
  let repaired = 0;
  let withoutTime = 0;
  let bent = 0;
  let largestBend = 0;
  const facts = set.read((row) => {
    const point = repair(row);
    total += 1;
    if (point.shift) repaired += 1;
    if (row.time === undefined) withoutTime += 1;
    if (point.bend > BEND_WORTH_PROCESSING) bent += 1;
    if (point.bend > largestBend) largestBend = point.bend;
    count(labels, point.label);
    count(reasons, point.reason);
    finder.take(row);
    take(point);
  });
  const found = { set, total, repaired, withoutTime, labels, reasons, bent, largestBend, facts };
  return { ...found, ...finder.found() };
}

/** More different ones are no reasons any more; they are counted together. */
const MOST = 50;
const OTHERS = 'for other reasons';

function count(counts: Map<string, number>, key: string): void {
  const known = counts.get(key);
  if (known !== undefined) counts.set(key, known + 1);
  else if (counts.size < MOST) counts.set(key, 1);
  else counts.set(OTHERS, (counts.get(OTHERS) ?? 0) + 1);
}

export const problemsOf = ({ facts }: Tally) => (isRefusal(facts) ? [] : facts.problems);
