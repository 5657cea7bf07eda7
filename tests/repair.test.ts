/** Repaired points against the truth of simulated days, and the refusals that keep points from being made worse. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { exactShift, type ShiftSpace } from '../server/derive/repair/shift.ts';
import { latticed } from '../server/derive/repair/lattice.ts';
import { bendBound } from '../server/derive/repair/bend.ts';
import type { RepairedPoint } from '../server/derive/repair/row.ts';
import { STILL } from '../server/derive/repair/repair.ts';
import { WGS84 as ELLIPSOID } from '../server/geodesy/ellipsoid.ts';
import { horizontalSystemOf, projectedSystemOf } from '../server/geodesy/registry/registry.ts';
import { inspect } from '../server/inspect.ts';
import { metres } from '../server/quantities/brands.ts';
import { isRefusal } from '../server/quantities/refusal.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import { NO_FILES, type Files } from '../server/session/files.ts';
import { ask, isInstalled, say } from './reference/proj-tools.ts';
import { broadcastArp } from './simulation/base.ts';
import { drawScene, liveDay, liveSilently, type Day, type Scene } from './simulation/day.ts';
import { geoidAsGtx, geoidModel } from './simulation/geoid.ts';
import { plantVector, waysOf } from './simulation/planted.ts';
import { seededRandom } from './simulation/random.ts';
import { sessionText, type TextOptions } from './simulation/session-text.ts';
import {
  displaced,
  distance,
  localFrame,
  subtract,
  toGeocentric,
  toLocal,
  type EastNorthUp,
  type Geodetic,
} from './simulation/world.ts';

/** Wide enough that no right check of these days fails. */
const TOLERANCE = '90 mm + 2 ppm horizontal, 120 mm + 3 ppm vertical';

/** The session of a day, read, judged and repaired point by point. */
function repairedDay(day: Day, options: TextOptions = {}, change = (text: string) => text) {
  const grid = geoidAsGtx(day.scene.geoid);
  const files: Files = { document: () => ({ refused: 'none' }), bytes: () => grid };
  const text = change(sessionText(day, { geoid: 'region.gtx', tolerance: TOLERANCE, ...options }));
  const { session, derivation } = inspect(openDocument('day.trib', text), files);
  const repair = sessionRepair(session, derivation);
  const points: RepairedPoint[] = [];
  for (const set of derivation.points) {
    const repairRow = repair.repairer(set);
    set.read((row) => points.push(repairRow(row)));
  }
  return { ...repair, derivation, points };
}

/** Where a repaired point lies: grid and levelled height back to a place by the simulator's own projection and geoid. */
function placeOf(point: RepairedPoint, scene: Scene): Geodetic {
  if (scene.form === 'geographic')
    return { latitude: point.first, longitude: point.second, height: point.third };
  const place = scene.grid.inverse({ east: point.first, north: point.second });
  return { ...place, height: point.third + geoidModel(scene.geoid)(place) };
}

function errorOf(found: Geodetic, truth: Geodetic, scene: Scene): EastNorthUp {
  const { ellipsoid } = scene.grid;
  return toLocal(subtract(toGeocentric(found, ellipsoid), toGeocentric(truth, ellipsoid)), localFrame(truth));
}

/** The same scene with its points on a circle around the base. */
function withPointsAt(scene: Scene, metresAway: number, count: number): Scene {
  const random = seededRandom(`circle ${String(scene.seed)}`);
  const checks = scene.occupations.filter(({ on }) => on !== 'point');
  const points = Array.from({ length: count }, (_, index) => {
    const azimuth = random.uniform(0, 2 * Math.PI);
    const vector = { east: metresAway * Math.sin(azimuth), north: metresAway * Math.cos(azimuth), up: 0 };
    const place = displaced(scene.base.mark, vector, scene.grid.ellipsoid);
    return {
      name: `P${String(index + 1)}`,
      on: 'point' as const,
      mark: undefined,
      truth: { ...place, height: scene.base.mark.height + random.uniform(-0.02, 0.02) * metresAway },
      minutes: 530 + random.below(360),
    };
  });
  const inOrder = [...checks, ...points].sort((one, other) => one.minutes - other.minutes);
  return { ...scene, occupations: inOrder };
}

