/** Computing a value from others, with its uncertainty by the law of propagation, down to the numbers that were given or assumed. */
import { once } from './once.ts';
import { given, type Computed, type Formula, type Leaf, type Unit, type Value } from './value.ts';

type Inputs = Readonly<Record<string, Value>>;
type Numbers<In extends Inputs> = { readonly [Symbol in keyof In]: number };

/**
 * The result of a formula for these inputs.
 * Partial derivatives are taken numerically; contributions of one source that arrives by several ways are added with
 * their signs, so that what two inputs share cancels or doubles as it must (JCGM 100:2008, 5.1.2 and 5.2.2).
 */
export function compute<In extends Inputs>(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: In,
  evaluate: (numbers: Numbers<In>) => number,
): Computed {
  const [only] = computeAll([{ name, unit, formula }], inputs, (numbers) => [evaluate(numbers)]);
  if (!only) throw new Error('a formula has one result');
  return only;
}

/** Several results of one method, say the three coordinates of a point. */
export function computeAll<In extends Inputs>(
  results: readonly { readonly name: string; readonly unit: Unit; readonly formula: Formula }[],
  inputs: In,
  evaluate: (numbers: Numbers<In>) => readonly number[],
): Computed[] {
  const numbers: Record<string, number> = {};
  for (const symbol in inputs) numbers[symbol] = inputs[symbol]?.value ?? NaN;
  const values = evaluate(numbers as Numbers<In>);
  const spreads = once(() => propagated(inputs, numbers, values.length, evaluate));
  return results.map(
    ({ name, unit, formula }, index) =>
      new Result(name, values[index] ?? NaN, unit, formula, inputs, () => spreads()[index] ?? NO_SPREAD),
  );
}

/** What each input adds to each of so many results. */
function propagated<In extends Inputs>(
  inputs: In,
  numbers: Record<string, number>,
  count: number,
  evaluate: (numbers: Numbers<In>) => readonly number[],
): Spread[] {
  const found = Array.from({ length: count }, () => new Contributions());
  for (const symbol in inputs) {
    const input = inputs[symbol];
    if (!input || (input.sigma === 0 && !hasUnknown(input))) continue;
    const step = stepFor(input);
    numbers[symbol] = input.value + step;
    const above = evaluate(numbers as Numbers<In>);
    numbers[symbol] = input.value - step;
    const below = evaluate(numbers as Numbers<In>);
    numbers[symbol] = input.value;
    found.forEach((contributions, index) => {
      const partial = ((above[index] ?? NaN) - (below[index] ?? NaN)) / (2 * step);
      if (partial !== 0) contributions.add(input, partial);
    });
  }
  return found.map((contributions) => contributions.spread());
}

/**
 * A sum of inputs, each times its coefficient: the partial derivatives are the coefficients, so that thousands of
 * inputs take no longer than to add them up.
 */
export function computeLinear(
  name: string,
  unit: Unit,
  formula: Formula,
  terms: readonly { readonly symbol: string; readonly value: Value; readonly coefficient: number }[],
): Computed {
  const inputs = Object.fromEntries(terms.map(({ symbol, value }) => [symbol, value]));
  const total = terms.reduce((sum, { value, coefficient }) => sum + coefficient * value.value, 0);
  const spread = once(() => {
    const contributions = new Contributions();
    for (const { value, coefficient } of terms) contributions.add(value, coefficient);
    return contributions.spread();
  });
  return new Result(name, total, unit, formula, inputs, spread);
}

/** A result whose uncertainty has no meaning or no use: a scale factor, a convergence, a count. */
export function computePlain(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: Inputs,
  value: number,
): Computed {
  return new Result(name, value, unit, formula, inputs, () => NO_SPREAD);
}

/** The same, of which the story is long and seldom asked for. */
export const computeTold = (name: string, unit: Unit, value: number, story: () => Story): Computed =>
  new Told(name, value, unit, once(story));

interface Story {
  readonly formula: Formula;
  readonly inputs: Inputs;
}

/** The same number, taken as it is. */
export function exact(value: Value): Value {
  if (value.origin === 'computed') return copied(value, value.name, value.inputs, EXACT);
  if (value.sigma === 0) return value;
  return value.origin === 'given'
    ? given(value.name, value.value, value.unit, 0, value.typed, value.place)
    : { ...value, sigma: 0 };
}

/** The same value under another name. */
export const renamed = (value: Value, name: string): Value =>
  value.origin === 'computed' ? copied(value, name, value.inputs, value) : { ...value, name };

