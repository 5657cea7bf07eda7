/** Starting the built program: what it compiled is kept, and nothing but time is lost where that is missing or damaged. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import manifest from '../package.json' with { type: 'json' };

const PROGRAM = 'dist/tribrach.cjs';
beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error(`There is no ${PROGRAM}; run "npm run build" before this test.`);
});

let cache = '';
beforeEach(() => {
  cache = mkdtempSync(join(tmpdir(), 'start-'));
  onTestFinished(() => rmSync(cache, { recursive: true, force: true }));
});

const run = (words: readonly string[], env: NodeJS.ProcessEnv = {}) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], {
    encoding: 'utf8',
    env: { ...process.env, NODE_DISABLE_COMPILE_CACHE: '', XDG_CACHE_HOME: cache, ...env },
  });
  return { status, stdout, stderr };
};
const kept = () =>
  existsSync(join(cache, 'tribrach'))
    ? readdirSync(join(cache, 'tribrach'))
        .filter((name) => name.endsWith('.bin'))
        .map((name) => join(cache, 'tribrach', name))
    : [];
const headOf = (path: string) => readFileSync(path, 'latin1').split('\n', 1)[0]?.split(' ').slice(1);
const DAY = ['check', 'samples/broken/height-extension.trib'];

describe('what was compiled', () => {
  it('is kept once, for the commands that ran, and changes no answer', () => {
    const first = run(DAY);
    const [path = ''] = kept();
    const before = readFileSync(path);
    expect(first).toMatchObject({ status: 1, stderr: '' });
    expect(run(DAY)).toEqual(first);
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(headOf(path)).toEqual(['check']);
    run(['tell', 'samples/breakwater.trib']);
    expect(kept()).toEqual([path]);
    expect(headOf(path)).toEqual(['check', 'tell']);
    expect(run(DAY)).toEqual(first);
  });

  it.each([
    ['a byte is another', (whole: Buffer) => whole.map((byte, at) => (at === 100_000 ? byte ^ 1 : byte))],
    ['its end is missing', (whole: Buffer) => whole.subarray(0, whole.length / 2)],
    ['it is empty', () => Buffer.alloc(0)],
    ['it has no head', (whole: Buffer) => whole.subarray(whole.indexOf(10) + 1)],
    ['it is something else', () => Buffer.from('{}\n')],
  ])('is made anew where %s', (_, damage) => {
    const first = run(DAY);
    const [path = ''] = kept();
    const whole = readFileSync(path);
    const damaged = Buffer.from(damage(Buffer.from(whole)));
    expect(damaged.equals(whole)).toBe(false);
    writeFileSync(path, damaged);
    expect(run(DAY)).toEqual(first);
    expect(readFileSync(path).length).toBeGreaterThan(whole.length / 2);
    expect(headOf(path)).toEqual(['check']);
    expect(run(DAY)).toEqual(first);
  });

  it('takes the place of another program’s, and of nothing else', () => {
    const folder = join(cache, 'tribrach');
    mkdirSync(folder);
    for (const name of ['compiled-0123456789abcdef.bin', 'compiled-notes.bin'])
      writeFileSync(join(folder, name), 'of another version');
    run(DAY);
    expect(existsSync(join(folder, 'compiled-0123456789abcdef.bin'))).toBe(false);
    expect(readFileSync(join(folder, 'compiled-notes.bin'), 'utf8')).toBe('of another version');
  });

  it('is not kept where that is not wanted', () => {
    run(DAY, { NODE_DISABLE_COMPILE_CACHE: '1' });
    expect(kept()).toEqual([]);
  });

  it('is not needed: a cache that cannot be is no fault, and not told of', () => {
    const first = run(DAY);
    writeFileSync(join(cache, 'file'), '');
    for (const place of ['/dev/null', join(cache, 'file'), '']) {
      const { stderr, ...answer } = run(DAY, { XDG_CACHE_HOME: place, HOME: place });
      expect(answer).toEqual({ status: first.status, stdout: first.stdout });
      expect(stderr).not.toContain('compiled');
    }
  });
});

it('says its version without reading the program', () => {
  expect(run(['--version'])).toEqual({ status: 0, stdout: `${manifest.version}\n`, stderr: '' });
  expect(kept()).toEqual([]);
});

it('is written in ASCII, as it is read', () => {
  for (const name of ['program.cjs', 'tribrach.cjs', 'systems.json', 'parameters.json', 'egm96-grid.json'])
    expect(
      readFileSync(join('dist', name)).findIndex((byte) => byte > 127),
      name,
    ).toBe(-1);
  expect(readFileSync('dist/program.cjs', 'latin1')).not.toContain('String.raw');
});