function drawVector(seed: string, size: number): EastNorthUp {
  const random = seededRandom(seed);
  const azimuth = random.uniform(0, 2 * Math.PI);
  const up = random.uniform(-1, 1);
  const level = Math.sqrt(1 - up * up);
  return { east: size * level * Math.sin(azimuth), north: size * level * Math.cos(azimuth), up: size * up };
}

const DISTANCES = [100, 5000, 20_000];
const SIZES = [0.001, 0.03, 1, 10, 100];
const FORMS = ['grid', 'geographic'] as const;
const SCENES = 7;
const POINTS = 5;

interface Judged {
  readonly distance: number;
  readonly size: number;
  readonly form: (typeof FORMS)[number];
  readonly horizontal: boolean;
  readonly up: boolean;
  readonly repaired: boolean;
}

describe('repaired points', () => {
  const judged: Judged[] = [];
  const shown: { readonly scene: Scene; readonly point: RepairedPoint; readonly truth: Geodetic }[] = [];

  it('agree with the truth as often as they say, whatever the distance, the error and the form', () => {
    for (const form of FORMS)
      for (const distance of DISTANCES)
        for (const size of SIZES)
          for (let seed = 0; seed < SCENES; seed++) {
            const key = `repair ${form} ${distance} ${size} ${seed}`;
            const drawn = drawScene({
              seed: key,
              form,
              keyedForm: form,
              checkMarks: 1,
              rounds: ['OPEN', 'CLOSE'],
            });
            const scene = withPointsAt(drawn, distance, POINTS);
            const day = liveDay(scene, plantVector(scene.situation, drawVector(key, size)), 'faithful');
            for (const point of repairedDay(day).points) {
              const observation = day.observations.find(
                ({ occupation }) => occupation.name === point.row.name,
              );
              // Nobody keeps a point whose phase could not be fixed.
              if (!observation || observation.status === 'float') continue;
              if (point.horizontal === null || point.up === null) throw new Error(point.reason);
              const { east, north, up } = errorOf(placeOf(point, scene), observation.occupation.truth, scene);
              judged.push({
                distance,
                size,
                form,
                horizontal: Math.hypot(east, north) <= point.horizontal,
                up: Math.abs(up) <= point.up,
                repaired: point.shift !== null,
              });
              shown.push({ scene, point, truth: observation.occupation.truth });
            }
          }
    expect(judged.length).toBeGreaterThan(
      0.9 * FORMS.length * DISTANCES.length * SIZES.length * SCENES * POINTS,
    );
    expect(judged.filter(({ size }) => size >= 0.03).every(({ repaired }) => repaired)).toBe(true);
    for (const direction of ['horizontal', 'up'] as const) {
      const share = (of: readonly Judged[]) => of.filter((one) => one[direction]).length / of.length;
      // Points of one scene share the error of their mark, so that a scene counts for about two independent points.
      const slack = (of: readonly Judged[]) => 3 * Math.sqrt((0.95 * 0.05) / ((2 * of.length) / POINTS));
      say(
        `${direction}: ${(100 * share(judged)).toFixed(1)} % of ${judged.length} repaired points within their 95 % bound.`,
      );
      expect(share(judged)).toBeGreaterThan(0.95 - slack(judged));
      // Bounds that nothing ever exceeds would be no 95 % bounds.
      expect(share(judged)).toBeLessThan(0.995);
      for (const [key, values] of [
        ['distance', DISTANCES],
        ['size', SIZES],
        ['form', FORMS],
      ] as const)
        for (const value of values) {
          const own = judged.filter((one) => one[key] === value);
          expect([key, value, share(own) > 0.95 - slack(own)]).toEqual([key, value, true]);
        }
    }
  }, 120_000);

  it('agree with the truth as PROJ converts them back', async () => {
    if (!isInstalled('cct')) return;
    const inGrid = shown.filter(
      ({ scene }) => scene.form === 'grid' && scene.grid.name.startsWith('EPSG:32'),
    );
    expect(inGrid.length).toBeGreaterThan(100);
    let within = 0;
    const zones = new Map<string, typeof inGrid>();
    for (const one of inGrid)
      zones.set(one.scene.grid.name, [...(zones.get(one.scene.grid.name) ?? []), one]);
    for (const [name, own] of zones) {
      const zone = Number(name.slice(-2));
      const south = name.startsWith('EPSG:327') ? ['+south'] : [];
      const lines = own.map(({ point }) => `${point.first} ${point.second} 0 0`);
      const answers = await ask(
        'cct',
        ['-d', '12', '-I', '+proj=utm', `+zone=${zone}`, ...south, '+ellps=WGS84'],
        lines,
      );
      own.forEach(({ scene, point, truth }, index) => {
        const [longitude = NaN, latitude = NaN] = (answers[index] ?? '').trim().split(/\s+/).map(Number);
        const { east, north } = errorOf({ latitude, longitude, height: truth.height }, truth, scene);
        if (Math.hypot(east, north) <= (point.horizontal ?? NaN)) within++;
      });
    }
    say(`${inGrid.length} repaired points were converted back by cct.`);
    const slack = 3 * Math.sqrt((0.95 * 0.05) / ((2 * inGrid.length) / POINTS));
    expect(within / inGrid.length).toBeGreaterThan(0.95 - slack);
  });
});

