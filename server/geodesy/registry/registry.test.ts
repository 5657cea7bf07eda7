import { describe, expect, it } from 'vitest';
import { latitude, longitude } from '../../quantities/brands.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { distanceOutside } from '../area.ts';
import { datumNamed, horizontalSystemOf, projectedSystemOf, searchSystems, systemOf } from './registry.ts';

describe('the register', () => {
  it('knows a grid by its code in any usual writing, and gives the same object each time', () => {
    const system = systemOf('EPSG:3763');
    expect(system).toMatchObject({ code: 'EPSG:3763', name: 'ETRS89 / Portugal TM06', kind: 'projected' });
    expect(systemOf('epsg:3763')).toBe(system);
    expect(systemOf(' 3763 ')).toBe(system);
  });

  it('knows geographic, geocentric, height and compound systems', () => {
    expect(systemOf('EPSG:4258')).toMatchObject({ kind: 'geographic', datum: { name: 'ETRS89' } });
    expect(systemOf('EPSG:7789')).toMatchObject({ kind: 'geocentric', datum: { name: 'ITRF2014' } });
    expect(systemOf('EPSG:5711')).toMatchObject({ kind: 'vertical', datumName: 'Australian Height Datum' });
    expect(systemOf('EPSG:7415')).toMatchObject({
      kind: 'compound',
      horizontal: { code: 'EPSG:28992' },
      vertical: { code: 'EPSG:5709' },
    });
    expect(horizontalSystemOf('EPSG:7415')).toBe(systemOf('EPSG:28992'));
  });

  it.each([
    ['EPSG:999999', /not an EPSG code/],
    ['EPSG:99999', /not in the register/],
    ['3763; drop', /not an EPSG code/],
    ['', /not an EPSG code/],
    ['EPSG:4600', /without its ellipsoid/],
  ])('refuses %s', (code, reason) => {
    const answer = systemOf(code);
    expect(isRefusal(answer) && answer.refused).toMatch(reason);
  });

  it('refuses a height system, or one without a grid, where a grid is wanted', () => {
    expect(projectedSystemOf('EPSG:5711')).toHaveProperty('refused');
    expect(projectedSystemOf('EPSG:4258')).toHaveProperty('refused');
  });

  it.each([
    ['EPSG:3763', 'gnss'],
    ['EPSG:28355', 'gnss'],
    ['EPSG:7855', 'gnss'],
    ['EPSG:2193', 'gnss'],
    ['EPSG:6589', 'gnss'],
    ['EPSG:31983', 'gnss'],
    ['EPSG:6677', 'gnss'],
    ['EPSG:32631', 'gnss'],
    ['EPSG:27700', 'terrestrial'],
    ['EPSG:28992', 'terrestrial'],
    ['EPSG:31370', 'terrestrial'],
    ['EPSG:26701', 'terrestrial'],
    ['EPSG:2100', 'terrestrial'],
    ['EPSG:3405', 'terrestrial'],
  ])('%s is on a datum realised as: %s', (code, realisation) => {
    const system = projectedSystemOf(code);
    expect(isRefusal(system) ? undefined : system.datum.realisation).toBe(realisation);
  });

  it('knows datums by name', () => {
    expect(datumNamed('gda2020')?.geographic).toBe('EPSG:7844');
    expect(datumNamed('NZGD 2000')?.ellipsoid.name).toBe('GRS 1980');
    expect(datumNamed('nowhere')).toBeUndefined();
  });

  it('finds systems by words of their names and areas, without accents', () => {
    expect(searchSystems('portugal tm06')[0]?.code).toBe('EPSG:3763');
    expect(searchSystems('27700')[0]?.code).toBe('EPSG:27700');
    expect(searchSystems('british national grid').map(({ code }) => code)).toContain('EPSG:27700');
    expect(searchSystems('')).toEqual([]);
  });
});

describe('the area of use', () => {
  const at = (φ: number, λ: number) => ({ latitude: latitude(φ), longitude: longitude(λ) });
  const area = { name: 'across 180°', south: -20, west: 170, north: -10, east: -170 };

  it('may cross 180°', () => {
    expect(distanceOutside(area, at(-15, 179))).toBe(0);
    expect(distanceOutside(area, at(-15, -179))).toBe(0);
    expect(distanceOutside(area, at(-15, 169))).toBeGreaterThan(100_000);
    expect(distanceOutside(area, at(-15, -169))).toBeGreaterThan(100_000);
  });

  it('is a degree of latitude, 111 km, away', () => {
    expect(distanceOutside(area, at(-9, 175)) / 1000).toBeCloseTo(110.6, 0);
  });
});
