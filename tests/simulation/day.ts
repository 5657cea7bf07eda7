/** Draws a surveyor's day at random and lives it: true places, careful or planted settings, and what the controller showed. */
import type { Antenna, BaseSetting, BaseTruth, Movement, Reading, TapedTo } from './base.ts';
import {
  believedPhaseCentre,
  reduceReading,
  tape,
  toMillimetre,
  toScreenAngle,
  truePhaseCentre,
} from './base.ts';
import type { GridSystem, RoverSetting, Shown } from './controller.ts';
import { show } from './controller.ts';
import type { BilinearGeoid } from './geoid.ts';
import { drawGeoid, geoidModel } from './geoid.ts';
import type { Noted, OtherDatum, Planted, PublishedMark, Situation } from './planted.ts';
import { carefulDay, keyedAs } from './planted.ts';
import type { Random } from './random.ts';
import { seededRandom } from './random.ts';
import type { Solution } from './receiver.ts';
import { noiseForPrecision, recordRanges, solveAlone, solveVector } from './receiver.ts';
import type { Sight } from './satellites.ts';
import { visibleSatellites } from './satellites.ts';
import { utm, utmZone } from './transverse-mercator.ts';
import type { Geodetic, Graticule } from './world.ts';
import {
  DEGREE,
  INTERNATIONAL_1924,
  WGS84,
  add,
  displaced,
  distance,
  fromLocal,
  localFrame,
  toGeocentric,
  toGeodetic,
} from './world.ts';

/** Standard deviations; metres unless said. Horizontal ones are of each axis. */
export interface Noise {
  /** Of a vector between receivers: a part that is always there and parts per million of the distance. */
  readonly pairHorizontal: { readonly constant: number; readonly ppm: number };
  readonly pairUp: { readonly constant: number; readonly ppm: number };
  readonly markHorizontal: number;
  readonly markVertical: number;
  readonly tapeReading: number;
  readonly tapeCommon: number;
  readonly extension: number;
  readonly plummet: number;
  /** Of the rover's pole from the vertical, each axis; degrees. */
  readonly poleTilt: number;
  readonly phaseCentre: number;
  /** Of a vector whose integers could not be fixed. */
  readonly floatHorizontal: number;
  readonly floatUp: number;
  /** Of one range from code alone, towards the zenith. */
  readonly code: number;
}

/** 8 mm + 1 ppm horizontally as a radius, 15 mm + 1 ppm in height, marks to 8 and 12 mm, decimetres while floating (common practice). */
export const USUAL_NOISE: Noise = {
  pairHorizontal: { constant: 0.008 / Math.SQRT2, ppm: 1 / Math.SQRT2 },
  pairUp: { constant: 0.015, ppm: 1 },
  markHorizontal: 0.008,
  markVertical: 0.012,
  tapeReading: 0.001,
  tapeCommon: 0.0005,
  extension: 0.0002,
  plummet: 0.001,
  poleTilt: 2 / 60,
  phaseCentre: 0.0005,
  floatHorizontal: 0.2,
  floatUp: 0.35,
  code: 1,
};

export interface DayOptions {
  readonly seed: number | string;
  /** Degrees. */
  readonly latitude?: number;
  readonly longitude?: number;
  /** From the base to the first check mark, metres; drawn between 100 m and 20 km where not given. */
  readonly distance?: number;
  /** 1 or 2. */
  readonly checkMarks?: number;
  /** How coordinates are published and observed, and how they are keyed. */
  readonly form?: 'grid' | 'geographic';
  readonly keyedForm?: 'grid' | 'geographic';
  readonly noise?: Partial<Noise>;
  /** Another projection than UTM, and its neighbours. */
  readonly grid?: GridSystem;
  readonly neighbouringGrids?: readonly GridSystem[];
  readonly otherDatums?: readonly OtherDatum[];
  /** How many points are picked up between the checks. */
  readonly points?: number;
  /** Which rounds of checks are made; by default all four. */
  readonly rounds?: readonly Round[];
  /** Whether a nail by the base, without coordinates, is observed before and after noon. */
  readonly nail?: boolean;
  /** How the base moves where that is planted. */
  readonly movement?: Movement;
}

/** A round of checks: at the start, on both sides of the knock at noon, and at the end. */
export type Round = 'OPEN' | 'BEFORE' | 'AFTER' | 'CLOSE';

export interface SceneMark {
  readonly published: PublishedMark;
  readonly truth: Geodetic;
}

