/** Days of which something was recorded: where notes and recording differ, the recording is right, and nothing ever crashes on one. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { joinedBytes } from '../server/evidence/rtcm3/encoder.test-support.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { isHole } from '../server/quantities/value.ts';
import { occupation } from '../server/record/drawings/occupation.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import type { Files } from '../server/session/files.ts';
import { folderWith, tribrach } from './command-line-run.ts';
import {
  KEYED,
  log,
  MORNING,
  onPole,
  recordings,
  SEA_LEVEL,
  stream,
  type LoggedEpoch,
} from './recordings.ts';

const MARKS = `job "Breakwater, north arm"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2026-04-02
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2026-04-02
rover R1
  pole        2.000 m to arp
`;
const RIGHT = '61.201';
const setup = (height: string, more = '', at = '07:50') => `setup BASE on PM-14 at ${at} until 15:40
  measured    1.283 m to foot, at 07:52
  extension   250 mm
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height ${height} m ellipsoidal
  keyed       antenna-height 1.533 m to arp
${more}  captured    "base.rtcm3"
`;
const check = (name: string, at: string, height: string) => `check ${name} on PM-09 at ${at} by R1
  observed    -40311.876 m E, 165377.410 m N, height ${height} m orthometric
`;
const TOLD = 54.917;

function filesOf(contents: Readonly<Record<string, Uint8Array>>): Files {
  return {
    document: () => ({ refused: 'there is none' }),
    bytes: (path) => contents[path] ?? { refused: 'there is no such file' },
  };
}
const inspected = (text: string, contents: Readonly<Record<string, Uint8Array>>): Inspection =>
  inspect(openDocument('day.trib', text), filesOf(contents));

function value({ derivation }: Inspection, id: string): number {
  const found = listValues(derivation).find((listed) => listed.id === id)?.value;
  if (!found || isHole(found)) throw new Error(`${id}: ${found?.hole ?? 'not listed'}`);
  return found.value;
}
const coded = ({ findings }: Inspection, code: string) => findings.filter((finding) => finding.code === code);

describe('a base that stands for days', () => {
  /** Monday to Thursday. */
  const days = (from: string, until: string) =>
    setup(RIGHT).replace('at 07:50 until 15:40', `at ${from}${until}`).replace(', at 07:52', '');
  const toldOf = (text: string, dayOfWeek: number) => {
    const day = inspected(MARKS + text, { 'base.rtcm3': stream(KEYED, MORNING, 31, dayOfWeek * 86_400) });
    return coded(day, 'capture/unusable').map(({ message }) => message);
  };
  const before = /of another day: base.rtcm3/;

  it.each([1, 2, 3, 4])('may be recorded on any of them: weekday %i', (weekday) => {
    expect(toldOf(days('2026-05-18 06:00', ' until 2026-05-21 18:00'), weekday)).toEqual([]);
  });
  it.each([0, 5, 6])('and not on another one: weekday %i', (weekday) => {
    expect(toldOf(days('2026-05-18 06:00', ' until 2026-05-21 18:00'), weekday)[0]).toMatch(before);
  });
  it('may not have been taken down yet, and did not stand before', () => {
    expect(toldOf(days('07:50', ''), 3)).toEqual([]);
    expect(toldOf(days('07:50', ''), 1)[0]).toMatch(before);
  });
  it('broadcast what it did on the day when it was recorded', () => {
    const thursday = 4 * 86_400;
    const bytes = joinedBytes(
      stream(KEYED, MORNING, 11, thursday),
      stream(SEA_LEVEL, MORNING + 20, 11, thursday),
    );
    const day = inspected(MARKS + days('2026-05-18 06:00', ' until 2026-05-21 18:00'), {
      'base.rtcm3': bytes,
    });
    const [, lower] = day.derivation.setups.get('BASE')?.captured?.positions ?? [];
    // Its position comes before the first epoch of its burst, so that the last one before it tells the time.
    expect(lower?.from).toBe(Date.parse('2026-05-21T06:52:10Z') / 1000);
  });
});

describe('the recordings of the samples', () => {
  it.each(Object.entries(recordings()))('%s is what the tests make', (name, bytes) => {
    expect(readFileSync(`samples/recordings/${name}`).equals(bytes)).toBe(true);
  });
});

