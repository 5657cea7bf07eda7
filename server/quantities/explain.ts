/** The story of a value, printed as one would write it on paper: formula, numbers put in, result, uncertainty, source. */
import { contributionsOf } from './computed.ts';
import {
  decimalsOf,
  secondsFor,
  showAngle,
  showNumber,
  showSeconds,
  showSigma,
  showTurn,
  showValue,
} from './show.ts';
import type { Leaf, Value } from './value.ts';

/** Where a number stands, in words; the caller knows lines, the value only knows places. */
export type TellPlace = (leaf: Leaf) => string;

/**
 * The lines of a value's story.
 * An evaluable formula's second line holds the numbers put in, with digits enough to redo the result by hand.
 */
export function explain(value: Value, tellPlace: TellPlace): string[] {
  if (value.origin === 'given')
    return [`${value.name} = ${showValue(value)}: given as ${value.typed}, ${tellPlace(value)}`];
  if (value.origin === 'assumed') return [`${value.name} = ${showValue(value)}: assumed, ${value.because}`];
  const { formula, inputs } = value;
  const putIn = formula.evaluable ? [`  = ${substituted(formula.expression, inputs)}`] : [];
  return [
    `${value.name}: ${formula.symbol} = ${formula.expression}`,
    ...putIn,
    `  = ${fullResult(value)}`,
    ...Object.entries(inputs).map(([symbol, input]) => `  ${symbol}: ${told(input, tellPlace)}`),
    ...shares(value),
    ...unknown(value.unknown),
    `  source: ${formula.source}`,
  ];
}

/** The story of a value and of everything it was computed from, each once. */
export function explainAll(value: Value, tellPlace: TellPlace): string[] {
  const seen = new Set<Value>();
  const visit = (inner: Value): string[] => {
    if (seen.has(inner) || inner.origin !== 'computed') return [];
    seen.add(inner);
    return [...explain(inner, tellPlace), ...Object.values(inner.inputs).flatMap(visit)];
  };
  return value.origin === 'computed' ? visit(value) : explain(value, tellPlace);
}

function told(input: Value, tellPlace: TellPlace): string {
  const shown = `${input.name} = ${asPut(input)}`;
  const spread = spreadOf(input);
  const spreadFrom = input.origin === 'given' && input.spread ? ` (${input.spread})` : '';
  if (input.origin === 'given') {
    const as = isTypedInBasicUnit(input) ? '' : `given as ${input.typed}, `;
    return `${shown}${spread}${spreadFrom}, ${as}${tellPlace(input)}`;
  }
  if (input.origin === 'assumed') return `${shown}${spread}, assumed: ${input.because}`;
  return `${shown}${spread}, computed`;
}

/** As typed where it was typed in metres; an angle of position as one writes it; else with digits to compute with. */
function asPut(input: Value): string {
  const place = placeAngle(input);
  if (place) return showAngle(input.value, place, secondsFor(input.sigma));
  if (input.origin === 'given' && isTypedInBasicUnit(input)) return input.typed.replace(/^-/, '\u2212');
  return fullDigits(input);
}

const isTypedInBasicUnit = ({ typed, unit }: Leaf & { origin: 'given' }) =>
  unit === 'm' && /^[-\u2212+]?\d+(\.\d+)? m$/.test(typed);

function spreadOf(value: Value): string {
  const { sigma, unit } = value;
  if (sigma === null || sigma === 0) return '';
  return ` ± ${placeAngle(value) ? showSeconds(sigma) : showSigma(sigma, unit)}`;
}

/** Whether an angle is a latitude or a longitude, which people write in degrees, minutes and seconds with a letter. */
function placeAngle({ name, unit }: Value): 'N' | 'E' | null {
  if (unit !== '°') return null;
  return name.startsWith('latitude of ') ? 'N' : name.startsWith('longitude of ') ? 'E' : null;
}

/** Symbols are replaced as whole words, so that `s` never touches the s of `sqrt`. */
function substituted(expression: string, inputs: Readonly<Record<string, Value>>): string {
  return expression.replace(/[\p{L}\p{Nd}_]+/gu, (symbol) => {
    const input = Object.hasOwn(inputs, symbol) ? inputs[symbol] : undefined;
    if (!input) return symbol;
    const digits = fullDigits(input, false);
    return input.value < 0 ? `(${digits})` : digits;
  });
}

/** One or two digits more than the uncertainty earns, so that a result can be computed again from what is printed. */
function fullDigits(input: Value, unit = true): string {
  const text = showNumber(input.value, enough(input))
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  if (!unit || input.unit === '') return text;
  return input.unit === '°' ? `${text}°` : `${text} ${input.unit}`;
}

/** Decimals to compute with: a scale factor needs ten, another ratio seven digits, a length a hundredth of a millimetre. */
function enough({ value, unit }: Value): number {
  if (unit === '°') return 10;
  if (unit !== '') return 5;
  const size = Math.abs(value);
  if (size === 0 || Math.abs(size - 1) < 0.01) return 10;
  return Math.min(10, Math.max(0, 6 - Math.floor(Math.log10(size))));
}

/** With the digits that are earned; an angle in degrees and beside them as one writes it. */
function fullResult(value: Value): string {
  const spread = spreadOf(value);
  const place = placeAngle(value);
  const number = showNumber(value.value, decimalsOf(value));
  if (place) return `${number}° = ${showAngle(value.value, place, secondsFor(value.sigma))}${spread}`;
  if (value.unit === '°' && value.name.startsWith('convergence'))
    return `${number}° = ${showTurn(value.value)}${spread}`;
  return `${number}${value.unit === '' ? '' : value.unit === '°' ? '°' : ` ${value.unit}`}${spread}`;
}

function unknown(leaves: readonly Leaf[]): string[] {
  const names = [...new Set(leaves.map(({ name }) => name))];
  const last = names.pop();
  if (last === undefined) return [];
  const list = names.length > 0 ? `${names.join(', ')} and ${last} are` : `${last} is`;
  return [`  uncertainty not known: nobody has said how good ${list}`];
}

/** What each source adds, largest first, as a share of the variance; below one per cent it is left out. */
function shares(value: Value): string[] {
  const { sigma } = value;
  if (sigma === null || sigma === 0) return [];
  const parts = [...contributionsOf(value)]
    .map(([leaf, part]) => ({ leaf, share: (part / sigma) ** 2 }))
    .filter(({ share }) => share >= 0.01)
    .sort((one, other) => other.share - one.share);
  if (parts.length === 0) return [];
  return [
    `  uncertainty from ${parts.map(({ leaf, share }) => `${leaf.name} ${Math.round(share * 100)} %`).join(', ')}`,
  ];
}
