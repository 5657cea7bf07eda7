/** What may stand behind each first word: words with the spot where they belong, what a number there measures, and fixed values. */
import { LENGTH_UNITS } from '../../../grammar/units.ts';
import type { Dimension } from '../../../grammar/units.ts';
import type { Spot } from './spot.ts';

/** A word of the trade with a few words on what it means. */
export interface Told {
  readonly word: string;
  readonly says: string;
  readonly stands: (spot: Spot) => boolean;
}

export interface Expected {
  readonly words: readonly Told[];
  /** What a number at this spot measures. */
  readonly measures: (spot: Spot) => readonly Dimension[];
}

type Where = Told['stands'];

/** A number, a name or a time is still to come behind these. */
const WAITING: ReadonlySet<string> = new Set(
  (
    'on with at until by from to in above below height position antenna-height antenna-type pdop every after radius ' +
    'between and seal epoch plate geoid off adjusted X Y Z'
  ).split(' '),
);

const start: Where = ({ atStart }) => atStart;
const quantity: Where = ({ behindQuantity }) => behindQuantity;
const counted: Where = ({ behindNumber }) => behindNumber;
/** First, or behind the comma of a list. */
const listed: Where = ({ atStart, afterComma }) => atStart || afterComma;
/** Where what was begun has been said in full. */
const onwards: Where = ({ last, behindNumber }) =>
  last !== null && !behindNumber && !(last.kind === 'word' && WAITING.has(last.word));
const behind =
  (...words: readonly string[]): Where =>
  ({ last }) =>
    last?.kind === 'word' && words.includes(last.word);
/** A text is the last thing that is said. */
const beforeText: Where = ({ last }) => last?.kind !== 'text';
const both =
  (...wheres: readonly Where[]): Where =>
  (spot) =>
    wheres.every((where) => where(spot));
const once =
  (...words: readonly string[]): Where =>
  ({ said }) =>
    !words.some((word) => said.has(word));
const since =
  (word: string): Where =>
  ({ said }) =>
    said.has(word);

const told = (word: string, says: string, ...wheres: readonly Where[]): Told => ({
  word,
  says,
  stands: both(once(word), ...wheres),
});
const phrase = (words: readonly Told[], ...measures: readonly Dimension[]): Expected => ({
  words,
  measures: () => measures,
});

const AT = told('at', 'when', onwards);
const BY = told('by', 'the rover', onwards);
const FROM = told('from', 'the base, where there are several', onwards);
const inSystem = told(
  'in',
  'in another coordinate system',
  onwards,
  once('height'),
  ({ numbers }) => numbers > 1,
);
const byWay = told('by', 'the transformation to the job’s datum', onwards, since('in'));

const SURFACE_WORDS = ['orthometric', 'ellipsoidal', 'above'];
const surfaces = (...wheres: readonly Where[]) => [
  told('orthometric', 'above the geoid or levelling datum', quantity, once(...SURFACE_WORDS), ...wheres),
  told('ellipsoidal', 'above the ellipsoid', quantity, once(...SURFACE_WORDS), ...wheres),
  told('above', 'above a local surface', quantity, once(...SURFACE_WORDS), ...wheres),
];
const onSurface: Where = ({ said }) => SURFACE_WORDS.some((word) => said.has(word));
const DIRECTIONS = [
  told('horizontal', 'each axis of a standard uncertainty, or a radius', quantity),
  told('vertical', 'up', quantity),
];
const HEMISPHERES = [
  told('N', 'north', quantity, once('S', 'height')),
  told('S', 'south', quantity, once('N', 'height')),
  told('E', 'east', quantity, once('W', 'height')),
  told('W', 'west', quantity, once('E', 'height')),
];
const AXES = ['X', 'Y', 'Z'].map((axis) =>
  told(axis, 'geocentric', listed, once('N', 'S', 'E', 'W', 'height')),
);
const COORDINATES = [
  ...HEMISPHERES,
  ...AXES,
  inSystem,
  byWay,
  told('height', 'the height of the point, with its surface', onwards, ({ numbers }) => numbers > 1),
  ...surfaces(since('height')),
];
/** The first coordinate decides which kind the others are of. */
const ofCoordinates = ({ said, measured }: Spot): readonly Dimension[] => {
  if (said.has('height') || said.has('X') || said.has('Y') || said.has('Z')) return ['length'];
  return measured ? [measured] : ['length', 'angle'];
};
const coordinates = (words: readonly Told[]): Expected => ({ words, measures: ofCoordinates });