describe('a right note and a wrong broadcast', () => {
  const day = inspected(
    MARKS + setup(RIGHT) + check('OPEN', '08:25', '-49.714') + check('CLOSE', '15:25', '-49.718'),
    { 'base.rtcm3': stream(SEA_LEVEL, MORNING, 31) },
  );

  it('is told as what it is, once, with the failing checks below it', () => {
    const [finding, ...more] = coded(day, 'capture/differs');
    expect(more).toEqual([]);
    expect(finding?.severity).toBe('error');
    expect(finding?.message).toContain('54.917 m too low');
    expect(finding?.related.filter(({ code }) => code === 'check/fails')).toHaveLength(2);
    expect(coded(day, 'check/fails')).toEqual([]);
  });

  it('tells of the antenna height of message 1006 where another one is noted', () => {
    const messages = [setup(RIGHT), setup(RIGHT).replace('1.533 m', '1.543 m')].map((noted) => {
      const told = inspected(MARKS + noted, { 'base.rtcm3': stream(SEA_LEVEL, MORNING, 31) });
      return coded(told, 'capture/differs')[0]?.message;
    });
    expect(messages[0]).not.toContain('1006');
    expect(messages[1]).toMatch(/1006 .*1[.]533 m.*1[.]543 m is noted/);
  });

  it('explains what the checks show', () => {
    expect(Math.abs(value(day, 'check/OPEN/explained/up') + TOLD)).toBeLessThan(0.001);
    expect(Math.abs(value(day, 'setup/BASE/captured/1/up') + TOLD)).toBeLessThan(0.001);
    // What was noted as keyed is right, and stays so.
    expect(Math.abs(value(day, 'setup/BASE/keyed/1/up'))).toBeLessThan(0.001);
  });

  it('is repaired from the recording', () => {
    const { repair } = sessionRepair(day.session, day.derivation);
    expect(repair.remedies.map(({ size }) => size.up.toFixed(2))).toEqual(['-54.92']);
    expect(repair.remedies[0]?.reason).toContain('base.rtcm3');
    expect(repair.checks.map(({ verdict }) => verdict)).toEqual(['passes', 'passes']);
  });
});

describe('a wrong note and a right broadcast', () => {
  const day = inspected(MARKS + setup('6.284') + check('OPEN', '08:25', '5.203'), {
    'base.rtcm3': stream(KEYED, MORNING, 31),
  });

  it('leaves the points alone', () => {
    expect(coded(day, 'capture/differs').map(({ severity }) => severity)).toEqual(['warning']);
    expect(coded(day, 'capture/differs')[0]?.message).toContain('broadcast is right');
    // That a height above sea level is noted as keyed hangs below: it did not reach the points.
    expect(day.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(sessionRepair(day.session, day.derivation).repair.remedies).toEqual([]);
    expect(day.derivation.checks[0]?.verdict).toBe('passes');
    expect(Math.abs(value(day, 'check/OPEN/explained/up'))).toBeLessThan(0.001);
  });
});

describe('a base that is keyed anew', () => {
  const both = joinedBytes(stream(SEA_LEVEL, MORNING, 100), stream(KEYED, MORNING + 100, 100));
  const again = `  keyed       height ${RIGHT} m ellipsoidal, at 07:53\n`;

  it('and noted so, is as it was noted', () => {
    const day = inspected(MARKS + setup('6.284', again), { 'base.rtcm3': both });
    expect(coded(day, 'capture/differs')).toEqual([]);
    expect(day.derivation.setups.get('BASE')?.broadcasts).toBe(day.derivation.setups.get('BASE')?.keyed);
  });

  it('and not noted so, is told for the time that it was wrong', () => {
    const day = inspected(MARKS + setup(RIGHT), { 'base.rtcm3': both });
    const [finding, ...more] = coded(day, 'capture/differs');
    expect(more).toEqual([]);
    expect(finding?.severity).toBe('information');
    // The position of a second comes before the epoch that tells the time.
    expect(finding?.message).toMatch(/until 07:53:(39|40)/);
    const states = day.derivation.setups.get('BASE')?.broadcasts ?? [];
    expect(states.map(({ recorded }) => recorded?.text ?? 'noted')).toEqual(['base.rtcm3', 'noted']);
    const { repair } = sessionRepair(day.session, day.derivation);
    expect(repair.remedies.map(({ size }) => size.up.toFixed(2))).toEqual(['-54.92']);
  });
});

describe('an antenna log in the place of what a controller showed', () => {
  const occupied = (length: number, epoch: (index: number) => Partial<LoggedEpoch>) =>
    log(
      Array.from({ length }, (_, index) => ({
        antenna: onPole(index, 2, { east: 0.012, north: -0.007, up: 0.015 }),
        separation: 54.83,
        quality: 4 as const,
        ...epoch(index),
      })),
    );
  const text = `${MARKS}${setup(RIGHT)}check OPEN on PM-09 at 08:25 by R1
  observed    from "rover.nmea" between 08:25 and 08:28
`;
  const files = (nmea: Uint8Array) => ({ 'rover.nmea': nmea, 'base.rtcm3': stream(KEYED, MORNING, 31) });

  it('gives back what was planted, with the pole taken off', () => {
    const day = inspected(text, files(occupied(180, () => ({}))));
    expect(Math.abs(value(day, 'check/OPEN/residual/east') - 0.012)).toBeLessThan(0.0005);
    expect(Math.abs(value(day, 'check/OPEN/residual/north') + 0.007)).toBeLessThan(0.0005);
    expect(Math.abs(value(day, 'check/OPEN/residual/up') - 0.015)).toBeLessThan(0.0005);
    expect(day.derivation.checks[0]?.quality?.solution?.name).toBe('fixed');
    expect(coded(day, 'recording/doubtful')).toEqual([]);
  });

  it('takes the epochs of the time asked for, and the fixed ones', () => {
    const astray = { antenna: onPole(0, 2, { east: 3, north: 3, up: 3 }) };
    const day = inspected(
      text,
      files(occupied(400, (index) => (index > 200 ? astray : index < 40 ? { ...astray, quality: 5 } : {}))),
    );
    expect(Math.abs(value(day, 'check/OPEN/residual/up') - 0.015)).toBeLessThan(0.001);
    expect(coded(day, 'recording/doubtful')).toHaveLength(1);
  });

  it('stands in for a point as well', () => {
    const point = text.replace('check OPEN on PM-09', 'point KERB');
    const day = inspected(point, files(occupied(180, () => ({}))));
    const [set] = day.derivation.points;
    const rows: number[] = [];
    set?.read(({ height }) => rows.push(height ?? NaN));
    expect(Math.abs((rows[0] ?? 0) - (5.196 + 54.915 + 0.015))).toBeLessThan(0.0005);
  });

  it('is weak where nothing was fixed', () => {
    const day = inspected(text, files(occupied(180, () => ({ quality: 5 }))));
    expect(coded(day, 'check/weak')).toHaveLength(1);
  });

  it('is drawn as it ran', () => {
    const day = inspected(text, files(occupied(180, () => ({}))));
    const [values] = day.derivation.checks;
    if (!values) throw new Error('there is a check');
    const { markup } = occupation(day, values, { width: 680, link: null });
    expect(markup).toContain('180 epochs, 100 % of them fixed');
    // Each epoch is a dot in the scatter and one in each of the three rows.
    expect(markup.match(/M[\d.-]+ [\d.-]+a/g)).toHaveLength(4 * 180);
  });
});

describe('bytes that are no recording', () => {
  const text = `${MARKS}${setup(RIGHT, '  raw-log     "base.26o"\n')}check OPEN on PM-09 at 08:25 by R1
  observed    from "rover.nmea" between 08:25 and 08:28
`;

  it('never crash, and never yield a position', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 4000 }), (bytes) => {
        const day = inspected(text, { 'base.rtcm3': bytes, 'rover.nmea': bytes, 'base.26o': bytes });
        expect(day.derivation.setups.get('BASE')?.captured?.positions).toEqual([]);
        expect(day.derivation.checks[0]?.observed.located).toHaveProperty('hole');
      }),
      { numRuns: 100 },
    );
  });

  const whole = stream(KEYED, MORNING, 12);
  const right = (day: Inspection) =>
    (day.derivation.setups.get('BASE')?.captured?.positions ?? []).map(
      ({ sighting }) => sighting.value.position,
    );
  const [truth] = right(inspected(text, { 'base.rtcm3': whole }));

  it('cut short anywhere, tell the truth or nothing', () => {
    expect(truth).toBeDefined();
    for (let end = 0; end < 400; end += 7)
      for (const position of right(inspected(text, { 'base.rtcm3': whole.slice(0, end) })))
        expect(position).toEqual(truth);
  });

  it('changed in one place, tell the truth or nothing', () => {
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
        const bytes = Uint8Array.from(whole);
        bytes[at] = (bytes[at] ?? 0) ^ flip;
        for (const position of right(inspected(text, { 'base.rtcm3': bytes })))
          expect(position).toEqual(truth);
      }),
      { numRuns: 150 },
    );
  });
});

