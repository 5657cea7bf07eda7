/** An observed ground point against a known mark: east, north and up, and the grid differences beside them. */
import { toRadians } from '../../geodesy/angles.ts';
import { geocentricOf } from '../../geodesy/geocentric.ts';
import { topocentricBetween } from '../../geodesy/topocentric.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
} from '../../quantities/brands.ts';
import { compute, computeAll } from '../../quantities/computed.ts';
import { once } from '../../quantities/once.ts';
import {
  assumed,
  hole,
  isHole,
  partOf,
  withSpread,
  type Hole,
  type Maybe,
  type Value,
} from '../../quantities/value.ts';
import type { LocalSurface, Observed } from '../../session/entries.ts';
import { decimalYear } from '../../session/moments.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import { placedHeight, type PlacedHeight } from '../heights/heights.ts';
import { locate, toGrid, type Located } from '../positions/locate.ts';
import type { MarkValues } from '../marks/mark.ts';
import type { RightCheck } from './right-check.ts';
import { transformed } from '../positions/transform.ts';

/** Where the controller showed a ground point. */
export interface ObservedValues {
  readonly located: Maybe<Located>;
  readonly height: Maybe<PlacedHeight>;
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
}

export function observedValues(
  observed: Observed | null,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
  about: string,
): ObservedValues {
  const none = hole(`nothing was observed at ${about}`, observed?.place ?? null);
  if (!observed) return { located: none, height: none, east: none, north: none };
  const seen = observed.position
    ? locate(observed.position, frame, about, {
        sigma: 0,
        because: 'as shown; its uncertainty is that of the receivers',
      })
    : none;
  const seenHeight: Maybe<PlacedHeight> = observed.height
    ? shown(placedHeight(observed.height, surfaces, about))
    : !isHole(seen) && seen.height
      ? { value: seen.height, surface: 'ellipsoidal' }
      : hole(`no height was observed at ${about}`, observed.place);
  const located = inDatumOfJob(seen, seenHeight, observed, frame, about);
  const carried = located !== seen && !isHole(located) ? located.height : null;
  const height: Maybe<PlacedHeight> = carried ? { value: carried, surface: 'ellipsoidal' } : seenHeight;
  return new Seen(located, height, () => (isHole(located) ? located : gridOf(located, frame, about)));
}

/** Checks are compared on the ellipsoid; in the grid it is for whoever asks. */
class Seen implements ObservedValues {
  private readonly grid: () => Maybe<{ readonly east: Value; readonly north: Value }>;

  constructor(
    readonly located: Maybe<Located>,
    readonly height: Maybe<PlacedHeight>,
    grid: () => Maybe<{ readonly east: Value; readonly north: Value }>,
  ) {
    this.grid = once(grid);
  }

  get east() {
    return partOf(this.grid(), 'east');
  }

  get north() {
    return partOf(this.grid(), 'north');
  }
}

/** What was shown in another datum is brought to that of the job, at the epoch of the day; the very same place where it is in it. */
function inDatumOfJob(
  located: Maybe<Located>,
  height: Maybe<PlacedHeight>,
  { position }: Observed,
  frame: Frame,
  about: string,
): Maybe<Located> {
  const wanted = isHole(frame.grid) ? frame.geographic : frame.grid;
  if (isHole(located) || isHole(wanted)) return located;
  const date = frame.job?.date;
  const ellipsoidal =
    !isHole(height) && height.surface === 'ellipsoidal'
      ? height.value
      : hole(`no ellipsoidal height was observed at ${about}`);
  return transformed(located, ellipsoidal, wanted, {
    about,
    by: position?.by ?? null,
    epoch: date && !isHole(date) ? decimalYear(date.day) : null,
    asked: frame,
  });
}

/** Nothing is known of the place, and why. */
export const unobserved = (because: Hole): ObservedValues => ({
  located: because,
  height: because,
  east: because,
  north: because,
});

