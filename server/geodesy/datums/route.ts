/** The way from one datum to another: one published transformation or a chain of them, with the accuracy that comes of it. */
import { metres, type Geocentric, type Geographic, type Metres } from '../../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { datumNamed } from '../registry/registry.ts';
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
 * The published transformation that joins the two datums, the most accurate if there are several; else the most accurate
 * chain of two or three through other datums realised by GNSS. Where one of the two is not so realised, the transformation
 * must be named: which of several a network's users apply is theirs to say.
 */
export function routeBetween(from: Datum, to: Datum, wishes: RouteWishes = {}): DatumRoute | Refusal {
  if (from.name === to.name) return routeOf([], wishes.epoch);
  if (wishes.named !== undefined) return namedRoute(from, to, wishes.named, wishes);
  const oldOne = [from, to].find(({ realisation }) => realisation !== 'gnss');
  if (oldOne) return refuse(askForName(from, to, oldOne, wishes.at));
  const steps = best(from.name, to.name, wishes);
  return steps ? routeOf(steps, wishes.epoch) : refuse(noWay(from.name, to.name));
}

type Steps = readonly DirectedTransformation[];

function routeOf(steps: Steps, epoch: number | undefined): DatumRoute {
  return {
    steps,
    accuracy: metres(accuracyOf(steps)),
    apply: (point) =>
      steps.reduce<Geocentric | Refusal>(
        (reached, step) => (isRefusal(reached) ? reached : stepped(step, reached, epoch)),
        point,
      ),
  };
}

/** Through the named step, which must begin or end at one of the two datums, and on from its other end. */
function namedRoute(from: Datum, to: Datum, named: string, wishes: RouteWishes): DatumRoute | Refusal {
  const transformation = transformationOf(named);
  if (isRefusal(transformation)) return transformation;
  const ways = [false, true].flatMap((reversed): readonly Steps[] => {
    const step = { transformation, reversed };
    const near = reversed ? transformation.to : transformation.from;
    const far = farEnd(step);
    const after = near === from.name ? best(far, to.name, wishes) : undefined;
    const before = far === to.name ? best(from.name, near, wishes) : undefined;
    return [...(after ? [[step, ...after]] : []), ...(before ? [[...before, step]] : [])];
  });
  const [first] = ways.sort(byRank);
  return first
    ? routeOf(first, wishes.epoch)
    : refuse(`${transformation.name} does not join ${from.name} and ${to.name}.`);
}

/** One step if there is one; else chains that leave WGS 84 aside, which is itself known to two metres only; else any. */
function best(from: string, to: string, wishes: RouteWishes): Steps | undefined {
  if (from === to) return [];
  const direct = transformationsBetween(from, to, wishes.at).find((step) => usable(step, wishes.epoch));
  if (direct) return [direct];
  return bestChain(from, to, wishes, ['WGS 84']) ?? bestChain(from, to, wishes, []);
}

/** Of at most three steps, by trying them all. */
function bestChain(
  from: string,
  to: string,
  wishes: RouteWishes,
  avoided: readonly string[],
): Steps | undefined {
  const passable = (name: string) => !avoided.includes(name) && datumNamed(name)?.realisation === 'gnss';
  const chains = bestSteps(from, wishes)
    .filter((one) => passable(farEnd(one)))
    .flatMap((one): readonly Steps[] =>
      bestSteps(farEnd(one), wishes).flatMap((two): readonly Steps[] => {
        if (farEnd(two) === to) return [[one, two]];
        if (farEnd(two) === from || !passable(farEnd(two))) return [];
        const three = bestSteps(farEnd(two), wishes).find((step) => farEnd(step) === to);
        return three ? [[one, two, three]] : [];
      }),
    );
  return chains.sort(byRank)[0];
}

/** The most accurate step to each neighbour of a datum. */
function bestSteps(from: string, { at, epoch }: RouteWishes): Steps {
  const byEnd = new Map<string, DirectedTransformation>();
  for (const step of transformationsOf(from, at))
    if (usable(step, epoch) && !byEnd.has(farEnd(step))) byEnd.set(farEnd(step), step);
  return [...byEnd.values()];
}

/** By accuracy; where that is equal, by length, then by name in an order that is the same there and back. */
const byRank = (one: Steps, other: Steps) =>
  rounded(one) - rounded(other) || one.length - other.length || (label(one) < label(other) ? -1 : 1);

const rounded = (steps: Steps) => Math.round(accuracyOf(steps) * 1e4);
const label = (steps: Steps) =>
  steps
    .map(({ transformation: { name } }) => name)
    .sort()
    .join();

const accuracyOf = (steps: Steps) =>
  Math.hypot(...steps.map(({ transformation }) => transformation.accuracy));

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
