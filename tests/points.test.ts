/** Points in, from files with their own habits and faults, and out, as tables, features and LandXML. */
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { UNITS } from '../grammar/units.ts';
import type { PointRow } from '../server/evidence/points/points-file.ts';
import { pointsReader } from '../server/evidence/points/points-file.ts';
import { inspect } from '../server/inspect.ts';
import { fixed } from '../server/record/points/numbers.ts';
import { textCell } from '../server/record/points/table.ts';
import { NO_FILES, type Files } from '../server/session/files.ts';
import { folderWith, tribrach } from './command-line-run.ts';
import { ask, isInstalled } from './reference/proj-tools.ts';

/** The height was keyed without its extension of 250 mm. */
const SESSION = `job "Breakwater, north arm"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  phase-centre 92 mm above arp
rover R1
  site-calibration none
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.283 m to arp
check OPEN on PM-09 at 08:25 by R1
  observed    -40311.882 m E, 165377.404 m N, height 4.946 m orthometric
check CLOSE on PM-09 at 15:25 by R1
  observed    -40311.882 m E, 165377.404 m N, height 4.946 m orthometric
`;
const points = (columns: string, more = '', file = 'pickup.csv') =>
  `points "${file}"\n  from        BASE\n  by          R1\n  state       as-broadcast\n  columns     ${columns}\n${more}`;
const USUAL = points('name, east m, north m, height m orthometric, code, time local');
const PICKUP = `101,-40990.120,165002.331,5.620,KB,09:12
102,-40991.405,165003.207,5.611,KB,09:13
"=HYPERLINK(""x"")",-40992.000,165004.000,5.600,"kerb, top",15:30
`;

const removals: (() => void)[] = [];
afterEach(() => removals.splice(0).forEach((remove) => remove()));
function folder(files: Readonly<Record<string, string>>) {
  const made = folderWith(files);
  removals.push(made.remove);
  return made;
}
const rowsOf = (path: string, delimiter = ',') =>
  parse(readFileSync(path, 'utf8'), { columns: true, delimiter }) as Record<string, string>[];

