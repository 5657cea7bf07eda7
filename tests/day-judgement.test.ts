/** What a day is worth by all of its checks together: chance among many, weak checks, movements, and what one check alone repairs. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { pointCounts } from '../server/derive/repair/points-counts.ts';
import { trustOf } from '../server/derive/trust/trust.ts';
import { inspect } from '../server/inspect.ts';
import { shortfalls, verdictOf } from '../server/record/verdict.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import { NO_FILES } from '../server/session/files.ts';

const JOB = `job "Breakwater, north arm"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
`;
const TOLERANCE = '  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical\n';
const MARKS = `mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark NAIL-1 "for movement only"
antenna A1
  phase-centre 92 mm above arp
`;
const BASE = `setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.533 m to arp
`;
const DAY = JOB + TOLERANCE + MARKS + BASE;
const GOOD = 'fixed, 60 epochs, pdop 1.5, 16 satellites';

/** On the second mark, off by so many metres to the east and up. */
const check = (name: string, time: string, east = 0, up = 0, quality = GOOD) =>
  `check ${name} on PM-09 at ${time} by R1
  observed    ${(-40311.882 + east).toFixed(4)} m E, 165377.404 m N, height ${(5.196 + up).toFixed(4)} m orthometric
  quality     ${quality}
`;
const nail = (name: string, time: string, east = 0) => `check ${name} on NAIL-1 at ${time} by R1
  observed    ${(-41195.402 + east).toFixed(3)} m E, 164914.087 m N, height 6.251 m orthometric
  quality     ${GOOD}
`;
const points = (...times: string[]) => `points
  from        BASE
  by          R1
  state       as-broadcast
  columns     name, east m, north m, height m orthometric, time local
${times.map((time, index) => `  row         P${String(index)}, -40900.100, 165002.300, 5.900, ${time}`).join('\n')}
`;

function day(text: string, head = DAY) {
  const inspection = inspect(openDocument('day.trib', head + text), NO_FILES);
  const { session, derivation, findings } = inspection;
  const trust = trustOf(session, derivation);
  const classesOf = () => {
    const [set] = derivation.points;
    return set ? pointCounts(set, session, derivation, trust).classes : null;
  };
  const repaired = () => {
    const { repairer } = sessionRepair(session, derivation);
    return derivation.points.flatMap((set) => {
      const rows: ReturnType<ReturnType<typeof repairer>>[] = [];
      const repairRow = repairer(set);
      set.read((row) => rows.push(repairRow(row)));
      return rows;
    });
  };
  const told = (code: string) => findings.filter((finding) => finding.code === code);
  return { inspection, derivation, findings, trust, classesOf, repaired, told };
}
const verdicts = ({ derivation }: ReturnType<typeof day>) => derivation.checks.map(({ verdict }) => verdict);

