/** A height that is not there leaves holes behind it, and never a number. */
import { expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { inspect } from '../inspect.ts';
import { isHole } from '../quantities/value.ts';
import { NO_FILES } from '../session/files.ts';
import { listValues } from './listing.ts';

const day = (mark: string, observed: string) => `job "Heights"
  date        2026-05-19
  clock       UTC
  grid        EPSG:3763
mark A
  position    -41203.118 m E, 164904.902 m N
  height      ${mark}
  separation  54.917 m
mark B
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
setup BASE on A at 07:50
  measured    1.500 m to arp at 07:51
  keyed       position -41203.118 m E, 164904.902 m N, height 61.201 m ellipsoidal
  keyed       antenna-height 1.500 m to arp
check OPEN on B at 08:25
  observed    -40311.876 m E, 165377.410 m N, height ${observed}
`;
const holesIn = (text: string): ReadonlySet<string> =>
  new Set(
    listValues(inspect(openDocument('x.trib', text), NO_FILES).derivation).flatMap(({ id, value }) => {
      if (!isHole(value)) expect(value.value, id).not.toBeNaN();
      return isHole(value) ? [id] : [];
    }),
  );

it.each([
  ['orthometric', '6.284 m', '5.203 m'],
  ['ellipsoidal', '61.201 m', '60.118 m'],
])('an open %s height', (surface, ofMark, ofCheck) => {
  const [mark, check] = [`${ofMark} ${surface}`, `${ofCheck} ${surface}`];
  const before = holesIn(day(mark, check));
  const more = (text: string) => [...holesIn(text)].filter((id) => !before.has(id));
  expect(more(day(mark, `? ${surface}`))).toEqual(['check/OPEN/residual/up']);
  expect(more(day(`? ${surface}`, check))).toEqual(
    expect.arrayContaining([
      'mark/A/ellipsoidal-height',
      'mark/A/orthometric-height',
      'mark/A/z',
      'setup/BASE/tell/ellipsoidal-height',
      'setup/BASE/arp/z',
    ]),
  );
});
