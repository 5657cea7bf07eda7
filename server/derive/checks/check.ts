/** A check: residual, tolerance, what a right check stays within, and the part that a keyed error explains. */
import { geodesicBetween } from '../../geodesy/geodesic.ts';
import { meanRadius } from '../../geodesy/radii.ts';
import { topocentricOf } from '../../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geographic,
} from '../../quantities/brands.ts';
import { computeAll, computePlain } from '../../quantities/computed.ts';
import { once } from '../../quantities/once.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Check, LocalSurface, Observed, Quality, Rover, Stated } from '../../session/entries.ts';
import { instantWithin } from '../../session/session.ts';
import { occupationSpread, type Budget, type Occupation } from './budget.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import type { Located } from '../positions/locate.ts';
import { isBuiltIn } from '../heights/geoid.ts';
import type { KeyedValues } from '../setups/keyed.ts';
import type { MarkValues } from '../marks/mark.ts';
import type { RecordingValues } from '../evidence/recording.ts';
import { observedValues, residualOf, unobserved, type ObservedValues, type Residual } from './observation.ts';
import { isWeak } from './quality.ts';
import { residualTests, type ResidualTests } from './residual-test.ts';
import { expectedWithin, rightCheck, type ExpectedValues, type RightCheck } from './right-check.ts';
import type { SetupValues } from '../setups/setup.ts';
import { withoutTransformation } from './transformation-doubt.ts';
import { stateAt } from '../setups/timeline.ts';
import { excused, judgedAlone, verdictOf, type Component, type Judgement, type Verdict } from './verdict.ts';

export interface CheckValues {
  readonly check: Check;
  readonly mark: MarkValues | null;
  readonly setup: SetupValues | null;
  readonly rover: Rover | null;
  /** What the base had been told when the check was made. */
  readonly keyed: KeyedValues | null;
  /** What it broadcast then: as it was told, or as a recording shows. */
  readonly broadcast: KeyedValues | null;
  /** The log that stands in for what a controller showed. */
  readonly recording: RecordingValues | null;
  /** As noted, else as recorded. */
  readonly quality: Quality | null;
  /** Seconds since 1970-01-01 UTC. */
  readonly instant: number | null;
  readonly observed: ObservedValues;
  readonly residual: Residual;
  readonly distance: {
    readonly ellipsoid: Maybe<Value>;
    readonly grid: Maybe<Value>;
    readonly ground: Maybe<Value>;
  };
  readonly tolerance: Budget;
  readonly expected: ExpectedValues;
  /** How seldom a right check is as far off. */
  readonly tests: ResidualTests;
  readonly occupation: Occupation | null;
  readonly explained: {
    readonly east: Maybe<Value>;
    readonly north: Maybe<Value>;
    readonly up: Maybe<Value>;
  };
  /** Of each component and of the whole, among the tests of the day. */
  readonly judged: Judgement;
  readonly verdict: Verdict;
  /** What mark or observation do not have, and the check so cannot prove. */
  readonly absent: readonly Component[];
  /** Too weak to decide anything: not fixed, few epochs, or beyond the job's own limits. */
  readonly weak: boolean;
}

export function checkValues(
  check: Check,
  mark: MarkValues | null,
  setup: SetupValues | null,
  rover: Rover | null,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
  recording: RecordingValues | null,
): CheckValues {
  const { name } = check;
  const instant = instantWithin(check.at, frame.job, setup ? [setup] : []);
  const seen = recording ? recording.observed : check.observed;
  const observed = isHole(seen) ? unobserved(seen) : observedValues(seen, frame, surfaces, name);
  const noMark = hole(`${name} was made on no known mark`, check.place);
  const keyed = setup ? stateAt(setup.keyed, instant) : null;
  const broadcast = setup ? stateAt(setup.broadcasts, instant) : null;
  const distance =
    mark && setup?.mark
      ? distances(setup.mark, mark, observed.located, name, groundGridOf(frame))
      : withoutDistance(check);
  const tolerance = toleranceOf(frame, distance.ellipsoid, name);
  const occupation =
    setup && !isHole(distance.ellipsoid) ? occupationSpread(setup, check, rover, distance.ellipsoid) : null;
  const errors = errorsOf(check, mark, setup, occupation, distance.ellipsoid, rover);
  const residual: Residual = mark
    ? residualOf(observed, mark, errors, name)
    : { east: noMark, north: noMark, up: noMark, horizontal: noMark, gridEast: noMark, gridNorth: noMark };
  const expected = expectedWithin(errors, frame, name);
  const quality = check.quality ?? recording?.quality ?? null;
  const weak = isWeak(quality, frame.job?.limits ?? null);
  const absent = absentIn(mark, seen);
  const confidence = frame.confidence.value;
  const yardstick = { tolerance, expected, quality, weak };
  const judged = excused(judgedAlone(residual, yardstick, confidence), yardstick, confidence, () =>
    withoutTransformation({ residual, errors, setup, keyed, confidence }),
  );
  return {
    check,
    mark,
    setup,
    rover,
    keyed,
    broadcast,
    recording,
    quality,
    instant,
    observed,
    residual,
    distance,
    tolerance,
    expected,
    tests: residualTests(residual, frame.confidence, name),
    occupation,
    explained: new Explained(() => explainedBy(broadcast, setup, mark, name)),
    judged,
    verdict: verdictOf(judged, absent),
    absent,
    weak,
  };
}