describe('what a shift leaves behind', () => {
  it('stays within its bound in 95 % of simulated cases, for errors in height and to the side', () => {
    let [within, total, largest] = [0, 0, 0];
    for (let seed = 0; seed < 240; seed++) {
      const size = [5, 20, 50, 100][seed % 4] ?? 5;
      const drawn = drawScene({ seed: `bend ${seed}`, form: 'geographic', checkMarks: 1, rounds: ['OPEN'] });
      const scene = withPointsAt(drawn, seed % 2 ? 5000 : 20_000, 4);
      const planted = plantVector(scene.situation, drawVector(`bend ${seed}`, size));
      const wrong = subtract(
        broadcastArp(planted.base, scene.baseAntenna),
        broadcastArp(scene.situation.careful.setting, scene.baseAntenna),
      );
      const local = toLocal(wrong, localFrame(scene.base.mark));
      const error = { horizontal: Math.hypot(local.east, local.north), up: Math.abs(local.up) };
      const right = liveSilently(scene);
      for (const { occupation, shown } of liveSilently(scene, planted)) {
        const clean = right.find((other) => other.occupation.name === occupation.name);
        if (!clean || occupation.on !== 'point') continue;
        const { ellipsoid } = scene.grid;
        const repaired = subtract(toGeocentric(shown.geodetic, ellipsoid), wrong);
        const left = toLocal(
          subtract(repaired, toGeocentric(clean.shown.geodetic, ellipsoid)),
          localFrame(clean.shown.geodetic),
        );
        const away = distance(
          toGeocentric(clean.shown.geodetic, ellipsoid),
          toGeocentric(scene.base.mark, ellipsoid),
        );
        const bound = bendBound(error, away);
        const ratios = [Math.hypot(left.east, left.north) / bound.horizontal, Math.abs(left.up) / bound.up];
        for (const ratio of ratios) {
          total++;
          if (ratio <= 1) within++;
          largest = Math.max(largest, ratio);
        }
      }
    }
    expect(total).toBeGreaterThan(1500);
    expect(within / total).toBeGreaterThan(0.95);
    expect(within / total).toBeLessThan(1);
    expect(largest).toBeLessThan(2.5);
  });
});

