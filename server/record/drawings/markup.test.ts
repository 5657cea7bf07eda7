import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { element, escaped } from './markup.ts';
import { fitted, textWidth } from './text.ts';

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

  it('is not read to its end when it never ends', () => {
    const started = performance.now();
    fitted('name '.repeat(1_000_000), 12, 100);
    expect(performance.now() - started).toBeLessThan(500);
  });
});
