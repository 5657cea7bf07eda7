import { describe, expect, it } from 'vitest';
import { bytes, hertz } from '../quantities/brands.ts';
import { burstAirtime, packetCount } from './link.ts';
import type { LoraSettings, Spreading } from './lora.ts';
import {
  loraAirtime,
  loraLink,
  loraRate,
  loraSensitivity,
  loraThroughput,
  slowerLora,
  symbolTime,
} from './lora.ts';

const settings = (spreading: Spreading, bandwidth: number, coding: LoraSettings['coding']): LoraSettings => ({
  spreading,
  bandwidth: hertz(bandwidth),
  coding,
});

// Source: data sheet of a common LoRa transceiver (2020), §4.1 and its table of sensitivities.
describe('LoRa', () => {
  it('takes 164.864 ms for 13 bytes at SF9, 125 kHz, 4/5', () => {
    expect(loraAirtime(settings(9, 125_000, 5), bytes(13)) * 1000).toBeCloseTo(164.864, 9);
  });

  it('has a rate of 9.1 kbps at SF7, 250 kHz, 4/6', () => {
    expect(loraRate(settings(7, 250_000, 6))).toBeCloseTo((7 * 250_000) / 128 / 1.5, 6);
    expect(loraRate(settings(7, 250_000, 6)) / 1000).toBeCloseTo(9.1, 1); // (common practice)
  });

  it('sets the low data rate bit only where a symbol is longer than 16 ms', () => {
    expect(symbolTime(settings(11, 125_000, 5))).toBeCloseTo(0.016384, 12);
    expect(symbolTime(settings(10, 125_000, 5))).toBeLessThan(0.016);
    // By the formula, by hand: SF12, 125 kHz, 4/5, 51 bytes: ceil((408 - 48 + 44) / 40) = 11 blocks of 5, 63 symbols.
    expect(loraAirtime(settings(12, 125_000, 5), bytes(51))).toBeCloseTo((12.25 + 63) * 0.032768, 12);
    // The same at 500 kHz has a symbol of 8.2 ms, no bit, ceil(404 / 48) = 9 blocks.
    expect(loraAirtime(settings(12, 500_000, 5), bytes(51))).toBeCloseTo((12.25 + 53) * 0.008192, 12);
  });

  it('saves 20 bits without a header and 16 without a checksum', () => {
    const bare: LoraSettings = {
      ...settings(7, 125_000, 5),
      header: 'implicit',
      checksum: false,
      preamble: 6,
    };
    // ceil((80 - 28 + 28 - 20) / 28) = 3 blocks of 5 symbols.
    expect(loraAirtime(bare, bytes(10))).toBeCloseTo((10.25 + 8 + 15) * 0.001024, 12);
  });

  it('cuts a burst into packets of at most 255 bytes', () => {
    const link = loraLink(settings(7, 250_000, 6));
    expect(packetCount(link, bytes(255))).toBe(1);
    expect(packetCount(link, bytes(256))).toBe(2);
    expect(burstAirtime(link, bytes(520))).toBeCloseTo(
      2 * link.airtime(bytes(255)) + link.airtime(bytes(10)),
      12,
    );
    expect(burstAirtime(link, bytes(0))).toBe(0);
  });

  it('carries less than its rate, since each packet pays for preamble, header and checksum', () => {
    const slow = settings(10, 125_000, 5);
    expect(loraThroughput(slow)).toBeLessThan(loraRate(slow));
    expect(loraThroughput(slow)).toBeGreaterThan(0.9 * loraRate(slow));
  });

  it.each([
    [7, -123],
    [8, -126],
    [9, -129],
    [10, -132],
    [11, -133],
    [12, -136],
  ] as const)('reads SF%i at 125 kHz down to %i dBm', (spreading, sensitivity) => {
    expect(loraSensitivity(settings(spreading, 125_000, 5))).toBe(sensitivity);
  });

  it('loses 3 dB when the bandwidth is doubled', () => {
    expect(loraSensitivity(settings(7, 250_000, 5))).toBeCloseTo(-120, 1);
  });

  it('slows down a step at a time', () => {
    expect(slowerLora(settings(7, 250_000, 6))?.spreading).toBe(8);
    expect(slowerLora(settings(12, 250_000, 6))).toBeUndefined();
  });
});