describe('tribrach capture', () => {
  const folder = folderWith({ ...recordings(), 'noise.bin': new Uint8Array(5000).fill(7) });

  it('prints stations, positions, messages and what is wrong', async () => {
    const { status, printed } = await tribrach(['capture', folder.path('twins.rtcm3')]);
    expect(status).toBe(0);
    expect(printed).toContain('station 12');
    expect(printed).toContain(`41°09'08.18286"N, 8°37'26.27078"W, height 62.7340 m`);
    expect(printed).toContain('two bases may share');
    expect(printed).toMatch(/1077 +GPS observations, MSM7 +40 +every 1 s/);
  });

  it('answers programs in JSON', async () => {
    const { printed } = await tribrach(['capture', folder.path('base.rtcm3'), '--format', 'json']);
    const facts = JSON.parse(printed) as {
      frames: number;
      stations: { station: number; positions: unknown[] }[];
    };
    expect(facts.stations.map(({ station, positions }) => [station, positions.length])).toEqual([[12, 1]]);
    // 31 seconds: 1077 each, 1087 every other, three more every ten.
    expect(facts.frames).toBe(31 + 16 + 3 * 4);
  });

  it('says so where there is nothing to read', async () => {
    expect((await tribrach(['capture', folder.path('noise.bin')])).status).toBe(1);
    const lost = await tribrach(['capture', folder.path('lost.rtcm3')]);
    expect(lost.status).toBe(2);
    expect(lost.complained).toContain('there is no such file');
    expect((await tribrach(['capture', folder.path()])).complained).toContain('it is a folder');
    folder.remove();
  });
});
