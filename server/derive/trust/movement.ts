/** How far the rover's coordinates moved from one check to a later one, what chance allows, and what would have been seen. */
import { geodesicBetween } from '../../geodesy/geodesic.ts';
import { geocentricOf } from '../../geodesy/geocentric.ts';
import { topocentricBetween } from '../../geodesy/topocentric.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
  type Geographic,
} from '../../quantities/brands.ts';
import { compute, computeAll, computePlain, exact } from '../../quantities/computed.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { occupationSpread, type Occupation } from '../checks/budget.ts';
import type { CheckValues } from '../checks/check.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import type { Located } from '../positions/locate.ts';
import { standardUncertainty, type MarkValues } from '../marks/mark.ts';
import { remembered } from '../remembered.ts';
import { smallestHorizontal, smallestUp } from './power.ts';

export interface Movement {
  readonly from: CheckValues;
  readonly to: CheckValues;
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  readonly up: Maybe<Value>;
  readonly horizontal: Maybe<Value>;
  /** What chance alone stays within at the job's confidence: a radius, and a half-width up. */
  readonly budget: { readonly horizontal: Maybe<Value>; readonly up: Maybe<Value> };
  /** The smallest movement between the two that this comparison would have seen. */
  readonly smallest: { readonly horizontal: Maybe<Value>; readonly up: Maybe<Value> };
  readonly verdict: 'agrees' | 'moved' | 'undecided';
}

/** Probability with which a movement of the smallest size is seen. */
export const POWER = assumed(
  'power',
  0.8,
  '',
  0,
  'a movement counts as seen where it would be found in 80 % of cases',
);

/** Two checks of one base; on one mark its own uncertainty plays no part, on two marks both of theirs do. */
export const movementBetween: (from: CheckValues, to: CheckValues, frame: Frame) => Movement = remembered(
  (from, to, frame) => {
    const about = `from ${from.check.name} to ${to.check.name}`;
    const sameMark = from.mark !== null && from.mark === to.mark;
    const { east, north, up } = sameMark
      ? betweenObserved(from, to, about)
      : betweenResiduals(from, to, about);
    const horizontal =
      isHole(east) || isHole(north)
        ? isHole(east)
          ? east
          : north
        : compute(
            `horizontal movement ${about}`,
            'm',
            { symbol: 'm', expression: '√(e² + n²)', evaluable: true, source: TRADE },
            { e: east, n: north },
            (v) => Math.hypot(v.e, v.n),
          );
    const spread = {
      horizontal: spreadOf(from, to, sameMark, 'horizontal', about),
      up: spreadOf(from, to, sameMark, 'up', about),
    };
    const { value: confidence } = frame.confidence;
    const budget = {
      horizontal: times(
        spread.horizontal,
        circularRadius(confidence),
        `what chance allows ${about}, horizontally`,
        'radius',
      ),
      up: times(spread.up, normalHalfWidth(confidence), `what chance allows ${about}, up`, 'half-width'),
    };
    const smallest = {
      horizontal: times(
        spread.horizontal,
        smallestHorizontal(confidence, POWER.value),
        `smallest horizontal movement that ${from.check.name} and ${to.check.name} would have seen`,
        'seen',
      ),
      up: times(
        spread.up,
        smallestUp(confidence, POWER.value),
        `smallest vertical movement that ${from.check.name} and ${to.check.name} would have seen`,
        'seen',
      ),
    };
    return {
      from,
      to,
      east,
      north,
      up,
      horizontal,
      budget,
      smallest,
      verdict: verdictOf(horizontal, up, budget),
    };
  },
);

const verdictOf = (
  horizontal: Maybe<Value>,
  up: Maybe<Value>,
  budget: Movement['budget'],
): Movement['verdict'] =>
  verdictOn([
    [horizontal, budget.horizontal],
    [up, budget.up],
  ]);

function verdictOn(
  compared: readonly (readonly [size: Maybe<Value>, limit: Maybe<Value>])[],
): Movement['verdict'] {
  const judged = compared.map(([size, limit]) =>
    isHole(size) || isHole(limit) ? null : Math.abs(size.value) <= limit.value,
  );
  if (judged.includes(false)) return 'moved';
  return judged.every((within) => within === true) ? 'agrees' : 'undecided';
}

/** The verdict on one component alone, or on the whole. */
export const verdictIn = (movement: Movement, of: 'horizontal' | 'up' | 'whole'): Movement['verdict'] =>
  of === 'whole' ? movement.verdict : verdictOn([[movement[of], movement.budget[of]]]);