describe('tribrach points', () => {
  it('writes what it repaired with an account, and leaves what it read alone', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    const { status, printed, complained } = await tribrach([
      'points',
      at.path('day.trib'),
      '--out',
      at.path('out'),
    ]);
    expect([status, complained]).toEqual([0, '']);
    expect(printed).toMatch(/3 of 3 points repaired/);
    expect(readFileSync(at.path('pickup.csv'), 'utf8')).toBe(PICKUP);
    expect(readdirSync(at.path('out')).sort()).toEqual(['account.md', 'pickup.csv']);
    const rows = rowsOf(at.path('out/pickup.csv'));
    expect(rows.map((row) => row['name'])).toEqual(['101', '102', `'=HYPERLINK("x")`]);
    // The antenna stood 250 mm higher than it was told, to the digits of the taped height (1.284² − 0.048²)^½ + 0.250.
    expect(Number(rows[0]?.['shift up (m)'])).toBeCloseTo(
      Math.sqrt(1.284 ** 2 - 0.048 ** 2) + 0.25 - 1.283,
      3,
    );
    expect(Number(rows[0]?.['height (m)'])).toBeCloseTo(5.62 + Number(rows[0]?.['shift up (m)']), 4);
    expect(rows.map((row) => row['class'])).toEqual([
      'in doubt, repaired',
      'in doubt, repaired',
      'in doubt, repaired',
    ]);
    expect(rows.map((row) => row['state'])).toEqual(['corrected', 'corrected', 'corrected']);
    expect(rows[0]?.['time (UTC)']).toBe('2026-05-19T08:12:00Z');
    const account = readFileSync(at.path('out/account.md'), 'utf8');
    expect(account).toMatch(/put its antenna .* too low/);
    expect(account).toMatch(/\| OPEN \| fails \| .* \| passes \|/);
    expect(account).toMatch(/SHA-256 [0-9a-f]{64}/);
  });

  // A unit that is added to the language is known to a column as well, and written back in it.
  it.each(UNITS.filter(({ measures }) => measures === 'length'))(
    'reads and writes a column in $unit',
    async ({ unit, factor }) => {
      const own = (metres: number) => (metres / (factor ?? NaN)).toFixed(9);
      const at = folder({
        'day.trib':
          SESSION + points(`name, east ${unit}, north ${unit}, height ${unit} orthometric, code, time local`),
        'pickup.csv': `101,${own(-40990.12)},${own(165002.331)},${own(5.62)},KB,09:12\n`,
      });
      await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
      const [row = {}] = rowsOf(at.path('out/pickup.csv'));
      const metres = (column: string) => Number(row[`${column} (${unit})`]) * (factor ?? NaN);
      expect(metres('east')).toBeCloseTo(-40990.12, 3);
      expect(metres('height')).toBeCloseTo(5.62 + Math.sqrt(1.284 ** 2 - 0.048 ** 2) + 0.25 - 1.283, 3);
    },
  );

  it('judges a night by the day that each point is of', async () => {
    const night = SESSION.replace('at 07:50 until 15:40', 'at 22:30 until 2026-05-20 02:40')
      .replace('at 07:52', 'at 22:32')
      .replace('antenna-height 1.283 m to arp', '$&\n  keyed       antenna-height 1.533 m to arp at 23:30')
      .replace('at 08:25', 'at 22:50')
      .replace('at 15:25', 'at 2026-05-20 02:25')
      .replace(/4\.946(?![^]*4\.946)/, '5.196');
    const pickup = [
      '1,-40990.12,165002.33,5.62,K,23:10:00',
      '2,-40990.12,165002.33,5.87,K,23:40:00',
      '3,-40990.12,165002.33,5.87,K,00:10:00',
    ];
    const at = folder({ 'day.trib': night + USUAL, 'pickup.csv': pickup.join('\n') });
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    const heights = rowsOf(at.path('out/pickup.csv')).map((row) => Number(row['height (m)']).toFixed(3));
    expect(heights).toEqual(['5.870', '5.870', '5.870']);
  });

  it('measures the way to a base across the meridian of 180° the short way round', async () => {
    const place = (longitude: string) => `position    16°30'00.0"S, ${longitude} in EPSG:4326`;
    const far = SESSION.replace('grid        EPSG:3763', 'grid        EPSG:32701')
      .replace('position    -41203.118 m E, 164904.902 m N', place(`179°59'58.0"E`))
      .replace('position    -40311.882 m E, 165377.404 m N', place(`179°59'58.0"W`))
      .replace(`41°09'08.18286"N, 8°37'26.27078"W`, `16°30'00.0"S, 179°59'58.0"E`)
      .replaceAll('-40311.882 m E, 165377.404 m N', `16°30'00.0"S, 179°59'58.0"W`);
    const at = folder({
      'day.trib': far + points('name, latitude °, longitude °, height m orthometric, code, time local'),
      'pickup.csv': '1,-16.5,179.9999,5.6,K,09:12\n2,-16.5,-179.9999,5.6,K,09:13\n3,-16.5,-180,5.6,K,09:14\n',
    });
    const { printed } = await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    expect(printed).toMatch(/3 of 3 points repaired/);
    for (const row of rowsOf(at.path('out/pickup.csv'))) {
      // A hundred metres away at most, and not once around the Earth.
      expect(Number(row['uncertainty horizontal 95 % (m)'])).toBeLessThan(0.05);
      expect(Math.abs(Number(row['longitude (°)']))).toBeLessThanOrEqual(180);
    }
  });

  it('refuses to repair what it has repaired', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    const again = points(
      'name "name", east m "east (m)", north m "north (m)", height m orthometric "height (m)", state "state"',
      '',
      'out/pickup.csv',
    );
    writeFileSync(at.path('again.trib'), SESSION + again);
    // Whatever the notes say of the file, and whether or not they name its column of states.
    for (const columns of [
      'name, east m, north m, height m orthometric',
      'name "name", east m "east (m)", north m "north (m)", height m orthometric "height (m)"',
    ]) {
      writeFileSync(at.path('unsaid.trib'), SESSION + points(columns, '', 'out/pickup.csv'));
      const unsaid = await tribrach(['points', at.path('unsaid.trib')]);
      expect(unsaid.printed).toMatch(/^0 of 3 points/m);
      expect(unsaid.printed).toMatch(/- 3: Already corrected/);
    }
    const { printed } = await tribrach(['points', at.path('again.trib'), '--out', at.path('twice')]);
    expect(printed).toMatch(/0 of 3 points repaired/);
    const [first, second] = [rowsOf(at.path('out/pickup.csv')), rowsOf(at.path('twice/pickup.csv'))];
    expect(second.map((row) => row['height (m)'])).toEqual(first.map((row) => row['height (m)']));
    expect(second.map((row) => row['name'])).toEqual(first.map((row) => row['name']));
    expect(second[0]?.['reason']).toMatch(/Already corrected/);
  });

  it('keeps the state in a table whatever columns are asked for, in the order that is asked for', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    const columns = 'north,east,name,measured-height,height,class-as-repaired';
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out'), '--columns', columns]);
    const [head, row] = readFileSync(at.path('out/pickup.csv'), 'utf8').split('\r\n');
    expect(head).toBe('north (m),east (m),name,measured height (m),height (m),class as repaired,state');
    expect(row).toMatch(/^165002\.33\d\d,-40990\.1\d\d\d,101,5\.6200,5\.8701,bracketed,corrected$/);
    for (const [asked, because] of [
      ['name,colour', /column colour is not known/],
      ['name,name', /asked for twice/],
    ] as const) {
      const { status, complained } = await tribrach(['points', at.path('day.trib'), '--columns', asked]);
      expect(status).toBe(2);
      expect(complained).toMatch(because);
    }
  });

  it('writes all or nothing, never over what is there and never over what it read', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP, 'out/pickup.csv': 'mine\n' });
    const refused = await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    expect(refused.status).toBe(2);
    expect(refused.complained).toMatch(/is there already; --force replaces it/);
    expect(readFileSync(at.path('out/pickup.csv'), 'utf8')).toBe('mine\n');
    expect(readdirSync(at.path('out'))).toEqual(['pickup.csv']);
    const own = await tribrach(['points', at.path('day.trib'), '--out', at.path(), '--force']);
    expect(own.status).toBe(2);
    expect(own.complained).toMatch(/it was read for this, or a session names it/);
    expect(readFileSync(at.path('pickup.csv'), 'utf8')).toBe(PICKUP);
    const forced = await tribrach(['points', at.path('day.trib'), '--out', at.path('out'), '--force']);
    expect(forced.status).toBe(0);
    expect(rowsOf(at.path('out/pickup.csv'))).toHaveLength(3);
    expect(readdirSync(at.path()).sort()).toEqual(['day.trib', 'out', 'pickup.csv']);
    writeFileSync(at.path('blocked'), 'a file');
    expect((await tribrach(['points', at.path('day.trib'), '--out', at.path('blocked')])).status).toBe(2);
  });

  it('leaves nothing behind when a format cannot be made half way', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    mkdirSync(at.path('out'));
    mkdirSync(at.path('out/account.md'));
    const { status } = await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    expect(status).toBe(2);
    expect(readdirSync(at.path('out'))).toEqual(['account.md']);
    expect(readdirSync(at.path()).sort()).toEqual(['day.trib', 'out', 'pickup.csv']);
  });

  it('prints the account where no folder is named', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    const { printed } = await tribrach(['points', at.path('day.trib')]);
    expect(printed).toMatch(/^# Points and their repair/);
    expect(readdirSync(at.path()).sort()).toEqual(['day.trib', 'pickup.csv']);
  });

  it('lists what is assumed with digits that somebody would write', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    const { printed } = await tribrach(['points', at.path('day.trib')]);
    const assumed = printed.slice(printed.indexOf('## What this rests on'), printed.indexOf('## Files'));
    // tan 10″ is 0.00004848 (common practice for a geoid that no model tells of).
    expect(assumed).toContain('- slope of the geoid 0.00004848: ');
    expect(assumed).not.toMatch(/\d{10}/);
  });

  it('says that it assumes how the geoid runs where the controller had another model than the job', async () => {
    const withGeoids = (controllers: string) =>
      SESSION.replace('  grid ', '  geoid       EGM96\n  grid ').replace(
        'rover R1\n',
        `rover R1\n  geoid       ${controllers}\n`,
      );
    const accounts = ['EGM96', '"other.gtx"'].map(async (controllers) => {
      const at = folder({ 'day.trib': withGeoids(controllers) + USUAL, 'pickup.csv': PICKUP });
      return (await tribrach(['points', at.path('day.trib')])).printed;
    });
    const [own, other] = await Promise.all(accounts);
    expect(own).toContain('3 of 3 points');
    expect(own).not.toContain('slope of the geoid');
    expect(other).toContain('3 of 3 points');
    expect(other).toContain('slope of the geoid');
  });

  it('says why it cannot run', async () => {
    const at = folder({
      'day.trib': SESSION,
      'lost.trib': SESSION + points('name, east m, north m', '', 'lost.csv'),
    });
    expect((await tribrach(['points', at.path('day.trib')])).complained).toMatch(/names no points/);
    const lost = await tribrach(['points', at.path('lost.trib'), '--out', at.path('out')]);
    expect(lost.printed).toMatch(/lost\.csv cannot be read: there is no such file/);
    expect((await tribrach(['points', at.path('day.trib'), '--format', 'dxf'])).status).toBe(2);
  });

  it('keeps the unit, the separator and the decimal sign of the file', async () => {
    const feet = (metres: number) => (metres / (1200 / 3937)).toFixed(4).replace('.', ',');
    const at = folder({
      'day.trib':
        SESSION +
        points(
          'height usft orthometric "Elev", name "Id", east usft "E", north usft "N", time utc "T"',
          '  separator   semicolon\n  decimal     comma\n',
        ),
      'pickup.csv': `Id;T;N;E;Elev\nA;08:12;${feet(165002.331)};${feet(-40990.12)};${feet(5.62)}\n`,
    });
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    const [row] = rowsOf(at.path('out/pickup.csv'), ';');
    const read = (column: string) => Number(row?.[column]?.replace(',', '.')) * (1200 / 3937);
    expect(read('east (usft)')).toBeCloseTo(-40990.12, 2);
    expect(read('height (usft)')).toBeCloseTo(5.87, 3);
    expect(row?.['shift up (m)']).toMatch(/^0,2\d\d\d$/);
    expect(row?.['time (UTC)']).toBe('2026-05-19T08:12:00Z');
  });
});

