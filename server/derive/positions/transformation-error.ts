/** The error of a transformation as one number that everything carried by it shares, and how much of a result it makes up. */
import { contributionsOf } from '../../quantities/computed.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { assumed, isHole, type Leaf, type Maybe, type Value } from '../../quantities/value.ts';

/** Within a site one transformation is wrong by the same everywhere, so that its error cancels between two marks. */
export function transformationError(name: string, size: number, because: string): Value {
  const known = shared.get(name);
  if (known?.sigma === size) return known;
  const error = assumed(name, 0, 'm', size, because);
  shared.set(name, error);
  errors.add(error);
  return error;
}
const shared = new Map<string, Value>();
const errors = new WeakSet<Leaf>();

/** What is known of a place no better than the transformation that it came by, in metres; 0 where it came by none. */
export interface TransformationSpread {
  /** Standard uncertainty of each horizontal axis. */
  readonly axis: number;
  readonly up: number;
}

export const NO_TRANSFORMATION: TransformationSpread = { axis: 0, up: 0 };

/** Of three differences in metres: east, north and up. */
export function transformationSpread(
  differences: Readonly<Record<'east' | 'north' | 'up', Maybe<Value>>>,
): TransformationSpread {
  const { east, north, up } = differences;
  return { axis: Math.max(partOf(east), partOf(north)), up: partOf(up) };
}

function partOf(value: Maybe<Value>): number {
  if (isHole(value)) return 0;
  let squares = 0;
  for (const [leaf, part] of contributionsOf(value)) if (errors.has(leaf)) squares += part * part;
  const size = Math.sqrt(squares);
  // What two values share cancels but for the rounding of its derivatives.
  return size < NEGLIGIBLE ? 0 : size;
}
/** Metres. */
const NEGLIGIBLE = 1e-4;

/** The radius and the half-width within which a difference may come of the transformation alone, at a confidence. */
export interface TransformationLimit {
  readonly horizontal: number;
  readonly up: number;
}

export const transformationLimit = (
  { axis, up }: TransformationSpread,
  confidence: number,
): TransformationLimit => ({
  horizontal: circularRadius(confidence) * axis,
  up: normalHalfWidth(confidence) * up,
});
