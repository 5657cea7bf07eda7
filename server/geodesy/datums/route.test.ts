import { describe, expect, it } from 'vitest';
import { ellipsoidalHeight, latitude, longitude } from '../../quantities/brands.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { GRS80 } from '../ellipsoid.ts';
import { geocentricOf } from '../geocentric.ts';
import { datumNamed } from '../registry/registry.ts';
import { topocentricBetween } from '../topocentric.ts';
import { routeBetween, type RouteWishes } from './route.ts';

const place = (φ: number, λ: number) => ({
  latitude: latitude(φ),
  longitude: longitude(λ),
  height: ellipsoidalHeight(100),
});

describe('a way between two datums', () => {
  it('of one step where there is one: GDA94 to GDA2020 is 1.5–1.8 m to the north-north-east and about 0.1 m down', () => {
    for (const at of [place(-37, 144), place(-12.5, 131), place(-32, 116), place(-43, 147)]) {
      const { east, north, up } = moved('GDA94', 'GDA2020', at, { at });
      expect(Math.hypot(east, north)).toBeGreaterThan(1.45);
      expect(Math.hypot(east, north)).toBeLessThan(1.83);
      expect((Math.atan2(east, north) * 180) / Math.PI).toBeGreaterThan(15);
      expect((Math.atan2(east, north) * 180) / Math.PI).toBeLessThan(45);
      expect(Math.abs(up + 0.1)).toBeLessThan(0.06);
    }
  });

  it('over a frame between them: ETRS89 lies about 0.9 m from ITRF2020 in 2026', () => {
    const at = place(50, 10);
    const { east, north } = moved('ITRF2020', 'ETRS89', at, { at, epoch: 2026.4 });
    expect(Math.hypot(east, north)).toBeGreaterThan(0.8);
    expect(Math.hypot(east, north)).toBeLessThan(1);
    const route = answered(routeBetween(datum('ITRF2020'), datum('ETRS89'), { at, epoch: 2026.4 }));
    expect(route.accuracy).toBeGreaterThanOrEqual(0.1);
    expect(route.accuracy).toBeLessThan(0.2);
  });

  it('NAD83(2011) lies 1–1.6 m from ITRF2014, and NAD83(CSRS)v7 too', () => {
    for (const [name, at] of [
      ['NAD83(2011)', place(40, -100)],
      ['NAD83(CSRS)v7', place(50, -110)],
    ] as const) {
      const { east, north } = moved('ITRF2014', name, at, { at, epoch: 2020 });
      expect(Math.hypot(east, north)).toBeGreaterThan(1);
      expect(Math.hypot(east, north)).toBeLessThan(1.6);
    }
  });

  it('there and back ends where it began', () => {
    const at = place(-37, 144);
    const wishes = { at, epoch: 2026.4 };
    const start = geocentricOf(GRS80, at);
    const there = answered(answered(routeBetween(datum('ITRF2014'), datum('GDA94'), wishes)).apply(start));
    const back = answered(answered(routeBetween(datum('GDA94'), datum('ITRF2014'), wishes)).apply(there));
    expect(Math.hypot(back.x - start.x, back.y - start.y, back.z - start.z)).toBeLessThan(1e-8);
  });

  it('needs an epoch where it depends on time', () => {
    const route = answered(routeBetween(datum('ITRF2014'), datum('GDA2020')));
    expect(refusal(route.apply(geocentricOf(GRS80, place(-37, 144))))).toMatch(/needs the epoch/);
  });

  it('has no steps between a datum and itself', () => {
    expect(answered(routeBetween(datum('ETRS89'), datum('ETRS89'))).steps).toEqual([]);
  });
});

describe('an old datum', () => {
  it('is refused without a named transformation, with those that are published for the place', () => {
    const at = place(52, -1);
    const sentence = refusal(routeBetween(datum('OSGB36'), datum('ETRS89'), { at }));
    expect(sentence).toMatch(/OSGB36 was not realised by GNSS; name the transformation/);
    expect(sentence).toMatch(/EPSG:1314 OSGB36 to WGS 84 \(6\) \(2 m\)/);
  });

  it('is joined through the named one, by code or name, with its stated accuracy and a hundred metres of shift', () => {
    const at = place(52, -1);
    for (const named of ['EPSG:1314', 'OSGB36 to WGS 84 (6)']) {
      const route = answered(routeBetween(datum('OSGB36'), datum('ETRS89'), { at, named }));
      expect(route.accuracy).toBeGreaterThanOrEqual(2);
      const { east, north } = moved('OSGB36', 'ETRS89', at, { at, named });
      expect(Math.hypot(east, north)).toBeGreaterThan(50);
    }
  });

  it('is not joined through a transformation of other datums, or through none', () => {
    const wishes = { named: 'EPSG:8048' };
    expect(refusal(routeBetween(datum('OSGB36'), datum('ETRS89'), wishes))).toMatch(/does not join/);
    expect(refusal(routeBetween(datum('OSGB36'), datum('ETRS89'), { named: 'mine' }))).toMatch(
      /No transformation/,
    );
  });
});

