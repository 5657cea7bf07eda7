/** The slips that can be planted in a day: each changes what was keyed, set or done, and nothing that was computed from it. */
import type { Sexagesimal } from './angles.ts';
import { fromSexagesimal, toSexagesimal } from './angles.ts';
import type { Antenna, BaseSetting, KeyedPosition, Movement, Reading } from './base.ts';
import { keyedPlace, reduceReading, toMillimetre, toScreenAngle } from './base.ts';
import type { GridPosition, GridSystem, RoverSetting, SiteCalibration } from './controller.ts';
import type { EastNorthUp, Ellipsoid, Geocentric, Geodetic, Graticule } from './world.ts';
import { displaced, subtract, toGeocentric, toGeodetic } from './world.ts';

/** A mark as its register publishes it; metres. */
export interface PublishedMark {
  readonly name: string;
  readonly description: string;
  readonly place: Graticule;
  readonly grid: GridPosition;
  readonly orthometric: number;
  /** Of the geoid above the ellipsoid at the mark. */
  readonly separation: number;
}

/** Another frame whose coordinates of the same place lie in some old list. */
export interface OtherDatum {
  readonly name: string;
  readonly ellipsoid: Ellipsoid;
  /** Geocentric, from the other frame to ours; metres. */
  readonly translation: Geocentric;
}

/** What the notes say about base and rover; the session text is written from this and from nothing else. */
export interface Noted {
  readonly setting: BaseSetting;
  readonly readings: readonly Reading[];
  /** Metres; 0 where no extension is written down. */
  readonly extension: number;
  /** What the rover was set to, as its user would say. */
  readonly rover: RoverSetting;
}

/** Everything that a slip may draw on: the careful day, and the wrong numbers that lay about. */
export interface Situation {
  readonly mark: PublishedMark;
  readonly otherMarks: readonly PublishedMark[];
  readonly yesterday: { readonly mark: PublishedMark; readonly antennaHeight: number };
  readonly antenna: Antenna;
  /** How far the port's chart datum lies below the levelling datum, metres. */
  readonly chartBelow: number;
  readonly careful: Noted;
  /** The receiver's grid one zone to the west and to the east, where the grid has zones. */
  readonly neighbouringGrids: readonly GridSystem[];
  readonly otherDatums: readonly OtherDatum[];
  /** Metres a year, and the years between the register's epoch and the other one. */
  readonly plate: { readonly velocity: EastNorthUp; readonly years: number };
  readonly movement: Movement;
  /** An error that no surveyor's habit explains. */
  readonly unlisted: EastNorthUp;
  readonly siteCalibration: SiteCalibration;
}

/** One way to make one slip. */
export interface Planted {
  readonly slip: SlipName;
  /** Which of the ways, in words. */
  readonly detail: string;
  readonly base: BaseSetting;
  readonly rover: RoverSetting;
  readonly moved?: Movement;
  /** The notes of somebody who wrote down exactly what the receiver was told. */
  readonly faithful: Noted;
  /** The notes of somebody who never knew: they show what was meant, or the same misreading. */
  readonly unaware: Noted;
}

export type SlipName = keyof typeof WAYS;

/** Every slip of this list, in every way that is possible in this situation. */
export function waysToSlip(situation: Situation): readonly Planted[] {
  return SLIP_NAMES.flatMap((name) => waysOf(name, situation));
}

/** The ways of one slip; none where the situation has no room for it. */
export function waysOf(name: SlipName, situation: Situation): readonly Planted[] {
  const ways: readonly Way[] = WAYS[name](situation);
  return ways
    .filter((way) => changesSomething(way, situation.careful.setting))
    .map((way) => planted(name, way, situation));
}

/** A keyed place that is off by a given vector, and nobody knows why. */
export function plantVector(situation: Situation, unlisted: EastNorthUp): Planted {
  const [only] = waysOf('unlisted', { ...situation, unlisted });
  if (only === undefined) throw new Error('the unlisted slip has one way');
  return only;
}

/** Nothing wrong. */
export function carefulDay(situation: Situation): Omit<Planted, 'slip'> {
  const { careful } = situation;
  return {
    detail: 'nothing wrong',
    base: careful.setting,
    rover: careful.rover,
    faithful: careful,
    unaware: careful,
  };
}