/** One place that the rover stood on. */
export interface Occupation {
  readonly name: string;
  /** A check mark, a nail without coordinates, or a point that is picked up. */
  readonly on: 'mark' | 'nail' | 'point';
  /** Undefined for everything but a check mark. */
  readonly mark: SceneMark | undefined;
  readonly truth: Geodetic;
  /** After midnight, local. */
  readonly minutes: number;
}

/** A day before anybody has made a mistake: everything is drawn, nothing is observed. */
export interface Scene {
  readonly seed: number | string;
  readonly date: string;
  /** Local time less UTC, minutes. */
  readonly clockOffset: number;
  readonly form: 'grid' | 'geographic';
  readonly grid: GridSystem;
  readonly geoid: BilinearGeoid;
  readonly noise: Noise;
  readonly base: BaseTruth;
  readonly baseMark: SceneMark;
  readonly checkMarks: readonly SceneMark[];
  readonly baseAntenna: Antenna;
  readonly roverAntenna: Antenna;
  readonly roverPole: number;
  readonly setup: { readonly from: number; readonly until: number };
  readonly disturbance: number;
  readonly occupations: readonly Occupation[];
  /** The base receiver's own idea of where it stands, from code alone. */
  readonly autonomous: Geodetic;
  readonly situation: Situation;
}

export interface Observation {
  readonly occupation: Occupation;
  readonly status: 'fixed' | 'float';
  readonly shown: Shown;
  readonly solution: Solution;
}

/** A day as it was lived: the truth, what was done wrong, what was noted and what the controller showed. */
export interface Day {
  readonly scene: Scene;
  readonly planted: Planted | undefined;
  readonly noted: Noted;
  /** An occupation without a solution is not here. */
  readonly observations: readonly Observation[];
}

/** What an option decides is drawn from a stream of its own, so that days that differ by an option share all the rest. */
export function drawScene(options: DayOptions): Scene {
  const random = seededRandom(options.seed);
  const noise = { ...USUAL_NOISE, ...options.noise };
  const baseTruth = drawPlace(random, options);
  const zone = utmZone(baseTruth);
  const south = baseTruth.latitude < 0;
  const grid = options.grid ?? utm(zone, south);
  const neighbouringGrids =
    options.neighbouringGrids ??
    (options.grid === undefined ? [utm(((zone + 58) % 60) + 1, south), utm((zone % 60) + 1, south)] : []);
  const geoid = drawGeoid(random, baseTruth);
  const form = options.form ?? (random.fork('form').chance(0.5) ? 'grid' : 'geographic');
  const keyedForm = options.keyedForm ?? (random.fork('keyed form').chance(0.5) ? 'grid' : 'geographic');
  const publish = (name: string, description: string, truth: Geodetic): SceneMark => ({
    truth,
    published: published(name, description, truth, { form, grid, geoid, noise, random }),
  });
  const away = (metres: number): Geodetic => drawAround(baseTruth, metres, grid, random);
  const baseMark = publish('PM-14', 'brass bolt', baseTruth);
  const first = options.distance ?? random.fork('first').logUniform(100, 20_000);
  const second = options.distance ?? random.fork('second').logUniform(100, 20_000);
  const count = options.checkMarks ?? (random.fork('count').chance(0.6) ? 2 : 1);
  const checkMarks = [
    publish('PM-09', 'bolt, check mark', away(first)),
    publish('PM-22', 'pillar, second check mark', away(second)),
  ].slice(0, count);
  const yesterday = publish('PM-31', 'base of the day before', away(random.logUniform(20, 3000)));
  const setup = { from: 470, until: 940 };
  const baseAntenna = drawAntenna('A1', random);
  const roverAntenna = drawAntenna('A2', random);
  const extension = random.chance(0.7) ? (random.chance(0.5) ? 0.25 : 0.5) : 0;
  const base: BaseTruth = {
    mark: baseTruth,
    antennaHeight: random.uniform(0.9, 1.5) + extension,
    centring: { east: random.normal(noise.plummet), north: random.normal(noise.plummet) },
    phaseCentreError: random.normal(noise.phaseCentre),
    extension: extension === 0 ? 0 : extension + random.normal(noise.extension),
  };
  const readings = drawReadings(base, baseAntenna, noise, random);
  const rover: RoverSetting = { pole: 2, antennaTypeKnown: true, geoid: geoidModel(geoid) };
  const setting: BaseSetting = {
    position: keyedAs(keyedForm, baseMark.published.place, grid),
    grid,
    height: toMillimetre(baseMark.published.orthometric + baseMark.published.separation),
    antennaHeight: toMillimetre(carefulHeight(readings, baseAntenna, extension)),
    antennaReference: 'arp',
    antennaTypeKnown: true,
  };
  const movement = options.movement ?? drawMovement(random.fork('movement'));
  const situation: Situation = {
    mark: baseMark.published,
    otherMarks: checkMarks.map((mark) => mark.published),
    yesterday: { mark: yesterday.published, antennaHeight: toMillimetre(random.uniform(1, 1.9)) },
    antenna: baseAntenna,
    chartBelow: toCentimetre(random.uniform(0.8, 4)),
    careful: { setting, readings, extension, rover },
    neighbouringGrids,
    otherDatums: options.otherDatums ?? [
      OLD_EUROPE,
      frameOfAnotherRealisation(baseTruth, random.fork('frame')),
    ],
    plate: drawPlate(random),
    movement,
    unlisted: drawVector(random, random.logUniform(0.03, 2)),
    siteCalibration: {
      about: baseMark.published.grid,
      rotation: random.normal(2e-5),
      scale: 1 + random.normal(2e-5),
      shift: drawVector(random, random.logUniform(0.05, 0.5)),
    },
  };
  const clockOffset = Math.round(baseTruth.longitude / 15) * 60;
  const date = new Date(Date.UTC(2025, 0, 1 + random.below(360))).toISOString().slice(0, 10);
  return {
    seed: options.seed,
    date,
    clockOffset,
    form,
    grid,
    geoid,
    noise,
    base,
    baseMark,
    checkMarks,
    baseAntenna,
    roverAntenna,
    roverPole: rover.pole,
    setup,
    disturbance: movement.minutes,
    occupations: drawOccupations(checkMarks, movement.minutes, options, away, random),
    autonomous: standAlone(
      baseTruth,
      base,
      grid,
      secondsOf(date, clockOffset, setup.from),
      noise,
      random.fork('autonomous'),
    ),
    situation,
  };
}

