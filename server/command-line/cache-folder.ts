/** Where what only saves time is kept: below an absolute path alone, so that nothing is left where somebody happens to be. */
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';

/** Null where there is no such place; a cache is never needed. */
export function cacheFolder(): string | null {
  const wanted = [process.env['XDG_CACHE_HOME'] ?? '', join(home(), '.cache')];
  const folder = wanted.find((path) => isAbsolute(path));
  return folder === undefined ? null : join(folder, 'tribrach');
}

/** A system may know of no home. */
function home(): string {
  try {
    return homedir();
  } catch {
    return '';
  }
}
