/** Random points against independent tools: geocentric, geodesics, convergence and scale, transformations, plates, geoid. */
import { describe, expect, it } from 'vitest';
import {
  ellipsoidalHeight,
  latitude,
  longitude,
  metres,
  type Geocentric,
  type Geodetic,
} from '../../server/quantities/brands.ts';
import { isRefusal, type Refusal } from '../../server/quantities/refusal.ts';
import { carriedByPlate, PLATES } from '../../server/geodesy/datums/plates.ts';
import { stepped, transformationOf } from '../../server/geodesy/datums/transformation.ts';
import { undulationEgm96 } from '../../server/geodesy/egm96.ts';
import { AIRY_1830, BESSEL_1841, CLARKE_1866, GRS80, WGS84 } from '../../server/geodesy/ellipsoid.ts';
import { geocentricOf, geodeticOf } from '../../server/geodesy/geocentric.ts';
import { geodesicBetween, geodesicFrom } from '../../server/geodesy/geodesic.ts';
import { projectedSystemOf } from '../../server/geodesy/registry/registry.ts';
import { gridScaleAt } from '../../server/geodesy/scale.ts';
import { ask, isInstalled, repeatable, say } from './proj-tools.ts';

const ELLIPSOIDS = [GRS80, WGS84, AIRY_1830, BESSEL_1841, CLARKE_1866];
const random = repeatable(20260519);
const between = (low: number, high: number) => low + (high - low) * random();

const anywhere = (heights: readonly [number, number]): Geodetic => ({
  latitude: latitude((Math.asin(between(-1, 1)) * 180) / Math.PI),
  longitude: longitude(between(-180, 180)),
  height: ellipsoidalHeight(between(...heights)),
});
const many = (count: number, heights: readonly [number, number] = [-500, 9000]) =>
  Array.from({ length: count }, () => anywhere(heights));
const full = (position: Geodetic) => `${position.latitude} ${position.longitude} ${position.height}`;
const numbers = (line: string | undefined) => (line ?? '').trim().split(/\s+/).map(Number);
const distance = (one: Geocentric, other: Geocentric) =>
  Math.hypot(one.x - other.x, one.y - other.y, one.z - other.z);

describe.skipIf(!isInstalled('CartConvert'))('geocentric coordinates against CartConvert', () => {
  it.each(ELLIPSOIDS)('on $name, from the earth’s depth to the satellites, both ways', async (ellipsoid) => {
    const points = [...many(200), ...many(100, [-6_000_000, 40_000_000])];
    const options = ['-e', `${ellipsoid.semiMajor}`, `${ellipsoid.flattening}`, '-p', '9'];
    const theirs = (await ask('CartConvert', options, points.map(full))).map(numbers).map(place);
    const ours = points.map((point) => geocentricOf(ellipsoid, point));
    const worst = Math.max(...ours.map((one, i) => distance(one, theirs[i] ?? one)));
    const answers = await ask(
      'CartConvert',
      ['-r', ...options],
      ours.map(({ x, y, z }) => `${x} ${y} ${z}`),
    );
    const back = answers.map(numbers);
    const worstBack = Math.max(
      ...ours.map((one, i) => {
        const [φ = NaN, λ = NaN, h = NaN] = back[i] ?? [];
        const own = geodeticOf(ellipsoid, one);
        const turn = Math.abs(((own.longitude - λ + 540) % 360) - 180);
        return Math.max(
          Math.abs(own.latitude - φ) * 111e3,
          turn * 111e3 * Math.cos((φ * Math.PI) / 180),
          Math.abs(own.height - h),
        );
      }),
    );
    say(`Geocentric on ${ellipsoid.name}: worst ${nm(worst)} forward, ${nm(worstBack)} back, of 300 points.`);
    expect(theirs).toHaveLength(300);
    expect(worst).toBeLessThan(1e-7);
    expect(worstBack).toBeLessThan(1e-6);
  });
});

