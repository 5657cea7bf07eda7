/**
 * Displacement of the antenna between neighbouring epochs, by least squares over all satellites.
 *
 * Each satellite has its own uncertainty, taken from its residuals over the session: what GPS clocks of the older
 * kinds wander in half a minute is several times the noise of a phase. Outliers are rejected by their residuals after
 * the displacement is solved, since a knock is the same for all satellites and must not be thrown out with them.
 *
 * Source: W. Baarda (1968), A testing procedure for use in geodetic networks (normalised residuals); P. J. Rousseeuw
 * and C. Croux (1993), Alternatives to the median absolute deviation (the factor 1.4826).
 */
import { GALILEO, isGalileo } from '../evidence/rinex/raw-observations.ts';
import type { Differences } from './differences.ts';
import { fitOf, redundancyOf, robustFit } from './normal-equations.ts';
import { median } from './stood.ts';

/** One row a pair, three or six numbers each; NaN where a pair is not solved. */
export interface Displacements {
  readonly moved: Float64Array;
  /** Covariance: EE, NN, UU, EN, EU, NU. */
  readonly covariance: Float64Array;
  readonly satellites: Uint8Array;
  readonly rejected: Uint8Array;
  readonly galileo: Uint8Array;
}

/** Session residuals of a satellite that suffice for an uncertainty of its own. */
const ENOUGH = 40;
/** With fewer satellites residuals are too small: the displacement follows the errors. */
const FEW = 7;
/** Rounds in which uncertainties and residuals settle. */
const ROUNDS = 3;
/** A residual that shows less of its error than this says little about it. */
const LEAST_REDUNDANCY = 0.1;
/** No phase is better than 0.8 mm. */
const FLOOR = 0.0008;
const KEPT = 1500;
const MOST = 128;

export function displacements(
  differences: Differences,
  observable: Float64Array,
  interval: number,
): Displacements {
  const sigmas = new Float64Array(2 * GALILEO);
  for (let satellite = 0; satellite < sigmas.length; satellite += 1)
    sigmas[satellite] = interval < 10 ? 0.003 : isGalileo(satellite) ? 0.005 : 0.012;
  const stride = Math.max(1, Math.ceil(differences.starts.length / KEPT));
  for (let round = 0; round < ROUNDS; round += 1) {
    const residuals = new Map<number, number[]>();
    pass(differences, observable, sigmas, stride, residuals);
    for (const [satellite, list] of residuals)
      if (list.length >= ENOUGH) sigmas[satellite] = Math.max(FLOOR, 1.4826 * median(list.map(Math.abs)));
  }
  return pass(differences, observable, sigmas, 1, null);
}

const design = new Float64Array(4 * MOST);
const observed = new Float64Array(MOST);
const rowSigmas = new Float64Array(MOST);
const factors = new Float64Array(MOST);
const members = new Uint8Array(MOST);
const fit = fitOf(4, MOST);

function pass(
  differences: Differences,
  observable: Float64Array,
  sigmas: Float64Array,
  stride: number,
  residuals: Map<number, number[]> | null,
): Displacements {
  const pairs = Math.max(0, differences.starts.length - 1);
  const result: Displacements = {
    moved: new Float64Array(3 * pairs).fill(Number.NaN),
    covariance: new Float64Array(6 * pairs).fill(Number.NaN),
    satellites: new Uint8Array(pairs),
    rejected: new Uint8Array(pairs),
    galileo: new Uint8Array(pairs),
  };
  for (let pair = 0; pair < pairs; pair += stride) {
    const count = gather(differences, observable, sigmas, pair);
    if (count < 5 || !robustFit(fit, count, design, observed, rowSigmas, 4, 5)) continue;
    store(result, pair, count);
    if (residuals && fit.count >= FEW) {
      for (let row = 0; row < count; row += 1) {
        const satellite = members[row] ?? 0;
        const list = residuals.get(satellite);
        const redundancy = redundancyOf(fit, row, design, rowSigmas[row] ?? 1);
        if (redundancy < LEAST_REDUNDANCY) continue;
        const normal = (fit.residuals[row] ?? 0) / ((factors[row] ?? 1) * Math.sqrt(redundancy));
        if (list) list.push(normal);
        else residuals.set(satellite, [normal]);
      }
    }
  }
  return result;
}

function gather(differences: Differences, observable: Float64Array, sigmas: Float64Array, pair: number) {
  const { starts, satellites, east, north, up } = differences;
  let count = 0;
  for (let row = starts[pair] ?? 0; row < (starts[pair + 1] ?? 0) && count < MOST; row += 1) {
    const value = observable[row] ?? Number.NaN;
    if (Number.isNaN(value)) continue;
    const satellite = satellites[row] ?? 0;
    const sine = up[row] ?? 1;
    const factor = Math.sqrt(0.5 * (1 + 1 / (sine * sine)));
    design[4 * count] = -(east[row] ?? 0);
    design[4 * count + 1] = -(north[row] ?? 0);
    design[4 * count + 2] = -sine;
    design[4 * count + 3] = 1;
    observed[count] = value;
    factors[count] = factor;
    rowSigmas[count] = factor * (sigmas[satellite] ?? 1);
    members[count] = satellite;
    count += 1;
  }
  return count;
}

function store(result: Displacements, pair: number, count: number) {
  const { solution, inverse, used } = fit;
  let galileo = 0;
  for (let row = 0; row < count; row += 1) if (used[row] === 1 && isGalileo(members[row] ?? 0)) galileo += 1;
  for (let i = 0; i < 3; i += 1) {
    result.moved[3 * pair + i] = solution[i] ?? 0;
    result.covariance[6 * pair + i] = inverse[5 * i] ?? 0;
  }
  result.covariance[6 * pair + 3] = inverse[1] ?? 0;
  result.covariance[6 * pair + 4] = inverse[2] ?? 0;
  result.covariance[6 * pair + 5] = inverse[6] ?? 0;
  result.satellites[pair] = fit.count;
  result.rejected[pair] = fit.rejected;
  result.galileo[pair] = galileo;
}
