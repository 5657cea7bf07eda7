/** The package as strangers get it: packed, installed without network, started, and used as a library with its types. */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import manifest from '../package.json' with { type: 'json' };
import { folderWith } from './command-line-run.ts';

const at = folderWith({
  'package.json': '{"name":"office","private":true,"version":"1.0.0"}',
  'day.trib': readFileSync('samples/breakwater.trib', 'utf8'),
  'pickup.csv': readFileSync('samples/pickup.csv'),
  'grids/region.gtx': readFileSync('samples/grids/region.gtx'),
});
afterAll(() => at.remove());
/** Other versions of Node, as paths parted by colons; this one is always tried. */
const NODES = [process.execPath, ...(process.env['TRIBRACH_NODES'] ?? '').split(':').filter(Boolean)];
const environment = {
  ...process.env,
  npm_config_cache: at.path('npm'),
  npm_config_offline: 'true',
  XDG_CACHE_HOME: at.path('cache'),
};
const run = (program: string, ...words: string[]) =>
  spawnSync(program, words, { cwd: at.path(), encoding: 'utf8', env: environment });

let archive = '';
beforeAll(() => {
  if (!existsSync('dist/library.cjs'))
    throw new Error('There is no dist/library.cjs; run "npm run build" before this test.');
  // What was built is packed as it is.
  const words = ['pack', '--ignore-scripts', '--json', '--pack-destination', at.path()];
  const [packed] = JSON.parse(execFileSync('npm', words, { encoding: 'utf8', env: environment })) as {
    filename: string;
    size: number;
  }[];
  archive = at.path(packed?.filename);
  process.stdout.write(`the package: ${((packed?.size ?? 0) / 1e6).toFixed(2)} MB\n`);
  const { status, stderr } = run('npm', 'install', '--no-audit', '--no-fund', archive);
  if (status !== 0) throw new Error(stderr);
});

describe('the installed package', () => {
  it('brings nothing along, and nothing of it but what it needs', () => {
    expect(readdirSync(at.path('node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      'tribrach',
    ]);
    const files = readdirSync(at.path('node_modules/tribrach'), { recursive: true, encoding: 'utf8' });
    expect(files.filter((path) => path.includes('.')).sort()).toEqual([
      'CHANGELOG.md',
      'README.md',
      'dist/egm96-grid.json',
      'dist/library.cjs',
      'dist/library.d.cts',
      'dist/licences.txt',
      'dist/parameters.json',
      'dist/program.cjs',
      'dist/systems.json',
      'dist/tribrach.cjs',
      'package.json',
      ...readdirSync('schemas')
        .map((name) => `schemas/${name}`)
        .sort(),
    ]);
  });

  it.each(NODES)('runs on %s', (node) => {
    const program = at.path('node_modules/tribrach/dist/tribrach.cjs');
    expect(run(node, program, '--version').stdout).toBe(`${manifest.version}\n`);
    for (const time of ['first', 'from what was compiled']) {
      const { status, stdout, stderr } = run(node, program, 'check', 'day.trib', '--require', 'held');
      expect([time, status, stderr]).toEqual([time, 0, '']);
      expect(stdout).toContain('held 08:25–15:25, nothing wrong');
    }
    const version = run(node, '--version').stdout.trim();
    process.stdout.write(`ran on Node ${version}\n`);
  });

  it('is on the path after a global install, and runs from the archive alone', () => {
    const prefix = at.path('global');
    expect(run('npm', 'install', '--global', '--prefix', prefix, archive).status).toBe(0);
    expect(run(join(prefix, 'bin', 'tribrach'), 'check', 'day.trib').status).toBe(0);
    const { status, stdout } = run('npx', '--yes', `./${basename(archive)}`, '--version');
    expect([status, stdout]).toEqual([0, `${manifest.version}\n`]);
  });
});

describe('the library', () => {
  const CALL = `
    const broken = inspect(readFileSync('day.trib', 'utf8').replaceAll('extension', 'note') + 'nonsense\\n', { path: 'day.trib' });
    const files = Object.fromEntries(['pickup.csv', 'grids/region.gtx'].map((path) => [path, readFileSync(path)]));
    const good = inspect(readFileSync('day.trib', 'utf8'), { files });
    console.log(JSON.stringify([good.verdict.day, good.files[0].findings.length, broken.files[0].path, broken.files[0].findings.length > 0, good.values.length > 50, good.interface, good.points[0].classes.held]));`;
  const CALLS = {
    'use.mjs': `import { readFileSync } from 'node:fs';\nimport { inspect } from 'tribrach';${CALL}`,
    'use.cjs': `const { readFileSync } = require('node:fs');\nconst { inspect } = require('tribrach');${CALL}`,
  };
  it.each(Object.entries(CALLS).flatMap(([name, text]) => NODES.map((node) => [name, text, node] as const)))(
    'is called from %s',
    (name, text, node) => {
      writeFileSync(at.path(name), text);
      const { stdout, stderr } = run(node, name);
      expect(stderr).toBe('');
      expect(JSON.parse(stdout)).toEqual(['held', 0, 'day.trib', true, true, 1, 11]);
    },
  );

  it('publishes a schema that a program can ask for by name', () => {
    const text = `console.log(require('tribrach/schemas/check.schema.json').$schema)`;
    expect(run(process.execPath, '-e', text).stdout).toContain('2020-12');
  });

  it.each(['node16', 'bundler'])('has types that a stranger compiles with, resolved as %s', (resolution) => {
    writeFileSync(
      at.path('typed.mts'),
      `import { inspect, INTERFACE_VERSION, type Inspected, type Finding } from 'tribrach';
const answer: Inspected = inspect('job "x"', { path: 'a.trib', files: { 'marks.trib': '', 'grid.gtx': new Uint8Array() } });
const first: Finding | undefined = answer.files[0]?.findings[0];
export const told: string | null = first?.fixes[0]?.edits[0]?.text ?? answer.verdict.next;
export const version: 1 = INTERFACE_VERSION;
// @ts-expect-error -- there is no such field
answer.nothing;
`,
    );
    const module = resolution === 'node16' ? 'node16' : 'esnext';
    const { status, stdout } = run(
      process.execPath,
      resolve('node_modules/typescript/bin/tsc'),
      ...['--noEmit', '--strict', '--target', 'es2022', '--lib', 'es2023'],
      ...['--module', module, '--moduleResolution', resolution, 'typed.mts'],
    );
    expect([status, stdout]).toEqual([0, '']);
  });
});
