/** What a right check may differ by: the errors of both marks, of the base's height, of centring, receivers and geoid together. */
import { toRadians } from '../../geodesy/angles.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import { latitude as asLatitude } from '../../quantities/brands.ts';
import {
  compute,
  computeAll,
  computeLinear,
  computePlain,
  computeTold,
  contributionsOf,
  covariance,
} from '../../quantities/computed.ts';
import { showLength } from '../../quantities/show.ts';
import {
  circularRadius,
  ellipseOf,
  ellipticalRadius,
  normalHalfWidth,
  type Ellipse,
} from '../../quantities/statistics.ts';
import {
  assumed,
  hole,
  isHole,
  type Hole,
  type Leaf,
  type Maybe,
  type Value,
} from '../../quantities/value.ts';
import { BUDGET_SOURCE, centringOf, errorOf, sizeOf, type Budget, type Occupation } from './budget.ts';
import type { Frame } from '../positions/frame.ts';
import type { Located } from '../positions/locate.ts';
import { standardUncertainty, type MarkValues } from '../marks/mark.ts';
import { remembered } from '../remembered.ts';
import type { SetupValues } from '../setups/setup.ts';

/** Zeros with the whole standard uncertainty of observed minus known, share by share. */
export interface RightCheck {
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  /** On the surface on which heights are compared. */
  readonly up: Maybe<Value>;
}

export interface CheckedPair {
  readonly setup: SetupValues;
  readonly base: MarkValues;
  readonly mark: MarkValues;
  readonly occupation: Occupation;
  readonly distance: Value;
  /** The surface on which heights are compared. */
  readonly surface: 'orthometric' | 'ellipsoidal';
  /** The geoid model of the rover is a coarse one. */
  readonly coarse: boolean;
  readonly name: string;
}

export function rightCheck(pair: CheckedPair): RightCheck {
  const horizontal = horizontalErrors(pair);
  const up = upError(pair);
  if (isHole(horizontal)) return { east: horizontal, north: horizontal, up };
  return { east: horizontal.east, north: horizontal.north, up };
}

/** Observed minus known, with nothing wrong: ground coordinates follow the base's mark, so its error counts as the check's own does. */
function horizontalErrors(pair: CheckedPair): Maybe<{ readonly east: Value; readonly north: Value }> {
  const { setup, base, mark, occupation, name } = pair;
  const [from, to] = [base.located, mark.located];
  if (isHole(from)) return from;
  if (isHole(to)) return to;
  const { receivers, lean } = occupation.parts;
  const centring = centringErrors(setup);
  const axes = ['east', 'north'] as const;
  const local = (axis: (typeof axes)[number], m: Value) => ({
    m,
    p: centring[axis].p,
    t: centring[axis].t,
    r: errorOf(`receivers at ${name}, ${axis}`, receivers.axis),
    l: errorOf(`lean of the rover pole at ${name}, ${axis}`, lean),
  });
  const relative = relativeTo(base, mark, 'horizontal');
  if (relative !== null) {
    const [east, north] = axes.map((axis) =>
      summed(
        `error of a right check at ${name}, ${axis}`,
        local(axis, relativeError(base, mark, axis, relative)),
      ),
    );
    return east && north ? { east, north } : hole('two results were asked for');
  }
  const silent = silentMark(base, mark, 'horizontal');
  if (silent) return silent;
  const shift = (located: Located) => {
    const φ = asLatitude(located.latitude.value);
    const { ellipsoid } = located.system.datum;
    const perDegree = {
      north: toRadians(meridianRadius(ellipsoid, φ)),
      east: toRadians(primeVerticalRadius(ellipsoid, φ)) * Math.cos(toRadians(φ)),
    };
    return (latitude: number, longitude: number) => ({
      east: (longitude - located.longitude.value) * perDegree.east,
      north: (latitude - located.latitude.value) * perDegree.north,
    });
  };
  const [moved, known] = [shift(from), shift(to)];
  const marks = computeAll(
    axes.map((axis) => ({
      name: `error of ${base.mark.name} against ${mark.mark.name}, ${axis}`,
      unit: 'm',
      formula: {
        symbol: 'm',
        expression: 'error of the base’s mark (φ_b, λ_b) minus error of the check’s mark (φ, λ)',
        evaluable: false,
        source: BUDGET_SOURCE,
      },
    })),
    { φ_b: from.latitude, λ_b: from.longitude, φ: to.latitude, λ: to.longitude },
    (v) => {
      const [base, check] = [moved(v.φ_b, v.λ_b), known(v.φ, v.λ)];
      return [base.east - check.east, base.north - check.north];
    },
  );
  const [east, north] = axes.map((axis, index) => {
    const m = marks[index];
    return m && summed(`error of a right check at ${name}, ${axis}`, local(axis, m));
  });
  return east && north ? { east, north } : hole('two results were asked for');
}