/** What differs from the careful day. */
interface Way {
  readonly detail: string;
  readonly base?: Partial<BaseSetting>;
  readonly rover?: Partial<RoverSetting>;
  readonly moved?: Movement;
  /** Where the tape was read or its reading written otherwise than the careful day has it. */
  readonly wroteTruly?: Partial<Noted>;
  readonly wroteUnaware?: Partial<Noted>;
}

const WAYS = {
  'extension-left-out': (situation) => {
    const { extension, setting } = situation.careful;
    if (!tapedToFoot(situation)) return [];
    return [
      {
        detail: `${String(extension)} m left out`,
        base: { antennaHeight: toMillimetre(setting.antennaHeight - extension) },
        wroteUnaware: {
          extension: 0,
          setting: { ...setting, antennaHeight: toMillimetre(setting.antennaHeight - extension) },
        },
      },
    ];
  },
  'extension-twice': ({ careful: { extension, setting } }) =>
    extension === 0
      ? []
      : [
          {
            detail: `${String(extension)} m taken twice`,
            base: { antennaHeight: toMillimetre(setting.antennaHeight + extension) },
          },
        ],
  'extension-inside-slant': (situation) => {
    if (!tapedToFoot(situation)) return [];
    const { extension } = situation.careful;
    const base = toldHeight(situation, (reading) =>
      reduceReading({ ...reading, length: reading.length + extension }, situation.antenna, 0),
    );
    return [{ detail: 'the extension added before the slope was taken off', base }];
  },
  'slope-not-reduced': (situation) => {
    const { readings, extension, setting } = situation.careful;
    const base = toldHeight(situation, ({ length, to }) =>
      to.kind === 'foot' ? length + extension : length - situation.antenna.rim.rise,
    );
    const upright = readings.map((reading) => ({ ...reading, to: UPRIGHT }));
    const detail = 'slant taken for vertical';
    return readings.some(({ to }) => to.kind === 'rim')
      ? [{ detail, base }]
      : [{ detail, base, wroteUnaware: { readings: upright, setting: { ...setting, ...base } } }];
  },
  'vertical-told-as-slant': (situation) => {
    const { readings, extension, setting } = situation.careful;
    if (readings.some(({ to }) => to.kind === 'rim')) return [];
    const upright = readings.map((reading) => ({
      ...reading,
      length: toMillimetre(reduceReading(reading, situation.antenna, 0)),
      to: UPRIGHT,
    }));
    const slant = { kind: 'foot' as const, offCentre: situation.antenna.rim.radius };
    const told = upright.map((reading) => ({ ...reading, to: slant }));
    const base = toldHeight({ ...situation, careful: { ...situation.careful, readings: told } }, (reading) =>
      reduceReading(reading, situation.antenna, extension),
    );
    return [
      {
        detail: 'vertical reading reduced as a slant',
        base,
        wroteTruly: { readings: upright },
        wroteUnaware: { readings: told, setting: { ...setting, ...base } },
      },
    ];
  },
  'rise-forgotten': (situation) => {
    const { careful, antenna } = situation;
    if (careful.readings.some((reading) => reading.to.kind === 'foot')) return [];
    return [
      {
        detail: `${String(antenna.rim.rise)} m from the taped rim down to the reference point forgotten`,
        base: { antennaHeight: toMillimetre(careful.setting.antennaHeight + antenna.rim.rise) },
      },
    ];
  },
  'tape-misread': ({ careful: { setting } }) =>
    [0.1, FOOT, FOOT / 12].flatMap((by) =>
      [-by, by].map((wrong) => ({
        detail: `tape misread by ${wrong.toFixed(4)} m`,
        base: { antennaHeight: toMillimetre(setting.antennaHeight + wrong) },
      })),
    ),
  'metres-dropped': ({ careful: { setting } }) => [
    {
      detail: 'whole metres of the antenna height left out',
      base: { antennaHeight: toMillimetre(setting.antennaHeight - Math.floor(setting.antennaHeight)) },
    },
  ],
  'antenna-height-twice': ({ careful: { setting } }) => [
    { detail: 'antenna height doubled', base: { antennaHeight: toMillimetre(2 * setting.antennaHeight) } },
    {
      detail: 'antenna height in the height as well',
      base: { height: toMillimetre(setting.height + setting.antennaHeight) },
    },
  ],
  'antenna-height-left-out': () => [{ detail: 'antenna height left at zero', base: { antennaHeight: 0 } }],
  'phase-centre-for-arp': ({ antenna, careful: { setting } }) => [
    {
      detail: 'height to the phase centre keyed as the height to the reference point',
      base: { antennaHeight: toMillimetre(setting.antennaHeight + antenna.phaseCentre) },
    },
  ],
  'arp-for-phase-centre': () => [
    {
      detail: 'receiver set to heights to the phase centre, told the height to the reference point',
      base: { antennaReference: 'phase-centre' },
    },
  ],
  'base-antenna-type-missing': () => [
    { detail: 'no antenna type at the base', base: { antennaTypeKnown: false } },
  ],
  'orthometric-for-ellipsoidal': ({ mark }) => [
    { detail: 'orthometric height keyed as ellipsoidal', base: { height: mark.orthometric } },
  ],
  'chart-for-ellipsoidal': ({ mark, chartBelow }) => [
    {
      detail: 'chart height keyed as ellipsoidal',
      base: { height: toMillimetre(mark.orthometric + chartBelow) },
    },
  ],
  'separation-sign': ({ mark }) => [
    {
      detail: 'separation subtracted',
      base: { height: toMillimetre(mark.orthometric - mark.separation) },
    },
  ],
  'separation-twice': ({ mark }) => [
    {
      detail: 'separation added twice',
      base: { height: toMillimetre(mark.orthometric + 2 * mark.separation) },
    },
  ],
  'millimetres-for-metres': ({ careful: { setting } }) => [
    { detail: 'antenna height in millimetres', base: { antennaHeight: setting.antennaHeight * 1000 } },
    {
      detail: 'antenna height in metres to a field of millimetres',
      base: { antennaHeight: setting.antennaHeight / 1000 },
    },
  ],
  feet: ({ careful: { setting } }) => [
    { detail: 'antenna height in feet', base: { antennaHeight: toMillimetre(setting.antennaHeight / FOOT) } },
    {
      detail: 'antenna height in metres to a field of feet',
      base: { antennaHeight: setting.antennaHeight * FOOT },
    },
    { detail: 'height in feet', base: { height: toMillimetre(setting.height / FOOT) } },
    { detail: 'height in metres to a field of feet', base: { height: setting.height * FOOT } },
  ],
  'feet-and-inches-as-decimals': ({ careful: { setting } }) => {
    const inches = Math.round(setting.antennaHeight / FOOT / (1 / 12));
    const typed = Number(`${String(Math.floor(inches / 12))}.${String(inches % 12)}`);
    return [
      { detail: `${String(typed)} ft for so many feet and inches`, base: { antennaHeight: typed * FOOT } },
    ];
  },
  'survey-feet': ({ careful: { setting } }) =>
    [US_FOOT / FOOT, FOOT / US_FOOT].flatMap((ratio) =>
      inGrid(setting, ({ east, north }) => ({
        detail: ratio > 1 ? 'feet taken for US survey feet' : 'US survey feet taken for feet',
        base: gridKeyed({ east: toMillimetre(east * ratio), north: toMillimetre(north * ratio) }),
      })),
    ),
  'digits-swapped': ({ careful: { setting } }) => [
    ...numberSwaps(setting.antennaHeight).map((antennaHeight) => ({
      detail: `antenna height ${antennaHeight.toFixed(3)}`,
      base: { antennaHeight },
    })),
    ...numberSwaps(setting.height).map((height) => ({
      detail: `height ${height.toFixed(3)}`,
      base: { height },
    })),
    ...positionSwaps(setting.position),
  ],
  'east-north-swapped': ({ careful: { setting } }) =>
    inGrid(setting, ({ east, north }) => ({
      detail: 'east keyed as north',
      base: gridKeyed({ east: north, north: east }),
    })),
  zone: ({ careful: { setting }, neighbouringGrids }) =>
    neighbouringGrids.flatMap((grid) =>
      inGrid(setting, () => ({ detail: `receiver set to ${grid.name}`, base: { grid } })),
    ),
  hemisphere: ({ careful: { setting } }) => {
    if (setting.position.kind === 'grid') return [];
    const { latitude, longitude } = setting.position.place;
    return [
      { detail: 'north for south', base: placeKeyed({ latitude: -latitude, longitude }) },
      { detail: 'east for west', base: placeKeyed({ latitude, longitude: -longitude }) },
    ];
  },
  'wrong-mark': ({ careful: { setting }, otherMarks }) =>
    otherMarks.map((mark) => ({ detail: `coordinates of ${mark.name}`, base: coordinatesOf(mark, setting) })),
  datum: ({ careful: { setting }, mark, otherDatums }) =>
    otherDatums.flatMap((datum) => {
      const height = mark.orthometric + mark.separation;
      const other = inOtherDatum({ ...mark.place, height }, setting.grid, datum);
      const whole = { ...positioned(other, setting), height: toMillimetre(other.height) };
      return [
        { detail: `position in ${datum.name}`, base: positioned(other, setting) },
        { detail: `position and height in ${datum.name}`, base: whole },
      ];
    }),
  epoch: ({ careful: { setting }, plate }) => {
    const by = {
      east: plate.velocity.east * plate.years,
      north: plate.velocity.north * plate.years,
      up: 0,
    };
    return [{ detail: `${String(plate.years)} years of movement`, base: keyedAside(setting, by) }];
  },
  'yesterdays-coordinates': ({ careful: { setting }, yesterday }) => [
    { detail: 'position and height of the day before', base: coordinatesOf(yesterday.mark, setting) },
    {
      detail: 'position, height and antenna height of the day before',
      base: { ...coordinatesOf(yesterday.mark, setting), antennaHeight: yesterday.antennaHeight },
    },
    { detail: 'antenna height of the day before', base: { antennaHeight: yesterday.antennaHeight } },
  ],
  'base-moved': ({ movement }) => [{ detail: 'tripod moved', moved: movement }],
  'rover-pole': ({ careful: { rover } }) =>
    POLE_STEPS.map((step) => ({
      detail: `set to ${(rover.pole + step).toFixed(3)} m, stood at ${rover.pole.toFixed(3)} m`,
      rover: { pole: toMillimetre(rover.pole + step) },
    })),
  'pole-left-out': () => [{ detail: 'no pole in the controller', rover: { pole: 0 } }],
  'pole-twice': ({ careful: { rover } }) => [
    { detail: 'pole taken off twice', rover: { pole: 2 * rover.pole } },
  ],
  'rover-geoid-off': () => [{ detail: 'no geoid in the controller', rover: { geoid: undefined } }],
  'rover-scale': ({ mark, careful: { setting } }) => {
    const factor = 1 + (mark.orthometric + mark.separation) / setting.grid.ellipsoid.semiMajor;
    return [
      { detail: 'ground scale about the base', rover: { scale: { about: mark.grid, factor } } },
      { detail: 'ground scale about the origin', rover: { scale: { about: { east: 0, north: 0 }, factor } } },
    ];
  },
  'rover-site-calibration': ({ siteCalibration }) => [
    { detail: 'the calibration of another site', rover: { siteCalibration } },
  ],
  'rover-antenna-type-missing': () => [
    { detail: 'no antenna type at the rover', rover: { antennaTypeKnown: false } },
  ],
  /** Not a slip that anybody lists: the keyed place is off by some vector. */
  unlisted: ({ careful: { setting }, unlisted }) => [
    { detail: 'keyed place off by an arbitrary vector', base: keyedAside(setting, unlisted) },
  ],
} satisfies Readonly<Record<string, (situation: Situation) => readonly Way[]>>;

