/** The vector solution against what must be true of any honest one. */
import { describe, expect, it } from 'vitest';
import { seededRandom } from './random.ts';
import type { RangePair } from './receiver.ts';
import { noiseForPrecision, recordRanges, solutionCovariance, solveVector } from './receiver.ts';
import { squaredLength } from './predict.ts';
import { visibleSatellites } from './satellites.ts';
import type { EastNorthUp, Geocentric, Geodetic } from './world.ts';
import {
  WGS84,
  add,
  displaced,
  distance,
  fromLocal,
  localFrame,
  scaled,
  subtract,
  toGeocentric,
  toLocal,
} from './world.ts';

interface Baseline {
  readonly basePlace: Geodetic;
  readonly base: Geocentric;
  readonly rover: Geocentric;
  readonly pairs: readonly RangePair[];
  readonly along: EastNorthUp;
}

/** Noise-free ranges over a baseline of a given length, somewhere, some time. */
function baseline(seed: number, metres: number): Baseline {
  const random = seededRandom(`baseline ${String(seed)}`);
  const basePlace = {
    latitude: random.uniform(-60, 70),
    longitude: random.uniform(-180, 180),
    height: random.uniform(0, 1000),
  };
  const azimuth = random.uniform(0, 2 * Math.PI);
  const along = { east: Math.sin(azimuth), north: Math.cos(azimuth), up: 0 };
  const roverPlace = displaced(
    basePlace,
    { east: metres * along.east, north: metres * along.north, up: random.uniform(-20, 20) },
    WGS84,
  );
  const base = toGeocentric(basePlace, WGS84);
  const rover = toGeocentric(roverPlace, WGS84);
  const sights = visibleSatellites(basePlace, random.uniform(0, 86_400), 12);
  return { basePlace, base, rover, along, pairs: recordRanges(base, rover, sights) };
}

describe('the vector from base to rover', () => {
  it('is the true one, whatever the clocks, where nothing is wrong', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { base, rover, pairs } = baseline(seed, seed * 400);
      const solution = solveVector(pairs, base);
      expect(solution && distance(solution.rover, rover)).toBeLessThan(1e-4);
      expect(solution?.misclosure).toBeLessThan(1e-6);
    }
  });

  /*
   * Let the base be told δ too high and the rover lie b away, horizontally. The rover looks for the place whose range
   * differences fit. To first order a pure translation δ fits where both see a satellite in the same direction e; but
   * the directions turn along the baseline by (I − eeᵀ)b/ρ, which leaves a misfit of δᵀ(I − eeᵀ)b/ρ a satellite.
   * For δ upright and b level that is −|δ||b|/ρ · sin(elevation) cos(elevation) cos(azimuth off the baseline), and
   * since the rover moved along b̂ changes the range by cos(elevation) cos(azimuth off the baseline), least squares
   * takes it for a movement along the baseline of |δ||b|/ρ times a mean sine of the elevations: with ρ some
   * 22 000 km and sines about 0.6, 0.03 ppm of the distance for each metre of δ. 55 m at 5 km: 8 mm.
   */
  it('bends by some 8 mm at 5 km where the base was told 55 m too high', () => {
    const bends = Array.from({ length: 200 }, (_, seed) => {
      const { basePlace, base, rover, pairs, along } = baseline(seed, 5000);
      const error = scaled(localFrame(basePlace).up, 55);
      const solution = solveVector(pairs, add(base, error));
      if (solution === undefined) throw new Error('no solution');
      const bend = toLocal(subtract(subtract(solution.rover, error), rover), localFrame(basePlace));
      return {
        size: Math.hypot(bend.east, bend.north, bend.up),
        along: Math.abs(bend.east * along.east + bend.north * along.north),
      };
    });
    const mean = bends.reduce((sum, bend) => sum + bend.size, 0) / bends.length;
    expect(mean).toBeGreaterThan(0.006);
    expect(mean).toBeLessThan(0.012);
    for (const { size } of bends) expect(size).toBeLessThan(0.03);
    const alongBaseline = bends.reduce((sum, bend) => sum + bend.along, 0) / bends.length;
    expect(alongBaseline / mean).toBeGreaterThan(0.8);
  });

  it('carries a small error of the base over unchanged', () => {
    const { basePlace, base, rover, pairs } = baseline(7, 5000);
    const error = fromLocal({ east: 0.3, north: -0.2, up: 0.25 }, localFrame(basePlace));
    const solution = solveVector(pairs, add(base, error));
    expect(solution && distance(solution.rover, add(rover, error))).toBeLessThan(2e-4);
  });

  it('is what double differences with their full covariance give', () => {
    const { base, rover, pairs } = baseline(11, 8000);
    const random = seededRandom('ranges');
    const noisy = pairs.map((pair) => ({ ...pair, rover: pair.rover + random.normal(0.01) }));
    const solution = solveVector(noisy, base);
    const direct = solveDoubleDifferences(noisy, base, rover);
    expect(solution && distance(solution.rover, direct)).toBeLessThan(1e-5);
    expect(distance(direct, rover)).toBeGreaterThan(1e-3);
  });

  it('does not exist for three satellites', () => {
    const { base, pairs } = baseline(3, 1000);
    expect(solveVector(pairs.slice(0, 3), base)).toBeUndefined();
  });
});