interface Differences {
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  readonly up: Maybe<Value>;
}

/** On one mark the two observations are compared with one another, so that a nail without coordinates will do. */
function betweenObserved(from: CheckValues, to: CheckValues, about: string): Differences {
  const up = heightDifference(from, to, about);
  const [one, other] = [from.observed.located, to.observed.located];
  if (isHole(one)) return { east: one, north: one, up };
  if (isHole(other)) return { east: other, north: other, up };
  if (!sameDatum(one.system.datum, other.system.datum)) {
    const none = hole(`${from.check.name} and ${to.check.name} were observed in different datums`);
    return { east: none, north: none, up };
  }
  const { ellipsoid } = one.system.datum;
  const formula = (symbol: string) => ({
    symbol,
    expression: 'topocentric difference, later (φ2, λ2) minus earlier (φ1, λ1)',
    evaluable: false,
    source: 'IOGP 373-07-2, geocentric/topocentric conversion (EPSG method 9836)',
  });
  const [east, north] = computeAll(
    [
      { name: `movement ${about}, east`, unit: 'm', formula: formula('e') },
      { name: `movement ${about}, north`, unit: 'm', formula: formula('n') },
    ],
    { φ1: one.latitude, λ1: one.longitude, φ2: other.latitude, λ2: other.longitude },
    (v) => {
      const at = (φ: number, λ: number) =>
        geocentricOf(ellipsoid, { ...place(φ, λ), height: ellipsoidalHeight(0) });
      const vector = topocentricBetween(place(v.φ1, v.λ1), at(v.φ1, v.λ1), at(v.φ2, v.λ2));
      return [vector.east, vector.north];
    },
  );
  const none = hole('the comparison gave nothing');
  return { east: east ?? none, north: north ?? none, up };
}

function heightDifference(from: CheckValues, to: CheckValues, about: string): Maybe<Value> {
  const [one, other] = [from.observed.height, to.observed.height];
  if (isHole(one)) return one;
  if (isHole(other)) return other;
  if (one.surface !== other.surface)
    return hole(`${from.check.name} and ${to.check.name} show heights on different surfaces`);
  return difference(one.value, other.value, `movement ${about}, up`, 'H');
}

function betweenResiduals(from: CheckValues, to: CheckValues, about: string): Differences {
  const between = (axis: 'east' | 'north' | 'up') => {
    const [one, other] = [from.residual[axis], to.residual[axis]];
    if (isHole(one)) return one;
    if (isHole(other)) return other;
    return difference(one, other, `movement ${about}, ${axis}`, axis[0] ?? 'r');
  };
  return { east: between('east'), north: between('north'), up: between('up') };
}

const difference = (one: Value, other: Value, name: string, symbol: string): Value =>
  compute(
    name,
    'm',
    { symbol: `Δ${symbol}`, expression: `${symbol}2 − ${symbol}1`, evaluable: true, source: TRADE },
    { [`${symbol}1`]: one, [`${symbol}2`]: other },
    (numbers) => (numbers[`${symbol}2`] ?? NaN) - (numbers[`${symbol}1`] ?? NaN),
  );

/** Standard uncertainty of the difference: of each horizontal axis, or up. */
function spreadOf(
  from: CheckValues,
  to: CheckValues,
  sameMark: boolean,
  direction: 'horizontal' | 'up',
  about: string,
): Maybe<Value> {
  const [one, other] = [occupationOf(from), occupationOf(to)];
  if (isHole(one)) return one;
  if (isHole(other)) return other;
  const marks = sameMark ? null : marksSpread(from.mark, to.mark, direction);
  if (marks && isHole(marks)) return marks;
  const parts = ownParts(one, other, stoodThrough(from, to), direction);
  const inputs: Readonly<Record<string, Value>> = { ...parts, ...(marks ? { u_m: marks } : {}) };
  return computePlain(
    `standard uncertainty of the movement ${about}, ${direction === 'horizontal' ? 'each horizontal axis' : 'up'}`,
    'm',
    {
      symbol: 'u',
      expression: `√(${Object.keys(inputs)
        .map((symbol) => `${symbol}²`)
        .join(' + ')})`,
      evaluable: true,
      source: 'law of propagation of uncertainty (JCGM 100:2008, 5.1.2)',
    },
    inputs,
    Math.hypot(...Object.values(inputs).map(({ value }) => value)),
  );
}

