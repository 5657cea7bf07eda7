/** What the rover's controller shows for a solved antenna, with the pole, geoid, scale, antenna type and site calibration that it was set to. */
import type { GeoidModel } from './geoid.ts';
import type { Ellipsoid, EastNorthUp, Geocentric, Geodetic, Graticule } from './world.ts';
import { displaced, toGeodetic } from './world.ts';

/** Metres. */
export interface GridPosition {
  readonly east: number;
  readonly north: number;
}

/** A map projection, given from outside: the simulator does not care whose it is. */
export interface GridSystem {
  /** As a session names it, `EPSG:32631`. */
  readonly name: string;
  readonly ellipsoid: Ellipsoid;
  readonly forward: (place: Graticule) => GridPosition;
  readonly inverse: (position: GridPosition) => Graticule;
}

export interface SiteCalibration {
  readonly about: GridPosition;
  /** Radians, counter-clockwise. */
  readonly rotation: number;
  readonly scale: number;
  readonly shift: EastNorthUp;
}

/** Everything that the rover was set to; it may be wrong, and nobody corrects it afterwards. */
export interface RoverSetting {
  /** From the ground to the antenna reference point, as told; metres. */
  readonly pole: number;
  readonly antennaTypeKnown: boolean;
  /** Undefined: the controller's geoid is off and it shows ellipsoidal heights where its user reads levelled ones. */
  readonly geoid: GeoidModel | undefined;
  /** Ground scale about a place in the grid. */
  readonly scale?: { readonly about: GridPosition; readonly factor: number };
  readonly siteCalibration?: SiteCalibration;
}

/** One ground point as the controller shows it: every number of the same solution. */
export interface Shown {
  readonly geodetic: Geodetic;
  readonly grid: GridPosition;
  /** Read as orthometric, whatever the setting made of it. */
  readonly height: number;
}

/** `phaseCentre` is the height of the rover antenna's phase centre above its reference point that its type would tell; metres. */
export function show(
  solved: Geocentric,
  phaseCentre: number,
  setting: RoverSetting,
  grid: GridSystem,
): Shown {
  const antenna = toGeodetic(solved, grid.ellipsoid);
  const down = setting.pole + (setting.antennaTypeKnown ? phaseCentre : 0);
  const geodetic = displaced(antenna, { east: 0, north: 0, up: -down }, grid.ellipsoid);
  const levelled = geodetic.height - (setting.geoid?.(geodetic) ?? 0);
  const calibration = setting.siteCalibration;
  return {
    geodetic,
    grid: calibrated(grounded(grid.forward(geodetic), setting), calibration),
    height: levelled + (calibration?.shift.up ?? 0),
  };
}

function grounded(position: GridPosition, { scale }: RoverSetting): GridPosition {
  if (scale === undefined) return position;
  return {
    east: scale.about.east + (position.east - scale.about.east) * scale.factor,
    north: scale.about.north + (position.north - scale.about.north) * scale.factor,
  };
}

function calibrated(position: GridPosition, calibration: SiteCalibration | undefined): GridPosition {
  if (calibration === undefined) return position;
  const { about, rotation, scale, shift } = calibration;
  const east = position.east - about.east;
  const north = position.north - about.north;
  return {
    east: about.east + shift.east + scale * (east * Math.cos(rotation) - north * Math.sin(rotation)),
    north: about.north + shift.north + scale * (east * Math.sin(rotation) + north * Math.cos(rotation)),
  };
}