describe('a movement that is reported', () => {
  it('of a nail takes the proof from the time around it', () => {
    const moved = day(
      check('OPEN', '08:25') +
        nail('N1', '08:30') +
        nail('N2', '12:00', 0.15) +
        check('CLOSE', '15:25') +
        points('10:00'),
    );
    expect(moved.told('check/drift')).toHaveLength(1);
    expect(moved.trust.day).toBe('in-doubt');
    expect(moved.classesOf()).toMatchObject({ 'in-doubt': 1, bracketed: 0 });
    expect(shortfalls(moved.inspection, 'bracketed')).not.toEqual([]);
    expect(verdictOf(moved.inspection).sentence).toMatch(
      /in doubt, since BASE moved 150 mm horizontally between N1 and N2/,
    );
  });

  it('between two checks that pass does so, too, and only there', () => {
    const drift = day(
      check('OPEN', '08:25', -0.031) +
        check('NOON', '12:00', 0.031) +
        check('CLOSE', '15:25', 0.031) +
        points('10:00', '14:00'),
    );
    expect(verdicts(drift)).toEqual(['passes', 'passes', 'passes']);
    expect(drift.classesOf()).toMatchObject({ 'in-doubt': 1, bracketed: 1 });
    expect(drift.trust.day).toBe('in-doubt');
  });

  it('by the tape is carried by the points where the tolerance has room for it', () => {
    const text = check('OPEN', '08:25') + check('CLOSE', '15:25') + points('10:00');
    // 20 mm less on a slant with 48 mm off centre is 20 mm less in height, to a hundredth of a millimetre.
    const tape = (length: string) => `  measured    ${length} m to foot, 48 mm off centre, at 15:30\n`;
    const [sunk, steady] = [tape('1.264'), tape('1.284')].map((line) => day(line + text));
    if (!sunk || !steady) throw new Error('two days');
    expect(sunk.told('height/settled')).toHaveLength(1);
    expect([sunk.trust.day, steady.trust.day]).toEqual(['not-closed', 'bracketed']);
    expect(shortfalls(sunk.inspection, 'bracketed').length).toBeGreaterThan(1);
    const [up, before] = [sunk, steady].map(({ repaired }) => repaired()[0]?.up ?? NaN);
    expect((up ?? NaN) - (before ?? NaN)).toBeCloseTo(0.02, 3);
    expect(verdictOf(sunk.inspection).sentence).toMatch(
      /not closed, since BASE sank 20 mm between 07:52 and 15:30/,
    );
  });

  it('across an event that was noted stays a matter of that event', () => {
    const knocked = day(
      check('OPEN', '08:25', -0.031) +
        'event disturbance at 12:00\n' +
        check('NOON', '12:10', 0.031) +
        check('CLOSE', '15:25', 0.031) +
        points('10:00', '14:00'),
    );
    expect(knocked.classesOf()).toMatchObject({ 'in-doubt': 0, 'not-closed': 1, bracketed: 1 });
  });
});