/** What the base's plummet, bubble and tape did to one check they did to the other, as long as nothing was keyed anew between. */
const stoodThrough = (from: CheckValues, to: CheckValues): boolean =>
  from.setup !== null && from.setup === to.setup && from.broadcast === to.broadcast;

function ownParts(
  one: Occupation,
  other: Occupation,
  stood: boolean,
  direction: 'horizontal' | 'up',
): Readonly<Record<string, Value>> {
  const axis = direction === 'horizontal' ? 'axis' : 'up';
  if (!stood) return { u_1: exact(one[axis]), u_2: exact(other[axis]) };
  const receivers = {
    u_r1: exact(one.parts.receivers[axis]),
    u_r2: exact(other.parts.receivers[axis]),
  };
  return direction === 'up'
    ? receivers
    : { ...receivers, u_l1: exact(one.parts.lean), u_l2: exact(other.parts.lean) };
}

/** Of a check on a mark without coordinates too: the distance is then taken to where the mark was observed. */
function occupationOf(values: CheckValues): Maybe<Occupation> {
  const { occupation, setup, check, rover, observed } = values;
  if (occupation) return occupation;
  if (!setup?.mark) return hole(`which base ${check.name} belongs to is not known`, check.place);
  const base = setup.mark.located;
  if (isHole(base)) return base;
  if (isHole(observed.located)) return observed.located;
  if (!sameDatum(base.system.datum, observed.located.system.datum))
    return hole(`${check.name} was observed in another datum than that of the base`, check.place);
  return occupationSpread(setup, check, rover, distanceBetween(base, observed.located, check.name));
}

function distanceBetween(base: Located, there: Located, name: string): Value {
  const { ellipsoid } = base.system.datum;
  const [from, to] = [base, there].map((located) => place(located.latitude.value, located.longitude.value));
  const length = from && to ? geodesicBetween(ellipsoid, from, to).distance : NaN;
  return computePlain(
    `ellipsoidal distance from the base to ${name}`,
    'm',
    {
      symbol: 'D',
      expression: `geodesic on ${ellipsoid.name} (φ1, λ1) to (φ2, λ2)`,
      evaluable: false,
      source: 'Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43–55',
    },
    { φ1: base.latitude, λ1: base.longitude, φ2: there.latitude, λ2: there.longitude },
    length,
  );
}

/** The base's mark moves both residuals alike and plays no part. */
function marksSpread(
  one: MarkValues | null,
  other: MarkValues | null,
  direction: 'horizontal' | 'up',
): Maybe<Value> {
  if (!one || !other) return hole('the checks were not made on known marks');
  const way = direction === 'horizontal' ? 'horizontal' : 'vertical';
  const name = `marks ${one.mark.name} and ${other.mark.name}`;
  const sameSource = one.mark.source !== null && one.mark.source.text === other.mark.source?.text;
  const relative = sameSource
    ? [one, other].map(({ mark }) => standardUncertainty(mark.relative, way)).filter((size) => size !== null)
    : [];
  if (relative.length > 0)
    return assumed(name, Math.max(...relative), 'm', 0, 'stated as relative, both being of one source');
  const [first, second] =
    direction === 'horizontal'
      ? [one.sigmaHorizontal, other.sigmaHorizontal]
      : [one.sigmaVertical, other.sigmaVertical];
  if (first === null || second === null) {
    const silent = first === null ? one.mark : other.mark;
    return hole(`the ${way} uncertainty of ${silent.name} is not stated`, silent.place);
  }
  return assumed(name, Math.hypot(first, second), 'm', 0, 'as stated for the two marks');
}

const FACTORS = {
  radius: 'radius of a circular normal distribution, at the confidence of the job',
  'half-width': 'half-width of a normal distribution, at the confidence of the job',
  seen: 'what a test at the confidence of the job finds in 80 % of cases (Baarda 1968)',
};

function times(spread: Maybe<Value>, factor: number, name: string, kind: keyof typeof FACTORS): Maybe<Value> {
  if (isHole(spread)) return spread;
  const k = assumed('factor', factor, '', 0, FACTORS[kind]);
  return computePlain(
    name,
    'm',
    { symbol: 'U', expression: 'k · u', evaluable: true, source: FACTORS[kind] },
    { k, u: spread },
    factor * spread.value,
  );
}

const place = (φ: number, λ: number): Geographic => ({ latitude: asLatitude(φ), longitude: asLongitude(λ) });

const TRADE = 'later minus earlier (common practice)';
