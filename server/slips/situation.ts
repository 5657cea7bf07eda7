/** A base as slips see it: the numbers that it should have been told, those that lay about, and what it was told. */
import { forward } from '../geodesy/projection.ts';
import type { ProjectedSystem } from '../geodesy/system.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import { gridNamed, sameDatum, type Frame } from '../derive/frame.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { KeyedValues } from '../derive/keyed.ts';
import type { MarkValues } from '../derive/mark.ts';
import { remembered } from '../derive/remembered.ts';
import type { SetupValues } from '../derive/setup.ts';
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

/** What the receiver should have been told; null where it cannot be known. Metres and degrees. */
export interface Right {
  /** To the point that the keyed antenna height names, else to the ARP. */
  readonly antennaHeight: number | null;
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

/** @param number of the keyed state, from 1; with 0 nothing was keyed */
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

const rightNumbers = remembered(
  (setup: SetupValues, state: KeyedValues | typeof NO_STATE, frame: Frame): Right => {
    const keyed = 'state' in state ? state : null;
    const { tell, mark, height } = setup;
    const arp = numberOf(height.arp);
    const toPhaseCentre = keyed?.state.antennaHeight?.to?.name === 'phase-centre';
    const antennaHeight = toPhaseCentre ? numberOf(height.phaseCentre) : arp;
    const latitude = numberOf(tell.latitude);
    const longitude = numberOf(tell.longitude);
    const place = latitude === null || longitude === null ? null : { latitude, longitude };
    return {
      antennaHeight,
      antennaHeightSigma: isHole(height.arp) ? 0 : (height.arp.sigma ?? 0),
      toArp: antennaHeight === null || arp === null ? 0 : arp - antennaHeight,
      height: numberOf(tell.ellipsoidalHeight),
      orthometric: mark ? numberOf(mark.orthometricHeight) : null,
      separation: mark ? numberOf(mark.separation) : null,
      place,
      grid: place && gridPlace(place, keyed, setup.mark, frame),
    };
  },
);

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
  return isRefusal(grid) ? null : { system, east: grid.east, north: grid.north };
}

export const numberOf = (value: Maybe<Value> | null | undefined): number | null =>
  !value || isHole(value) || !Number.isFinite(value.value) ? null : value.value;
