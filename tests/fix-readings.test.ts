/** Every number that a fix writes is read back as the value that its title claims, in every form and with every sign. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fix } from '../server/findings/finding.ts';
import type { Inspection } from '../server/inspect.ts';
import type { Given } from '../server/quantities/value.ts';
import { allPages, inspectSnippet, inspectText, textAfter } from './pages.ts';
import { allSamples, inspectSample } from './samples.ts';

/** Metres, degrees: by the definition of each unit. */
const UNITS: Readonly<Record<string, number>> = {
  m: 1,
  mm: 1e-3,
  cm: 1e-2,
  km: 1e3,
  ft: 0.3048,
  usft: 1200 / 3937,
  '°': 1,
  "'": 1 / 60,
  '"': 1 / 3600,
};

/** What a text claims, worked out without the program; null where it is no plain number with its units. */
function claimed(text: string): number | null {
  const match = /^([-+\u2212]?)\s*((?:\d+(?:\.\d+)?\s*(?:mm|cm|km|usft|ft|m|°|'|")\s*)+)([NSEW]?)$/.exec(
    text.trim(),
  );
  if (!match) return null;
  const [, sign = '', body = '', letter = ''] = match;
  let size = 0;
  for (const [, number = '', unit = ''] of body.matchAll(/(\d+(?:\.\d+)?)\s*(mm|cm|km|usft|ft|m|°|'|")/g))
    size += Number(number) * (UNITS[unit] ?? NaN);
  return size * (sign === '-' || sign === '\u2212' ? -1 : 1) * (letter === 'S' || letter === 'W' ? -1 : 1);
}

/** The numbers that stand where something was written, as the session reads them. */
function readAt({ session }: Inspection, text: string): Given[] {
  const found = new Set<Given>();
  const seen = new Set<object>();
  const visit = (thing: unknown) => {
    if (typeof thing !== 'object' || thing === null || seen.has(thing)) return;
    seen.add(thing);
    if (thing instanceof Map) return void [...thing.values()].forEach(visit);
    const value = thing as Partial<Given>;
    if (value.origin === 'given') {
      if (value.typed === text) found.add(thing as Given);
      return;
    }
    Object.entries(thing).forEach(([key, inner]) => {
      if (key !== 'entry' && key !== 'documents' && key !== 'document' && key !== 'place') visit(inner);
    });
  };
  visit(session);
  return [...found];
}

/** Null where the law is kept or says nothing; else what broke it. Counts what it has looked at. */
function broken(
  inspection: Inspection,
  fix: Fix,
  again: (text: string) => Inspection,
  seen: { count: number },
) {
  const [edit] = fix.edits;
  if (!edit || fix.edits.length > 1 || !fix.title.startsWith('Write ')) return null;
  const claim = claimed(edit.text);
  const text = textAfter(inspection, fix);
  if (claim === null || text === null) return null;
  if (fix.title !== `Write ${edit.text}`) return `${fix.title} writes ${edit.text}`;
  const read = readAt(again(text), edit.text.trim());
  if (read.length === 0) return null;
  seen.count += 1;
  const wrong = read.find(({ value }) => Math.abs(value - claim) > 1e-12 * Math.max(1, Math.abs(claim)));
  return wrong ? `${fix.title} is read as ${wrong.value}` : null;
}

describe('on every page and sample', () => {
  const inspections: Inspection[] = [
    ...allPages().flatMap(({ snippets }) => snippets.map((snippet) => inspectSnippet(snippet))),
    ...allSamples().map((sample) => inspectSample(sample)),
  ];
  it('a fix writes what its title claims', () => {
    const seen = { count: 0 };
    const problems = inspections.flatMap((inspection) => {
      const { path } = inspection.session.document;
      const again = (text: string) =>
        path === 'session.trib' ? inspectText(text) : inspectSample({ file: path, text });
      return inspection.findings.flatMap(({ fixes }) =>
        fixes.map((fix) => broken(inspection, fix, again, seen)),
      );
    });
    expect(problems.filter((problem) => problem !== null)).toEqual([]);
    expect(seen.count).toBeGreaterThan(10);
  });
});

const two = (value: number) => String(value).padStart(2, '0');

/** An angle in the forms that people and instruments write, with its size worked out beside it. */
const angles = fc
  .record({
    degrees: fc.integer({ min: 0, max: 89 }),
    minutes: fc.integer({ min: 0, max: 59 }),
    seconds: fc.integer({ min: 0, max: 59 }),
    decimals: fc.integer({ min: 0, max: 99999 }).map((value) => String(value).padStart(5, '0')),
    sign: fc.constantFrom('', '-', '+', '\u2212'),
    letter: fc.constantFrom('N', 'S', 'E', 'W'),
    form: fc.integer({ min: 0, max: 6 }),
  })
  .map(({ degrees: d, minutes: m, seconds: s, decimals, sign, letter, form }) => {
    const seconds = `${two(s)}.${decimals}`;
    const forms = [
      `${d} ${two(m)} ${seconds} ${letter}`,
      `${d} ${m} ${seconds}${letter}`,
      `${two(d)}-${two(m)}-${seconds}${letter}`,
      `${two(d)}${two(m)}${seconds}${letter}`,
      `${d}°${two(m)}'${seconds}"${letter}`,
      `${d}.${two(m)}${two(s)}${decimals} ${letter}`,
      `${d}°${two(m)}'${seconds}"`,
    ];
    const size = d + m / 60 + Number(seconds) / 3600;
    const asDecimal = Number(`${d}.${two(m)}${two(s)}${decimals}`);
    return { typed: sign + (forms[form] ?? ''), size, asDecimal, signed: sign !== '', letter, form };
  });

const OTHER: Readonly<Record<string, string>> = {
  N: '8.5° W',
  S: '8.5° W',
  E: '41.5° N',
  W: '41.5° N',
};

describe('an angle, however it is packed and signed', () => {
  const textWith = (typed: string, letter: string) =>
    `mark B\n  position ${typed}, ${OTHER[letter] ?? ''}\n  height 5 m ellipsoidal\n`;

  it('is offered only as numbers that read back as claimed', () => {
    const seen = { count: 0 };
    fc.assert(
      fc.property(angles, ({ typed, size, asDecimal, signed, letter, form }) => {
        const inspection = inspectText(textWith(typed, letter));
        const fixes = inspection.findings
          .filter(({ code }) => /^(?:angle\/|syntax\/missing-letter)/.test(code))
          .flatMap(({ fixes: some }) => some);
        for (const fix of fixes) {
          expect(broken(inspection, fix, inspectText, seen)).toBeNull();
          const claim = Math.abs(claimed(fix.title.slice('Write '.length)) ?? NaN);
          const near = [size, ...(form === 5 ? [asDecimal] : [])].some(
            (one) => Math.abs(claim - one) < 1e-12 * 90,
          );
          expect(near, `${typed}: ${fix.title}`).toBe(true);
        }
        // A packed angle is never taken silently, and a signed one is offered on both sides.
        if (form !== 4 || signed) expect(fixes.length, typed).toBeGreaterThan(0);
        if (signed && form < 6) {
          const letters = new Set(fixes.map(({ title }) => title.slice(-1)));
          expect([...letters].sort().join(''), typed).toMatch(/^(?:EW|NS)$/);
        }
      }),
      { numRuns: 300, seed: 7 },
    );
    expect(seen.count).toBeGreaterThan(200);
  });

  it.each([
    ['-41 26 32.17711 N', ['41°26\'32.17711"N', '41°26\'32.17711"S']],
    ['-0 26 32.17711 N', ['0°26\'32.17711"N', '0°26\'32.17711"S']],
    ['\u22128 37 26.27078 W', ['8°37\'26.27078"W', '8°37\'26.27078"E']],
    ['-8-37-26.27078W', ['8°37\'26.27078"W', '8°37\'26.27078"E']],
  ])('%s', (typed, readings) => {
    const { findings } = inspectText(textWith(typed, typed.slice(-1)));
    const fixes = findings.filter(({ code }) => code === 'angle/packed').flatMap(({ fixes: some }) => some);
    expect(fixes.map(({ title }) => title)).toEqual(readings.map((reading) => `Write ${reading}`));
  });
});
