/** A register extract becomes a marks file in which nothing is guessed. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { format } from '../grammar/printer.ts';
import { extractColumns, extractGeojson, extractRows } from '../server/evidence/register-extract.ts';
import { inspect } from '../server/inspect.ts';
import { isHole } from '../server/quantities/value.ts';
import { registerMark } from '../server/record/notes/marks-file.ts';
import { marksFile } from '../server/record/notes/marks-file.ts';
import { newSession } from '../server/record/notes/new-session.ts';
import { NO_FILES } from '../server/session/files.ts';

const ABOUT = { title: 'extract', grid: 'EPSG:3763', source: 'harbour control register', date: '2026-04-02' };
const look = (text: string) => inspect(openDocument('marks.trib', text), NO_FILES);

function fromRows(rows: string, declared: string, separator = ',', decimal: '.' | ',' = '.') {
  const columns = extractColumns(declared);
  if (typeof columns === 'string') throw new Error(columns);
  const extract = extractRows(new TextEncoder().encode(rows), columns, separator, decimal, 0);
  return { text: marksFile(extract.marks.map(registerMark), ABOUT), problems: extract.problems };
}

describe('rows', () => {
  it('with everything declared give marks without a question', () => {
    const { text } = fromRows(
      'PM-14,-41203.118,164904.902,6.284,54.917,"bolt, ""pier"""',
      'name, east m, north m, height m orthometric, separation m, description',
    );
    const { findings, derivation, session } = look(text);
    expect(findings.filter(({ severity }) => severity === 'error' || severity === 'warning')).toEqual([]);
    expect(session.marks.get('PM-14')?.description).toBe('bolt, "pier"');
    const height = derivation.marks.get('PM-14')?.ellipsoidalHeight;
    expect(height && !isHole(height) && height.value).toBeCloseTo(61.201, 9);
    expect(format(text)).toBe(text);
  });

  it('can be read again, though a name or a description held what no text file holds', () => {
    const { text } = fromRows('A\0B,1.5,2.5,"bolt\0x"', 'name, east m, north m, description');
    expect(text).not.toContain('\0');
    const { session } = look(text);
    expect([...session.marks.values()].map(({ name, description }) => [name, description])).toEqual([
      ['A B', 'bolt x'],
    ]);
  });

  it('without a source leave it open, and its date, with nothing wrong in that', () => {
    const columns = extractColumns('name, east m, north m');
    if (typeof columns === 'string') throw new Error(columns);
    const { marks } = extractRows(new TextEncoder().encode('A,1.5,2.5'), columns, ',', '.', 0);
    const text = marksFile(marks.map(registerMark), { ...ABOUT, source: null, date: null });
    expect(text).toContain('source      "?" ?');
    const codes = look(text).findings.map(({ code }) => code);
    expect(codes.filter((code) => code === 'syntax/open-value')).toHaveLength(2);
    expect(codes).not.toContain('syntax/leftover');
  });

  it('keep their digits, through a decimal comma too', () => {
    const { text } = fromRows('PM-14;-41203,1180;164904,90', 'name, east m, north m', ';', ',');
    expect(text).toContain('position    -41203.1180 m E, 164904.90 m N');
  });

  it('leave open what a point may part in thousands, where the decimal sign is a comma', () => {
    const { text, problems } = fromRows('PM-14;165.377;5.400,25', 'name, east m, north m', ';', ',');
    expect(text).toContain('position    ? E, ? N');
    expect(problems.map(({ sentence }) => sentence)).toEqual([
      'The east "165.377" has a point, where the decimal sign is a comma; it is left open (?).',
      'The north "5.400,25" has a point, where the decimal sign is a comma; it is left open (?).',
    ]);
  });

  it('that hold no number say that they may be a heading, and those that hold one do not', () => {
    const { problems } = fromRows('Name,East,North\nA,1.5,2.5\nB,x,2.5', 'name, east m, north m');
    const heading = problems.filter(({ sentence }) => sentence.includes('If it is a heading'));
    expect(heading.map(({ line }) => line)).toEqual([1]);
  });

  it('in a grid of an old network have nothing wrong with them: which datum is keyed is for the session to say', () => {
    const { text } = fromRows(
      'PM-14,400000.00,300000.00,6.284',
      'name, east m, north m, height m orthometric',
    );
    const british = text.replace('EPSG:3763', 'EPSG:27700');
    expect(look(british).findings.map(({ code }) => code)).toEqual([]);
    const session = `${british}setup BASE on PM-14 at 07:50\n`;
    expect(look(session).findings.map(({ code }) => code)).toContain('position/datum-unknown');
  });

  it('without a unit or a surface are asked for them', () => {
    const { text } = fromRows('PM-14,-41203.118,164904.902,6.284', 'name, east, north, height');
    expect(look(text).findings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['unit/missing', 'height/no-surface']),
    );
    expect(
      look(fromRows('PM-14,1,2,6.284', 'name, east m, north m, height m').text).findings.map(
        ({ code }) => code,
      ),
    ).toContain('height/no-surface');
  });

  it('that are too short are left out and told with their line', () => {
    const { text, problems } = fromRows('A,1,2\nB,1\nC,3,4\n', 'name, east m, north m');
    expect(problems).toEqual([expect.objectContaining({ line: 2 })]);
    expect(look(text).session.marks.size).toBe(2);
  });

  it('with names that no name can be are quoted', () => {
    const { text } = fromRows('"BM #3, old",1,2\n"say ""no""",3,4\n?,5,6\n', 'name, east m, north m');
    expect([...look(text).session.marks.keys()]).toEqual(['BM #3, old', 'say "no"', '?']);
  });

  it('must have known columns and a name', () => {
    expect(extractColumns('name, easting m')).toContain('easting is no column');
    expect(extractColumns('east m, north m')).toContain('must be the name');
  });
});

describe('GeoJSON', () => {
  const feature = (coordinates: unknown, properties: unknown = { name: 'A' }) => ({
    type: 'Feature',
    properties,
    geometry: { type: 'Point', coordinates },
  });
  const collection = (...features: unknown[]) => JSON.stringify({ type: 'FeatureCollection', features });

  /** RFC 7946, 3.1.1 and 4: longitude first, WGS 84, and a third number is metres above the ellipsoid. */
  it('is longitude first, in WGS 84, above the ellipsoid', () => {
    const extract = extractGeojson(collection(feature([-8.623964105, 41.152273017, 61.201])), 'name');
    if (typeof extract === 'string') throw new Error(extract);
    const { derivation } = look(marksFile(extract.marks.map(registerMark), { ...ABOUT, grid: 'EPSG:4326' }));
    const mark = derivation.marks.get('A');
    const number = (value: unknown) =>
      typeof value === 'object' && value !== null && 'value' in value ? value.value : NaN;
    expect(number(mark?.latitude)).toBe(41.152273017);
    expect(number(mark?.longitude)).toBe(-8.623964105);
    expect(number(mark?.ellipsoidalHeight)).toBe(61.201);
  });

  it('that says another system, or is none, is refused in a sentence', () => {
    expect(extractGeojson('{"type":"FeatureCollection","crs":{},"features":[]}', 'name')).toContain('crs');
    expect(extractGeojson('[1]', 'name')).toBe('it is not GeoJSON');
    expect(extractGeojson('{', 'name')).toBe('it is not JSON');
  });

  it('leaves out what is no named point, and says so', () => {
    const extract = extractGeojson(
      collection(
        feature([1]),
        feature([1, 2], {}),
        null,
        feature(['x', 2]),
        feature([1, 2], { name: '__proto__' }),
      ),
      'name',
    );
    if (typeof extract === 'string') throw new Error(extract);
    expect(extract.marks.map(({ name }) => name)).toEqual(['__proto__']);
    expect(extract.problems).toHaveLength(4);
  });
});

describe('a new session', () => {
  it('asks its questions as hints, with nothing wrong, and is formatted', () => {
    const text = newSession('2026-05-19');
    const { findings } = look(text);
    expect(findings.length).toBeGreaterThan(30);
    expect(
      findings.filter(({ code, severity }) => code !== 'syntax/open-value' || severity !== 'hint'),
    ).toEqual([]);
    const asked = findings.map(({ message }) => message.split(' is still open')[0]);
    expect(asked).toEqual(expect.arrayContaining(['Keyed antenna height', 'Keyed antenna type', 'Quality']));
    expect(format(text)).toBe(text);
  });
});