describe('the shift itself', () => {
  const grid = projectedSystemOf('EPSG:32629');
  const geographic = horizontalSystemOf('EPSG:4326');
  if (isRefusal(grid) || isRefusal(geographic)) throw new Error('two systems of the register are missing');
  const space = (form: 'grid' | 'geographic'): ShiftSpace => ({
    form,
    system: form === 'grid' ? grid : geographic,
    height: { surface: 'ellipsoidal', offset: 0 },
    geoid: null,
    base: { height: 60, separation: 0 },
    scale: null,
  });
  const removal = { base: { x: metres(41.5), y: metres(-63.25), z: metres(58.125) }, rover: STILL };

  it('is that of geocentric space, as PROJ has it', async () => {
    if (!isInstalled('cct')) return;
    const random = seededRandom('shift');
    const points = Array.from({ length: 200 }, () => ({
      east: random.uniform(300_000, 700_000),
      north: random.uniform(1_000_000, 7_000_000),
      height: random.uniform(-50, 3000),
    }));
    const pipeline =
      '+proj=pipeline +step +inv +proj=utm +zone=29 +ellps=WGS84 +step +proj=cart +ellps=WGS84 +step +proj=helmert +x=-41.5 +y=63.25 +z=-58.125 +step +inv +proj=cart +ellps=WGS84 +step +proj=utm +zone=29 +ellps=WGS84';
    const answers = await ask(
      'cct',
      ['-d', '6', ...pipeline.split(' ')],
      points.map(({ east, north, height }) => `${east} ${north} ${height} 0`),
    );
    const shiftAt = exactShift(space('grid'), removal);
    points.forEach(({ east, north, height }, index) => {
      const shift = shiftAt(east, north, height);
      if (isRefusal(shift)) throw new Error(shift.refused);
      const [E = NaN, N = NaN, h = NaN] = (answers[index] ?? '').trim().split(/\s+/).map(Number);
      expect(
        Math.hypot(E - east - shift.first, N - north - shift.second, h - height - shift.third),
      ).toBeLessThan(1e-5);
    });
    expect(ELLIPSOID.semiMajor).toBe(6378137);
  });

  it('grows with the ground scale of the controller, which showed E₀ + k (E − E₀) for E', () => {
    const [k, east, north] = [1.0004, 531_000, 4_555_000];
    const [E, N] = [534_000, 4_557_000];
    const plain = exactShift(space('grid'), removal)(E, N, 100);
    const scaled = exactShift({ ...space('grid'), scale: { factor: k, east, north } }, removal)(
      east + k * (E - east),
      north + k * (N - north),
      100,
    );
    if (isRefusal(plain) || isRefusal(scaled)) throw new Error('no shift');
    expect(scaled.first).toBeCloseTo(k * plain.first, 6);
    expect(scaled.second).toBeCloseTo(k * plain.second, 6);
    expect(scaled.third).toBeCloseTo(plain.third, 6);
  });

  it.each(['grid', 'geographic'] as const)(
    'between the corners of its boxes is right to a hundredth of a millimetre (%s)',
    (form) => {
      const exact = exactShift(space(form), removal);
      const quick = latticed(form, exact);
      const random = seededRandom(`lattice ${form}`);
      const perUnit = form === 'grid' ? 1 : 111_000;
      let largest = 0;
      for (let index = 0; index < 3000; index++) {
        const first = form === 'grid' ? 520_000 + random.uniform(0, 4000) : 41 + random.uniform(0, 0.04);
        const second = form === 'grid' ? 4_550_000 + random.uniform(0, 4000) : -8.6 + random.uniform(0, 0.04);
        const height = index % 7 === 0 ? undefined : random.uniform(0, 900);
        const [one, other] = [exact(first, second, height), quick(first, second, height)];
        if (isRefusal(one) || isRefusal(other)) throw new Error('no shift');
        largest = Math.max(
          largest,
          Math.hypot(
            (one.first - other.first) * perUnit,
            (one.second - other.second) * perUnit,
            one.third - other.third,
          ),
        );
      }
      expect(largest).toBeLessThan(1e-5);
      expect(largest).toBeGreaterThan(0);
    },
  );
});

describe('a levelled height', () => {
  /** The point where the base was said to be: brought 0.01° south in plan at the same height above the ellipsoid. */
  it('is brought along the geoid of the controller: N falls by 0.01° · 2 m/° = 20 mm, and the height grows by them', () => {
    const geoid = geoidAsGtx({
      origin: { latitude: 41, longitude: -9 },
      separation: 55,
      northward: 2,
      eastward: 0,
      twist: 0,
    });
    const text = `job "Slope"
  date        2026-05-19
  clock       UTC
  datum       EPSG:4258
  geoid       "region.gtx"
mark A
  position    41.10° N, 9.00° W
  height      61.201 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  fixed-height 1.800 m
rover R1
  geoid       "region.gtx"
  site-calibration none
setup BASE on A with A1 at 07:50
  keyed       position 41.11° N, 9.00° W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.800 m to arp
points
  from        BASE
  by          R1
  state       as-broadcast
  columns     name, latitude °, longitude °, height m orthometric
  row         P1, 41.11, -9.00, 6.000
`;
    const files: Files = { document: () => ({ refused: 'none' }), bytes: () => geoid };
    const { session, derivation } = inspect(openDocument('day.trib', text), files);
    const [set] = derivation.points;
    if (!set) throw new Error('no points');
    const points: RepairedPoint[] = [];
    const repair = sessionRepair(session, derivation).repairer(set);
    set.read((row) => points.push(repair(row)));
    expect(points[0]?.first).toBeCloseTo(41.1, 8);
    expect(points[0]?.third).toBeCloseTo(6.02, 4);
  });
});

