/** How many points of a set stand in each class: what the editor shows behind a points line, and what a proof is asked of. */
import { type Kept, keptWith } from '../../../grammar/kept-with.ts';
import type { Session } from '../../session/session.ts';
import type { Derivation } from '../derivation.ts';
import type { PointSet } from '../points/points.ts';
import { classesOf } from './fate.ts';
import type { Trust } from '../trust/trust.ts';
import {
  flawsOf,
  placeOf,
  POINT_CLASSES,
  pointClassInWords,
  REACH,
  type FlawClass,
  type PointClass,
} from './flaws.ts';
import { distanceFrom } from './distance.ts';
import { isHole } from '../../quantities/value.ts';

export interface PointCounts {
  readonly set: PointSet;
  readonly total: number;
  readonly classes: Readonly<Record<PointClass, number>>;
  /** The first point of each flaw. */
  readonly examples: Readonly<Partial<Record<FlawClass, { readonly line: number; readonly reason: string }>>>;
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
  const { classAt, setupAt } = classesOf(set, session, derivation, trust);
  const classes = Object.fromEntries(POINT_CLASSES.map((found) => [found, 0])) as Record<PointClass, number>;
  const examples: Partial<Record<FlawClass, { readonly line: number; readonly reason: string }>> = {};
  let withoutTime = 0;
  for (const time of times) if (Number.isNaN(time)) withoutTime += 1;
  if (mayBeFlawed(set, derivation)) {
    const flaws = flawsOf(set, derivation);
    set.read((row) => {
      const time = row.time ?? null;
      const flaw = flaws(row, setupAt(time));
      classes[flaw?.class ?? classAt(time)] += 1;
      if (flaw) examples[flaw.class] ??= { line: row.line, reason: flaw.reason };
    });
  } else for (const time of times) classes[classAt(Number.isNaN(time) ? null : time)] += 1;
  return { set, total: rowCount, classes, examples, withoutTime, refused };
}

/** Whether the rows must be looked at one by one: as long as none tells its quality and all lie near, their times say all. */
function mayBeFlawed(set: PointSet, { setups }: Derivation): boolean {
  const { graded, outermost } = set.scan();
  const { form, system } = set;
  if (graded || set.kind === 'point') return true;
  if (!form || isHole(system)) return false;
  return [...setups.values()].some((setup) => {
    const distance = distanceFrom(setup, { form, system });
    return outermost.some((row) => distance(...placeOf(row)) > REACH.value * NEARLY);
  });
}
/** What lies farthest in one of a few directions is not quite the farthest. */
const NEARLY = 0.9;

/** `212 bracketed, 3 not closed`. */
export function countsInWords({ classes, total }: PointCounts): string {
  if (total === 0) return 'no points';
  return POINT_CLASSES.filter((found) => classes[found] > 0)
    .map((found) => `${classes[found]} ${pointClassInWords(found)}`)
    .join(', ');
}
