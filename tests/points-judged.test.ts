/** Points are judged like checks, row by row: none has a number or a class that it has not earned. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import type { RepairedPoint } from '../server/derive/repair/row.ts';
import { inspect } from '../server/inspect.ts';
import { shortfalls } from '../server/record/verdict.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import { shiftOf } from '../server/record/points/table.ts';
import { breach } from './fixes.ts';
import { textAfter } from './pages.ts';
import { filesOnDisk } from './samples.ts';

/** A day that is held from 08:25 to 15:25, from a base that stands from 07:50 to 15:40; an hour ahead of UTC. */
const [DAY = ''] = readFileSync('samples/breakwater.trib', 'utf8').split('points "pickup.csv"');
const COLUMNS = 'name, east m, north m, height m orthometric, time local';

function judged(lines: string, csv = '', change: (text: string) => string = (text) => text) {
  const disk = filesOnDisk();
  const bytes = (path: string) =>
    path.endsWith('own.csv') ? new TextEncoder().encode(csv) : disk.bytes(path);
  const document = openDocument('samples/day.trib', `${change(DAY)}${lines}\nhazard "vehicles"\n`);
  const inspection = inspect(document, { ...disk, bytes });
  const repair = sessionRepair(inspection.session, inspection.derivation);
  const points: RepairedPoint[] = [];
  for (const set of inspection.derivation.points) {
    const repaired = repair.repairer(set);
    set.read((row) => points.push(repaired(row)));
  }
  return { inspection, points, findings: inspection.findings };
}
const rows = (columns: string, ...cells: readonly string[]) =>
  judged(
    `points\n  from BASE\n  by R1\n  state as-broadcast\n  columns ${columns}\n${cells.map((row) => `  row ${row}\n`).join('')}`,
  );
const file = (csv: string, columns = COLUMNS) =>
  judged(`points "own.csv"\n  from BASE\n  by R1\n  state as-broadcast\n  columns ${columns}\n`, csv);

describe('a row outside the time of its base', () => {
  const { inspection, points, findings } = rows(
    COLUMNS,
    'A, -41198.315, 164918.162, 6.306, 06:00',
    'B, -41198.315, 164918.162, 6.306, 09:00',
    'C, -41198.315, 164918.162, 6.306, 15:40:59',
    'D, -41198.315, 164918.162, 6.306, 18:00',
  );
  it('has a class of its own, and no uncertainty', () => {
    expect(points.map(({ label }) => label)).toEqual([
      "outside the base's time",
      'held',
      'not closed',
      "outside the base's time",
    ]);
    expect(points.map(({ horizontal }) => horizontal === null)).toEqual([true, false, false, true]);
  });
  it('is told, with where it lies and how long the base stood', () => {
    const [found] = findings.filter(({ code }) => code === 'time/outside-setup');
    expect(found?.headline).toBe("2 of 4 points are outside the base's time.");
    expect(found?.effect).toContain('between 06:00 and 18:00; BASE stood 07:50 to 15:40');
    expect(found?.action).not.toContain('UTC');
  });
  it.each(['bracketed', 'held', 'checked'] as const)('is not taken by a proof of %s', (required) => {
    expect(shortfalls(inspection, required)).toContainEqual(
      expect.stringContaining("2 points of the rows are outside the base's time"),
    );
  });
});

it('a clock in UTC shows by rows that are outside by just its hours', () => {
  const { findings } = file(
    'A,-41198.315,164918.162,6.306,06:52:00\nB,-41198.315,164918.162,6.306,10:20:00\n',
  );
  const [found] = findings.filter(({ code }) => code === 'time/outside-setup');
  expect(found?.action).toContain('A clock in UTC is 1 h off');
  expect(found?.action).toContain('write time utc');
});

describe('how well a row was observed', () => {
  const columns = `${COLUMNS}, solution, epochs, spread mm`;
  const { points, findings } = rows(
    columns,
    'A, -41198.315, 164918.162, 6.306, 08:36, fixed, 30, 8',
    'B, -41198.315, 164918.162, 6.306, 08:36, float, 3, 400',
    'C, -41198.315, 164918.162, 6.306, 08:36, fixed, 30, 400',
    'D, -41198.315, 164918.162, 6.306, 08:36, float, 30, 8',
  );
  it('counts as it does for a check', () => {
    expect(points.map(({ label }) => label)).toEqual(['held', 'too weak', 'too weak', 'too weak']);
    expect(points.map(({ horizontal }) => horizontal === null)).toEqual([false, true, true, true]);
  });
  it('is told with the first row and its reasons', () => {
    const [found] = findings.filter(({ code }) => code === 'points/unfit');
    expect(found?.headline).toBe('3 of 4 points are observed too weakly.');
    expect(found?.effect).toContain('First row 2');
    expect(found?.effect).toContain('Float, not fixed');
    expect(found?.effect).toContain('spread 400 mm');
  });
  it('is asked of a single point, too', () => {
    const single = judged(
      'point S-1 at 09:00 by R1 from BASE\n  state as-broadcast\n  observed -41198.315 m E, 164918.162 m N, height 6.3 m orthometric\n  quality float, 3 epochs\n',
    );
    expect(single.points.map(({ label, up }) => [label, up])).toEqual([['too weak', null]]);
  });
});

