/** What stands above setups, checks and points: what to key in a line, the verdict, and how many points are worth what. */
import type { CheckValues } from '../derive/checks/check.ts';
import { countsInWords, pointCounts } from '../derive/repair/points-counts.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import { trustOf } from '../derive/trust/trust.ts';
import type { Inspection } from '../inspect.ts';
import { isHole } from '../quantities/value.ts';
import { offsetsOf } from '../session/where.ts';
import type { Stretch } from './cursor.ts';
import { metres, signed } from './inlays.ts';

export interface Lens {
  readonly at: Stretch;
  readonly says: string;
  /** It opens what to key. */
  readonly opensCard: boolean;
}

export function lensesOf({ session, derivation }: Pick<Inspection, 'session' | 'derivation'>): Lens[] {
  const setups = [...derivation.setups.values()].map((values) => ({
    place: values.setup.place,
    says: setupSays(values),
    opensCard: true,
  }));
  const checks = derivation.checks.map((values) => ({
    place: values.check.place,
    says: checkSays(values),
    opensCard: false,
  }));
  return [...setups, ...checks, ...pointLenses({ session, derivation })].flatMap(
    ({ place, says, opensCard }) => {
      const at = offsetsOf(session, place);
      return at && says !== '' ? [{ at, says, opensCard }] : [];
    },
  );
}

/** Sets of points; single ones have their place in the report. */
function pointLenses({ session, derivation }: Pick<Inspection, 'session' | 'derivation'>) {
  const sets = derivation.points.filter(({ kind }) => kind !== 'point');
  if (sets.length === 0) return [];
  const trust = trustOf(session, derivation);
  return sets.map((set) => {
    const counts = pointCounts(set, session, derivation, trust);
    return {
      place: set.entry.place,
      says: counts.refused === null ? countsInWords(counts) : '',
      opensCard: false,
    };
  });
}

function setupSays({ tell, keyed }: SetupValues): string {
  const { antennaHeight, ellipsoidalHeight } = tell;
  if (isHole(antennaHeight) || isHole(ellipsoidalHeight)) return 'what to key is not known yet';
  const card = `key ${metres(ellipsoidalHeight)} ellipsoidal, antenna ${metres(antennaHeight)}`;
  const last = keyed.at(-1);
  if (!last || isHole(last.east) || isHole(last.north) || isHole(last.up)) return card;
  const off = Math.hypot(last.east.value, last.north.value, last.up.value);
  return off < 0.001 ? `${card} · keyed so` : `${card} · keyed ${signed(off).replace('+', '')} beside it`;
}

export function checkSays({ verdict, residual, setup }: CheckValues): string {
  if (verdict === 'undecided') return '';
  const { horizontal, up } = residual;
  const size =
    isHole(horizontal) || isHole(up)
      ? ''
      : `: ${signed(horizontal.value).replace('+', '')} horizontal, up ${signed(up.value)}`;
  return `${verdict}${setup ? ` against ${setup.setup.name}` : ''}${size}`;
}
