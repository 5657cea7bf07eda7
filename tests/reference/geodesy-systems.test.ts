/**
 * The current projected systems of the register against PROJ's own cs2cs, in both directions: a sample at every run, all
 * of them with TRIBRACH_ALL_SYSTEMS=1, which prints the table that server/geodesy/REFERENCES.md publishes.
 */
import { describe, expect, it } from 'vitest';
import { gridEast, gridNorth, latitude, longitude, type Geographic } from '../../server/quantities/brands.ts';
import { isRefusal } from '../../server/quantities/refusal.ts';
import { forward, inverse } from '../../server/geodesy/projection.ts';
import { projectedSystemOf } from '../../server/geodesy/registry/registry.ts';
import type { AreaOfUse, ProjectedSystem } from '../../server/geodesy/system.ts';
import { ask, isInstalled, say } from './proj-tools.ts';

const installed = isInstalled('cs2cs') && isInstalled('projinfo');
const all = process.env['TRIBRACH_ALL_SYSTEMS'] === '1';

/** The aim in every system that is not refused, in metres on the ground. */
const AIM = 1e-4;

/** Where the other side is known to be the coarser one: the limit in metres, and why. */
const EXPLAINED: Readonly<Record<string, { readonly limit: number; readonly why: string }>> = {
  'EPSG:29333': {
    limit: 2e-4,
    why: 'PROJ rounds the axis of Bessel Namibia (GLM), 6377397.155 German legal metres, to 6377483.865 m',
  },
};

interface Verdict {
  readonly code: string;
  readonly name: string;
  readonly outcome: 'agrees' | 'refused' | 'differs' | 'not computed by cs2cs';
  readonly worst: number;
  readonly reason: string;
}

describe.skipIf(!installed)('the projected systems against cs2cs', () => {
  it('agree to 0.1 mm in their areas of use, or are refused, and at least 95 % convert', async () => {
    const listed = await ask('projinfo', ['--list-crs', 'projected', '--authority', 'EPSG'], []);
    const current = listed.map((line) => line.split(' ')[0] ?? '').filter((code) => code.startsWith('EPSG:'));
    const chosen = all ? current : current.filter((_, place) => place % 37 === 5);
    const verdicts = await judgeAll(chosen);
    const share = report(verdicts, current.length);
    expect(verdicts.filter(({ outcome }) => outcome === 'differs')).toEqual([]);
    expect(share).toBeGreaterThanOrEqual(0.95);
  }, 900_000);
});

async function judgeAll(codes: readonly string[]): Promise<readonly Verdict[]> {
  const waiting = [...codes];
  const verdicts: Verdict[] = [];
  const worker = async () => {
    for (let code = waiting.shift(); code !== undefined; code = waiting.shift())
      verdicts.push(await judge(code));
  };
  await Promise.all([worker(), worker()]);
  return verdicts;
}

async function judge(code: string): Promise<Verdict> {
  const system = projectedSystemOf(code);
  if (isRefusal(system)) return { code, name: '', outcome: 'refused', worst: NaN, reason: system.refused };
  const verdict = { code, name: system.name, worst: NaN, reason: '' };
  const points = pointsIn(system.area);
  const own = points.map((point) => forward(system, point));
  const refusal = own.find(isRefusal);
  if (refusal && own.every(isRefusal)) return { ...verdict, outcome: 'refused', reason: refusal.refused };
  const { semiMajor, flattening } = system.datum.ellipsoid;
  const geographic = ['+proj=longlat', `+a=${semiMajor}`, `+rf=${1 / flattening}`, '+no_defs'];
  const lines = points.map((point) => `${point.longitude} ${point.latitude}`);
  const answer = await ask('cs2cs', ['-f', '%.9f', ...geographic, '+to', code], lines);
  const theirs = answer.map((line) => gridOf(system, line.trim().split(/\s+/).map(Number)));
  if (!theirs.some(({ east, north }) => Number.isFinite(east + north)))
    return { ...verdict, outcome: 'not computed by cs2cs' };
  let worst = 0;
  let reason = '';
  points.forEach((point, place) => {
    const grid = own[place];
    const their = theirs[place];
    if (grid === undefined || their === undefined || !Number.isFinite(their.east)) return;
    if (isRefusal(grid)) {
      worst = Infinity;
      reason = grid.refused;
      return;
    }
    worst = Math.max(worst, Math.hypot(grid.east - their.east, grid.north - their.north));
    const back = inverse(system, their);
    worst = Math.max(worst, isRefusal(back) ? Infinity : onGround(back, point));
    if (isRefusal(back)) reason = back.refused;
  });
  return {
    ...verdict,
    worst,
    reason,
    outcome: worst <= (EXPLAINED[code]?.limit ?? AIM) ? 'agrees' : 'differs',
  };
}

/** Five by five points from edge to edge of the area of use. */
function pointsIn(area: AreaOfUse | undefined): readonly Geographic[] {
  if (area === undefined) return [];
  const width = area.east < area.west ? area.east + 360 - area.west : area.east - area.west;
  const shares = [0.01, 0.25, 0.52, 0.75, 0.99];
  return shares.flatMap((up) =>
    shares.map((right) => {
      const λ = area.west + width * right;
      const φ = area.south + (area.north - area.south) * up;
      return { latitude: latitude(φ), longitude: longitude(λ > 180 ? λ - 360 : λ) };
    }),
  );
}

/** Their numbers, in the system's own axes and unit, as metres east and north. */
function gridOf({ axes, unit }: ProjectedSystem, [first = NaN, second = NaN]: readonly number[]) {
  const along = { east: 0, north: 0, west: 0, south: 0 };
  along[axes.first] = first * unit.metres;
  along[axes.second] = second * unit.metres;
  return { east: gridEast(along.east - along.west), north: gridNorth(along.north - along.south) };
}

const onGround = (one: Geographic, other: Geographic) => {
  const turn = ((one.longitude - other.longitude + 540) % 360) - 180;
  return 111_320 * Math.hypot(one.latitude - other.latitude, turn * Math.cos((one.latitude * Math.PI) / 180));
};

function report(verdicts: readonly Verdict[], current: number): number {
  const having = (outcome: Verdict['outcome']) => verdicts.filter((verdict) => verdict.outcome === outcome);
  const agreeing = having('agrees');
  const worst = Math.max(...agreeing.map((verdict) => verdict.worst));
  const within = (limit: number) => agreeing.filter((verdict) => verdict.worst <= limit).length;
  const share = agreeing.length / verdicts.length;
  say(
    `Projected systems against cs2cs: ${verdicts.length} of ${current} current ones, 25 points each, both ways.`,
  );
  say(
    `  agree: ${agreeing.length} (${(share * 100).toFixed(1)} %), the worst by ${(worst * 1000).toFixed(6)} mm;`,
  );
  say(
    `    within 0.000001 mm ${within(1e-9)}, 0.0001 mm ${within(1e-7)}, 0.001 mm ${within(1e-6)}, 0.01 mm ${within(1e-5)}`,
  );
  for (const { code, name, worst: by } of agreeing.filter((verdict) => verdict.worst > 1e-5))
    say(`    beyond 0.01 mm: ${code} ${name} ${(by * 1000).toFixed(3)} mm ${EXPLAINED[code]?.why ?? ''}`);
  for (const outcome of ['refused', 'differs', 'not computed by cs2cs'] as const) {
    say(`  ${outcome}: ${having(outcome).length}`);
    for (const { code, name, worst: by, reason } of having(outcome))
      say(`    ${code} ${name} ${by} ${reason}`);
  }
  return share;
}
