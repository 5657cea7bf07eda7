/** A length that none of its kind can have: taped, of an extension, of an antenna, or the height of a mark. */
import { LENGTH_UNITS } from '../../../grammar/units.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Antenna, Mark, Setup } from '../../session/entries.ts';
import { kind, readingFixes } from '../finding.ts';
import { misreadAs } from './reading-units.ts';

interface Impossible {
  readonly place: Place;
  /** What it is of, and what such a thing can be. */
  readonly what: string;
  readonly bounds: Bounds;
  readonly typed: string;
  /** The same number in units that make it possible. */
  readonly readings: readonly string[];
  readonly causes: readonly string[];
  readonly follows: readonly string[];
}

/** Metres. */
interface Bounds {
  readonly least: number;
  readonly most: number;
  /** What nearly all of them are: where another unit makes it this, that is the likely one. */
  readonly usual: readonly [number, number];
}

/** All common practice; the highest ground is 8849 m above the sea, the lowest dry land 430 m below it. */
const TAPED: Bounds = { least: 0.01, most: 20, usual: [0.1, 3] };
const EXTENSION: Bounds = { least: 0.005, most: 10, usual: [0.03, 3] };
const PHASE_CENTRE: Bounds = { least: -1, most: 1, usual: [0.02, 0.3] };
const ON_ANTENNA: Bounds = { least: 0, most: 2, usual: [0.02, 0.4] };
const GROUND: Bounds = { least: -500, most: 9000, usual: [-500, 9000] };
/** Global models of the geoid run from 107 m below the ellipsoid to 86 m above it. */
const SEPARATION: Bounds = { least: -120, most: 100, usual: [-120, 100] };

export const heightImpossible = kind<Impossible>({
  code: 'height/impossible',
  find: ({ session }) => [
    ...inSetups(valuesOf(session.setups)),
    ...inAntennas(valuesOf(session.antennas)),
    ...inMarks(valuesOf(session.marks)),
  ],
  tell: ({ what, bounds: { least, most }, typed, readings, causes, follows }) => ({
    severity: 'error',
    headline: `${what} of ${typed} is not possible.`,
    effect: `Possible is ${lengthOf(least)} to ${lengthOf(most)}. What rests on it is not told.`,
    action: readings.length > 0 ? `Read it again: ${readings.join(' or ')}?` : 'Read it again.',
    causes,
    follows,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});

const lengthOf = (length: number) =>
  Math.abs(length) < 0.1 && length !== 0
    ? `${showNumber(length * 1000, 0)} mm`
    : `${showNumber(length, 0)} m`;

const inSetups = foundInEach(({ name, measured, extensions }: Setup) => [
  ...measured.flatMap(({ length }) =>
    impossible('A taped height', length, TAPED, [`reading-unit/${name}`, impossibleAt(name)]).map(
      (found) => ({ ...found, follows: [misreadAs(name, found.place)] }),
    ),
  ),
  ...extensions.flatMap(({ length }) => impossible('An extension', length, EXTENSION, [impossibleAt(name)])),
]);

const inAntennas = foundInEach(({ name, phaseCentre, tapePoints }: Antenna) => [
  ...impossible('A phase centre', phaseCentre, PHASE_CENTRE, [impossibleAt(name)]),
  ...tapePoints.flatMap(({ radius, above }) => [
    ...impossible('The radius of a tape point', radius, ON_ANTENNA, [impossibleAt(name)]),
    ...impossible('A tape point', above, { ...ON_ANTENNA, least: -2 }, [impossibleAt(name)]),
  ]),
]);

const inMarks = foundInEach(({ name, height, separation }: Mark) => [
  ...impossible('A height', height?.value ?? null, GROUND, [`mark/${name}/height`]),
  ...impossible('A separation', separation, SEPARATION, [`mark/${name}/height`]),
]);

/** What the heights of a setup or an antenna follow from. */
export const impossibleAt = (name: string) => `impossible/${name}`;

/** Of the setup and its antenna. */
export const impossibleUnder = ({ setup, antenna }: SetupValues) => [
  impossibleAt(setup.name),
  ...(antenna ? [impossibleAt(antenna.name)] : []),
];

function impossible(
  what: string,
  length: Maybe<Value> | null,
  bounds: Bounds,
  causes: readonly string[],
): Impossible[] {
  if (!length || isHole(length) || length.origin !== 'given') return [];
  const { value, place } = length;
  if (value === 0 || (value >= bounds.least && value <= bounds.most)) return [];
  const typed = place.entry.text.slice(place.start, place.end);
  return [{ place, what, bounds, typed, readings: readingsOf(typed, bounds), causes, follows: [] }];
}

/** With the units that make it usual, the metre first. */
function readingsOf(typed: string, { usual: [least, most] }: Bounds): string[] {
  const [, number, unit = ''] = /^([-+\u2212]?[\d.]+)\s*([a-z]+)$/.exec(typed) ?? [];
  if (number === undefined) return [];
  const value = Number(number.replace('\u2212', '-'));
  return LENGTH_UNITS.filter(
    ({ unit: other, factor }) =>
      other !== unit && value * (factor ?? NaN) >= least && value * (factor ?? NaN) <= most,
  ).map(({ unit: other }) => `${number} ${other}`);
}
