/** A transformation that is named is told outside its area, and one that is chosen is never one that leaves the place out. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { routeBetween } from '../server/geodesy/datums/route.ts';
import { datumNamed } from '../server/geodesy/registry/registry.ts';
import { inspect } from '../server/inspect.ts';
import { latitude, longitude } from '../server/quantities/brands.ts';
import { isRefusal } from '../server/quantities/refusal.ts';
import { NO_FILES } from '../server/session/files.ts';

const told = (text: string) =>
  inspect(openDocument('day.trib', text), NO_FILES).findings.filter(
    ({ code }) => code === 'position/out-of-area',
  );

describe('a named transformation', () => {
  /** EPSG:1632 is published for mainland Spain (EPSG dataset). */
  const mark = (by: string, place: string) =>
    `job "x"\n  grid EPSG:25832\nmark A\n  position ${place} in EPSG:4230 by ${by}\n  height 50 m orthometric\n`;

  it('is told at its name, outside its area', () => {
    const [found, ...more] = told(mark('EPSG:1632', '53.5° N, 9.9° E'));
    expect(found?.severity).toBe('error');
    expect(found?.message).toMatch(/A lies .* outside the area of EPSG:1632/);
    expect(found && found.place.entry.text.slice(found.place.start, found.place.end)).toBe('EPSG:1632');
    expect(more).toEqual([]);
  });

  it('is silent within its area', () => {
    const text = mark('EPSG:1632', '40.4° N, 3.7° W').replace('25832', '25830');
    expect(told(text)).toEqual([]);
  });

  it('is told where the job names it for what is keyed', () => {
    const text = (east: number, north: number, grid: string) =>
      `job "x"\n  grid ${grid}\n  datum EPSG:4258 by EPSG:1632\nmark A\n  position ${east} m E, ${north} m N\n  height 5 m orthometric\nantenna A1\nsetup S on A with A1 at 08:00\n`;
    expect(told(text(560000, 5930000, 'EPSG:23032')).map(({ severity }) => severity)).toEqual(['error']);
    expect(told(text(440000, 4470000, 'EPSG:23030'))).toEqual([]);
  });
});

describe('a transformation that is chosen', () => {
  const way = (φ: number, λ: number) => {
    const [from, to] = ['JGD2000', 'JGD2011'].map((name) => datumNamed(name));
    if (!from || !to) throw new Error('not in the register');
    return routeBetween(from, to, { at: { latitude: latitude(φ), longitude: longitude(λ) } });
  };

  /** EPSG:6698 leaves out the prefectures that moved in 2011 by up to metres: Sendai does, Fukuoka does not (EPSG dataset). */
  it('never leaves the place out', () => {
    const sendai = way(38.27, 140.87);
    const codes = isRefusal(sendai) ? [] : sendai.steps.map(({ transformation }) => transformation.code);
    expect(codes).not.toContain('EPSG:6698');
    expect(codes).not.toContain('EPSG:1826');
    const fukuoka = way(33.59, 130.4);
    expect(isRefusal(fukuoka) ? [] : fukuoka.steps.map(({ transformation }) => transformation.code)).toEqual([
      'EPSG:6698',
    ]);
  });
});