describe('a knock that moved the base', () => {
  it('is taken off by the failing checks after it, in the mean, and only after it', () => {
    let [within, total] = [0, 0];
    for (let seed = 0; seed < 30; seed++) {
      const drawn = drawScene({
        seed: `knock ${seed}`,
        form: seed % 2 ? 'grid' : 'geographic',
        checkMarks: 1,
        movement: { minutes: 720, by: { east: 0.21, north: -0.16, up: -0.12 } },
      });
      const scene = withPointsAt(drawn, 1500, 6);
      const [moved] = waysOf('base-moved', scene.situation);
      if (!moved) throw new Error('the base can always move');
      const day = liveDay(scene, moved, 'unaware');
      const { points, repair } = repairedDay(day);
      const event = repair.remedies.filter(({ by }) => by === 'event');
      expect(event.map(({ checks }) => checks.map(({ check }) => check.name))).toEqual([['AFTER', 'CLOSE']]);
      for (const point of points) {
        const observation = day.observations.find(({ occupation }) => occupation.name === point.row.name);
        if (!observation || point.horizontal === null || point.up === null) continue;
        const after = observation.occupation.minutes >= 720;
        expect([point.shift !== null, point.label.includes('repaired')]).toEqual([after, after]);
        if (after) expect(point.label).toBe('in doubt, repaired');
        if (!after) continue;
        const { east, north, up } = errorOf(placeOf(point, scene), observation.occupation.truth, scene);
        total += 2;
        if (Math.hypot(east, north) <= point.horizontal) within++;
        if (Math.abs(up) <= point.up) within++;
      }
    }
    expect(total).toBeGreaterThan(100);
    expect(within / total).toBeGreaterThan(0.88);
  });

  it('is not taken off where the checks after it do not agree, or where nothing says when it was', () => {
    const drawn = drawScene({
      seed: 'steady',
      form: 'geographic',
      checkMarks: 1,
      movement: { minutes: 720, by: { east: 0.21, north: -0.16, up: -0.12 } },
    });
    const [moved] = waysOf('base-moved', drawn.situation);
    const day = liveDay(withPointsAt(drawn, 1500, 6), moved, 'unaware');
    const unseen = repairedDay(day, { disturbanceNoted: false });
    expect(unseen.repair.remedies.filter(({ by }) => by === 'event')).toEqual([]);
    expect(
      unseen.points.some(({ reason }) => reason.includes('nothing in these notes tells what to take off')),
    ).toBe(true);
    const wobbling = repairedDay(day, {}, (text) =>
      text.replace(
        /(check CLOSE [^]*?height )([\d.-]+)/,
        (_, head: string, height: string) => `${head}${Number(height) - 0.3}`,
      ),
    );
    expect(wobbling.repair.remedies.filter(({ by }) => by === 'event')).toEqual([]);
    expect(wobbling.repair.refusals.map(({ because }) => because).join(' ')).toMatch(
      /do not agree with one another/,
    );
  });
});

