/** What is inspected after edits is what a fresh start would find in the same text: values, findings and their places. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { editDocument, openDocument, type Document } from '../grammar/document.ts';
import { NO_FILES } from '../server/session/files.ts';
import { sessionOf } from './bench/sessions.mjs';
import { said } from './said.ts';

const sources = [
  'samples/breakwater.trib',
  'samples/two-setups.trib',
  'samples/broken/height-extension.trib',
].map((path) => readFileSync(path, 'utf8'));

/** Two bases whose day is over, and nothing that proves either. */
const UNCHECKED = `job "Pier"
  date        2026-05-19
  clock       UTC
  grid        EPSG:3763
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      61.201 m ellipsoidal
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      60.111 m ellipsoidal
setup MORNING on PM-14 at 07:50 until 11:40
  measured    1.284 m to arp at 07:52
setup NOON on PM-09 at 12:10 until 15:40
  measured    1.301 m to arp at 12:12
`;

interface Stroke {
  readonly at: number;
  readonly cut: number;
  readonly put: string;
}
const stroke: fc.Arbitrary<Stroke> = fc.record({
  at: fc.nat(),
  cut: fc.oneof(fc.constant(0), fc.constant(1), fc.nat(40)),
  put: fc.constantFrom(
    '',
    '7',
    '0',
    '.',
    ',',
    ' ',
    '\n',
    '?',
    'm',
    '"',
    '-',
    'PM-09',
    '  extension   250 mm\n',
    '𝄞',
  ),
});

const typed = (document: Document, { at, cut, put }: Stroke) => {
  const start = at % (document.text.length + 1);
  return editDocument(document, start, Math.min(document.text.length, start + cut), put);
};

describe('inspecting after edits', () => {
  it('says what a fresh start says', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sources),
        fc.array(stroke, { minLength: 1, maxLength: 5 }),
        (text, strokes) => {
          // What a fresh start finds must not stand in for what the edits have left behind.
          const own = { ...NO_FILES };
          let document = openDocument('day.trib', text);
          said(document, own);
          for (const one of strokes) {
            document = typed(document, one);
            const fresh = said(openDocument('day.trib', document.text), { ...NO_FILES });
            expect(said(document, own)).toEqual(fresh);
          }
        },
      ),
      { numRuns: 120 },
    );
  });

  it('says again what it said when an edit is taken back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sources), stroke, (text, one) => {
        const document = openDocument('day.trib', text);
        const own = { ...NO_FILES };
        const before = said(document, own);
        const start = one.at % (text.length + 1);
        const cut = Math.min(text.length, start + one.cut);
        const edited = editDocument(document, start, cut, one.put);
        said(edited, own);
        const back = editDocument(edited, start, start + one.put.length, text.slice(start, cut));
        expect(back.text).toBe(text);
        expect(said(back, own)).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  it.each([...sources, UNCHECKED])('says the same when any entry is taken out, and put back (%#)', (text) => {
    const own = { ...NO_FILES };
    const whole = openDocument('day.trib', text);
    const before = said(whole, own);
    whole.starts.forEach((start, index) => {
      const entry = text.slice(start, whole.starts[index + 1] ?? text.length);
      const less = editDocument(whole, start, start + entry.length, '');
      expect(said(less, own)).toEqual(said(openDocument('day.trib', less.text), { ...NO_FILES }));
      const back = editDocument(less, start, start, entry);
      expect(back.text).toBe(text);
      expect(said(back, own)).toEqual(before);
    });
    expect(whole.starts.length).toBeGreaterThan(4);
  });

  // Where most of a day stays what it was, most of what was found in it is taken over: the case that must not go wrong.
  it('says what a fresh start says of a day of many setups, wherever it is edited', () => {
    const day = sessionOf(160);
    const name = fc.constantFrom('BASE-1', 'BASE-3', 'PM-2', 'CK-1', 'CK-4', 'R1', 'A1', 'OPEN-2', '? ');
    const change = fc.record({
      at: fc.nat(),
      what: fc.oneof(
        fc.record({ digit: fc.constantFrom('0', '5', '9', '?') }),
        fc.record({ name }),
        fc.constantFrom({ line: 'taken out' as const }, { line: 'twice' as const }),
      ),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
        const own = { ...NO_FILES };
        let document = openDocument('day.trib', day);
        said(document, own);
        for (const { at, what } of changes) {
          document = changed(document, at, what);
          const fresh = said(openDocument('day.trib', document.text), { ...NO_FILES });
          expect(said(document, own)).toEqual(fresh);
        }
      }),
      { numRuns: 60 },
    );
  });
});

type Change =
  { readonly digit: string } | { readonly name: string } | { readonly line: 'taken out' | 'twice' };

/** Overtypes a digit or a name, or takes a line out or copies it; which of them is chosen by a number. */
function changed(document: Document, chosen: number, what: Change): Document {
  const { text } = document;
  const pattern = 'digit' in what ? /\d/g : 'name' in what ? /\b[A-Z]+-?\d+\b/g : /^.*\n/gm;
  const places = [...text.matchAll(pattern)];
  const place = places[chosen % Math.max(1, places.length)];
  if (!place) return document;
  const end = place.index + place[0].length;
  if ('digit' in what) return editDocument(document, place.index, end, what.digit);
  if ('name' in what) return editDocument(document, place.index, end, what.name);
  return what.line === 'twice'
    ? editDocument(document, end, end, place[0])
    : editDocument(document, place.index, end, '');
}
