import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Files } from '../../session/files.ts';

/** Layout and sign of ANTEX 1.4 (IGS, 2010): labels in columns 61 to 80, offsets in millimetres, phase centre = ARP + offset. */
const line = (data: string, label: string) => `${data.padEnd(60)}${label}\n`;
const frequency = (name: string, up: string) =>
  line(`   ${name}`, 'START OF FREQUENCY') +
  line(`      0.51      0.62 ${up.padStart(9)}`, 'NORTH / EAST / UP') +
  '   NOAZI    0.00   -0.10\n' +
  line(`   ${name}`, 'END OF FREQUENCY');
const calibrationOf = (serial: string, l1: string, l2: string) =>
  line('', 'START OF ANTENNA') +
  line(`TRB-CHOKE       NONE${serial}`, 'TYPE / SERIAL NO') +
  line('     0.0', 'DAZI') +
  line('     0.0  90.0   5.0', 'ZEN1 / ZEN2 / DZEN') +
  line('     2', '# OF FREQUENCIES') +
  frequency('G01', l1) +
  frequency('G02', l2) +
  line('', 'END OF ANTENNA');
const file =
  line('     1.4            M', 'ANTEX VERSION / SYST') +
  line('A', 'PCV TYPE / REFANT') +
  line('', 'END OF HEADER') +
  calibrationOf('0412', '91.00', '121.00') +
  calibrationOf('0413', '93.00', '123.00') +
  calibrationOf('', '90.00', '120.00');

const files: Files = {
  document: () => ({ refused: 'there is none' }),
  bytes: (path) => (path === 'antennas.atx' ? bytes : { refused: 'there is none' }),
};
const bytes = new TextEncoder().encode(file);

function phaseCentre(calibration: string, serial = ''): Maybe<Value> | undefined {
  const text = `job "calibration"\n  date 2026-05-19\nantenna A1\n  calibration ${calibration}\n${serial}mark M\nsetup S on M with A1 at 07:50\n  measured 1.500 m to arp at 07:51\n`;
  return inspect(openDocument('x.trib', text), files).derivation.setups.get('S')?.height.phaseCentre;
}
const value = (found: Maybe<Value> | undefined) => (found === undefined || isHole(found) ? NaN : found.value);

describe('the phase centre of a calibrated antenna', () => {
  it('lies above the ARP by the offset of the signal', () => {
    expect(value(phaseCentre('"antennas.atx" "TRB-CHOKE       NONE" L1'))).toBeCloseTo(1.59, 9);
    expect(value(phaseCentre('"antennas.atx" "TRB-CHOKE       NONE" L2'))).toBeCloseTo(1.62, 9);
    expect(value(phaseCentre('"antennas.atx" "TRB-CHOKE       NONE"'))).toBeCloseTo(1.59, 9);
  });

  it('is its own where its serial number was calibrated, else that of its type', () => {
    const type = '"antennas.atx" "TRB-CHOKE       NONE" L1';
    expect(value(phaseCentre(type, '  serial "0413"\n'))).toBeCloseTo(1.593, 9);
    expect(value(phaseCentre(type, '  serial "0999"\n'))).toBeCloseTo(1.59, 9);
  });

  /** IS-GPS-200 prints γ = (77/60)² for the ratio of the squared frequencies. */
  it('follows the ionosphere-free combination', () => {
    const γ = (77 / 60) ** 2;
    const expected = 1.5 + (γ * 0.09 - 0.12) / (γ - 1);
    expect(value(phaseCentre('"antennas.atx" "TRB-CHOKE       NONE" ionosphere-free'))).toBeCloseTo(
      expected,
      9,
    );
  });

  it('is a hole with a reason where the file or the type is missing', () => {
    expect(phaseCentre('"antennas.atx" "TRB-CHOK        NONE" L1')).toMatchObject({
      hole: expect.stringContaining('is not in the file'),
    });
    expect(phaseCentre('"other.atx" "TRB-CHOKE       NONE" L1')).toMatchObject({
      hole: expect.stringContaining('cannot be read'),
    });
  });
});
