/** Everyday blunders on the example day: what is first named, and whether something else is held open beside it. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { inspect } from '../inspect.ts';
import { NO_FILES } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { diagnosesOf, type Group } from './diagnosis.ts';

const day = readFileSync('samples/example-day.trib', 'utf8');
/** Both checks of the day with so much more east, north and up. */
const shifted = (east: number, north: number, up: number) =>
  day.replace(
    /observed +(-?[\d.]+) m E, ([\d.]+) m N, height ([\d.]+)/g,
    (_, e: string, n: string, h: string) =>
      `observed ${(Number(e) + east).toFixed(3)} m E, ${(Number(n) + north).toFixed(3)} m N, height ${(Number(h) + up).toFixed(3)}`,
  );
function groupsOf(text: string): readonly Group[] {
  const session = sessionOf(openDocument('day.trib', text), NO_FILES);
  return diagnosesOf(session, deriveSession(session, NO_FILES))[0]?.groups ?? [];
}
const named = (text: string) => groupsOf(text)[0]?.explanations.flatMap(({ slips }) => slips) ?? [];

it.each([
  // The pole is 2.000 m, the antenna 1.533 m above the mark.
  ['pole-left-out', 2],
  ['pole-twice', -2],
  ['antenna-height-twice', 1.533],
  ['antenna-height-left-out', -1.533],
  ['metres-dropped', -1],
  ['tape-misread', 0.1],
  ['tape-misread', -0.3048],
] as const)('%s is named where checks are %d m too high', (slip, up) => {
  expect(named(shifted(0, 0, up))).toContain(slip);
});

it('an amount that nobody lists is never told a slip that excludes all else', () => {
  for (const up of [0.17, -0.42, 0.71, -1.27, 2.36]) {
    const [first] = groupsOf(shifted(0, 0, up));
    expect(first?.open ?? true, String(up)).toBe(true);
  }
});

it('the tripod over another mark of the file shows that mark’s difference to the right one', () => {
  // PM-22 lies 50 m east and 30 m north of PM-14 and 0.100 m lower: what is shown is that much west, south and high.
  const mark = `mark PM-22
  position    -41153.118 m E, 164934.902 m N
  height      6.184 m orthometric
  separation  54.917 m
`;
  const [first] = groupsOf(`${shifted(-50, -30, 0.1)}${mark}`);
  expect(first?.explanations[0]?.says).toBe('the tripod stood over PM-22');
  expect(first?.open).toBe(false);
});

it('a keyed height above sea level is named without a separation, by the built-in model', () => {
  const unseparated = day.replace('  separation  54.917 m\n', '');
  const said = (text: string) =>
    inspect(openDocument('day.trib', text), NO_FILES).findings.find(
      ({ code }) => code === 'height/no-separation',
    );
  expect(said(unseparated)?.severity).toBe('warning');
  const slipped = said(unseparated.replace('height 61.201 m ellipsoidal', 'height 6.284 m ellipsoidal'));
  expect(slipped?.severity).toBe('error');
  expect(slipped?.message).toContain('Height above sea level of PM-14 keyed as ellipsoidal');
});
