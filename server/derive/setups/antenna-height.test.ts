import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';

const HEAD = `job "heights"
  date 2026-05-19
mark M
antenna A1
  tape-point EDGE radius 190.5 mm, 35.0 mm above arp
  hook 104 mm
antenna POLE
  fixed-height 1.800 m
`;
const heightsOf = (details: string, antenna = 'A1', after = '') => {
  const text = `${HEAD}setup S on M with ${antenna} at 07:50\n${details}\n${after}`;
  const setup = inspect(openDocument('x.trib', text), NO_FILES).derivation.setups.get('S');
  if (!setup) throw new Error('the setup is missing');
  return setup.height;
};
const number = (value: Maybe<Value> | undefined) =>
  value === undefined || isHole(value) ? NaN : value.value;
const sigma = (value: Maybe<Value>) => (isHole(value) ? NaN : (value.sigma ?? NaN));

describe('a steel tape', () => {
  /** 11.6 millionths for each °C from 20 °C (common practice): 1.500 m at 45 °C is 0.435 mm longer, at −5 °C as much shorter. */
  it.each([
    ['45 °C', 1.500435],
    ['20 °C', 1.5],
    ['-5 °C', 1.499565],
  ])('at %s', (temperature, height) => {
    const { arp } = heightsOf(`  measured 1.500 m to arp at 07:51\n  temperature ${temperature}`);
    expect(number(arp)).toBeCloseTo(height, 9);
  });

  /** Two degrees of doubt are 0.035 mm, beside a millimetre of reading. */
  it('is not read better or worse for its warmth', () => {
    const { arp } = heightsOf('  measured 1.500 m to arp at 07:51\n  temperature 31 °C');
    expect(sigma(arp)).toBeCloseTo(Math.hypot(0.001 * (1 + 11.6e-6 * 11), 0.0005, 1.5 * 11.6e-6 * 2), 7);
  });
});

describe('one reading', () => {
  /** Slant to the antenna's edge: H = √(s² − R²) − v; s 1.8527, R 0.1905, v 0.0350 → 1.8079 (geodetic facility's technical note). */
  it('to the edge of the antenna is reduced to the published height', () => {
    expect(number(heightsOf('  measured 1.8527 m to EDGE at 07:51').arp)).toBeCloseTo(1.8079, 4);
  });

  it('to the edge has the extension inside already', () => {
    const height = heightsOf('  measured 1.8527 m to EDGE at 07:51\n  extension 250 mm');
    expect(number(height.arp)).toBeCloseTo(1.8079, 4);
  });

  it('to the foot has the extension on top, and a hook adds its constant', () => {
    expect(number(heightsOf('  measured 1.283 m to foot at 07:51\n  extension 250 mm').arp)).toBeCloseTo(
      1.533,
      9,
    );
    expect(number(heightsOf('  measured 1.283 m to hook at 07:51').arp)).toBeCloseTo(1.387, 9);
  });

  it('needs no tape on a tripod of fixed height', () => {
    const height = heightsOf('  extension 250 mm', 'POLE');
    expect(number(height.arp)).toBeCloseTo(2.05, 9);
  });

  it('that is no longer than its distance from the plumb line is refused', () => {
    const { arp } = heightsOf('  measured 48 mm to foot, 48 mm off centre, at 07:51');
    expect(isHole(arp) && arp.hole).toContain('not longer than its distance from the plumb line');
  });

  it('to a point that nobody described is a hole, never a number', () => {
    expect(isHole(heightsOf('  measured 1.2 m to RIM at 07:51').arp)).toBe(true);
  });
});

describe('several readings', () => {
  it('of one time are weighed together: u² = u_read²/n + u_common²', () => {
    const { arp, groups } = heightsOf(
      '  measured 1.284 m to arp at 07:51\n  measured 1.282 m to arp at 07:53',
    );
    expect(groups).toHaveLength(1);
    expect(number(arp)).toBeCloseTo(1.283, 9);
    expect(sigma(arp)).toBeCloseTo(Math.sqrt(0.001 ** 2 / 2 + 0.0005 ** 2), 7);
  });

  it('count by their uncertainty', () => {
    const { arp } = heightsOf(
      '  measured 1.284 m ± 1 mm to arp at 07:51\n  measured 1.280 m ± 2 mm to arp at 07:53',
    );
    expect(number(arp)).toBeCloseTo((4 * 1.284 + 1.28) / 5, 6);
    // The better one counts (2 mm / 1 mm)² = 4 times.
    expect(arp).toMatchObject({ formula: { expression: '(4 · h1 + h2) / 5 + c' } });
  });

  it('half an hour apart are compared, never averaged', () => {
    const { arp, groups } = heightsOf(
      '  measured 1.284 m to arp at 07:51\n  measured 1.276 m to arp at 15:36',
    );
    expect(groups.map((group) => group.arp.value)).toEqual([1.284, 1.276]);
    expect(number(arp)).toBe(1.284);
  });

  it('with an event between them are compared, too', () => {
    const details = '  measured 1.284 m to arp at 07:51\n  measured 1.276 m to arp at 07:59';
    expect(heightsOf(details).groups).toHaveLength(1);
    expect(heightsOf(details, 'A1', 'event disturbance on S at 07:55').groups).toHaveLength(2);
  });
});
