/** Every derived value by its id, in the order of the session: what `derive` prints and `compare` compares. */
import type { Place } from '../../grammar/tree.ts';
import type { Maybe, Value } from '../quantities/value.ts';
import type { CheckValues } from './check.ts';
import type { Derivation } from './derivation.ts';
import type { MarkValues } from './mark.ts';
import type { SetupValues } from './setup.ts';

export interface Listed {
  /** Built from names as written, with `/`, `%` and blanks percent-encoded: `mark/PM-14/latitude`. */
  readonly id: string;
  readonly value: Maybe<Value>;
  /** The line that the value belongs to. */
  readonly place: Place;
}

export function listValues({ marks, setups, checks }: Derivation): Listed[] {
  return [
    ...[...marks.values()].flatMap(listMark),
    ...[...setups.values()].flatMap(listSetup),
    ...checks.flatMap(listCheck),
  ];
}

/** A name as part of an id. */
export const idPart = (name: string) =>
  name.replace(/[/%\s]/gu, (character) => encodeURIComponent(character));

/** Whether an id is this one or stands below it, as `setup/BASE/height/arp` below `setup/BASE`; all stand below none. */
export const isBelow = (id: string, above: string) =>
  above === '' || id === above || id.startsWith(`${above}/`);

export function listMark(values: MarkValues): Listed[] {
  const { mark } = values;
  const parts: [string, Maybe<Value>, Place | null | undefined][] = [
    ['latitude', values.latitude, mark.position?.place],
    ['longitude', values.longitude, mark.position?.place],
    ['ellipsoidal-height', values.ellipsoidalHeight, mark.height?.place],
    ['orthometric-height', values.orthometricHeight, mark.height?.place],
    ['separation', values.separation, mark.separationPlace],
    ['east', values.east, mark.position?.place],
    ['north', values.north, mark.position?.place],
    ['x', values.x, mark.position?.place],
    ['y', values.y, mark.position?.place],
    ['z', values.z, mark.position?.place],
    ['convergence', values.convergence, mark.position?.place],
    ['scale/point', values.pointScale, mark.position?.place],
    ['scale/combined', values.combinedScale, mark.position?.place],
  ];
  return parts.map(([part, value, place]) => ({
    id: `mark/${idPart(mark.name)}/${part}`,
    value,
    place: place ?? mark.place,
  }));
}

export function listSetup(values: SetupValues): Listed[] {
  const { setup, height, tell, arp, keyed } = values;
  const prefix = `setup/${idPart(setup.name)}`;
  const whole = 'hole' in arp ? { x: arp, y: arp, z: arp } : arp;
  const parts: [string, Maybe<Value>, Place][] = [
    ...height.readings.map((reading, index): [string, Maybe<Value>, Place] => [
      `reading/${index + 1}`,
      reading.arp,
      reading.measured.place,
    ]),
    ['height/arp', height.arp, setup.place],
    ['height/phase-centre', height.phaseCentre, setup.place],
    ['tell/latitude', tell.latitude, setup.place],
    ['tell/longitude', tell.longitude, setup.place],
    ['tell/ellipsoidal-height', tell.ellipsoidalHeight, setup.place],
    ['tell/antenna-height', tell.antennaHeight, setup.place],
    ['arp/x', whole.x, setup.place],
    ['arp/y', whole.y, setup.place],
    ['arp/z', whole.z, setup.place],
    ...keyed.flatMap(({ state, east, north, up }): [string, Maybe<Value>, Place][] => {
      const place = state.lines[0]?.place ?? setup.place;
      return [
        [`keyed/${state.number}/east`, east, place],
        [`keyed/${state.number}/north`, north, place],
        [`keyed/${state.number}/up`, up, place],
      ];
    }),
  ];
  return parts.map(([part, value, place]) => ({ id: `${prefix}/${part}`, value, place }));
}

export function listCheck(values: CheckValues): Listed[] {
  const { check, residual, distance, tolerance, expected, explained } = values;
  const observed = check.observed?.place ?? check.place;
  const parts: [string, Maybe<Value>, Place][] = [
    ['residual/east', residual.east, observed],
    ['residual/north', residual.north, observed],
    ['residual/up', residual.up, observed],
    ['residual/horizontal', residual.horizontal, observed],
    ['residual/grid-east', residual.gridEast, observed],
    ['residual/grid-north', residual.gridNorth, observed],
    ['distance/ellipsoid', distance.ellipsoid, check.place],
    ['distance/grid', distance.grid, check.place],
    ['distance/ground', distance.ground, check.place],
    ['tolerance/horizontal', tolerance.horizontal, check.place],
    ['tolerance/up', tolerance.up, check.place],
    ['expected/horizontal', expected.horizontal, check.place],
    ['expected/up', expected.up, check.place],
    ['explained/east', explained.east, check.place],
    ['explained/north', explained.north, check.place],
    ['explained/up', explained.up, check.place],
  ];
  return parts.map(([part, value, place]) => ({ id: `check/${idPart(check.name)}/${part}`, value, place }));
}