describe('features and LandXML', () => {
  it('are in longitude, latitude and the datum that is said, as PROJ has them', async () => {
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': PICKUP });
    await tribrach([
      'points',
      at.path('day.trib'),
      '--out',
      at.path('out'),
      '--format',
      'geojson,csv,landxml',
    ]);
    const features = JSON.parse(readFileSync(at.path('out/pickup.geojson'), 'utf8')) as {
      type: string;
      coordinateReferenceSystem?: string;
      note?: string;
      features: { geometry: { coordinates: number[] }; properties: Record<string, unknown> }[];
    };
    expect(features.type).toBe('FeatureCollection');
    expect(features.coordinateReferenceSystem).toBe('EPSG:4258');
    expect(features.note).toMatch(/not been brought to WGS 84/);
    expect(features.features[2]?.properties).toMatchObject({
      name: '=HYPERLINK("x")',
      class: 'in doubt, repaired',
      state: 'corrected',
      heightSurface: 'orthometric',
    });
    // No model tells the separation of these points, so that the ellipsoidal height that the format means is left out.
    expect(features.features[0]?.geometry.coordinates).toHaveLength(2);
    if (!isInstalled('cs2cs')) return;
    const table = rowsOf(at.path('out/pickup.csv'));
    const answers = await ask(
      'cs2cs',
      ['-f', '%.10f', 'EPSG:3763', 'EPSG:4258'],
      table.map((row) => `${row['east (m)']} ${row['north (m)']}`),
    );
    answers.forEach((answer, index) => {
      const [latitude = NaN, longitude = NaN] = answer.trim().split(/\s+/).map(Number);
      const [λ = NaN, φ = NaN] = features.features[index]?.geometry.coordinates ?? [];
      // A tenth of a millimetre.
      expect(Math.hypot((φ - latitude) * 111_000, (λ - longitude) * 84_000)).toBeLessThan(1e-4);
    });
  });

  it('in WGS 84 say nothing of another datum', async () => {
    const utm = SESSION.replace('EPSG:3763', 'EPSG:32629')
      .replaceAll('-40311.882 m E, 165377.404 m N', '41.156530° N, 8.613345° W')
      .replaceAll('-41203.118 m E, 164904.902 m N', '41°09\'08.18286"N, 8°37\'26.27078"W');
    const at = folder({
      'day.trib': utm + points('name, latitude °, longitude °, height m ellipsoidal, time local'),
      'pickup.csv': 'A,41.1531,-8.6214,60.5,09:12\n',
    });
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out'), '--format', 'geojson']);
    const text = readFileSync(at.path('out/pickup.geojson'), 'utf8');
    const { features, ...rest } = JSON.parse(text) as { features: { geometry: { coordinates: number[] } }[] };
    expect(Object.keys(rest).sort()).toEqual(['confidence', 'type']);
    const [longitude = NaN, latitude = NaN, height = NaN] = features[0]?.geometry.coordinates ?? [];
    expect([longitude.toFixed(4), latitude.toFixed(4), height.toFixed(2)]).toEqual([
      '-8.6214',
      '41.1531',
      '60.75',
    ]);
  });

  it('give LandXML the order north, east, elevation, and what cannot stand in XML is escaped', async () => {
    const at = folder({
      'day.trib': SESSION + USUAL,
      'pickup.csv': `"a<b>&""c""\u0001",-40990.120,165002.331,5.620,KB,09:12\n`,
    });
    await tribrach(['points', at.path('day.trib'), '--out', at.path('out'), '--format', 'landxml']);
    const text = readFileSync(at.path('out/pickup.xml'), 'utf8');
    expect(text).toMatch(
      /<LandXML xmlns="http:\/\/www\.landxml\.org\/schema\/LandXML-1\.2" version="1\.2" date="\d{4}-\d\d-\d\d" time="\d\d:\d\d:\d\d"/,
    );
    expect(text).toMatch(/<CoordinateSystem [^>]*epsgCode="3763"/);
    const point = /<CgPoint ([^>]*)>([^<]*)<\/CgPoint>/.exec(text);
    expect(point?.[1]).toContain('name="a&lt;b&gt;&amp;&quot;c&quot;"');
    expect(point?.[1]).toMatch(/desc="in doubt, repaired; shifted .* state corrected\./);
    expect(point?.[1]).toMatch(
      /northingStdError="0\.0\d+" eastingStdError="0\.0\d+" elevationStdError="0\.0\d+"/,
    );
    const [north, east, elevation] = (point?.[2] ?? '').split(' ').map(Number);
    expect([north?.toFixed(1), east?.toFixed(1), elevation?.toFixed(2)]).toEqual([
      '165002.3',
      '-40990.1',
      '5.87',
    ]);
  });
});

describe('cells', () => {
  const reading = (text: string) => {
    const rows: PointRow[] = [];
    const reader = pointsReader(
      { columns: [{ role: 'name' }, { role: 'code' }], separator: ',', decimal: '.', heading: 'none' },
      (row) => rows.push(row),
    );
    reader.push(new TextEncoder().encode(text));
    reader.finish();
    return rows[0];
  };

  it('are never a formula, and are read back as they were', () => {
    const letters = fc.string({
      unit: fc.constantFrom("'", '=', '+', '-', '@', 'A', '1', '"', ',', ';', ' ', '(', 'é'),
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(letters, (text) => {
        const plain = text.trim();
        fc.pre(plain !== '');
        const written = `${textCell(plain, ',')},x\n`;
        const [[cell = '']] = parse(written) as [[string]];
        expect(cell).not.toMatch(/^[=+\-@\t\r]/);
        expect(reading(written)).toMatchObject({ name: plain, code: 'x' });
      }),
    );
  });

  it('hold numbers as they are, to the last decimal', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e7, max: 1e7, noNaN: true }),
        fc.integer({ min: 0, max: 11 }),
        (value, decimals) => {
          const written = fixed(value, decimals);
          expect(written).toMatch(decimals === 0 ? /^-?\d+$/ : new RegExp(`^-?\\d+\\.\\d{${decimals}}$`));
          expect(Math.abs(Number(written) - value)).toBeLessThanOrEqual(
            0.5000001 * 10 ** -decimals + 1e-9 * Math.abs(value) * 1e-6,
          );
        },
      ),
    );
    expect([fixed(-0.00001, 3), fixed(NaN, 3), fixed(2.5, 0)]).toEqual(['0.000', '', '3']);
  });
});

