/** Times in other styles than that of 24 hours count for nothing, since what they would count for is another time. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { isHole } from '../quantities/value.ts';
import { NO_FILES } from './files.ts';
import { instantOf, sessionOf } from './session.ts';

/** The clock with twelve hours: noon is 12 pm, midnight 12 am (common practice). */
const styled: readonly (readonly [string, readonly string[]])[] = [
  ['4:40pm', ['16:40']],
  ['4:40 PM', ['16:40']],
  ['4:40 p.m.', ['16:40']],
  ['04:40:30.5pm', ['16:40:30.5']],
  ['4pm', ['16:00']],
  ['16:40pm', ['16:40']],
  ['4:40am', ['04:40']],
  ['12:10am', ['00:10']],
  ['12:10pm', ['12:10']],
  ['16:40am', []],
  ['0:10pm', []],
  ['25:10pm', []],
  ['07:50 UTC', ['07:50Z']],
  ['07:50 GMT', ['07:50Z']],
];

describe('a time in another style', () => {
  it.each(styled)('%s is a hole that may be written as %j', (typed, readings) => {
    const { setup, remarks } = read(`setup BASE on M at ${typed} with A1`);
    expect(isHole(setup.at)).toBe(true);
    expect(setup.with?.name).toBe('A1');
    expect(remarks).toMatchObject([{ about: 'time-style', typed, readings }]);
  });
  it.each(['16:40', '07:50Z', '4:40', '2026-05-20 00:10'])('%s is none', (typed) => {
    const { setup, remarks } = read(`setup BASE on M at ${typed} with A1`);
    expect(setup.at).toMatchObject({ typed });
    expect(remarks).toEqual([]);
  });
});

/** The same rule as of the times of a points file. */
describe('a time of UTC without a date', () => {
  it.each([
    ['UTC+10:00', '22:30Z', '2026-05-18T22:30:00Z'],
    ['UTC+10:00', '13:59Z', '2026-05-19T13:59:00Z'],
    ['UTC-08:00', '07:59Z', '2026-05-20T07:59:00Z'],
    ['UTC-08:00', '08:00Z', '2026-05-19T08:00:00Z'],
    ['UTC+10:00', '2026-05-19 22:30Z', '2026-05-19T22:30:00Z'],
    ['UTC+10:00', '08:30', '2026-05-18T22:30:00Z'],
  ])('is one of the local day: by a clock of %s, %s is %s', (clock, typed, wanted) => {
    const { setup, session } = read(
      `job "x"\n  date 2026-05-19\n  clock ${clock}\nsetup BASE on M at ${typed}`,
    );
    expect(instantOf(setup.at, session.job)).toBe(Date.parse(wanted) / 1000);
  });
});

function read(line: string) {
  const session = sessionOf(openDocument('day.trib', `mark M\nantenna A1\n${line}\n`), NO_FILES);
  const setup = session.setups.get('BASE');
  if (!setup) throw new Error('no setup');
  return { setup, session, remarks: session.remarks };
}
