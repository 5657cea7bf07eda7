/** The markers themselves: carets under the place, put in and taken out again. */
import { describe, expect, it } from 'vitest';
import { findingMarkers, isMarker, withMarkers, withoutMarkers } from './markers.ts';
import { inspectText } from './pages.ts';

const session = 'mark PM-14\n  height 6.284 m\n  # 08:25 to 15:25 is bracketed\n';
const marked = `mark PM-14
  height 6.284 m
#        ^^^^^^^ error height/no-surface
#=> 6.284 m
  # 08:25 to 15:25 is bracketed
`;
const markers = [
  { line: 2, columns: null, says: '6.284 m' },
  { line: 2, columns: { start: 10, end: 17 }, says: 'error height/no-surface' },
];

describe('markers', () => {
  it('stand below their line', () => {
    expect(withMarkers(session, markers)).toBe(marked);
  });
  it('are taken out again, and other comments are not', () => {
    expect(withoutMarkers(marked)).toBe(session);
    expect(isMarker('# a ^ b')).toBe(false);
    expect(isMarker('#^^ is no marker')).toBe(true);
  });
  it('let the number sign count for the first column', () => {
    const markers = [{ line: 1, columns: { start: 1, end: 5 }, says: 'error syntax/unknown-word' }];
    expect(withMarkers('mrak A\n', markers)).toBe('mrak A\n#^^^ error syntax/unknown-word\n');
  });
  it('close a last line that has no line end', () => {
    expect(withMarkers('mark', [{ line: 1, columns: null, says: 'x' }])).toBe('mark\n#=> x\n');
  });
  it('change nothing of what is found', () => {
    const plain = inspectText(session);
    const withThem = inspectText(marked);
    const codes = (of: typeof plain) => of.findings.map(({ code }) => code);
    expect(codes(withThem)).toEqual(codes(plain));
    expect(findingMarkers(plain).map(({ says }) => says)).toContain('error height/no-surface');
  });
});
