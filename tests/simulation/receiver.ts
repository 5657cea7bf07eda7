/** Two receivers range to the same satellites; the rover's place is solved from the double differences and the base position it was told. */
import type { Random } from './random.ts';
import type { Sight } from './satellites.ts';
import type { EastNorthUp, Geocentric, LocalFrame } from './world.ts';
import { distance, dot, scaled, subtract, toLocal } from './world.ts';

/** Standard deviations of what remains in a single difference between the two receivers, metres. */
export interface RangeNoise {
  /** Multipath, phase noise and phase-centre variation, towards the zenith; grows as 1 / sin(elevation). */
  readonly white: number;
  /** Zenith troposphere left after the model. */
  readonly zenith: number;
  /** Tilted atmosphere: east and north gradient of the troposphere and ionosphere. */
  readonly gradient: number;
}

/** What both receivers recorded of one satellite; metres, each with its receiver's unknown clock inside. */
export interface RangePair {
  readonly sight: Sight;
  readonly base: number;
  readonly rover: number;
}

export interface Solution {
  /** The rover's phase centre, as far as the rover can know it. */
  readonly rover: Geocentric;
  /** Root mean square of the weighted double-difference misclosures, scaled to the zenith; metres. */
  readonly misclosure: number;
  readonly pdop: number;
  readonly satellites: number;
}

/** True ranges from the true phase centres, each constellation with its own clock offsets, and noise where a source of it is given. */
export function recordRanges(
  base: Geocentric,
  rover: Geocentric,
  sights: readonly Sight[],
  noise?: { readonly amount: RangeNoise; readonly random: Random },
): readonly RangePair[] {
  const clocks = [
    { base: 4217.25, rover: -31805.5 },
    { base: -977.125, rover: 1250.75 },
  ];
  const errors = noise === undefined ? sights.map(() => 0) : rangeErrors(sights, noise.amount, noise.random);
  return sights.map((sight, index) => ({
    sight,
    base: distance(sight.satellite, base) + (clocks[sight.system]?.base ?? 0),
    rover: distance(sight.satellite, rover) + (clocks[sight.system]?.rover ?? 0) + (errors[index] ?? 0),
  }));
}

/**
 * Iterated least squares for the rover from phase whose integers are known, or from code: they differ in noise only.
 * Subtracting each constellation's weighted mean from the single differences gives the same estimate as double
 * differences with their full covariance, since both remove exactly one clock a constellation.
 * Undefined where the geometry does not determine a place or the iteration does not settle.
 */
export function solveVector(pairs: readonly RangePair[], broadcast: Geocentric): Solution | undefined {
  const sights = pairs.map((pair) => pair.sight);
  let rover = broadcast;
  for (let pass = 0; pass < 20; pass++) {
    const place = rover;
    const rows = design(sights, place);
    const closures = reduced(
      sights,
      pairs.map(
        ({ sight, base, rover: range }) =>
          range - base - (distance(sight.satellite, place) - distance(sight.satellite, broadcast)),
      ),
    );
    const inverse = inverseNormals(rows);
    if (inverse === undefined) return undefined;
    const step = times(inverse, weightedSum(rows, closures));
    rover = { x: rover.x + step.x, y: rover.y + step.y, z: rover.z + step.z };
    if (Math.hypot(step.x, step.y, step.z) > 1e-6) continue;
    return {
      rover,
      misclosure: Math.sqrt(
        rows.reduce((sum, row, index) => sum + row.weight * (closures[index] ?? 0) ** 2, 0) / rows.length,
      ),
      pdop: dilution(sights, place),
      satellites: pairs.length,
    };
  }
  return undefined;
}

/** One receiver alone from code: a place and a clock a constellation, from a rough start. */
export function solveAlone(
  ranges: readonly { readonly sight: Sight; readonly range: number }[],
  start: Geocentric,
): Geocentric | undefined {
  const pairs = ranges.map(({ sight, range }) => ({
    sight,
    base: distance(sight.satellite, start),
    rover: range,
  }));
  return solveVector(pairs, start)?.rover;
}

/**
 * The range noise that gives a pair of receivers its specified precision in this geometry: a maker states what
 * comes out, so the noise that goes in is set for it. White noise and troposphere first; where white noise alone
 * already makes the height worse than specified, the horizontal rest comes from gradients. A few skies allow no
 * such mixture: there the height is as specified and the horizontal better.
 * `horizontal` is the standard deviation of each axis in the mean, `up` that of the height; metres.
 */
