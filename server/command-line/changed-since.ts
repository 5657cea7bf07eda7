/** The sessions that differ from a git revision, or that draw on a file that does. */
import { execFileSync } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { openDocument } from '../../grammar/document.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { filesNamed } from '../session/seal.ts';
import { sessionOf } from '../session/session.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { CannotRun } from './io.ts';
import { LARGEST_SESSION, readWhole, sessionText } from './read-file.ts';
import { STANDARD_INPUT } from './session-paths.ts';

export function changedSince(revision: string, paths: readonly string[], root: string | undefined): string[] {
  const { top, changed } = changedFiles(revision);
  const outside = paths.filter((path) => path !== STANDARD_INPUT && !isBelow(real(path), top));
  if (outside.length > 0)
    throw new CannotRun(
      outside.map(
        (path) => `${path} lies outside ${top}, whose history was asked for; go there to ask for its own`,
      ),
    );
  const hasChanged = (path: string) => isBelowAny(real(path), changed);
  return paths.filter((path) => hasChanged(path) || drawsOn(path, hasChanged, root));
}

/**
 * What git sees as changed since the revision, staged, unstaged or not yet tracked, as absolute paths. A file that was
 * moved counts at both places. A repository inside of this one is named as a whole, whatever changed in it.
 */
function changedFiles(revision: string): { readonly top: string; readonly changed: ReadonlySet<string> } {
  if (revision.startsWith('-')) throw new CannotRun([`${revision} is no git revision`]);
  try {
    // A monitor of files is a program that the repository names; it is not needed here.
    const git = (...words: string[]) =>
      execFileSync('git', ['-c', 'core.fsmonitor=false', ...words], {
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
        maxBuffer: 1 << 30,
      });
    // What is no revision would be taken for a path, and git's answer to that helps nobody.
    git('rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`);
    const top = realpathSync(git('rev-parse', '--show-toplevel').replace(/\r?\n$/, ''));
    const names = [
      ...git('diff', ...EVERY_NAME, '-z', revision, '--').split('\0'),
      ...git('ls-files', '--others', '--exclude-standard', '--full-name', '-z', '--', `${top}/`).split('\0'),
    ];
    return { top, changed: new Set(names.filter((name) => name !== '').map((name) => resolve(top, name))) };
  } catch (error) {
    const said =
      typeof error === 'object' && error !== null && 'stderr' in error ? String(error.stderr).trim() : '';
    throw new CannotRun([
      `git cannot say what changed since ${revision}: ${said.split('\n')[0] || reasonWithout(error)}`,
    ]);
  }
}

/** git says nothing about a name that it does not know as a revision. */
const reasonWithout = (error: unknown) =>
  typeof error === 'object' && error !== null && 'status' in error && error.status !== null
    ? 'there is no such revision of the whole repository here'
    : 'git could not be run';

/** Whatever somebody has configured for looking at differences. */
const EVERY_NAME = [
  '--no-ext-diff',
  '--no-textconv',
  '--name-only',
  '--no-renames',
  '--no-relative',
  '--ignore-submodules=none',
];

const isBelow = (path: string, folder: string) => path === folder || path.startsWith(join(folder, sep));

function isBelowAny(path: string, places: ReadonlySet<string>): boolean {
  for (let at = path; ; at = dirname(at)) {
    if (places.has(at)) return true;
    if (dirname(at) === at) return false;
  }
}

function drawsOn(path: string, hasChanged: (path: string) => boolean, root: string | undefined): boolean {
  const read = readWhole(path, LARGEST_SESSION);
  const text = isRefusal(read) ? read : sessionText(read.bytes);
  // What cannot be read is kept in, so that the check says so.
  if (isRefusal(text)) return true;
  const files = diskFiles(root ?? rootOf(dirname(path)), '.');
  const used: string[] = [];
  // A file that is not there any more takes no part in the session, and was asked for all the same.
  const document = (asked: string) => (used.push(asked), files.document(asked));
  const session = sessionOf(openDocument(path, text), { ...files, document });
  return [...used, ...filesNamed(session).map(({ resolved }) => resolved)].some(hasChanged);
}

/** Of a file that is gone its folder is real, or the folder above that. */
function real(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    const whole = resolve(path);
    return dirname(whole) === whole ? whole : join(real(dirname(whole)), basename(whole));
  }
}
