/** The way from one datum to another: one published transformation or a chain of them, with the accuracy that comes of it. */
import { metres, type Geocentric, type Geographic, type Metres } from '../../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import type { Datum } from '../system.ts';
import {
  farEnd,
  stepped,
  transformationOf,
  transformationsBetween,
  transformationsOf,
  type DirectedTransformation,
} from './transformation.ts';

export interface DatumRoute {
  /** None where the two datums are the same. */
  readonly steps: readonly DirectedTransformation[];
  /** The root sum of squares of the steps' published accuracies. */
  readonly accuracy: Metres;
  readonly apply: (point: Geocentric) => Geocentric | Refusal;
}

export interface RouteWishes {
  /** Where the points are: only transformations made for that area are taken. */
  readonly at?: Geographic;
  /** The epoch of the coordinates, a year with its fraction, for what depends on time. */
  readonly epoch?: number;
  /** A transformation by code or name, taken as the step that it is. */
  readonly named?: string;
}

/**
 * The most accurate way of at most three steps. Where one of the two datums is not realised by GNSS, the transformation
 * must be named: which of several a network's users apply is theirs to say.
 */
export function routeBetween(from: Datum, to: Datum, wishes: RouteWishes = {}): DatumRoute | Refusal {
  if (from.name === to.name) return routeOf([], wishes.epoch);
  if (wishes.named !== undefined) return namedRoute(from, to, wishes.named, wishes);
  const oldOne = [from, to].find(({ realisation }) => realisation !== 'gnss');
  if (oldOne) return refuse(askForName(from, to, oldOne, wishes.at));
  const steps = cheapest(from.name, to.name, wishes);
  return steps ? routeOf(steps, wishes.epoch) : refuse(noWay(from.name, to.name));
}

const MOST_STEPS = 3;

function routeOf(steps: readonly DirectedTransformation[], epoch: number | undefined): DatumRoute {
  return {
    steps,
    accuracy: metres(Math.hypot(...steps.map(({ transformation }) => transformation.accuracy))),
    apply: (point) =>
      steps.reduce<Geocentric | Refusal>(
        (reached, step) => (isRefusal(reached) ? reached : stepped(step, reached, epoch)),
        point,
      ),
  };
}

/** To the named step, through it, and on; its direction is the one that makes the shorter way. */
function namedRoute(from: Datum, to: Datum, named: string, wishes: RouteWishes): DatumRoute | Refusal {
  const transformation = transformationOf(named);
  if (isRefusal(transformation)) return transformation;
  const ways = [false, true].flatMap((reversed) => {
    const [near, far] = reversed
      ? [transformation.to, transformation.from]
      : [transformation.from, transformation.to];
    const before = cheapest(from.name, near, wishes);
    const after = cheapest(far, to.name, wishes);
    return before && after ? [[...before, { transformation, reversed }, ...after]] : [];
  });
  const [best] = ways.sort((one, other) => one.length - other.length || cost(one) - cost(other));
  return best
    ? routeOf(best, wishes.epoch)
    : refuse(`${transformation.name} does not join ${from.name} and ${to.name}.`);
}

const cost = (steps: readonly DirectedTransformation[]) =>
  Math.hypot(...steps.map((step) => step.transformation.accuracy + PER_STEP + ensemble(step)));

/** Makes fewer steps win between ways that are published as exact. */
const PER_STEP = 0.001;

/** WGS 84 without a realisation is itself only known to two metres, which counts at each end that touches it. */
const ensemble = ({ transformation: { from, to } }: DirectedTransformation) =>
  from === 'WGS 84' || to === 'WGS 84' ? 2 : 0;

interface Way {
  readonly end: string;
  readonly steps: readonly DirectedTransformation[];
}

/** By trying every way of at most three steps, which are few where only the best step between two datums counts. */
function cheapest(
  from: string,
  to: string,
  wishes: RouteWishes,
): readonly DirectedTransformation[] | undefined {
  if (from === to) return [];
  let best: readonly DirectedTransformation[] | undefined;
  const prices = new Map<string, number>([[from, 0]]);
  let edge: readonly Way[] = [{ end: from, steps: [] }];
  for (let depth = 0; depth < MOST_STEPS; depth++) {
    const next: Way[] = [];
    for (const way of edge)
      for (const step of transformationsOf(way.end, wishes.at)) {
        const longer = { end: farEnd(step), steps: [...way.steps, step] };
        const price = cost(longer.steps);
        if (!usable(step, wishes.epoch) || price >= (prices.get(longer.end) ?? Infinity)) continue;
        prices.set(longer.end, price);
        if (longer.end === to) best = longer.steps;
        else next.push(longer);
      }
    edge = next;
  }
  return best;
}

const usable = ({ transformation: { onlyNear } }: DirectedTransformation, epoch: number | undefined) =>
  !onlyNear || (epoch !== undefined && Math.abs(epoch - onlyNear.epoch) <= onlyNear.years);

const noWay = (from: string, to: string) =>
  `No published relation between ${from} and ${to} is carried here; what one becomes in the other is unknown.`;

function askForName(from: Datum, to: Datum, oldOne: Datum, at: Geographic | undefined): string {
  const known = transformationsBetween(from.name, to.name, at).slice(0, 3);
  const through = known.length > 0 ? known : transformationsOf(oldOne.name, at).slice(0, 3);
  const names = through.map(
    ({ transformation: { code, name, accuracy } }) => `${code ?? ''} ${name} (${accuracy} m)`,
  );
  const advice = names.length === 0 ? '' : ` Published for it: ${names.join('; ')}.`;
  return `${oldOne.name} was not realised by GNSS; name the transformation between ${from.name} and ${to.name}.${advice}`;
}
