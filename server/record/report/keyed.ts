/** What a receiver was told against what it should have been told, field by field, for page and pull request alike. */
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showAngle, showLength, showNumber } from '../../quantities/show.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { asTyped, metresOf } from '../drawings/height-stack.ts';

export interface KeyedRow {
  readonly field: string;
  readonly should: Maybe<ShownValue> | null;
  readonly told: Maybe<ShownValue> | null;
  /** How far what was told is off; null where the field is not a number. */
  readonly off: Maybe<Off> | null;
}
export interface ShownValue {
  readonly text: string;
  /** Null for a text. */
  readonly value: Value | null;
}
export interface Off {
  readonly right: boolean;
  /** `right`, `right to 0.3 mm`, `250 mm too low`. */
  readonly text: string;
}

export function keyedRows(values: SetupValues, keyed: KeyedValues): KeyedRow[] {
  const { tell } = values;
  const { arp } = keyed.wanted.standing;
  const sigma = isHole(arp) ? 0 : (arp.sigma ?? 0);
  return [
    ...positionRows(values, keyed),
    {
      field: 'Ellipsoidal height of the mark',
      should: as(tell.ellipsoidalHeight, toMillimetre),
      told: as(keyed.height, asTyped),
      off: offBy(minus(keyed.height, tell.ellipsoidalHeight), 'too high', 'too low'),
    },
    {
      field: 'Antenna height to the ARP',
      should: as(arp, metresOf),
      told: as(keyed.antennaHeight, asTyped),
      off: offBy(minus(keyed.antennaHeight, arp), 'too high', 'too low', sigma),
    },
    {
      field: 'Broadcast ARP, up in all',
      should: null,
      told: null,
      off: offBy(keyed.up, 'too high', 'too low', sigma),
    },
    typeRow(values, keyed),
  ];
}

/** Whether another type is the same antenna by another name is for the findings to say. */
function typeRow({ antenna }: SetupValues, { state }: KeyedValues): KeyedRow {
  const told = state.antennaType?.name ?? null;
  const description = antenna?.description ? `, ${antenna.description}` : '';
  return {
    field: 'Antenna type',
    should: antenna
      ? { text: `${antenna.name}${description}`, value: null }
      : hole('the setup names no antenna'),
    told: told === null ? hole('no antenna type was keyed') : { text: told, value: null },
    off: antenna && told === antenna.name ? { right: true, text: 'right' } : null,
  };
}

function positionRows({ tell, mark }: SetupValues, keyed: KeyedValues): KeyedRow[] {
  const typed = keyed.state.position;
  const east = offBy(keyed.east, 'east', 'west');
  const north = offBy(keyed.north, 'north', 'south');
  if (typed?.form === 'grid' && mark)
    return [
      { field: 'East', should: as(mark.east, toMillimetre), told: as(typed.east, toMillimetre), off: east },
      {
        field: 'North',
        should: as(mark.north, toMillimetre),
        told: as(typed.north, toMillimetre),
        off: north,
      },
    ];
  const { located } = keyed;
  const latitude = (value: Value) => showAngle(value.value, 'N');
  const longitude = (value: Value) => showAngle(value.value, 'E');
  return [
    {
      field: 'Latitude',
      should: as(tell.latitude, latitude),
      told: as(isHole(located) ? located : located.latitude, latitude),
      off: north,
    },
    {
      field: 'Longitude',
      should: as(tell.longitude, longitude),
      told: as(isHole(located) ? located : located.longitude, longitude),
      off: east,
    },
  ];
}

const as = (value: Maybe<Value>, show: (value: Value) => string): Maybe<ShownValue> =>
  isHole(value) ? value : { text: show(value), value };

const toMillimetre = (value: Value) => `${showNumber(value.value, 3)} m`;

const minus = (one: Maybe<Value>, other: Maybe<Value>): Maybe<{ readonly value: number }> =>
  isHole(one) ? one : isHole(other) ? other : { value: one.value - other.value };

/** Within a millimetre, or twice the uncertainty of what should be, it is right. */
function offBy(
  difference: Maybe<{ readonly value: number }>,
  positive: string,
  negative: string,
  sigma = 0,
): Maybe<Off> {
  if (isHole(difference)) return difference;
  const size = Math.abs(difference.value);
  if (size <= Math.max(0.001, 2 * sigma))
    return { right: true, text: size < 0.00005 ? 'right' : `right to ${showLength(size)}` };
  return { right: false, text: `${showLength(size)} ${difference.value > 0 ? positive : negative}` };
}
