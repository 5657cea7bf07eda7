/** What the command line reads and writes: which files, how far, and the sentence where it does not. */
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { isRefusal } from '../server/quantities/refusal.ts';
import { diskFiles, rootOf } from '../server/command-line/disk-files.ts';
import { folderWith, tribrach } from './command-line-run.ts';

const SESSION = 'mark M\n  height      3 m ellipsoidal\n';
const RAGGED = 'mark M\n height 3 m ellipsoidal\n';

let folders: { remove: () => void }[] = [];
afterEach(() => {
  for (const folder of folders) folder.remove();
  folders = [];
});
function folder(files: Readonly<Record<string, string | Uint8Array>>) {
  const made = folderWith(files);
  folders.push(made);
  return made;
}

async function checked(...words: string[]): Promise<string[]> {
  const { printed, status } = await tribrach(['check', '--format', 'json', ...words]);
  expect(status).not.toBe(2);
  return (JSON.parse(printed) as { files: { path: string }[] }).files.map(({ path }) => path);
}

async function refusal(...words: string[]): Promise<string> {
  const { printed, status, complained } = await tribrach(words);
  expect([printed, status]).toEqual(['', 2]);
  expect(complained).not.toMatch(/\n\s+at /);
  return complained;
}

describe('paths', () => {
  it('of a folder are all sessions below, in order, without installed packages and version control', async () => {
    const at = folder({
      'b.trib': SESSION,
      'a/deep/x.trib': SESSION,
      'notes.txt': 'no session',
      'node_modules/p/y.trib': SESSION,
      '.git/z.trib': SESSION,
    });
    expect(await checked(at.path())).toEqual([at.path('a/deep/x.trib'), at.path('b.trib')]);
  });
  it('do not follow links out of a folder', async () => {
    const outside = folder({ 'secret.trib': SESSION });
    const at = folder({ 'a.trib': SESSION });
    symlinkSync(outside.path(), at.path('link'));
    symlinkSync(outside.path('secret.trib'), at.path('link.trib'));
    symlinkSync(at.path(), at.path('circle'));
    expect(await checked(at.path())).toEqual([at.path('a.trib')]);
  });
  it('that are named twice are read once', async () => {
    const at = folder({ 'a.trib': SESSION });
    expect(await checked(at.path('a.trib'), at.path(), `${at.path()}//a.trib`)).toEqual([at.path('a.trib')]);
  });
  it('may be any text file when named', async () => {
    const at = folder({ 'session.txt': SESSION });
    expect(await checked(at.path('session.txt'))).toEqual([at.path('session.txt')]);
  });
  it('of a folder without sessions are refused in a sentence', async () => {
    const at = folder({ 'notes.txt': 'no session' });
    expect(await refusal('check', at.path())).toContain('there is no session file');
  });
});

describe('what cannot be read', () => {
  it.each([
    ['a missing file', () => folder({}).path('none.trib'), 'there is no such file'],
    [
      'a binary file',
      () => folder({ 'a.trib': new Uint8Array([109, 0, 255]) }).path('a.trib'),
      'not a text file',
    ],
    ['UTF-16', () => folder({ 'a.trib': new Uint8Array([255, 254, 109, 0]) }).path('a.trib'), 'UTF-16'],
    [
      'Latin-1',
      () => folder({ 'a.trib': Buffer.from('mark M\n# caf\xe9\n', 'latin1') }).path('a.trib'),
      'line 2 is not UTF-8',
    ],
    ['a device', () => '/dev/zero', 'no ordinary file'],
    ['a pipe that nobody writes to', pipe, 'no ordinary file'],
    ['a huge file', hugeFile, 'larger than 32 MB'],
    ['a name too long', () => `${'x'.repeat(5000)}.trib`, 'its name is too long'],
  ])('%s', async (_, path, reason) => {
    expect(await refusal('check', path())).toContain(reason);
  });

  it('keeps the readable files silent, too: an answer is whole or not given', async () => {
    const at = folder({ 'good.trib': SESSION, 'bad.trib': new Uint8Array([0]) });
    for (const words of [['check'], ['check', '--format', 'json'], ['derive'], ['format', '--write']])
      expect(await refusal(...words, at.path())).toContain('bad.trib');
  });

  it('is told for each file', async () => {
    const said = await refusal('check', 'one.trib', 'two.trib');
    expect(said.split('\n').filter((line) => line.includes('there is no such file'))).toHaveLength(2);
  });

  function pipe(): string {
    const path = folder({}).path('pipe.trib');
    execFileSync('mkfifo', [path]);
    return path;
  }
  function hugeFile(): string {
    const path = folder({ 'a.trib': '' }).path('a.trib');
    truncateSync(path, 40 * 1024 * 1024);
    return path;
  }
});

