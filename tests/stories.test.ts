/** Reads the numbers of each printed story as a sceptic with a calculator would, and computes the result again. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { inspect } from '../server/inspect.ts';
import { explainAll } from '../server/quantities/explain.ts';
import { isHole } from '../server/quantities/value.ts';
import { NO_FILES, type Files } from '../server/session/files.ts';
import { calculate } from './calculator.ts';

/** Layout of ANTEX 1.4 (IGS, 2010): labels in columns 61 to 80, offsets in millimetres. */
const antex = (() => {
  const line = (data: string, label: string) => `${data.padEnd(60)}${label}\n`;
  const frequency = (name: string, up: string) =>
    line(`   ${name}`, 'START OF FREQUENCY') +
    line(`      0.51      0.62 ${up.padStart(9)}`, 'NORTH / EAST / UP') +
    line(`   ${name}`, 'END OF FREQUENCY');
  const text =
    line('     1.4            M', 'ANTEX VERSION / SYST') +
    line('A', 'PCV TYPE / REFANT') +
    line('', 'END OF HEADER') +
    line('', 'START OF ANTENNA') +
    line('TRB-CHOKE       NONE', 'TYPE / SERIAL NO') +
    line('     0.0  90.0   5.0', 'ZEN1 / ZEN2 / DZEN') +
    line('     2', '# OF FREQUENCIES') +
    frequency('G01', '91.23') +
    frequency('G02', '118.94') +
    line('', 'END OF ANTENNA');
  return new TextEncoder().encode(text);
})();
const files: Files = {
  ...NO_FILES,
  bytes: (path) => (path === 'antennas.atx' ? antex : NO_FILES.bytes(path)),
};

const listed = ['stories.trib', 'stories-ground.trib'].flatMap((name) => {
  const session = readFileSync(new URL(name, import.meta.url), 'utf8');
  const { derivation } = inspect(openDocument(name, session), files);
  return listValues(derivation).flatMap(({ id, value }) => (isHole(value) ? [] : [{ id, value }]));
});

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
  it('belongs to a session that derives something', () => {
    expect(listed.length).toBeGreaterThan(120);
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
    expect(redone).toBeGreaterThan(120);
  });

  it('ends in the value that is listed', () => {
    for (const { id, value } of listed) {
      if (value.origin !== 'computed') continue;
      const [, ...rest] = explainAll(value, () => 'here');
      const result = rest.find((line) => /^ {2}= [\u2212-]?[\d.]+( [a-zA-Z/]+|°)?( ±| =|$)/.test(line)) ?? '';
      const shown = /= ([\u2212-]?[\d.]+)/.exec(result)?.[1] ?? '';
      const decimals = shown.split('.')[1]?.length ?? 0;
      expect(Math.abs(plain(shown) - value.value), `${id}: ${result}`).toBeLessThanOrEqual(
        0.51 * 10 ** -decimals,
      );
    }
  });

  it.each([
    'ground distance', // in a ground grid
    'what OPEN stays within, up',
    'standard uncertainty of the residual of OPEN, up',
    'phase centre of A1, ionosphere-free',
    '√((s · (1 + α · (T − T_0)))² − r²) − v', // a warm tape
    'receivers at OPEN',
    'centring of OPEN by the pole',
    'combined scale factor at PM-14',
  ])('is redone, among others, for %s', (title) => {
    const titles = listed.flatMap(({ value }) =>
      [...steps(explainAll(value, () => 'here'))].map((step) => step.title),
    );
    expect(titles.some((one) => one.includes(title))).toBe(true);
  });

  it('never prints more digits than anyone would write', () => {
    for (const { id, value } of listed)
      for (const line of explainAll(value, () => 'here')) expect(line, id).not.toMatch(/\d\.\d{11}/);
  });

  it('names a source for each step', () => {
    for (const { value } of listed) {
      const lines = explainAll(value, () => 'here');
      if (value.origin === 'computed') expect(lines.some((line) => /^ {2}source: \S/.test(line))).toBe(true);
    }
  });
});
