/** A recording that shows another base position than the notes say was keyed: the recording is what the rovers used. */
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CapturedPosition } from '../../derive/setups/capture.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { metres, type Topocentric } from '../../quantities/brands.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Subject } from '../finding.ts';
import { joined } from '../saying.ts';
import { contradicted } from '../keyed/differences.ts';
import { clockTime } from '../words.ts';

interface Differing {
  readonly place: Place;
  readonly setup: SetupValues;
  readonly found: CapturedPosition;
  /** Broadcast minus true, in metres; null where the true position is not known. */
  readonly error: Topocentric | null;
}

/** Less than this is the tape's own uncertainty, whatever was keyed. */
const RIGHT = 0.01;

export const captureDiffers = kind<Differing>({
  code: 'capture/differs',
  find: (subject) =>
    capturedSetups(subject).flatMap((setup) =>
      (setup.captured?.positions ?? []).flatMap((found): Differing[] => {
        const error = errorOf(found);
        const told = found.fromNoted !== null;
        const wrong = error !== null && lengthOf(error) > RIGHT;
        if (found.inTurn || found.agrees || (!told && !wrong)) return [];
        return [{ place: setup.captured?.file.place ?? setup.setup.place, setup, found, error }];
      }),
    ),
  tell: ({ setup, found, error }, subject) => {
    const { name } = setup.setup;
    const { captured } = setup;
    const number = found.noted?.state.number ?? 1;
    const file = captured?.file.text ?? '';
    const station = `station ${captured?.station?.station ?? ''}`;
    const source = `${file}, ${station}${since(found, subject)}`;
    const right = error !== null && lengthOf(error) <= RIGHT;
    const headline = right
      ? `Note of what was keyed at ${name} is wrong; the broadcast is right.`
      : error === null
        ? `${name} broadcast another position than the notes say.`
        : `${name} broadcast its antenna ${wrongBy(error)}.`;
    const shows = found.fromNoted
      ? `That is ${apart(found.fromNoted)} from the keyed values (${source}).`
      : `What was keyed is not noted (${source}).`;
    const follows =
      error === null
        ? 'Which is right is not known, as the true position is not.'
        : right
          ? ''
          : 'So are the points.';
    const places = (found.noted?.state.lines ?? []).map(({ place }) => ({
      message: 'Noted as keyed.',
      place,
    }));
    return {
      severity: right || error === null ? 'warning' : 'error',
      headline,
      effect: joined(shows, otherHeight(found), follows),
      action: 'Look up what was keyed, and note it.',
      rests: places,
      causes: [
        ...(found.noted ? [contradicted(name, number)] : []),
        ...(right ? [] : [`keyed/${name}/${number}/horizontal`, `keyed/${name}/${number}/up`]),
      ],
      ...putRight(found, setup),
    };
  },
});

function errorOf({ values: { east, north, up } }: CapturedPosition): Topocentric | null {
  if (isHole(east) || isHole(north) || isHole(up)) return null;
  return { east: metres(east.value), north: metres(north.value), up: metres(up.value) };
}

const lengthOf = ({ east, north, up }: Topocentric) => Math.hypot(east, north, up);

/** `54.917 m down`, `12 mm east and 3 mm north`. */
const apart = (vector: Topocentric) => said(vector, ['east', 'west', 'north', 'south', 'up', 'down']);
/** `54.917 m too low`. */
const wrongBy = (vector: Topocentric) =>
  said(vector, ['too far east', 'too far west', 'too far north', 'too far south', 'too high', 'too low']);

type Directions = readonly [
  east: string,
  west: string,
  north: string,
  south: string,
  up: string,
  down: string,
];

function said(
  { east, north, up }: Topocentric,
  [toEast, toWest, toNorth, toSouth, higher, lower]: Directions,
) {
  const parts = (
    [
      [east, toEast, toWest],
      [north, toNorth, toSouth],
      [up, higher, lower],
    ] as const
  )
    .filter(([size]) => Math.abs(size) >= SHOWN)
    .map(([size, more, less]) => `${showLength(Math.abs(size))} ${size > 0 ? more : less}`);
  const last = parts.pop();
  if (last === undefined) return 'by less than its rounding';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}
const SHOWN = 0.0005;

function otherHeight({ values, noted }: CapturedPosition): string {
  const [one, other] = [values.antennaHeight, noted?.antennaHeight];
  if (isHole(one) || !other || isHole(other) || Math.abs(one.value - other.value) < 0.001) return '';
  return `Message 1006 has an antenna height of ${showLength(one.value)}; ${showLength(other.value)} is noted.`;
}

function since({ from }: CapturedPosition, subject: Subject): string {
  const time = clockTime(from, subject);
  return time ? `, from ${time}` : '';
}

/** A later position that is right makes it a fact of the time before. */
function putRight({ from, until }: CapturedPosition, { captured, from: start }: SetupValues) {
  const last = captured?.positions.at(-1);
  const error = last ? errorOf(last) : null;
  return until !== null && error !== null && lengthOf(error) <= RIGHT
    ? { past: { from: from ?? start, until } }
    : {};
}
