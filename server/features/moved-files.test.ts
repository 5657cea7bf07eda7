/** Files that are renamed or moved: who names them goes on naming the same file. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { namesAfter, type Move } from './moved-files.ts';

const after = (path: string, text: string, ...moves: Move[]) => {
  const document = openDocument(path, text);
  return namesAfter([document], moves).reduceRight(
    (sofar, { at, text: name }) => sofar.slice(0, at.start) + name + sofar.slice(at.end),
    text,
  );
};

describe('a file that moves', () => {
  const day = 'use "../marks.trib"\nsetup B\n  captured "base.rtcm3"\n  photo "/pictures/b.jpg"\n';

  it('is named by its new name, seen from where one names it', () => {
    expect(
      after('/jobs/may/day.trib', day, { from: '/jobs/marks.trib', to: '/jobs/control/a "b".trib' }),
    ).toBe(day.replace('../marks.trib', '../control/a ""b"".trib'));
    expect(after('/jobs/may/day.trib', day, { from: '/pictures', to: '/photos' })).toBe(
      day.replace('/pictures', '/photos'),
    );
  });

  it('names the others from its new place', () => {
    expect(after('/jobs/may/day.trib', day, { from: '/jobs/may/day.trib', to: '/jobs/day.trib' })).toBe(
      day.replace('../marks.trib', 'marks.trib').replace('base.rtcm3', 'may/base.rtcm3'),
    );
  });

  it('leaves names alone that lead where they led: what moves together, and what does not move', () => {
    expect(after('/jobs/may/day.trib', day, { from: '/jobs', to: '/work' })).toBe(day);
    expect(after('/jobs/may/day.trib', day, { from: '/jobs/marks', to: '/jobs/m' })).toBe(day);
  });
});