export function noiseForPrecision(
  sights: readonly Sight[],
  rover: Geocentric,
  frame: LocalFrame,
  precision: { readonly horizontal: number; readonly up: number },
): RangeNoise {
  const response = responses(sights, rover, frame);
  const white = response.map((each, index) => scaledLocal(each, 1 / Math.sin(sights[index]?.elevation ?? 1)));
  const power = (vectors: readonly EastNorthUp[]): { horizontal: number; up: number } => ({
    horizontal: vectors.reduce((sum, { east, north }) => sum + (east ** 2 + north ** 2) / 2, 0),
    up: vectors.reduce((sum, { up }) => sum + up ** 2, 0),
  });
  const summed = (shape: (sight: Sight) => number): EastNorthUp =>
    sights.reduce(
      (sum, sight, index) => addLocal(sum, scaledLocal(response[index] ?? NOWHERE, shape(sight))),
      NOWHERE,
    );
  const fromWhite = power(white);
  const fromZenith = power([summed(zenithShape)]);
  const fromGradient = power([summed(eastShape), summed(northShape)]);
  const wanted = { horizontal: precision.horizontal ** 2, up: precision.up ** 2 };
  const [calm, zenith] = twoVariances(fromWhite, fromZenith, wanted);
  if (calm >= 0 && zenith >= 0) return { white: Math.sqrt(calm), zenith: Math.sqrt(zenith), gradient: 0 };
  const [tilted, gradient] = twoVariances(fromWhite, fromGradient, wanted);
  if (tilted >= 0 && gradient >= 0) {
    return { white: Math.sqrt(tilted), zenith: 0, gradient: Math.sqrt(gradient) };
  }
  return { white: Math.sqrt(wanted.up / fromWhite.up), zenith: 0, gradient: 0 };
}

/** The covariance of the solved place that a range noise gives, in the local frame; metres squared, rows east, north, up. */
export function solutionCovariance(
  sights: readonly Sight[],
  rover: Geocentric,
  frame: LocalFrame,
  noise: RangeNoise,
): readonly (readonly number[])[] {
  const response = responses(sights, rover, frame);
  const sources: EastNorthUp[] = response.map((each, index) =>
    scaledLocal(each, noise.white / Math.sin(sights[index]?.elevation ?? 1)),
  );
  for (const [shape, amount] of [
    [zenithShape, noise.zenith],
    [eastShape, noise.gradient],
    [northShape, noise.gradient],
  ] as const) {
    sources.push(
      sights.reduce(
        (sum, sight, index) => addLocal(sum, scaledLocal(response[index] ?? NOWHERE, amount * shape(sight))),
        NOWHERE,
      ),
    );
  }
  const axes = ['east', 'north', 'up'] as const;
  return axes.map((row) =>
    axes.map((column) => sources.reduce((sum, source) => sum + source[row] * source[column], 0)),
  );
}

interface Row {
  /** Towards growing range, less the constellation's mean; unitless. */
  readonly direction: Geocentric;
  readonly weight: number;
}

const NOWHERE: EastNorthUp = { east: 0, north: 0, up: 0 };

const zenithShape = (sight: Sight): number => 1 / Math.sin(sight.elevation);
const eastShape = (sight: Sight): number =>
  Math.sin(sight.azimuth) / (Math.sin(sight.elevation) * Math.tan(sight.elevation));
const northShape = (sight: Sight): number =>
  Math.cos(sight.azimuth) / (Math.sin(sight.elevation) * Math.tan(sight.elevation));

function rangeErrors(sights: readonly Sight[], noise: RangeNoise, random: Random): readonly number[] {
  const zenith = random.normal(noise.zenith);
  const east = random.normal(noise.gradient);
  const north = random.normal(noise.gradient);
  return sights.map(
    (sight) =>
      random.normal(noise.white) / Math.sin(sight.elevation) +
      zenith * zenithShape(sight) +
      east * eastShape(sight) +
      north * northShape(sight),
  );
}

/** The weight of a satellite falls with the square of 1 / sin(elevation), as its white noise grows. */
const weightOf = (sight: Sight): number => Math.sin(sight.elevation) ** 2;

function design(sights: readonly Sight[], place: Geocentric): readonly Row[] {
  const directions = sights.map(({ satellite }) =>
    scaled(subtract(satellite, place), -1 / distance(satellite, place)),
  );
  const axis = (name: 'x' | 'y' | 'z'): readonly number[] =>
    reduced(
      sights,
      directions.map((direction) => direction[name]),
    );
  const [x, y, z] = [axis('x'), axis('y'), axis('z')];
  return sights.map((sight, index) => ({
    direction: { x: x[index] ?? 0, y: y[index] ?? 0, z: z[index] ?? 0 },
    weight: weightOf(sight),
  }));
}

