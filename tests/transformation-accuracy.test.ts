/** What lies inside the accuracy of a transformation is no finding and is never taken off; what lies outside is taken off with it. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { inspect } from '../server/inspect.ts';
import { isHole } from '../server/quantities/value.ts';
import { sessionRepair } from '../server/record/points/repair.ts';
import { NO_FILES } from '../server/session/files.ts';

/** EPSG:1314 is published as good to 2 m, and ETRS89 as WGS 84 to 1 m. */
const NATIONAL = { datum: 'EPSG:4258 by EPSG:1314', sigma: Math.hypot(2, 1) };
/** ETRS89 is realised to 0.1 m as an ensemble. */
const MOVING = { datum: 'ITRF2014 epoch 2026.38', sigma: 0.1 };

const heading = (grid: string, datum: string, [east, north]: readonly [number, number]) => `job "Old grid"
  date        2026-05-19
  clock       UTC+01:00
  grid        ${grid}
  datum       ${datum}
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark M1
  position    ${east.toFixed(3)} m E, ${north.toFixed(3)} m N
  height      50.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "register" 2026-04-02
mark M2
  position    ${(east + 900).toFixed(3)} m E, ${(north + 400).toFixed(3)} m N
  height      50.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "register" 2026-04-02
antenna A1
rover R1
  site-calibration none
setup BASE on M1 with A1 at 07:50 until 12:00
  measured    1.500 m to arp, at 07:52
`;

const JOBS = {
  national: { ...NATIONAL, top: heading('EPSG:27700', NATIONAL.datum, [530000, 180000]) },
  moving: { ...MOVING, top: heading('EPSG:3763', MOVING.datum, [-41203.118, 164904.902]) },
};
type Job = (typeof JOBS)[keyof typeof JOBS];

/** A base keyed so many metres from what it should have been told, by the arc of a degree on the sphere. */
function day({ top }: Job, off: { east?: number; north?: number; up?: number }, more = '') {
  const right = valuesIn(top);
  const [latitude, longitude, height] = ['latitude', 'longitude', 'ellipsoidal-height'].map(
    (part) => right.get(`setup/BASE/tell/${part}`) ?? NaN,
  ) as [number, number, number];
  const φ = latitude + (off.north ?? 0) / 111_200;
  const λ = longitude + (off.east ?? 0) / (111_320 * Math.cos((latitude * Math.PI) / 180));
  return `${top}  keyed       position ${φ.toFixed(9)}° N, ${Math.abs(λ).toFixed(9)}° W, height ${(height + (off.up ?? 0)).toFixed(3)} m ellipsoidal
  keyed       antenna-height 1.500 m to arp
  keyed       antenna-type A1
${more}`;
}

const points = (east: number, north: number) => `points
  from        BASE
  by          R1
  state       as-broadcast
  columns     name, time local, east m, north m, height m ellipsoidal
  row         P1, 09:00, ${east.toFixed(3)}, ${north.toFixed(3)}, 50.000
`;

const inspected = (text: string) => inspect(openDocument('day.trib', text), NO_FILES);

function valuesIn(text: string) {
  const { derivation } = inspected(text);
  return new Map(
    listValues(derivation).map(({ id, value }) => [id, isHole(value) ? NaN : value.value] as const),
  );
}

const told = (text: string) =>
  inspected(text).findings.map(({ code, severity, message }) => ({ code, severity, message }));
const about = (text: string, ...codes: string[]) => told(text).filter(({ code }) => codes.includes(code));

function repairedPoint(text: string) {
  const { session, derivation } = inspected(text);
  const repair = sessionRepair(session, derivation);
  const [set] = derivation.points;
  if (!set) throw new Error('no points');
  const rows: ReturnType<ReturnType<typeof repair.repairer>>[] = [];
  set.read((row) => rows.push(repair.repairer(set)(row)));
  const [point] = rows;
  if (!point) throw new Error('no rows');
  return point;
}

