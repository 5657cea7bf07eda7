/** The built program as a process: its pipes, its colours, its exit status, and no stack trace whatever it is given. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';

const PROGRAM = 'dist/tribrach.cjs';

beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error(`There is no ${PROGRAM}; run "npm run build" before this test.`);
});

const run = (words: readonly string[], input = '', env: NodeJS.ProcessEnv = {}) =>
  spawnSync(process.execPath, [PROGRAM, ...words], {
    input,
    encoding: 'utf8',
    env: { ...process.env, ...env },
    maxBuffer: 1 << 28,
  });

describe('the program', () => {
  it('answers with the exit statuses of the contract', () => {
    expect(run(['check', 'samples/breakwater.trib']).status).toBe(0);
    expect(run(['check', 'samples/broken/unit-missing.trib']).status).toBe(1);
    const refused = run(['check', 'nowhere.trib']);
    expect([refused.status, refused.stdout]).toEqual([2, '']);
    expect(refused.stderr).toBe('tribrach: cannot read nowhere.trib: there is no such file\n');
  });

  it('reads standard input', () => {
    const { status, stdout } = run(['check', '-'], 'mark M\n  height      6,284 m orthometric\n');
    expect(status).toBe(1);
    expect(stdout).toContain('standard input:2:15 error number/decimal-comma');
  });

  it('writes no colours into a pipe', () => {
    expect(run(['check', 'samples/broken'], '', { FORCE_COLOR: '1' }).stdout).not.toContain('\u001b');
  });

  it('ends quietly when its reader goes away', async () => {
    const child = spawn(process.execPath, [PROGRAM, 'derive', 'samples', '--format', 'json']);
    let complaints = '';
    child.stderr.on('data', (part: Buffer) => (complaints += part.toString()));
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((resolve) => child.on('close', resolve));
    expect([complaints, status]).toEqual(['', 0]);
  });

  it('prints a large answer whole into a pipe', () => {
    const { stdout, status } = run(['derive', 'samples', '--format', 'json']);
    expect(status).toBe(0);
    expect(stdout.length).toBeGreaterThan(1_000_000);
    expect(() => JSON.parse(stdout) as unknown).not.toThrow();
  });

  it('does not wait for the end of an input that is too long for a session', () => {
    const { status, stderr } = run(['check', '-'], 'x'.repeat(33 * 1024 * 1024));
    expect(status).toBe(2);
    expect(stderr).toContain('larger than 32 MB');
  });

  it('answers a session of ten thousand lines, most of them wrong, without a stack trace', () => {
    const lines = Array.from(
      { length: 10_000 },
      (_, index) => `${index % 3 ? '  ' : ''}keyed ${index},5 m )("`,
    );
    const folder = folderWith({ 'a.trib': lines.join('\n') });
    const { status, stdout, stderr } = run(['check', folder.path('a.trib')]);
    folder.remove();
    expect([status, stderr]).toEqual([1, '']);
    expect(stdout).not.toMatch(/\n\s+at .*\(/);
  });
});