function gridOf(located: Located, frame: Frame, about: string) {
  if (isHole(frame.grid)) return frame.grid;
  if (!sameDatum(located.system.datum, frame.grid.datum))
    return hole(
      `${about} was observed in ${located.system.datum.name}, and the job is in ${frame.grid.datum.name}`,
    );
  return toGrid(located, frame.grid, about);
}

const shown = (height: Maybe<PlacedHeight>): Maybe<PlacedHeight> =>
  isHole(height) || height.value.origin !== 'given'
    ? height
    : { ...height, value: withSpread(height.value, 0, 'as shown; its uncertainty is that of the receivers') };

export interface Residual {
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  readonly up: Maybe<Value>;
  readonly horizontal: Maybe<Value>;
  readonly gridEast: Maybe<Value>;
  readonly gridNorth: Maybe<Value>;
}

/**
 * Observed minus known; an orthometric height is compared as orthometric.
 * @param errors zeros that carry the uncertainty of the whole comparison, the marks' own included
 */
export function residualOf(
  observed: ObservedValues,
  mark: MarkValues,
  errors: RightCheck,
  about: string,
): Residual {
  const { located } = observed;
  const known = mark.located;
  const up = upOf(observed.height, mark, errorIn(errors.up), about);
  const gap = isHole(known) ? known : isHole(located) ? located : null;
  if (gap || isHole(known) || isHole(located)) {
    const none = gap ?? hole('there is nothing to compare');
    return { east: none, north: none, up, horizontal: none, gridEast: none, gridNorth: none };
  }
  if (!sameDatum(known.system.datum, located.system.datum)) {
    const none = hole(
      `${about} was observed in ${located.system.datum.name}, and the mark is in ${known.system.datum.name}`,
    );
    return { east: none, north: none, up, horizontal: none, gridEast: none, gridNorth: none };
  }
  const { east, north } = horizontalOf(located, known, mark, errors, up, about);
  const horizontal = compute(
    `horizontal residual of ${about}`,
    'm',
    { symbol: 'd', expression: '√(e² + n²)', evaluable: true, source: TRADE },
    { e: east, n: north },
    (v) => Math.hypot(v.e, v.n),
  );
  return new Compared(
    east,
    north,
    up,
    horizontal,
    () => gridDifference('east', observed.east, mark.east, inGrid('east', errors, mark), about),
    () => gridDifference('north', observed.north, mark.north, inGrid('north', errors, mark), about),
  );
}

/** The differences in the grid are for whoever asks. */
class Compared implements Residual {
  private readonly inEast: () => Maybe<Value>;
  private readonly inNorth: () => Maybe<Value>;

  constructor(
    readonly east: Value,
    readonly north: Value,
    readonly up: Maybe<Value>,
    readonly horizontal: Value,
    gridEast: () => Maybe<Value>,
    gridNorth: () => Maybe<Value>,
  ) {
    this.inEast = once(gridEast);
    this.inNorth = once(gridNorth);
  }

  get gridEast() {
    return this.inEast();
  }

  get gridNorth() {
    return this.inNorth();
  }
}

/** A comparison whose error is not known still has its value. */
const errorIn = (error: Maybe<Value>): Value =>
  isHole(error) ? assumed('error of a right check', 0, 'm', null, error.hole) : error;

/** The same errors along the axes of the grid, which are turned against east and north by the convergence. */
function inGrid(axis: 'east' | 'north', errors: RightCheck, mark: MarkValues): Value {
  const [ε_e, ε_n] = [errorIn(errors.east), errorIn(errors.north)];
  const convergence = isHole(mark.convergence) ? 0 : toRadians(mark.convergence.value);
  const [c, s] = [Math.cos(convergence), Math.sin(convergence)];
  return compute(
    `error of a right check, grid ${axis}`,
    'm',
    {
      symbol: 'ε',
      expression: axis === 'east' ? 'ε_e cos γ − ε_n sin γ' : 'ε_e sin γ + ε_n cos γ',
      evaluable: false,
      source: 'rotation by the convergence',
    },
    { ε_e, ε_n },
    (v) => (axis === 'east' ? v.ε_e * c - v.ε_n * s : v.ε_e * s + v.ε_n * c),
  );
}

