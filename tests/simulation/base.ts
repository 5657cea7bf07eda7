/** The base: how its antenna really stands, how it was taped, what it was told, and what it therefore broadcasts. */
import type { GridPosition, GridSystem } from './controller.ts';
import type { Random } from './random.ts';
import type { EastNorthUp, Geocentric, Geodetic, Graticule } from './world.ts';
import { add, fromLocal, localFrame, scaled, toGeocentric } from './world.ts';

/** An antenna model, as its data sheet says; metres. */
export interface Antenna {
  readonly name: string;
  /** Of the phase centre above the antenna reference point. */
  readonly phaseCentre: number;
  /** A place on the antenna to tape to: its radius and its height above the antenna reference point. */
  readonly rim: { readonly radius: number; readonly rise: number };
}

/** How the antenna really stands. Metres; nobody on the site knows these numbers. */
export interface BaseTruth {
  readonly mark: Geodetic;
  /** From the mark to the antenna reference point. */
  readonly antennaHeight: number;
  readonly centring: { readonly east: number; readonly north: number };
  /** What this very antenna's phase centre differs from its model's. */
  readonly phaseCentreError: number;
  readonly extension: number;
}

export type TapedTo = { readonly kind: 'foot'; readonly offCentre: number } | { readonly kind: 'rim' };

/** One reading of the tape, as written down. */
export interface Reading {
  /** Metres, as read. */
  readonly length: number;
  readonly to: TapedTo;
  /** Minutes after midnight, local. */
  readonly minutes: number;
}

export type KeyedPosition =
  | { readonly kind: 'geographic'; readonly place: Graticule }
  | { readonly kind: 'grid'; readonly position: GridPosition };

/** What the base receiver was told. Nothing else of the surveyor's mind reaches the air. */
export interface BaseSetting {
  readonly position: KeyedPosition;
  /** The grid that the receiver is set to, by which it turns keyed grid coordinates into a place. */
  readonly grid: GridSystem;
  /** Metres; the receiver takes it as ellipsoidal. */
  readonly height: number;
  /** Metres; the receiver takes it as leading to `antennaReference`. */
  readonly antennaHeight: number;
  readonly antennaReference: 'arp' | 'phase-centre';
  readonly antennaTypeKnown: boolean;
}

/** The antenna really moves at a time of the day, by a vector in its own frame. */
export interface Movement {
  readonly minutes: number;
  readonly by: EastNorthUp;
}

export interface TapeNoise {
  /** Standard deviation of one reading, metres. */
  readonly reading: number;
  /** What this tape and this person add to every reading of the setup, metres. */
  readonly commonError: number;
}

/** Where the base antenna's phase centre really is at a time. */
export function truePhaseCentre(
  truth: BaseTruth,
  antenna: Antenna,
  grid: GridSystem,
  moved: Movement | undefined,
  minutes: number,
): Geocentric {
  const by = moved !== undefined && minutes >= moved.minutes ? moved.by : { east: 0, north: 0, up: 0 };
  const offset: EastNorthUp = {
    east: truth.centring.east + by.east,
    north: truth.centring.north + by.north,
    up: truth.antennaHeight + antenna.phaseCentre + truth.phaseCentreError + by.up,
  };
  return add(toGeocentric(truth.mark, grid.ellipsoid), fromLocal(offset, localFrame(truth.mark)));
}

/** The antenna reference point as the correction stream carries it, to 0.1 mm (RTCM 10403, message 1005). */
export function broadcastArp(setting: BaseSetting, antenna: Antenna): Geocentric {
  const rise = setting.antennaReference === 'phase-centre' ? antenna.phaseCentre : 0;
  const height = setting.height + setting.antennaHeight - rise;
  const arp = toGeocentric({ ...keyedPlace(setting), height }, setting.grid.ellipsoid);
  const sent = (metres: number): number => Math.round(metres * 1e4) / 1e4;
  return { x: sent(arp.x), y: sent(arp.y), z: sent(arp.z) };
}

/** Where the rover, who hears the reference point and the antenna's type, believes the base's phase centre to be. */
export function believedPhaseCentre(setting: BaseSetting, antenna: Antenna): Geocentric {
  const rise = setting.antennaTypeKnown ? antenna.phaseCentre : 0;
  return add(broadcastArp(setting, antenna), scaled(localFrame(keyedPlace(setting)).up, rise));
}

export function keyedPlace(setting: BaseSetting): Graticule {
  return setting.position.kind === 'grid'
    ? setting.grid.inverse(setting.position.position)
    : setting.position.place;
}

/** What a tape would read at the antenna as it stands, written to the millimetre. */
export function tape(
  truth: BaseTruth,
  antenna: Antenna,
  to: TapedTo,
  random: Random,
  noise: TapeNoise,
): number {
  const rise =
    to.kind === 'foot' ? truth.antennaHeight - truth.extension : truth.antennaHeight + antenna.rim.rise;
  const radius = to.kind === 'foot' ? to.offCentre : antenna.rim.radius;
  return toMillimetre(Math.hypot(rise, radius) + noise.commonError + random.normal(noise.reading));
}

/** The careful reduction of a reading to the antenna reference point: ARP = √(s² − r²) + rise. */
export function reduceReading(reading: Reading, antenna: Antenna, extension: number): number {
  const radius = reading.to.kind === 'foot' ? reading.to.offCentre : antenna.rim.radius;
  const vertical = Math.sqrt(reading.length ** 2 - radius ** 2);
  return vertical + (reading.to.kind === 'foot' ? extension : -antenna.rim.rise);
}

export function toMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}

/** To 0.00001″, a third of a millimetre: what the receiver's screen has room for. */
export function toScreenAngle(degrees: number): number {
  return Math.round(degrees * 3.6e8) / 3.6e8;
}
