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
 * The published transformation that joins the two datums, the most accurate if there are several; else the shortest chain,
 * of two or three, through other datums realised by GNSS. Where one of the two is not so realised, the transformation
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

/**
 * One step if there is one; else the fewest, and of those the most accurate. WGS 84 is left aside where there is another
 * way: it is known to two metres only, and what passes through it must mean the same WGS 84 on both sides.
 */
function best(from: string, to: string, wishes: RouteWishes): Steps | undefined {
  if (from === to) return [];
  const direct = stepsFrom(from, wishes).find((step) => farEnd(step) === to);
  if (direct) return [direct];
  const chains = chainsBetween(from, to, wishes);
  const aside = chains.filter((steps) => !steps.slice(0, -1).some((step) => farEnd(step) === ENSEMBLE));
  return (aside.length > 0 ? aside : chains).sort(byRank)[0];
}

const ENSEMBLE = 'WGS 84';

/** Chains of two steps through a datum realised by GNSS, or where there are none, of three. */
function chainsBetween(from: string, to: string, wishes: RouteWishes): Steps[] {
  const onward = (steps: Steps): Steps[] => {
    const last = steps[steps.length - 1];
    if (!last || datumNamed(farEnd(last))?.realisation !== 'gnss') return [];
    return stepsFrom(farEnd(last), wishes)
      .filter((step) => farEnd(step) !== from && joinable(last, step))
      .map((step) => [...steps, step]);
  };
  const arrived = (steps: Steps) => steps.some((step, index) => index > 0 && farEnd(step) === to);
  const two = stepsFrom(from, wishes).flatMap((step) => onward([step]));
  const reached = two.filter(arrived);
  return reached.length > 0 ? reached : two.flatMap(onward).filter(arrived);
}

/**
 * Some datums are published as being the same as WGS 84 to a metre or so, others with their distance from it: the two
 * speak of different WGS 84s, a metre or two apart, and so does a frame that moves with the years.
 */
function joinable(one: DirectedTransformation, two: DirectedTransformation): boolean {
  if (farEnd(one) !== ENSEMBLE) return true;
  return isNull(one) === isNull(two) && !isMember(one) && !isMember(two);
}

const isNull = ({ transformation: { parameters } }: DirectedTransformation) =>
  [parameters.translation, parameters.rotation].every(({ x, y, z }) => x === 0 && y === 0 && z === 0) &&
  parameters.scale === 0;

/** A realisation of WGS 84, which stands for it and leads back to no other datum. */
const isMember = ({ transformation: { from, to } }: DirectedTransformation) =>
  [from, to].every((name) => name.startsWith(ENSEMBLE));

const stepsFrom = (from: string, { at, epoch }: RouteWishes): Steps =>
  transformationsOf(from, at).filter((step) => usable(step, epoch));

/** By length, then by accuracy; where that is equal too, by name in an order that is the same there and back. */
const byRank = (one: Steps, other: Steps) =>
  one.length - other.length || rounded(one) - rounded(other) || (label(one) < label(other) ? -1 : 1);

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