describe.each([
  [
    'a national grid by a transformation good to 2.2 m',
    JOBS.national,
    { east: 0, north: 1.8 },
    { east: 14, north: -9 },
  ],
  ['a moving frame at an epoch, good to 0.1 m', JOBS.moving, { north: 0.08 }, { east: 0.6, north: 0.5 }],
] as const)('%s', (_, job, inside, outside) => {
  const here: readonly [number, number] = job === JOBS.national ? [530100, 180100] : [-41103.118, 165004.902];

  it('makes no finding of what lies inside it, and names no slip', () => {
    const all = told(day(job, inside));
    expect(all.filter(({ severity }) => severity === 'error' || severity === 'warning')).toEqual([]);
    expect(all.some(({ message }) => message.includes('comes out if'))).toBe(false);
  });

  it('says once that the transformation limits what can be judged', () => {
    const [limit, ...more] = about(day(job, inside), 'position/transformation-accuracy');
    expect(limit?.severity).toBe('information');
    expect(more).toEqual([]);
    expect(about(day(job, {}), 'position/transformation-accuracy')).toEqual([]);
  });

  it('takes nothing off the points for it, and counts it in what they are good to', () => {
    const { shift, horizontal } = repairedPoint(day(job, inside, points(...here)));
    expect(shift).toBeNull();
    // √(−2 ln 0.05) = 2.4477; mark, receivers and pole add centimetres.
    expect(horizontal).toBeGreaterThan(2.4477 * job.sigma);
    expect(horizontal).toBeLessThan(2.4477 * Math.hypot(job.sigma, 0.05));
  });

  it('tells what lies outside, takes it off, and keeps its own accuracy in the result', () => {
    const text = day(job, outside, points(...here));
    expect(about(text, 'position/keyed-differs')[0]?.severity).toBe('error');
    expect(about(text, 'position/keyed-differs')[0]?.message).toMatch(/transformation/);
    const { shift, horizontal } = repairedPoint(text);
    expect(Math.hypot(shift?.east ?? 0, shift?.north ?? 0)).toBeCloseTo(
      Math.hypot(outside.east, outside.north),
      1,
    );
    expect(horizontal).toBeGreaterThan(2.4477 * job.sigma);
  });

  it('still tells a height that is wrong beside it', () => {
    const found = about(day(job, { ...inside, up: 0.914 }), 'position/keyed-differs', 'unit/feet');
    expect(found).toHaveLength(1);
    expect(found[0]?.severity).toBe('error');
  });
});

describe('what shares a transformation', () => {
  const check = ([east, north]: readonly [number, number]) => `check OPEN on M2 at 08:25
  observed    ${east.toFixed(3)} m E, ${north.toFixed(3)} m N, height 50.003 m ellipsoidal
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;

  it('cancels between marks and checks in one grid: a check there fails by its own tolerance', () => {
    const right = inspected(day(JOBS.national, {}, check([530900.006, 180400.004])));
    expect(right.derivation.checks[0]?.verdict).toBe('passes');
    const wrong = inspected(day(JOBS.national, {}, check([530900.9, 180400.004])));
    expect(wrong.derivation.checks[0]?.verdict).toBe('fails');
    const residual = wrong.derivation.checks[0]?.residual.east;
    expect(residual && !isHole(residual) ? residual.sigma : null).toBeLessThan(0.03);
  });

  /** M2 in ETRS89 by the same transformation, as the program gives it; moved as the base was moved. */
  const seenInKeyedDatum = (north: number) => {
    const other = valuesIn(JOBS.national.top.replace('setup BASE on M1', 'setup BASE on M2'));
    const φ = (other.get('setup/BASE/tell/latitude') ?? NaN) + north / 111_200;
    const λ = other.get('setup/BASE/tell/longitude') ?? NaN;
    return `check OPEN on M2 at 08:25
  observed    ${φ.toFixed(9)}° N, ${Math.abs(λ).toFixed(9)}° W in EPSG:4258 by EPSG:1314, height 50.003 m ellipsoidal
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;
  };
  const verdict = (text: string) => inspected(text).derivation.checks[0]?.verdict;

  it('does not cancel between what was keyed as angles and a mark in the grid', () => {
    expect(verdict(day(JOBS.national, {}, seenInKeyedDatum(0)))).toBe('passes');
    // Base and check lie 1.8 m to the same side: that is the transformation, and proves nothing.
    const together = day(JOBS.national, { north: 1.8 }, seenInKeyedDatum(1.8));
    expect(verdict(together)).toBe('undecided');
    expect(about(together, 'check/fails')).toEqual([]);
    expect(about(together, 'position/transformation-accuracy')).toHaveLength(1);
    // The base was keyed exactly as the transformation gives it, so that the check alone is off.
    expect(verdict(day(JOBS.national, {}, seenInKeyedDatum(1.8)))).toBe('fails');
    // Far outside either way.
    expect(verdict(day(JOBS.national, {}, seenInKeyedDatum(18)))).toBe('fails');
  });
});
