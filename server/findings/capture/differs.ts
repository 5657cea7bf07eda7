/** A recording that shows another base position than the notes say was keyed: the recording is what the rovers used. */
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CapturedPosition } from '../../derive/setups/capture.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { metres, type Topocentric } from '../../quantities/brands.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Subject } from '../finding.ts';
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
    const right = error !== null && lengthOf(error) <= RIGHT;
    const shows = found.fromNoted
      ? `${file} shows that ${name} broadcast its antenna ${apart(found.fromNoted)} from where the keyed values in the notes put it (${station}${since(found, subject)}).${otherHeight(found)} The recording is what the rovers used.`
      : `The notes do not tell what ${name} was told, and ${file} shows what it broadcast (${station}${since(found, subject)}).${otherHeight(found)}`;
    const follows =
      error === null
        ? 'Whether that was right is not known, since the true position of the antenna is not.'
        : right
          ? 'What was broadcast is right, so it is the note of what was keyed that is wrong, and not the points.'
          : `Its antenna was broadcast ${wrongBy(error)}, and every point measured from it is off by as much.`;
    const places = (found.noted?.state.lines ?? []).map(({ place }) => ({
      message: 'Noted as keyed.',
      place,
    }));
    return {
      severity: right || error === null ? 'warning' : 'error',
      message: `${shows} ${follows} Look up in the receiver what it was told, and note it.`,
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
  return ` Its message 1006 says an antenna height of ${showLength(one.value)}, and ${showLength(other.value)} is noted.`;
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
