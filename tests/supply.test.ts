/** What others wrote: each package that is bundled is named with its licence, and the table of dependencies says what they say. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const LICENCES = 'dist/licences.txt';
/** They ask for nothing but that their text goes along. */
const LENIENT = new Set([
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  '0BSD',
]);

interface Manifest {
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}
const manifestAt = (folder: string) => JSON.parse(readFileSync(`${folder}/package.json`, 'utf8')) as Manifest;
const own = manifestAt('.');

describe('what is bundled', () => {
  if (!existsSync(LICENCES))
    throw new Error(`There is no ${LICENCES}; run "npm run build" before this test.`);
  const text = readFileSync(LICENCES, 'utf8');
  const [, ...parts] = text.split(/^={80}\n(?=.+\n={80}\n)/m);
  const named = parts.map((part) => {
    const [title = '', , ...words] = part.split('\n');
    const [, name = '', version = '', licence = ''] = /^(\S+) (\S+) \((.+)\)$/.exec(title) ?? [];
    return { name, version, licence, words: words.join('\n') };
  });

  it('leaves nothing to be installed', () => {
    expect(own.dependencies).toBe(undefined);
  });

  it('holds every package that the program imports, and what these bring along', () => {
    const names = named.map(({ name }) => name);
    const imported = ['grammar', 'server', 'client']
      .flatMap((top) =>
        readdirSync(top, { recursive: true, encoding: 'utf8' }).map((path) => `${top}/${path}`),
      )
      .filter((path) => path.endsWith('.ts') && !/test/.test(path))
      .flatMap((path) => [
        ...readFileSync(path, 'utf8').matchAll(
          /^(?!import type)(?:import|\}) .*?from '((?:@[^/']+\/)?[^./'][^/']*)/gm,
        ),
      ])
      .map(([, name = '']) => name);
    const wanted = [...new Set(imported)].filter((name) => !name.startsWith('node:') && name !== 'vscode');
    expect(wanted.length).toBeGreaterThan(5);
    expect(wanted.filter((name) => !names.includes(name))).toEqual([]);
    process.stdout.write(`bundled: ${names.join(', ')}\n`);
  });

  it.each(named)('$name $version may be, under $licence', ({ licence, words }) => {
    expect(LENIENT).toContain(licence);
    expect(words.length).toBeGreaterThan(300);
  });
});

describe('the table of dependencies', () => {
  const rows = readFileSync('DEVELOPERS.md', 'utf8')
    .split('\n')
    .filter((line) => /^\| .+\|.+\|.+\|.+\|$/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));
  const licences = new Map(
    rows.flatMap(([, packages = '', , , licence = '']) =>
      packages.split(',').map((name) => [name.trim().split(' ')[0] ?? '', licence] as const),
    ),
  );
  const direct = Object.keys({ ...own.dependencies, ...own.devDependencies });

  it.each(direct)('says the licence of %s', (name) => {
    const { license = 'none' } = manifestAt(`node_modules/${name}`);
    expect(licences.get(name)?.split(', ')).toContain(license);
  });
});
