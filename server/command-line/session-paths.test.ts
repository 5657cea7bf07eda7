/** One spelling for each path, on Windows as well, of which its own rules of paths say that it means the same file. */
import { win32 } from 'node:path';
import { describe, expect, it } from 'vitest';
import { resolvePath } from '../session/files.ts';
import { tidy } from './session-paths.ts';

describe('a path on Windows', () => {
  const CASES = [
    ['jobs\\day.trib', 'jobs/day.trib'],
    ['.\\jobs\\\\day.trib', 'jobs/day.trib'],
    ['C:\\jobs\\day.trib', 'C:/jobs/day.trib'],
    ['c:\\\\jobs\\', 'c:/jobs'],
    ['C:\\', 'C:/'],
    ['\\\\server\\share\\jobs\\day.trib', '//server/share/jobs/day.trib'],
    ['//server/share//jobs/', '//server/share/jobs'],
    ['\\jobs\\day.trib', '/jobs/day.trib'],
    ['..\\day.trib', '../day.trib'],
    ['.', '.'],
  ] as const;
  it.each(CASES)('%s is %s', (typed, wanted) => {
    expect(tidy(typed, 'win32')).toBe(wanted);
    const end = (path: string) => win32.resolve('D:\\work', path).replace(/\\$/, '');
    expect(end(tidy(typed, 'win32'))).toBe(end(typed));
  });

  it.each([
    ['C:/jobs/2026/day.trib', '../marks.trib', 'C:\\jobs\\marks.trib'],
    ['//server/share/jobs/day.trib', '../marks.trib', '\\\\server\\share\\marks.trib'],
    ['jobs/day.trib', 'grids/region.gtx', 'jobs\\grids\\region.gtx'],
  ])('%s that uses %s reads %s', (session, typed, wanted) => {
    expect(win32.normalize(resolvePath(session, typed))).toBe(wanted);
  });
});

describe('a path elsewhere', () => {
  it.each([
    ['./jobs//day.trib', 'jobs/day.trib'],
    ['/', '/'],
    ['//jobs/', '/jobs'],
    ['odd\\name.trib', 'odd\\name.trib'],
    ['C:/jobs', 'C:/jobs'],
  ])('%s is %s', (typed, wanted) => {
    expect(tidy(typed, 'linux')).toBe(wanted);
  });
});
