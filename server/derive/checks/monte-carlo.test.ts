/**
 * A day lived many times over, with errors drawn at random: what its values scatter by is what propagation says of one.
 *
 * The standard deviation of n normal draws is known to 1/√(2n) of itself, and a share p of them to √(p(1 − p)/n); the
 * tolerances below are four times that, so that a right program fails once in some ten thousand seeds.
 */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';
import { listValues } from '../listing.ts';

const DAYS = 800;
const random = normals(20260519);
const days = Array.from({ length: DAYS }, () => valuesOf(lived()));
const first = days[0] ?? new Map<string, { value: number; sigma: number | null }>();

describe('what a day scatters by', () => {
  it.each([
    'setup/BASE/height/arp',
    'setup/BASE/arp/x',
    'setup/BASE/arp/y',
    'setup/BASE/arp/z',
    'mark/PM-14/latitude',
    'mark/PM-09/x',
    'mark/PM-31/x',
    'mark/PM-31/y',
    'mark/PM-31/z',
    'check/OPEN/residual/east',
    'check/OPEN/residual/north',
    'check/OPEN/residual/up',
    'check/OPEN/residual/grid-east',
    'check/OPEN/residual/grid-north',
    'check/NEAR/residual/east',
    'check/NEAR/residual/up',
    'check/SAME/residual/east',
    'check/SAME/residual/up',
  ])('is the standard uncertainty of %s', (id) => {
    const values = days.map((day) => day.get(id)?.value ?? NaN);
    const mean = values.reduce((sum, value) => sum + value, 0) / DAYS;
    const scatter = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (DAYS - 1));
    expect(Math.abs(scatter / (first.get(id)?.sigma ?? NaN) - 1)).toBeLessThan(4 / Math.sqrt(2 * DAYS));
  });

  it.each([
    ['check/OPEN/residual/horizontal', 'check/OPEN/expected/horizontal'],
    ['check/OPEN/residual/up', 'check/OPEN/expected/up'],
    ['check/NEAR/residual/horizontal', 'check/NEAR/expected/horizontal'],
    ['check/SAME/residual/horizontal', 'check/SAME/expected/horizontal'],
    ['check/ODD/residual/horizontal', 'check/ODD/expected/horizontal'],
  ])('keeps %s within %s on 95 days of 100', (residual, expected) => {
    const within = days.filter(
      (day) => Math.abs(day.get(residual)?.value ?? NaN) <= (day.get(expected)?.value ?? NaN),
    );
    expect(Math.abs(within.length / DAYS - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / DAYS));
  });

  it.each(['check/OPEN/chance/horizontal', 'check/OPEN/chance/up', 'check/ODD/chance/horizontal'])(
    'makes any %s as likely as any other',
    (id) => {
      for (const level of [0.05, 0.25, 0.5, 0.75]) {
        const below = days.filter((day) => (day.get(id)?.value ?? NaN) < level);
        expect(Math.abs(below.length / DAYS - level)).toBeLessThan(
          4 * Math.sqrt((level * (1 - level)) / DAYS),
        );
      }
    },
  );

  it('is an ellipse where east and north are known differently well', () => {
    // Both marks 12 mm east and 3 mm north, √2 of it between them, and the rest of the budget of OPEN (6.6 mm).
    expect(first.get('check/ODD/expected/bearing')?.value).toBeCloseTo(90, 0);
    const ratio =
      (first.get('check/ODD/expected/semi-major')?.value ?? NaN) /
      (first.get('check/ODD/expected/semi-minor')?.value ?? NaN);
    expect(ratio).toBeGreaterThan(2);
  });
});