describe('a slip that a correction confirms', () => {
  const scene = withPointsAt(
    drawScene({ seed: 'slip 4', form: 'geographic', checkMarks: 2, rounds: ['OPEN', 'CLOSE'] }),
    1000,
    8,
  );
  const [leftOut] = waysOf('extension-left-out', scene.situation);

  it('is taken off, though the notes show nothing of it', () => {
    if (!leftOut) throw new Error('this scene should have an extension');
    const day = liveDay(scene, leftOut, 'unaware');
    const { extension } = scene.situation.careful;
    const without = repairedDay(day);
    expect(without.points.every(({ shift }) => shift === null)).toBe(true);
    const found = repairedDay(
      day,
      {},
      (text) =>
        `${text}\ncorrection "extension left out" on BASE at 16:10\n  by "S. Observer"\n  because "an extension of ${extension} m stood on the tripod when the base was taken down"\n`,
    );
    expect(found.repair.remedies).toMatchObject([{ by: 'slip' }]);
    expect(found.repair.checks.map(({ verdict }) => verdict)).not.toContain('fails');
    const silent = repairedDay(
      day,
      {},
      (text) => `${text}\ncorrection "extension left out" on BASE at 16:10\n`,
    );
    expect(silent.confirmed.unclear[0]?.because).toMatch(
      /the checks leave open whether .* 250 mm .* or .* 200 mm|200 mm .* or .* 250 mm/,
    );
    for (const point of found.points) {
      expect(point.shift?.up).toBeCloseTo(extension, 3);
      expect(point.label).toBe('in doubt, repaired');
      expect(point.fate.asRepaired).toBe('bracketed');
    }
  });

  it('that is not what the checks show repairs nothing, and the account can say so', () => {
    const day = liveDay(scene, plantVector(scene.situation, { east: 0.4, north: 0.1, up: 0 }), 'unaware');
    const found = repairedDay(
      day,
      {},
      (text) => `${text}\ncorrection "extension left out" on BASE at 16:10\n`,
    );
    expect(found.confirmed.unclear).toHaveLength(1);
    expect(found.points.every(({ shift }) => shift === null)).toBe(true);
    const odd = repairedDay(day, {}, (text) => `${text}\ncorrection "the dog ate it" on BASE at 16:10\n`);
    expect(odd.confirmed.unclear[0]?.because).toMatch(/no slip that is known/);
  });
});

