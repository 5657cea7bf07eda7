/** Paths that are refused by their form alone: to look for them would already ask another machine, or a device. */
import { posix, win32 } from 'node:path';

/**
 * Why a path that a session names is not looked for; null where it may be.
 * @param from the folder that it is seen from
 * @param root the folder that nothing is read outside of
 * @param platform as Node names it
 */
export function refusedByForm(path: string, from: string, root: string, platform: string): string | null {
  if (path.includes('\0')) return 'there is no such file';
  // Two separators before a name mean another machine, or a device: \\\\host\\share, //host/share, \\\\.\\COM1.
  if (/^[\\/]{2}/.test(path) && !isOfSameMachine(path, root)) return ELSEWHERE;
  if (platform === 'win32' && path.split(/[\\/]/).some((part) => DEVICE.test(part)))
    return 'its name is that of a device';
  if (platform === 'win32' && /:/.test(path.replace(/^[a-z]:/i, ''))) return 'there is no such file';
  if (platform !== 'win32')
    // Whatever is looked for in the folder of an automounter is asked of the machine of that name.
    return AUTOMOUNTED.test(posix.resolve(from, path)) && !AUTOMOUNTED.test(posix.resolve(root))
      ? ELSEWHERE
      : null;
  // A letter may stand for a disk of another machine.
  return isOutside(win32.relative(win32.resolve(root), win32.resolve(from, path))) ? outside(root) : null;
}

const ELSEWHERE = 'it lies on another machine, which is not asked; copy it beside the session';
const DEVICE =
  /^(?:con|prn|aux|nul|com[0-9\u00b9\u00b2\u00b3]|lpt[0-9\u00b9\u00b2\u00b3]|conin\$|conout\$)(?:[ .:].*)?$/i;
const AUTOMOUNTED = /^\/net(?:\/|$)/;

const isOfSameMachine = (path: string, root: string) => {
  const machineOf = (one: string) =>
    /^[\\/]{2}([^\\/]+)[\\/]+([^\\/]+)/.exec(one)?.slice(1, 3).join('/').toLowerCase();
  return machineOf(path) !== undefined && machineOf(path) === machineOf(root);
};

/** The path from the root leads out of it, or to another disk. */
export const isOutside = (below: string) =>
  below === '..' || /^\.\.[\\/]/.test(below) || posix.isAbsolute(below) || win32.isAbsolute(below);

export const outside = (root: string) => `it lies outside ${root}; --root FOLDER lets a session read further`;
