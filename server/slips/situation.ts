/** A base as slips see it: the numbers that it should have been told, those that lay about, and what it was told. */
import { forward } from '../geodesy/projection.ts';
import type { ProjectedSystem } from '../geodesy/system.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import { gridNamed, sameDatum, type Frame } from '../derive/positions/frame.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { KeyedValues } from '../derive/setups/keyed.ts';
import type { MarkValues } from '../derive/marks/mark.ts';
import { remembered } from '../derive/remembered.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Session } from '../session/session.ts';
import type { Place } from './slip.ts';

export interface Situation {
  readonly setup: SetupValues;
  readonly keyed: KeyedValues | null;
  readonly frame: Frame;
  readonly session: Session;
  readonly derivation: Derivation;
  readonly right: Right;
}

/**
 * What the receiver should have been told, as it would be typed: the keyed number itself where it agrees with the right one,
 * else the right one to the millimetre; null where it cannot be known. Metres and degrees.
 */
export interface Right {
  /** To the point that the keyed antenna height names, else to the ARP. */
  readonly antennaHeight: number | null;
  /** The same as the tape gives it, not rounded. */
  readonly tapedHeight: number | null;
  /** Standard uncertainty of the taped height. */
  readonly antennaHeightSigma: number;
  /** From a height to that point down to the ARP. */
  readonly toArp: number;
  /** Above the ellipsoid, without the error of any mark. */
  readonly height: number | null;
  readonly orthometric: number | null;
  readonly separation: number | null;
  readonly place: Place | null;
  /** The same place in the grid that positions are typed in here; null where they are typed as angles. */
  readonly grid: { readonly system: ProjectedSystem; readonly east: number; readonly north: number } | null;
}

/** A keyed number is right when it is so to its last digit, or to this: what a careful person rounds away, metres. */
export const ROUNDED = 0.002;
/** The 99 % half-width of a normal distribution: a keyed antenna height within this of the taped one is no slip. */
export const SURELY = 2.58;

/** @param keyed null where nothing was keyed */
export function situationOf(
  setup: SetupValues,
  keyed: KeyedValues | null,
  session: Session,
  derivation: Derivation,
): Situation {
  return {
    setup,
    keyed,
    frame: derivation.frame,
    session,
    derivation,
    right: rightNumbers(setup, keyed ?? NO_STATE, derivation.frame),
  };
}

const NO_STATE: { readonly none: true } = { none: true };

export const rightNumbers = remembered(
  (setup: SetupValues, state: KeyedValues | typeof NO_STATE, frame: Frame): Right => {
    const keyed = 'state' in state ? state : null;
    const { tell, mark } = setup;
    const height = keyed?.wanted.standing ?? setup.height;
    const arp = numberOf(height.arp);
    const toPhaseCentre = keyed?.state.antennaHeight?.to?.name === 'phase-centre';
    const tapedHeight = toPhaseCentre ? numberOf(height.phaseCentre) : arp;
    const toArp = tapedHeight === null || arp === null ? 0 : arp - tapedHeight;
    const sigma = isHole(height.arp) ? 0 : (height.arp.sigma ?? 0);
    const told = numberOf(keyed?.antennaHeight);
    const antennaHeight = typed(tapedHeight, told === null ? null : told - toArp, SURELY * sigma);
    const place = typedPlace(tell, keyed);
    return {
      antennaHeight,
      tapedHeight,
      antennaHeightSigma: sigma,
      toArp,
      height: typed(numberOf(tell.ellipsoidalHeight), numberOf(keyed?.height), 0),
      orthometric: mark ? numberOf(mark.orthometricHeight) : null,
      separation: mark ? numberOf(mark.separation) : null,
      place,
      grid: place && gridPlace(place, keyed, setup.mark, frame),
    };
  },
);

/** The keyed number where it agrees, else the right one rounded as people round. */
function typed(right: number | null, keyed: number | null, surely: number): number | null {
  if (right === null) return null;
  if (keyed !== null && Math.abs(keyed - right) <= Math.max(ROUNDED, surely)) return keyed;
  return Math.round(right * 1000) / 1000;
}

/** To 0.00001″, a third of a millimetre; the keyed place where it is no farther off than that rounding allows. */
function typedPlace(tell: SetupValues['tell'], keyed: KeyedValues | null): Place | null {
  const latitude = numberOf(tell.latitude);
  const longitude = numberOf(tell.longitude);
  if (latitude === null || longitude === null) return null;
  const [east, north] = [numberOf(keyed?.east), numberOf(keyed?.north)];
  if (
    keyed &&
    !isHole(keyed.located) &&
    east !== null &&
    north !== null &&
    Math.hypot(east, north) <= ROUNDED
  )
    return { latitude: keyed.located.latitude.value, longitude: keyed.located.longitude.value };
  return { latitude, longitude };
}

/** Grid coordinates as they would be typed: in the grid of the keyed position, else of the mark's own. */
function gridPlace(
  place: Place,
  keyed: KeyedValues | null,
  mark: MarkValues | null,
  frame: Frame,
): Right['grid'] {
  const position = keyed?.state.position ?? mark?.mark.position;
  if (position?.form !== 'grid') return null;
  const system = position.system ? gridNamed(position.system, frame) : frame.grid;
  if (isHole(system)) return null;
  if (isHole(frame.keyed) || !sameDatum(system.datum, frame.keyed.datum)) return null;
  const grid = forward(system, {
    latitude: asLatitude(place.latitude),
    longitude: asLongitude(place.longitude),
  });
  if (isRefusal(grid)) return null;
  const { east, north } = grid;
  return { system, east: Math.round(east * 1e4) / 1e4, north: Math.round(north * 1e4) / 1e4 };
}

export const numberOf = (value: Maybe<Value> | null | undefined): number | null =>
  !value || isHole(value) || !Number.isFinite(value.value) ? null : value.value;
