/** The command line's contract: what is printed, in which shape, and with which exit status. */
import { afterEach, describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { folderWith, tribrach } from './command-line-run.ts';

const CLEAN = 'samples/breakwater.trib';
const NO_UNIT = 'samples/broken/unit-missing.trib';
const ONLY_A_HINT = 'samples/broken/site-no-hazards.trib';

let folders: { remove: () => void }[] = [];
afterEach(() => {
  for (const folder of folders) folder.remove();
  folders = [];
});
function folder(files: Readonly<Record<string, string>>) {
  const made = folderWith(files);
  folders.push(made);
  return made;
}

describe('exit status of check', () => {
  it('is 0 where nothing is as severe as asked', async () => {
    expect((await tribrach(['check', CLEAN])).status).toBe(0);
    expect((await tribrach(['check', ONLY_A_HINT])).status).toBe(0);
  });
  it('is 1 for an error, and for less where less is asked', async () => {
    expect((await tribrach(['check', NO_UNIT])).status).toBe(1);
    expect((await tribrach(['check', ONLY_A_HINT, '--severity', 'hint'])).status).toBe(1);
    expect((await tribrach(['check', ONLY_A_HINT, '--severity', 'information'])).status).toBe(0);
  });
  it('is 2 with the reason on standard error where it cannot run', async () => {
    for (const words of [
      ['check', 'nowhere.trib'],
      ['check'],
      ['check', CLEAN, '--severity', 'bad'],
      ['chek', CLEAN],
    ]) {
      const { status, printed, complained } = await tribrach(words);
      expect([words, status, printed]).toEqual([words, 2, '']);
      expect(complained).not.toBe('');
    }
  });
  it('is 0 for help and version', async () => {
    expect((await tribrach(['--help'])).status).toBe(0);
    expect((await tribrach(['check', '--help'])).status).toBe(0);
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(await tribrach(['--version'])).toEqual({ status: 0, printed: `${version}\n`, complained: '' });
  });
});

describe('--require', () => {
  it('holds a day to its checks: the forklift at 11:10 is passed, and not without a proof', async () => {
    expect((await tribrach(['check', CLEAN, '--require', 'checked'])).status).toBe(0);
    expect((await tribrach(['check', CLEAN, '--require', 'held'])).status).toBe(0);
    const strict = await tribrach(['check', CLEAN, '--require', 'bracketed']);
    expect(strict.status).toBe(1);
    expect(strict.complained).toContain('bracketed is required');
  });
  it('never lets a day without checks look green', async () => {
    const text = readFileSync(CLEAN, 'utf8').replace(/^check .*\n(?: .*\n)*/gm, '');
    expect(text).not.toContain('observed');
    expect((await tribrach(['check', '-', '--require', 'checked'], { input: text })).status).toBe(1);
  });
  it('asks nothing of a file that has marks alone', async () => {
    expect((await tribrach(['check', 'samples/marks.trib', '--require', 'bracketed'])).status).toBe(0);
  });
});

describe('check --format json', () => {
  it('has every key of the contract and no other', async () => {
    const { printed, status } = await tribrach(['check', NO_UNIT, CLEAN, '--format', 'json']);
    expect(status).toBe(1);
    const { files } = JSON.parse(printed) as { files: { path: string; findings: Finding[] }[] };
    expect(files.map(({ path }) => path)).toEqual([NO_UNIT, CLEAN]);
    expect(files[1]).toEqual({ path: CLEAN, findings: [] });
    const finding = files[0]?.findings.find(({ code }) => code === 'unit/missing');
    expect(Object.keys(finding ?? {}).sort()).toEqual([
      'action',
      'code',
      'column',
      'effect',
      'endColumn',
      'endLine',
      'fixes',
      'headline',
      'line',
      'message',
      'related',
      'severity',
    ]);
    const line = readFileSync(NO_UNIT, 'utf8').split('\n')[(finding?.line ?? 0) - 1] ?? '';
    expect(line.slice((finding?.column ?? 0) - 1, (finding?.endColumn ?? 0) - 1)).toBe('1.284');
    expect(finding?.fixes[0]).toEqual({
      title: 'Write 1.284 m',
      edits: [
        {
          line: finding?.line,
          column: finding?.column,
          endLine: finding?.endLine,
          endColumn: finding?.endColumn,
          text: '1.284 m',
        },
      ],
    });
  });

  it('counts columns in UTF-16 units, and lines whatever ends them', async () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const input = [
        'setup B on M with A at 07:50',
        '  measured    1.284 "𝛼" to arp',
        'mark M',
        'antenna A',
      ].join(end);
      const { printed } = await tribrach(['check', '-', '--format', 'json'], { input });
      const { files } = JSON.parse(printed) as { files: { path: string; findings: Finding[] }[] };
      expect(files[0]?.path).toBe('-');
      const finding = files[0]?.findings.find(({ code }) => code === 'unit/missing');
      expect([finding?.line, finding?.column, finding?.endColumn]).toEqual([2, 15, 20]);
    }
  });

  it('lists what follows from a finding with code and place', async () => {
    const { printed } = await tribrach(['check', 'samples/broken/syntax-repeated.trib', '--format', 'json']);
    const { files } = JSON.parse(printed) as { files: { findings: Finding[] }[] };
    const related = files.flatMap(({ findings }) => findings).flatMap((finding) => finding.related);
    expect(related.length).toBeGreaterThan(0);
    for (const one of related)
      expect(Object.keys(one).sort()).toEqual(['code', 'column', 'headline', 'line', 'message']);
  });
});

