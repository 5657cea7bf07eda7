/** How often the slip that was planted is named, over many draws of noise, distance, latitude, geometry and antenna. */
import type { Scene } from '../simulation/day.ts';
import { broadcastArp } from '../simulation/base.ts';
import type { Planted, SlipName } from '../simulation/planted.ts';
import { plantVector, waysOf, waysToSlip } from '../simulation/planted.ts';
import type { CheckResidual } from '../simulation/predict.ts';
import {
  predictedVectors,
  residualCovariance,
  squaredLength,
  vectorDistance,
} from '../simulation/predict.ts';
import { drawScene } from '../simulation/day.ts';
import { seededRandom } from '../simulation/random.ts';
import { distance } from '../simulation/world.ts';
import { diagnosisOf, plantedDay } from './days.ts';
import { seedOf, type Series } from './series.ts';

export interface Rates {
  readonly draws: number;
  /** Draws in which every other slip, and no slip, lies more than 4 σ away by the simulator's truth. */
  readonly distinguishable: number;
  /** Of those: the planted one is named first. */
  readonly first: number;
  /** Of the others, those that differ from a day without a slip at all. */
  readonly alike: number;
  /** Of those: it is among what is named. */
  readonly held: number;
  /** Of the days alike, those that differ from a day without a slip by so much that a slip is offered in 95 % of them. */
  readonly plain: number;
  /** Of those: it is among what is named. */
  readonly plainHeld: number;
  /** What was named instead, as sentences for whoever looks into it. */
  readonly missed: readonly string[];
}

/** Slips that lie closer than this by the truth cannot be asked to be told apart, standard deviations. */
const DISTINGUISHABLE = 4;
/**
 * A slip d standard deviations away from a day without one makes it d²/2 ± d likelier, as a logarithm. To be offered it
 * must be a hundredfold likelier, which 95 % of days reach from here on at best: d²/2 − 1.645 d = ln 100.
 */
const PLAIN = 1.645 + Math.sqrt(1.645 ** 2 + 2 * Math.log(100));

export function ratesOf(slip: SlipName, wanted: number, series: Series): Rates {
  let draws = 0;
  let distinguishable = 0;
  let first = 0;
  let alike = 0;
  let held = 0;
  let plain = 0;
  let plainHeld = 0;
  const missed: string[] = [];
  for (let number = 0; draws < wanted && number < 8 * wanted; number++) {
    const day = plantedDay(slip, number, series);
    if (!day) continue;
    const { scene, planted } = day;
    const own = predictedVectors(scene, planted);
    if (own.length === 0) continue;
    draws++;
    const fromNothing = apart(scene, own, predictedVectors(scene, undefined));
    if (fromNothing <= DISTINGUISHABLE) continue;
    const diagnosis = diagnosisOf(scene, planted);
    const groups = diagnosis?.groups.map(({ explanations }) => explanations.map(nameOf)) ?? [];
    const name = inProgram(slip);
    if (nearest(scene, planted, own) > DISTINGUISHABLE) {
      distinguishable++;
      if (groups[0]?.[0] === name) first++;
      else missed.push(`${slip} ${String(number)}, ${planted.detail}: ${JSON.stringify(groups)}`);
    } else {
      alike++;
      if (fromNothing > PLAIN) plain++;
      // What cannot be told from a vector that no slip explains is answered "none", as such vectors are.
      const asNone = slip === 'rover-site-calibration' && groups.length === 0;
      if (asNone || groups.some((group) => group.includes(name))) {
        held++;
        if (fromNothing > PLAIN) plainHeld++;
      } else missed.push(`${slip} ${String(number)}, ${planted.detail}, alike: ${JSON.stringify(groups)}`);
    }
  }
  return { draws, distinguishable, first, alike, held, plain, plainHeld, missed };
}

/** Of so many days with an error of the base that is no slip: how many are told one all the same. */
export function falselyNamed(days: number, series: Series): number {
  let named = 0;
  for (let number = 0; number < days; number++) {
    const scene = drawScene({ seed: seedOf(series, 'unlisted', number), points: 0 });
    const [planted] =
      number % 2 === 0
        ? waysOf('unlisted', scene.situation)
        : [uniformVector(scene, seedOf(series, 'vector', number))];
    if (diagnosisOf(scene, planted)?.answer === 'slips') named++;
  }
  return named;
}

