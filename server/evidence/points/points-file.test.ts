import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Column, ColumnPlan } from './column-plan.ts';
import type { PointRow } from './points-file.ts';
import { pointsReader } from './points-file.ts';

const columns: readonly Column[] = [
  { role: 'name' },
  { role: 'east', unit: 'm' },
  { role: 'north', unit: 'm' },
  { role: 'height', unit: 'm', surface: 'orthometric' },
  { role: 'code' },
  { role: 'time', clock: 'local' },
];
const plan: ColumnPlan = {
  columns,
  separator: ',',
  decimal: '.',
  heading: 'none',
  date: '2026-05-19',
  utcOffset: 3600,
};

function read(text: string, changes: Partial<ColumnPlan> = {}, chunk = 9) {
  const rows: PointRow[] = [];
  const reader = pointsReader({ ...plan, ...changes }, (row) => rows.push(row));
  const bytes = new TextEncoder().encode(text);
  for (let from = 0; from < bytes.length; from += chunk) reader.push(bytes.subarray(from, from + chunk));
  return { rows, ...reader.finish() };
}
const sentences = (facts: ReturnType<typeof read>) => facts.problems.map((problem) => problem.sentence);

describe('a points file', () => {
  it('is read by the declared columns', () => {
    const { rows, problems } = read('101,-41203.118,164904.902,6.284,TOE,08:25:30\n"102, a",1,2,,,\n');
    expect(problems).toEqual([]);
    expect(rows[0]).toMatchObject({
      line: 1,
      name: '101',
      east: -41203.118,
      north: 164904.902,
      height: 6.284,
      code: 'TOE',
    });
    expect(rows[0]?.time).toBe(Date.UTC(2026, 4, 19, 7, 25, 30) / 1000);
    expect(rows[1]).toMatchObject({
      line: 2,
      name: '102, a',
      height: undefined,
      code: undefined,
      time: undefined,
    });
  });

  it('is read by its own heading, in any order', () => {
    const { rows, problems, headings } = read('Northing;Id;Easting;Note\n2,5;P1;-1,25;x\n', {
      separator: ';',
      decimal: ',',
      heading: 'names',
      columns: [
        { role: 'name', heading: 'id' },
        { role: 'east', heading: 'Easting' },
        { role: 'north', heading: 'Northing' },
      ],
    });
    expect(headings).toEqual(['Northing', 'Id', 'Easting', 'Note']);
    expect(rows).toMatchObject([{ line: 2, name: 'P1', east: -1.25, north: 2.5 }]);
    expect(problems).toEqual([]);
  });

  it('tells a heading that is not there', () => {
    const facts = read('Id,E\nP1,5\n', {
      heading: 'names',
      columns: [
        { role: 'name', heading: 'Id' },
        { role: 'north', heading: 'N' },
      ],
    });
    expect(sentences(facts)).toEqual(['The file has no column "N".']);
    expect(facts.rows[0]).toMatchObject({ name: 'P1', north: undefined });
  });

  it('passes over a heading that is only to be skipped, and says what looks like one', () => {
    const text = 'name,east,north,height,code,time\n1,2,3,4,5,08:00\n';
    expect(read(text, { heading: 'skip' }).rows).toHaveLength(1);
    expect(read(text).problems[0]).toMatchObject({ line: 1 });
    expect(sentences(read(text))[0]).toMatch(/looks like a heading/);
  });

  it.each([
    ['m', 1],
    ['mm', 0.001],
    ['cm', 0.01],
    ['km', 1000],
    ['ft', 0.3048],
    ['usft', 1200 / 3937],
  ] as const)('takes %s for %d m', (unit, factor) => {
    const { rows } = read('P,1000\n', { columns: [{ role: 'name' }, { role: 'x', unit }] });
    expect(rows[0]?.x).toBeCloseTo(1000 * factor, 9);
  });

  it('turns westings and southings round', () => {
    const { rows } = read('5,7\n', { columns: [{ role: 'west' }, { role: 'south' }] });
    expect(rows[0]).toMatchObject({ east: -5, north: -7 });
  });

  it('reads angles in decimal degrees and in degrees, minutes and seconds', () => {
    const angles = (latitude: string, longitude: string, unit: '°' | 'dms') =>
      read(`${latitude};${longitude}\n`, {
        separator: ';',
        columns: [
          { role: 'latitude', unit },
          { role: 'longitude', unit },
        ],
      });
    expect(angles('41.152273017', '-8.623964105', '°').rows[0]).toMatchObject({
      latitude: 41.152273017,
      longitude: -8.623964105,
    });
    expect(angles('41.5 N', '8.5°W', '°').rows[0]).toMatchObject({ latitude: 41.5, longitude: -8.5 });
    const sexagesimal = angles('41°09\'08.18286"N', '-8 37 26.27078', 'dms').rows[0];
    expect(sexagesimal?.latitude).toBeCloseTo(41 + 9 / 60 + 8.18286 / 3600, 12);
    expect(sexagesimal?.longitude).toBeCloseTo(-(8 + 37 / 60 + 26.27078 / 3600), 12);
    // A minus of its own sign, before no whole degree too.
    expect(angles('\u22120 30 36', '\u22128 30 36', 'dms').rows[0]?.latitude).toBeCloseTo(-0.51, 12);
    expect(angles('\u22120 30 36', '\u22128 30 36', 'dms').rows[0]?.longitude).toBeCloseTo(-8.51, 12);
    for (const [wrong, unit] of [
      ['--0 30 36', 'dms'],
      ['91', '°'],
      ['-41 N', '°'],
      ['41.5 E', '°'],
      ['41 60 0', 'dms'],
      ['41 09', 'dms'],
    ] as const) {
      const facts = angles(wrong, '8', unit);
      expect(facts.rows[0]?.latitude).toBeUndefined();
      expect(facts.problems.length).toBeGreaterThan(0);
    }
  });

  it.each([
    ['08:25', 'utc', Date.UTC(2026, 4, 19, 8, 25)],
    ['8:25', 'local', Date.UTC(2026, 4, 19, 7, 25)],
    ['08:25:18', 'gps', Date.UTC(2026, 4, 19, 8, 25)],
    ['00:10', 'local', Date.UTC(2026, 4, 18, 23, 10)],
    ['2026-05-20 08:25:00.5', 'utc', Date.UTC(2026, 4, 20, 8, 25, 0, 500)],
    ['2026-05-20T08:25:00Z', 'local', Date.UTC(2026, 4, 20, 8, 25)],
    ['2026-05-20T08:25:00+02:00', 'local', Date.UTC(2026, 4, 20, 6, 25)],
  ] as const)('puts %s by %s time on UTC', (cell, clock, milliseconds) => {
    const { rows, problems } = read(`${cell}\n`, { columns: [{ role: 'time', clock }] });
    expect(problems).toEqual([]);
    expect(rows[0]?.time).toBe(milliseconds / 1000);
  });

  it.each([
    ['20:40:00', 'utc', 12, Date.UTC(2026, 4, 18, 20, 40)],
    ['20:40Z', 'local', 12, Date.UTC(2026, 4, 18, 20, 40)],
    ['00:30:18', 'gps', -6, Date.UTC(2026, 4, 20, 0, 30)],
    ['12:10:00', 'utc', -6, Date.UTC(2026, 4, 19, 12, 10)],
  ] as const)(
    'puts %s by %s time on the local day, %s h ahead of UTC',
    (cell, clock, ahead, milliseconds) => {
      const { rows } = read(`${cell}\n`, { columns: [{ role: 'time', clock }], utcOffset: 3600 * ahead });
      expect(rows[0]?.time).toBe(milliseconds / 1000);
    },
  );

  it('puts a time on the next day where a base stood then, and none on the day itself', () => {
    const stood = [
      { from: Date.UTC(2026, 4, 19, 21, 30) / 1000, until: Date.UTC(2026, 4, 20, 1, 40) / 1000 },
    ];
    const times = ['23:10:00', '00:10:00', '02:40', '02:41', '22:29'];
    const { rows } = read(times.join('\n'), { columns: [{ role: 'time', clock: 'local' }], stood });
    expect(rows.map(({ time = NaN }) => new Date(time * 1000).toISOString().slice(8, 16))).toEqual([
      '19T22:10',
      '19T23:10',
      '20T01:40',
      '19T01:41',
      '19T21:29',
    ]);
  });

  it('keeps a time of day where no date is known', () => {
    const found: PointRow[] = [];
    const written = { separator: ',', decimal: '.', heading: 'none' } as const;
    const local: ColumnPlan = { ...written, utcOffset: 3600, columns: [{ role: 'time', clock: 'local' }] };
    const reader = pointsReader(local, (row) => found.push(row));
    reader.push(new TextEncoder().encode('00:30\n'));
    reader.finish();
    expect(found[0]).toMatchObject({ time: undefined, timeOfDay: 23.5 * 3600 });
  });

  it('leaves a hole, never a zero, for what cannot be read, and names the line', () => {
    for (const cell of ['1,5', '1 234.5', '1e5', '--1', '.', '1.', 'abc', '0x10', 'NaN', 'Infinity']) {
      const facts = read(`P1;10;20\nP2;${cell};20\n`, { separator: ';', columns: columns.slice(0, 3) });
      expect(facts.rows[1]?.east).toBeUndefined();
      expect(facts.problems).toMatchObject([{ line: 2 }]);
      expect(sentences(facts)[0]).toContain(`east "${cell}"`);
    }
    const missing = read('P1;;20\n', { separator: ';', columns: columns.slice(0, 3) });
    expect(sentences(missing)).toEqual(['This row cannot be read in full: no east.']);
    const short = read('P1;10\n', { separator: ';', columns: columns.slice(0, 3) });
    expect(sentences(short)).toEqual(['This row cannot be read in full: no north.']);
  });

  it('takes no point for a decimal sign where that is a comma, since it may part thousands', () => {
    for (const cell of ['165.377', '-5.400', '\u22125.400', '1234567890.1234567890']) {
      const facts = read(`P1;10,5;${cell}\n`, {
        ...{ separator: ';', decimal: ',', columns: columns.slice(0, 3) },
      });
      expect(facts.rows[0]).toMatchObject({ east: 10.5, north: undefined });
      expect(sentences(facts)[0]).toContain(`north "${cell}"`);
    }
  });

  it('uses no row with more cells than there are columns, and tells them once', () => {
    const facts = read('1,2,3,4,5,08:00,extra\n1,2,3,4,5,08:00,extra\n1,2,3,4,5,08:00,\n');
    expect(sentences(facts)).toEqual([
      expect.stringContaining('2 rows have more cells than the 6 columns, first 7: not used.'),
    ]);
    expect(facts.rows.map(({ isUnreadable }) => isUnreadable)).toEqual([true, true, false]);
    expect(facts.rows[0]).toMatchObject({ east: undefined, height: undefined });
  });

  it.each([
    [{ separator: ',', decimal: ',' }, /both the separator and the decimal/],
    [{ columns: [] }, /What the columns mean/],
    [{ columns: [{ role: 'east' }, { role: 'east' }] }, /Two columns are called east/],
    [{ heading: 'names' }, /which heading/],
  ] as const)('says why a plan cannot be followed: %j', (changes, sentence) => {
    const facts = read('1,2\n', changes as Partial<ColumnPlan>);
    expect(sentences(facts)[0]).toMatch(sentence);
    expect(facts.rows).toHaveLength(0);
  });

  it('says when letters were lost, and when nothing is there', () => {
    const reader = pointsReader({ ...plan, columns: [{ role: 'name' }] }, () => undefined);
    reader.push(Uint8Array.of(0x4d, 0xfc, 0x6c, 0x0a));
    expect(reader.finish().problems).toMatchObject([{ line: 1, sentence: expect.stringMatching(/UTF-8/) }]);
    expect(sentences(read(''))).toEqual(['There is no point in this file.']);
  });

  it('reads every number as written, whatever the chunks', () => {
    const number = fc.tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 1, max: 64 }),
        (pairs, chunk) => {
          const text = ([digits, places]: readonly [number, number]) =>
            (digits / 10 ** places).toFixed(places);
          const file = pairs.map(([east, north]) => `P,${text(east)},${text(north)}\r\n`).join('');
          const { rows } = read(file, { columns: columns.slice(0, 3) }, chunk);
          expect(rows.map((row) => [row.east, row.north])).toEqual(
            pairs.map(([east, north]) => [Number(text(east)), Number(text(north))]),
          );
        },
      ),
    );
  });

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ maxLength: 100 }), { maxLength: 8 }),
        fc.constantFrom('none', 'skip', 'names'),
        (chunks, heading) => {
          const reader = pointsReader({ ...plan, heading }, () => undefined);
          for (const chunk of chunks) reader.push(chunk);
          expect(reader.finish().rowCount).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