interface Finding {
  readonly code: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly related: readonly object[];
  readonly fixes: readonly object[];
}

describe('derive --format json', () => {
  it('has every id of the contract, with value, unit, sigma, line and story', async () => {
    const { printed, status } = await tribrach(['derive', CLEAN, '--format', 'json']);
    expect(status).toBe(0);
    const { files } = JSON.parse(printed) as { files: { path: string; values: Value[] }[] };
    expect(files.map(({ path }) => path)).toEqual([CLEAN]);
    const values = new Map(files[0]?.values.map((value) => [value.id, value]));
    for (const value of values.values())
      expect(Object.keys(value).sort()).toEqual(['id', 'line', 'sigma', 'story', 'unit', 'value']);
    expect([...values.keys()]).toEqual(expect.arrayContaining(CONTRACT));
    expect([...values.values()].map(({ unit }) => unit)).toEqual(
      expect.arrayContaining(['°', 'm', '', null]),
    );
  });

  it('gives null for what cannot be derived, and the reason as its story', async () => {
    const { printed } = await tribrach(['derive', CLEAN, '--format', 'json']);
    const { files } = JSON.parse(printed) as { files: { values: Value[] }[] };
    const hole = files[0]?.values.find(({ id }) => id === 'mark/NAIL-1/latitude');
    expect(hole).toMatchObject({ value: null, unit: null, sigma: null, story: 'NAIL-1 has no coordinates' });
  });

  it('builds ids from names as written', async () => {
    const input = 'mark "A/1 50%" "bolt"\n  height      3 m ellipsoidal\n';
    const { printed } = await tribrach(['derive', '-', '--format', 'json'], { input });
    expect(printed).toContain('"mark/A%2F1%2050%25/ellipsoidal-height"');
  });
});

interface Value {
  readonly id: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly story: string;
}

const CONTRACT = [
  ...each(
    'mark/PM-14/',
    'latitude longitude ellipsoidal-height orthometric-height separation east north x y z',
  ),
  ...each('mark/PM-14/', 'convergence scale/point scale/combined'),
  ...each('setup/BASE/', 'reading/1 reading/2 reading/3 height/arp height/phase-centre arp/x arp/y arp/z'),
  ...each('setup/BASE/', 'tell/latitude tell/longitude tell/ellipsoidal-height tell/antenna-height'),
  ...each('setup/BASE/', 'keyed/1/east keyed/1/north keyed/1/up'),
  ...each('check/OPEN/residual/', 'east north up horizontal grid-east grid-north'),
  ...each(
    'check/OPEN/',
    'distance/ellipsoid distance/grid distance/ground tolerance/horizontal tolerance/up',
  ),
  ...each('check/OPEN/', 'expected/horizontal expected/up explained/east explained/north explained/up'),
];
function each(prefix: string, parts: string): string[] {
  return parts.split(' ').map((part) => prefix + part);
}

