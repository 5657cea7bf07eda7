/** Angles are read by the unit that stands behind each of their numbers. */
import { describe, expect, it } from 'vitest';
import { inspectText } from '../../tests/pages.ts';
import { isHole } from '../quantities/value.ts';

const latitudeOf = (typed: string) => {
  const { session, findings } = inspectText(`mark A\n  position ${typed}, 8°E\n`);
  const position = session.marks.get('A')?.position;
  const latitude = position?.form === 'geographic' ? position.latitude : null;
  return latitude && !isHole(latitude) ? latitude.value : findings.map(({ code }) => code);
};

describe('an angle', () => {
  // 400 gon, 360° and 21600' are one circle.
  it.each([
    ['50 gon N', 45],
    ['100 gon S', -90],
    ["30'N", 0.5],
    [`30'36"N`, 0.51],
    ["41°30'N", 41.5],
    [`41°30'36"N`, 41.51],
    ['41.51°N', 41.51],
  ])('%s', (typed, degrees) => expect(latitudeOf(typed)).toBeCloseTo(degrees, 12));

  it.each(["41.5°30'N", `41°30.5'20"N`, "41°60'N", '101 gon N'])('that no instrument shows: %s', (typed) =>
    expect(latitudeOf(typed)).toContain('angle/range'),
  );
});
