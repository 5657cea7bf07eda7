/**
 * Two satellites of a published day (permanent station ESBC, 2020-06-25, open data of a public network), by figures
 * that an independent program computed from the interface documents, beside the precise orbits of an analysis centre.
 */
import { describe, expect, it } from 'vitest';
import { navigationReader } from '../evidence/rinex/navigation-file.ts';
import { clockPolynomial, orbit, satelliteState } from './orbit.ts';
import { E13, G18, HEADER_3 } from './records.test-support.ts';

const recordOf = (text: string) => {
  const reader = navigationReader();
  reader.push(new TextEncoder().encode(HEADER_3 + text));
  const { records, problems } = reader.finish();
  expect(problems).toEqual([]);
  expect(records).toHaveLength(1);
  return records[0] as (typeof records)[number];
};
/** 2020-06-25 12:15:00. */
const NOON = Date.UTC(2020, 5, 25, 12, 15) / 1000;

describe('the orbit from a broadcast record', () => {
  it('puts G18 where the independent program does, and within 1.5 m of the precise orbit', () => {
    const record = recordOf(G18);
    const state = satelliteState();
    orbit(record, NOON, state);
    expect(state.x).toBeCloseTo(4165585.2017, 3);
    expect(state.y).toBeCloseTo(15578491.8351, 3);
    expect(state.z).toBeCloseTo(21089076.0129, 3);
    expect(clockPolynomial(record, NOON)).toBeCloseTo(2.297907021784554e-4, 17);
    expect(state.clock).toBeCloseTo(2.29791698972089e-4, 16);
    expect(record.groupDelay).toBe(-7.916241884232e-9);
    expect(record.message).toBe('LNAV');
    const precise = { x: 4165585.292, y: 15578493.026, z: 21089076.52 };
    expect(Math.hypot(state.x - precise.x, state.y - precise.y, state.z - precise.z)).toBeLessThan(1.5);
  });

  it('puts E13 where the independent program does, and within 1.5 m of the precise orbit', () => {
    const record = recordOf(E13);
    const state = satelliteState();
    orbit(record, NOON, state);
    expect(state.x).toBeCloseTo(20930852.6272, 3);
    expect(state.y).toBeCloseTo(-16055716.7135, 3);
    expect(state.z).toBeCloseTo(13420931.9429, 3);
    expect(clockPolynomial(record, NOON)).toBeCloseTo(4.018595309390026e-4, 17);
    expect(state.clock - clockPolynomial(record, NOON)).toBeCloseTo(-1.53824e-10, 15);
    expect(record.message).toBe('FNAV');
    const precise = { x: 20930853.506, y: -16055717.108, z: 13420932.421 };
    expect(Math.hypot(state.x - precise.x, state.y - precise.y, state.z - precise.z)).toBeLessThan(1.5);
  });
});
