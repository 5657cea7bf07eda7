/** What was keyed last beside what should be, line by line of the key card. */
import { showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { Antenna } from '../../session/entries.ts';
import { onGround } from './on-ground.ts';
import type { InReceiver } from './receiver-form.ts';

export interface Beside {
  /** As it was keyed, in the unit and form of the card. */
  readonly typed: string;
  /** `250 mm too low`; empty where both agree to half a millimetre. */
  readonly difference: string;
}

export interface BesideLines {
  readonly latitude: Beside | null;
  readonly longitude: Beside | null;
  readonly height: Beside | null;
  readonly antennaHeight: Beside | null;
  readonly antennaType: Beside | null;
}

const NONE: BesideLines = {
  latitude: null,
  longitude: null,
  height: null,
  antennaHeight: null,
  antennaType: null,
};

export function keyedBeside(
  { setup, keyed, tell }: SetupValues,
  antennas: ReadonlyMap<string, Antenna>,
  form: InReceiver,
): BesideLines {
  const last = keyed.at(-1);
  if (!last) return NONE;
  const { located, height, state } = last;
  const type = state.antennaType?.name;
  const position = isHole(located) ? null : located;
  return {
    latitude: position && angle(position.latitude, tell.latitude, tell.latitude, 'meridian', form),
    longitude: position && angle(position.longitude, tell.longitude, tell.latitude, 'parallel', form),
    height: tell.coarse ? null : length(height, tell.ellipsoidalHeight, form),
    antennaHeight: comparable(state.antennaHeight?.to?.name, tell.antennaReference)
      ? length(state.antennaHeight?.value ?? null, tell.antennaHeight, form)
      : null,
    antennaType:
      type === undefined
        ? null
        : {
            typed: antennas.get(type)?.description ?? type,
            difference: type === setup.with?.name ? '' : 'another antenna',
          },
  };
}

/** A slant to a mark on the antenna is no vertical height; its finding says what is wrong with it. */
const comparable = (to = 'arp', reference: string) => to === reference;

function angle(
  keyed: Value,
  wanted: Maybe<Value>,
  at: Maybe<Value>,
  along: 'meridian' | 'parallel',
  form: InReceiver,
): Beside | null {
  if (isHole(wanted) || isHole(at)) return null;
  const metres = onGround(keyed.value - wanted.value, at.value, along);
  const [positive, negative] =
    along === 'meridian' ? ['too far north', 'too far south'] : ['too far east', 'too far west'];
  return {
    typed: form.angle(keyed.value, along === 'meridian' ? 'N' : 'E'),
    difference: differenceOf(metres, positive, negative),
  };
}

const length = (keyed: Maybe<Value> | null, wanted: Maybe<Value>, form: InReceiver): Beside | null =>
  !keyed || isHole(keyed) || isHole(wanted)
    ? null
    : {
        typed: form.length(keyed.value),
        difference: differenceOf(keyed.value - wanted.value, 'too high', 'too low'),
      };

/** Less than is ever keyed, in metres. */
const AGREES = 0.0005;

function differenceOf(metres: number, positive: string, negative: string): string {
  const size = Math.abs(metres);
  if (size < AGREES) return '';
  const amount = size < 0.9995 ? `${showNumber(size * 1000, 0)} mm` : `${showNumber(size, 3)} m`;
  return `${amount} ${metres > 0 ? positive : negative}`;
}
