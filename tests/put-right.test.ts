/** What has been put right since asks for no line more, and a thousandfold reading is told as what it is. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { NO_FILES } from '../server/session/files.ts';

const KEYED = '  keyed       antenna-height 1.283 m to arp\n';
const day = (more = '', measured = '1.284 m to foot, 48 mm off centre, at 07:52') => `job "Harbour"
  date        2026-05-19
  clock       UTC
  grid        EPSG:3763
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      61.201 m ellipsoidal
antenna A1
  tape-point  RIM radius 168 mm, 35 mm above arp
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    ${measured}
  extension   250 mm
${KEYED}${more}`;
const found = (text: string) => inspect(openDocument('day.trib', text), NO_FILES).findings;
const fixesOf = (text: string, code: string) =>
  found(text)
    .filter((finding) => finding.code === code)
    .map(({ fixes }) => fixes.map(({ title }) => title));

describe('a line for what was keyed instead', () => {
  it('is offered while nothing else was noted', () => {
    expect(fixesOf(day(), 'height/extension')).toEqual([['Add a line for what was keyed instead']]);
  });
  it.each([
    ['keyed anew', '  keyed       antenna-height 1.533 m to arp, at 09:00\n'],
    ['corrected', 'correction "extension left out" on BASE at 16:10\n'],
    ['corrected, at the only base', 'correction "extension left out" at 16:10\n'],
  ])('is not offered once it was %s', (_, more) => {
    expect(fixesOf(day(more), 'height/extension')).toEqual([[]]);
  });
  it('is offered where another base was corrected', () => {
    const other = 'correction "extension left out" on OTHER at 16:10\n';
    expect(fixesOf(day(other), 'height/extension')).toEqual([['Add a line for what was keyed instead']]);
  });
});

describe('a tape reading of a thousandfold', () => {
  const roots = (measured: string) =>
    found(day('', measured).replace(KEYED, ''))
      .filter(({ severity }) => severity === 'error')
      .map(({ code, headline, fixes }) => [code, headline, ...fixes.map(({ title }) => title)]);
  // 1.533 m to the rim of 168 mm radius stands some 9 mm lower, whatever the unit was.
  it.each([
    ['1.462 mm to RIM, at 07:52\n  measured 1.463 m to RIM, at 07:54', '1.462 m'],
    ['1.462 mm to arp, at 07:52\n  measured 1.463 m to arp, at 07:54', '1.462 m'],
    ['1462 m to RIM, at 07:52\n  measured 1.463 m to RIM, at 07:54', '1462 mm'],
    ['1.462 m to RIM, at 07:52\n  measured 1463 m to RIM, at 07:54', '1463 mm'],
  ])('%s is one error, with the unit', (measured, meant) => {
    expect(roots(measured)).toEqual([
      ['unit/thousandfold', `Tape reading agrees with the other one only as ${meant}.`, `Write ${meant}`],
    ]);
  });
  it('is one in feet where only feet make it agree', () => {
    expect(roots('4.797 m to RIM, at 07:52\n  measured 1.463 m to RIM, at 07:54')[0]?.[0]).toBe('unit/feet');
  });
  // Days on which telling it would be wrong.
  it.each([
    ['two right readings in two units', '1.462 m to RIM, at 07:52\n  measured 1463 mm to RIM, at 07:54'],
    ['readings to two points', '1.462 m to RIM, at 07:52\n  measured 1.430 m to arp, at 07:54'],
    ['one reading alone', '1.462 m to RIM, at 07:52'],
    ['a stand of a few millimetres twice', '12 mm to arp, at 07:52\n  measured 12.5 mm to arp, at 07:54'],
    ['feet beside metres', '4.797 ft to RIM, at 07:52\n  measured 1.463 m to RIM, at 07:54'],
  ])('is silent: %s', (_, measured) => {
    expect(roots(measured)).toEqual([]);
  });
});
