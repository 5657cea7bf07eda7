/** What is written never takes the place of evidence, and what is printed never steers a terminal, whatever a file says. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  linkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { loadAnswers, saveAnswers } from '../server/command-line/kept-answers.ts';
import { textCell } from '../server/record/points/table.ts';
import { folderWith, tribrach } from './command-line-run.ts';

const DAY = readFileSync('samples/breakwater.trib', 'utf8');
const folders: { remove: () => void }[] = [];
afterAll(() => folders.forEach((folder) => folder.remove()));
function folder(more: Readonly<Record<string, string>> = {}) {
  const made = folderWith({ 'day.trib': DAY, 'pickup.csv': readFileSync('samples/pickup.csv'), ...more });
  folders.push(made);
  return made;
}

describe('a report', () => {
  it('is never written over a file that the session names, by whatever name, even by force', async () => {
    const at = folder({
      'base.ubx': 'raw',
      'named.trib': `${DAY}\nsetup LATER on PM-14 at 16:00\n  raw-log "base.ubx"\n`,
    });
    const points = readFileSync(at.path('pickup.csv'));
    linkSync(at.path('pickup.csv'), at.path('other.html'));
    for (const [session, out] of [
      ['day.trib', 'pickup.csv'],
      ['day.trib', 'other.html'],
      ['named.trib', 'base.ubx'],
      ['day.trib', 'day.trib'],
    ] as const)
      for (const force of [[], ['--force']]) {
        const ran = await tribrach(['report', at.path(session), '--out', at.path(out), ...force]);
        expect([out, ran.status, ran.complained]).toEqual([out, 2, expect.stringContaining('cannot write')]);
      }
    expect(readFileSync(at.path('pickup.csv'))).toEqual(points);
    expect(readFileSync(at.path('base.ubx'), 'utf8')).toBe('raw');
    expect(readFileSync(at.path('day.trib'), 'utf8')).toBe(DAY);
  });
  it('replaces an earlier report, and a stranger’s file only by force', async () => {
    const at = folder({ 'mine.html': '<p>my own page</p>' });
    const write = (out: string, ...more: string[]) =>
      tribrach(['report', at.path('day.trib'), '--out', at.path(out), ...more]);
    expect((await write('new.html')).status).toBe(0);
    expect((await write('new.html')).status).toBe(0);
    expect(await write('mine.html')).toMatchObject({
      status: 2,
      complained: expect.stringContaining('--force'),
    });
    expect(readFileSync(at.path('mine.html'), 'utf8')).toBe('<p>my own page</p>');
    expect((await write('mine.html', '--force')).status).toBe(0);
    expect(readFileSync(at.path('mine.html'), 'utf8')).toContain('tribrach report');
  });
  it('clears what a killed run left long ago, and nothing else', async () => {
    const [old, young] = ['.tribrach-0123456789abcdef.part', '.tribrach-fedcba9876543210.part'];
    const at = folder({
      [old]: 'half',
      [young]: 'half',
      '.tribrach-mine.part': 'mine',
      '.new.html.77.new': 'x',
    });
    utimesSync(at.path(old), 1, 1);
    utimesSync(at.path('.tribrach-mine.part'), 1, 1);
    expect((await tribrach(['report', at.path('day.trib'), '--out', at.path('new.html')])).status).toBe(0);
    expect(
      readdirSync(at.path())
        .filter((name) => name.startsWith('.'))
        .sort(),
    ).toEqual(['.new.html.77.new', young, '.tribrach-mine.part'].sort());
  });
  it('says in a sentence that a name is too long', async () => {
    const at = folder();
    for (const words of [
      ['report', at.path('day.trib'), '--out', at.path('x'.repeat(300))],
      ['points', at.path('day.trib'), '--out', at.path('x'.repeat(300))],
      ['new', at.path('x'.repeat(300))],
      ['check', at.path('x'.repeat(300))],
      ['capture', at.path('x'.repeat(300))],
      ['tell', at.path('day.trib'), '--root', at.path('x'.repeat(300))],
    ]) {
      const { status, complained } = await tribrach(words);
      expect([words[0], status, complained]).toEqual([
        words[0],
        2,
        expect.stringContaining('its name is too long'),
      ]);
    }
  });
});

/** Colours the screen, clears it, sets the title, by seven and by eight bits, and turns the direction of writing. */
const EVIL = '\u001b[31m\u001b[2J\u001b]0;x\u0007\u009b2J\u202e';
// eslint-disable-next-line no-control-regex -- these are what is looked for
const STEERS = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/;

