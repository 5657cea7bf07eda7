/** What changed in results, told to people, to pull requests and through real git. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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

function compare(changed: string, ...words: string[]): { status: number; printed: string } {
  writeFileSync(join(job, 'changed.trib'), changed);
  try {
    const printed = execFileSync('node', [program, 'compare', 'breakwater.trib', 'changed.trib', ...words], {
      cwd: job,
      encoding: 'utf8',
    });
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

  /** Two readings of one time are averaged, so a millimetre in one is half a millimetre in the height (and the slope shrinks a trifle). */
  it('says by how much', () => {
    const line = answer.printed.split('\n').find((one) => one.includes('setup/BASE/height/arp'));
    expect(line).toMatch(/\+0\.5 mm$/);
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
  });
});