function upError(pair: CheckedPair): Maybe<Value> {
  const { base, mark, occupation, surface, name } = pair;
  const { receivers, antennaHeight } = occupation.parts;
  const H_ARP = antennaHeight ?? assumed('antenna height', 0, 'm', 0.001, 'no antenna height is known');
  const local = {
    a: compute(
      `error of the antenna height at ${pair.setup.setup.name}`,
      'm',
      {
        symbol: 'a',
        expression: 'error of H_ARP',
        evaluable: false,
        source: 'the tape, as the story of the height says',
      },
      { H_ARP },
      (v) => v.H_ARP - H_ARP.value,
    ),
    r: errorOf(`receivers at ${name}, up`, receivers.up),
    ...(needsGeoid(pair) ? { g: geoidError(pair) } : {}),
  };
  const about = `error of a right check at ${name}, up`;
  const relative = relativeTo(base, mark, 'vertical');
  if (relative !== null) return summed(about, { m: relativeError(base, mark, 'up', relative), ...local });
  const silent = silentMark(base, mark, 'vertical');
  if (silent) return silent;
  const field = surface === 'orthometric' ? 'orthometricHeight' : 'ellipsoidalHeight';
  const [from, to] = [base[field], mark[field]];
  if (isHole(from)) return from;
  if (isHole(to)) return to;
  const m = compute(
    `error of ${base.mark.name} against ${mark.mark.name}, up`,
    'm',
    {
      symbol: 'm',
      expression: 'error of the base’s height (h_b) minus error of the check’s height (h)',
      evaluable: false,
      source: BUDGET_SOURCE,
    },
    { h_b: from, h: to },
    (v) => v.h_b - from.value - (v.h - to.value),
  );
  return summed(about, { m, ...local });
}

/** What the plummet and the bubble of a base do is the same for every check from it. */
const centringErrors = remembered((setup: SetupValues) => {
  const { plummet, tilt } = centringOf(setup);
  const along = (axis: string) => ({
    p: errorOf(`plummet at ${setup.setup.name}, ${axis}`, plummet),
    t: errorOf(`tilt of the tribrach at ${setup.setup.name}, ${axis}`, tilt),
  });
  return { east: along('east'), north: along('north') };
});

function summed(name: string, parts: Readonly<Record<string, Value>>): Value {
  const formula = {
    symbol: 'ε',
    expression: Object.keys(parts).join(' + '),
    // Every part is zero: what is put in says nothing, what each is good to says all.
    evaluable: false,
    source: BUDGET_SOURCE,
  };
  const terms: Parameters<typeof computeLinear>[3][number][] = [];
  for (const symbol in parts) terms.push({ symbol, value: parts[symbol] as Value, coefficient: 1 });
  return computeLinear(name, 'm', formula, terms);
}

/** Of marks of one source, what is said of them relative to one another; the larger of the two. */
function relativeTo(base: MarkValues, mark: MarkValues, direction: 'horizontal' | 'vertical'): number | null {
  const one = base.mark;
  const other = mark.mark;
  if (one === other || one.source === null || one.source.text !== other.source?.text) return null;
  const stated = [one, other]
    .map(({ relative }) => standardUncertainty(relative, direction))
    .filter((size) => size !== null);
  return stated.length === 0 ? null : Math.max(...stated);
}

const relativeError = (base: MarkValues, mark: MarkValues, axis: string, size: number): Value =>
  assumed(
    `${base.mark.name} against ${mark.mark.name}, ${axis}`,
    0,
    'm',
    size,
    `${showLength(size)} as stated of marks of one source, relative to one another`,
  );