it('rows in the notes are read, called what stands in quotes above them', () => {
  const text = points(
    'name, east m, north m, height m orthometric, code, time local',
    '  row         101, -40990.120, 165002.331, 5.620, KB, 09:12\n',
    'typed in',
  );
  const { derivation, findings } = inspect(openDocument('day.trib', SESSION + text), NO_FILES);
  expect(findings.map(({ code }) => code)).not.toContain('points/unreadable');
  expect(derivation.points.map((set) => [set.kind, set.name, set.scan().rowCount])).toEqual([
    ['rows', 'typed in', 1],
  ]);
});

describe('rows of points', () => {
  it.each([
    ['no job', ''],
    ['a job without its day', 'job "Pier"\n'],
  ])('are read in %s, each with its coordinates', (_, job) => {
    const text = `${job}points\n  columns     name, east m, north m, time local\n  row         101, -40990.120, 165002.331, 09:12\n`;
    const [set] = inspect(openDocument('day.trib', text), NO_FILES).derivation.points;
    const rows: PointRow[] = [];
    set?.read((row) => rows.push(row));
    expect(rows).toMatchObject([{ name: '101', east: -40990.12, north: 165002.331 }]);
    expect(rows[0]?.time).toBeUndefined();
  });
});

describe('problems in a points file', () => {
  const found = (text: string, csv: string) => {
    const files: Files = {
      document: () => ({ refused: 'none' }),
      bytes: (path) =>
        path === 'pickup.csv' ? new TextEncoder().encode(csv) : { refused: 'there is no such file' },
    };
    return inspect(openDocument('day.trib', SESSION + text), files)
      .findings.filter(({ code }) => code === 'points/unreadable')
      .map(({ message, place }) => [message, place.entry.text.slice(place.start, place.end)]);
  };

  it('are told with the file’s own line numbers, at the file’s name', () => {
    const csv = 'Name,E,N,H,Code,T\n1,2,3,4,5,09:00\n2,x,3,4,5,09:00\n\n3,2,3,4,5,25:00\n';
    expect(found(USUAL, csv)).toEqual([
      ['pickup.csv:3: This row cannot be read in full: east "x".', '"pickup.csv"'],
      ['pickup.csv:5: This row cannot be read in full: time "25:00".', '"pickup.csv"'],
    ]);
  });

  it('do not drown the rest', () => {
    const csv = Array.from({ length: 500 }, (_, index) => `${index},x,3,4,5,09:00\n`).join('');
    const messages = found(USUAL, csv);
    expect(messages).toHaveLength(20);
    expect(messages[18]?.[0]).toContain('pickup.csv:19: ');
    expect(messages[19]?.[0]).toContain('pickup.csv: 481 more problems are not shown.');
    expect(messages[19]?.[0]).not.toContain('on this line');
  });

  it.each([
    ['name, east, north m, height m orthometric', /column east has no fitting unit/, 'east'],
    ['name, east m, north m, height m', /surface of the column height is not said/, 'height m'],
    ['name, east m, north m, time', /By which clock the column time counts is not said/, 'time'],
    ['name, est m, north m', /The column est is not known .* Did you mean east/, 'est m'],
    ['name, code', /The columns make no position/, 'columns     name, code'],
  ])('are told of the columns %s', (columns, sentence, place) => {
    const problems = found(points(columns), '1,2,3,4\n');
    expect(problems.some(([message, at]) => sentence.test(message ?? '') && at === place)).toBe(true);
  });

  it.each([
    ['a unit left out', points('name, east, north m, height m orthometric')],
    ['a column twice', points('name, east m, north m, east m')],
    ['no columns', 'points "pickup.csv"\n  from BASE\n  state as-broadcast\n'],
  ])('are told once for one cause: %s', (_, text) => {
    expect(found(text, '1,2,3,4\n')).toHaveLength(1);
  });

  const COLUMNS = 'name, east m, north m, height m orthometric, code, time local, state';
  const misspelt = [...COLUMNS.matchAll(/[a-z]+/g)].flatMap(({ index, 0: word }) =>
    ['q', word.toUpperCase().slice(-1)].map(
      (last) => COLUMNS.slice(0, index + word.length - 1) + last + COLUMNS.slice(index + word.length),
    ),
  );
  it.each(misspelt)('are told once where one word of the columns is misspelt: %s', (columns) => {
    expect(found(points(columns), '1,2,3,4,5,09:00,corrected\n').length).toBeLessThanOrEqual(1);
    if (columns.includes('q')) expect(found(points(columns), '1,2,3,4,5,09:00,corrected\n')).toHaveLength(1);
  });
  it.each([
    ['semicolun', 'separator', '1#2#3#4#5#09:00#corrected\n'],
    ['coma', 'decimal', '1;2,0;3,0;4,0;5;09:00;corrected\n'],
  ])('are told once where the notes say %s', (word, detail, csv) => {
    const told = found(points(COLUMNS, `  ${detail} ${word}\n`), csv);
    expect(told).toEqual([[expect.stringContaining(`${word} is not known`), word]]);
  });

  it('are told where the file is not there', () => {
    expect(found(points('name, east m, north m', '', 'lost.csv'), '')).toEqual([
      ['Points not readable: lost.csv. There is no such file.', '"lost.csv"'],
    ]);
  });
});

