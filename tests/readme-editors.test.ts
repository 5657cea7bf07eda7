/** The README's recipes for other editors work as they are printed, in a profile that holds nothing else. */
import { execFile, execFileSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';

const readme = readFileSync('README.md', 'utf8');
const recipe = (language: string) =>
  new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\`$`, 'm').exec(readme)?.[1] ?? '';
const program = resolve('dist/tribrach.cjs');
const has = (name: string) => {
  try {
    execFileSync(name, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
};
const built = existsSync(program);
if (!built) process.stdout.write('the README’s recipes are not tried: there is no dist/tribrach.cjs\n');

/** A slip with a finding at it, in a folder with a `tribrach` on its path. */
const folder = folderWith({});
mkdirSync(folder.path('bin'));
writeFileSync(folder.path('bin/tribrach'), `#!/bin/sh\nexec node '${program}' "$@"\n`);
chmodSync(folder.path('bin/tribrach'), 0o755);
copyFileSync('tests/editors/workspace/comma.trib', folder.path('comma.trib'));
afterAll(() => folder.remove());

const run = async (name: string, args: readonly string[]) => {
  const { stdout, stderr } = await promisify(execFile)(name, args, {
    cwd: folder.path(),
    timeout: 150_000,
    env: {
      ...process.env,
      PATH: [folder.path('bin'), process.env['PATH'] ?? ''].join(delimiter),
      XDG_CONFIG_HOME: folder.path('config'),
      XDG_DATA_HOME: folder.path('data'),
    },
  });
  return `${stdout}\n${stderr}`;
};

describe('the README’s recipe', () => {
  it.runIf(built && has('nvim'))(
    'for Neovim finds, tells, mends and completes',
    { timeout: 180_000 },
    async () => {
      mkdirSync(folder.path('config/nvim'), { recursive: true });
      writeFileSync(folder.path('config/nvim/init.lua'), recipe('lua'));
      const script = resolve('tests/readme-editors.lua');
      const said = await run('nvim', [
        '--headless',
        '-i',
        'NONE',
        '-n',
        'comma.trib',
        '-c',
        `luafile ${script}`,
      ]);
      for (const what of ['filetype', 'comment', 'finding', 'hover', 'fix', 'completion'])
        expect(said).toContain(`passed ${what}`);
    },
  );

  it.runIf(built && has('emacs'))(
    'for Emacs starts the server, which finds',
    { timeout: 180_000 },
    async () => {
      writeFileSync(folder.path('init.el'), recipe('lisp'));
      const script = join(resolve('tests'), 'readme-editors.el');
      const said = await run('emacs', [
        '--batch',
        '--eval',
        '(package-initialize)',
        '-l',
        'init.el',
        '-l',
        script,
      ]);
      if (said.includes('eglot is not installed'))
        return void process.stdout.write('Emacs has no eglot here\n');
      expect(said).toContain('mode tribrach-mode');
      expect(said).toContain('number/decimal-comma');
      expect(said).toContain('hover 1.533');
    },
  );
});
