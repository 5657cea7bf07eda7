/** What is wrong with a used marks file is seen from the session that uses it. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { noticesOf } from '../server/features/notices.ts';
import { inspect } from '../server/inspect.ts';
import { keyCard } from '../server/record/card/key-card.ts';
import { whereIs } from '../server/session/where.ts';
import type { Files } from '../server/session/files.ts';

const MARK = 'mark M1\n  position 100.000 m E, 200.000 m N\n  height 5.000 m ellipsoidal\n';
const DAY = `job "x"
  grid EPSG:3763
use "marks.trib"
antenna A1
setup BASE on M1 with A1 at 08:00
`;
const inspected = (marks: string, day = DAY) => {
  const files: Files = {
    document: (path) => (path === 'marks.trib' ? openDocument(path, marks) : { refused: 'none' }),
    bytes: () => ({ refused: 'none' }),
  };
  return inspect(openDocument('day.trib', day), files);
};
const using = (marks: string) =>
  inspected(marks).findings.filter(({ code }) => code === 'position/grid-unknown');

describe('marks of a file without a grid', () => {
  it('are told where the session names them', () => {
    const [found, ...more] = using(MARK);
    expect(found?.severity).toBe('error');
    expect(found?.message).toMatch(/M1 of marks\.trib has no grid/);
    expect(found?.place.path).toBe('day.trib');
    expect(more).toEqual([]);
  });
  it.each(['job "marks"\n  grid EPSG:3763\n' + MARK, MARK.replace(' m N', ' m N in EPSG:3763')])(
    'are silent with one',
    (marks) => {
      expect(using(marks)).toEqual([]);
    },
  );
});

const REGISTER = `job "marks"
  grid EPSG:3763
mark M1
  position -41203.118 m E, 164904.902 m N
  height 6.284 m orthometric
  separation 54.917 m
mark M2
  position -40311.882 m E, 165377.404 m N
  height 5.196 m orthometric
  separation 54.915 m
antenna A2
  tape-point RIM radius 168 mm, 35 mm above arp
`;
const spoilt = (marks: string, day = DAY) => {
  const { session, findings } = inspected(marks, day);
  return findings
    .filter(({ code }) => code === 'syntax/used-file')
    .map(({ headline, place, related }) => ({
      headline,
      on: `${place.path}:${String(whereIs(session, place).line)}`,
      lines: related
        .filter(({ code }) => code === 'syntax/used-file')
        .map((one) => `${one.place.path}:${String(whereIs(session, one.place).line)}`),
    }));
};

describe('lines of a used file that cannot be read', () => {
  it.each([
    ['a decimal comma', '54.917 m', '54,917 m', 6],
    ['no unit', '54.917 m', '54.917', 6],
    ['no digit before the point', '6.284 m', '.284 m', 5],
    ['an unknown word', '  height 6.284', '  hieght 6.284', 5],
    ['a number behind the line', '6.284 m orthometric', '6.284 m orthometric 5', 5],
    ['a height without its surface', '6.284 m orthometric', '6.284 m', 5],
    ['a coordinate without its letter', '164904.902 m N', '164904.902 m', 4],
    ['a mark whose word is misspelt', 'mark M1', 'mrak M1', 3],
  ])('%s: told where the session uses the file', (_, right, wrong, line) => {
    expect(spoilt(REGISTER.replace(right, wrong))).toEqual([
      {
        headline: `1 error in marks.trib (line ${String(line)}) spoils M1.`,
        on: 'day.trib:3',
        lines: [`marks.trib:${String(line)}`],
      },
    ]);
  });
  it('are one finding, first what the base stands on', () => {
    const day = DAY.replace('setup', 'check C on M2 at 08:30\nsetup');
    const marks = REGISTER.replace('164904.902 m N', '164904.902').replaceAll(/54[.]/g, '54,');
    expect(spoilt(marks, day)).toEqual([
      {
        headline: '3 errors in marks.trib (line 4 first) spoil M1 and M2.',
        on: 'day.trib:3',
        lines: ['marks.trib:4', 'marks.trib:6', 'marks.trib:10'],
      },
    ]);
  });
  it('take the number that rests on them from the key card', () => {
    const marks = REGISTER.replace('6.284 m orthometric', '6.284 m orthometric 5');
    const inspection = inspected(marks);
    const [setup] = inspection.derivation.setups.values();
    const card = setup && keyCard(setup, inspection);
    expect(card?.lines.find(({ label }) => label === 'Ellipsoidal height')?.value).toBeNull();
  });
  // Days on which telling would be wrong.
  it.each([
    ['a mark that the session does not use', REGISTER.replace('54.915 m', '54,915 m'), DAY],
    ['an antenna that stands on no setup', REGISTER.replace('168 mm', '168'), DAY],
    ['an unread entry of another name', `${REGISTER}mrak M7\n  height 1.000 m ellipsoidal\n`, DAY],
    [
      'a mark that the session writes itself, before it uses the file',
      REGISTER.replace('54.917 m', '54,917 m'),
      `job "x"\n  grid EPSG:3763\n${MARK}use "marks.trib"\nantenna A1\nsetup BASE on M1 with A1 at 08:00\n`,
    ],
    ['what is only odd: letters of another case', REGISTER.replace('  height 6', '  Height 6'), DAY],
    ['everything right', REGISTER, DAY],
  ])('are silent: %s', (_, marks, day) => {
    expect(spoilt(marks, day)).toEqual([]);
  });
});

it('shows what is wrong with the values of a used file where an editor has the session', () => {
  const inspection = inspected(REGISTER.replace('6.284 m', '62840 m'));
  const notices = noticesOf(inspection).filter(({ code }) => code === 'height/impossible');
  expect(notices.map(({ at, related }) => [at.path, related[0]?.at.path])).toEqual([
    ['day.trib', 'marks.trib'],
  ]);
});