/** A mark that nobody has said the uncertainty of. */
function silentMark(base: MarkValues, mark: MarkValues, direction: 'horizontal' | 'vertical'): Hole | null {
  if (base.mark === mark.mark) return null;
  const silent = [base, mark].find((values) =>
    direction === 'horizontal'
      ? [values.latitude, values.longitude].some(unknown)
      : unknown(values.ellipsoidalHeight) && unknown(values.orthometricHeight),
  );
  return silent
    ? hole(`the ${direction} uncertainty of ${silent.mark.name} is not stated`, silent.mark.place)
    : null;
}
const unknown = (value: Maybe<Value>) => isHole(value) || value.sigma === null;

/** Which share of a check's error a leaf is, by the names that they are given above and below. */
export const isReceiversShare = (leaf: string) => leaf.startsWith('receivers at ');
export const isGeoidShare = (leaf: string) => leaf.startsWith(GEOID_SHARE);
const GEOID_SHARE = 'geoid model between ';

/** Levelled heights come out of the vector by a geoid model's difference; so do ellipsoidal ones that rest on a model. */
const needsGeoid = ({ surface, base, mark }: CheckedPair) =>
  base.mark !== mark.mark &&
  (surface === 'orthometric' ||
    [base, mark].some(
      ({ mark: { height, separation } }) => height?.surface !== 'ellipsoidal' && !separation,
    ));

/** Relative accuracy of geoid models, common practice: a regional one to 1 ppm, the coarse global one to 10 ppm (2″ of slope). */
function geoidError({ base, mark, distance, coarse }: CheckedPair): Value {
  const rate = coarse ? 10 : 1;
  return assumed(
    `${GEOID_SHARE}${base.mark.name} and ${mark.mark.name}`,
    0,
    'm',
    rate * 1e-6 * distance.value,
    `${rate} ppm of the distance for ${coarse ? 'the coarse global' : 'a regional'} model (common practice)`,
  );
}

export interface ExpectedValues extends Budget {
  /** Semi-axes and bearing at the job's confidence; null where all directions are alike, or nothing is known. */
  readonly ellipse: {
    readonly semiMajor: Value;
    readonly semiMinor: Value;
    /** Of the semi-major axis, from north over east, below 180°. */
    readonly bearing: Value;
  } | null;
  /** Standard uncertainties of a right check, in metres; null where nobody can say. */
  readonly spread: { readonly horizontal: Ellipse | null; readonly up: number | null };
}

/** The radius and the half-width that a right check stays within at the job's confidence. */
export function expectedWithin(errors: RightCheck, frame: Frame, name: string): ExpectedValues {
  const confidence = frame.confidence;
  const up = isHole(errors.up) ? errors.up : halfWidth(errors.up, confidence, name);
  const { east, north } = errors;
  const spreadUp = isHole(errors.up) ? null : errors.up.sigma;
  const unknown = { horizontal: null, up: spreadUp };
  if (isHole(east)) return { horizontal: east, up, ellipse: null, spread: unknown };
  if (isHole(north)) return { horizontal: north, up, ellipse: null, spread: unknown };
  const found = ellipseOf(east.sigma ?? NaN, north.sigma ?? NaN, covariance(east, north) ?? NaN);
  const circular = found.semiMinor > found.semiMajor * ALIKE;
  return {
    horizontal: circular
      ? circle(east, confidence, name)
      : ellipticalCircle(east, north, found, confidence, name),
    up,
    ellipse: circular ? null : ellipseAt(east, north, found, confidence, name),
    spread: { horizontal: found, up: spreadUp },
  };
}

/** Axes that differ by less than this are one to a surveyor: a hundredth of a millimetre in a centimetre. */
const ALIKE = 0.999;

function circle(east: Value, confidence: Value, name: string): Value {
  const k = factor(
    circularRadius(confidence.value),
    confidence,
    'radius of a circular normal distribution, √(−2 ln(1 − P))',
  );
  const u = table(east, `standard uncertainty of the residual of ${name}, each horizontal axis`);
  return computePlain(
    `what ${name} stays within, horizontally`,
    'm',
    { symbol: 'U', expression: 'k · u', evaluable: true, source: BUDGET_SOURCE },
    { k, u },
    k.value * u.value,
  );
}