describe('points are left as they are', () => {
  const scene = drawScene({
    seed: 'refused',
    form: 'grid',
    points: 3,
    checkMarks: 1,
    rounds: ['OPEN', 'CLOSE'],
  });
  const day = liveDay(scene, plantVector(scene.situation, { east: 0.5, north: 0, up: 2 }), 'faithful');

  it.each<[string, (text: string) => string, RegExp]>([
    [
      'with their state not said',
      (text) => text.replace(/ +state +as-broadcast\n/, ''),
      /as broadcast or already corrected is not said/,
    ],
    ['once corrected', (text) => text.replace('as-broadcast', 'corrected'), /Already corrected/],
    ['of an unknown state', (text) => text.replace('as-broadcast', 'raw'), /The state raw is not known/],
    [
      'under a site calibration',
      (text) => text.replace('site-calibration none', 'site-calibration north-arm'),
      /site calibration north-arm/,
    ],
    [
      'under a ground scale that is not given',
      (text) => text.replace('rover R1', 'rover R1\n  scale       ?'),
      /ground scale of the controller is not given/,
    ],
    [
      'with a base that nobody knows',
      (text) => text.replace(/(points\n +from +)BASE/, '$1OTHER'),
      /Which base .* not known/,
    ],
    [
      'with heights on no surface',
      (text) => text.replace('height m orthometric, time', 'height m, time'),
      /surface of the heights is not said/,
    ],
    ['where nothing was keyed', (text) => text.replace(/ +keyed .*\n/g, ''), /was told is not noted/],
    [
      'where the mark has no coordinates',
      (text) => text.replace(/(mark PM-14.*\n) +position.*\n/, '$1'),
      /should have broadcast is not known|has no coordinates/,
    ],
  ])('%s', (_, change, because) => {
    const { points } = repairedDay(day, {}, change);
    expect(points).toHaveLength(3);
    for (const point of points) {
      expect(point.reason).toMatch(because);
      expect([point.shift, point.label.includes('repaired')]).toEqual([null, false]);
      expect([point.first, point.second, point.third]).toEqual([
        point.row.east,
        point.row.north,
        point.row.height,
      ]);
    }
  });

  it('is no reason to leave those alone that can be repaired', () => {
    expect(repairedDay(day).points.every(({ shift }) => shift !== null)).toBe(true);
  });

  it('where a note of what was keyed is at odds with checks that agree: the note may be what is wrong', () => {
    const slipOfThePen = (text: string) =>
      text.replace(/(keyed +antenna-height )([\d.]+)/, (_, words: string, height: string) => {
        return `${words}${(Number(height) + 2).toFixed(3)}`;
      });
    const found = repairedDay(liveDay(scene), {}, slipOfThePen);
    expect(found.repair.checks.map(({ verdict }) => verdict)).toEqual(['passes', 'passes']);
    for (const { shift, reason } of found.points)
      expect([shift, reason]).toEqual([
        null,
        expect.stringMatching(
          /^By the notes, what .* too high\. Yet OPEN and CLOSE agree as measured, so the note may be wrong/,
        ),
      ]);
    // One check that fails by as much is enough to believe the note.
    const oneFails = (text: string) =>
      slipOfThePen(text).replace(/(check CLOSE[^]*?height )([\d.]+)/, (_, words: string, height: string) => {
        return `${words}${(Number(height) + 2).toFixed(3)}`;
      });
    const believed = repairedDay(liveDay(scene), {}, oneFails);
    expect(believed.derivation.checks.map(({ verdict }) => verdict)).toEqual(['passes', 'fails']);
    expect(believed.points.every(({ shift }) => shift !== null && Math.abs(shift.up + 2) < 0.02)).toBe(true);
  });

  it('without heights are repaired in plan alone', () => {
    const flat = (text: string) =>
      text
        .replace(/^( +columns +name, east m, north m), height m orthometric/m, '$1')
        .replace(/^( +row +[^,]+,[^,]+,[^,]+),[^,\n]+/gm, '$1');
    const found = repairedDay(day, {}, flat).points;
    expect(found).toHaveLength(3);
    repairedDay(day).points.forEach(({ first, second }, index) => {
      expect(found[index]?.third).toBeNaN();
      expect(found[index]?.shift?.up).toBe(0);
      // At the level of the base: a hundred metres more or less of height turn half a metre by some micrometres.
      expect(found[index]?.first).toBeCloseTo(first, 4);
      expect(found[index]?.second).toBeCloseTo(second, 4);
    });
  });

  it('where the tripod was set anew and the receiver was told what was taped then, whether or not it was checked', () => {
    const rows = ['08:40', '14:00'].map(
      (time, index) => `  row P${index}, -40990.120, 165002.331, 5.870, ${time}`,
    );
    const text = `job "Set anew"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
setup BASE on PM-14 at 07:50 until 15:40
  measured    1.500 m to arp, at 07:52
  keyed       position -41203.118 m E, 164904.902 m N, height 61.201 m ellipsoidal
  keyed       antenna-height 1.500 m to arp
  measured    1.600 m to arp, at 12:02
  keyed       antenna-height 1.600 m to arp at 12:03
event re-level at 12:00
points
  from        BASE
  state       as-broadcast
  columns     name, east m, north m, height m orthometric, time local
${rows.join('\n')}
`;
    const { session, derivation } = inspect(openDocument('day.trib', text), NO_FILES);
    const { repairer } = sessionRepair(session, derivation);
    const heights: number[] = [];
    for (const set of derivation.points) {
      const repairRow = repairer(set);
      set.read((row) => heights.push(repairRow(row).third));
    }
    expect(heights).toEqual([5.87, 5.87]);
  });

  it('without a time are repaired where the whole day had one error, and not where it changed', () => {
    const timeless = (text: string) =>
      text.replace(', time local', '').replace(/( +row .*), \d\d:\d\d/g, '$1');
    const steady = repairedDay(day, {}, timeless);
    expect(steady.points.every(({ shift }) => shift !== null)).toBe(true);
    const rekeyed = repairedDay(day, {}, (text) =>
      timeless(text).replace(
        /( +keyed +position .*\n)/,
        (line) =>
          `${line}  keyed       height ${scene.situation.careful.setting.height.toFixed(3)} m ellipsoidal at 09:00\n`,
      ),
    );
    expect(rekeyed.points.every(({ shift, reason }) => shift === null && /have no time/.test(reason))).toBe(
      true,
    );
  });
});
