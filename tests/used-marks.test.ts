/** What is wrong with a used marks file is seen from the session that uses it. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import type { Files } from '../server/session/files.ts';

const MARK = 'mark M1\n  position 100.000 m E, 200.000 m N\n  height 5.000 m ellipsoidal\n';
const DAY = `job "x"
  grid EPSG:3763
use "marks.trib"
antenna A1
setup BASE on M1 with A1 at 08:00
`;
const using = (marks: string) => {
  const files: Files = {
    document: (path) => (path === 'marks.trib' ? openDocument(path, marks) : { refused: 'none' }),
    bytes: () => ({ refused: 'none' }),
  };
  return inspect(openDocument('day.trib', DAY), files).findings.filter(
    ({ code }) => code === 'position/grid-unknown',
  );
};

describe('marks of a file without a grid', () => {
  it('are told where the session names them', () => {
    const [found, ...more] = using(MARK);
    expect(found?.severity).toBe('error');
    expect(found?.message).toMatch(/M1 of marks\.trib has no grid/);
    expect(found?.place.path).toBe('day.trib');
    expect(more).toEqual([]);
  });
  it.each(['job "marks"\n  grid EPSG:3763\n' + MARK, MARK.replace(' m N', ' m N in EPSG:3763')])(
    'are silent with one',
    (marks) => {
      expect(using(marks)).toEqual([]);
    },
  );
});