describe('files that a session names', () => {
  const uses = (path: string) => `use "${path}"\nsetup B on M with A at 07:50\nantenna A\n`;

  it('are read beside it', async () => {
    const at = folder({ 'day.trib': uses('shared/marks.trib'), 'shared/marks.trib': SESSION });
    expect(await findings(at.path('day.trib'))).not.toContain('syntax/unreadable-file');
  });
  it('are read up to the folder under version control, and no further', async () => {
    const at = folder({ 'marks.trib': SESSION, 'repo/.git/HEAD': '', 'repo/marks.trib': SESSION });
    mkdirSync(at.path('repo/days'));
    writeFileSync(at.path('repo/days/in.trib'), uses('../marks.trib'));
    writeFileSync(at.path('repo/days/out.trib'), uses('../../marks.trib'));
    expect(await findings(at.path('repo/days/in.trib'))).not.toContain('syntax/unreadable-file');
    expect(await findings(at.path('repo/days/out.trib'))).toContain('syntax/unreadable-file');
    expect(await findings(at.path('repo/days/out.trib'), '--root', at.path())).not.toContain(
      'syntax/unreadable-file',
    );
  });
  it('are not read through a link that leaves', async () => {
    const outside = folder({ 'marks.trib': SESSION });
    const at = folder({ 'day.trib': uses('link.trib'), 'deep.trib': uses('link/marks.trib') });
    symlinkSync(outside.path('marks.trib'), at.path('link.trib'));
    symlinkSync(outside.path(), at.path('link'));
    expect(await findings(at.path('day.trib'))).toContain('syntax/unreadable-file');
    expect(await findings(at.path('deep.trib'))).toContain('syntax/unreadable-file');
  });
  it('are not read from an absolute path elsewhere, nor from a folder or a device', async () => {
    for (const path of ['/etc/hostname', '/dev/zero', '.', 'none.trib']) {
      const at = folder({ 'day.trib': uses(path) });
      expect(await findings(at.path('day.trib'))).toContain('syntax/unreadable-file');
    }
  });
  it('are the same object until their time or size changes', () => {
    const at = folder({ 'marks.trib': SESSION });
    const files = diskFiles(at.path(), at.path());
    const first = files.document('marks.trib');
    expect(files.document('marks.trib')).toBe(first);
    utimesSync(at.path('marks.trib'), 1, 1);
    expect(files.document('marks.trib')).not.toBe(first);
    writeFileSync(at.path('marks.trib'), `${SESSION}# more\n`);
    const last = files.document('marks.trib');
    expect(isRefusal(last) ? last : last.text).toContain('# more');
    expect(files.bytes('marks.trib')).toBe(files.bytes('marks.trib'));
  });
  it('refuses a root that is no folder', async () => {
    expect(await refusal('check', 'samples/breakwater.trib', '--root', 'LICENSE')).toContain('not a folder');
    expect(await refusal('check', 'samples/breakwater.trib', '--root', 'nowhere')).toContain(
      'cannot be read',
    );
  });
  it('start from the session itself where nothing is under version control', () => {
    const at = folder({ 'day.trib': SESSION });
    expect(rootOf(at.path())).toBe(at.path());
  });

  async function findings(...words: string[]): Promise<string> {
    return (await tribrach(['check', ...words])).printed;
  }
});

describe('format --write', () => {
  it('replaces a file in one step and keeps its permissions', async () => {
    const at = folder({ 'a.trib': RAGGED });
    chmodSync(at.path('a.trib'), 0o640);
    const { printed, status } = await tribrach(['format', '--write', at.path()]);
    expect([printed, status]).toEqual([`${at.path('a.trib')} formatted\n`, 0]);
    expect(readFileSync(at.path('a.trib'), 'utf8')).toBe(SESSION);
    expect(statSync(at.path('a.trib')).mode & 0o777).toBe(0o640);
    expect(readdirSync(at.path())).toEqual(['a.trib']);
  });
  it('does not touch a file that stays the same', async () => {
    const at = folder({ 'a.trib': SESSION });
    utimesSync(at.path('a.trib'), 1000, 1000);
    expect((await tribrach(['format', '--write', at.path('a.trib')])).printed).toBe('');
    expect(statSync(at.path('a.trib')).mtimeMs).toBe(1_000_000);
  });
  it('writes what a link leads to, and leaves the link', async () => {
    const at = folder({ 'real/a.trib': RAGGED });
    symlinkSync(at.path('real/a.trib'), at.path('b.trib'));
    await tribrach(['format', '--write', at.path('b.trib')]);
    expect(lstatSync(at.path('b.trib')).isSymbolicLink()).toBe(true);
    expect(readFileSync(at.path('real/a.trib'), 'utf8')).toBe(SESSION);
  });
});
