/** What an account of a set tells, gathered while its points pass by; nothing of the points is kept. */
import { repeatedFinder, type PointSet, type PointsScan, type Steps } from '../../derive/points/points.ts';
import { BEND_WORTH_PROCESSING } from '../../derive/repair/bend.ts';
import { isFlaw, type FlawClass } from '../../derive/repair/flaws.ts';
import type { RepairedPoint } from '../../derive/repair/row.ts';
import type { PointsFacts } from '../../evidence/points/points-file.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';

export interface Tally extends Pick<PointsScan, 'repeated' | 'manyNames' | 'clashes'> {
  readonly set: PointSet;
  readonly total: number;
  readonly repaired: number;
  readonly withoutTime: number;
  /** Points by what is written of their class. */
  readonly labels: ReadonlyMap<string, number>;
  /** Points that no proof takes, by what keeps them from it. */
  readonly flaws: ReadonlyMap<FlawClass, number>;
  /** Points by the reason given; the most frequent ones. */
  readonly reasons: ReadonlyMap<string, number>;
  /** Points whose vectors are bent so far that the raw observations are worth processing again. */
  readonly bent: number;
  readonly largestBend: number;
  readonly facts: PointsFacts | Refusal;
}

/** Reads a whole set piece by piece, hands each point on, and tells what there was. */
export function* tallied(
  set: PointSet,
  repair: (row: RepairedPoint['row']) => RepairedPoint,
  take: (point: RepairedPoint) => void,
): Steps<Tally> {
  const labels = counter();
  const reasons = counter();
  const flaws = new Map<FlawClass, number>();
  const finder = repeatedFinder();
  let total = 0;
  let repaired = 0;
  let withoutTime = 0;
  let bent = 0;
  let largestBend = 0;
  const takeRow = (row: RepairedPoint['row']) => {
    const point = repair(row);
    total += 1;
    if (point.shift) repaired += 1;
    if (row.time === undefined) withoutTime += 1;
    if (point.bend > BEND_WORTH_PROCESSING) bent += 1;
    if (point.bend > largestBend) largestBend = point.bend;
    const own = point.flaw?.class ?? point.fate.class;
    if (isFlaw(own)) flaws.set(own, (flaws.get(own) ?? 0) + 1);
    labels.count(point.label);
    reasons.count(point.reason);
    finder.take(row);
    take(point);
  };
  const facts = set.steps ? yield* set.steps(takeRow) : set.read(takeRow);
  const counts = { total, repaired, withoutTime, bent, largestBend };
  return {
    set,
    ...counts,
    flaws,
    labels: labels.counts(),
    reasons: reasons.counts(),
    facts,
    ...finder.found(),
  };
}

/** More different ones are no reasons any more; they are counted together. */
const MOST = 50;
const OTHERS = 'for other reasons';

/** Points that follow one another mostly share what is counted, so that it is looked up only where it changes. */
function counter(): {
  readonly count: (key: string) => void;
  readonly counts: () => ReadonlyMap<string, number>;
} {
  const counts = new Map<string, number>();
  let last = '';
  let run = 0;
  const add = () => {
    if (run === 0) return;
    const key = counts.has(last) || counts.size < MOST ? last : OTHERS;
    counts.set(key, (counts.get(key) ?? 0) + run);
    run = 0;
  };
  return {
    count(key) {
      if (key !== last) add();
      last = key;
      run += 1;
    },
    counts() {
      add();
      return counts;
    },
  };
}

export const problemsOf = ({ facts }: Tally) => (isRefusal(facts) ? [] : facts.problems);
