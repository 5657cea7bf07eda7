/** Paths that are refused before anything is asked, on systems that this test need not run on. */
import { describe, expect, it } from 'vitest';
import { refusedByForm } from './path-form.ts';

const onWindows = (path: string, root = 'C:\\jobs') => refusedByForm(path, 'C:\\jobs', root, 'win32');
const elsewhere = (path: string, root = '/jobs') => refusedByForm(path, '/jobs', root, 'linux');

describe('a path is refused by its form', () => {
  it.each([
    '\\\\host\\share\\grid.gtx',
    '//host/share/grid.gtx',
    '\\/host\\share',
    '\\\\.\\COM1',
    '\\\\?\\C:\\x',
  ])('where it names another machine or a device: %s', (path) => {
    expect(onWindows(path)).toMatch(/another machine/);
    expect(elsewhere(path)).toMatch(/another machine/);
  });
  it.each(['nul', 'sub/AUX.csv', 'com1', 'LPT9.txt', 'con .x'])(
    'where it is a device by name: %s',
    (path) => {
      expect(onWindows(path)).toBe('its name is that of a device');
      expect(elsewhere(path)).toBeNull();
    },
  );
  it.each(['D:\\other\\x.csv', '..\\x.csv', '../../x.csv', 'C:x.csv:stream', 'Z:x'])(
    'where it leads to another disk or out of the root: %s',
    (path) => expect(onWindows(path)).not.toBeNull(),
  );
  it.each(['/net/host/x.csv', '../net/host/x.csv', '/net'])('where an automounter would ask: %s', (path) => {
    expect(elsewhere(path)).toMatch(/another machine/);
  });
});

describe('a path is looked for', () => {
  it.each(['grid.gtx', 'sub/pickup.csv', '../jobs/day.trib', 'C:\\jobs\\day.trib'])(
    'on Windows: %s',
    (path) => {
      expect(onWindows(path)).toBeNull();
    },
  );
  it.each(['grid.gtx', '/network/x', '/data/net/x', 'nul'])('elsewhere: %s', (path) => {
    expect(elsewhere(path)).toBeNull();
  });
  it('on the machine that the root itself lies on', () => {
    expect(onWindows('\\\\host\\jobs\\x.csv', '\\\\host\\jobs')).toBeNull();
    expect(onWindows('\\\\other\\jobs\\x.csv', '\\\\host\\jobs')).toMatch(/another machine/);
    expect(elsewhere('/net/host/x.csv', '/net/host')).toBeNull();
  });
});
