/** The ready set-ups, run line by line as a service would, in a fresh clone of an office's repository, with the packed command and no network. */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeOffice, pathOf } from '../samples/office.mjs';
import { folderWith } from './command-line-run.ts';

const { load } = createRequire(import.meta.url)('js-yaml') as { load: (text: string) => unknown };
const at = folderWith({});
afterAll(() => at.remove());
const COUNT = 200;
const BROKEN = pathOf(120);

const git = (folder: string, ...words: string[]) =>
  execFileSync(
    'git',
    [
      '-c',
      'user.name=L. Brandt',
      '-c',
      'user.email=l@harbour.example',
      '-c',
      'commit.gpgsign=false',
      ...words,
    ],
    { cwd: at.path(folder), encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] },
  );

beforeAll(() => {
  if (!existsSync('dist/tribrach.cjs'))
    throw new Error('There is no dist/tribrach.cjs; run "npm run build" before this test.');
  const words = ['pack', '--ignore-scripts', '--json', '--pack-destination', at.path()];
  const environment = { ...process.env, npm_config_cache: at.path('npm') };
  const [packed] = JSON.parse(execFileSync('npm', words, { encoding: 'utf8', env: environment })) as {
    filename: string;
  }[];
  expect(makeOffice(at.path('office'), COUNT)).toEqual([]);
  mkdirSync(at.path('office/tools'));
  cpSync(at.path(packed?.filename), at.path('office/tools/tribrach.tgz'));
  git('office', 'add', '--all');
  git('office', 'commit', '-qm', 'Bring the command');
  for (const [branch, path, from, to] of [
    [
      'good',
      pathOf(7),
      /by R1\n {2}observed .*\n/,
      'by R1\n  observed    -40311.880 m E, 165377.401 m N, height 5.199 m orthometric\n',
    ],
    ['bad', BROKEN, '61.201 m ellipsoidal', '6.284 m ellipsoidal'],
  ] as const) {
    git('office', 'checkout', '-q', '-b', branch, 'main');
    const before = readFileSync(at.path(`office/${path}`), 'utf8');
    const after = before.replace(from, to);
    expect(after).not.toBe(before);
    writeFileSync(at.path(`office/${path}`), after);
    git('office', 'commit', '-qam', 'Change a day');
  }
});

interface Step {
  readonly name?: string;
  readonly run?: string;
}
interface Workflow {
  readonly jobs: Readonly<
    Record<
      string,
      {
        readonly strategy?: { readonly matrix: { readonly share: readonly number[] } };
        readonly steps: readonly Step[];
      }
    >
  >;
}
const fileOf = (name: string) => readFileSync(`samples/automation/${name}`, 'utf8');
const workflow = (name: string) => load(fileOf(name)) as Workflow;

interface RanLine {
  readonly line: string;
  readonly status: number | null;
  readonly printed: string;
}

/** A machine of its own: a clone, a home, a place to install into; nothing of this machine but node, npm and git. */
function machine(name: string, branch: string) {
  git('.', 'clone', '-q', '-b', branch, at.path('office'), at.path(name));
  mkdirSync(at.path(`${name}-home`));
  const environment = {
    PATH: [at.path(`${name}-home/installed/bin`), dirname(process.execPath), '/usr/bin', '/bin'].join(':'),
    HOME: at.path(`${name}-home`),
    npm_config_prefix: at.path(`${name}-home/installed`),
    npm_config_offline: 'true',
    GITHUB_STEP_SUMMARY: at.path(`${name}-home/summary.md`),
    CI_PROJECT_DIR: at.path(name),
  };
  return {
    run(line: string, more: Readonly<Record<string, string>> = {}): RanLine {
      const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', line], {
        cwd: at.path(name),
        encoding: 'utf8',
        env: { ...environment, ...more },
      });
      return { line, status, printed: stdout + stderr };
    },
    file: (path: string) => readFileSync(at.path(`${name}/${path}`), 'utf8'),
    summary: () => readFileSync(environment.GITHUB_STEP_SUMMARY, 'utf8'),
  };
}

const filled = (line: string, share = 0) =>
  line.replaceAll('${{ github.base_ref }}', 'main').replaceAll('${{ matrix.share }}', String(share));

describe.each([
  ['good', 0],
  ['bad', 1],
] as const)('the workflow on a %s change', (branch, verdict) => {
  it('examines once, tells in every form, and judges last', () => {
    const runner = machine(`workflow-${branch}`, branch);
    const steps = workflow('workflow.yml').jobs['check']?.steps ?? [];
    const lines = steps.flatMap(({ run }) => (run === undefined ? [] : [filled(run)]));
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.filter((line) => line.includes('${{'))).toEqual([]);
    const ran = lines.map((line) => runner.run(line));
    expect(ran.slice(0, -1).filter(({ status }) => status !== 0)).toEqual([]);
    expect(ran.at(-1)?.status).toBe(verdict);
    const summary = runner.summary();
    expect(summary.split('\n').filter((line) => /^\| 20\d\d/.test(line))).toHaveLength(COUNT);
    const { runs } = JSON.parse(runner.file('sessions.sarif')) as {
      runs: { results: { level: string }[] }[];
    };
    expect(runs[0]?.results.some(({ level }) => level === 'error')).toBe(branch === 'bad');
    expect(ran.at(-1)?.printed.includes(`::error file=${BROKEN},line=`)).toBe(branch === 'bad');
    // What git printed of the one session that was changed.
    const changes = summary.slice(summary.indexOf('sessions: '));
    expect(changes).toContain(branch === 'good' ? pathOf(7) : BROKEN);
  });
});

