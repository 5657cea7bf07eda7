/** All findings of a kind mended at once, and what may be mended without a question. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { breach } from '../../tests/fixes.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { NO_FILES } from '../session/files.ts';
import { mendAllOf, safeMends } from './mend-all.ts';
import { inspectedAfter } from './trial.ts';

const inspected = (text: string) => inspect(openDocument('day.trib', text), NO_FILES);
const textOf = ({ session }: Inspection) => session.document.text;
const codes = ({ findings }: Inspection) => findings.map(({ code }) => code);

const sloppy = `mark A
  HEIGHT      6,284 m orthometric
  separation  54.917 mtr
mark B
height      .5 m orthometric
  SEPARATION  54.915 mtr
mark C
  height      .7 m orthometric
`;

describe('all findings of a kind', () => {
  it('are mended where each has one way to', () => {
    const inspection = inspected(sloppy);
    const points = mendAllOf('syntax/bare-point', inspection);
    expect(points?.title).toBe('Mend all 2 of syntax/bare-point in this file');
    const after = inspectedAfter(inspection, NO_FILES, points?.edits ?? []);
    expect(textOf(after)).toBe(sloppy.replace(' .5', ' 0.5').replace(' .7', ' 0.7'));
    const units = mendAllOf('unit/slip', after);
    expect(textOf(inspectedAfter(after, NO_FILES, units?.edits ?? []))).toBe(
      textOf(after).replaceAll('mtr', 'm'),
    );
  });

  it('are not where one stands alone, or where somebody has to choose', () => {
    expect(mendAllOf('syntax/indent', inspected(sloppy))).toBeNull();
    const commas = inspected(sloppy.replace(' .5', ' 0,5'));
    expect(codes(commas).filter((code) => code === 'number/decimal-comma')).toHaveLength(2);
    expect(mendAllOf('number/decimal-comma', commas)).toBeNull();
  });

  it('add no fact, and none of the kind is left', () => {
    const inspection = inspected(sloppy);
    const all = [...new Set(codes(inspection))].flatMap((code) => mendAllOf(code, inspection) ?? []);
    expect(all.map(({ code }) => code).sort()).toEqual([
      'syntax/bare-point',
      'syntax/letter-case',
      'unit/slip',
    ]);
    for (const { code, edits, findings } of all) {
      for (const { fixes } of findings) expect(fixes.map((fix) => breach(inspection, fix))).toEqual([null]);
      expect(codes(inspectedAfter(inspection, NO_FILES, edits))).not.toContain(code);
    }
  });
});

describe('what is safe to mend unasked', () => {
  it('is how a thing is written that is understood already', () => {
    const inspection = inspected(sloppy);
    const after = inspectedAfter(inspection, NO_FILES, safeMends(inspection, NO_FILES));
    expect(textOf(after)).toBe(
      sloppy
        .replace('HEIGHT', 'height')
        .replace('SEPARATION', 'separation')
        .replace('\nheight      .5', '\n  height      .5'),
    );
    expect(safeMends(after, NO_FILES)).toEqual([]);
  });
});