/** Lives the day: the same scene and the same noise whatever is planted, so that days differ by their slip alone. */
export function liveDay(scene: Scene, planted?: Planted, notes: 'faithful' | 'unaware' = 'unaware'): Day {
  const made = planted ?? carefulDay(scene.situation);
  return { scene, planted, noted: made[notes], observations: observeAll(scene, made, true) };
}

/** What the controller would show without any noise of ranges and pole; errors of marks, tape and centring stay. */
export function liveSilently(scene: Scene, planted?: Planted): readonly Observation[] {
  return observeAll(scene, planted ?? carefulDay(scene.situation), false);
}

/** The precision of a vector of this length, metres. */
export function pairPrecision(
  noise: Noise,
  metres: number,
): { readonly horizontal: number; readonly up: number } {
  return {
    horizontal: noise.pairHorizontal.constant + noise.pairHorizontal.ppm * 1e-6 * metres,
    up: noise.pairUp.constant + noise.pairUp.ppm * 1e-6 * metres,
  };
}

export const MASK_DEGREES = 12;

/** From the old continental datum on the 1924 ellipsoid (from memory: −87, −98, −121 m). */
const OLD_EUROPE: OtherDatum = {
  name: 'ED50',
  ellipsoid: INTERNATIONAL_1924,
  translation: { x: -87, y: -98, z: -121 },
};

function observeAll(scene: Scene, made: Omit<Planted, 'slip'>, noisy: boolean): readonly Observation[] {
  return scene.occupations.flatMap((occupation) => {
    const random = noisy ? seededRandom(scene.seed).fork(occupation.name) : undefined;
    const observation = observe(scene, made, occupation, random);
    return observation === undefined ? [] : [observation];
  });
}

function observe(
  scene: Scene,
  made: Omit<Planted, 'slip'>,
  occupation: Occupation,
  random: Random | undefined,
): Observation | undefined {
  const { grid, noise, base, baseAntenna, roverAntenna } = scene;
  const here = localFrame(occupation.truth);
  const lean = scene.roverPole * DEGREE * noise.poleTilt;
  const roverPhaseCentre = add(
    toGeocentric(occupation.truth, grid.ellipsoid),
    fromLocal(
      {
        east: random?.normal(lean) ?? 0,
        north: random?.normal(lean) ?? 0,
        up: scene.roverPole + roverAntenna.phaseCentre,
      },
      here,
    ),
  );
  const basePhaseCentre = truePhaseCentre(base, baseAntenna, grid, made.moved, occupation.minutes);
  const sights = sightsOf(scene, occupation);
  const solve = (precision: { readonly horizontal: number; readonly up: number }): Solution | undefined =>
    solveVector(
      recordRanges(
        basePhaseCentre,
        roverPhaseCentre,
        sights,
        random && { amount: noiseForPrecision(sights, roverPhaseCentre, here, precision), random },
      ),
      believedPhaseCentre(made.base, baseAntenna),
    );
  const fixed = solve(pairPrecision(noise, distance(basePhaseCentre, roverPhaseCentre)));
  const status = fixed !== undefined && fixed.misclosure < LARGEST_MISCLOSURE ? 'fixed' : 'float';
  const solution =
    status === 'fixed' ? fixed : solve({ horizontal: noise.floatHorizontal, up: noise.floatUp });
  if (solution === undefined) return undefined;
  return {
    occupation,
    status,
    solution,
    shown: show(solution.rover, roverAntenna.phaseCentre, made.rover, grid),
  };
}