const isBenchmark = ({ mark }: MarkValues) => mark.position === null && mark.height !== null;

/** A benchmark has a height and no position; an observation may have either alone. */
function absentIn(mark: MarkValues | null, observed: Maybe<Observed> | null): Component[] {
  if (!mark || !observed || isHole(observed)) return [];
  const { position, height } = mark.mark;
  const withoutHeight = height === null && isHole(mark.ellipsoidalHeight) && isHole(mark.orthometricHeight);
  return [
    ...(position === null || observed.position === null ? (['horizontal'] as const) : []),
    ...(withoutHeight || observed.height === null ? (['up'] as const) : []),
  ];
}

/** What the comparison itself is uncertain by; holes where no base is known. */
function errorsOf(
  check: Check,
  mark: MarkValues | null,
  setup: SetupValues | null,
  occupation: Occupation | null,
  distance: Maybe<Value>,
  rover: Rover | null,
): RightCheck {
  const base = setup?.mark;
  if (!occupation || !mark || !base || isHole(distance)) {
    const none = hole('no base is known for this check');
    return { east: none, north: none, up: none };
  }
  const shown = check.observed?.height?.surface ?? mark.mark.height?.surface;
  const surface = shown === 'ellipsoidal' ? 'ellipsoidal' : 'orthometric';
  const coarse = rover?.geoid ? isBuiltIn(rover.geoid) : false;
  return rightCheck({ setup, base, mark, occupation, distance, surface, coarse, name: check.name });
}

/** The name of the job's grid where it is a ground grid, whose distances must not be taken for projected ones. */
const groundGridOf = ({ grid }: Frame) => (!isHole(grid) && grid.ground ? grid.name : null);

function distances(
  base: MarkValues,
  mark: MarkValues,
  seen: Maybe<Located>,
  name: string,
  ground: string | null,
): CheckValues['distance'] {
  // A benchmark without a position lies where it was observed, near enough for a distance.
  const [from, to] = [base.located, isBenchmark(mark) ? seen : mark.located];
  if (isHole(from)) return { ellipsoid: from, grid: from, ground: from };
  if (isHole(to)) return { ellipsoid: to, grid: to, ground: to };
  if (!sameDatum(from.system.datum, to.system.datum)) {
    const none = hole(`${base.mark.name} and ${mark.mark.name} are in different datums`);
    return { ellipsoid: none, grid: none, ground: none };
  }
  const { ellipsoid } = from.system.datum;
  const place = (φ: Value, λ: Value): Geographic => ({
    latitude: asLatitude(φ.value),
    longitude: asLongitude(λ.value),
  });
  const length = geodesicBetween(
    ellipsoid,
    place(from.latitude, from.longitude),
    place(to.latitude, to.longitude),
  ).distance;
  const inputs = { φ1: from.latitude, λ1: from.longitude, φ2: to.latitude, λ2: to.longitude };
  const about = `from ${base.mark.name} to ${mark.mark.name}, for ${name}`;
  const along = computePlain(
    `ellipsoidal distance ${about}`,
    'm',
    {
      symbol: 'D',
      expression: `geodesic on ${ellipsoid.name} (φ1, λ1) to (φ2, λ2)`,
      evaluable: false,
      source: 'Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43–55',
    },
    inputs,
    length,
  );
  return new Distances(
    along,
    () => gridDistance(base, mark, ground ? `${about}, in the ground grid ${ground}` : about),
    () => groundDistance(base, mark, along, ellipsoid, about),
  );
}

/** Tolerance and budget rest on the distance along the ellipsoid; the others are for whoever asks. */
class Distances {
  private readonly inGrid: () => Maybe<Value>;
  private readonly onGround: () => Maybe<Value>;

  constructor(
    readonly ellipsoid: Value,
    inGrid: () => Maybe<Value>,
    onGround: () => Maybe<Value>,
  ) {
    this.inGrid = once(inGrid);
    this.onGround = once(onGround);
  }

  get grid() {
    return this.inGrid();
  }

  get ground() {
    return this.onGround();
  }
}

function gridDistance(base: MarkValues, mark: MarkValues, about: string): Maybe<Value> {
  const { east: E1, north: N1 } = base;
  const { east: E2, north: N2 } = mark;
  if (isHole(E1)) return E1;
  if (isHole(N1)) return N1;
  if (isHole(E2)) return E2;
  if (isHole(N2)) return N2;
  const formula = {
    symbol: 'D_g',
    expression: '√((E2 − E1)² + (N2 − N1)²)',
    evaluable: true,
    source: 'plane distance in the grid',
  };
  return computePlain(
    `grid distance ${about}`,
    'm',
    formula,
    { E1, N1, E2, N2 },
    Math.hypot(E2.value - E1.value, N2.value - N1.value),
  );
}

