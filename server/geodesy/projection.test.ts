import { describe, expect, it } from 'vitest';
import { gridEast, gridNorth, latitude, longitude } from '../quantities/brands.ts';
import { isRefusal, type Refusal } from '../quantities/refusal.ts';
import { forward, inverse } from './projection.ts';
import { systemFrom } from './registry/definition.ts';
import { projectedSystemOf } from './registry/registry.ts';
import { gridScaleAt } from './scale.ts';
import type { ProjectedSystem } from './system.ts';

const at = (φ: number, λ: number) => ({ latitude: latitude(φ), longitude: longitude(λ) });
const grid = (east: number, north: number) => ({ east: gridEast(east), north: gridNorth(north) });

describe('the guard around proj4', () => {
  const portugal = system('EPSG:3763');

  it.each([
    ['a latitude past the pole', at(95, -8)],
    ['no latitude', at(NaN, -8)],
    ['no longitude', at(41, Infinity)],
    ['the other side of the earth', at(-41, 172)],
  ])('refuses %s', (_, position) => {
    expect(refusal(forward(portugal, position))).toMatch(/latitude|longitude|too far/);
  });

  it.each([
    ['not a number', grid(NaN, 0)],
    ['beyond the earth', grid(1e9, 0)],
    ['where nothing projects to', grid(9e7, 9e7)],
  ])('refuses grid coordinates that are %s', (_, position) => {
    expect(refusal(inverse(portugal, position))).toMatch(/fits on the earth|too far/);
  });

  it('refuses systems that are not computed, with the method’s name', () => {
    expect(refusal(forward(system('EPSG:2296'), at(64, -40)))).toMatch(/Lambert Conic Conformal \(West/);
    expect(refusal(forward(system('EPSG:3857'), at(41, -8)))).toMatch(/web map/);
  });

  it('never shifts between datums: the centre of a grid on an old ellipsoid is its false origin', () => {
    const british = answered(forward(system('EPSG:27700'), at(49, -2)));
    expect(british.east).toBeCloseTo(400000, 6);
    expect(british.north).toBeCloseTo(-100000, 6);
  });

  it('counts longitudes from Greenwich also where the system counts from Paris', () => {
    // IGN: the meridian of Paris is 2°20′14.025″ east of Greenwich, and the Lambert zones’ central one.
    const paris = 2 + 20 / 60 + 14.025 / 3600;
    expect(answered(forward(system('EPSG:27572'), at(46.8, paris))).east).toBeCloseTo(600000, 4);
  });
});

describe('definitions', () => {
  it.each([
    ['+proj=utm +zone=29', /names no datum and no ellipsoid/],
    ['+proj=utm +zone=61 +ellps=GRS80', /zone/],
    ['+proj=tmerc +lat_O=4 +ellps=GRS80', /lat_O/],
    ['+proj=tmerc +lat_0=x +ellps=GRS80', /lat_0/],
    ['+proj=tmerc +lat_0=1 +lat_0=2 +ellps=GRS80', /given twice/],
    ['+proj=tmerc +ellps=gsr80', /gsr80/],
    ['+proj=ob_tran +o_proj=longlat +ellps=GRS80', /o_proj|ob_tran/],
    ['+init=epsg:4326', /no \+proj/],
    ['+proj=tmerc +a=1 +b=1', /not that of the earth/],
    ['+proj=tmerc +ellps=GRS80 +units=furlong', /furlong/],
    ['+proj=tmerc +ellps=GRS80 +axis=eeu', /axis/],
    ['PROJCS["x"', /not whole/],
    ['PROJCS["x"]', /no geographic system/],
    ['VERT_CS["x"]', /not a kind of coordinate system/],
    ['hello', /neither a PROJ string/],
    ['', /empty/],
    [`PROJCS${'['.repeat(50)}`, /not whole/],
    [`+proj=${'X'.repeat(5000)}`, /longer/],
  ])('“%s” is refused', (text, reason) => {
    expect(refusal(systemFrom(text))).toMatch(reason);
  });

  it('name the datum where it is one of the register, and say so where it is not', () => {
    const named = answered(systemFrom('+proj=utm +zone=29 +datum=WGS84'));
    expect(named.datum).toMatchObject({ name: 'WGS 84', realisation: 'gnss' });
    const bare = answered(systemFrom('+proj=utm +zone=29 +ellps=GRS80'));
    expect(bare.datum.realisation).toBe('unknown');
    expect(bare.datum.caution).toMatch(/no datum/);
  });
});

describe('scale', () => {
  it('of a grid that is not conformal lies between its smallest and largest', () => {
    const albers = answered(gridScaleAt(system('EPSG:3005'), at(54, -126)));
    expect(albers.conformal).toBe(false);
    expect(albers.smallest).toBeLessThan(albers.point);
    expect(albers.largest).toBeGreaterThan(albers.point);
    // An equal-area grid keeps areas.
    expect(albers.point).toBeCloseTo(1, 9);
  });

  it('on the central meridian is the projection’s own, and the convergence nothing', () => {
    const centre = answered(gridScaleAt(system('EPSG:32631'), at(50, 3)));
    expect(centre.point).toBeCloseTo(0.9996, 10);
    expect(centre.convergence).toBeCloseTo(0, 10);
  });

  it('east of the central meridian in the north, grid north lies east of true north', () => {
    expect(answered(gridScaleAt(system('EPSG:32631'), at(50, 4))).convergence).toBeGreaterThan(0.7);
  });

  it('is refused at a pole', () => {
    expect(refusal(gridScaleAt(system('EPSG:32661'), at(90, 0)))).toMatch(/pole/);
  });
});

function system(code: string): ProjectedSystem {
  return answered(projectedSystemOf(code));
}

function refusal(answer: unknown): string {
  return isRefusal(answer) ? answer.refused : '';
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}