/** A quarter of the carrier wavelength at 1575.42 MHz: integers cannot be told apart when the double differences misclose by more. */
const LARGEST_MISCLOSURE = 299_792_458 / 1_575_420_000 / 4;

/** The satellites above an occupation; within 20 km the base sees the same ones. */
function sightsOf(scene: Scene, occupation: Occupation): readonly Sight[] {
  const seconds = secondsOf(scene.date, scene.clockOffset, occupation.minutes);
  return visibleSatellites(occupation.truth, seconds, MASK_DEGREES);
}

function secondsOf(date: string, clockOffset: number, minutes: number): number {
  return Date.parse(date) / 1000 + (minutes - clockOffset) * 60;
}

function standAlone(
  mark: Geodetic,
  base: BaseTruth,
  grid: GridSystem,
  seconds: number,
  noise: Noise,
  random: Random,
): Geodetic {
  const antenna = toGeocentric({ ...mark, height: mark.height + base.antennaHeight }, grid.ellipsoid);
  const sights = visibleSatellites(mark, seconds, MASK_DEGREES);
  const amount = { white: noise.code, zenith: 0, gradient: 0 };
  const ranges = recordRanges(antenna, antenna, sights, { amount, random }).map(({ sight, rover }) => ({
    sight,
    range: rover,
  }));
  const start = toGeocentric({ ...mark, height: 0 }, grid.ellipsoid);
  return toGeodetic(solveAlone(ranges, start) ?? antenna, grid.ellipsoid);
}

function drawPlace(random: Random, options: DayOptions): Geodetic {
  // Uniform over the sphere between 60° south and 70° north, away from the edge of the map.
  const latitude = Math.asin(random.uniform(Math.sin(-60 * DEGREE), Math.sin(70 * DEGREE))) / DEGREE;
  const longitude = random.uniform(-177, 177);
  return {
    latitude: options.latitude ?? latitude,
    longitude: options.longitude ?? longitude,
    height: random.uniform(20, 900),
  };
}

/** Some place at about this distance; the ground rises or falls by up to 3 %. */
function drawAround(centre: Geodetic, metres: number, grid: GridSystem, random: Random): Geodetic {
  const azimuth = random.uniform(0, 2 * Math.PI);
  const vector = { east: metres * Math.sin(azimuth), north: metres * Math.cos(azimuth), up: 0 };
  const place = displaced(centre, vector, grid.ellipsoid);
  return { ...place, height: centre.height + metres * random.uniform(-0.03, 0.03) };
}

function published(
  name: string,
  description: string,
  truth: Geodetic,
  from: {
    readonly form: 'grid' | 'geographic';
    readonly grid: GridSystem;
    readonly geoid: BilinearGeoid;
    readonly noise: Noise;
    readonly random: Random;
  },
): PublishedMark {
  const { form, grid, noise, random } = from;
  const error = {
    east: random.normal(noise.markHorizontal),
    north: random.normal(noise.markHorizontal),
    up: random.normal(noise.markVertical),
  };
  const survey = displaced(truth, error, grid.ellipsoid);
  const written = writtenPlace(survey, form, grid);
  const separation = toMillimetre(geoidModel(from.geoid)(written));
  return {
    name,
    description,
    place: written,
    grid: grid.forward(written),
    orthometric: toMillimetre(survey.height - separation),
    separation,
  };
}

/** A place to the digits that a register prints. */
function writtenPlace(place: Graticule, form: 'grid' | 'geographic', grid: GridSystem): Graticule {
  if (form === 'geographic') {
    return { latitude: toScreenAngle(place.latitude), longitude: toScreenAngle(place.longitude) };
  }
  const { east, north } = grid.forward(place);
  return grid.inverse({ east: toMillimetre(east), north: toMillimetre(north) });
}

