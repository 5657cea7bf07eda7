/** What changed in results, told to people, to pull requests and through real git. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const samples = fileURLToPath(new URL('../samples', import.meta.url));
const clean = readFileSync(join(samples, 'breakwater.trib'), 'utf8');
const folder = mkdtempSync(join(tmpdir(), 'tribrach-compare-'));
const program = join(folder, 'tribrach.cjs');
const job = join(folder, 'job');

beforeAll(async () => {
  const entry = fileURLToPath(new URL('../server/command-line/main.ts', import.meta.url));
  await build({
    entryPoints: [entry],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile: program,
    logLevel: 'error',
  });
  cpSync(samples, job, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const compare = (changed: string, ...words: string[]) => compareWith(clean, changed, ...words);

function compareWith(old: string, changed: string, ...words: string[]): { status: number; printed: string } {
  writeFileSync(join(job, 'old.trib'), old);
  writeFileSync(join(job, 'changed.trib'), changed);
  return run('old.trib', 'changed.trib', ...words);
}

function run(...words: string[]): { status: number; printed: string } {
  try {
    const printed = execFileSync('node', [program, 'compare', ...words], { cwd: job, encoding: 'utf8' });
    return { status: 0, printed };
  } catch (error) {
    const { status, stdout } = error as { status: number; stdout: string };
    return { status, printed: stdout };
  }
}

describe('two versions that differ by formatting alone', () => {
  it('print nothing and exit 0', () => {
    const reformatted = `# another comment\r\n${clean.replaceAll('\n', '\r\n').replaceAll('  ', '   ')}`;
    expect(compare(reformatted)).toEqual({ status: 0, printed: '' });
  });
});

describe('one millimetre in one reading', () => {
  const { status, printed } = { status: 0, printed: '' };
  let answer = { status, printed };
  beforeAll(() => {
    answer = compare(clean.replace('measured    1.284 m to foot', 'measured    1.285 m to foot'));
  });

  it('prints exactly what it moved, and exits 1', () => {
    expect(answer.status).toBe(1);
    const ids = answer.printed
      .split('\n')
      .flatMap((line) => /^ {2}((?:mark|setup|check)\/\S+)/.exec(line)?.[1] ?? []);
    // The antenna height and what is above it; no mark, no residual, no distance.
    expect(ids).toContain('setup/BASE/reading/1');
    expect(ids).toContain('setup/BASE/height/arp');
    expect(ids).toContain('setup/BASE/tell/antenna-height');
    expect(ids).toContain('setup/BASE/keyed/1/up');
    expect(ids).toContain('check/OPEN/explained/up');
    expect(
      ids.filter((id) => /^mark\/|reading\/[23]|residual|distance|tell\/l|expected|tolerance/.test(id)),
    ).toEqual([]);
  });

  it('shows what was not known before, as it is known now', () => {
    const open = clean.replace('position    -40311.882 m E', 'position    ? m E');
    const { printed } = compareWith(open, clean, '--format', 'json');
    const { values } = JSON.parse(printed) as { values: Record<'id' | 'before' | 'after', unknown>[] };
    const east = values.find(({ id }) => id === 'mark/PM-09/east');
    expect(east).toEqual({ id: 'mark/PM-09/east', before: null, after: expect.any(String), moved: null });
    expect(east?.after).toMatch(/^−40311[.]8820* m$/);
  });

  /** Two readings of one time are averaged, so a millimetre in one is half a millimetre in the height (and the slope shrinks a trifle). */
  it('says by how much', () => {
    const line = answer.printed.split('\n').find((one) => one.includes('setup/BASE/height/arp'));
    expect(line).toMatch(/\+0\.5 mm$/);
  });
});

