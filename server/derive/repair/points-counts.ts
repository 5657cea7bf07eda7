/** How many points of a set stand in each class: what the editor shows behind a points line, and what a proof is asked of. */
import { type Kept, keptWith } from '../../../grammar/kept-with.ts';
import type { Session } from '../../session/session.ts';
import type { Derivation } from '../derivation.ts';
import type { PointSet } from '../points/points.ts';
import { classesOf } from './fate.ts';
import type { Trust } from '../trust/trust.ts';
import { TRUST_CLASSES, type TrustClass } from '../trust/spans.ts';
import { classInWords } from '../trust/words.ts';

export interface PointCounts {
  readonly set: PointSet;
  readonly total: number;
  readonly classes: Readonly<Record<TrustClass, number>>;
  /** These take the worst class that they could have. */
  readonly withoutTime: number;
  /** Why the points cannot be read at all. */
  readonly refused: string | null;
}

/** Counted once for the same points and the same trust. */
export function pointCounts(
  set: PointSet,
  session: Session,
  derivation: Derivation,
  trust: Trust,
): PointCounts {
  const ofSet = known.get(set) ?? keptWith<Trust, PointCounts>();
  known.set(set, ofSet);
  const counts = ofSet.get(trust) ?? counted(set, session, derivation, trust);
  ofSet.set(trust, counts);
  return counts;
}
const known = keptWith<PointSet, Kept<Trust, PointCounts>>();

function counted(set: PointSet, session: Session, derivation: Derivation, trust: Trust): PointCounts {
  const { times, rowCount, refused } = set.scan();
  const classAt = classesOf(set, session, derivation, trust);
  const classes: Record<TrustClass, number> = {
    bracketed: 0,
    held: 0,
    'not-closed': 0,
    'not-opened': 0,
    unchecked: 0,
    'in-doubt': 0,
  };
  let withoutTime = 0;
  for (const time of times) {
    const dated = !Number.isNaN(time);
    if (!dated) withoutTime += 1;
    classes[classAt(dated ? time : null)] += 1;
  }
  return { set, total: rowCount, classes, withoutTime, refused };
}

/** `212 bracketed, 3 not closed`. */
export function countsInWords({ classes, total }: PointCounts): string {
  if (total === 0) return 'no points';
  return TRUST_CLASSES.filter((found) => classes[found] > 0)
    .map((found) => `${classes[found]} ${classInWords(found)}`)
    .join(', ');
}
