import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { element, escaped } from './markup.ts';
import { fitted, fittedApart, textWidth } from './text.ts';

describe('text in markup', () => {
  it('shows as it was typed', () => {
    expect(element('p', { title: '"\'<' }, 'a < b & "c"').markup).toBe(
      '<p title="&#34;&#39;&#60;">a &#60; b &#38; &#34;c&#34;</p>',
    );
  });

  it('is never more than text, whatever it is', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'<>"\'&`#;a=/', '\u0000', '\ud800', '\u202e') }),
        (text) => {
          expect(escaped(text)).not.toMatch(/[<>"'`]|&(?!#\d+;)/);
        },
      ),
    );
  });

  it('shows what would turn the direction of writing, and halves of characters', () => {
    expect(escaped('a\u202eb\ud800\u0000')).toBe('a\ufffdb\ufffd\ufffd');
  });
});

describe('text that must fit', () => {
  it('is cut with an ellipsis, and is as narrow as asked', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 14, max: 300 }), (text, room) => {
        expect(textWidth(fitted(text, 12, room), 12)).toBeLessThanOrEqual(room + 1e-9);
      }),
    );
    expect(fitted('PM-14', 12, 100)).toBe('PM-14');
    expect(fitted('a name that goes on and on', 12, 80)).toMatch(/^a name.*…$/);
  });

  it('keeps its end where others begin alike', () => {
    const names = ['THE-CHECK-AT-THE-PIER-1', 'THE-CHECK-AT-THE-PIER-12', 'SHORT'];
    const cut = fittedApart(names, 12, 90);
    expect(new Set(cut).size).toBe(3);
    expect(cut[1]).toMatch(/^THE.*….*R-12$/);
    expect(cut[2]).toBe('SHORT');
    for (const text of cut) expect(textWidth(text, 12)).toBeLessThanOrEqual(90);
    expect(fittedApart(['one and the same name', 'one and the same name'], 12, 60)[0]).toMatch(/…$/);
  });

  it('is not read to its end when it never ends', () => {
    const started = performance.now();
    fitted('name '.repeat(1_000_000), 12, 100);
    expect(performance.now() - started).toBeLessThan(500);
  });
});