describe('what is printed', () => {
  const at = folder({
    'evil.trib': DAY.replaceAll('PM-09', `"PM${EVIL}9"`)
      .replaceAll('BASE', `"B${EVIL}"`)
      .replace('north arm', EVIL),
    [`n${EVIL}.trib`]: DAY,
    'register.csv': `P${EVIL},1.5,2.5\n`,
  });
  const COMMANDS = [
    ...['check', 'derive', 'tell', 'report', 'seal', 'points', 'format'].flatMap((command) => [
      [command, 'evil.trib'],
      [command, `n${EVIL}.trib`],
      [command, `gone${EVIL}`],
    ]),
    ...['json', 'sarif'].map((format) => ['check', 'evil.trib', '--format', format]),
    ['derive', 'evil.trib', '--format', 'json'],
    ['derive', 'evil.trib', '--explain', EVIL],
    ['report', 'evil.trib', '--format', 'markdown'],
    ['compare', 'evil.trib', 'day.trib'],
    ['compare', 'evil.trib', 'day.trib', '--format', 'markdown'],
    ['compare', 'evil.trib', 'day.trib', '--format', 'json'],
    ['compare', `gone${EVIL}`, 'day.trib'],
    ['capture', `gone${EVIL}`],
    ['capture', 'evil.trib'],
    ['marks', 'register.csv', '--columns', 'name, east m, north m'],
    ['marks', `gone${EVIL}`, '--columns', 'name, east m, north m'],
    ['new', '-', '--name', EVIL],
    ['check', 'day.trib', '--changed-since', EVIL],
    ['check', 'day.trib', '--root', EVIL],
    ['seal', 'evil.trib', '--by', EVIL],
    [`x${EVIL}`],
  ];
  it.each(COMMANDS.map((words) => [words.join(' ').replace(/\P{ASCII}|\p{Cc}/gu, '~'), words] as const))(
    'on a terminal: %s',
    async (_, words) => {
      const placed = words.map((word) => (existsSync(at.path(word)) && word !== '' ? at.path(word) : word));
      const { printed, complained } = await tribrach(placed, { terminal: true });
      expect(printed + complained).not.toBe('');
      expect(printed).not.toMatch(STEERS);
      expect(complained).not.toMatch(STEERS);
    },
  );
  it('is a file’s own text where no terminal shows it', async () => {
    const { printed } = await tribrach(['format', at.path('evil.trib')]);
    expect(printed).toContain(EVIL);
  });
  it('is JSON that says the same', async () => {
    const { printed } = await tribrach(['derive', at.path('evil.trib'), '--format', 'json']);
    expect(JSON.stringify(JSON.parse(printed))).toContain('\u009b2J');
  });
});

describe('the cache', () => {
  const examined = {
    path: 'a',
    counts: { error: 1, warning: 0, information: 0, hint: 0 },
    shortfalls: [],
    text: 't',
    json: null,
    sarif: [],
    summary: null,
  };
  const answers = new Map([['a', { text: 'd', uses: [], examined }]]);
  it('gives back what was kept, and nothing that was cut or changed', () => {
    const cache = folder().path('cache');
    expect(saveAnswers(cache, 'k', answers)).toBeNull();
    expect(loadAnswers(cache, 'k')).toEqual(answers);
    const [name = ''] = readdirSync(cache);
    const kept = readFileSync(`${cache}/${name}`, 'utf8');
    for (const other of [
      '',
      kept.slice(0, -3),
      kept.replace('"error":1', '"error":0'),
      '[["a",null]]',
      '{}',
    ]) {
      writeFileSync(`${cache}/${name}`, other);
      expect(loadAnswers(cache, 'k').size).toBe(0);
    }
  });
  it('may be a file, a folder in the place of its file, or nowhere, and says why once', () => {
    const at = folder({ file: 'x' });
    expect(saveAnswers(at.path('file'), 'k', answers)).toMatch(/./);
    expect(saveAnswers('/dev/null/x', 'k', answers)).toBe('there is no such file');
    expect(saveAnswers(at.path('cache'), 'k', answers)).toBeNull();
    const [name = ''] = readdirSync(at.path('cache'));
    const other = at.path('other');
    mkdirSync(`${other}/${name}`, { recursive: true });
    expect(saveAnswers(other, 'k', answers)).toMatch(/./);
    expect(readdirSync(other)).toEqual([name]);
    expect(loadAnswers(other, 'k').size).toBe(0);
  });
});

describe('a cell of a table', () => {
  it('is no formula in any width, and holds nothing that steers', () => {
    for (const sign of ['=', '+', '-', '@', '\uff1d', '\uff0b', '\uff0d', '\uff20'])
      expect(textCell(`${sign}1`, ',')).toBe(`'${sign}1`);
    expect(textCell('a\u0000\u001b[2Jb', ',')).not.toMatch(/\p{Cc}/u);
  });
  it('is another one for another text', () => {
    const texts = [
      'a\nb',
      'a b',
      'a\r\nb',
      'a\\x0ab',
      'a\u0000b',
      'a\\x00b',
      'a\\x5cx00b',
      "'=a",
      '=a',
      "''=a",
      'a\\b',
    ];
    expect(new Set(texts.map((text) => textCell(text, ','))).size).toBe(texts.length);
  });
});