describe.skipIf(!isInstalled('GeodSolve'))('geodesics against GeodSolve', () => {
  it.each(ELLIPSOIDS)('on $name, both problems', async (ellipsoid) => {
    const pairs = many(200).map((from) => ({ from, to: anywhere([0, 0]) }));
    const options = ['-e', `${ellipsoid.semiMajor}`, `${ellipsoid.flattening}`, '-p', '9'];
    const lines = pairs.map(
      ({ from, to }) => `${from.latitude} ${from.longitude} ${to.latitude} ${to.longitude}`,
    );
    const theirs = (await ask('GeodSolve', ['-i', ...options], lines)).map(numbers);
    let worstLength = 0;
    let worstTurn = 0;
    let worstEnd = 0;
    pairs.forEach(({ from, to }, i) => {
      const [azimuth = NaN, forwards = NaN, length = NaN] = theirs[i] ?? [];
      const line = geodesicBetween(ellipsoid, from, to);
      worstLength = Math.max(worstLength, Math.abs(line.distance - length));
      worstTurn = Math.max(worstTurn, turn(line.azimuth, azimuth), turn(line.backAzimuth, forwards + 180));
      const end = geodesicFrom(ellipsoid, from, line.azimuth, line.distance);
      worstEnd = Math.max(worstEnd, geodesicBetween(ellipsoid, end, to).distance);
    });
    say(
      `Geodesics on ${ellipsoid.name}: worst ${nm(worstLength)}, ${worstTurn.toExponential(1)}″, of 200 lines.`,
    );
    expect(theirs).toHaveLength(200);
    expect(worstLength).toBeLessThan(1e-7);
    expect(worstTurn).toBeLessThan(0.001);
    expect(worstEnd).toBeLessThan(1e-6);
  });
});

describe.skipIf(!isInstalled('cct'))('transformations against cct', () => {
  const CASES = [
    { code: 'EPSG:8048', epoch: undefined, near: [-25, 134] },
    { code: 'EPSG:1314', epoch: undefined, near: [54, -2] },
    { code: 'EPSG:9682', epoch: 2026.4, near: [-25, 134] },
    { code: 'EPSG:8049', epoch: 2026.4, near: [-25, 134] },
    { code: 'EPSG:8970', epoch: 2026.4, near: [40, -100] },
    { code: 'EPSG:8265', epoch: 2026.4, near: [55, -100] },
    { code: 'EPSG:8405', epoch: 2026.4, near: [50, 10] },
    { code: 'EPSG:7790', epoch: 2026.4, near: [50, 10] },
    { code: 'EPSG:9991', epoch: 2026.4, near: [50, 10] },
    { code: 'EPSG:6276', epoch: 2013.9, near: [-25, 134] },
  ] as const;

  it.each(CASES)('$code at $epoch, to 0.01 mm', async ({ code, epoch, near }) => {
    const transformation = answered(transformationOf(code));
    const points = Array.from({ length: 50 }, () =>
      geocentricOf(GRS80, {
        latitude: latitude(near[0] + between(-5, 5)),
        longitude: longitude(near[1] + between(-5, 5)),
        height: ellipsoidalHeight(between(0, 2000)),
      }),
    );
    const pipeline = await helmertOf(code);
    const lines = points.map(({ x, y, z }) => `${x} ${y} ${z} ${epoch ?? 0}`);
    const theirs = (await ask('cct', ['-d', '6', ...pipeline], lines)).map(numbers).map(place);
    const worst = Math.max(
      ...points.map((one, i) =>
        distance(answered(stepped({ transformation, reversed: false }, one, epoch)), theirs[i] ?? one),
      ),
    );
    const loop = Math.max(
      ...points.map((one) => {
        const there = answered(stepped({ transformation, reversed: false }, one, epoch));
        return distance(answered(stepped({ transformation, reversed: true }, there, epoch)), one);
      }),
    );
    say(`${transformation.name}: worst ${nm(worst)} against cct, ${nm(loop)} there and back.`);
    expect(theirs).toHaveLength(50);
    expect(worst).toBeLessThan(1e-5);
    expect(loop).toBeLessThan(1e-8);
  });

  it('plate motion over 26 years against PROJ’s own file of the same model, to 0.01 mm', async () => {
    const names = {
      Antarctica: 'ANTA',
      Arabia: 'ARAB',
      Australia: 'AUST',
      Eurasia: 'EURA',
      India: 'INDI',
      Nazca: 'NAZC',
      'North America': 'NOAM',
      Nubia: 'NUBI',
      Pacific: 'PCFC',
      'South America': 'SOAM',
      Somalia: 'SOMA',
    };
    let worst = 0;
    for (const plate of PLATES) {
      const points = many(20).map((point) => geocentricOf(GRS80, point));
      const options = ['-d', '6', `+init=ITRF2014:${names[plate]}`, '+t_epoch=2000'];
      const lines = points.map(({ x, y, z }) => `${x} ${y} ${z} 2026.4`);
      const theirs = (await ask('cct', options, lines)).map(numbers).map(place);
      expect(theirs).toHaveLength(20);
      points.forEach((one, i) => {
        worst = Math.max(worst, distance(carriedByPlate(plate, one, 2000, 2026.4), theirs[i] ?? one));
      });
    }
    say(`Plate motion of ${PLATES.length} plates: worst ${nm(worst)} against cct.`);
    expect(worst).toBeLessThan(1e-5);
  });
});