describe('the way is the one that a geodesist would take (common practice)', () => {
  const plausible: readonly (readonly [string, string, number, number, string, RouteWishes?])[] = [
    ['OSGB36', 'ETRS89', 51.5, 0, 'EPSG:1314 EPSG:1149', { named: 'EPSG:1314' }],
    ['OSGB36', 'ETRS89', 60.5, -1, 'EPSG:1314 EPSG:1149', { named: 'EPSG:1314' }],
    ['Amersfoort', 'ETRS89', 52, 5, 'EPSG:9281', { named: 'EPSG:9281' }],
    ['BD72', 'ETRS89', 51, 4.5, 'EPSG:15928', { named: 'EPSG:15928' }],
    ['DHDN', 'ETRS89', 51, 10, 'EPSG:1776', { named: 'EPSG:1776' }],
    ['CH1903+', 'ETRS89', 47, 8, 'EPSG:1647', { named: 'EPSG:1647' }],
    ['NTF', 'RGF93 v1', 47, 2, 'EPSG:1193 EPSG:1671', { named: 'EPSG:1193' }],
    ['TM65', 'ETRS89', 53, -7, 'EPSG:1641 EPSG:1149', { named: 'EPSG:1641' }],
    ['AGD66', 'GDA2020', -37, 144, 'EPSG:1460 EPSG:8048', { named: 'EPSG:1460' }],
    ['NZGD49', 'NZGD2000', -41, 174, 'EPSG:1701', { named: 'EPSG:1701' }],
    ['ETRS89', 'WGS 84', 50, 10, 'EPSG:1149'],
    ['GDA94', 'GDA2020', -37, 144, 'EPSG:8048'],
    ['NAD83(2011)', 'ITRF2014', 40, -100, 'EPSG:8970', { epoch: 2026.4 }],
    ['NAD83(2011)', 'ITRF2020', 40, -100, 'EPSG:8970 EPSG:9991', { epoch: 2026.4 }],
    ['NAD83(2011)', 'NAD83(HARN)', 40, -100, 'EPSG:9774 EPSG:1580'],
    ['NAD83(CSRS)v7', 'ITRF2014', 50, -110, 'EPSG:8265', { epoch: 2026.4 }],
    ['ETRF2000', 'ITRF2014', 50, 10, 'EPSG:8405', { epoch: 2026.4 }],
    ['ITRF2014', 'WGS 84', 50, 10, 'EPSG:9757 own', { epoch: 2026.4 }],
    ['RGF93 v1', 'ETRS89', 47, 2, 'EPSG:1591'],
    // Kyushu did not move in 2011; northern Honshu, Nagano with it, did, and 6698 leaves it out.
    ['JGD2000', 'JGD2011', 33, 131, 'EPSG:6698'],
  ];
  for (const [from, to, φ, λ, codes, wishes] of plausible)
    it(`${from} to ${to}`, () => {
      const route = answered(routeBetween(datum(from), datum(to), { at: place(φ, λ), ...wishes }));
      expect(route.steps.map(({ transformation }) => transformation.code ?? 'own').join(' ')).toBe(codes);
    });

  it('which is none where the ground moved between the two datums', () => {
    for (const [φ, λ] of [
      [36, 138],
      [38.3, 140.9],
    ] as const)
      expect(refusal(routeBetween(datum('JGD2000'), datum('JGD2011'), { at: place(φ, λ) }))).toMatch(
        /No published relation/,
      );
  });

  it('which is none where WGS 84 would have to mean two things', () => {
    for (const [from, φ, λ] of [
      ['JGD2011', 36, 138],
      ['Hartebeesthoek94', -29, 25],
      ['NZGD2000', -41, 174],
    ] as const)
      expect(
        refusal(routeBetween(datum(from), datum('ITRF2014'), { at: place(φ, λ), epoch: 2026.4 })),
      ).toMatch(/No published relation/);
  });
});

it('NZGD2000 stands for ITRF96 at 2000.0 and, beyond, wants a deformation model', () => {
  const at = place(-41, 174);
  const near = answered(routeBetween(datum('ITRF96'), datum('NZGD2000'), { at, epoch: 2000 }));
  expect(near.accuracy).toBe(0.02);
  expect(refusal(routeBetween(datum('ITRF96'), datum('NZGD2000'), { at, epoch: 2026.4 }))).toBeTruthy();
});

function moved(from: string, to: string, at: ReturnType<typeof place>, wishes: RouteWishes) {
  const start = geocentricOf(datum(from).ellipsoid, at);
  const end = answered(answered(routeBetween(datum(from), datum(to), wishes)).apply(start));
  return topocentricBetween(at, start, end);
}

function datum(name: string) {
  const found = datumNamed(name);
  if (found === undefined) throw new Error(`no datum ${name}`);
  return found;
}

function refusal(answer: unknown): string {
  return isRefusal(answer) ? answer.refused : '';
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}