describe('the noise of the vector', () => {
  it('scatters as its covariance says, and that as precisely as the pair is specified', () => {
    let squares = 0;
    let horizontal = 0;
    let up = 0;
    const count = 4000;
    const precision = { horizontal: 0.006, up: 0.015 };
    for (let seed = 0; seed < count; seed++) {
      const { base, rover, pairs } = baseline(seed, 2000);
      const place = baseline(seed, 2000).basePlace;
      const frame = localFrame(place);
      const sights = pairs.map((pair) => pair.sight);
      const amount = noiseForPrecision(sights, rover, frame, precision);
      const random = seededRandom(`noise ${String(seed)}`);
      const solution = solveVector(recordRanges(base, rover, sights, { amount, random }), base);
      if (solution === undefined) throw new Error('no solution');
      const error = toLocal(subtract(solution.rover, rover), frame);
      const covariance = solutionCovariance(sights, rover, frame, amount);
      squares += squaredLength(covariance, [error.east, error.north, error.up]);
      horizontal += (error.east ** 2 + error.north ** 2) / 2;
      up += error.up ** 2;
    }
    // A sum of χ² with three degrees of freedom each: standard deviation √(2 · 3n).
    expect(Math.abs(squares - 3 * count)).toBeLessThan(2.5758 * Math.sqrt(6 * count));
    expect(Math.abs(up / count / precision.up ** 2 - 1)).toBeLessThan(2.5758 * Math.sqrt(2 / count));
    // Some skies make the horizontal better than specified, none makes it worse.
    const ratio = horizontal / count / precision.horizontal ** 2;
    expect(ratio).toBeGreaterThan(0.9);
    expect(ratio).toBeLessThan(1.05);
  });
});

/** The textbook's way, written out: one reference satellite a constellation, full covariance, Gauss–Newton. */
function solveDoubleDifferences(
  pairs: readonly RangePair[],
  base: Geocentric,
  start: Geocentric,
): Geocentric {
  const references = [0, 1].map((system) => pairs.findIndex((pair) => pair.sight.system === system));
  const others = pairs
    .map((pair, index) => ({ index, reference: references[pair.sight.system] ?? 0 }))
    .filter(({ index, reference }) => index !== reference);
  const variance = (index: number): number => 1 / Math.sin(pairs[index]?.sight.elevation ?? 1) ** 2;
  const covariance = others.map((row) =>
    others.map(
      (column) =>
        (row.reference === column.reference ? variance(row.reference) : 0) +
        (row.index === column.index ? variance(row.index) : 0),
    ),
  );
  let place = start;
  for (let pass = 0; pass < 5; pass++) {
    const single = pairs.map(({ sight, base: atBase, rover }) => {
      const length = distance(sight.satellite, place);
      return {
        closure: rover - atBase - (length - distance(sight.satellite, base)),
        direction: scaled(subtract(sight.satellite, place), -1 / length),
      };
    });
    const double = others.map(({ index, reference }) => {
      const [one, other] = [single[index], single[reference]];
      if (one === undefined || other === undefined) throw new Error('no pair');
      const { x, y, z } = subtract(one.direction, other.direction);
      return { row: [x, y, z], closure: one.closure - other.closure };
    });
    // Weighted rows by solving covariance · W = [A l].
    const weighted = solveLinear(
      covariance,
      double.map(({ row, closure }) => [...row, closure]),
    );
    const normal = [0, 1, 2].map((row) =>
      [0, 1, 2, 3].map((column) =>
        double.reduce((sum, each, at) => sum + (each.row[row] ?? 0) * (weighted[at]?.[column] ?? 0), 0),
      ),
    );
    const step = solveLinear(
      normal.map((row) => row.slice(0, 3)),
      normal.map((row) => row.slice(3)),
    );
    place = add(place, { x: step[0]?.[0] ?? 0, y: step[1]?.[0] ?? 0, z: step[2]?.[0] ?? 0 });
  }
  return place;
}

/** Gauss–Jordan elimination with pivoting, for several right sides. */
function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const size = matrix.length;
  const rows = matrix.map((row, index) => [...row, ...(right[index] ?? [])]);
  for (let column = 0; column < size; column++) {
    const candidates = rows.slice(column).map((row) => Math.abs(row[column] ?? 0));
    const pivot = column + candidates.indexOf(Math.max(...candidates));
    const [chosen, displacedRow] = [rows[pivot] ?? [], rows[column] ?? []];
    rows[pivot] = displacedRow;
    const scale = chosen[column] ?? 1;
    const unit = chosen.map((value) => value / scale);
    rows.forEach((row, index) => {
      const factor = row[column] ?? 0;
      rows[index] = index === column ? unit : row.map((value, at) => value - factor * (unit[at] ?? 0));
    });
    rows[column] = unit;
  }
  return rows.map((row) => row.slice(size));
}