describe.skipIf(!isInstalled('GeodSolve'))(
  'convergence and scale against geodesics and the grid itself',
  () => {
    it.each(['EPSG:28355', 'EPSG:2154', 'EPSG:28992', 'EPSG:2056', 'EPSG:3375', 'EPSG:5514', 'EPSG:32661'])(
      '%s: a short line’s grid length and bearing agree with its geodesic',
      async (code) => {
        const system = answered(projectedSystemOf(code));
        const { south = 0, north = 0, west = 0, east = 0 } = system.area ?? {};
        const { forward } = await import('../../server/geodesy/projection.ts');
        let worstTurn = 0;
        let worstScale = 0;
        for (let i = 0; i < 40; i++) {
          const from = {
            latitude: latitude(between(south + 0.02, Math.min(north - 0.02, 89))),
            longitude: longitude(between(west, east)),
          };
          const to = geodesicFrom(system.datum.ellipsoid, from, between(0, 360) as never, metres(100));
          const middle = geodesicFrom(
            system.datum.ellipsoid,
            from,
            geodesicBetween(system.datum.ellipsoid, from, to).azimuth,
            metres(50),
          );
          const line = geodesicBetween(system.datum.ellipsoid, middle, to);
          const one = answered(forward(system, from));
          const other = answered(forward(system, to));
          const bearing = (Math.atan2(other.east - one.east, other.north - one.north) * 180) / Math.PI;
          const scale = answered(gridScaleAt(system, middle));
          worstTurn = Math.max(worstTurn, turn(line.azimuth - bearing, scale.convergence));
          worstScale = Math.max(
            worstScale,
            Math.abs(Math.hypot(other.east - one.east, other.north - one.north) / 100 - scale.point),
          );
        }
        say(
          `${code}: convergence within ${worstTurn.toExponential(1)}″, scale within ${worstScale.toExponential(1)}.`,
        );
        expect(worstTurn).toBeLessThan(0.001);
        expect(worstScale).toBeLessThan(1e-9);
      },
    );
  },
);

describe.skipIf(!isInstalled('cct'))('EGM96 against PROJ’s own grid', () => {
  it('at its nodes to half a centimetre of rounding, elsewhere as bilinear and cubic differ', async () => {
    const nodes = Array.from({ length: 300 }, () => ({
      latitude: latitude(Math.round(between(-89, 89) * 4) / 4),
      longitude: longitude(Math.round(between(-179, 179) * 4) / 4),
    }));
    const lines = nodes.map((node) => `${node.longitude} ${node.latitude} 0`);
    const options = ['-d', '6', '+proj=vgridshift', '+grids=egm96_15.gtx', '+multiplier=1'];
    const theirs = (await ask('cct', options, lines)).map(numbers);
    const differences = nodes.map((node, i) => Math.abs(undulationEgm96(node) - (theirs[i]?.[2] ?? NaN)));
    say(`EGM96 at 300 nodes: worst ${(Math.max(...differences) * 1000).toFixed(2)} mm against PROJ’s grid.`);
    expect(theirs).toHaveLength(300);
    expect(Math.max(...differences)).toBeLessThan(0.0051);
  });
});

/** The Helmert step that PROJ makes of an EPSG operation, between geocentric coordinates. */
async function helmertOf(code: string): Promise<readonly string[]> {
  const { spawnSync } = await import('node:child_process');
  const text = spawnSync('projinfo', ['-k', 'operation', '-o', 'PROJ', '-q', code]).stdout.toString();
  const words = text.split(/\s+/).filter((word) => word.startsWith('+'));
  const start = words.indexOf('+proj=helmert');
  const end = words.findIndex((word, place) => place > start && (word === '+step' || word === '+inv'));
  return words.slice(start, end < 0 ? undefined : end);
}

function place([x = NaN, y = NaN, z = NaN]: readonly number[]): Geocentric {
  return { x: metres(x), y: metres(y), z: metres(z) };
}

/** Between two directions in degrees, in arc-seconds. */
function turn(one: number, other: number): number {
  return Math.abs(((((one - other) % 360) + 540) % 360) - 180) * 3600;
}

function nm(length: number): string {
  return `${(length * 1e9).toFixed(1)} nm`;
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}