function drawAntenna(name: string, random: Random): Antenna {
  return {
    name,
    phaseCentre: toMillimetre(random.uniform(0.05, 0.13)),
    rim: { radius: toMillimetre(random.uniform(0.08, 0.19)), rise: toMillimetre(random.uniform(0.02, 0.05)) },
  };
}

/** Two readings at the start and one at the end. */
function drawReadings(base: BaseTruth, antenna: Antenna, noise: Noise, random: Random): readonly Reading[] {
  const to: TapedTo = random.chance(0.7)
    ? { kind: 'foot', offCentre: toMillimetre(random.uniform(0, 0.06)) }
    : { kind: 'rim' };
  const commonError = random.normal(noise.tapeCommon);
  const tapeNoise = { reading: noise.tapeReading, commonError };
  return [472, 474, 936].map((minutes) => ({
    length: tape(base, antenna, to, random, tapeNoise),
    to,
    minutes,
  }));
}

function carefulHeight(readings: readonly Reading[], antenna: Antenna, extension: number): number {
  const start = readings.slice(0, 2).map((reading) => reduceReading(reading, antenna, extension));
  return start.reduce((sum, height) => sum + height, 0) / start.length;
}

function toCentimetre(metres: number): number {
  return Math.round(metres * 100) / 100;
}

/** A knock of 20 mm to 0.5 m, mostly sideways, some time around noon. */
function drawMovement(random: Random): Movement {
  const size = random.logUniform(0.02, 0.5);
  const azimuth = random.uniform(0, 2 * Math.PI);
  return {
    minutes: 690 + random.below(50),
    by: {
      east: size * Math.sin(azimuth),
      north: size * Math.cos(azimuth),
      up: -size * random.uniform(0, 0.4),
    },
  };
}

/** 10 to 70 mm a year over 5 to 35 years. */
function drawPlate(random: Random): Situation['plate'] {
  const speed = random.uniform(0.01, 0.07);
  const azimuth = random.uniform(0, 2 * Math.PI);
  return {
    velocity: { east: speed * Math.sin(azimuth), north: speed * Math.cos(azimuth), up: 0 },
    years: 5 + random.below(31),
  };
}

/** A frame of the satellite age that differs by 0.5 to 2 m. */
function frameOfAnotherRealisation(near: Geodetic, random: Random): OtherDatum {
  const shift = drawVector(random, random.uniform(0.5, 2));
  return {
    name: 'an earlier realisation',
    ellipsoid: WGS84,
    translation: fromLocal(shift, localFrame(near)),
  };
}

function drawVector(random: Random, size: number): { east: number; north: number; up: number } {
  const azimuth = random.uniform(0, 2 * Math.PI);
  const up = random.uniform(-1, 1);
  const level = Math.sqrt(1 - up * up);
  return { east: size * level * Math.sin(azimuth), north: size * level * Math.cos(azimuth), up: size * up };
}

/** Rounds of checks, on each check mark in turn, and points between them. */
function drawOccupations(
  checkMarks: readonly SceneMark[],
  noon: number,
  options: DayOptions,
  away: (metres: number) => Geodetic,
  random: Random,
): readonly Occupation[] {
  const rounds: readonly { readonly name: Round; readonly minutes: number }[] = [
    { name: 'OPEN', minutes: 505 },
    { name: 'BEFORE', minutes: noon - 12 },
    { name: 'AFTER', minutes: noon + 12 },
    { name: 'CLOSE', minutes: 910 },
  ];
  const made = rounds.filter(({ name }) => options.rounds?.includes(name) ?? true);
  const checks = made.flatMap((round) =>
    checkMarks.map((mark, index): Occupation => ({
      name: index === 0 ? round.name : `${round.name}-${String(index + 1)}`,
      on: 'mark',
      mark,
      truth: mark.truth,
      minutes: round.minutes + index * 6,
    })),
  );
  const pickedUp = Array.from({ length: options.points ?? 4 }, (_, index): Occupation => ({
    name: `P${String(index + 1)}`,
    on: 'point',
    mark: undefined,
    truth: away(random.logUniform(50, 20_000)),
    minutes: 525 + random.below(370),
  }));
  const nail = away(12);
  const nails = [-30, 4].map((offset, index): Occupation => ({
    name: `NAIL-${index === 0 ? 'A' : 'B'}`,
    on: 'nail',
    mark: undefined,
    truth: nail,
    minutes: noon + offset,
  }));
  return [...checks, ...pickedUp, ...(options.nail === true ? nails : [])].sort(
    (first, second) => first.minutes - second.minutes,
  );
}
