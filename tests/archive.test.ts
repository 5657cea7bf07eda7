/** An archive of sessions: all cores, a stable order, answers kept by content, and only what changed since a revision. */
import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'tribrach-archive-'));
const program = join(folder, 'tribrach.cjs');
const jobs = join(folder, 'jobs');
const cache = join(folder, 'cache');
const clean = readFileSync(new URL('../samples/breakwater.trib', import.meta.url), 'utf8');
const COUNT = 40;

/** Every session is its own, and every fifth has a slip that no other has. */
const session = (index: number) =>
  clean
    .replace('north arm', `north arm ${index}`)
    .replace(
      'height 61.201 m ellipsoidal',
      index % 5 === 0 ? `height ${60 - index}.201 m ellipsoidal` : 'height 61.201 m ellipsoidal',
    );
const nameOf = (index: number) => `job-${String(index).padStart(2, '0')}/day.trib`;

beforeAll(async () => {
  const entry = fileURLToPath(new URL('../server/command-line/main.ts', import.meta.url));
  await build({
    entryPoints: [entry],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile: program,
    logLevel: 'error',
  });
  for (let index = 0; index < COUNT; index++) {
    mkdirSync(join(jobs, `job-${String(index).padStart(2, '0')}`), { recursive: true });
    writeFileSync(join(jobs, nameOf(index)), session(index));
  }
  mkdirSync(join(jobs, 'shared'));
  // Version control makes the whole folder the root that sessions may draw on.
  execFileSync('git', ['init', '-q'], { cwd: jobs });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function check(...words: string[]): { status: number; printed: string; complained: string } {
  try {
    const printed = execFileSync('node', [program, 'check', ...words], {
      cwd: jobs,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      maxBuffer: 1 << 28,
      env: { ...process.env, XDG_CACHE_HOME: cache },
    });
    return { status: 0, printed, complained: '' };
  } catch (error) {
    const { status, stdout, stderr } = error as { status: number; stdout: string; stderr: string };
    return { status, printed: stdout, complained: stderr };
  }
}
interface Files {
  readonly files: readonly {
    readonly path: string;
    readonly findings: readonly { code: string; message: string }[];
  }[];
}
const found = (...words: string[]) => JSON.parse(check('--format', 'json', ...words).printed) as Files;

describe('an archive', () => {
  it('is answered in the order of its paths, each session with what is its own', () => {
    const { files } = found('.');
    expect(files.map(({ path }) => path)).toEqual(Array.from({ length: COUNT }, (_, index) => nameOf(index)));
    files.forEach(({ findings }, index) => {
      const keyed = findings.filter(({ message }) => message.includes(`${60 - index}.201 m`));
      expect(keyed.length > 0, `${nameOf(index)}`).toBe(index % 5 === 0);
    });
    expect(check('.').status).toBe(1);
  });

  it('is answered the same again from what was kept, without the cache, and one session at a time', () => {
    const first = check('.').printed;
    expect(readdirSync(join(cache, 'tribrach')).length).toBeGreaterThan(0);
    expect(check('.').printed).toBe(first);
    expect(check('--no-cache', '.').printed).toBe(first);
    expect(first).toContain(check(nameOf(5)).printed);
  });

  it('sees a changed session, and a changed file that a session draws on, through what was kept', () => {
    expect(found('.').files[1]?.findings.map(({ code }) => code)).not.toContain('unit/missing');
    writeFileSync(join(jobs, nameOf(1)), session(1).replace('1.284 m to foot', '1.284 to foot'));
    expect(found('.').files[1]?.findings.map(({ code }) => code)).toContain('unit/missing');
    writeFileSync(join(jobs, nameOf(1)), `use "../shared/marks.trib"\n${session(1)}`);
    expect(found('.').files[1]?.findings.map(({ code }) => code)).toContain('syntax/unreadable-file');
    writeFileSync(join(jobs, 'shared/marks.trib'), 'mark PM-77\n');
    expect(
      found('.')
        .files.find(({ path }) => path === nameOf(1))
        ?.findings.map(({ code }) => code),
    ).not.toContain('syntax/unreadable-file');
  });

  it('works on with a cache that is broken', () => {
    const whole = check('.').printed;
    for (const name of readdirSync(join(cache, 'tribrach')))
      writeFileSync(join(cache, 'tribrach', name), '[[1');
    expect(check('.').printed).toBe(whole);
  });

  it('says what cannot be read, and answers nothing then, but need not examine the others again', () => {
    rmSync(cache, { recursive: true });
    writeFileSync(join(jobs, 'job-03/day.trib'), Buffer.from([0xff, 0xfe, 0x6d, 0x00]));
    const { status, printed, complained } = check('.');
    expect([status, printed]).toEqual([2, '']);
    expect(complained).toContain('job-03/day.trib');
    const [kept = ''] = readdirSync(join(cache, 'tribrach'));
    // A digest of what follows stands on the first line.
    const body = readFileSync(join(cache, 'tribrach', kept), 'utf8').replace(/^.*\n/, '');
    const paths = (JSON.parse(body) as [string][]).map(([path]) => path);
    expect(paths.length).toBeGreaterThanOrEqual(COUNT - 1);
    expect(paths).not.toContain(nameOf(3));
    writeFileSync(join(jobs, 'job-03/day.trib'), session(3));
  });
});

describe('only what changed since a revision', () => {
  const changed = (revision = 'HEAD', place = '.') =>
    found('--changed-since', revision, place).files.map(({ path }) => path);
  const git = (...words: string[]) =>
    execFileSync('git', ['-c', 'user.name=R. Okafor', '-c', 'user.email=okafor@harbour.invalid', ...words], {
      cwd: jobs,
      encoding: 'utf8',
    });

  it('is the sessions that differ, and those that draw on a file that differs', () => {
    git('add', '-A');
    git('commit', '-qm', 'The days as noted');
    expect(found('--changed-since', 'HEAD', '.').files).toEqual([]);
    writeFileSync(join(jobs, nameOf(7)), `${session(7)}# a later thought\n`);
    writeFileSync(join(jobs, 'shared/marks.trib'), 'mark PM-78\n');
    writeFileSync(join(jobs, 'new.trib'), session(0));
    const paths = found('--changed-since', 'HEAD', '.').files.map(({ path }) => path);
    expect(paths).toEqual([nameOf(1), nameOf(7), 'new.trib', 'shared/marks.trib']);
  });

  it('is the session whose marks were moved or deleted, too', () => {
    git('add', '-A');
    git('commit', '-qm', 'Marks to draw on');
    git('mv', 'shared/marks.trib', 'shared/control.trib');
    expect(changed()).toEqual([nameOf(1), 'shared/control.trib']);
    git('reset', '-q', '--hard');
    rmSync(join(jobs, 'shared/marks.trib'));
    expect(changed()).toEqual([nameOf(1)]);
    // By way of a link to the repository, where what is gone has no real path of its own.
    symlinkSync(jobs, join(folder, 'link'));
    expect(changed('HEAD', join(folder, 'link/job-01'))).toEqual([join(folder, 'link', nameOf(1))]);
    git('reset', '-q', '--hard');
  });

  it('does not depend on what somebody has configured, nor on the folder that one stands in', () => {
    git('config', 'diff.relative', 'true');
    git('config', 'diff.renames', 'copies');
    writeFileSync(join(jobs, 'shared/marks.trib'), 'mark PM-79\n');
    const { files } = JSON.parse(
      execFileSync('node', [program, 'check', '--format', 'json', '--changed-since', 'HEAD', '..'], {
        cwd: join(jobs, 'job-02'),
        encoding: 'utf8',
      }),
    ) as Files;
    expect(files.map(({ path }) => path)).toEqual([`../${nameOf(1)}`, '../shared/marks.trib']);
    git('reset', '-q', '--hard');
  });

  it('is whatever lies in a repository inside of this one that changed, and what draws on it', () => {
    const inner = join(folder, 'inner');
    mkdirSync(inner);
    writeFileSync(join(inner, 'marks.trib'), 'mark PM-80\n');
    const quietly = ['-c', 'protocol.file.allow=always', '-c', 'user.name=R. Okafor'];
    const inInner = (...words: string[]) =>
      execFileSync('git', [...quietly, '-c', 'user.email=okafor@harbour.invalid', ...words], { cwd: inner });
    inInner('init', '-q');
    inInner('add', '-A');
    inInner('commit', '-qm', 'Marks of the office');
    git('-c', 'protocol.file.allow=always', 'submodule', 'add', '-q', inner, 'office');
    writeFileSync(join(jobs, nameOf(2)), `use "../office/marks.trib"\n${session(2)}`);
    git('add', '-A');
    git('commit', '-qm', 'Marks of the office');
    expect(changed()).toEqual([]);
    writeFileSync(join(jobs, 'office/marks.trib'), 'mark PM-81\n');
    expect(changed()).toEqual([nameOf(2), 'office/marks.trib']);
  });

  it('is refused for what another repository holds, and is nothing where nothing is left', () => {
    const other = join(folder, 'other');
    mkdirSync(other);
    writeFileSync(join(other, 'day.trib'), clean);
    const { status, complained } = check('--changed-since', 'HEAD', join(other, 'day.trib'));
    expect(status).toBe(2);
    expect(complained).toContain('lies outside');
    mkdirSync(join(jobs, 'empty'));
    expect(check('--changed-since', 'HEAD', 'empty')).toMatchObject({ status: 0, printed: '' });
  });

  it('is found among more names than fit into a megabyte', () => {
    const many = join(jobs, 'x'.repeat(200));
    mkdirSync(many);
    for (let index = 0; index < 6000; index++) writeFileSync(join(many, `${index}.txt`), '');
    expect(changed('HEAD', 'job-07')).toEqual([]);
    rmSync(many, { recursive: true });
  });

  it('says so where git does not know the revision', () => {
    const { status, complained } = check('--changed-since', 'nowhere', '.');
    expect(status).toBe(2);
    expect(complained).toContain('git cannot say what changed since nowhere');
    expect(check('--changed-since=--output=x', '.').status).toBe(2);
  });
});

describe('the sample hook', () => {
  const git = (...words: string[]) =>
    execFileSync('git', ['-c', 'user.name=R. Okafor', '-c', 'user.email=okafor@harbour.invalid', ...words], {
      cwd: hooked,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, PATH: `${folder}/bin:${process.env['PATH'] ?? ''}`, XDG_CACHE_HOME: cache },
    });
  const hooked = join(folder, 'hooked');

  it('lets a right session be committed and stops a wrong one, in real git', () => {
    mkdirSync(join(folder, 'bin'));
    mkdirSync(hooked);
    writeFileSync(join(folder, 'bin/tribrach'), `#!/bin/sh\nexec node ${program} "$@"\n`, { mode: 0o755 });
    git('init', '-q');
    const hook = readFileSync(new URL('../samples/automation/pre-commit', import.meta.url));
    writeFileSync(join(hooked, '.git/hooks/pre-commit'), hook, { mode: 0o755 });
    writeFileSync(join(hooked, 'day.trib'), clean);
    git('add', '-A');
    git('commit', '-qm', 'A right day');
    writeFileSync(
      join(hooked, 'day.trib'),
      clean.replace('height 61.201 m ellipsoidal', 'height 6.284 m ellipsoidal'),
    );
    git('add', '-A');
    let stopped = '';
    try {
      git('commit', '-qm', 'A wrong day');
    } catch (error) {
      const { stdout, stderr } = error as { stdout: string; stderr: string };
      stopped = stdout + stderr;
    }
    expect(stopped).toContain('height/wrong-surface');
    expect(git('log', '--format=%s').trim()).toBe('A right day');
  });
});
