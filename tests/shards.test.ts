/** An archive in shares: whatever the number of parts, joined they are byte for byte what one run prints, and end as it does. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHECK_FORMATS } from '../server/command-line/check-answer.ts';
import { folderWith, tribrach, type Ran } from './command-line-run.ts';

const at = folderWith({});
afterAll(() => at.remove());

async function parts(count: number, words: readonly string[], name: string): Promise<string[]> {
  const written: string[] = [];
  for (let number = 1; number <= count; number++) {
    const { status, printed, complained } = await tribrach([...words, '--shard', `${number}/${count}`]);
    expect([number, status, complained]).toEqual([number, 0, '']);
    const path = at.path(`${name}-${number}.part`);
    writeFileSync(path, printed);
    written.push(path);
  }
  return written;
}

const DEMANDS = [[], ['--severity', 'hint', '--hints'], ['--require', 'bracketed']] as const;

describe.each(DEMANDS.map((demands) => [demands.join(' ') || 'plainly', demands] as const))(
  'all samples, checked %s',
  (_, demands) => {
    const words = ['check', 'samples', ...demands];
    const single = new Map<string, Ran>();
    beforeAll(async () => {
      for (const format of CHECK_FORMATS) single.set(format, await tribrach([...words, '--format', format]));
    });

    it.each([1, 2, 7, 16])('say in %i parts what one run says, in every form', async (count) => {
      const paths = await parts(count, words, `of-${count}-${demands.length}`);
      for (const [format, one] of single) {
        expect(one.printed.length).toBeGreaterThan(1000);
        expect(await tribrach(['join', ...paths.toReversed(), '--format', format])).toEqual(one);
      }
      expect(single.size).toBe(CHECK_FORMATS.length);
    });
  },
);

it('a folder of good days ends in 0, and more shares than sessions are no harm', async () => {
  const words = ['check', 'samples/breakwater.trib', 'samples/two-setups.trib'];
  const paths = await parts(5, words, 'good');
  const one = await tribrach(words);
  expect(one.status).toBe(0);
  expect(await tribrach(['join', ...paths])).toEqual(one);
});

describe('join refuses', () => {
  const refused = async (paths: readonly string[]) => {
    const { status, printed, complained } = await tribrach(['join', ...paths]);
    expect([status, printed]).toEqual([2, '']);
    return complained;
  };
  const words = ['check', 'samples/broken'];

  it('parts of which one is missing, and names it', async () => {
    const paths = await parts(3, words, 'missing');
    expect(await refused([paths[0] ?? '', paths[2] ?? ''])).toContain('2/3');
  });
  it('a part twice', async () => {
    const paths = await parts(2, words, 'twice');
    expect(await refused([...paths, paths[0] ?? ''])).toContain('twice');
  });
  it('parts of other options, of another list of sessions, of another number of shares', async () => {
    const [first = ''] = await parts(2, words, 'one');
    for (const [index, others] of [
      await parts(2, [...words, '--hints'], 'hints'),
      await parts(2, [...words, '--severity', 'warning'], 'severity'),
      await parts(2, [...words, 'samples/breakwater.trib'], 'longer'),
      await parts(3, words, 'three'),
    ].entries())
      expect([index, await refused([first, ...others.slice(1)])]).toEqual([
        index,
        expect.stringContaining('of different runs'),
      ]);
  });
  it('a part that was cut off, wherever, that is no part, or that another version printed', async () => {
    const [first = '', second = ''] = await parts(2, words, 'cut');
    const text = readFileSync(second, 'utf8');
    const spoiled = [
      ...[0, 10, text.indexOf('\n') + 1, text.length / 2, text.length - 1].map((end) => text.slice(0, end)),
      `${text}${text.split('\n').at(-2) ?? ''}\n`,
      text.replace(/"version":"[^"]*"/, '"version":"99.0.0"'),
      text.replace('"counts":', '"account":'),
      '{"files":[]}\n',
    ];
    for (const [index, content] of spoiled.entries()) {
      writeFileSync(second, content);
      expect([index, await refused([first, second])]).toEqual([index, expect.stringContaining(second)]);
    }
  });
});

describe('check refuses', () => {
  it.each(['0/3', '4/3', '3', 'a/b', '1/0', '-1/3', '1/99999'])('the share %s', async (share) => {
    const { status, printed, complained } = await tribrach(['check', 'samples', '--shard', share]);
    expect([status, printed]).toEqual([2, '']);
    expect(complained).toContain('3/16');
  });
  it('a format for a part, which holds them all', async () => {
    const ran = await tribrach(['check', 'samples', '--shard', '1/2', '--format', 'json']);
    expect([ran.status, ran.printed]).toEqual([2, '']);
  });
});

describe('in a workflow', () => {
  it('each finding but hints is one command at its line, worst first', async () => {
    const { printed } = await tribrach([
      'check',
      'samples/broken/height-extension.trib',
      '--format',
      'annotations',
    ]);
    const lines = printed.trimEnd().split('\n');
    expect(lines[0]).toMatch(
      /^::error file=samples\/broken\/height-extension\.trib,line=\d+,endLine=\d+,(?:col=\d+,endColumn=\d+,)?title=[^:,]+/,
    );
    expect(lines.every((line) => /^::(?:error|warning|notice) file=/.test(line))).toBe(true);
    const levels = lines.map((line) => ['e', 'w', 'n'].indexOf(line[2] ?? ''));
    expect(levels).toEqual(levels.toSorted());
  });
  it('no name in a session or of a file makes a command or a cell of its own', async () => {
    const hostile = folderWith({
      'a|b,::error::x%0A.trib':
        'mark "x\u0085::error::y | z"\n  height 6,284 m orthometric\nnonsense | <b>\n',
    });
    const path = hostile.path('a|b,::error::x%0A.trib');
    const { printed } = await tribrach(['check', path, '--format', 'annotations']);
    for (const line of printed.trimEnd().split('\n')) {
      const [, properties = ''] = /^::\w+ (.*?)::/.exec(line) ?? [];
      expect(
        properties.split(',').filter((one) => !/^(?:file|line|endLine|col|endColumn|title)=[^:]*$/.test(one)),
      ).toEqual([]);
      expect(line).toContain('a|b%2C%3A%3Aerror%3A%3Ax%250A.trib');
    }
    const table = (await tribrach(['check', path, '--format', 'markdown'])).printed.split('\n');
    expect(table[2]?.match(/\|/g)).toHaveLength(5);
    hostile.remove();
  });
  it('the summary is a row a session, and what needs a look stands first', async () => {
    const { printed } = await tribrach([
      'check',
      'samples/breakwater.trib',
      'samples/broken/unit-missing.trib',
      '--format',
      'markdown',
    ]);
    const rows = printed.split('\n').filter((line) => line.startsWith('| samples'));
    expect(rows).toHaveLength(2);
    expect(rows[0]).toContain('unit-missing');
    expect(rows[1]).toContain('| held |');
    expect(printed).toMatch(/^2 sessions: /m);
  });
});

/** As several machines do: the built program, several at once, threads and kept answers in play. */
describe('the built program', () => {
  const program = 'dist/tribrach.cjs';
  const environment = { ...process.env, XDG_CACHE_HOME: at.path('cache') };
  const run = (...words: string[]) =>
    spawnSync('node', [program, ...words], { encoding: 'utf8', env: environment, maxBuffer: 1 << 28 });

  it('joins what threads made and what was kept from another run', () => {
    mkdirSync(at.path('many'));
    const names = readdirSync('samples/broken').filter((name) => name.endsWith('.trib'));
    for (const name of names) writeFileSync(at.path(`many/${name}`), readFileSync(`samples/broken/${name}`));
    const one = run('check', at.path('many'), '--format', 'sarif');
    for (const round of [1, 2]) {
      const paths = [1, 2].map((number) => {
        const path = at.path(`built-${round}-${number}.part`);
        writeFileSync(path, run('check', at.path('many'), '--shard', `${number}/2`).stdout);
        return path;
      });
      const { status, stdout } = run('join', ...paths, '--format', 'sarif');
      expect([status, stdout]).toEqual([one.status, one.stdout]);
    }
  });
});