/** The truth is that of the marks below; what is written down of it is off by what the defaults and the marks say. */
function lived(): string {
  const base = { e: -41203.118, n: 164904.902, h: 61.201 };
  const far = { e: -40311.882, n: 165377.404, h: 60.111 };
  const near = { e: -41103.118, n: 164954.902, h: 60.5 };
  const arp = 1.533;
  const off = (sigma: number) => sigma * random();
  const published = (point: typeof base, east: number, north: number, up: number) => ({
    e: point.e + off(east),
    n: point.n + off(north),
    h: point.h + off(up),
  });
  const PM14 = published(base, 0.008, 0.008, 0.012);
  const PM09 = published(far, 0.008, 0.008, 0.012);
  const PM10 = {
    e: near.e + PM14.e - base.e + off(0.003),
    n: near.n + PM14.n - base.n + off(0.003),
    h: near.h + PM14.h - base.h + off(0.004),
  };
  const ODD1 = published(base, 0.012, 0.003, 0.012);
  const ODD2 = published(far, 0.012, 0.003, 0.012);
  const common = off(0.0005);
  const extension = 0.25 + off(0.0002);
  const reading = () => Math.sqrt((arp + common - 0.25) ** 2 + 0.048 ** 2) + off(0.001);
  const readings = [reading(), reading()];
  const reduced = readings.reduce((sum, s) => sum + Math.sqrt(s * s - 0.048 ** 2), 0) / 2 + extension;
  const centring = { e: off(0.001), n: off(0.001) };
  const tilt = Math.tan(((2 / 60) * Math.PI) / 180) * arp;
  const tilted = { e: off(tilt), n: off(tilt) };
  const lean = Math.tan(((2 / 60) * Math.PI) / 180) * 2;
  /** The base's mark and height wrong, the antenna off its mark, receivers and pole as they are. */
  const observed = (truth: typeof base, mark: typeof base, as: typeof base, metres: number) => ({
    e:
      truth.e + mark.e - as.e - centring.e - tilted.e + off((0.008 + 1e-6 * metres) / Math.SQRT2) + off(lean),
    n:
      truth.n + mark.n - as.n - centring.n - tilted.n + off((0.008 + 1e-6 * metres) / Math.SQRT2) + off(lean),
    h: truth.h + mark.h - as.h + reduced - arp + off(0.015 + 1e-6 * metres),
  });
  const at = ({ e, n }: typeof base) => `${e.toFixed(6)} m E, ${n.toFixed(6)} m N`;
  const mark = (name: string, point: typeof base, rest: string) =>
    `mark ${name}\n  position ${at(point)}\n  height ${point.h.toFixed(6)} m ellipsoidal\n${rest}`;
  const check = (name: string, on: string, base: string, point: typeof far) =>
    `check ${name} on ${on} at 08:25\n  from ${base}\n  observed ${at(point)}, height ${point.h.toFixed(6)} m ellipsoidal\n`.replace(
      / at 08:25\n {2}from (\S+)/,
      ' at 08:25 from $1',
    );
  const setup = (name: string, on: string) =>
    `setup ${name} on ${on} at 07:50\n${readings.map((s) => `  measured ${s.toFixed(6)} m to foot, 48 mm off centre, at 07:52`).join('\n')}\n  extension ${extension.toFixed(6)} m\n`;
  const odd = (name: string, point: typeof base) =>
    `mark ${name}\n  position ${point.e.toFixed(6)} m ± 12 mm E, ${point.n.toFixed(6)} m ± 3 mm N\n  height ${point.h.toFixed(6)} m ± 12 mm ellipsoidal\n`;
  const stated = '  uncertainty 8 mm horizontal, 12 mm vertical\n';
  const together = `${stated}  relative 3 mm horizontal, 4 mm vertical\n  source "one register"\n`;
  const truth31 = { x: 4754765.7656, y: -719939.5802, z: 4175857.9823 };
  const [e31, n31, u31] = [off(0.008), off(0.008), off(0.012)];
  const moved31 = inHorizon(truth31, e31, n31, u31);
  return [
    'job "many times over"\n  date 2026-05-19\n  clock UTC\n  grid EPSG:3763\n',
    mark('PM-14', PM14, together),
    mark('PM-09', PM09, stated),
    mark('PM-10', PM10, together),
    odd('ODD-1', ODD1),
    odd('ODD-2', ODD2),
    `mark PM-31\n  position X ${moved31.x.toFixed(6)} m, Y ${moved31.y.toFixed(6)} m, Z ${moved31.z.toFixed(6)} m\n${stated}`,
    setup('BASE', 'PM-14'),
    setup('OTHER', 'ODD-1'),
    check('OPEN', 'PM-09', 'BASE', observed(far, PM14, base, 1008.7)),
    check('NEAR', 'PM-10', 'BASE', observed(near, PM14, base, 111.8)),
    check('SAME', 'PM-14', 'BASE', observed(base, PM14, base, 0)),
    check('ODD', 'ODD-2', 'OTHER', observed(far, ODD1, base, 1008.7)),
  ].join('');
}

/** East, north and up at 41.16°N 8.61°W as X, Y and Z. */
function inHorizon(point: { x: number; y: number; z: number }, e: number, n: number, u: number) {
  const [φ, λ] = [(41.16 * Math.PI) / 180, (-8.61 * Math.PI) / 180];
  return {
    x: point.x - Math.sin(λ) * e - Math.sin(φ) * Math.cos(λ) * n + Math.cos(φ) * Math.cos(λ) * u,
    y: point.y + Math.cos(λ) * e - Math.sin(φ) * Math.sin(λ) * n + Math.cos(φ) * Math.sin(λ) * u,
    z: point.z + Math.cos(φ) * n + Math.sin(φ) * u,
  };
}

function valuesOf(text: string) {
  const { derivation } = inspect(openDocument('x', text), NO_FILES);
  const numbers = new Map<string, { value: number; sigma: number | null }>();
  for (const { id, value } of listValues(derivation))
    if (!isHole(value)) numbers.set(id, { value: value.value, sigma: value.sigma });
  return numbers;
}

/** Normal draws by the polar method (Marsaglia and Bray 1964) over a linear congruential generator (Knuth, MMIX). */
function normals(seed: number): () => number {
  let state = BigInt(seed);
  const uniform = () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 11n) / 2 ** 53;
  };
  return () => {
    for (;;) {
      const [u, v] = [2 * uniform() - 1, 2 * uniform() - 1];
      const s = u * u + v * v;
      if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s);
    }
  };
}