describe('repeated points', () => {
  it('are told with their difference where at least twenty minutes lie between', async () => {
    const at = folder({
      'day.trib': SESSION + USUAL,
      'pickup.csv': `A,-40990.120,165002.331,5.620,K,09:00\nB,-40980.000,165002.000,5.600,K,09:01\nB,-40980.000,165002.000,5.600,K,09:10\nA,-40990.108,165002.340,5.631,K,09:40\n`,
    });
    const { printed } = await tribrach(['points', at.path('day.trib')]);
    expect(printed).toMatch(
      /repeated: A was measured again 40 minutes later \(rows 1 and 4\): 15 mm apart horizontally, 11 mm up/,
    );
    expect(printed).not.toMatch(/repeated: B/);
  });
});

describe('hundreds of thousands of rows', () => {
  it('are read piece by piece, and written whole', async () => {
    const rows = Array.from(
      { length: 120_000 },
      (_, index) =>
        `${index},${(-40990 + (index % 1000) * 0.5).toFixed(3)},${(165002 + Math.floor(index / 1000)).toFixed(3)},5.620,K,09:12`,
    );
    const at = folder({ 'day.trib': SESSION + USUAL, 'pickup.csv': `${rows.join('\n')}\n` });
    const { printed } = await tribrach(['points', at.path('day.trib'), '--out', at.path('out')]);
    expect(printed).toMatch(/120000 of 120000 points repaired/);
    expect(statSync(at.path('out/pickup.csv')).size).toBeGreaterThan(10_000_000);
    const last = readFileSync(at.path('out/pickup.csv'), 'utf8').trimEnd().split('\r\n').at(-1);
    expect(last).toMatch(/^119999,-40490\.5\d\d\d,165121\.00\d\d,5\.8\d\d\d,K,/);
  });
});
