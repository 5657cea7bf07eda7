/** The colouring says of every token what the lexer and the parser say of it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';
import { SCOPES, textMateGrammar } from './colouring.ts';
import { openDocument } from './document.ts';
import type { Item, Span } from './tree.ts';
import { UNITS } from './units.ts';
import { DETAILS, ENTRIES, NAME_FOLLOWS } from './vocabulary.ts';

const grammar = await loaded();

type Scope = keyof typeof SCOPES;

/** What is coloured in one line, and how; blanks are not. */
function coloured(line: string): (readonly [string, Scope | null])[] {
  const { tokens } = grammar.tokenizeLine(line, textmate.INITIAL);
  return tokens
    .map(({ startIndex, endIndex, scopes }) => {
      const scope = Object.entries(SCOPES).find(([, name]) => name === scopes.at(-1))?.[0] as
        Scope | undefined;
      return [line.slice(startIndex, endIndex), scope ?? null] as const;
    })
    .filter(([typed]) => typed.trim() !== '');
}

describe('textMateGrammar', () => {
  it.each<[string, (readonly [string, Scope])[]]>([
    [
      'mark PM-14 "brass bolt" # x',
      [
        ['mark', 'entry'],
        ['PM-14', 'name'],
        ['"brass bolt"', 'text'],
        ['# x', 'comment'],
      ],
    ],
    [
      '  found 101',
      [
        ['found', 'detail'],
        ['101', 'name'],
      ],
    ],
    [
      'setup BASE on 08:25 at 07:50',
      [
        ['setup', 'entry'],
        ['BASE', 'name'],
        ['on', 'relation'],
        ['08:25', 'name'],
        ['at', 'word'],
        ['07:50', 'time'],
      ],
    ],
    [
      '  date 2026-05-19',
      [
        ['date', 'detail'],
        ['2026-05-19', 'date'],
      ],
    ],
    [
      '  height 5 in EPSG:4258',
      [
        ['height', 'detail'],
        ['5', 'number'],
        ['in', 'relation'],
        ['EPSG:4258', 'name'],
      ],
    ],
    [
      '  height -5 ft 2 in',
      [
        ['height', 'detail'],
        ['-', 'sign'],
        ['5', 'number'],
        ['ft', 'unit'],
        ['2', 'number'],
        ['in', 'unit'],
      ],
    ],
    [
      `  autonomous 41°09'08.2"N`,
      [
        ['autonomous', 'detail'],
        ['41', 'number'],
        ['°', 'angle'],
        ['09', 'number'],
        ["'", 'angle'],
        ['08.2', 'number'],
        ['"', 'angle'],
        ['N', 'hemisphere'],
      ],
    ],
    [
      '  temperature 18 °C',
      [
        ['temperature', 'detail'],
        ['18', 'number'],
        ['°C', 'unit'],
      ],
    ],
    [
      '  height ? m',
      [
        ['height', 'detail'],
        ['?', 'open'],
        ['m', 'unit'],
      ],
    ],
    [
      '  height 1,5 m',
      [
        ['height', 'detail'],
        ['1,5', 'spoilt'],
        ['m', 'unit'],
      ],
    ],
    [
      '  height 5 mM',
      [
        ['height', 'detail'],
        ['5', 'number'],
        ['mM', 'word'],
      ],
    ],
    [
      '  row 101,5.1, "a, b", KB # x',
      [
        ['row', 'detail'],
        ['101', 'number'],
        [',', 'comma'],
        ['5.1', 'number'],
        [',', 'comma'],
        ['"a, b"', 'text'],
        [',', 'comma'],
        ['KB', 'cell'],
        ['# x', 'comment'],
      ],
    ],
    [
      'note "a ""b"" c',
      [
        ['note', 'entry'],
        ['"a ""b"" c', 'text'],
      ],
    ],
    [
      'note \u201ca\u201d ~',
      [
        ['note', 'entry'],
        ['\u201ca\u201d', 'text'],
        ['~', 'junk'],
      ],
    ],
  ])('colours `%s`', (line, expected) => expect(coloured(line)).toEqual(expected));

  it.each([...ENTRIES, ...DETAILS].map(({ word }) => word))(
    'knows `%s` in both cases, and no longer word that begins so',
    (word) => {
      const scope = ENTRIES.some((entry) => entry.word === word) ? 'entry' : 'detail';
      expect(coloured(word)).toEqual([[word, scope]]);
      expect(coloured(`  ${word.toUpperCase()} x`)[0]).toEqual([word.toUpperCase(), scope]);
      expect(coloured(`  ${word}x`)).toEqual([[`${word}x`, 'word']]);
      expect(coloured(`  ${word}-x`)).toEqual([[`${word}-x`, 'word']]);
    },
  );

  it.each([...NAME_FOLLOWS])('knows that a name follows `%s`', (word) => {
    expect(coloured(`  position 5 m ${word} 1/2`).slice(3)).toEqual([
      [word, 'relation'],
      ['1/2', 'name'],
    ]);
  });

  it.each(UNITS.map(({ unit }) => unit))('knows the unit `%s`', (unit) => {
    expect(coloured(`  height 5${unit}`).at(-1)).toEqual([unit, /^[°'"]$/.test(unit) ? 'angle' : 'unit']);
  });

  it.each([...ENTRIES, ...DETAILS].map(({ example }) => example))(
    'agrees with the parser about `%s`',
    (example) => {
      expectAgreement(example);
    },
  );

  it('agrees with the parser about every line of the language page', () => {
    const page = readFileSync(new URL('GRAMMAR.md', import.meta.url), 'utf8');
    const lines = [...page.matchAll(/^```tribrach.*\n([^]*?)^```$/gm)].flatMap(([, text = '']) =>
      text.split('\n'),
    );
    const spoken = lines.filter((line) => line.trim() !== '');
    expect(spoken.length).toBeGreaterThan(100);
    // Digits grouped by blanks look like two numbers to a colouring that reads no further than a pattern.
    for (const line of spoken) if (!line.includes('1 234.5')) expectAgreement(line);
  });

  it.each(['7', '7.', '1,', '"', '\u201c', 'a-', '(', '# ', ' ', '1.2.', '12:', "'", 'in '])(
    'goes over a long line of %j in no time',
    (unit) => {
      const { stoppedEarly } = grammar.tokenizeLine(
        `  position ${unit.repeat(4000)}`,
        textmate.INITIAL,
        5000,
      );
      expect(stoppedEarly).toBe(false);
    },
  );
});

/** Each character of each item has the colour of the item's kind. */
function expectAgreement(line: string): void {
  const entry = openDocument('', line).entries[0];
  const read = entry?.header.word ? entry.header : entry?.details[0];
  if (!read?.word) throw new Error(`no line: ${line}`);
  const scopes: (Scope | null)[] = [];
  for (const { startIndex, endIndex, scopes: found } of grammar.tokenizeLine(line, textmate.INITIAL).tokens) {
    const scope = Object.entries(SCOPES).find(([, name]) => name === found.at(-1))?.[0] as Scope | undefined;
    for (let at = startIndex; at < endIndex; at++) scopes[at] = scope ?? null;
  }
  const within = ({ start, end }: Span) =>
    new Set(scopes.slice(start, end).filter((scope) => scope !== null));
  expect([...within(read.word)]).toEqual([
    ENTRIES.some(({ word }) => word === read.word?.word) ? 'entry' : 'detail',
  ]);
  if (read.word.word === 'row') return;
  for (const item of read.items) {
    expect(within(item).size).toBeGreaterThan(0);
    if (item.kind !== 'sum') expect(allowed[item.kind]).toEqual(expect.arrayContaining([...within(item)]));
    else
      for (const part of item.terms.flatMap(({ measure, uncertainty }) => [
        ...(measure?.parts ?? []),
        ...(uncertainty?.parts ?? []),
      ])) {
        expect([...within(part.numeral)]).toEqual([
          part.numeral.open ? 'open' : part.numeral.value === null ? 'spoilt' : 'number',
        ]);
        if (part.unit) expect(['unit', 'angle']).toEqual(expect.arrayContaining([...within(part.unit)]));
      }
  }
}

const allowed: Readonly<Record<Exclude<Item['kind'], 'sum'>, readonly Scope[]>> = {
  text: ['text'],
  name: ['name'],
  word: ['word', 'relation', 'hemisphere'],
  time: ['time'],
  date: ['date'],
  comma: ['comma'],
  slash: ['sign'],
  junk: ['junk'],
};

async function loaded(): Promise<textmate.IGrammar> {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await oniguruma.loadWASM({ data: readFileSync(wasm) });
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(JSON.stringify(textMateGrammar()), 'tribrach.json'),
  });
  const found = await registry.loadGrammar('source.tribrach');
  if (!found) throw new Error('the colouring could not be loaded');
  return found;
}
