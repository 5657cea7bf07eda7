/** What is inside the packaged extension: the files named here and no other, fit for a desktop and a browser. */
import { strFromU8, unzipSync } from 'fflate';
import { existsSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

const packagePath = 'dist/tribrach.vsix';
const expectedFiles = [
  '[Content_Types].xml',
  'extension.vsixmanifest',
  'extension/LICENSE.txt',
  'extension/client/icon.png',
  'extension/client/icon.svg',
  'extension/client/language-configuration.json',
  // The walkthrough shows them, and so does the page that presents the extension.
  ...['begun', 'card', 'caught', 'drawings', 'example'].flatMap((name) =>
    ['dark', 'light'].map((theme) => `extension/client/pictures/${name}-${theme}.png`),
  ),
  'extension/dist/card.js',
  'extension/dist/egm96-grid.json',
  'extension/dist/extension-web.js',
  'extension/dist/extension.cjs',
  'extension/dist/licences.txt',
  'extension/dist/panel.css',
  'extension/dist/panel.js',
  'extension/dist/parameters.json',
  'extension/dist/program.cjs',
  'extension/dist/server-worker.js',
  'extension/dist/systems.json',
  'extension/dist/tribrach.cjs',
  'extension/dist/tribrach.tmLanguage.json',
  'extension/package.json',
  'extension/readme.md',
  'extension/samples/example-day.trib',
];

describe('the packaged extension', () => {
  let files: Readonly<Record<string, Uint8Array>> = {};

  beforeAll(() => {
    if (!existsSync(packagePath))
      throw new Error(`There is no ${packagePath}; run "npm run package" before this test.`);
    const packaged = readFileSync(packagePath);
    process.stdout.write(`the packaged extension: ${(packaged.length / 1e6).toFixed(2)} MB\n`);
    files = unzipSync(packaged);
  });

  it('holds what it needs and nothing else', () => {
    expect(Object.keys(files).sort()).toEqual(expectedFiles);
  });

  it('finds every file that its manifest names', () => {
    // Types and exports are of the package of the command line, which has files of its own.
    const { types, exports, bin, ...ours } = JSON.parse(textOf('package.json')) as Record<string, unknown>;
    expect([types, exports, bin].every((field) => field !== undefined)).toBe(true);
    const named = [...JSON.stringify(ours).matchAll(/"(?:\.\/)?((?:client|dist|grammar)\/[^"]+)"/g)].map(
      ([, path]) => `extension/${String(path)}`,
    );
    expect(named.length).toBeGreaterThan(4);
    expect(named.filter((path) => !(path in files))).toEqual([]);
  });

  it('is presented by a page whose pictures are in it and whose links need no address', () => {
    const page = textOf('readme.md');
    const targets = [...page.matchAll(/\]\(([^)]*)\)/g)].map(([, target = '']) => target);
    expect(targets.length).toBeGreaterThan(1);
    for (const target of targets) {
      const [, coded = ''] = /^data:image\/png;base64,(.+)$/.exec(target) ?? [];
      expect([...Buffer.from(coded, 'base64').subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
    }
  });

  it('is not typed as a module, which an extension host in a browser refuses to load', () => {
    expect(JSON.parse(textOf('package.json'))).not.toHaveProperty('type');
  });

  it('asks for nothing but the editor in the browser', () => {
    const required = [...textOf('dist/extension-web.js').matchAll(/\brequire\("([^"]+)"\)/g)];
    expect(new Set(required.map(([, name]) => name))).toEqual(new Set(['vscode']));
  });

  function textOf(path: string): string {
    const bytes = files[`extension/${path}`];
    if (bytes === undefined) throw new Error(`${path} is not packaged`);
    return strFromU8(bytes);
  }
});

describe('the manifest', () => {
  const { contributes } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    readonly contributes: {
      readonly commands: readonly { readonly command: string; readonly title: string }[];
      readonly walkthroughs: readonly { readonly steps: readonly { readonly description: string }[] }[];
    };
  };
  const commands = contributes.commands.map(({ command }) => command);

  it('names each command and each title once', () => {
    const titles = contributes.commands.map(({ title }) => title);
    expect(commands).toEqual([...new Set(commands)]);
    expect(titles).toEqual([...new Set(titles)]);
  });

  it('leads from its walkthrough to commands that there are', () => {
    const steps = contributes.walkthroughs.flatMap((walkthrough) => walkthrough.steps);
    const led = steps.flatMap(({ description }) => [...description.matchAll(/command:([\w.]+)/g)]);
    expect(led.length).toBeGreaterThan(4);
    expect(led.map(([, command]) => command).filter((command) => !commands.includes(command ?? ''))).toEqual(
      [],
    );
  });
});
