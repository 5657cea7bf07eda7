/** The page of the language tells the truth: its snippets are read without a slip, and no word is left out. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from './document.ts';
import { format } from './printer.ts';
import type { Slip } from './tree.ts';
import { UNITS } from './units.ts';
import { detailWord, DETAILS, ENTRIES, entryWord } from './vocabulary.ts';

const page = readFileSync(new URL('GRAMMAR.md', import.meta.url), 'utf8');

/** Snippets in the page's order; behind the language's name stand the slips that a snippet is about, in the order of its lines. */
const snippets = [...page.matchAll(/^```tribrach(.*)\n([^]*?)^```$/gm)].map(([, slips = '', text = '']) => ({
  name: text.split('\n', 1)[0] ?? '',
  slips: slips.split(' ').filter((slip) => slip !== ''),
  text,
  ...contents(text),
}));

function contents(text: string) {
  const { entries } = openDocument('', text);
  const slips: Slip['slip'][] = entries.flatMap((entry) => entry.slips.map(({ slip }) => slip));
  return { entries, found: slips };
}

describe('each snippet of the page', () => {
  it('is there', () => expect(snippets.length).toBeGreaterThan(10));

  it.each(snippets)('$name … has the slips it says, and none else', ({ slips, found }) => {
    expect(found).toEqual(slips);
  });

  it.each(snippets)('$name … has no junk, and only words of the language in their places', ({ entries }) => {
    for (const entry of entries) {
      const spec = entryWord(entry.header.word?.word ?? '');
      expect(spec).toBeDefined();
      for (const line of entry.details) expect(spec?.details).toContain(line.word?.word);
      for (const line of [entry.header, ...entry.details]) {
        expect(line.items.filter((item) => item.kind === 'junk')).toEqual([]);
        expect(line.items.length).toBeGreaterThan(0);
      }
    }
  });

  it.each(snippets)('$name … is formatted', ({ text }) => expect(format(text)).toBe(text));

  it.each(snippets)('$name … repeats only what may be repeated', ({ entries }) => {
    for (const entry of entries) {
      const once = entry.details
        .map((line) => line.word?.word ?? '')
        .filter((word) => !detailWord(word)?.repeatable);
      expect(new Set(once).size).toBe(once.length);
    }
  });
});

describe('the page', () => {
  it.each(ENTRIES)('shows the entry `$word` with all its details', ({ word, details }) => {
    const shown = snippets.flatMap(({ entries }) =>
      entries.filter((entry) => entry.header.word?.word === word),
    );
    expect(shown.length).toBeGreaterThan(0);
    const inEntry = new Set(shown.flatMap((entry) => entry.details.map((line) => line.word?.word)));
    expect([...inEntry].sort()).toEqual([...details].sort());
  });

  // Minutes and seconds of arc are shown inside angles.
  it.each(UNITS.map(({ unit }) => unit).filter((unit) => unit !== "'" && unit !== '"'))(
    'names the unit `%s`',
    (unit) => {
      expect(page).toContain(`\`${unit}\``);
    },
  );
});

describe('the vocabulary', () => {
  it('has no word that is both an entry and a detail, and none twice', () => {
    const all = [...ENTRIES, ...DETAILS].map(({ word }) => word);
    expect(new Set(all).size).toBe(all.length);
  });

  it('has each detail in an entry, and each entry of known details', () => {
    const used = new Set(ENTRIES.flatMap(({ details }) => details));
    expect([...used].sort()).toEqual(DETAILS.map(({ word }) => word).sort());
  });

  it.each([...ENTRIES, ...DETAILS])('has a sound example for `$word`', ({ word, example }) => {
    const { entries, found } = contents(example);
    const line = entries[0]?.header.word ? entries[0].header : entries[0]?.details[0];
    expect(line?.word?.word).toBe(word);
    expect(line?.items.some((item) => item.kind === 'junk')).toBe(false);
    expect(found).toEqual([]);
  });
});
