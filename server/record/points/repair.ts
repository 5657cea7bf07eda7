/** The repair of a whole session: trust, what is taken off, and a repairer for each set of points. */
import type { Derivation } from '../../derive/derivation.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { fatesOf } from '../../derive/repair/fate.ts';
import { rowRepairer, type RepairedPoint } from '../../derive/repair/row.ts';
import { repairOf, type Repair } from '../../derive/repair/repair.ts';
import { dayFacts, trustOf, type Trust } from '../../derive/trust/trust.ts';
import type { Session } from '../../session/session.ts';
import { confirmedSlips, type Confirmed } from './confirmed.ts';

export interface SessionRepair {
  readonly trust: Trust;
  readonly repair: Repair;
  readonly confirmed: Confirmed;
  readonly repairer: (set: PointSet) => (row: RepairedPoint['row']) => RepairedPoint;
}

export function sessionRepair(session: Session, derivation: Derivation): SessionRepair {
  const trust = trustOf(session, derivation);
  const confirmed = confirmedSlips(session, derivation);
  const repair = repairOf(dayFacts(session, derivation), trust, confirmed.slips);
  return {
    trust,
    repair,
    confirmed,
    repairer: (set) => rowRepairer(set, fatesOf(set, session, derivation, trust, repair), derivation),
  };
}
