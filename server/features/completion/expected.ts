/** What may stand behind each first word: the words of its phrase, what its numbers measure, and fixed values. */
import type { Dimension } from '../../../grammar/units.ts';

/** A word of the trade with a few words on what it means. */
export interface Told {
  readonly word: string;
  readonly says: string;
}

export interface Expected {
  /** Words that go on with the phrase. */
  readonly words: readonly Told[];
  /** What the numbers behind this word measure. */
  readonly measures: readonly Dimension[];
}

const told = (word: string, says: string): Told => ({ word, says });

const AT = told('at', 'when');
const TO = told('to', 'what it reaches to');
const SURFACES = [
  told('orthometric', 'above the geoid or levelling datum'),
  told('ellipsoidal', 'above the ellipsoid'),
  told('above', 'above a local surface'),
];
const DIRECTIONS = [
  told('horizontal', 'each axis of a standard uncertainty, or a radius'),
  told('vertical', 'up'),
];
const HEMISPHERES = [told('N', 'north'), told('S', 'south'), told('E', 'east'), told('W', 'west')];
const COORDINATES = [
  ...HEMISPHERES,
  told('height', 'the height of the point, with its surface'),
  ...SURFACES,
  told('in', 'in another coordinate system'),
];
const MANNERS = [told('vertical', 'held straight down'), told('slant', 'held along the slope')];
const QUALITY = [
  told('fixed', 'ambiguities fixed'),
  told('float', 'ambiguities not fixed'),
  told('differential', 'code differential'),
  told('autonomous', 'without corrections'),
  told('pdop', 'dilution of precision'),
  told('epochs', 'how many epochs were averaged'),
  told('satellites', 'how many satellites were used'),
];
const SIDES = [told('above', 'above it'), told('below', 'below it')];

const phrase = (words: readonly Told[], ...measures: Dimension[]): Expected => ({ words, measures });

/** By the first word of the line. */
const EXPECTED: Readonly<Record<string, Expected>> = {
  setup: phrase([
    told('on', 'the mark it stands over'),
    told('with', 'its antenna'),
    told('at', 'when it began'),
    told('until', 'when it ended'),
  ]),
  check: phrase([
    told('on', 'the mark that was occupied'),
    AT,
    told('by', 'the rover'),
    told('from', 'the base, where there are several'),
  ]),
  point: phrase([AT, told('by', 'the rover'), told('from', 'the base')]),
  event: phrase([
    told('disturbance', 'something may have moved the tripod'),
    told('re-level', 'the antenna was levelled again'),
    told('power-loss', 'the receiver lost power'),
    AT,
    told('on', 'the setup, where there are several'),
  ]),
  stream: phrase([told('from', 'the base that sends')]),
  correction: phrase([told('on', 'the setup'), AT]),
  review: phrase([told('seal', 'the seal of what was reviewed')]),
  measured: phrase(
    [TO, told('off centre', 'the distance from the plumb line'), AT, told('by', 'who read it'), ...MANNERS],
    'length',
  ),
  extension: phrase([], 'length'),
  plummet: phrase([], 'length'),
  bubble: phrase([], 'angle', 'length'),
  temperature: phrase([], 'temperature'),
  autonomous: phrase(COORDINATES, 'length', 'angle'),
  keyed: phrase(
    [
      told('position', 'the coordinates that the receiver was told'),
      told('height', 'the height that the receiver was told'),
      told('antenna-height', 'the antenna height that the receiver was told'),
      told('antenna-type', 'the antenna that the receiver was told'),
      ...COORDINATES.slice(0, 4),
      ...SURFACES,
      TO,
      ...MANNERS,
      AT,
    ],
    'length',
    'angle',
  ),
  about: phrase(HEMISPHERES, 'length'),
  shift: phrase(HEMISPHERES, 'length'),
  position: phrase([...HEMISPHERES, told('in', 'in another coordinate system')], 'length', 'angle'),
  height: phrase(SURFACES, 'length'),
  separation: phrase([], 'length'),
  uncertainty: phrase(DIRECTIONS, 'length'),
  relative: phrase(DIRECTIONS, 'length'),
  spread: phrase(DIRECTIONS, 'length'),
  tolerance: phrase(DIRECTIONS, 'length', 'ratio'),
  confidence: phrase([], 'ratio'),
  limits: phrase(QUALITY),
  quality: phrase(QUALITY),
  observed: phrase(
    [...COORDINATES, told('from', 'a recording'), told('between', 'from when'), told('and', 'until when')],
    'length',
    'angle',
  ),
  'phase-centre': phrase(SIDES, 'length'),
  'tape-point': phrase([told('radius', 'its distance from the plumb line'), ...SIDES], 'length'),
  hook: phrase([], 'length'),
  'fixed-height': phrase([], 'length'),
  pole: phrase([TO], 'length'),
  scale: phrase([], 'ratio'),
  offset: phrase(SIDES, 'length'),
  carrier: phrase([], 'frequency'),
  channel: phrase([], 'frequency'),
  bandwidth: phrase([], 'frequency'),
  rate: phrase([], 'bit-rate'),
  power: phrase([], 'power'),
  aerial: phrase([], 'length'),
  clearance: phrase([], 'length'),
  message: phrase(
    [told('every', 'how often it is sent'), told('after', 'its turn: how long after the others')],
    'time',
  ),
  tracked: phrase([
    told('GPS', 'its satellites'),
    told('GLONASS', 'its satellites'),
    told('Galileo', 'its satellites'),
    told('BeiDou', 'its satellites'),
    told('QZSS', 'its satellites'),
    told('NavIC', 'its satellites'),
    told('SBAS', 'its satellites'),
    told('signals', 'of each satellite'),
  ]),
  columns: phrase([
    told('name', 'the name of the point'),
    told('east', 'grid coordinate'),
    told('north', 'grid coordinate'),
    told('x', 'geocentric'),
    told('y', 'geocentric'),
    told('z', 'geocentric'),
    told('latitude', 'with its unit'),
    told('longitude', 'with its unit'),
    told('height', 'with its unit and surface'),
    told('code', 'what it is a point of'),
    told('time', 'local or UTC'),
    ...SURFACES.slice(0, 2),
    told('local', 'by the clock of the job'),
    told('utc', 'universal time'),
    told('skip', 'a column to pass over'),
  ]),
  date: phrase([]),
};