describe('derive for people', () => {
  it('prints the digits that the uncertainty earns', async () => {
    const { printed } = await tribrach(['derive', CLEAN]);
    expect(printed).toMatch(/^ {2}latitude +41°09'08\.18286"N {2}± 8\.0 mm$/m);
    expect(printed).toMatch(/^ {2}ellipsoidal-height +61\.201 m {2}± 12 mm$/m);
    expect(printed).toMatch(/^ {2}height\/arp +1\.5327 m {2}± 0\.9 mm$/m);
  });
  it('prints only what is asked for', async () => {
    const { printed } = await tribrach(['derive', CLEAN, '--only', 'setup/BASE/height']);
    expect(printed.split('\n').slice(2)).toEqual([
      'setup/BASE',
      expect.stringMatching(/^ {2}height\/arp +1\.5327 m/),
      expect.stringMatching(/^ {2}height\/phase-centre +1\.6247 m/),
      '',
    ]);
    const { files } = JSON.parse(
      (await tribrach(['derive', CLEAN, '--only', 'mark/PM-14/scale', '--format', 'json'])).printed,
    ) as { files: { values: Value[] }[] };
    expect(files[0]?.values.map(({ id }) => id)).toEqual([
      'mark/PM-14/scale/point',
      'mark/PM-14/scale/combined',
    ]);
    expect((await tribrach(['derive', CLEAN, '--only', 'setup/BAS'])).status).toBe(2);
  });
  it('tells the whole story of one value', async () => {
    const { printed, status } = await tribrach(['derive', CLEAN, '--explain', 'setup/BASE/height/arp']);
    expect(status).toBe(0);
    expect(printed).toContain('√(1.284² − 0.048²) + 0.25');
    expect(printed).toMatch(/given as 250 mm, line \d+/);
  });
  it('cannot explain what does not exist', async () => {
    const { printed, status, complained } = await tribrach([
      'derive',
      CLEAN,
      '--explain',
      'setup/BASE/height',
    ]);
    expect([printed, status]).toEqual(['', 2]);
    expect(complained).toContain('no value is called setup/BASE/height');
  });
});

describe('tell', () => {
  it('says what to key, in the order in which a receiver asks', async () => {
    const { printed, status } = await tribrach(['tell', CLEAN]);
    expect(status).toBe(0);
    const order = [
      'Datum',
      'Latitude',
      'Longitude',
      'Ellipsoidal height',
      'Antenna height',
      'Antenna type',
      '1005',
    ];
    const places = order.map((word) => printed.indexOf(word));
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(places[0]).toBeGreaterThan(0);
    expect(printed).toContain('41°09\'08.18286"N');
    expect(printed).toContain('61.201 m');
    expect(printed.match(/usual cautions/g)).toHaveLength(1);
  });
  it('says so and exits 1 where something to key is not known', async () => {
    const { printed, status } = await tribrach(['tell', 'samples/averaged-base.trib']);
    expect(status).toBe(1);
    expect(printed).toContain('Do not key this yet');
  });
  it('is whole before anything was keyed, and says nothing of what was', async () => {
    const input = readFileSync('samples/example-day.trib', 'utf8').replace(/^ +keyed .*\n/gm, '');
    const { printed, status } = await tribrach(['tell', '-'], { input });
    expect(status).toBe(0);
    expect(printed).toMatch(/Antenna height +1[.]533 m/);
    expect(printed).not.toContain('What was keyed');
  });
  it('ends its reasons with one full stop', async () => {
    const input = readFileSync('samples/example-day.trib', 'utf8').replace('EPSG:3763', '"local grid"');
    const { printed } = await tribrach(['tell', '-'], { input });
    expect(printed).toContain('Do not key this yet');
    expect(printed).not.toMatch(/[.]\s*[.]/);
  });
  describe('leaves out what an error is about, and exits 1', () => {
    const tape = '  measured    1.284 m to foot, 48 mm off centre, at 07:52\n';
    it.each([
      ['readings that contradict each other', tape, `${tape}  measured    1284 m to foot, at 07:53\n`],
      ['readings 100 mm apart', tape, `${tape}  measured    1.384 m to foot, 48 mm off centre, at 07:53\n`],
      ['an extension that is not read', '  extension  ', '  extention  '],
      ['one in the first column that is not read', '  extension  ', 'extention  '],
      ['one that an event took away', '  extension  ', 'event disturbance at 07:53 "van"\n  extension  '],
    ])('%s: of the antenna', async (_, from, to) => {
      const input = readFileSync('samples/example-day.trib', 'utf8').replace(from, to);
      const { printed, status } = await tribrach(['tell', '-'], { input });
      expect(status).toBe(1);
      expect(printed).toMatch(/^ {2}Antenna height +[?]$/m);
      expect(printed).toMatch(/^ {2}Ellipsoidal height +61[.]201 m/m);
      expect(printed).not.toContain('1005');
    });
    it.each([
      ['a mark of two meanings', /^mark PM-09/m, 'mark PM-14'],
      ['a separation whose sign is turned', 'separation  54.917 m', 'separation  -54.917 m'],
      [
        'a receiver that finds itself at another mark, before anything is keyed',
        /^ {2}keyed[^]*?(?=^check)/m,
        `  autonomous 41°09'23.7"N, 8°36'48.2"W\n`,
      ],
      ['a mark outside its grid', '-41203.118 m E', '-241203.118 m E'],
    ])('%s: of the mark', async (_, from, to) => {
      const input = readFileSync('samples/example-day.trib', 'utf8').replace(from, to);
      const { printed, status } = await tribrach(['tell', '-'], { input });
      expect(status).toBe(1);
      expect(printed).toMatch(/^ {2}Latitude +[?]$/m);
      expect(printed).toMatch(/^ {2}Antenna height +1[.]53\d m/m);
      expect(printed).not.toContain('1005');
    });
    it('but not what an error of what was keyed is about', async () => {
      const { printed, status } = await tribrach(['tell', 'samples/broken/height-extension.trib']);
      expect(status).toBe(0);
      expect(printed).toMatch(/^ {2}Antenna height +1[.]53\d m/m);
    });
  });
  it('says beside the numbers which of their lines check warns of', async () => {
    const input = readFileSync('samples/example-day.trib', 'utf8').replace(
      /^ {2}measured .*\n/m,
      (line) => `${line}${line.replace('1.284', '1.289')}`,
    );
    const { printed } = await tribrach(['tell', '-'], { input });
    expect(printed).toMatch(/This rests on what check warns of: line \d+ [(]height\/readings-disagree[)]/);
    // The geoid lies 55.6 m above the ellipsoid there (EGM96), which the job does not name.
    const swapped = readFileSync('samples/example-day.trib', 'utf8').replace('54.917', '45.917');
    expect((await tribrach(['tell', '-'], { input: swapped })).printed).toContain('(height/separation)');
  });
  it('never gives a height from the coarse model as one to key', async () => {
    const { printed } = await tribrach(['tell', 'samples/broken/height-coarse-model.trib']);
    expect(printed).toMatch(/Ellipsoidal height +about 62 m/);
    expect(printed).not.toContain('1005');
  });
  it('says how good a position is that rests on a transformation from an old network', async () => {
    const input = `job "Old grid"
  grid        EPSG:27700
  datum       EPSG:4258 by EPSG:1314
mark M "pin"
  position    400000.000 m E, 300000.000 m N
  height      60.845 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
setup BASE on M
`;
    // EPSG gives 2 m for operation 1314, and 1 m for 1149, from WGS 84 on to ETRS89: 2.2 m together.
    expect((await tribrach(['tell', '-'], { input })).printed).toContain('good to 2.2 m here');
    expect((await tribrach(['tell', CLEAN])).printed).not.toContain('good to');
  });
  it('keeps a height that a reading of another time has nothing to do with, whatever is wrong with that', async () => {
    const readings = (...lines: string[]) =>
      `job "Day"\n  date        2026-05-19\nsetup BASE at 07:50\n${lines.map((line) => `  measured    ${line}\n`).join('')}`;
    const told = async (...lines: string[]) =>
      /Antenna height +(\S+)/.exec(
        (await tribrach(['tell', '-'], { input: readings(...lines) })).printed,
      )?.[1];
    const opening = '1.284 m to arp, at 07:52';
    expect(await told(opening, '1,283 m to arp, at 15:36')).toBe('1.284');
    expect(await told(opening, '1,283 m to arp, at 07:54')).toBe('?');
    expect(await told(opening, '1,283 m to arp')).toBe('?');
    expect(await told('1.284 m to arp', '1,283 m to arp, at 15:36')).toBe('?');
  });
  it('cannot run where nothing is set up', async () => {
    expect((await tribrach(['tell', 'samples/marks.trib'])).status).toBe(2);
  });
});

describe('text for a terminal', () => {
  it('sends who has just begun a session to its questions, and who has answered them to a second mark', async () => {
    const { printed: input } = await tribrach(['new', '-']);
    const line = input.split('\n').findIndex((text) => /^ +date +[?]/.test(text)) + 1;
    const { printed } = await tribrach(['check', '-'], { input });
    expect(printed).toContain(`Next: Answer line ${line}.`);
    const answered = readFileSync('samples/example-day.trib', 'utf8')
      .replace(' until 12:10', '')
      .replace(/^check [^]*?(?=\nhazard)/m, '')
      .replace('"R. Okafor"', '"?"');
    expect((await tribrach(['check', '-'], { input: answered })).printed).toContain('Next: Check a second');
  });
  it('cuts the long name of an area between words, and says that it did', async () => {
    const { printed } = await tribrach(['check', 'samples/broken/position-out-of-area.trib'], { width: 400 });
    const area = /Europe between 12°W and 6°W: Faroe Islands - onshore and …/;
    expect(printed).toMatch(area);
  });
  it('says a clean day within 15 lines, and a new one within 12', async () => {
    const clean = (await tribrach(['check', CLEAN])).printed;
    expect(clean.split('\n').length).toBeLessThanOrEqual(16);
    expect(clean).toMatch(/OPEN +passes .* of 36 mm +7[.]0 mm of 51 mm/);
    // Where nobody measured, nothing is missed.
    expect(clean).not.toMatch(/Not closed|not opened/);
    const { printed: input } = await tribrach(['new', '-']);
    const begun = (await tribrach(['check', '-'], { input })).printed;
    expect(begun.split('\n').length).toBeLessThanOrEqual(13);
    expect(begun).toMatch(/\d+ answers still open/);
    expect((await tribrach(['check', '-', '--hints'], { input })).printed).toContain('syntax/open-value');
  });
  it('leaves the limits out where a terminal has no room for them', async () => {
    const { printed } = await tribrach(['check', CLEAN], { width: 60 });
    expect(Math.max(...printed.split('\n').map((line) => line.length))).toBeLessThanOrEqual(60);
    expect(printed).toMatch(/OPEN +passes +8[.]5 mm +7[.]0 mm/);
  });
  it('tells the worst first, and hints only when asked', async () => {
    const input = readFileSync(NO_UNIT, 'utf8').replace(/^ {2}extension/m, '  Extension');
    const { printed } = await tribrach(['check', '-'], { input });
    expect(printed).not.toContain('syntax/letter-case');
    expect(printed).toContain('1 hint (--hints shows them)');
    expect((await tribrach(['check', '-', '--hints'], { input })).printed).toContain('syntax/letter-case');
  });
  it('has colours only where they are wanted', async () => {
    expect((await tribrach(['check', NO_UNIT])).printed).not.toContain('\u001b');
    expect((await tribrach(['check', NO_UNIT], { colours: true })).printed).toContain('\u001b[31merror');
  });
  it('points at the place with carets below it', async () => {
    const lines = (await tribrach(['check', NO_UNIT])).printed.split('\n');
    const below = lines.findIndex((line) => /\| +\^+$/.test(line));
    const [source = '', carets = ''] = [lines[below - 1], lines[below]];
    expect(source.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('1.284');
  });
  it('stays within its width, however long the line', async () => {
    const input = `mark M "${'long '.repeat(2000)}"\n  height      ${' '.repeat(3000)}6,284 m orthometric\n`;
    const { printed } = await tribrach(['check', '-'], { input, width: 72 });
    expect(printed).toContain('number/decimal-comma');
    expect(Math.max(...printed.split('\n').map((line) => line.length))).toBeLessThanOrEqual(72);
  });
  it('lets no text of a session steer the terminal', async () => {
    const input = 'mark M\n  plumet \u001b[2J\u009b31m\u202e x\n';
    const { printed } = await tribrach(['check', '-'], { input });
    expect(printed).toContain('plumet');
    for (const steering of ['\u001b', '\u009b', '\u202e']) expect(printed).not.toContain(steering);
  });
});

describe('format', () => {
  const ragged = 'mark M\n      height 3 m ellipsoidal # as found\n';
  const aligned = 'mark M\n  height      3 m ellipsoidal  # as found\n';

  it('prints, and changes nothing', async () => {
    const at = folder({ 'a.trib': ragged });
    expect((await tribrach(['format', at.path('a.trib')])).printed).toBe(aligned);
    expect(readFileSync(at.path('a.trib'), 'utf8')).toBe(ragged);
    expect((await tribrach(['format', '-'], { input: ragged })).printed).toBe(aligned);
  });
  it('--check exits 1 and names what would change', async () => {
    const at = folder({ 'a.trib': ragged, 'b.trib': aligned });
    const { printed, status } = await tribrach(['format', '--check', at.path()]);
    expect([printed, status]).toEqual([`${at.path('a.trib')} would change\n`, 1]);
    expect((await tribrach(['format', '--check', at.path('b.trib')])).status).toBe(0);
  });
  it('refuses to write standard input back', async () => {
    expect((await tribrach(['format', '--write', '-'], { input: ragged })).status).toBe(2);
  });
  it('leaves every sample as it is, but for the one whose mistake is its blanks', async () => {
    const { printed } = await tribrach(['format', '--check', 'samples']);
    expect(printed).toBe('samples/broken/syntax-indent.trib would change\n');
  });
});

describe('a day behind --date', () => {
  it.each([
    ['new', ['new', '-']],
    ['marks', ['marks', 'samples/pickup.csv', '--columns', 'name, east m, north m']],
    ['seal', ['seal', 'samples/breakwater.trib']],
  ])('is none that no calendar has, for %s', async (_, words) => {
    for (const day of ['2026-02-30', 'yesterday\nnote "x"']) {
      const { status, printed, complained } = await tribrach([...words, '--date', day]);
      expect([status, printed]).toEqual([2, '']);
      expect(complained).toContain('is no day written as YYYY-MM-DD');
    }
    expect((await tribrach([...words, '--date', '2026-02-28'])).printed).toContain('2026-02-28');
  });
});

describe('explain', () => {
  it('says what a code and a verdict mean, and lists them all', async () => {
    const { printed } = await tribrach(['explain', 'height/extension']);
    for (const head of ['What it means', 'Why it hurts', 'What to do']) expect(printed).toContain(head);
    expect((await tribrach(['explain', 'not closed'])).printed).toContain('none after it');
    const all = (await tribrach(['explain'], { width: 80 })).printed;
    for (const name of ['bracketed', 'in-doubt', 'height/extension', 'unit/slip'])
      expect(all).toContain(name);
    expect(Math.max(...all.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });
  it('knows no code that there is not', async () => {
    const { status, complained } = await tribrach(['explain', 'height/nothing']);
    expect(status).toBe(2);
    expect(complained).toContain('height/nothing');
  });
});
