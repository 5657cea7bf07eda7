/** What is written is there whole or not at all, and what was there stays: killed at every step, on a full disk, in a folder that may not be written to. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';

/** Itself, and not what starts it, which would write what was compiled. */
const PROGRAM = resolve('dist/program.cjs');
const KILLER = resolve('tests/kill-at.cjs');
/** Long enough to take several writes. */
const RAGGED = `${readFileSync('samples/breakwater.trib', 'utf8').replaceAll('  ', '      ')}${'# a long day\n'.repeat(4000)}`;
const OLD = 'the old file\n';

let folders: { remove: () => void }[] = [];
beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error(`There is no ${PROGRAM}; run "npm run build" before this test.`);
});
afterAll(() => {
  for (const folder of folders) folder.remove();
  folders = [];
});
function folder() {
  const made = folderWith({
    'a.trib': RAGGED,
    'report.html': OLD,
    'out/pickup.csv': OLD,
    'out/account.md': OLD,
    'rows.csv': 'PM-1,1.5,2.5,6.284\n',
  });
  cpSync('samples/breakwater.trib', made.path('day.trib'));
  cpSync('samples/pickup.csv', made.path('pickup.csv'));
  folders.push(made);
  return made;
}
type Folder = ReturnType<typeof folder>;

function run(at: Folder, words: readonly string[], around: Parameters<typeof spawnSync>[2] = {}) {
  const { env, ...rest } = around;
  return spawnSync(process.execPath, [PROGRAM, ...words], {
    cwd: at.path(),
    encoding: 'utf8',
    env: { ...process.env, XDG_CACHE_HOME: at.path('cache'), ...env },
    ...rest,
  });
}

interface Writing {
  readonly words: readonly string[];
  /** What it replaces or makes; whole means as it was, or as it is when nothing comes in between. */
  readonly writes: readonly string[];
}
const WRITINGS: readonly Writing[] = [
  { words: ['format', '--write', 'a.trib'], writes: ['a.trib'] },
  { words: ['report', 'day.trib', '--out', 'report.html', '--force'], writes: ['report.html'] },
  { words: ['report', 'day.trib', '--out', 'fresh.html'], writes: ['fresh.html'] },
  { words: ['points', 'day.trib', '--out', 'fresh'], writes: ['fresh/pickup.csv', 'fresh/account.md'] },
  {
    words: ['points', 'day.trib', '--out', 'out', '--force'],
    writes: ['out/pickup.csv', 'out/account.md'],
  },
  { words: ['new', 'first.trib'], writes: ['first.trib'] },
  {
    words: ['marks', 'rows.csv', '--columns', 'name, east m, north m, height m', '--out', 'marks.trib'],
    writes: ['marks.trib'],
  },
];
const NEVER_TOUCHED = ['day.trib', 'pickup.csv', 'rows.csv'];

const textOf = (at: Folder, name: string) =>
  existsSync(at.path(name)) ? readFileSync(at.path(name), 'utf8') : null;

function textsOf(at: Folder, names: readonly string[]) {
  return names.map((name) => [name, textOf(at, name)] as const);
}

describe('killed by SIGKILL at every step of', () => {
  it.each(WRITINGS.map((writing) => [writing.words.join(' '), writing] as const))('%s', (_, writing) => {
    const undisturbed = folder();
    expect(run(undisturbed, writing.words).status).toBe(0);
    let killed = 0;
    for (let step = 1; ; step++) {
      const at = folder();
      const before = new Map(textsOf(at, writing.writes));
      const inputs = textsOf(at, NEVER_TOUCHED);
      const { status, signal } = run(at, writing.words, {
        env: { NODE_OPTIONS: `--require ${KILLER}`, KILL_AT: String(step) },
      });
      for (const [name, text] of textsOf(at, writing.writes))
        expect([step, name, [before.get(name), textOf(undisturbed, name)].includes(text)]).toEqual([
          step,
          name,
          true,
        ]);
      expect(textsOf(at, NEVER_TOUCHED)).toEqual(inputs);
      // Whoever tries again is not held up by what a killed run has left lying about.
      if (signal === 'SIGKILL') killed++;
      else {
        expect(status).toBe(0);
        break;
      }
    }
    expect(killed).toBeGreaterThan(2);
  });
});

describe('where nothing can be written', () => {
  /** A superuser may write anywhere, so that somebody else tries. */
  const somebody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

  it.each(WRITINGS.map((writing) => [writing.words.join(' '), writing] as const))(
    'a folder for reading only: %s',
    (_, { words, writes }) => {
      const at = folder();
      const before = textsOf(at, [...writes, ...NEVER_TOUCHED]);
      for (const place of ['', 'out']) chmodSync(at.path(place), 0o555);
      const { status, stderr, stdout } = run(at, words, somebody);
      chmodSync(at.path(), 0o755);
      expect(status).toBe(2);
      expect(stdout).toBe('');
      expect(stderr).toMatch(/^tribrach: cannot write .*: that is not permitted\n$/);
      expect(textsOf(at, [...writes, ...NEVER_TOUCHED])).toEqual(before);
    },
  );

  it('no file may grow beyond a kilobyte', () => {
    const at = folder();
    const before = textsOf(at, ['a.trib', 'report.html']);
    for (const words of ['format --write a.trib', 'report day.trib --out report.html --force']) {
      const limited = `ulimit -f 1; exec "$0" ${PROGRAM} ${words}`;
      const { status, signal } = spawnSync('bash', ['-c', limited, process.execPath], { cwd: at.path() });
      expect(status === 2 || signal !== null).toBe(true);
    }
    expect(textsOf(at, ['a.trib', 'report.html'])).toEqual(before);
  });

  it('a full disk', () => {
    const at = folder();
    const disk = at.path('disk');
    mkdirSync(disk);
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=96k', 'tmpfs', disk]).status === 0;
    if (!mounted)
      return void process.stdout.write(
        'NOT TESTED: a full disk, since none of its own may be mounted here\n',
      );
    try {
      writeFileSync(`${disk}/a.trib`, RAGGED);
      for (const words of [
        ['format', '--write', 'disk/a.trib'],
        ['report', 'day.trib', '--out', 'disk/report.html'],
      ]) {
        const { status, stderr } = run(at, words);
        expect([status, stderr]).toEqual([2, expect.stringContaining('there is no room left on the disk')]);
      }
      expect(readFileSync(`${disk}/a.trib`, 'utf8')).toBe(RAGGED);
      expect(readdirSync(disk)).toEqual(['a.trib']);
      expect(statSync(`${disk}/a.trib`).size).toBe(Buffer.byteLength(RAGGED));
    } finally {
      spawnSync('umount', [disk]);
    }
  });
});