function upOf(height: Maybe<PlacedHeight>, mark: MarkValues, ε: Value, about: string): Maybe<Value> {
  if (isHole(height)) return height;
  const orthometric = height.surface === 'orthometric';
  const known = orthometric ? mark.orthometricHeight : mark.ellipsoidalHeight;
  if (isHole(known)) return known;
  const symbol = orthometric ? 'H' : 'h';
  const formula = { symbol: 'u', expression: `${symbol}_o − ${symbol}_k`, evaluable: true, source: TRADE };
  const name = `up residual of ${about}`;
  return orthometric
    ? compute(name, 'm', formula, { H_o: height.value, H_k: known, ε }, (v) => v.H_o - v.H_k + v.ε, ['H_k'])
    : compute(name, 'm', formula, { h_o: height.value, h_k: known, ε }, (v) => v.h_o - v.h_k + v.ε, ['h_k']);
}

/** Both points at the height of the mark and of the observation, so that the vector is the true one in space. */
function horizontalOf(
  located: Located,
  known: Located,
  mark: MarkValues,
  errors: RightCheck,
  up: Maybe<Value>,
  about: string,
): { east: Value; north: Value } {
  const level = isHole(mark.ellipsoidalHeight)
    ? isHole(mark.orthometricHeight)
      ? 0
      : mark.orthometricHeight.value
    : mark.ellipsoidalHeight.value;
  const rise = isHole(up) ? 0 : up.value;
  const { ellipsoid } = known.system.datum;
  const formula = (symbol: string) => ({
    symbol,
    expression: 'topocentric difference, observed (φ_o, λ_o) minus known (φ, λ), at the height of the mark',
    evaluable: false,
    source: 'IOGP 373-07-2, geocentric/topocentric conversion (EPSG method 9836)',
  });
  const [east, north] = computeAll(
    [
      { name: `east residual of ${about}`, unit: 'm', formula: formula('e') },
      { name: `north residual of ${about}`, unit: 'm', formula: formula('n') },
    ],
    {
      φ_o: located.latitude,
      λ_o: located.longitude,
      φ: known.latitude,
      λ: known.longitude,
      ε_e: errorIn(errors.east),
      ε_n: errorIn(errors.north),
    },
    (numbers) => {
      const at = (φ: number, λ: number, h: number) =>
        geocentricOf(ellipsoid, {
          latitude: asLatitude(φ),
          longitude: asLongitude(λ),
          height: ellipsoidalHeight(h),
        });
      const origin = { latitude: asLatitude(numbers.φ), longitude: asLongitude(numbers.λ) };
      const vector = topocentricBetween(
        origin,
        at(numbers.φ, numbers.λ, level),
        at(numbers.φ_o, numbers.λ_o, level + rise),
      );
      return [vector.east + numbers.ε_e, vector.north + numbers.ε_n];
    },
    ['φ', 'λ'],
  );
  if (!east || !north) throw new Error('two results were asked for');
  return { east, north };
}

function gridDifference(
  axis: 'east' | 'north',
  observed: Maybe<Value>,
  known: Maybe<Value>,
  ε: Value,
  about: string,
): Maybe<Value> {
  if (isHole(observed)) return observed;
  if (isHole(known)) return known;
  const symbol = axis === 'east' ? 'E' : 'N';
  const formula = {
    symbol: `Δ${symbol}`,
    expression: `${symbol}_o − ${symbol}_k`,
    evaluable: true,
    source: TRADE,
  };
  const name = `grid ${axis} residual of ${about}`;
  return axis === 'east'
    ? compute(name, 'm', formula, { E_o: observed, E_k: known, ε }, (v) => v.E_o - v.E_k + v.ε, ['E_k'])
    : compute(name, 'm', formula, { N_o: observed, N_k: known, ε }, (v) => v.N_o - v.N_k + v.ε, ['N_k']);
}

const TRADE = 'observed minus known (common practice)';
