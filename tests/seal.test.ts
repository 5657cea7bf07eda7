/** A seal holds through blanks, comments and line ends, and breaks at any digit, mark, point or file. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { format } from '../grammar/printer.ts';
import { inspect } from '../server/inspect.ts';
import { readSeal, sealOf, writtenSeal } from '../server/session/seal.ts';
import type { Files } from '../server/session/files.ts';
import { sessionOf } from '../server/session/session.ts';

const read = (name: string) => readFileSync(new URL(`../samples/${name}`, import.meta.url));
const clean = read('breakwater.trib').toString('utf8');
const kept: Record<string, Uint8Array> = {
  'samples/grids/region.gtx': read('grids/region.gtx'),
  'samples/pickup.csv': read('pickup.csv'),
};

function filesWith(changed: Readonly<Record<string, Uint8Array>> = {}): Files {
  const all = { ...kept, ...changed };
  return {
    document: () => ({ refused: 'there is none' }),
    bytes: (path) => all[path] ?? { refused: 'there is no such file' },
  };
}
function seal(text: string, files = filesWith()): string {
  const made = sealOf(sessionOf(openDocument('samples/breakwater.trib', text), files), files);
  if ('unsealed' in made) throw new Error(made.unsealed.join('; '));
  return writtenSeal(made);
}
const stale = (text: string, files = filesWith()) =>
  inspect(openDocument('samples/breakwater.trib', text), files).findings.filter(
    ({ code }) => code === 'review/stale',
  );

describe('a seal', () => {
  const whole = seal(clean);

  it('is read back as it is written', () => {
    const again = readSeal(whole);
    expect(again && writtenSeal(again)).toBe(whole);
    expect(readSeal(whole.slice(1))).toBeNull();
  });

  it('is the same after formatting, with other blanks, comments and line ends', () => {
    expect(seal(format(clean))).toBe(whole);
    expect(seal(clean.replaceAll('\n', '\r\n'))).toBe(whole);
    expect(
      seal(`# a comment before everything\n${clean.replaceAll('  ', '    ')}\n\n# and one behind\n`),
    ).toBe(whole);
    expect(seal(`\ufeff${clean}`)).toBe(whole);
  });

  it('is broken by any other digit', () => {
    const digits = [...clean.matchAll(/\d/g)].filter(({ index }) => !inComment(clean, index));
    expect(digits.length).toBeGreaterThan(200);
    for (const { index, 0: digit } of digits) {
      const changed = clean.slice(0, index) + String((Number(digit) + 1) % 10) + clean.slice(index + 1);
      let other: string;
      try {
        other = seal(changed);
      } catch {
        continue; // A digit of a file's name: nothing can be sealed any more.
      }
      expect(other, clean.slice(Math.max(0, index - 20), index + 5)).not.toBe(whole);
    }
  });

  it('is broken by a mark or a note added, taken out or moved', () => {
    expect(seal(`${clean}\nmark PM-99\n`)).not.toBe(whole);
    expect(seal(`${clean}\nnote "the wind rose"\n`)).not.toBe(whole);
    const entries = clean.split(/\n(?=mark )/);
    const [head = '', first = '', second = '', ...rest] = entries;
    expect(seal([head, second, first, ...rest].join('\n'))).not.toBe(whole);
  });

  it('is broken by any byte of a file that the session draws on, and not by its line ends', () => {
    const points = Buffer.from(kept['samples/pickup.csv'] ?? []);
    const otherEnds = Buffer.from(points.toString('utf8').replaceAll('\r\n', '\n').replaceAll('\n', '\r\n'));
    expect(seal(clean, filesWith({ 'samples/pickup.csv': otherEnds }))).toBe(whole);
    const otherPoint = Buffer.from(
      points.toString('utf8').replace(/(\d)(?=\D*$)/, (digit) => String((Number(digit) + 1) % 10)),
    );
    expect(seal(clean, filesWith({ 'samples/pickup.csv': otherPoint }))).not.toBe(whole);
    const grid = Uint8Array.from(kept['samples/grids/region.gtx'] ?? []);
    grid[grid.length - 1] = (grid[grid.length - 1] ?? 0) ^ 1;
    expect(seal(clean, filesWith({ 'samples/grids/region.gtx': grid }))).not.toBe(whole);
  });

  it('is broken by a file of the session, though a file that it uses names another one alike', () => {
    const office = 'rover OFFICE "serial 1"\n  pole 2 m to arp\n  geoid "grids/region.gtx"\n';
    const text = `${clean}\nuse "../office/rovers.trib"\n`;
    const others = (own: string): Files => {
      const files = filesWith({
        'samples/grids/region.gtx': Buffer.from(own),
        'office/grids/region.gtx': Buffer.from('the grid of the office'),
      });
      const document = (path: string) =>
        path === 'office/rovers.trib' ? openDocument(path, office) : files.document(path);
      return { ...files, document };
    };
    expect(seal(text, others('one'))).toBe(seal(text, others('one')));
    expect(seal(text, others('one'))).not.toBe(seal(text, others('other')));
  });

  it('is refused while a value is open, or a file that values come from cannot be read', () => {
    expect(() => seal(clean.replace('1.284 m', '? m'))).toThrow('still open');
    expect(() => seal(clean.replace('pickup.csv', 'other.csv'))).toThrow('other.csv cannot be read');
  });
});

describe('a review', () => {
  const reviewed = `${clean}\nreview "L. Brandt" 2026-05-21 seal ${seal(clean)}\n`;

  it('stays fresh beside another review, and through formatting', () => {
    expect(stale(reviewed)).toEqual([]);
    expect(stale(format(reviewed))).toEqual([]);
    expect(stale(`${reviewed}review "R. Okafor" 2026-05-22\n`)).toEqual([]);
  });

  it('goes stale with a changed digit, and says which part has changed', () => {
    const [finding] = stale(reviewed.replace('1.533 m to arp', '1.534 m to arp'));
    expect(finding?.message).toContain('the setups');
    expect(finding?.message).not.toContain('the marks');
    expect(finding?.fixes).toEqual([]);
  });

  it('goes stale with a changed file', () => {
    const points = Buffer.concat([Buffer.from(kept['samples/pickup.csv'] ?? []), Buffer.from('x')]);
    expect(stale(reviewed, filesWith({ 'samples/pickup.csv': points }))[0]?.message).toContain(
      'a file that the session draws on',
    );
  });
});

/** A `#` at a line's start or after a blank, outside quotes, opens a comment. */
function inComment(text: string, index: number): boolean {
  const line = text.slice(text.lastIndexOf('\n', index) + 1, index);
  return /(^|\s)#/.test(line.replace(/"[^"]*"/g, ''));
}
