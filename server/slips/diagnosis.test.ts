import { expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { NO_FILES } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { diagnosesOf } from './diagnosis.ts';

/** The extension of 250 mm was left out of the keyed height, and the check shows it. */
const day = (on: string, observed: string) => `job "Pier"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
setup BASE on PM-14 at 07:50
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
check OPEN on ${on} at 08:25
  observed    ${observed} orthometric
`;
function answers(text: string) {
  const session = sessionOf(openDocument('day.trib', text), NO_FILES);
  return diagnosesOf(session, deriveSession(session, NO_FILES)).map(({ answer }) => answer);
}

it('goes by checks on other marks, and not by one on the mark that the base stands on', () => {
  expect(answers(day('PM-09', '-40311.882 m E, 165377.404 m N, height 4.946 m'))).toEqual(['slips']);
  expect(answers(day('PM-14', '-41203.118 m E, 164904.902 m N, height 6.034 m'))).toEqual([]);
});