export const SLIP_NAMES = Object.keys(WAYS) as readonly SlipName[];

const FOOT = 0.3048;
const US_FOOT = 1200 / 3937;

/** Poles lock at such lengths (common practice); the wrong one is told. */
const POLE_STEPS = [-0.5, -0.25, -0.2, 0.2, 0.25, 0.5];

function planted(slip: SlipName, way: Way, { careful }: Situation): Planted {
  const base = { ...careful.setting, ...way.base };
  const rover = { ...careful.rover, ...way.rover };
  return {
    slip,
    detail: way.detail,
    base,
    rover,
    ...(way.moved === undefined ? {} : { moved: way.moved }),
    faithful: { ...careful, setting: base, rover, ...way.wroteTruly },
    unaware: { ...careful, ...way.wroteUnaware },
  };
}

/** A slant read right over the mark is no slip when it is left unreduced. */
function changesSomething({ base = {}, rover, moved }: Way, careful: BaseSetting): boolean {
  const told = { ...careful, ...base };
  return rover !== undefined || moved !== undefined || JSON.stringify(told) !== JSON.stringify(careful);
}

function tapedToFoot({ careful: { extension, readings } }: Situation): boolean {
  return extension > 0 && readings.every((reading) => reading.to.kind === 'foot');
}

const UPRIGHT = { kind: 'foot' as const, offCentre: 0 };

