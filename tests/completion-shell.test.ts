/** Completion in shells: tried in bash, which is everywhere; the other shells' scripts are read. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { tribrach } from './command-line-run.ts';

const script = async (shell: string) => (await tribrach(['completion', shell])).printed;

async function completed(...words: string[]): Promise<string[]> {
  const text = await script('bash');
  const list = words.map((word) => `'${word}'`).join(' ');
  const { stdout, stderr } = spawnSync(
    'bash',
    [
      '-c',
      `${text}\nCOMP_WORDS=(${list}); COMP_CWORD=${words.length - 1}; _tribrach; printf '%s\\n' "\${COMPREPLY[@]}"`,
    ],
    { encoding: 'utf8' },
  );
  expect(stderr).toBe('');
  return stdout.split('\n').filter((line) => line !== '');
}

describe('bash', () => {
  it('completes commands', async () => {
    expect(await completed('tribrach', 'ch')).toEqual(['check']);
    expect(await completed('tribrach', '')).toEqual(expect.arrayContaining(['tell', 'points', 'completion']));
  });

  it('completes options of their own command, and choices of an option', async () => {
    expect(await completed('tribrach', 'check', '--req')).toEqual(['--require']);
    expect(await completed('tribrach', 'tell', '--req')).toEqual([]);
    expect(await completed('tribrach', 'check', '--format', 's')).toEqual(['sarif']);
    expect(await completed('tribrach', 'completion', 'z')).toEqual(['zsh']);
  });

  it('leaves file names to the shell', async () => {
    expect(await completed('tribrach', 'check', 'samp')).toEqual([]);
    expect(await script('bash')).toContain('complete -o default');
  });
});

it.each(['zsh', 'fish', 'powershell'])('%s knows every command and its options', async (shell) => {
  const text = await script(shell);
  const help = (await tribrach(['--help'])).printed;
  const commands = [...help.matchAll(/^ {2}([a-z]+) /gm)]
    .map(([, name = '']) => name)
    .filter((name) => name !== 'help');
  expect(commands.length).toBeGreaterThan(10);
  for (const name of commands) expect(text).toContain(name);
  expect(text).toContain('require');
});

it('refuses a shell that it does not know, and names those that it does', async () => {
  const { status, complained } = await tribrach(['completion', 'csh']);
  expect(status).toBe(2);
  expect(complained).toContain('fish');
});
