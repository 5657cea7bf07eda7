/** Reads the numbers of each printed story as a sceptic with a calculator would, and computes the result again. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { inspect } from '../server/inspect.ts';
import { explainAll } from '../server/quantities/explain.ts';
import { isHole } from '../server/quantities/value.ts';
import { NO_FILES } from '../server/session/files.ts';
import { calculate } from './calculator.ts';

const session = readFileSync(new URL('./stories.trib', import.meta.url), 'utf8');
const { derivation } = inspect(openDocument('stories.trib', session), NO_FILES);

/** The block of one value in a story: its formula, the line of numbers put in, the line of the result. */
function* steps(lines: readonly string[]): Generator<{ title: string; putIn: string; result: string }> {
  for (let index = 0; index < lines.length; index++) {
    const title = lines[index] ?? '';
    const putIn = lines[index + 1] ?? '';
    const result = lines[index + 2] ?? '';
    if (/^\S/.test(title) && /^ {2}= /.test(putIn) && /^ {2}= /.test(result)) yield { title, putIn, result };
  }
}

const plain = (text: string) => Number(text.replaceAll('\u2212', '-'));

describe('every story', () => {
  const listed = listValues(derivation).flatMap(({ id, value }) => (isHole(value) ? [] : [{ id, value }]));

  it('belongs to a session that derives something', () => {
    expect(listed.length).toBeGreaterThan(60);
  });

  it('holds numbers that give its result', () => {
    let redone = 0;
    for (const { id, value } of listed) {
      for (const { title, putIn, result } of steps(explainAll(value, () => 'here'))) {
        const shown = /^ {2}= ([\u2212-]?[\d.]+)/.exec(result)?.[1] ?? '';
        const decimals = shown.split('.')[1]?.length ?? 0;
        const again = calculate(putIn.replace(/^ {2}= /, ''));
        // What is printed is rounded, and so are the numbers put in; one unit in the last place covers both.
        expect(Math.abs(again - plain(shown)), `${id}: ${title}\n${putIn}\n${result}`).toBeLessThanOrEqual(
          1.01 * 10 ** -decimals,
        );
        redone++;
      }
    }
    expect(redone).toBeGreaterThan(60);
  });

  it('ends in the value that is listed', () => {
    for (const { id, value } of listed) {
      if (value.origin !== 'computed') continue;
      const [, ...rest] = explainAll(value, () => 'here');
      const result = rest.find((line) => /^ {2}= [\u2212-]?[\d.]+( [a-zA-Z/]+|°)?( ±|$)/.test(line)) ?? '';
      const shown = /= ([\u2212-]?[\d.]+)/.exec(result)?.[1] ?? '';
      const decimals = shown.split('.')[1]?.length ?? 0;
      expect(Math.abs(plain(shown) - value.value), `${id}: ${result}`).toBeLessThanOrEqual(
        0.51 * 10 ** -decimals,
      );
    }
  });

  it('names a source for each step', () => {
    for (const { value } of listed) {
      const lines = explainAll(value, () => 'here');
      if (value.origin === 'computed') expect(lines.some((line) => /^ {2}source: \S/.test(line))).toBe(true);
    }
  });
});