function halfWidth(up: Value, confidence: Value, name: string): Value {
  const k = factor(normalHalfWidth(confidence.value), confidence, 'half-width of a normal distribution');
  const u = table(up, `standard uncertainty of the residual of ${name}, up`);
  return computePlain(
    `what ${name} stays within, up`,
    'm',
    { symbol: 'U', expression: 'k · u', evaluable: true, source: BUDGET_SOURCE },
    { k, u },
    k.value * u.value,
  );
}

function ellipticalCircle(
  east: Value,
  north: Value,
  { semiMajor, semiMinor }: Ellipse,
  P: Value,
  name: string,
): Value {
  return computePlain(
    `what ${name} stays within, horizontally`,
    'm',
    {
      symbol: 'U',
      expression:
        'radius that holds the share P of a normal distribution with these standard uncertainties (u_e, u_n)',
      evaluable: false,
      source: `${BUDGET_SOURCE}; the integral over the circle, by the trapezoidal rule in polar coordinates`,
    },
    {
      P,
      u_e: table(east, `standard uncertainty of the residual of ${name}, east`),
      u_n: table(north, `standard uncertainty of the residual of ${name}, north`),
    },
    ellipticalRadius(semiMajor, semiMinor, P.value),
  );
}

function ellipseAt(east: Value, north: Value, found: Ellipse, P: Value, name: string) {
  const k = circularRadius(P.value);
  const inputs = { P, ε_e: east, ε_n: north };
  const result = (what: string, symbol: string, unit: 'm' | '°', expression: string, value: number) =>
    computePlain(
      `${what} of the error ellipse of ${name}`,
      unit,
      {
        symbol,
        expression,
        evaluable: false,
        ...(unit === '°' ? { decimals: 0 } : {}),
        source: 'principal axes of the covariance matrix, times √(−2 ln(1 − P))',
      },
      inputs,
      value,
    );
  return {
    semiMajor: result(
      'semi-major axis',
      'a',
      'm',
      'k · √ of the larger principal variance of (ε_e, ε_n)',
      k * found.semiMajor,
    ),
    semiMinor: result(
      'semi-minor axis',
      'b',
      'm',
      'k · √ of the smaller principal variance of (ε_e, ε_n)',
      k * found.semiMinor,
    ),
    bearing: result(
      'bearing of the semi-major axis',
      't',
      '°',
      'direction of the larger principal variance of (ε_e, ε_n)',
      found.bearing,
    ),
  };
}

const factor = (value: number, confidence: Value, because: string): Value =>
  assumed(`factor at ${Math.round(confidence.value * 1000) / 10} %`, value, '', 0, because);

/** A standard uncertainty as the root of the squares of what it is made of, largest first; what is below a hundredth of it is taken together. */
function table(error: Value, name: string): Value {
  const u = error.sigma ?? NaN;
  return computeTold(name, 'm', u, () => {
    const inputs = sharesOf(error, u);
    const squares = Object.keys(inputs).map((symbol) => `${symbol}²`);
    const expression = `√(${squares.join(' + ')})`;
    return { formula: { symbol: 'u', expression, evaluable: true, source: BUDGET_SOURCE }, inputs };
  });
}

function sharesOf(error: Value, u: number): Readonly<Record<string, Value>> {
  const parts = [...contributionsOf(error)]
    .map(([leaf, part]) => ({ leaf, size: Math.abs(part) }))
    .sort((one, other) => other.size - one.size);
  const large = parts.filter(({ size }) => size >= 0.01 * u);
  const rest = Math.hypot(...parts.filter(({ size }) => size < 0.01 * u).map(({ size }) => size));
  const rows = large.map(({ leaf, size }) => sizeOf(leaf) ?? shareOf(leaf, size));
  if (rest > 1e-6 * u)
    rows.push(assumed(REST_OF_SHARES, rest, 'm', 0, 'each below a hundredth of the whole'));
  return Object.fromEntries(rows.map((row, index) => [`u${index + 1}`, row]));
}

export const REST_OF_SHARES = 'all the rest';

const shareOf = (leaf: Leaf, size: number): Value =>
  assumed(
    leaf.name,
    size,
    'm',
    0,
    leaf.origin === 'assumed' ? leaf.because : (leaf.spread ?? 'typed beside the value'),
  );