const SOLUTIONS = ['fixed', 'float', 'differential', 'autonomous'];
const QUALITY = [
  told('fixed', 'ambiguities fixed', listed, once(...SOLUTIONS)),
  told('float', 'ambiguities not fixed', listed, once(...SOLUTIONS)),
  told('differential', 'code differential', listed, once(...SOLUTIONS)),
  told('autonomous', 'without corrections', listed, once(...SOLUTIONS)),
  told('pdop', 'dilution of precision', listed),
  told('epochs', 'how many epochs were averaged', counted, ({ items }) => !isOf(items, 'pdop')),
  told('satellites', 'how many satellites were used', counted, ({ items }) => !isOf(items, 'pdop')),
];
const FORMS = ['dms', 'degrees', 'grid'];
const RECEIVER = [
  ...LENGTH_UNITS.map(({ unit, says }) =>
    told(unit, says, listed, once(...LENGTH_UNITS.map((other) => other.unit))),
  ),
  told('dms', 'degrees, minutes and seconds', listed, once(...FORMS)),
  told('degrees', 'decimal degrees', listed, once(...FORMS)),
  told('grid', 'east and north in the grid of the job', listed, once(...FORMS)),
];
/** The number typed last belongs to this word. */
const isOf = (items: Spot['items'], word: string) => {
  const before = items.at(-2);
  return before?.kind === 'word' && before.word === word;
};
const sides = (...wheres: readonly Where[]) => [
  told('above', 'above it', quantity, once('above', 'below'), ...wheres),
  told('below', 'below it', quantity, once('above', 'below'), ...wheres),
];
const ADJUSTED = told('adjusted', 'when it was last adjusted', onwards, ({ numbers }) => numbers > 0);
const manners = (...wheres: readonly Where[]) => [
  told('vertical', 'held straight down', onwards, once('slant'), ...wheres),
  told('slant', 'held along the slope', onwards, once('vertical'), ...wheres),
];
const CONSTELLATIONS = ['GPS', 'GLONASS', 'Galileo', 'BeiDou', 'QZSS', 'NavIC', 'SBAS'];

/** By the first word of the line. */
const EXPECTED: Readonly<Record<string, Expected>> = {
  setup: phrase([
    told('on', 'the mark it stands over', onwards),
    told('with', 'its antenna', onwards),
    told('at', 'when it began', onwards),
    told('until', 'when it ended', onwards),
  ]),
  check: phrase([told('on', 'the mark that was occupied', onwards), AT, BY, FROM]),
  point: phrase([AT, BY, FROM]),
  event: phrase([
    told('disturbance', 'something may have moved the tripod', start),
    told('re-level', 'the antenna was levelled again', start),
    told('power-loss', 'the receiver lost power', start),
    told('at', 'when', onwards, beforeText),
    told('on', 'the setup, where there are several', onwards, beforeText),
  ]),
  stream: phrase([told('from', 'the base that sends', start)]),
  correction: phrase([told('on', 'the setup', onwards), AT]),
  review: phrase([told('seal', 'the seal of what was reviewed', onwards)]),
  datum: phrase([
    told('by', 'the transformation that leads to it', onwards),
    told('epoch', 'that coordinates are wanted at', onwards),
    told('plate', 'the tectonic plate that carries the marks', onwards),
  ]),
  measured: phrase(
    [
      told('to', 'what the tape was held to', onwards),
      told(
        'off centre',
        'the distance from the plumb line',
        quantity,
        once('off'),
        ({ numbers }) => numbers > 1,
      ),
      told('centre', 'from the plumb line', behind('off')),
      AT,
      told('by', 'who read it', onwards),
      ...manners(),
    ],
    'length',
  ),
  extension: phrase([], 'length'),
  plummet: phrase([told('±', 'standard uncertainty', start), ADJUSTED], 'length'),
  bubble: {
    words: [ADJUSTED],
    measures: ({ items }) => (items.some(({ kind }) => kind === 'slash') ? ['length'] : ['angle']),
  },
  temperature: phrase([], 'temperature'),
  autonomous: coordinates(COORDINATES),
  keyed: {
    words: [
      told('position', 'the coordinates that the receiver was told', listed),
      told('height', 'the height that the receiver was told', listed),
      told('antenna-height', 'the antenna height that the receiver was told', listed),
      told('antenna-type', 'the antenna that the receiver was told', listed),
      ...HEMISPHERES.map((one) => ({ ...one, stands: both(one.stands, since('position')) })),
      told('in', 'in another coordinate system', onwards, since('position'), once('height')),
      byWay,
      ...surfaces(since('height')),
      told('to', 'what it reaches to', onwards, since('antenna-height')),
      ...manners(since('antenna-height')),
      AT,
    ],
    measures: (spot) => (spot.said.has('position') ? ofCoordinates(spot) : ['length']),
  },
  about: phrase(HEMISPHERES, 'length'),
  shift: phrase(HEMISPHERES, 'length'),
  position: coordinates([...HEMISPHERES, ...AXES, inSystem, byWay]),
  height: phrase(
    [...surfaces(), told('geoid', 'the model that it was made with', onwards, onSurface)],
    'length',
  ),
  separation: phrase([], 'length'),
  uncertainty: phrase(DIRECTIONS, 'length', 'ratio'),
  relative: phrase(DIRECTIONS, 'length', 'ratio'),
  spread: phrase(DIRECTIONS, 'length'),
  tolerance: phrase(DIRECTIONS, 'length', 'ratio'),
  confidence: phrase([], 'ratio'),
  receiver: phrase(RECEIVER),
  limits: phrase(QUALITY),
  quality: phrase(QUALITY),
  observed: coordinates([
    ...COORDINATES,
    told('from', 'a recording', start),
    told('between', 'from when', onwards, since('from')),
    told('and', 'until when', onwards, since('between')),
  ]),
  'phase-centre': phrase(sides(), 'length'),
  calibration: phrase(
    [
      ['L1', 'of this signal'],
      ['L2', 'of this signal'],
      ['ionosphere-free', 'of the combination of both'],
    ].map(([word = '', says = '']) =>
      told(word, says, once('L1', 'L2', 'ionosphere-free'), ({ items }) => items.length > 1),
    ),
  ),
  'tape-point': phrase(
    [
      told('radius', 'its distance from the plumb line', onwards),
      ...sides(({ items }) => !isOf(items, 'radius')),
    ],
    'length',
  ),
  hook: phrase([], 'length'),
  'fixed-height': phrase([], 'length'),
  pole: phrase(
    [told('to', 'what it reaches to', quantity), told('held', 'by hand, without a bipod', onwards)],
    'length',
  ),
  scale: phrase([], 'ratio'),
  offset: phrase(sides(), 'length'),
  carrier: phrase([], 'frequency'),
  channel: phrase([], 'frequency'),
  bandwidth: phrase([], 'frequency'),
  rate: phrase([], 'bit-rate'),
  power: phrase([], 'power'),
  aerial: phrase([], 'length'),
  clearance: phrase([], 'length'),
  message: {
    words: [
      told('every', 'how often it is sent', onwards),
      told('after', 'its turn: how long after the others', quantity, since('every')),
    ],
    measures: ({ said }) => (said.has('every') ? ['time'] : []),
  },
  tracked: phrase([
    ...CONSTELLATIONS.map((word) => told(word, 'its satellites', listed)),
    told('signals', 'of each satellite', counted, ({ items }) => items.at(-2)?.kind !== 'word'),
  ]),
};

