/** Heights of marks: one that is not there leaves holes behind it, and how good one is stands with the mark. */
import { expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';
import { listValues } from '../listing.ts';

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

/** The vertical uncertainty of a mark, 12 mm, is that of its published heights; what is typed beside the separation comes on top. */
it.each([
  ['54.917 m', 0.012],
  ['54.917 m ± 20 mm', Math.hypot(0.012, 0.02)],
])('an ellipsoidal height by a separation of %s is as good as the notes say', (separation, sigma) => {
  const text = day('6.284 m orthometric', '5.203 m orthometric')
    .replace('separation  54.917 m', `separation  ${separation}`)
    .replace('mark B', '  uncertainty 8 mm horizontal, 12 mm vertical\nmark B');
  const listed = listValues(inspect(openDocument('x.trib', text), NO_FILES).derivation);
  const sigmaOf = (part: string) => {
    const value = listed.find(({ id }) => id === `mark/A/${part}`)?.value;
    return value && !isHole(value) ? value.sigma : undefined;
  };
  expect(sigmaOf('orthometric-height')).toBeCloseTo(0.012, 9);
  expect(sigmaOf('ellipsoidal-height')).toBeCloseTo(sigma, 9);
});