describe('points that came to lie elsewhere', () => {
  const table = readFileSync(join(samples, 'pickup.csv'), 'utf8').trimEnd().split('\n');
  const rows = table.length;
  const reading = (text: string) =>
    text.replace('measured    1.284 m to foot', 'measured    1.285 m to foot');
  const shiftOf = (printed: string) =>
    printed.split('\n').filter((line) => line.includes('largest point shift'));
  // What was keyed for the base's height is 250 mm too much, as the checks show, so that the points are brought down by as much.
  const told = clean
    .replace('height 61.201 m ellipsoidal', 'height 61.451 m ellipsoidal')
    .replace(/(observed .*height )([\d.]+)/g, (_, words: string, height: string) => {
      return `${words}${(Number(height) + 0.25).toFixed(3)}`;
    });

  it('are told by the farthest of them, with what moved it', () => {
    expect(told).not.toBe(clean);
    const { status, printed } = compare(told);
    expect(status).toBe(1);
    expect(shiftOf(printed)).toEqual([
      expect.stringMatching(
        new RegExp(
          `largest point shift {2}\\d+ of pickup\\.csv \\(line \\d+\\): 250 mm \\(.*250 mm down\\); ${rows} points moved\\. What BASE was told put its antenna .*250 mm too high\\.`,
        ),
      ),
    ]);
    const back = compareWith(told, clean);
    expect(shiftOf(back.printed)[0]).toMatch(/250 mm up\); .*It is repaired no more\./);
  });

  it('stand in a row of a pull request, and in a field for machines', () => {
    const row = shiftOf(compare(told, '--format', 'markdown').printed);
    expect(row).toEqual(['| largest point shift | by | points moved | why |']);
    const { largestShift } = JSON.parse(compare(told, '--format', 'json').printed) as {
      largestShift: { set: string; up: number; moved: number; partly: boolean };
    };
    expect(largestShift).toMatchObject({ set: 'pickup.csv', moved: rows, partly: false });
    expect(largestShift.up).toBeCloseTo(-0.25, 3);
  });

  /** One of two readings of one time, so that the height grows by half of it. */
  it('move with one millimetre in one reading, and with nothing less', () => {
    expect(shiftOf(compareWith(told, reading(told)).printed)).toEqual([
      expect.stringMatching(new RegExp(`: 0\\.5 mm \\(0\\.5 mm up\\); ${rows} points moved\\.`)),
    ]);
    // Nothing is repaired on the clean day, and nothing moves.
    expect(shiftOf(compare(reading(clean)).printed)).toEqual([]);
    const reformatted = `# another comment\r\n${told.replaceAll('\n', '\r\n').replaceAll('  ', '   ')}`;
    expect(compareWith(told, reformatted)).toEqual({ status: 0, printed: '' });
  });

  it('are found by their names where rows came in between or changed their order', () => {
    const points = Array.from(
      { length: 300 },
      (_, index) => [`P${index}`, 1000 + index, 2000, '09:00'] as const,
    );
    const written = (cells: readonly (readonly [string, number, number, string])[]) =>
      cells.map((row) => row.join(',')).join('\n');
    const session = clean
      .replace('pickup.csv', 'points.csv')
      .replace(', height m orthometric, code, time local', ', time local');
    const moved = points.map(([name, east, north, time]) =>
      name === 'P150' ? ([name, east, north + 0.007, time] as const) : ([name, east, north, time] as const),
    );
    const [first, ...others] = moved;
    const changed = [
      ...others.slice(0, 9),
      ['NEW', 5, 6, '09:00'] as const,
      ...others.slice(9),
      first ?? moved[0],
    ];
    for (const [name, own] of [
      ['one', points],
      ['other', changed.filter((point) => point !== undefined)],
    ] as const) {
      mkdirSync(join(job, name), { recursive: true });
      writeFileSync(join(job, name, 'day.trib'), session);
      writeFileSync(join(job, name, 'points.csv'), written(own));
    }
    const { printed } = run('one/day.trib', 'other/day.trib');
    expect(shiftOf(printed)).toEqual([
      '  largest point shift  P150 of points.csv (line 151): 7.0 mm (7.0 mm north); no other point moved. Its own coordinates stand otherwise now.',
    ]);
  });
});

describe('what only one version has', () => {
  const idsIn = (printed: string) => printed.split('\n').filter((line) => /^ {2}\w+\/\S/.test(line));

  it('is a renamed check or mark in one line', () => {
    const check = compare(clean.replaceAll('CLOSE', 'LAST'));
    expect(check.status).toBe(1);
    expect(check.printed).toContain('  check LAST was called CLOSE; its values are the same\n');
    const mark = compare(clean.replaceAll('PM-09', 'PM-9'));
    expect(mark.printed).toContain('  mark PM-9 was called PM-09; its values are the same\n');
    expect([idsIn(check.printed), idsIn(mark.printed)]).toEqual([[], []]);
  });

  it('is a check that is new or gone, and one that is renamed and measures something else', () => {
    const without = clean.replace(/^check CLOSE[^]*?(?=^\w)/m, '');
    expect(without).not.toBe(clean);
    const gone = compare(without).printed;
    const come = compareWith(without, clean).printed;
    expect(gone).toContain('  check CLOSE is gone; it passed\n');
    expect(come).toContain('  check CLOSE is new, and passes\n');
    const other = clean.replaceAll('CLOSE', 'LAST').replace('height 5.199 m', 'height 5.299 m');
    const both = compare(other).printed;
    expect(both).toContain('  check LAST is new, and fails\n  check CLOSE is gone; it passed\n');
    expect([gone, come, both].flatMap(idsIn)).toEqual([]);
  });

  it('stands in a pull request as text, and for machines with what its ids begin with', () => {
    const hostile = clean.replaceAll('CLOSE', '"<b>|*x"');
    expect(compare(hostile, '--format', 'markdown').printed).toContain(
      '- check &#60;b&#62;&#124;&#42;x was called CLOSE',
    );
    const { things } = JSON.parse(compare(clean.replaceAll('CLOSE', 'LAST'), '--format', 'json').printed) as {
      things: unknown;
    };
    expect(things).toEqual([
      {
        ...{ kind: 'check', name: 'LAST', is: 'renamed', was: 'CLOSE', verdict: 'passes' },
        prefixes: ['check/LAST', 'check/CLOSE'],
      },
    ]);
  });
});