describe('where a row lies', () => {
  const { points, findings } = rows(
    COLUMNS,
    'A, 164918.162, -41198.315, 6.306, 08:36',
    // A hundred kilometres north of the base.
    'B, -41198.315, 264918.162, 6.306, 08:36',
  );
  it('is told by its distance, and that east and north are swapped', () => {
    expect(points.map(({ label, shift }) => [label, shift])).toEqual([
      ['misplaced', null],
      ['misplaced', null],
    ]);
    // √((−41198.315 + 41203.118)² + (164918.162 − 164904.902)²) = 14.1 m; 100 013 m for the other.
    expect(points[0]?.reason).toContain('exchanged, the point lies 14 m from BASE');
    expect(points[1]?.reason).toContain('100 km from BASE');
    expect(findings.filter(({ code }) => code === 'points/unfit')).toHaveLength(1);
  });
});

it('one name for several places is told', () => {
  const { findings } = rows(
    COLUMNS,
    'A, -41198.315, 164918.162, 6.306, 08:36',
    'A, -41178.315, 164918.162, 6.306, 08:37',
    'A, -41158.315, 164918.162, 6.306, 08:38',
  );
  const [found] = findings.filter(({ code }) => code === 'points/unfit');
  expect(found?.headline).toBe('The name A stands for places 40.000 m apart.');
});

describe('a row that cannot be read', () => {
  it('gives no number: 87,402 is no height of 87', () => {
    const { points } = file('A,-41198.315,164918.162,87,402,08:36\nB,-41198.315,164918.162,87.402,08:36\n');
    expect(points.map(({ row, third, label }) => [row.name, third, label])).toEqual([
      ['A', NaN, 'unreadable'],
      ['B', 87.402, 'held'],
    ]);
  });
  it('is counted in one finding, with how to write decimal commas', () => {
    const { findings } = file('A,-41198.315,164918.162,87,402,08:36\n'.repeat(21));
    const told = findings.filter(({ code }) => code === 'points/unreadable');
    expect(told).toHaveLength(1);
    expect(told[0]?.message).toContain('21 rows');
    expect(told[0]?.message).toContain('decimal comma');
  });
});

describe('decimal commas that nobody has declared', () => {
  const csv = Array.from({ length: 21 }, (_, index) => `P${index};-41198,315;164918,162;6,306;08:36:00\n`);
  const { inspection, findings } = file(csv.join(''));
  const told = findings.filter(({ code }) => code === 'points/unreadable');
  it('are one finding, which says so', () => {
    expect(told).toHaveLength(1);
    expect(told[0]?.message).toContain('Decimal comma in 21 rows, first east "-41198,315".');
  });
  it('are read once its fix is taken, which writes no fact', () => {
    const [fix] = told[0]?.fixes ?? [];
    if (!fix) throw new Error('there is a fix');
    expect(breach(inspection, fix)).toBeNull();
    const text = textAfter(inspection, fix) ?? '';
    const lines = text.slice(text.indexOf('points "own.csv"')).replace(/\nhazard [^]*$/, '');
    const after = judged(lines, csv.join(''));
    expect(after.findings.filter(({ code }) => code === 'points/unreadable')).toEqual([]);
    expect(after.points).toHaveLength(21);
    expect(after.points[0]).toMatchObject({ first: -41198.315, second: 164918.162, third: 6.306 });
  });
});

it('without a height there is no uncertainty of it, and no shift', () => {
  const [point] = rows(COLUMNS, 'A, -41198.315, 164918.162, , 08:36').points;
  expect(point?.up).toBeNull();
  expect(point?.horizontal).toBeGreaterThan(0);
  expect(point && shiftOf(point, 'up')).toBeNull();
});

it('a shift that nobody knows is none, and not nought', () => {
  const [known, unknown] = rows(
    COLUMNS,
    'A, -41198.315, 164918.162, 6.306, 08:36',
    'B, -41198.315, 164918.162, 6.306, 06:00',
  ).points;
  expect(known && shiftOf(known, 'east')).toBe(0);
  expect(unknown && shiftOf(unknown, 'east')).toBeNull();
});

describe('a point in the minute in which the base was keyed anew', () => {
  /** Until then the antenna height lacked the extension of 250 mm. */
  const day = (at: string) =>
    judged(
      `points\n  from BASE\n  by R1\n  state as-broadcast\n  columns ${COLUMNS}\n` +
        ['08:59:59', '09:00:30', '09:01:00']
          .map((time, index) => `  row P${index}, -41198.315, 164918.162, 6.306, ${time}\n`)
          .join(''),
      '',
      (text) =>
        text
          .replace(
            '  keyed       antenna-height 1.533 m to arp\n',
            `  keyed       antenna-height 1.283 m to arp\n  keyed       antenna-height 1.533 m to arp, at ${at}\n`,
          )
          .replace('height 5.203 m orthometric', 'height 4.953 m orthometric'),
    );
  it('is in doubt, without a shift and an uncertainty', () => {
    const { points } = day('09:00');
    const [before, during, after] = points;
    expect(before?.shift?.up).toBeCloseTo(0.25, 3);
    expect(during).toMatchObject({ label: 'in doubt', shift: null, horizontal: null, up: null });
    expect(during?.reason).toContain('in the minute in which BASE was keyed anew');
    expect(after && shiftOf(after, 'up')).toBe(0);
  });
  it('is none where the seconds tell', () => {
    const { points } = day('09:00:15');
    expect(points.map((point) => Math.round(1000 * (shiftOf(point, 'up') ?? NaN)))).toEqual([250, 0, 0]);
    expect(points[1]?.label).not.toBe('in doubt');
  });
});
