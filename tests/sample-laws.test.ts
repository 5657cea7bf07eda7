/** What holds of every sample, however its lines end and whatever its things are called. */
import { describe, expect, it } from 'vitest';
import { selectionsAt, foldsIn, outlineOf } from '../server/features/outline.ts';
import { hoverAt } from '../server/features/hover.ts';
import { inlaysIn } from '../server/features/inlays.ts';
import { declarationOf, namesIn, rename, type NameUse } from '../server/features/names.ts';
import { noticesOf } from '../server/features/notices.ts';
import type { Inspection } from '../server/inspect.ts';
import { withoutMarkers } from './markers.ts';
import { allSamples, cleanSamples, inspectSample } from './samples.ts';

const plain = ({ file, text }: { file: string; text: string }) => ({ file, text: withoutMarkers(text) });
const samples = allSamples().map(plain);

/** Everything that is told, with lines and columns. */
function told(inspection: Inspection, text: string) {
  const place = (at: number) => {
    const before = text.slice(0, at).split(/\r\n|\r|\n/);
    return `${before.length}:${before.at(-1)?.length ?? 0}`;
  };
  return [
    ...noticesOf(inspection).map(
      ({ code, severity, headline, below, at }) =>
        `${severity} ${code} ${place(at.start)}-${place(at.end)} ${headline} ${below}`,
    ),
    ...inlaysIn(inspection, 0, text.length).map(({ at, label }) => `${place(at)} ${label}`),
  ];
}

describe('the same is told at the same places', () => {
  it.each([
    ['CR and LF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR', (text: string) => text.replaceAll('\n', '\r')],
    // As many UTF-16 units on each line: two of them are one astral character.
    ['astral characters in the comments', (text: string) => text.replace(/(?<=# )../g, '\u{1f4d0}')],
  ])('where the text has %s', (_, changed) => {
    for (const { file, text } of samples) {
      const other = changed(text);
      expect(told(inspectSample({ file, text: other }), other), file).toEqual(
        told(inspectSample({ file, text }), text),
      );
    }
  });

  it('where a mark of the byte order stands before it', () => {
    for (const { file, text } of samples) {
      const marked = inspectSample({ file, text: `\ufeff${text}` });
      const codes = (inspection: Inspection) => inspection.findings.map(({ code }) => code);
      expect(codes(marked), file).toEqual(codes(inspectSample({ file, text })));
    }
  });
});

describe('renaming', () => {
  const renamed = ({ session }: Inspection, use: NameUse, name: string) => {
    const renaming = rename(session, [session], use, name);
    if ('refused' in renaming) return null;
    return [...renaming.edits]
      .sort((one, other) => other.at.start - one.at.start)
      .reduce(
        (text, { at, text: put }) => text.slice(0, at.start) + put + text.slice(at.end),
        session.document.text,
      );
  };
  const codes = ({ findings }: Inspection) => findings.map(({ severity, code }) => `${severity} ${code}`);

  it.each(cleanSamples().map(plain))(
    'changes nothing but the name, and back to the letter: $file',
    (sample) => {
      const inspection = inspectSample(sample);
      const declared = inspection.session.entries.flatMap(namesIn).filter(({ declares }) => declares);
      expect(declared.length).toBeGreaterThan(2);
      for (const use of declared)
        for (const name of ['Q9X', 'say "x"', 'on', '12:30', 'EPSG:4258', '5']) {
          const text = renamed(inspection, use, name);
          if (text === null) continue;
          const after = inspectSample({ ...sample, text });
          expect(codes(after), `${use.name} → ${name}`).toEqual(codes(inspection));
          const own = after.session.entries
            .flatMap(namesIn)
            .find((one) => one.declares && one.kind === use.kind && one.name === name);
          const declaration = own && declarationOf(after.session, own);
          expect(declaration && renamed(after, declaration, use.name), `${name} → ${use.name}`).toBe(
            sample.text,
          );
        }
    },
  );
});

describe('places', () => {
  it.each(cleanSamples().map(plain))('hold one another and do not overlap: $file', (sample) => {
    const inspection = inspectSample(sample);
    const { document } = inspection.session;
    const { text } = document;
    for (let at = 0; at <= text.length; at += 7) {
      const chain = selectionsAt(document, at);
      for (const [index, { start, end }] of chain.entries()) {
        const outer = chain[index + 1];
        expect(start <= at && at <= end, `selection at ${at}`).toBe(true);
        if (outer) expect(outer.start <= start && end <= outer.end, `selection at ${at}`).toBe(true);
      }
      const hover = hoverAt(inspection, at);
      if (!hover) continue;
      expect(hover.at.start <= at && at <= hover.at.end, `hover at ${at}`).toBe(true);
      expect(JSON.stringify(hover.blocks), `hover at ${at}`).not.toMatch(/undefined|NaN|\[object|\.\."/);
    }
    const folds = foldsIn(document);
    for (const [index, { start }] of folds.entries())
      expect(start).toBeGreaterThanOrEqual(folds[index - 1]?.end ?? 0);
    for (const { whole, heading, children } of outlineOf(inspection))
      for (const inner of [heading, ...children.map((child) => child.whole)])
        expect(whole.start <= inner.start && inner.end <= whole.end).toBe(true);
  });
});
