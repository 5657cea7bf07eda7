/** The sessions that differ from a git revision, or that draw on a file that does. */
import { execFileSync } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { openDocument } from '../../grammar/document.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { filesNamed } from '../session/seal.ts';
import { sessionOf } from '../session/session.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { CannotRun } from './io.ts';
import { LARGEST_SESSION, readWhole, sessionText } from './read-file.ts';

export function changedSince(revision: string, paths: readonly string[], root: string | undefined): string[] {
  const changed = changedFiles(revision);
  return paths.filter((path) => changed.has(real(path)) || drawsOn(path, changed, root));
}

/** Files that git sees as changed since the revision, staged, unstaged or not yet tracked, as absolute paths. */
function changedFiles(revision: string): Set<string> {
  if (revision.startsWith('-')) throw new CannotRun([`${revision} is no git revision`]);
  try {
    const git = (...words: string[]) =>
      execFileSync('git', words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
    const top = git('rev-parse', '--show-toplevel').trim();
    const names = [
      ...git('diff', '--name-only', '-z', revision, '--').split('\0'),
      ...git('ls-files', '--others', '--exclude-standard', '--full-name', '-z', '--', `${top}/`).split('\0'),
    ];
    return new Set(names.filter((name) => name !== '').map((name) => join(realpathSync(top), name)));
  } catch (error) {
    const said =
      typeof error === 'object' && error !== null && 'stderr' in error ? String(error.stderr).trim() : '';
    throw new CannotRun([
      `git cannot say what changed since ${revision}: ${said.split('\n')[0] || 'git could not be run'}`,
    ]);
  }
}

function drawsOn(path: string, changed: ReadonlySet<string>, root: string | undefined): boolean {
  const read = readWhole(path, LARGEST_SESSION);
  const text = isRefusal(read) ? read : sessionText(read.bytes);
  // What cannot be read is kept in, so that the check says so.
  if (isRefusal(text)) return true;
  const session = sessionOf(openDocument(path, text), diskFiles(root ?? rootOf(dirname(path)), '.'));
  const used = [...session.documents.keys(), ...filesNamed(session).map(({ resolved }) => resolved)];
  return used.some((one) => changed.has(real(one)));
}

/** A file that is gone has no real path; its name then stands for it. */
function real(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}