/** Takes each constellation's weighted mean away. */
function reduced(sights: readonly Sight[], values: readonly number[]): readonly number[] {
  const sums = new Map<number, { weight: number; value: number }>();
  sights.forEach((sight, index) => {
    const sum = sums.get(sight.system) ?? { weight: 0, value: 0 };
    sums.set(sight.system, {
      weight: sum.weight + weightOf(sight),
      value: sum.value + weightOf(sight) * (values[index] ?? 0),
    });
  });
  return sights.map((sight, index) => {
    const sum = sums.get(sight.system);
    return (values[index] ?? 0) - (sum === undefined ? 0 : sum.value / sum.weight);
  });
}

interface Symmetric {
  readonly xx: number;
  readonly xy: number;
  readonly xz: number;
  readonly yy: number;
  readonly yz: number;
  readonly zz: number;
}

function inverseNormals(rows: readonly Row[]): Symmetric | undefined {
  let [xx, xy, xz, yy, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (const {
    direction: { x, y, z },
    weight,
  } of rows) {
    xx += weight * x * x;
    xy += weight * x * y;
    xz += weight * x * z;
    yy += weight * y * y;
    yz += weight * y * z;
    zz += weight * z * z;
  }
  const cofactor = { xx: yy * zz - yz * yz, xy: xz * yz - xy * zz, xz: xy * yz - xz * yy };
  const determinant = xx * cofactor.xx + xy * cofactor.xy + xz * cofactor.xz;
  if (!(determinant > 1e-9)) return undefined;
  return {
    xx: cofactor.xx / determinant,
    xy: cofactor.xy / determinant,
    xz: cofactor.xz / determinant,
    yy: (xx * zz - xz * xz) / determinant,
    yz: (xy * xz - xx * yz) / determinant,
    zz: (xx * yy - xy * xy) / determinant,
  };
}

function times(matrix: Symmetric, vector: Geocentric): Geocentric {
  return {
    x: dot({ x: matrix.xx, y: matrix.xy, z: matrix.xz }, vector),
    y: dot({ x: matrix.xy, y: matrix.yy, z: matrix.yz }, vector),
    z: dot({ x: matrix.xz, y: matrix.yz, z: matrix.zz }, vector),
  };
}

function weightedSum(rows: readonly Row[], values: readonly number[]): Geocentric {
  let [x, y, z] = [0, 0, 0];
  rows.forEach(({ direction, weight }, index) => {
    const value = weight * (values[index] ?? 0);
    x += direction.x * value;
    y += direction.y * value;
    z += direction.z * value;
  });
  return { x, y, z };
}

/** How far a metre of range error on each satellite moves the solved place. */
function responses(sights: readonly Sight[], rover: Geocentric, frame: LocalFrame): readonly EastNorthUp[] {
  const rows = design(sights, rover);
  const inverse = inverseNormals(rows);
  if (inverse === undefined) return sights.map(() => NOWHERE);
  return rows.map(({ direction, weight }) => toLocal(times(inverse, scaled(direction, weight)), frame));
}

/** Position dilution of precision: equal weights, one clock a constellation. */
function dilution(sights: readonly Sight[], place: Geocentric): number {
  const overhead = sights.map((sight) => ({ ...sight, elevation: Math.PI / 2 }));
  const inverse = inverseNormals(design(overhead, place));
  return inverse === undefined ? Infinity : Math.sqrt(inverse.xx + inverse.yy + inverse.zz);
}

/** The variances of two noise sources that together give the wanted horizontal and vertical variance. */
function twoVariances(
  first: { readonly horizontal: number; readonly up: number },
  second: { readonly horizontal: number; readonly up: number },
  wanted: { readonly horizontal: number; readonly up: number },
): readonly [number, number] {
  const determinant = first.horizontal * second.up - second.horizontal * first.up;
  return [
    (wanted.horizontal * second.up - second.horizontal * wanted.up) / determinant,
    (first.horizontal * wanted.up - wanted.horizontal * first.up) / determinant,
  ];
}

function addLocal(first: EastNorthUp, second: EastNorthUp): EastNorthUp {
  return { east: first.east + second.east, north: first.north + second.north, up: first.up + second.up };
}

function scaledLocal(vector: EastNorthUp, factor: number): EastNorthUp {
  return { east: vector.east * factor, north: vector.north * factor, up: vector.up * factor };
}
