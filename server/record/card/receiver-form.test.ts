/** The key card in the units and the form of the receiver; a metre is 3937/1200 US survey feet, exactly (NIST SP 811, B.6). */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { NO_FILES } from '../../session/files.ts';
import { cardsHtml } from './card-html.ts';
import { keyCard } from './key-card.ts';

const day = (receiver: string, datum = '') =>
  inspect(
    openDocument(
      'day.trib',
      `job "Jetty"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
${datum}${receiver}mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
antenna A1
setup BASE on PM-14 with A1 at 07:50
  measured    1.500 m to arp, at 07:52
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.250 m to arp
`,
    ),
    NO_FILES,
  );
const card = (receiver: string, datum?: string) => {
  const inspection = day(receiver, datum);
  const setup = inspection.derivation.setups.get('BASE');
  if (!setup) throw new Error('no setup');
  return keyCard(setup, inspection);
};
const valueOf = (found: ReturnType<typeof card>, label: string) =>
  found.lines.find((line) => line.label === label)?.value;

describe('what a receiver is to be told', () => {
  it('is in metres and dms where the job says nothing', () => {
    const found = card('');
    expect(valueOf(found, 'Ellipsoidal height')).toBe('61.201 m');
    expect(valueOf(found, 'Latitude')).toBe(`41°09'08.18286"N`);
  });

  it('is in the unit of the receiver, and so is what was keyed', () => {
    const found = card('  receiver    usft, dms\n');
    // 61.201 × 3937/1200 = 200.7903; 1.500 × 3937/1200 = 4.92125; 1.250 × 3937/1200 = 4.10104.
    expect(valueOf(found, 'Ellipsoidal height')).toBe('200.790 usft');
    expect(valueOf(found, 'Antenna height')).toBe('4.921 usft');
    const keyed = found.lines.find(({ label }) => label === 'Antenna height')?.keyed;
    expect(keyed).toEqual({ typed: '4.101 usft', difference: '250 mm too low' });
    // 0.250 × 3937/1200 = 0.82021
    expect(found.warnings.join()).toContain('puts the base 0.820 usft too low');
  });

  it('is in decimal degrees, of which the ninth decimal is a tenth of a millimetre', () => {
    const found = card('  receiver    degrees\n');
    // 41 + 9/60 + 8.18286/3600 and 8 + 37/60 + 26.27078/3600
    expect(valueOf(found, 'Latitude')).toMatch(/^41\.15227301\d°N$/);
    expect(valueOf(found, 'Longitude')).toMatch(/^8\.62396410\d°W$/);
  });

  it('is in the grid of the job, and not where that has another datum', () => {
    const found = card('  receiver    ft, grid\n');
    // −41203.118 / 0.3048 = −135180.8333; 164904.902 / 0.3048 = 541026.5814
    expect(valueOf(found, 'East')).toBe('−135180.833 ft');
    expect(valueOf(found, 'North')).toBe('541026.581 ft');
    expect(valueOf(found, 'Latitude')).toBeUndefined();
    const other = card('  receiver    grid\n', '  datum       ITRF2014 epoch 2026.38, plate Eurasia\n');
    expect(valueOf(other, 'East')).toBeNull();
    expect(other.warnings.join()).toContain('set it to geographic coordinates');
  });

  it('is copied without its unit', () => {
    expect(cardsHtml(day('  receiver    usft\n'))).toContain('data-copy="200.790"');
    expect(cardsHtml(day('  receiver    ft, grid\n'))).toContain('data-copy="-135180.833"');
  });

  it('refuses a unit or a form that it does not know, in a sentence', () => {
    const { findings } = day('  receiver    yards, dms\n');
    const found = findings.find(({ message }) => message.includes('yards'));
    expect(found?.severity).toBe('error');
    expect(found?.message).toContain('dms');
  });
});