/** The ellipsoidal distance at the mean height of its ends. */
function groundDistance(
  base: MarkValues,
  mark: MarkValues,
  along: Value,
  ellipsoid: Parameters<typeof meanRadius>[0],
  about: string,
): Maybe<Value> {
  const { ellipsoidalHeight: h1 } = base;
  const { ellipsoidalHeight: h2 } = mark;
  if (isHole(h1)) return h1;
  if (isHole(h2)) return h2;
  if (isHole(base.latitude)) return base.latitude;
  const R = meanRadius(ellipsoid, asLatitude(base.latitude.value));
  const radius = computePlain(
    `mean radius at ${base.mark.name}`,
    'm',
    {
      symbol: 'R',
      expression: `√(M · N) on ${ellipsoid.name} at φ`,
      evaluable: false,
      source: 'ICSM GDA2020 Technical Manual',
    },
    { φ: base.latitude },
    R,
  );
  const formula = {
    symbol: 'D_0',
    expression: 'D · (1 + (h1 + h2) / 2 / R)',
    evaluable: true,
    source: 'ICSM GDA2020 Technical Manual, reduction of distances, inverted',
  };
  return computePlain(
    `ground distance ${about}`,
    'm',
    formula,
    { D: along, h1, h2, R: radius },
    along.value * (1 + (h1.value + h2.value) / 2 / R),
  );
}

function withoutDistance(check: Check): CheckValues['distance'] {
  const none = hole(`between which marks ${check.name} was made is not known`, check.place);
  return { ellipsoid: none, grid: none, ground: none };
}

/** A tolerance limits the length of the horizontal residual, and the size of the vertical one; ppm count along the ellipsoid. */
function toleranceOf(frame: Frame, distance: Maybe<Value>, name: string): Budget {
  const tolerance = frame.job?.tolerance;
  return {
    horizontal: limitOf(tolerance?.horizontal ?? null, distance, name, 'horizontal'),
    up: limitOf(tolerance?.vertical ?? null, distance, name, 'vertical'),
  };
}

function limitOf(
  stated: Stated | null,
  distance: Maybe<Value>,
  name: string,
  direction: string,
): Maybe<Value> {
  if (!stated) return hole(`the job sets no ${direction} tolerance`);
  if (isHole(stated.constant)) return stated.constant;
  if (!stated.perDistance) return stated.constant;
  if (isHole(stated.perDistance)) return stated.perDistance;
  if (isHole(distance)) return distance;
  const formula = {
    symbol: 'T',
    expression: 'c + p · D',
    evaluable: true,
    source: 'tolerance as the job sets it',
  };
  const inputs = { c: stated.constant, p: stated.perDistance, D: distance };
  return computePlain(
    `${direction} tolerance of ${name}`,
    'm',
    formula,
    inputs,
    inputs.c.value + inputs.p.value * inputs.D.value,
  );
}

/** Looked for when somebody asks, which nobody does about a check that passes. */
class Explained {
  private readonly parts: () => CheckValues['explained'];

  constructor(find: () => CheckValues['explained']) {
    this.parts = once(find);
  }

  get east() {
    return this.parts().east;
  }

  get north() {
    return this.parts().north;
  }

  get up() {
    return this.parts().up;
  }
}

/** The broadcast ARP's error as seen at the check: every rover position moves with it, in space. */
function explainedBy(
  keyed: KeyedValues | null,
  setup: SetupValues | null,
  mark: MarkValues | null,
  name: string,
): CheckValues['explained'] {
  const none = hole('what was keyed is not known');
  if (!keyed || !setup || !mark || isHole(mark.located)) return { east: none, north: none, up: none };
  const { arp } = setup;
  if (isHole(keyed.broadcast)) return { east: keyed.broadcast, north: keyed.broadcast, up: keyed.broadcast };
  if (isHole(arp)) return { east: arp, north: arp, up: arp };
  const { located } = mark;
  const formula = (symbol: string) => ({
    symbol,
    expression: 'broadcast ARP (X_b, Y_b, Z_b) minus true ARP (X, Y, Z), in the horizon of the check (φ, λ)',
    evaluable: false,
    source: 'IOGP 373-07-2, geocentric/topocentric conversion (EPSG method 9836)',
  });
  const names = ['east', 'north', 'up'] as const;
  const [east, north, up] = computeAll(
    names.map((axis) => ({
      name: `part of ${name} that the keyed values explain, ${axis}`,
      unit: 'm' as const,
      formula: formula(axis[0] ?? ''),
    })),
    { X_b: keyed.broadcast.x, Y_b: keyed.broadcast.y, Z_b: keyed.broadcast.z, X: arp.x, Y: arp.y, Z: arp.z },
    (v) => {
      const origin = {
        latitude: asLatitude(located.latitude.value),
        longitude: asLongitude(located.longitude.value),
      };
      const vector = topocentricOf(origin, {
        x: metres(v.X_b - v.X),
        y: metres(v.Y_b - v.Y),
        z: metres(v.Z_b - v.Z),
      });
      return [vector.east, vector.north, vector.up];
    },
  );
  return { east: east ?? none, north: north ?? none, up: up ?? none };
}