/** The story of a result that was computed with exact copies leads on to the numbers that they were copied from. */
export const toldFrom = (result: Computed, originals: Inputs): Computed =>
  copied(result, result.name, { ...result.inputs, ...originals }, result);

/** How good a result is, is no property of its own that a copy by `...` would take along. */
const copied = ({ value, unit, formula }: Computed, name: string, inputs: Inputs, spread: Spread): Computed =>
  new Result(name, value, unit, formula, inputs, () => spread);

/** The given and assumed numbers that a value rests on, each once, in the order of first use. */
export function leavesOf(value: Value): Leaf[] {
  const found = new Set<Leaf>();
  const seen = new Set<Value>();
  const visit = (inner: Value) => {
    if (seen.has(inner)) return;
    seen.add(inner);
    if (inner.origin === 'computed') Object.values(inner.inputs).forEach(visit);
    else found.add(inner);
  };
  visit(value);
  return [...found];
}

/** Covariance of two values, from the contributions that they share; null where an uncertainty is not known. */
export function covariance(one: Value, other: Value): number | null {
  if (one.sigma === null || other.sigma === null) return null;
  const parts = contributionsOf(other);
  let sum = 0;
  for (const [leaf, part] of contributionsOf(one)) sum += part * (parts.get(leaf) ?? 0);
  return sum;
}

export function contributionsOf(value: Value): ReadonlyMap<Leaf, number> {
  if (value.origin === 'computed') return value.contributions;
  return value.sigma === null ? new Map() : new Map([[value, value.sigma]]);
}

const hasUnknown = (value: Value) =>
  value.origin === 'computed' ? value.unknown.length > 0 : value.sigma === null;

/** Small against the uncertainty, so that no curve matters, yet large enough for the digits of a coordinate of ten million metres. */
function stepFor(input: Value): number {
  if (input.unit === '°') return 1e-5;
  const usual = input.unit === 'm' ? 0.1 : 1e-4;
  const spread = input.sigma === null ? usual : input.sigma / 10;
  return Math.max(Math.min(usual, spread), Math.abs(input.value) * 1e-7, usual * 1e-5);
}

/** How good a result is, and what makes it so. */
interface Spread {
  readonly sigma: number | null;
  readonly contributions: ReadonlyMap<Leaf, number>;
  readonly unknown: readonly Leaf[];
}
const NO_SPREAD: Spread = { sigma: null, contributions: new Map(), unknown: [] };
const EXACT: Spread = { ...NO_SPREAD, sigma: 0 };

/** How good it is, is found when somebody asks: that takes many evaluations of the formula, and of most results nobody does. */
class Result implements Computed {
  readonly origin = 'computed';
  readonly #spread: () => Spread;

  constructor(
    readonly name: string,
    readonly value: number,
    readonly unit: Unit,
    readonly formula: Formula,
    readonly inputs: Inputs,
    spread: () => Spread,
  ) {
    this.#spread = spread;
  }

  get sigma() {
    return this.#spread().sigma;
  }

  get contributions() {
    return this.#spread().contributions;
  }

  get unknown() {
    return this.#spread().unknown;
  }
}

class Told implements Computed {
  readonly origin = 'computed';
  readonly sigma = null;
  readonly contributions = NO_SPREAD.contributions;
  readonly unknown = NO_SPREAD.unknown;
  readonly #story: () => Story;

  constructor(
    readonly name: string,
    readonly value: number,
    readonly unit: Unit,
    story: () => Story,
  ) {
    this.#story = story;
  }

  get formula() {
    return this.#story().formula;
  }

  get inputs() {
    return this.#story().inputs;
  }
}

class Contributions {
  private readonly parts = new Map<Leaf, number>();
  private readonly unknown = new Set<Leaf>();

  add(input: Value, partial: number): void {
    const leaves = input.origin === 'computed' ? input.unknown : input.sigma === null ? [input] : [];
    for (const leaf of leaves) this.unknown.add(leaf);
    for (const [leaf, part] of contributionsOf(input))
      this.parts.set(leaf, (this.parts.get(leaf) ?? 0) + partial * part);
  }

  spread(): Spread {
    const sigma = this.unknown.size > 0 ? null : rootSumOfSquares(this.parts.values());
    return { sigma, contributions: this.parts, unknown: [...this.unknown] };
  }
}

function rootSumOfSquares(parts: Iterable<number>): number {
  let sum = 0;
  for (const part of parts) sum += part * part;
  return Math.sqrt(sum);
}
