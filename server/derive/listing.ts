/** Every derived value by its id, in the order of the session: what `derive` prints and `compare` compares. */
import type { Place } from '../../grammar/tree.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Radio, StreamMessage } from '../session/entries.ts';
import type { CheckValues } from './checks/check.ts';
import type { Derivation } from './derivation.ts';
import type { LinkValues } from './link/link.ts';
import { carriageOf, whipLength } from './link/ends.ts';
import type { ReachValues } from './link/reach.ts';
import type { StreamValues } from './link/stream.ts';
import type { MarkValues } from './marks/mark.ts';
import type { SetupValues } from './setups/setup.ts';

export interface Listed {
  /** Built from names as written, with `/`, `%` and blanks percent-encoded: `mark/PM-14/latitude`. */
  readonly id: string;
  readonly value: Maybe<Value>;
  /** The line that the value belongs to. */
  readonly place: Place;
}

export function listValues({ marks, setups, checks, link }: Derivation): Listed[] {
  return [
    ...[...marks.values()].flatMap(listMark),
    ...[...setups.values()].flatMap(listSetup),
    ...checks.flatMap(listCheck),
    ...listLinks(link).flat(),
  ];
}

/** A name as part of an id. */
const idPart = (name: string) => name.replace(/[/%\s]/gu, (character) => encodeURIComponent(character));

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
    ...(values.captured?.positions ?? []).flatMap(({ values: found }, index) => {
      const { broadcast, east, north, up, recorded } = found;
      const { x, y, z } = 'hole' in broadcast ? { x: broadcast, y: broadcast, z: broadcast } : broadcast;
      return Object.entries({ x, y, z, east, north, up }).map(
        ([part, value]): [string, Maybe<Value>, Place] => [
          `captured/${index + 1}/${part}`,
          value,
          recorded?.place ?? setup.place,
        ],
      );
    }),
  ];
  return parts.map(([part, value, place]) => ({ id: `${prefix}/${part}`, value, place }));
}

export function listCheck(values: CheckValues): Listed[] {
  const { check, residual, distance, tolerance, expected, tests, explained } = values;
  const chance = (test: typeof tests.up) => (isHole(test) ? test : test.probability);
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
    ...ellipseParts(expected, check.place),
    ['chance/horizontal', chance(tests.horizontal), check.place],
    ['chance/up', chance(tests.up), check.place],
    ['explained/east', explained.east, check.place],
    ['explained/north', explained.north, check.place],
    ['explained/up', explained.up, check.place],
  ];
  return parts.map(([part, value, place]) => ({ id: `check/${idPart(check.name)}/${part}`, value, place }));
}

/** The values of each stream and of each base's radio, each id once. */
export function listLinks({ streams, reaches }: LinkValues): Listed[][] {
  const bases = new Map<string, Listed[]>();
  for (const values of reaches)
    bases.set(values.base.name, [...(bases.get(values.base.name) ?? []), ...listReach(values)]);
  const seen = new Set<string>();
  return [...streams.map(listStream), ...bases.values()].map((group) =>
    group.filter(({ id }) => !seen.has(id) && seen.add(id)),
  );
}

export function listStream(values: StreamValues): Listed[] {
  const { stream, name, messages } = values;
  const parts: [string, Maybe<Value>, Place][] = [
    ...firstOfEach(messages).flatMap(({ message, size, age, fitting }): [string, Maybe<Value>, Place][] => [
      [`${message.number.name}/size`, size, message.place],
      [`${message.number.name}/age`, age, message.place],
      ...(fitting ? [fitted(message, fitting)] : []),
    ]),
    ['bytes-a-second', values.averageBytes, stream.place],
    ['airtime/average', values.averageAirtime, stream.place],
    ['airtime/fullest-second', values.fullestSecond, stream.place],
    ['airtime/staggered-second', values.staggeredSecond, stream.place],
    ['age', values.worstAge, stream.place],
  ];
  return parts.map(([part, value, place]) => ({ id: `stream/${idPart(name)}/${part}`, value, place }));
}

const fitted = (message: StreamMessage, interval: Value): [string, Maybe<Value>, Place] => [
  `${message.number.name}/fitting-interval`,
  interval,
  message.place,
];

const firstOfEach = (messages: StreamValues['messages']) =>
  messages.filter(
    ({ message }, index) =>
      message.number.name !== '' &&
      messages.findIndex((other) => other.message.number.name === message.number.name) === index,
  );

export function listReach(values: ReachValues): Listed[] {
  const { base, rover } = values;
  const carriage = carriageOf(base);
  const aerial = aerialPlace(base);
  const own: [string, Maybe<Value>, Place][] = [
    ['throughput', isHole(carriage) ? carriage : carriage.throughput, base.place],
    ['sensitivity', values.sensitivity, base.place],
    ...(base.clearance ? [whip(base)] : []),
  ];
  const parts: [string, Maybe<Value>, Place][] = [
    ['path-loss', values.pathLoss, base.place],
    ['margin', values.margin, base.place],
    ['reach', values.reach, base.place],
    ['reach-slower', values.slowerReach, base.place],
    ['horizon', values.horizon, aerial],
    ['fresnel', values.fresnel, aerial],
  ];
  const id = `link/${idPart(base.name)}`;
  return [
    ...own.map(([part, value, place]) => ({ id: `${id}/${part}`, value, place })),
    ...parts.map(([part, value, place]) => ({
      id: `${id}/${idPart(rover?.name ?? 'rover')}/${part}`,
      value,
      place,
    })),
  ];
}

const whip = (radio: Radio): [string, Maybe<Value>, Place] => [
  'whip-length',
  whipLength(radio),
  radio.clearance && !isHole(radio.clearance) && radio.clearance.origin === 'given'
    ? radio.clearance.place
    : radio.place,
];

function aerialPlace({ place, aerial }: ReachValues['base']): Place {
  return aerial && !isHole(aerial) && aerial.origin === 'given' ? aerial.place : place;
}

/** Semi-axes and bearing at the job's confidence, where the directions differ. */
function ellipseParts({ ellipse }: CheckValues['expected'], place: Place): [string, Maybe<Value>, Place][] {
  if (!ellipse) return [];
  return [
    ['expected/semi-major', ellipse.semiMajor, place],
    ['expected/semi-minor', ellipse.semiMinor, place],
    ['expected/bearing', ellipse.bearing, place],
  ];
}