export const expectedBehind = (word: string): Expected => EXPECTED[word] ?? { words: [], measures: [] };

/** Values that are words, for details that take one of a few. */
const VALUES: Readonly<Record<string, readonly Told[]>> = {
  found: [
    told('intact', 'as described'),
    told('disturbed', 'moved or tilted'),
    told('destroyed', 'nothing left of it'),
  ],
  state: [told('as-broadcast', 'as measured with what the base sent'), told('corrected', 'already shifted')],
  'site-calibration': [told('none', 'the controller applied none')],
  geoid: [told('EGM96', 'built in; good for finding blunders')],
  clock: [told('UTC', 'universal time'), told('UTC+01:00', 'an hour ahead of it')],
  separator: [told('comma', ','), told('semicolon', ';'), told('tab', 'a tabulator')],
  decimal: [told('point', '1.284'), told('comma', '1,284')],
  spreading: ['SF7', 'SF8', 'SF9', 'SF10', 'SF11', 'SF12'].map((word) => told(word, 'spreading factor')),
  coding: ['4/5', '4/6', '4/7', '4/8'].map((word) => told(word, 'coding rate')),
  radio: [told('base', 'the end that sends'), told('rover', 'the end that receives')],
  message: [
    told('1005', 'base position, without antenna height'),
    told('1006', 'base position and antenna height'),
    told('1033', 'antenna and receiver'),
    told('1230', 'GLONASS biases'),
    told('1074', 'GPS, MSM4'),
    told('1077', 'GPS, MSM7'),
    told('1084', 'GLONASS, MSM4'),
    told('1087', 'GLONASS, MSM7'),
    told('1094', 'Galileo, MSM4'),
    told('1097', 'Galileo, MSM7'),
    told('1124', 'BeiDou, MSM4'),
    told('1127', 'BeiDou, MSM7'),
  ],
};

export const valuesBehind = (word: string): readonly Told[] => VALUES[word] ?? [];
