/** What was keyed or seen differs by no more than the transformation between grid and datum is good to. */
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { judgedOn, type Sizes } from '../../derive/checks/verdict.ts';
import { keyedLimit, keyedTransformation } from '../../derive/setups/keyed-transformation.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import { transformationLimit, transformationSpread } from '../../derive/positions/transformation-error.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { allOf, showLength } from '../../quantities/show.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';

/** Anything closer is what a rounded number leaves out, metres. */
const ROUNDING = 0.01;

interface Within {
  /** `The keyed position of BASE`. */
  readonly what: string;
  readonly size: number;
  readonly limit: number;
  /** What the transformation is published as good to, metres. */
  readonly accuracy: number;
}

export const positionTransformationAccuracy = kind({
  code: 'position/transformation-accuracy',
  find: (subject) => limited(subject),
  tell: ({ within, limit, accuracy }) => ({
    severity: 'information',
    headline: `Transformation too coarse to judge ${allOf(within.map(({ what, size }) => `${what} (${showLength(size)} off)`))}.`,
    effect: `Good to ${showLength(accuracy)}: up to ${showLength(limit)} may be its error. No slip is named.`,
    action: 'Check on a second mark in the grid, or name a better transformation (datum … by …).',
  }),
});

function limited({ session, derivation }: Subject): {
  place: Place;
  within: readonly Within[];
  limit: number;
  accuracy: number;
}[] {
  const { frame, setups, checks } = derivation;
  const { job } = session;
  const within = [...keyedWithin(valuesOf(setups), frame), ...checksWithin(checks, frame)];
  const [first] = within;
  if (!job || !first) return [];
  const widest = within.reduce((one, other) => (other.limit > one.limit ? other : one), first);
  const place = job.datumBy?.place ?? job.datum?.place ?? job.grid?.place ?? job.place;
  return [{ place, within, limit: widest.limit, accuracy: widest.accuracy }];
}

type Framed = Subject['derivation']['frame'];

const keyedWithin = foundInEach((setup: SetupValues, frame: Framed) =>
  setup.keyed.flatMap((keyed) => withinOf(keyed, setup, frame)),
);

function withinOf(keyed: KeyedValues, setup: SetupValues, { confidence }: Framed): Within[] {
  const [east, north] = [numberOf(keyed.east), numberOf(keyed.north)];
  const [told, right] = [numberOf(keyed.height), numberOf(setup.tell.ellipsoidalHeight)];
  const beside = east === null || north === null ? 0 : Math.hypot(east, north);
  const above = told === null || right === null ? 0 : Math.abs(told - right);
  if (beside <= ROUNDING && above <= ROUNDING) return [];
  const limit = keyedLimit(keyed, setup, confidence.value);
  const spread = keyedTransformation(keyed, setup);
  const { name } = setup.setup;
  const found = (what: string, size: number, most: number, accuracy: number): Within[] =>
    size > ROUNDING && size <= most ? [{ what, size, limit: most, accuracy }] : [];
  return [
    ...found(`the position keyed at ${name}`, beside, limit.horizontal, spread.axis),
    ...found(`the height keyed at ${name}`, above, limit.up, spread.up),
  ];
}

/** Checks that would fail, were the transformation exact. */
const checksWithin = foundInEach((check: CheckValues, frame: Framed): Within[] => {
  const { residual } = check;
  const [horizontal, up] = [numberOf(residual.horizontal), numberOf(residual.up)];
  if (check.verdict !== 'undecided' || !failsAt({ horizontal, up }, check, frame)) return [];
  const spread = transformationSpread(residual);
  const limit = transformationLimit(spread, frame.confidence.value);
  const beside = failsAt({ horizontal, up: 0 }, check, frame);
  const what = `check ${check.check.name}`;
  return beside
    ? [{ what, size: horizontal ?? 0, limit: limit.horizontal, accuracy: spread.axis }]
    : [{ what, size: Math.abs(up ?? 0), limit: limit.up, accuracy: spread.up }];
});

const failsAt = (sizes: Sizes, check: CheckValues, { confidence }: Framed): boolean =>
  Object.values(judgedOn(sizes, check, confidence.value)).includes('fails');
