/** A fault planted in each room: it is told as one finding where it can be told, and everything else is answered. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Diagnostic } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { startClient } from './language-client.ts';
import { buildPlanted, type Planted } from './planted-fault.ts';

/** A day whose one check fails by 250 mm, with a mark, an antenna, a setup, a check and points of its own name. */
const clean = readFileSync('samples/breakwater.trib', 'utf8');
const GOOD = clean.replace('antenna-height 1.533 m', 'antenna-height 1.283 m');
/** The base, and whatever speaks of it, is called BANG, and a word that nobody knows stands at the end. */
const BANG = `${GOOD.replaceAll('BASE', 'BANG')}\nBANGED 5\n`;
const lineOf = (text: string, start: string) =>
  text.split('\n').findIndex((line) => line.startsWith(start)) + 1;

const ROOMS: readonly (readonly [room: string, Planted, line: number | null])[] = [
  ['grammar', { file: 'grammar/visible.ts', name: 'visibleOf' }, null],
  ['grammar, the parser', { file: 'grammar/parser.ts', name: 'parseLine' }, null],
  ['quantities', { file: 'server/quantities/near.ts', name: 'nearest' }, null],
  ['session', { file: 'server/session/binding/setup.ts', name: 'bindSetup' }, lineOf(BANG, 'setup BANG')],
  ['session, as a whole', { file: 'server/session/patched.ts', name: 'listsOf' }, 1],
  ['derive', { file: 'server/derive/setups/setup.ts', name: 'setupValues' }, lineOf(BANG, 'setup BANG')],
  ['derive, checks', { file: 'server/derive/checks/check.ts', name: 'checkValues' }, null],
  ['derive, trust', { file: 'server/derive/trust/words.ts', name: 'verdictSentence' }, 1],
  ['slips', { file: 'server/slips/keyed-differences.ts', name: 'keyedDifferences' }, null],
  ['findings', { file: 'server/findings/unread.ts', name: 'unreadBy' }, null],
  ['record', { file: 'server/record/verdict.ts', name: 'verdictOf' }, 1],
  ['command line', { file: 'server/command-line/check-text.ts', name: 'findingsText' }, 1],
];

const folder = folderWith({ 'jobs/bang.trib': BANG, 'jobs/good.trib': GOOD });
afterAll(() => folder.remove());
const program = (name: string) => folder.path(`${name}.cjs`);
const run = (built: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program(built), ...words], {
    cwd: folder.path('jobs'),
    encoding: 'utf8',
  });
  return { status, printed: stdout, complained: stderr };
};

describe('a fault planted in', () => {
  beforeAll(() => buildPlanted(null, program('sound')), 60_000);

  it.each(ROOMS)(
    '%s is one finding, and the other session of the folder is answered',
    async (_, where, line) => {
      await buildPlanted(where, program(where.name));
      const text = run(where.name, 'check', '.');
      expect(text.complained).toBe('');
      expect(text.status).toBe(1);
      const sound = run('sound', 'check', 'good.trib').printed;
      expect(text.printed).toContain(sound);
      const faults = [...text.printed.matchAll(/^bang\.trib:(\d+):\d+ error program\/fault$/gm)];
      const lines = new Set(faults.map(([, at]) => at));
      // One for each entry that it happened over.
      expect(lines.size).toBeGreaterThan(0);
      expect(faults).toHaveLength(lines.size);
      if (line !== null) expect(Number(faults[0]?.[1])).toBe(line);
      expect(text.printed.replace(/\s+/g, ' ')).toContain(`planted in ${where.name}`);
      // What could not be computed is never proved.
      const proof = run(where.name, 'check', 'bang.trib', '--require', 'checked', '--severity', 'error');
      expect(proof.status).toBe(1);

      const told = run(where.name, 'tell', '.');
      expect(told.status).toBe(
        line === 1 && where.name !== 'listsOf' && where.name !== 'verdictSentence' ? 0 : 1,
      );
      expect(told.printed).toContain(run('sound', 'tell', 'good.trib').printed.split('\n\n')[1]);
    },
    120_000,
  );
});

describe('the language server with a fault planted in', () => {
  const PLACES: readonly Planted[] = [
    { file: 'server/derive/setups/setup.ts', name: 'setupValues' },
    { file: 'server/features/notices.ts', name: 'noticesOf' },
    { file: 'server/features/hover.ts', name: 'hoverAt' },
    { file: 'server/record/verdict.ts', name: 'verdictOf' },
  ];
  it.each(PLACES)(
    '$name lives, says so, and answers on other texts',
    async (where) => {
      await buildPlanted(where, program(where.name));
      const client = await startClient(
        folder.path('jobs'),
        {},
        { verdict: true },
        { program: program(where.name) },
      );
      const open = (name: string, text: string) =>
        client.notify('textDocument/didOpen', {
          textDocument: { uri: client.uri(name), languageId: 'tribrach', version: 1, text },
        });
      await open('bang.trib', BANG);
      await open('good.trib', GOOD);
      const codes = (found: readonly Diagnostic[]) => found.map(({ code }) => code);
      const good = codes(await client.findings(client.uri('good.trib'), 1));
      expect(good).toContain('height/extension');
      expect(good).not.toContain('program/fault');
      const bang = codes(await client.findings(client.uri('bang.trib'), 1));
      expect(bang.filter((code) => code === 'program/fault')).toHaveLength(
        where.name === 'hoverAt' || where.name === 'verdictOf' ? 0 : 1,
      );
      const hover = (name: string) =>
        client.request('textDocument/hover', {
          textDocument: { uri: client.uri(name) },
          position: { line: lineOf(GOOD, 'mark PM-14') - 1, character: 6 },
        });
      if (where.name === 'hoverAt') await expect(hover('bang.trib')).rejects.toThrow(/planted in hoverAt/);
      expect(JSON.stringify(await hover('good.trib'))).toContain('PM-14');
      expect((await client.stop()).status).toBe(0);
    },
    120_000,
  );
});
