/** Days judged by all of their checks: how often a clean one is called wrong, a moved one proved, and a weak check heeded. */
import { openDocument } from '../../grammar/document.ts';
import { classOf, trustOf } from '../../server/derive/trust/trust.ts';
import type { TrustClass } from '../../server/derive/trust/spans.ts';
import { inspect } from '../../server/inspect.ts';
import type { Files } from '../../server/session/files.ts';
import {
  drawScene,
  liveDay,
  pairPrecision,
  USUAL_NOISE,
  type Day,
  type DayOptions,
  type Scene,
} from '../simulation/day.ts';
import { geoidAsGtx } from '../simulation/geoid.ts';
import { waysOf, type Planted } from '../simulation/planted.ts';
import { seededRandom } from '../simulation/random.ts';
import { sessionText } from '../simulation/session-text.ts';
import { DEGREE } from '../simulation/world.ts';
import { seedOf, type Series } from './series.ts';

export interface DayRate {
  readonly days: number;
  /** With an error or a stretch in doubt. */
  readonly alarmed: number;
  /** With a check that is marginal, and no alarm. */
  readonly marginal: number;
  /** The stretch between the first check and the last is bracketed. */
  readonly bracketed: number;
  /** What was called wrong, with the day's number. */
  readonly reasons: readonly string[];
}

const DISTANCE = 1500;
const ROUNDS: NonNullable<DayOptions['rounds']> = ['OPEN', 'BEFORE', 'CLOSE'];

/** Days without any mistake, with so many checks on two marks, and a tolerance as wide as the budget is at 95 %. */
export const cleanDayRate = (checks: number, days: number, series: Series): DayRate =>
  counted(days, (number) => {
    const scene = sceneOf(`clean day of ${String(checks)}`, number, series);
    return judged(withChecks(liveDay(scene), checks), budgetTolerance());
  });

/** Four checks on two marks, and a base that moves by 60 to 200 mm to the side at noon without anybody having noted it. */
export const movedDayRate = (days: number, series: Series): DayRate =>
  counted(days, (number) => {
    const random = seededRandom(seedOf(series, 'moved day by', number));
    const [size, azimuth] = [random.uniform(0.06, 0.2), random.uniform(0, 2 * Math.PI)];
    const by = { east: size * Math.sin(azimuth), north: size * Math.cos(azimuth), up: 0 };
    const scene = sceneOf('moved day', number, series, { movement: { minutes: 720, by } });
    const [moved]: readonly (Planted | undefined)[] = waysOf('base-moved', scene.situation);
    if (!moved) throw new Error('a base can always move');
    return judged(liveDay(scene, moved), '50 mm + 1 ppm horizontal, 60 mm + 1 ppm vertical');
  });

/** Clean days whose checks around noon are float and off by what a float solution is. */
export const weakDayRate = (days: number, series: Series): DayRate =>
  counted(days, (number) => {
    const scene = sceneOf('weak day', number, series);
    const random = seededRandom(seedOf(series, 'weak day by', number));
    const day = liveDay(scene);
    const observations = day.observations.map((one): Day['observations'][number] => {
      if (!one.occupation.name.startsWith('BEFORE')) return one;
      const { latitude, longitude, height } = one.shown.geodetic;
      const geodetic = {
        latitude: latitude + random.normal(0.5) / 111_000,
        longitude: longitude + random.normal(0.5) / (111_000 * Math.cos(latitude * DEGREE)),
        height: height + random.normal(0.8),
      };
      return { ...one, status: 'float', shown: { ...one.shown, geodetic } };
    });
    return judged({ ...day, observations }, '50 mm + 1 ppm horizontal, 60 mm + 1 ppm vertical');
  });

const sceneOf = (what: string, number: number, series: Series, more: Partial<DayOptions> = {}): Scene =>
  drawScene({
    seed: seedOf(series, what, number),
    form: 'geographic',
    points: 0,
    checkMarks: 2,
    distance: DISTANCE,
    rounds: ROUNDS,
    ...more,
  });

const withChecks = (day: Day, checks: number): Day => ({
  ...day,
  observations: day.observations.slice(0, checks),
});

/** From the noise that the simulation draws, by the law of propagation; a radius and a half-width at 95 %. */
function budgetTolerance(): string {
  const noise = USUAL_NOISE;
  const pair = pairPrecision(noise, DISTANCE);
  const lean = 2 * DEGREE * noise.poleTilt;
  const axis = Math.hypot(Math.SQRT2 * noise.markHorizontal, noise.plummet, pair.horizontal, lean);
  const up = Math.hypot(
    Math.SQRT2 * noise.markVertical,
    noise.tapeReading / Math.SQRT2,
    noise.tapeCommon,
    noise.extension,
    pair.up,
  );
  const [radius, halfWidth] = [Math.sqrt(-2 * Math.log(0.05)) * axis, 1.959964 * up];
  return `${(1000 * radius).toFixed(1)} mm horizontal, ${(1000 * halfWidth).toFixed(1)} mm vertical`;
}

interface Judged {
  readonly alarmed: boolean;
  readonly marginal: boolean;
  readonly between: TrustClass;
  readonly reasons: readonly string[];
}

function judged(day: Day, tolerance: string): Judged {
  const text = sessionText(day, {
    geoid: 'region.gtx',
    points: false,
    disturbanceNoted: false,
    tolerance,
  });
  const grid = geoidAsGtx(day.scene.geoid);
  const files: Files = { document: () => ({ refused: 'there is none' }), bytes: () => grid };
  const { session, derivation, findings } = inspect(openDocument('day.trib', text), files);
  const trust = trustOf(session, derivation);
  const setup = [...derivation.setups.values()][0] ?? null;
  const later = Date.parse(day.scene.date) / 1000 + (800 - day.scene.clockOffset) * 60;
  const doubtful = trust.rovers.some(({ spans }) => spans.some((span) => span.class === 'in-doubt'));
  const reasons = [
    ...findings
      .filter(({ severity }) => severity === 'error')
      .map(({ code, message }) => `${code}: ${message}`),
    ...(doubtful ? [trust.verdict] : []),
  ];
  return {
    reasons,
    alarmed: doubtful || findings.some(({ severity }) => severity === 'error'),
    marginal: derivation.checks.some(({ verdict }) => verdict === 'marginal'),
    between: classOf(trust.rovers, { setup, rover: 'R1', instant: later }),
  };
}

function counted(days: number, of: (number: number) => Judged): DayRate {
  let [alarmed, marginal, bracketed] = [0, 0, 0];
  const reasons: string[] = [];
  for (let number = 0; number < days; number++) {
    const found = of(number);
    reasons.push(...found.reasons.map((reason) => `${String(number)} ${reason}`));
    if (found.alarmed) alarmed++;
    else if (found.marginal) marginal++;
    if (found.between === 'bracketed') bracketed++;
  }
  return { days, alarmed, marginal, bracketed, reasons };
}
