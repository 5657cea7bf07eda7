/** Whole entries: each is understood as it is put in, before anything of it is filled in. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { ENTRIES } from '../../../grammar/vocabulary.ts';
import { inspect } from '../../inspect.ts';
import { NO_FILES } from '../../session/files.ts';
import { wholeEntriesFor } from './whole-entries.ts';

const all = ENTRIES.flatMap(({ word }) =>
  wholeEntriesFor({ kind: 'entry', label: word }).map((entry) => ({ word, ...entry })),
);

/** As an editor puts it in, with every stop left as it is. */
const putIn = (body: string) =>
  body
    .replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace('$0', '');

describe('a whole entry', () => {
  it('is there for what one writes every day', () => {
    expect(all.map(({ word }) => word)).toEqual(
      expect.arrayContaining(['job', 'mark', 'antenna', 'rover', 'setup', 'check', 'event', 'points']),
    );
  });

  it.each(all)('is understood: $name', ({ word, body }) => {
    const text = putIn(body);
    expect(text).toMatch(new RegExp(`^${word} `));
    expect(text).not.toMatch(/[$}]/);
    const { findings } = inspect(openDocument('day.trib', text), NO_FILES);
    const wrong = findings.filter(
      ({ code }) => /^(syntax|number|unit|angle)\//.test(code) && !/open-value|unknown-name/.test(code),
    );
    expect(wrong.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  });

  it('is none of other offers', () => {
    expect(wholeEntriesFor({ kind: 'detail', label: 'hazard' })).toEqual([]);
  });
});
