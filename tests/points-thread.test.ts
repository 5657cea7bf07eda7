/** A long table is written by a thread beside, and comes out as one thread alone writes it, whole or not at all. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith, tribrach } from './command-line-run.ts';
import { buildProgram, PROGRAM } from './language-client.ts';
import { REPAIRED_DAY } from './repaired-day.ts';

const ROWS = 60_000;
const SESSION = `${REPAIRED_DAY}points "points.csv"
  from        BASE
  by          R1
  state       as-broadcast
  separator   semicolon
  decimal     comma
  columns     name, east m, north m, height m ellipsoidal, code, time local
`;
/** Every kind of cell: a name over two lines, letters beyond ASCII, a formula, a blank, a row without its height or time. */
const row = (index: number) => {
  const name = ['P', '"P\n""q"" "', 'Ø', '=1+', '-'][index % 5] ?? '';
  const height = index % 11 === 0 ? '' : `${5 + (index % 40)},${index % 10}`;
  const time = index % 13 === 0 ? '' : `${8 + (index % 7)}:${10 + (index % 50)}:30`;
  const quoted = name.startsWith('"') ? name.slice(0, -1) + String(index) + '"' : name + String(index);
  return `${quoted};${531000 + (index % 3000)},25;${4555000 + (index % 700)},5;${height};KERB ${Math.floor(index / 3)};${time}\r\n`;
};
let folder: ReturnType<typeof folderWith>;
beforeAll(async () => {
  await buildProgram();
  const table = Array.from({ length: ROWS }, (_, index) => row(index)).join('');
  folder = folderWith({ 'day.trib': SESSION, 'points.csv': table });
});
afterAll(() => folder.remove());

describe('a long table', () => {
  it('comes out of two threads as out of one', async () => {
    const alone = await tribrach(['points', folder.path('day.trib'), '--out', folder.path('alone')]);
    expect([alone.status, alone.complained]).toEqual([0, '']);
    const words = ['points', folder.path('day.trib'), '--out', folder.path('threads')];
    const { status, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], { encoding: 'utf8' });
    expect([status, stderr]).toEqual([0, '']);
    const [one, other] = ['alone', 'threads'].map((out) => readFileSync(folder.path(`${out}/points.csv`)));
    expect(one?.equals(other ?? Buffer.of())).toBe(true);
    expect(one?.toString().split('\r\n')).toHaveLength(ROWS + 2);
    expect(one?.toString()).toContain('"P\\x0a""q"" 1";');
  });

  it.skipIf(process.platform === 'win32')('is not there at all when it cannot be written to its end', () => {
    // In blocks of 512 bytes: nine tenths of the table, beyond what is written before there is a thread.
    const most = Math.floor((0.9 * statSync(folder.path('alone/points.csv')).size) / 512);
    const command = `trap '' XFSZ; ulimit -f ${most}; exec "$0" "$@"`;
    const words = [PROGRAM, 'points', folder.path('day.trib'), '--out', folder.path('cut')];
    const { status, stdout, stderr } = spawnSync('sh', ['-c', command, process.execPath, ...words], {
      encoding: 'utf8',
    });
    expect([status, stdout]).toEqual([2, '']);
    const what = availableParallelism() > 1 ? 'points.csv' : `to ${folder.path('cut')}`;
    expect(stderr).toBe(`tribrach: cannot write ${what}: it grows larger than a file may be here\n`);
    expect(readdirSync(folder.path()).filter((name) => name.includes('cut'))).toEqual([]);
  });
});
