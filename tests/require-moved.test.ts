/** A movement that the notes show reaches the exit status: who asks for a bracketed day does not get one that moved. */
import { readFileSync } from 'node:fs';
import { afterEach, expect, it } from 'vitest';
import { folderWith, tribrach } from './command-line-run.ts';

/** Without its disturbance, so that nothing but the movement keeps it from being bracketed. */
const GOOD = readFileSync('samples/breakwater.trib', 'utf8').replace(/^event disturbance .*\n/m, '');
const removals: (() => void)[] = [];
afterEach(() => removals.splice(0).forEach((remove) => remove()));

async function asked(text: string, ...words: string[]) {
  const at = folderWith({
    'day.trib': text,
    'pickup.csv': readFileSync('samples/pickup.csv', 'utf8'),
  });
  removals.push(at.remove);
  return tribrach(['check', at.path('day.trib'), ...words]);
}

/** The height observed at a check, by so many metres more. */
const raised = (name: string, by: number) => (text: string) =>
  text.replace(
    new RegExp(`(check ${name} [^]*?height )([\\d.]+)( m)`),
    (_, before: string, height: string, m: string) => `${before}${(Number(height) + by).toFixed(3)}${m}`,
  );

it('takes a good day', async () => {
  expect((await asked(GOOD, '--require', 'bracketed')).status).toBe(0);
});

it.each([
  ['a nail that moved 150 mm', raised('NAIL-B', 0.15)],
  [
    'a drift of 90 mm between two checks that pass',
    (text: string) => raised('CLOSE', -0.045)(raised('OPEN', 0.045)(text)),
  ],
  ['a base that sank 20 mm by tape', (text: string) => text.replace('1.283 m to foot', '1.263 m to foot')],
])('refuses %s', async (_, move) => {
  const moved = move(GOOD);
  expect(moved).not.toBe(GOOD);
  const { status, printed } = await asked(moved, '--require', 'bracketed');
  expect(status, printed).toBe(1);
});
