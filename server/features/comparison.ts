/** What stands in a line beside what should stand there: of a line that was keyed, and of what a check observed. */
import type { CheckValues } from '../derive/checks/check.ts';
import type { KeyedValues } from '../derive/setups/keyed.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Inspection } from '../inspect.ts';
import { explain, type TellPlace } from '../quantities/explain.ts';
import { showAngle, showLength, showNumber, showSigma } from '../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Keyed } from '../session/entries.ts';
import { tellPlace } from '../session/where.ts';
import type { Cursor } from './cursor.ts';
import type { HoverBlock } from './hover.ts';

/** Nothing where either side is not known; the story of what is compared follows in three lines. */
export function comparisonOn({ bound, line }: Cursor, { session, derivation }: Inspection): HoverBlock[] {
  if (!line) return [];
  if (bound.kind === 'setup') {
    const setup = derivation.setups.get(bound.name);
    const typed = bound.keyed.find(({ place }) => place.start === line.start);
    const keyed = setup?.keyed.find(({ state }) => typed && state.lines.includes(typed));
    return setup && keyed && typed ? ofKeyed(typed, keyed, setup, tellPlace(session)) : [];
  }
  if (bound.kind !== 'check' || bound.observed?.place.start !== line.start) return [];
  const check = derivation.checks.find((one) => one.check === bound);
  return check ? ofCheck(check) : [];
}

function ofKeyed(line: Keyed, keyed: KeyedValues, { tell }: SetupValues, tellIn: TellPlace): HoverBlock[] {
  const { located } = keyed;
  const position =
    line.position && !isHole(located)
      ? [
          compared('latitude', located.latitude, tell.latitude, tellIn),
          compared('longitude', located.longitude, tell.longitude, tellIn),
        ]
      : [];
  const height = line.height
    ? [compared('ellipsoidal height', keyed.height, tell.ellipsoidalHeight, tellIn)]
    : [];
  const antenna = line.antennaHeight
    ? [compared('antenna height to the ARP', keyed.antennaHeight, keyed.wanted.standing.arp, tellIn)]
    : [];
  return [...position, ...height, ...antenna].filter((block) => block !== null);
}

/** Less than is ever keyed, metres or degrees. */
const AGREES = { m: 0.0005, '°': 0.5e-8 } as const;

function compared(
  what: string,
  keyed: Maybe<Value>,
  wanted: Maybe<Value>,
  tellIn: TellPlace,
): HoverBlock | null {
  if (isHole(keyed) || isHole(wanted)) return null;
  const angle = wanted.unit === '°';
  const show = (value: Value) =>
    angle ? showAngle(value.value, what === 'latitude' ? 'N' : 'E') : `${showNumber(value.value, 3)} m`;
  const off = keyed.value - wanted.value;
  const agrees = Math.abs(off) < AGREES[angle ? '°' : 'm'];
  const spread = wanted.sigma ? ` ± ${showSigma(wanted.sigma, wanted.unit)}` : '';
  const difference = agrees ? 'they agree' : angle ? 'they differ' : upOrDown(off);
  return {
    kind: 'story',
    title: `${what}: keyed ${show(keyed)}, should be ${show(wanted)}${spread}: ${difference}`,
    lines: shortly(wanted, tellIn),
  };
}

const upOrDown = (off: number) => `${showLength(Math.abs(off))} too ${off > 0 ? 'high' : 'low'}`;

/** Formula, numbers put in, result; where there is no formula, where it was given. */
const shortly = (value: Value, tellIn: TellPlace): string[] => explain(value, tellIn).slice(0, 3);

/** Horizontally and up, each beside its limit, and what the comparison itself is uncertain by. */
function ofCheck({ check, residual, tolerance, expected, verdict }: CheckValues): HoverBlock[] {
  const rows = [
    row('horizontal', residual.horizontal, tolerance.horizontal, expected.horizontal),
    row('up', residual.up, tolerance.up, expected.up),
  ].filter((one) => one !== null);
  if (rows.length === 0) return [];
  return [{ kind: 'story', title: `${check.name} ${verdict}: observed less known`, lines: rows }];
}

function row(
  direction: string,
  residual: Maybe<Value>,
  tolerance: Maybe<Value>,
  expected: Maybe<Value>,
): string | null {
  if (isHole(residual)) return null;
  const limit = isHole(tolerance) ? expected : tolerance;
  const sign = direction === 'up' && residual.value > 0 ? '+' : '';
  const allowed = isHole(limit) ? '' : `  limit ${showLength(limit.value)}`;
  return `${direction.padEnd(10)}  ${sign}${showLength(residual.value)}${allowed}`;
}
