/** Sums as typed: quantities added and subtracted, each keeping its own uncertainty. */
import { keptWith } from '../../grammar/kept-with.ts';
import { computeLinear } from './computed.ts';
import type { Computed, Unit, Value } from './value.ts';

export interface SumTerm {
  readonly sign: 1 | -1;
  readonly value: Value;
}

/** `t1 + t2 − t3`. */
export function sumOf(name: string, unit: Unit, terms: readonly SumTerm[]): Computed {
  const named = terms.map(({ sign, value }, index) => ({
    symbol: `t${index + 1}`,
    value,
    coefficient: sign,
  }));
  const expression = named
    .map(({ symbol, coefficient }, index) => `${coefficient < 0 ? '−' : index === 0 ? '' : '+'} ${symbol}`)
    .join(' ')
    .trim();
  const formula = { symbol: 'sum', expression, evaluable: true, source: 'the sum as typed' };
  const sum = computeLinear(name, unit, formula, named);
  termsOfSum.set(sum, terms);
  return sum;
}

const termsOfSum = keptWith<Value, readonly SumTerm[]>();

/** The same sum with each term made anew, say with an uncertainty that was said elsewhere; what is no sum is one term. */
export function mapTerms(value: Value, change: (term: Value, index: number) => Value): Value {
  const terms = termsOfSum.get(value);
  if (!terms) return change(value, 0);
  return sumOf(
    value.name,
    value.unit,
    terms.map(({ sign, value: term }, index) => ({ sign, value: change(term, index) })),
  );
}