/** Of so many days on which heights alone are wrong by 0.05 to 3 m: how many have a slip named that excludes all else. */
export function falselyClaimed(days: number, series: Series): number {
  let claimed = 0;
  for (let number = 0; number < days; number++) {
    const scene = drawScene({ seed: seedOf(series, 'height alone', number), points: 0 });
    const random = seededRandom(seedOf(series, 'rise', number));
    const up = (random.chance(0.5) ? 1 : -1) * random.uniform(0.05, 3);
    const found = diagnosisOf(scene, plantVector(scene.situation, { east: 0, north: 0, up }));
    if (found?.answer === 'slips' && found.groups[0]?.open === false) claimed++;
  }
  return claimed;
}

/** Of any length between 0.03 and 2 m alike; the simulator's own draws the logarithm of the length. */
function uniformVector(scene: Scene, seed: string): Planted {
  const random = seededRandom(seed);
  const length = random.uniform(0.03, 2);
  const azimuth = random.uniform(0, 2 * Math.PI);
  const rise = random.uniform(-1, 1);
  const level = length * Math.sqrt(1 - rise ** 2);
  return plantVector(scene.situation, {
    east: level * Math.sin(azimuth),
    north: level * Math.cos(azimuth),
    up: length * rise,
  });
}

const nameOf = ({ slips }: { readonly slips: readonly string[] }) => slips.join('+');

/** The program calls two of them by other names. */
const inProgram = (slip: SlipName): string => (slip === 'rover-geoid-off' ? 'rover-geoid' : slip);

/** The nearest other slip; of a site calibration also the nearest vector that is the same at all checks, which no slip explains. */
function nearest(scene: Scene, planted: Planted, own: readonly CheckResidual[]): number {
  const others = waysToSlip(scene.situation).filter(
    ({ slip }) => slip !== planted.slip && slip !== 'unlisted',
  );
  let closest = planted.slip === 'rover-site-calibration' ? fromAnyVector(scene, own) : Infinity;
  for (const other of others) {
    if (closest <= DISTINGUISHABLE) return closest;
    if (surelyFar(scene, planted, other)) continue;
    closest = Math.min(closest, apart(scene, own, predictedVectors(scene, other)));
  }
  return closest;
}

/** Two bases that send positions a metre apart to the same rover: no need to solve the day again to see the difference. */
function surelyFar(scene: Scene, one: Planted, other: Planted): boolean {
  if (one.moved || other.moved || !sameRover(one.rover, other.rover)) return false;
  if (one.base.antennaTypeKnown !== other.base.antennaTypeKnown) return false;
  const [first, second] = [one, other].map(({ base }) => broadcastArp(base, scene.baseAntenna));
  return first !== undefined && second !== undefined && distance(first, second) > 1;
}

/** Geoids are functions, so that settings are compared part by part. */
const sameRover = (one: Planted['rover'], other: Planted['rover']): boolean =>
  one.pole === other.pole &&
  one.antennaTypeKnown === other.antennaTypeKnown &&
  one.geoid === other.geoid &&
  one.scale === other.scale &&
  one.siteCalibration === other.siteCalibration;

const apart = (scene: Scene, one: readonly CheckResidual[], other: readonly CheckResidual[]): number =>
  one.length === other.length ? vectorDistance(scene, one, other) : Infinity;

/** What is left in standard deviations when the best constant vector is taken off, axis by axis. */
function fromAnyVector(scene: Scene, checks: readonly CheckResidual[]): number {
  const covariance = residualCovariance(scene, checks);
  const flat = checks.flatMap(({ residual }) => [residual.east, residual.north, residual.up]);
  let rest = flat;
  for (let axis = 0; axis < 3; axis++) {
    const along = flat.map((_, index) => (index % 3 === axis ? 1 : 0));
    const sum = (times: number) =>
      squaredLength(
        covariance,
        flat.map((value, index) => value + times * (along[index] ?? 0)),
      );
    const amount = (sum(1) - sum(-1)) / 4 / squaredLength(covariance, along);
    rest = rest.map((value, index) => value - amount * (along[index] ?? 0));
  }
  return Math.sqrt(squaredLength(covariance, rest));
}