describe('a check that fails by a hair', () => {
  /** Budgets of OPEN by hand: marks √2·12 mm and the receivers 15 mm + 1 ppm of 1.01 km, 1 ppm for the geoid, tape 1 mm: 23.4 mm up, so 45.9 mm at 95 %. */
  const tight = DAY.replace('50 mm + 1 ppm vertical', '45 mm vertical');

  it('among good ones asks for another look at itself, and condemns nothing', () => {
    const hair = day(
      check('OPEN', '08:25') +
        check('NOON', '12:00', 0, 0.049) +
        check('CLOSE', '15:25') +
        points('10:00', '14:00'),
      tight,
    );
    expect(verdicts(hair)).toEqual(['passes', 'marginal', 'passes']);
    expect(hair.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(hair.classesOf()).toMatchObject({ bracketed: 2 });
    // P(|z| > 49/23.4 = 2.10) = 0.036; 3 checks make 6 tests, 3 comparisons 6, the mean 2: 1 − 0.964^14 = 0.40.
    expect(hair.told('check/marginal')[0]?.message).toMatch(
      /^NOON is marginal: 49 mm high on PM-09 \(limit 45 mm\)\. One in (2|3) such days/,
    );
  });
  it('counts for nothing where it is the only one', () => {
    expect(day(check('OPEN', '08:25', 0, 0.049), tight).trust.day).toBe('unchecked');
  });
  it('fails beyond what chance does among all tests of the day', () => {
    // 4 × 23.4 mm.
    expect(verdicts(day(check('OPEN', '08:25', 0, 0.094), tight))).toEqual(['fails']);
  });
  it('fails together with others that say the same', () => {
    // On marks of their own: the mean of six shares the base (12 mm) and little else, some 14 mm.
    const more = ['A', 'B', 'C', 'D', 'E', 'F'].map((name) => ({
      mark: MARKS.slice(MARKS.indexOf('mark PM-09'), MARKS.indexOf('mark NAIL-1')).replace(
        'PM-09',
        `PM-${name}`,
      ),
      check: (up: number, time: string) => check(name, time, 0, up).replace('PM-09', `PM-${name}`),
    }));
    const all = (up: number) =>
      day(
        more.map(({ check: of }, index) => of(up, `1${String(index)}:00`)).join(''),
        tight.replace('antenna A1', `${more.map(({ mark }) => mark).join('')}antenna A1`),
      );
    expect(verdicts(all(0.056))).toEqual(Array(6).fill('fails'));
    expect(verdicts(all(0.044))).toEqual(Array(6).fill('passes'));
  });
});

describe('a weak check', () => {
  it.each([
    ['float', 'float, 60 epochs, pdop 1.5, 16 satellites'],
    ['autonomous', 'autonomous, 60 epochs, pdop 1.5, 16 satellites'],
    ['short', 'fixed, 2 epochs, pdop 1.5, 16 satellites'],
  ])('that is %s and 1.4 m off between two good ones neither proves nor condemns', (_, quality) => {
    const weak = day(
      check('OPEN', '08:25') +
        check('WEAK', '12:00', 1.4, 0, quality) +
        check('CLOSE', '15:25') +
        points('10:00', '14:00'),
    );
    expect(weak.trust.day).toBe('bracketed');
    expect(weak.classesOf()).toMatchObject({ bracketed: 2 });
    expect(weak.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(weak.told('check/weak')[0]?.message).toMatch(/It shows 1\.400? m horizontally .*decides nothing/);
  });
  it('that agrees proves nothing', () => {
    expect(day(check('OPEN', '08:25') + check('WEAK', '15:25', 0, 0, 'fixed, 2 epochs')).trust.day).toBe(
      'not-closed',
    );
  });
  it('shows a blunder beyond what it may be off itself, and leaves the class to others', () => {
    const blunder = day(check('WEAK', '08:25', 0, 54.9, 'float, 60 epochs') + points('10:00'));
    expect(blunder.told('check/fails')[0]?.severity).toBe('error');
    expect(blunder.trust.day).toBe('unchecked');
  });
});

describe('a repair from checks after an event', () => {
  const knock = 'event disturbance at 12:00 "forklift"\n';
  const one = check('OPEN', '08:25') + knock + check('CLOSE', '15:25', 0.13) + points('10:00', '14:00');

  it('is offered by one check alone, and not made', () => {
    const [, after] = day(one).repaired();
    expect(after?.shift).toBeNull();
    expect(after?.horizontal).toBeNull();
    expect(after?.label).toBe('in doubt');
    expect(after?.reason).toMatch(
      /CLOSE shows the points 130 mm east.*may be a bad occupation.*occupy PM-09 again/,
    );
  });
  it('is made where a second one agrees, and where somebody confirms the cause', () => {
    const two = day(one.replace('points\n', `${check('AGAIN', '15:30', 0.126)}points\n`)).repaired()[1];
    expect(two?.shift?.east).toBeCloseTo(-0.128, 3);
    const confirmed = day(`${one}correction "base moved" on BASE at 16:00\n  by S. Observer\n`).repaired()[1];
    expect(confirmed?.shift?.east).toBeCloseTo(-0.13, 3);
    // A mean of two occupations is known better than one of them.
    expect(two?.horizontal ?? NaN).toBeLessThan(confirmed?.horizontal ?? NaN);
  });
});

describe('a check without any accuracy stated', () => {
  const silent = (JOB + MARKS + BASE).replaceAll('  uncertainty 8 mm horizontal, 12 mm vertical\n', '');
  it('tells metres from millimetres', () => {
    const off = day(check('OPEN', '08:25', 100), silent);
    expect(verdicts(off)).toEqual(['fails']);
    expect(off.told('check/fails')[0]).toMatchObject({ severity: 'error' });
    expect(off.told('check/fails')[0]?.message).toMatch(
      /(100|99\.999) m horizontally on PM-09 \(limit 4\d\d mm, assumed/,
    );
    expect(off.trust.day).toBe('in-doubt');
  });
  it('proves nothing where it agrees', () => {
    expect(verdicts(day(check('OPEN', '08:25', 0.004), silent))).toEqual(['undecided']);
  });
});
