/** East and north of an observation swapped: told as that, and days on which it would be wrong to say so. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { NO_FILES } from '../../session/files.ts';

const day = (observed: string, position = '-40311.882 m E, 165377.404 m N') =>
  inspect(
    openDocument(
      'day.trib',
      `job "Breakwater"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
mark PM-09
  position    ${position}
  height      5.196 m orthometric
  separation  54.915 m
antenna A1
setup BASE on PM-14 with A1 at 07:50
  measured    1.533 m to arp, at 07:52
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.533 m to arp
check OPEN on PM-09 at 08:25
  observed    ${observed}
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`,
    ),
    NO_FILES,
  ).findings;
const codes = (...of: Parameters<typeof day>) => day(...of).map(({ code }) => code);

describe('an observation with east and north swapped', () => {
  it('is told so, with the failed check under it and no slip of the base', () => {
    const found = day('165377.410 m E, -40311.876 m N, height 5.203 m orthometric');
    const swapped = found.find(({ code }) => code === 'position/swapped');
    expect(swapped?.headline).toBe('East and north of OPEN are swapped.');
    expect(swapped?.related.map(({ code }) => code)).toContain('check/fails');
    expect(found.map(({ message }) => message).join()).not.toContain('known slip');
    expect(
      found.flatMap(({ fixes }) => fixes.flatMap(({ edits }) => edits.map(({ text }) => text))).join(),
    ).not.toContain('40311');
  });

  it.each([
    ['as it should be', '-40311.876 m E, 165377.410 m N, height 5.203 m orthometric'],
    ['a metre off', '-40312.876 m E, 165377.410 m N, height 5.203 m orthometric'],
    ['swapped and a metre off: nobody knows', '165378.410 m E, -40311.876 m N, height 5.203 m orthometric'],
    ['only turned in sign', '40311.876 m E, 165377.410 m N, height 5.203 m orthometric'],
  ])('is not seen in one %s', (_, observed) => {
    expect(codes(observed)).not.toContain('position/swapped');
  });

  it('is not seen where both numbers are alike, so that either order fails or passes as well', () => {
    const alike = '-40311.882 m E, -40311.900 m N';
    expect(codes('-40311.800 m E, -40311.882 m N, height 5.203 m orthometric', alike)).not.toContain(
      'position/swapped',
    );
  });

  it('does not take a failed height with it', () => {
    const found = day('165377.410 m E, -40311.876 m N, height 4.953 m orthometric');
    expect(found.map(({ code }) => code)).toContain('position/swapped');
    expect(found.find(({ code }) => code === 'check/fails')?.headline).toContain('low');
  });
});
