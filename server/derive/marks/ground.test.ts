import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';
import { listValues } from '../listing.ts';

/** The combined factor is that of PM-14: 1.000020885 · 6375233.9643 / (6375233.9643 + 61.201), worked by hand. */
const SITE = `ground SITE "site grid"
  grid   EPSG:3763
  about  -41203.118 m E, 164904.902 m N
  scale  1.000011285
  shift  100000 m E, 200000 m N
`;
const MARKS = `mark PM-14
  position -41203.118 m E, 164904.902 m N in EPSG:3763
  height 61.201 m ellipsoidal
mark PM-09
  position -40311.882 m E, 165377.404 m N in EPSG:3763
  height 60.111 m ellipsoidal
`;

describe('a ground grid', () => {
  const value = valuesOf(`job "x"\n  grid SITE\n  datum ETRS89\n${SITE}${MARKS}`);

  it('keeps its point but for the shift', () => {
    expect(value('mark/PM-14/east')).toBeCloseTo(58796.882, 6);
    expect(value('mark/PM-14/north')).toBeCloseTo(364904.902, 6);
  });

  it('has a combined factor of one at its point, and distances as on the ground', () => {
    expect(value('mark/PM-14/scale/combined')).toBeCloseTo(1, 8);
    const distance = Math.hypot(
      value('mark/PM-09/east') - value('mark/PM-14/east'),
      value('mark/PM-09/north') - value('mark/PM-14/north'),
    );
    // By hand: √(891.236² + 472.502²) / 1.000011285 = √1017559.7477 / 1.000011285 = 1008.7416655 / 1.000011285.
    expect(distance).toBeCloseTo(1008.7302819, 6);
  });

  it('is where its coordinates are said to be, in a job on the projected grid too', () => {
    const there = valuesOf(
      `job "x"\n  grid EPSG:3763\n${SITE}mark A\n  position 59688.1079424 m E, 365377.3986678 m N in SITE\n`,
    );
    expect(there('mark/A/east')).toBeCloseTo(-40311.882, 4);
    expect(there('mark/A/north')).toBeCloseTo(165377.404, 4);
  });

  it('takes the grid of the job where it names none, but not itself', () => {
    const bare = SITE.replace(/ {2}grid.*\n/, '');
    const there = valuesOf(
      `job "x"\n  grid EPSG:3763\n${bare}mark A\n  position 58796.882 m E, 364904.902 m N in SITE\n`,
    );
    expect(there('mark/A/east')).toBeCloseTo(-41203.118, 6);
    expect(valuesOf.hole(`job "x"\n  grid SITE\n${bare}${MARKS}`, 'mark/PM-14/east')).toMatch(
      /does not say which grid/,
    );
  });

  it.each([
    ['scale', '', /has no scale/],
    ['scale', '  scale 1.2\n', /is not grid distance over ground distance/],
    ['about', '', /point that the ground grid SITE is scaled about is not known/],
    ['about', '  about ? m E, 4 m N\n', /point that the ground grid SITE is scaled about is not known/],
    ['grid', '  grid EPSG:4258\n', /is no grid/],
  ])('without a right `%s` %o is a hole', (word, line, because) => {
    const spoilt = SITE.replace(new RegExp(` {2}${word}.*\\n`), line);
    expect(valuesOf.hole(`job "x"\n  grid SITE\n${spoilt}${MARKS}`, 'mark/PM-14/east')).toMatch(because);
  });
});

describe('a grid by its definition', () => {
  const LOCAL =
    '"+proj=tmerc +lat_0=39.6682583333333 +lon_0=-8.13310833333333 +k=1 +x_0=0 +y_0=0 +ellps=GRS80"';

  it('is in the datum that the job names, where the ellipsoid is the same', () => {
    const value = valuesOf(`job "x"\n  grid ${LOCAL}\n  datum ETRS89\n${MARKS}`);
    expect(value('mark/PM-14/east')).toBeCloseTo(-41203.118, 4);
    expect(value('mark/PM-14/north')).toBeCloseTo(164904.902, 4);
  });

  it('is not keyed before the job names the datum', () => {
    const text = `job "x"\n  grid ${LOCAL}\nmark A\n  position 1 m E, 2 m N\n  height 3 m ellipsoidal\nsetup B on A\n`;
    expect(valuesOf.hole(text, 'setup/B/tell/latitude')).toMatch(/the job must name the datum/);
  });
});

function valuesOf(text: string): (id: string) => number {
  return (id) => {
    const value = listed(text, id);
    if (isHole(value)) throw new Error(value.hole);
    return value.value;
  };
}
valuesOf.hole = (text: string, id: string): string => {
  const value = listed(text, id);
  return isHole(value) ? value.hole : `${value.value}`;
};

function listed(text: string, id: string) {
  const { derivation } = inspect(openDocument('x', text), NO_FILES);
  const found = listValues(derivation).find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found.value;
}
