import { expect, it } from 'vitest';
import { pathBefore } from './typed-path.ts';

it.each([
  ['use "', { folder: '.', started: '' }],
  ['use "../ma', { folder: '../', started: 'ma' }],
  ['  geoid       "grids/', { folder: 'grids/', started: '' }],
  ['  calibration "antennas', { folder: '.', started: 'antennas' }],
  ['  observed    from "logs/ro', { folder: 'logs/', started: 'ro' }],
  ['points "pick', { folder: '.', started: 'pick' }],
])('behind %s a path is typed', (line, typed) => {
  expect(pathBefore(line, line.length)).toMatchObject(typed);
});

it('knows which files fit', () => {
  expect(pathBefore('use "', 5)?.endings).toEqual(['.trib']);
  expect(pathBefore('  captured "', 12)?.endings).toBeNull();
});

it.each([
  'note "the ma',
  'job "North',
  'use ',
  'use "marks.trib"',
  'use "/etc/',
  'use "\\\\host\\share',
  'use "file:///etc/',
  '  source      "register" "',
])('behind %s none is', (line) => {
  expect(pathBefore(line, line.length)).toBeNull();
});
