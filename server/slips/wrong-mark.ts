/** The coordinates of another mark are told, or the tripod stands over another one. */
import { keptWith } from '../../grammar/kept-with.ts';
import { topocentricOf } from '../geodesy/topocentric.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import { sameDatum } from '../derive/positions/frame.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { MarkValues } from '../derive/marks/mark.ts';
import { numberOf, type Situation } from './situation.ts';
import { broadcastShift, keyedDatum } from './told.ts';
import type { Place, Slip, Told, Way } from './slip.ts';

export const wrongMark: Slip = {
  name: 'wrong-mark',
  code: 'position/keyed-differs',
  prior: 0.1,
  look: 'the name stamped on the mark under the tripod',
  ways: (situation) =>
    otherMarks(situation).flatMap(({ name, place, height, used }): Way[] => [
      {
        says: `the coordinates of ${name} were keyed`,
        weight: used ? 3 : 0.3,
        effect: { on: 'told', told: { place, ...(height === null ? {} : { height }) } },
      },
      ...tripodOver(name, { place, ...(height === null ? {} : { height }) }, used ? 1 : 0.1, situation),
      ...(height === null
        ? []
        : [
            {
              says: `the position of ${name} was keyed with the right height`,
              weight: 0.2,
              effect: { on: 'told' as const, told: { place } },
            },
            {
              says: `the height of ${name} was keyed with the right position`,
              weight: 0.2,
              effect: { on: 'told' as const, told: { height } },
            },
          ]),
    ]),
};

/** The receiver was told the right mark, and stands over another one: the error is the other way round. */
function tripodOver(name: string, there: Told, weight: number, situation: Situation): Way[] {
  const { place } = situation.right;
  const told = broadcastShift(there, situation);
  if (!place || !told) return [];
  const origin = { latitude: asLatitude(place.latitude), longitude: asLongitude(place.longitude) };
  const { east, north, up } = topocentricOf(origin, told);
  const shift = { east: -east, north: -north, up: -up };
  const effect = { on: 'base' as const, shift, free: [], applies: () => true };
  return [{ says: `the tripod stood over ${name}`, weight, effect }];
}

export interface OtherMark {
  readonly name: string;
  readonly place: Place;
  readonly height: number | null;
  /** A setup of this day stands on it, or a check was made on it. */
  readonly used: boolean;
}

/** Marks that a setup stands on or a check was made on. */
function usedIn(derivation: Derivation): ReadonlySet<MarkValues | null> {
  let used = cache.get(derivation);
  if (!used) {
    used = new Set([...derivation.setups.values(), ...derivation.checks].map(({ mark }) => mark));
    cache.set(derivation, used);
  }
  return used;
}
const cache = keptWith<Derivation, ReadonlySet<MarkValues | null>>();

/** A register of thousands of marks cannot be told apart by one keyed number; the day's own marks can. */
const MOST_MARKS = 500;

/** All marks, or of a great many those that the day uses and the first of the others. */
function candidates(derivation: Derivation, used: ReadonlySet<MarkValues | null>): readonly MarkValues[] {
  const all = [...derivation.marks.values()];
  if (all.length <= MOST_MARKS) return all;
  let known = shortened.get(derivation);
  if (!known) {
    known = [...all.filter((mark) => used.has(mark)), ...all.filter((mark) => !used.has(mark))].slice(
      0,
      MOST_MARKS,
    );
    shortened.set(derivation, known);
  }
  return known;
}
const shortened = keptWith<Derivation, readonly MarkValues[]>();

/** Every other mark with coordinates in the datum of the keyed values, of a great many those that come first. */
export function otherMarks(situation: Situation): OtherMark[] {
  const { setup, derivation } = situation;
  const own = setup.mark;
  const datum = keyedDatum(situation);
  if (!datum) return [];
  const used = usedIn(derivation);
  return candidates(derivation, used).flatMap((mark: MarkValues) => {
    if (mark === own || isHole(mark.located) || !sameDatum(mark.located.system.datum, datum)) return [];
    const { latitude, longitude } = mark.located;
    return [
      {
        name: mark.mark.name,
        place: { latitude: latitude.value, longitude: longitude.value },
        height: numberOf(mark.ellipsoidalHeight),
        used: used.has(mark),
      },
    ];
  });
}
