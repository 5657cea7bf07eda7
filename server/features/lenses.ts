/** What stands above setups and checks: what to key in a line, and the verdict. */
import type { CheckValues } from '../derive/check.ts';
import type { SetupValues } from '../derive/setup.ts';
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

export function lensesOf({ session, derivation }: Inspection): Lens[] {
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
  return [...setups, ...checks].flatMap(({ place, says, opensCard }) => {
    const at = offsetsOf(session, place);
    return at && says !== '' ? [{ at, says, opensCard }] : [];
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

function checkSays({ verdict, residual, setup }: CheckValues): string {
  if (verdict === 'undecided') return '';
  const { horizontal, up } = residual;
  const size =
    isHole(horizontal) || isHole(up)
      ? ''
      : `: ${signed(horizontal.value).replace('+', '')} horizontal, up ${signed(up.value)}`;
  return `${verdict}${setup ? ` against ${setup.setup.name}` : ''}${size}`;
}
