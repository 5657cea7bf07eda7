/** The README shows what the program says: its session gives the very output printed below it, and its words are true. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { folderWith, tribrach } from './command-line-run.ts';

const readme = readFileSync('README.md', 'utf8');
const blocks = (language: string) =>
  [...readme.matchAll(new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\`$`, 'gm'))].map(([, text = '']) => text);

const [session = ''] = blocks('tribrach');
const day = folderWith({ 'day.trib': session });
afterAll(() => day.remove());

/** As somebody sees it who stands in the session's folder. */
async function said(command: string): Promise<string> {
  const before = process.cwd();
  process.chdir(day.path());
  try {
    return (await tribrach([command, 'day.trib'])).printed;
  } finally {
    process.chdir(before);
  }
}

describe('the README', () => {
  it('shows what check says', async () => {
    expect(blocks('text')[0]).toBe(await said('check'));
  });
  it('shows the card to key from', async () => {
    expect(blocks('text')[1]).toBe(await said('tell'));
  });
  it('names scripts and commands that there are', async () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      scripts: Record<string, string>;
    };
    const named = [...readme.matchAll(/npm run ([a-z:]+)/g)].map(([, script = '']) => script);
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
    const commands = new Set([...readme.matchAll(/`tribrach ([a-z]+)/g)].map(([, command = '']) => command));
    expect(commands.size).toBeGreaterThan(4);
    for (const command of commands)
      expect([command, (await tribrach([command, '--help'])).status]).toEqual([command, 0]);
  });
});

it('each promise of the README has a test that is there', () => {
  const promises = readme.slice(readme.indexOf('## What it promises'), readme.indexOf('And further:'));
  const kept = [...promises.matchAll(/^- \*\*(Never \w+)\.\*\*.*$/gm)];
  expect(kept.map(([, name]) => name)).toEqual(
    expect.arrayContaining(['Never lost', 'Never changed', 'Never fetched', 'Never run']),
  );
  for (const [promise] of kept) expect(promise).toMatch(/\]\(\S+\.test\.ts\)/);
  const tests = [...promises.matchAll(/\]\((\S+\.(?:ts|mjs))\): ((?:“[^”]+”)+)/g)];
  expect(tests.length).toBeGreaterThan(8);
  for (const [, path = '', names = ''] of tests)
    for (const [, name = ''] of names.matchAll(/“([^”]+)”/g))
      expect([path, readFileSync(path, 'utf8').includes(name)]).toEqual([path, true]);
});

it('DEVELOPERS.md says what each dependency is for', () => {
  const page = readFileSync('DEVELOPERS.md', 'utf8');
  const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<
    'dependencies' | 'devDependencies',
    Record<string, string>
  >;
  const packages = Object.keys({ ...dependencies, ...devDependencies });
  const cells = page.split('\n').flatMap((line) => (line.startsWith('| ') ? [line.split('|')[1] ?? ''] : []));
  const described = cells.flatMap((cell) => cell.split(',').map((name) => name.trim().split(' ')[0]));
  expect(packages.filter((name) => !described.includes(name))).toEqual([]);
});

describe.each(['README.md', 'DEVELOPERS.md'])('the links of %s', (page) => {
  it('lead somewhere', () => {
    const targets = [...readFileSync(page, 'utf8').matchAll(/\]\((?!https?:)([^)#]+)/g)].map(
      ([, target = '']) => target,
    );
    expect(targets.length).toBeGreaterThan(0);
    expect(targets.filter((target) => !existsSync(join(dirname(page), target)))).toEqual([]);
  });
});