it('the pipeline leaves its artefacts behind, and fails for a bad change alone', () => {
  for (const [branch, verdict] of [
    ['good', 0],
    ['bad', 1],
  ] as const) {
    const runner = machine(`pipeline-${branch}`, branch);
    const { sessions } = load(fileOf('pipeline.yml')) as {
      sessions: { script: string[]; variables: Record<string, string>; artifacts: { paths: string[] } };
    };
    const variables = Object.fromEntries(
      Object.entries(sessions.variables).map(([name, value]) => [
        name,
        value.replace('$CI_PROJECT_DIR', at.path(`pipeline-${branch}`)),
      ]),
    );
    const ran = sessions.script.map((line) => runner.run(line, variables));
    expect(ran.slice(0, -1).filter(({ status }) => status !== 0)).toEqual([]);
    expect(ran.at(-1)?.status).toBe(verdict);
    for (const path of sessions.artifacts.paths) expect(runner.file(path).length).toBeGreaterThan(500);
    expect(existsSync(at.path(`pipeline-${branch}/.cache/tribrach`))).toBe(true);
  }
});

it('the shares of a large archive are joined to what one run says', () => {
  const runner = machine('archive', 'bad');
  const { share, join } = workflow('large-archive.yml').jobs;
  for (const number of share?.strategy?.matrix.share ?? [])
    for (const { run } of share?.steps ?? [])
      if (run !== undefined) expect(runner.run(filled(run, number))).toMatchObject({ status: 0 });
  const ran = (join?.steps ?? []).flatMap(({ run }) => (run === undefined ? [] : [runner.run(run)]));
  const one = runner.run('tribrach check .');
  expect(one.status).toBe(1);
  expect(ran.at(-1)).toMatchObject({ status: one.status, printed: one.printed });
  expect(runner.summary()).toContain(`| ${BROKEN} |`);
});

describe('the keys of what is cached', () => {
  it.each(['workflow.yml', 'large-archive.yml'])(
    'of %s name the program, and files that there are',
    (name) => {
      const keys = [...fileOf(name).matchAll(/^ +(?:key|restore-keys): (.*)$/gm)].map(([, key = '']) => key);
      expect(keys).toHaveLength(2);
      for (const key of keys) {
        const globs = [...key.matchAll(/hashFiles\('([^']*)'\)/g)].map(([, glob = '']) => glob);
        expect(globs[0]).toBe('tools/tribrach.tgz');
        expect(git('office', 'ls-files', ...globs.map((glob) => glob.replace('**/', ''))).trim()).not.toBe(
          '',
        );
      }
      // An older answer is looked for by the beginning of the key.
      expect(keys[0]?.startsWith(keys[1] ?? '-')).toBe(true);
      expect(fileOf(name)).toContain('path: ~/.cache/tribrach');
    },
  );
});

describe('the hooks for the pre-commit framework', () => {
  interface Hook {
    readonly id: string;
    readonly entry: string;
    readonly files?: string;
    readonly pass_filenames?: boolean;
  }
  const hooks = load(readFileSync('.pre-commit-hooks.yaml', 'utf8')) as Hook[];
  it('stop a commit with an error, let a good one pass, and align what is committed', () => {
    const runner = machine('hooked', 'main');
    runner.run('npm install --global ./tools/tribrach.tgz');
    const [check, format] = hooks;
    expect(hooks.map(({ id }) => id)).toEqual(['tribrach-check', 'tribrach-format']);
    expect(runner.run(check?.entry ?? '').status).toBe(0);
    const path = pathOf(3);
    const text = runner.file(path);
    writeFileSync(at.path(`hooked/${path}`), text.replace('61.201 m ellipsoidal', '6.284 m ellipsoidal'));
    const stopped = runner.run(check?.entry ?? '');
    expect([stopped.status, stopped.printed.includes(path)]).toEqual([1, true]);
    writeFileSync(at.path(`hooked/${path}`), text.replace('  clock       UTC', '  clock    UTC'));
    expect(new RegExp(format?.files ?? '').test(path)).toBe(true);
    expect(runner.run(`${format?.entry ?? ''} ${path}`).status).toBe(0);
    expect(runner.file(path)).toBe(text);
  });
});

it('the same office is made on any machine, commit for commit', () => {
  makeOffice(at.path('one'), 30);
  makeOffice(at.path('other'), 30);
  expect(git('one', 'rev-parse', 'HEAD')).toBe(git('other', 'rev-parse', 'HEAD'));
  const subjects = git('one', 'log', '--format=%s').trim().split('\n');
  // The marks, each day, and two slips that were mended three days later.
  expect(subjects).toHaveLength(1 + 30 + 2);
  expect(() => makeOffice(at.path('one'))).toThrow('already');
});
