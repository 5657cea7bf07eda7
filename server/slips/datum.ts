/** The coordinates are those of another datum: from an older list, or from a service that answers in its own frame. */
import { datumNamed } from '../geodesy/registry/registry.ts';
import { farEnd, stepped, transformationsOf } from '../geodesy/datums/transformation.ts';
import { geocentricOf, geodeticOf } from '../geodesy/geocentric.ts';
import type { Datum } from '../geodesy/system.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
  type Geographic,
} from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { yearOf } from './epoch.ts';
import { keyedDatum } from './told.ts';
import type { Situation } from './situation.ts';
import type { Slip, Told, Way } from './slip.ts';

export const datum: Slip = {
  name: 'datum',
  code: 'position/keyed-differs',
  prior: 0.05,
  look: 'the datum that the register states, and the one that the receiver is set to',
  ways: (situation) => {
    const { right } = situation;
    const own = keyedDatum(situation);
    if (!own || !right.place) return [];
    return otherDatums(own, placeOf(right.place)).flatMap(({ steps, name, accuracy }) =>
      waysIn(name, steps, accuracy, own, situation),
    );
  },
};

type Step = ReturnType<typeof transformationsOf>[number];
interface Other {
  readonly name: string;
  readonly steps: readonly Step[];
  readonly accuracy: number;
}

/** WGS 84 and the frames of today agree to this with one another (IOGP 373-07-2, its accuracy as an ensemble), metres. */
const AMONG_FRAMES = 2;
/** Several are published for some pairs of datums; the best ones are what lists were made with. */
const OF_ONE_PAIR = 2;

/** In one published step from the datum itself, else from WGS 84 standing for it. */
function otherDatums(own: Datum, at: Geographic): Other[] {
  const direct = transformationsOf(own.name, at).map((step) => ({
    name: farEnd(step),
    steps: [step],
    accuracy: step.transformation.accuracy,
  }));
  const through =
    own.realisation !== 'gnss' || own.name === 'WGS 84'
      ? []
      : transformationsOf('WGS 84', at).map((step) => ({
          name: farEnd(step),
          steps: [step],
          accuracy: Math.hypot(step.transformation.accuracy, AMONG_FRAMES),
        }));
  const seen = new Map<string, number>();
  return [...direct, ...through].filter(({ name }) => {
    const before = seen.get(name) ?? 0;
    seen.set(name, before + 1);
    return before < OF_ONE_PAIR && name !== own.name;
  });
}

function waysIn(
  name: string,
  steps: readonly Step[],
  accuracy: number,
  own: Datum,
  { right, session }: Situation,
): Way[] {
  const other = datumNamed(name);
  if (!other || !right.place) return [];
  const here = geocentricOf(own.ellipsoid, {
    ...placeOf(right.place),
    height: ellipsoidalHeight(right.height ?? 0),
  });
  const epoch = yearOf(session) ?? undefined;
  const there = steps.reduce<ReturnType<typeof stepped>>(
    (point, step) => (isRefusal(point) ? point : stepped(step, point, epoch)),
    here,
  );
  if (isRefusal(there)) return [];
  const told = geodeticOf(other.ellipsoid, there);
  const spread = { horizontal: accuracy / Math.SQRT2, up: accuracy / Math.SQRT2 };
  const place = { latitude: told.latitude, longitude: told.longitude };
  const way = (says: string, numbers: Told): Way => ({ says, effect: { on: 'told', told: numbers } });
  return [
    way(`the position was keyed in ${name}`, { place, spread: { ...spread, up: 0 } }),
    ...(right.height === null
      ? []
      : [way(`position and height were keyed in ${name}`, { place, height: told.height, spread })]),
  ];
}

const placeOf = ({ latitude, longitude }: { latitude: number; longitude: number }): Geographic => ({
  latitude: asLatitude(latitude),
  longitude: asLongitude(longitude),
});