const NOTHING: Expected = { words: [], measures: () => [] };
export const expectedBehind = (word: string): Expected => EXPECTED[word] ?? NOTHING;

interface Value {
  readonly word: string;
  readonly says: string;
}
const value = (word: string, says: string): Value => ({ word, says });
const hours = Array.from({ length: 27 }, (_, index) => index - 12).filter((hour) => hour !== 0);

/** Values that are words, for details that take one of a few. */
const VALUES: Readonly<Record<string, readonly Value[]>> = {
  found: [
    value('intact', 'as described'),
    value('damaged', 'harmed, but where it was'),
    value('disturbed', 'moved or tilted'),
    value('destroyed', 'nothing left of it'),
    value('not-found', 'looked for in vain'),
  ],
  state: [
    value('as-broadcast', 'as measured with what the base sent'),
    value('corrected', 'already shifted'),
  ],
  'site-calibration': [value('none', 'the controller applied none')],
  geoid: [value('EGM96', 'built in; good for finding blunders')],
  language: [value('en', 'English')],
  clock: [
    value('UTC', 'universal time'),
    ...hours.map((hour) =>
      value(
        `UTC${hour < 0 ? '-' : '+'}${String(Math.abs(hour)).padStart(2, '0')}:00`,
        `${Math.abs(hour)} h ${hour < 0 ? 'behind' : 'ahead of'} it`,
      ),
    ),
  ],
  separator: [value('comma', ','), value('semicolon', ';'), value('tab', 'a tabulator')],
  decimal: [value('point', '1.284'), value('comma', '1,284')],
  spreading: ['SF7', 'SF8', 'SF9', 'SF10', 'SF11', 'SF12'].map((word) => value(word, 'spreading factor')),
  coding: ['4/5', '4/6', '4/7', '4/8'].map((word) => value(word, 'coding rate')),
  radio: [value('base', 'the end that sends'), value('rover', 'the end that receives')],
  message: [
    value('1005', 'base position, without antenna height'),
    value('1006', 'base position and antenna height'),
    value('1033', 'antenna and receiver'),
    value('1230', 'GLONASS biases'),
    value('1074', 'GPS, MSM4'),
    value('1077', 'GPS, MSM7'),
    value('1084', 'GLONASS, MSM4'),
    value('1087', 'GLONASS, MSM7'),
    value('1094', 'Galileo, MSM4'),
    value('1097', 'Galileo, MSM7'),
    value('1124', 'BeiDou, MSM4'),
    value('1127', 'BeiDou, MSM7'),
  ],
};

export const valuesBehind = (word: string): readonly Value[] => VALUES[word] ?? [];