describe('an observation that is another one', () => {
  const other = clean.replace('height 5.199 m orthometric', 'height 5.299 m orthometric');

  it('changes the verdict and the findings', () => {
    const { printed } = compare(other, '--format', 'markdown');
    expect(printed).toContain('**Verdict was:**');
    expect(printed).toMatch(/check\/CLOSE\/residual\/up \| 0\.0030 m \| 0\.1030 m \| \+100 mm/);
    expect(printed).toContain('**Now found**');
    expect(printed).toMatch(/pickup\.csv: [^\n]*bracketed[^\n]* → [^\n]*in doubt/);
  });

  it('cannot smuggle markup into a pull request', () => {
    const { printed } = compare(other.replaceAll('CLOSE', 'C<b>`|x'), '--format', 'markdown');
    expect(printed).toContain('C&#60;b&#62;');
    expect(printed).not.toMatch(/<|`/);
    for (const line of printed.split('\n').filter((one) => one.startsWith('|')))
      expect(line.split('|')).toHaveLength(6);
  });
});

describe('git diff', () => {
  const git = (...words: string[]) =>
    execFileSync('git', ['-c', 'user.name=R. Okafor', '-c', 'user.email=okafor@harbour.invalid', ...words], {
      cwd: job,
      encoding: 'utf8',
    });

  it('shows results with the two lines of set-up that the README gives', () => {
    rmSync(join(job, 'changed.trib'), { force: true });
    git('init', '-q');
    writeFileSync(join(job, '.gitattributes'), '*.trib diff=tribrach\n');
    git('config', 'diff.tribrach.command', `node ${program} compare --git`);
    git('add', '-A');
    git('commit', '-qm', 'The day as noted');
    writeFileSync(join(job, 'breakwater.trib'), clean.replace('1.284 m to foot', '1.285 m to foot'));
    const shown = git('diff');
    expect(shown).toContain('setup/BASE/height/arp');
    expect(shown).toContain('+0.5 mm');
    expect(shown).not.toContain('+  measured');
    writeFileSync(join(job, 'breakwater.trib'), `${clean}\n# a comment\n`);
    expect(git('diff')).toContain('no result did');
    writeFileSync(join(job, 'breakwater.trib'), clean);
  });

  it('tells a session that is new or deleted by what it holds and its verdict', () => {
    writeFileSync(join(job, 'new.trib'), clean);
    git('add', '-A');
    const held = '3 marks, 1 setup, 5 checks';
    const shown = git('diff', '--cached', '--', 'new.trib').split('\n');
    expect(shown.slice(0, 2)).toEqual(['new.trib', `  a new session: ${held}`]);
    expect(shown.join('\n')).toMatch(/^ {2}verdict is {3}Proved: 08:25 to 15:25 is bracketed, .*11:10/m);
    expect(shown.length).toBeLessThan(8);
    git('commit', '-qm', 'Another day');
    rmSync(join(job, 'new.trib'));
    const gone = git('diff').split('\n');
    expect(gone.slice(0, 2)).toEqual(['new.trib', `  the session is gone; it had ${held}`]);
    expect(gone.length).toBeLessThan(8);
    git('checkout', '-q', '--', 'new.trib');
  });

  it('compares a session that was moved with itself, by its new name', () => {
    mkdirSync(join(job, 'kept'), { recursive: true });
    cpSync(join(job, 'pickup.csv'), join(job, 'kept', 'pickup.csv'));
    cpSync(join(job, 'grids'), join(job, 'kept', 'grids'), { recursive: true });
    git('mv', 'new.trib', 'kept/moved.trib');
    expect(git('diff', '--cached', '-M', '--', 'new.trib', 'kept/moved.trib')).toBe(
      'new.trib → kept/moved.trib: the text changed, no result did\n',
    );
    git('reset', '-q', '--hard');
  });

  it('leaves what is not merged yet alone', () => {
    const branch = git('branch', '--show-current').trim();
    const reading = (millimetres: number) =>
      writeFileSync(join(job, 'new.trib'), clean.replace('1.284 m to foot', `1.28${millimetres} m to foot`));
    git('checkout', '-qb', 'theirs');
    reading(5);
    git('commit', '-qam', 'One reading');
    git('checkout', '-q', branch);
    reading(6);
    git('commit', '-qam', 'Another reading');
    expect(() => git('merge', '-q', 'theirs')).toThrow();
    expect(git('diff', '--cached')).toContain('new.trib: not merged yet\n');
    git('merge', '--abort');
  });
});