/** The antenna height that the readings of the start give when reduced like this. */
function toldHeight(
  { careful: { readings } }: Situation,
  reduce: (reading: Reading) => number,
): Pick<BaseSetting, 'antennaHeight'> {
  const start = readings.filter(({ minutes }) => minutes < (readings[0]?.minutes ?? 0) + 30).map(reduce);
  return { antennaHeight: toMillimetre(start.reduce((sum, height) => sum + height, 0) / start.length) };
}

function inGrid(setting: BaseSetting, way: (position: GridPosition) => Way): readonly Way[] {
  return setting.position.kind === 'grid' ? [way(setting.position.position)] : [];
}

function gridKeyed(position: GridPosition): Partial<BaseSetting> {
  return { position: { kind: 'grid', position } };
}

function placeKeyed(place: Graticule): Partial<BaseSetting> {
  return { position: { kind: 'geographic', place } };
}

/** A place keyed the way this receiver is told places. */
function positioned(place: Graticule, setting: BaseSetting): Pick<BaseSetting, 'position'> {
  return { position: keyedAs(setting.position.kind, place, setting.grid) };
}

/** A place to the digits that are typed. */
export function keyedAs(kind: KeyedPosition['kind'], place: Graticule, grid: GridSystem): KeyedPosition {
  if (kind === 'geographic') {
    const latitude = toScreenAngle(place.latitude);
    return { kind, place: { latitude, longitude: toScreenAngle(place.longitude) } };
  }
  const { east, north } = grid.forward(place);
  return { kind, position: { east: toMillimetre(east), north: toMillimetre(north) } };
}

