/** The slips that corrections confirm, with the error that each has made: what somebody wrote down, never a guess. */
import type { Derivation } from '../../derive/derivation.ts';
import type { ConfirmedSlip } from '../../derive/repair/repair.ts';
import { residualsWithout, ROUNDING } from '../../derive/repair/repair.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { geocentricVectorOf, topocentricOf } from '../../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geographic,
  type Topocentric,
} from '../../quantities/brands.ts';
import { isHole } from '../../quantities/value.ts';
import type { Correction } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import { situationOf } from '../../slips/situation.ts';
import { SLIPS } from '../../slips/slips.ts';
import type { Slip, Way } from '../../slips/slip.ts';
import { broadcastShift } from '../../slips/told.ts';

export interface Confirmed {
  readonly slips: readonly ConfirmedSlip[];
  /** Corrections from which no repair follows, and why. */
  readonly unclear: readonly { readonly correction: Correction; readonly because: string }[];
}

export function confirmedSlips(session: Session, derivation: Derivation): Confirmed {
  const slips: ConfirmedSlip[] = [];
  const unclear: { correction: Correction; because: string }[] = [];
  for (const correction of session.corrections) {
    const found = fromCorrection(correction, session, derivation);
    if (typeof found === 'string') unclear.push({ correction, because: found });
    else slips.push(found);
  }
  return { slips, unclear };
}

/** The slip, or why there is none. */
function fromCorrection(
  correction: Correction,
  session: Session,
  derivation: Derivation,
): ConfirmedSlip | string {
  const slip = slipNamed(correction.text);
  if (!slip) return `no slip that is known here is called "${correction.text}"`;
  const setups = [...derivation.setups.values()];
  const setup = correction.on
    ? derivation.setups.get(correction.on.name)
    : setups.length === 1
      ? setups[0]
      : undefined;
  const origin = setup ? originOf(setup) : null;
  if (!setup || !origin) return 'at which base it happened is not said';
  if (slip.name === 'base-moved')
    return {
      correction,
      slip: 'The base was moved',
      setup: setup.setup.name,
      rover: null,
      from: null,
      until: null,
      base: null,
      atRover: null,
      moved: true,
    };
  const failing = residualsWithout(setup, derivation.checks, derivation.frame);
  const states = setup.keyed.length > 0 ? setup.keyed : [null];
  const candidates = states.flatMap((state) => {
    const span = {
      from: state?.state.number === 1 ? null : (state?.state.from ?? null),
      until: state === setup.keyed.at(-1) ? null : (state?.state.until ?? null),
    };
    const inside = failing.filter(({ check }) => check.keyed === state || state === null);
    if (states.length > 1 && inside.length === 0) return [];
    const situation = situationOf(setup, state, session, derivation);
    return slip.ways(situation).flatMap((way) => {
      const effect = effectOf(way, situation, origin, derivation);
      return effect ? [{ way, span, effect, inside }] : [];
    });
  });
  if (candidates.length === 0) return 'what it would have done to this session cannot be worked out';
  const said = lengthsIn(`${correction.text} ${correction.because?.text ?? ''}`);
  const meant = candidates.filter(({ way }) => lengthsIn(way.says).some((length) => said.includes(length)));
  const ranked = (meant.length > 0 ? meant : candidates)
    .map((candidate) => ({ ...candidate, miss: missOf(candidate.effect.seen, candidate.inside) }))
    .sort((one, other) => one.miss - other.miss);
  const [nearest] = ranked;
  if (!nearest) return 'what it would have done to this session cannot be worked out';
  const fits = ({ effect, inside }: (typeof ranked)[number]) =>
    inside.every(({ within, ...rest }) => within(effect.seen, rest));
  if (!fits(nearest)) return 'what the failing checks show is not what it would have done';
  const other = ranked.slice(1).find((one) => fits(one) && differs(one.effect.seen, nearest.effect.seen));
  if (other)
    return `the checks leave open whether ${nearest.way.says} or ${other.way.says}; write its size into the correction`;
  return {
    correction,
    slip: capital(nearest.way.says),
    setup: nearest.effect.base ? setup.setup.name : null,
    rover: nearest.effect.rover,
    ...nearest.span,
    base: nearest.effect.base,
    atRover: nearest.effect.base ? null : nearest.effect.seen,
  };
}

/** Lengths that a text speaks of, in whole tenths of millimetres. */
function lengthsIn(text: string): number[] {
  const units: Readonly<Record<string, number>> = { mm: 10, cm: 100, m: 10_000 };
  return [...text.matchAll(/(\d{1,6}(?:\.\d{1,4})?)\s?(mm|cm|m)\b/g)].map(([, digits, unit]) =>
    Math.round(Number(digits) * (units[unit ?? ''] ?? NaN)),
  );
}

const differs = (one: Topocentric, other: Topocentric) =>
  Math.hypot(one.east - other.east, one.north - other.north, one.up - other.up) > ROUNDING;

/** A correction names a slip by its name, with blanks or dashes: the longest name that its text holds. */
function slipNamed(text: string): Slip | undefined {
  const words = plain(text);
  return SLIPS.filter(({ name }) => ` ${words} `.includes(` ${plain(name)} `)).sort(
    (one, other) => other.name.length - one.name.length,
  )[0];
}
const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

interface Effect {
  /** Broadcast minus true; null for a slip at the rover. */
  readonly base: ConfirmedSlip['base'];
  readonly rover: string | null;
  /** As checks see it. */
  readonly seen: Topocentric;
}

/** What is known only in part repairs nothing. */
function effectOf(
  { effect }: Way,
  situation: Parameters<typeof broadcastShift>[1],
  origin: Geographic,
  { checks }: Derivation,
): Effect | null {
  if (effect.on === 'told') {
    const base = broadcastShift(effect.told, situation);
    return base && { base, rover: null, seen: topocentricOf(origin, base) };
  }
  if (effect.on === 'antenna') {
    const seen = { east: metres(0), north: metres(0), up: metres(effect.up) };
    return { base: geocentricVectorOf(origin, seen), rover: null, seen };
  }
  if (effect.on === 'base' || (effect.free?.length ?? 0) > 0) return null;
  const shown = checks
    .filter((check) => check.setup === situation.setup)
    .flatMap((check) => {
      const shift = effect.shift(check);
      return shift ? [{ rover: check.check.by?.name ?? null, shift }] : [];
    });
  const [first] = shown;
  const same = shown.every(
    ({ shift, rover }) =>
      rover === first?.rover &&
      Math.hypot(shift.east - first.shift.east, shift.north - first.shift.north, shift.up - first.shift.up) <
        1e-4,
  );
  if (!first || !same) return null;
  const { east, north, up } = first.shift;
  return {
    base: null,
    rover: first.rover,
    seen: { east: metres(east), north: metres(north), up: metres(up) },
  };
}

/** How far the failing checks lie from an effect, in the mean of squares. */
function missOf(seen: Topocentric, failing: ReturnType<typeof residualsWithout>): number {
  return failing.reduce(
    (sum, { east, north, up }) =>
      sum + (east - seen.east) ** 2 + (north - seen.north) ** 2 + (up - seen.up) ** 2,
    0,
  );
}

function originOf({ mark }: SetupValues): Geographic | null {
  if (!mark || isHole(mark.located)) return null;
  return {
    latitude: asLatitude(mark.located.latitude.value),
    longitude: asLongitude(mark.located.longitude.value),
  };
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
