/** Checks on a benchmark without a position, or on a pillar without a height: they prove the component that they have. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { pointCounts } from '../server/derive/repair/points-counts.ts';
import { classOf, trustOf } from '../server/derive/trust/trust.ts';
import { inspect } from '../server/inspect.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import { shortfalls, verdictOf } from '../server/record/verdict.ts';
import { NO_FILES } from '../server/session/files.ts';

const HEAD = `job "Breakwater, north arm"
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
mark BM-1 "levelled"
  height      5.196 m orthometric
  uncertainty 2 mm vertical
mark PL-1 "pillar"
  position    -40311.882 m E, 165377.404 m N
  uncertainty 8 mm horizontal
antenna A1
  phase-centre 92 mm above arp
rover R1
  pole        2.000 m to arp
setup BASE on PM-14 with A1 at 07:50 until 12:10
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.533 m to arp
  keyed       antenna-type A1
`;
const check = (name: string, mark: string, time: string, east = 0, up = 0) =>
  `check ${name} on ${mark} at ${time} by R1
  observed    ${(-40311.882 + east).toFixed(3)} m E, 165377.404 m N, height ${(5.196 + up).toFixed(3)} m orthometric
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;
const points = (...times: string[]) => `points
  from        BASE
  by          R1
  state       as-broadcast
  columns     name, east m, north m, height m orthometric, time local
${times.map((time, index) => `  row         P${String(index)}, -40900.100, 165002.300, 5.900, ${time}`).join('\n')}
`;

function day(text: string) {
  const inspection = inspect(openDocument('day.trib', HEAD + text), NO_FILES);
  const { session, derivation, findings } = inspection;
  const trust = trustOf(session, derivation);
  const setup = [...derivation.setups.values()][0] ?? null;
  const at = (hours: number, minutes: number) =>
    classOf(trust.rovers, {
      setup,
      rover: 'R1',
      instant: Date.parse('2026-05-19T00:00:00+01:00') / 1000 + hours * 3600 + minutes * 60,
    });
  const counts = () => {
    const [set] = derivation.points;
    return set ? pointCounts(set, session, derivation, trust).classes : null;
  };
  const reasons = () => {
    const { repairer } = sessionRepair(session, derivation);
    return derivation.points.flatMap((set) => {
      const said: string[] = [];
      const repairRow = repairer(set);
      set.read((row) => said.push(repairRow(row).reason));
      return said;
    });
  };
  const told = (code: string) => findings.filter((finding) => finding.code === code);
  return { inspection, derivation, trust, at, counts, reasons, told };
}

describe('a mark with a height alone', () => {
  const levelled = () =>
    day(
      check('OPEN', 'BM-1', '08:25', 0.006, 0.007) +
        check('CLOSE', 'BM-1', '11:55') +
        points('08:00', '09:00'),
    );

  it('is judged in height by the tolerance with its part for the distance', () => {
    // 35 mm and 50 mm with 1 ppm of 1.009 km (PROJ, geod on GRS 80).
    const { tolerance, verdict, judged } = levelled().derivation.checks[0] ?? {};
    expect(verdict).toBe('passes');
    expect(judged).toEqual({ horizontal: null, up: 'passes' });
    expect(tolerance?.up).toMatchObject({ value: expect.closeTo(0.05101, 5) as number });
  });

  it('brackets the height, and leaves the position unchecked', () => {
    const found = levelled();
    expect(found.trust.day).toBe('height-only');
    expect(found.counts()).toMatchObject({ 'height-only': 2, bracketed: 0, unchecked: 0 });
    expect(verdictOf(found.inspection).sentence).toContain(
      '08:25 to 11:55 is bracketed in height and unchecked in position',
    );
    expect(found.reasons().map((reason) => reason.split('. ')[0])).toEqual([
      'Not opened in height and unchecked in position',
      'Bracketed in height and unchecked in position',
    ]);
  });

  it('gives the true reason, and no proof that asks for more', () => {
    const found = levelled();
    const [opening] = found.told('check/missing-opening');
    expect(opening?.headline).toBe('No check of the position from BASE.');
    for (const proof of ['bracketed', 'held', 'checked'] as const)
      expect(shortfalls(found.inspection, proof)).toContain('the day is height only');
  });

  it('condemns all where it fails, since nobody knows what else is wrong', () => {
    const found = day(
      check('OPEN', 'BM-1', '08:25') +
        check('NOON', 'BM-1', '10:00', 0, 0.25) +
        check('CLOSE', 'BM-1', '11:55'),
    );
    expect(found.trust.day).toBe('in-doubt');
  });

  it('takes nothing from a day that whole checks prove', () => {
    const whole = check('OPEN', 'PM-09', '08:25') + check('CLOSE', 'PM-09', '11:55');
    const between = day(whole + check('NOON', 'BM-1', '10:00'));
    const around = day(whole + check('FIRST', 'BM-1', '08:05') + check('LAST', 'BM-1', '12:05'));
    expect([between.trust.day, around.trust.day]).toEqual(['bracketed', 'bracketed']);
    expect([between.at(9, 0), between.at(11, 0)]).toEqual(['bracketed', 'bracketed']);
    // Before the first whole check the position is not opened, whatever the benchmark says.
    expect([around.at(8, 15), around.at(9, 0), around.at(12, 0)]).toEqual([
      'not-opened',
      'bracketed',
      'not-closed',
    ]);
  });
});

describe('a mark with a position alone', () => {
  it('brackets the position, and the two together prove a day', () => {
    const pillar = check('OPEN', 'PL-1', '08:25') + check('CLOSE', 'PL-1', '11:55');
    const alone = day(pillar + points('09:00'));
    expect(alone.trust.day).toBe('position-only');
    expect(alone.counts()).toMatchObject({ 'position-only': 1 });
    expect(alone.told('check/missing-opening')[0]?.headline).toBe('No check of the height from BASE.');
    const both = day(pillar + check('B1', 'BM-1', '08:30') + check('B2', 'BM-1', '11:50') + points('09:00'));
    expect(both.trust.day).toBe('bracketed');
    expect(both.told('check/missing-opening')).toEqual([]);
    expect(shortfalls(both.inspection, 'bracketed')).toEqual([]);
  });

  it('holds the component that agrees across a disturbance, and not the other', () => {
    const found = day(
      check('OPEN', 'BM-1', '08:25') + 'event disturbance at 10:00\n' + check('CLOSE', 'BM-1', '11:55'),
    );
    const setup = found.trust.rovers[0];
    expect(setup?.spans.map(({ parts }) => parts?.up.class)).toEqual([
      'not-opened',
      'held',
      'held',
      'not-closed',
    ]);
    expect(found.trust.events[0]?.held).toBe(false);
  });
});

describe('stretches in which nobody measured', () => {
  const whole = check('OPEN', 'PM-09', '08:25') + check('CLOSE', 'PM-09', '11:55');

  it('are missed by nobody on a perfect day, with points and without', () => {
    for (const text of [whole, whole + points('09:00', '11:00')])
      expect(verdictOf(day(text).inspection).sentence).toMatch(/^Proved: 08:25 to 11:55 is bracketed;/);
  });

  it('are missed as soon as a point lies there', () => {
    const found = day(whole + points('08:00', '09:00'));
    expect(verdictOf(found.inspection).sentence).toMatch(/^07:50 to 08:25 is not opened/);
    expect(shortfalls(found.inspection, 'bracketed')).toHaveLength(1);
  });

  it('count without points where they are longer than setting up takes', () => {
    const late = check('OPEN', 'PM-09', '10:25') + check('CLOSE', 'PM-09', '11:55');
    const silent = day(late);
    expect(verdictOf(silent.inspection).sentence).toMatch(/^07:50 to 10:25 is not opened/);
    expect(silent.told('check/missing-opening')).toHaveLength(1);
    const noted = day(late + points('10:30'));
    expect(verdictOf(noted.inspection).sentence).toMatch(/^Proved: 10:25 to 11:55/);
    expect(noted.told('check/missing-opening')).toEqual([]);
    expect(day(late + points('08:00', '10:30')).told('check/missing-opening')).toHaveLength(1);
  });

  it('count behind an event that was not held, however short they are', () => {
    const knocked = day(check('OPEN', 'PM-09', '08:25') + 'event disturbance at 11:50\n');
    expect(verdictOf(knocked.inspection).sentence).not.toMatch(/^Proved/);
  });
});