function coordinatesOf(mark: PublishedMark, setting: BaseSetting): Pick<BaseSetting, 'position' | 'height'> {
  return { ...positioned(mark.place, setting), height: toMillimetre(mark.orthometric + mark.separation) };
}

function keyedAside(setting: BaseSetting, by: EastNorthUp): Pick<BaseSetting, 'position' | 'height'> {
  const place = displaced({ ...keyedPlace(setting), height: setting.height }, by, setting.grid.ellipsoid);
  return { ...positioned(place, setting), height: toMillimetre(place.height) };
}

function inOtherDatum(place: Geodetic, grid: GridSystem, datum: OtherDatum): Geodetic {
  return toGeodetic(subtract(toGeocentric(place, grid.ellipsoid), datum.translation), datum.ellipsoid);
}

function numberSwaps(value: number): readonly number[] {
  return neighboursSwapped(value.toFixed(3)).map(Number);
}

function positionSwaps(position: KeyedPosition): readonly Way[] {
  if (position.kind === 'grid') {
    const { east, north } = position.position;
    return [
      ...numberSwaps(east).map((value) => ({
        detail: `east ${value.toFixed(3)}`,
        base: gridKeyed({ east: value, north }),
      })),
      ...numberSwaps(north).map((value) => ({
        detail: `north ${value.toFixed(3)}`,
        base: gridKeyed({ east, north: value }),
      })),
    ];
  }
  const { latitude, longitude } = position.place;
  return [
    ...angleSwaps(latitude).map((angle) => ({
      detail: `latitude ${angle.minutes}′${angle.seconds}″`,
      base: placeKeyed({ latitude: fromSexagesimal(angle), longitude }),
    })),
    ...angleSwaps(longitude).map((angle) => ({
      detail: `longitude ${angle.minutes}′${angle.seconds}″`,
      base: placeKeyed({ latitude, longitude: fromSexagesimal(angle) }),
    })),
  ];
}

/** Swaps within minutes and seconds; swapped degrees are another country. */
function angleSwaps(angle: number): readonly Sexagesimal[] {
  const right = toSexagesimal(angle);
  return neighboursSwapped(right.minutes + right.seconds)
    .map((text) => ({ ...right, minutes: text.slice(0, 2), seconds: text.slice(2) }))
    .filter(({ minutes, seconds }) => Number(minutes) < 60 && Number(seconds) < 60);
}

/** Every text that two neighbouring, different digits make by changing places; a point between them stays. */
export function neighboursSwapped(text: string): readonly string[] {
  const digits = [...text.matchAll(/\d/g)].map((match) => match.index);
  return digits.slice(1).flatMap((right, index) => {
    const left = digits[index] ?? 0;
    const [first, second] = [text.charAt(left), text.charAt(right)];
    if (first === second) return [];
    return [text.slice(0, left) + second + text.slice(left + 1, right) + first + text.slice(right + 1)];
  });
}
