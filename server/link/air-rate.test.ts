import { describe, expect, it } from 'vitest';
import { bitsPerSecond, bytes, hertz, seconds } from '../quantities/brands.ts';
import { airRateAirtime, airRateLink, usableRate, usualLargestRate, usualSensitivity } from './air-rate.ts';
import { burstAirtime, packetCount } from './link.ts';

describe('a plain air rate', () => {
  it('takes a second for 1200 bytes at 9600 bit/s', () => {
    expect(airRateAirtime({ rate: bitsPerSecond(9600) }, bytes(1200))).toBe(1);
  });

  it('pays for error correction and for bringing the transmitter up', () => {
    const settings = { rate: bitsPerSecond(9600), usable: 0.75, keyUp: seconds(0.03) };
    expect(usableRate(settings)).toBe(7200);
    expect(airRateAirtime(settings, bytes(900))).toBeCloseTo(1.03, 12);
  });

  it('sends a burst in one piece', () => {
    const link = airRateLink({ rate: bitsPerSecond(9600) });
    expect(packetCount(link, bytes(3000))).toBe(1);
    expect(burstAirtime(link, bytes(3000))).toBe(2.5);
  });

  it('knows what is usual in a channel (common practice)', () => {
    expect(usualLargestRate(hertz(12_500))).toBe(9600);
    expect(usualLargestRate(hertz(25_000))).toBe(19_200);
    expect(usualSensitivity(hertz(12_500))).toBeGreaterThan(-116);
    expect(usualSensitivity(hertz(12_500))).toBeLessThan(-108);
  });
});
