import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole, type Value } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';
import { listValues } from '../listing.ts';

interface Day {
  readonly marks?: string;
  readonly rover?: string;
  readonly setup?: string;
  readonly base?: string;
}

const STATED = '  uncertainty 8 mm horizontal, 12 mm vertical\n';

/** A check over 1008.721 m; ellipsoidal heights, so that no geoid plays a part. */
function day({ marks = STATED, rover = '', setup = '', base = 'PM-14' }: Day): string {
  return `job "x"
  date 2026-05-19
  clock UTC
  grid EPSG:3763
mark PM-14
  position -41203.118 m E, 164904.902 m N
  height 61.201 m ellipsoidal
${marks}mark PM-09
  position -40311.882 m E, 165377.404 m N
  height 60.111 m ellipsoidal
${marks}rover R1
${rover}setup BASE on ${base} at 07:50
  measured 1.500 m to arp at 07:51
${setup}check OPEN on PM-09 at 08:25 by R1
  observed -40311.876 m E, 165377.410 m N, height 60.118 m ellipsoidal
`;
}

/** Lengths of the parts by hand, in millimetres, from the defaults (common practice) or from what the notes say. */
const RECEIVERS = (8 + 1.008721) / Math.SQRT2;
const PLUMMET = 1;
const TILT = Math.tan(((2 / 60) * Math.PI) / 180) * 1500;
const LEAN = Math.tan(((2 / 60) * Math.PI) / 180) * 2000;
const HELD = Math.tan(((8 / 60) * Math.PI) / 180) * 2000;
const TAPE = Math.hypot(1, 0.5);

describe('the uncertainty of a check is that of', () => {
  it.each<[string, Day, number, number]>([
    [
      'marks, receivers, plummet, bubble, pole and tape, each in its default',
      {},
      Math.hypot(8, 8, RECEIVERS, PLUMMET, TILT, LEAN),
      Math.hypot(12, 12, 16.008721, TAPE),
    ],
    [
      'a pole that is held by hand',
      { rover: '  pole 2.000 m to arp, held\n' },
      Math.hypot(8, 8, RECEIVERS, PLUMMET, TILT, HELD),
      Math.hypot(12, 12, 16.008721, TAPE),
    ],
    [
      'receivers as the notes state them, a radius and a half-width at 95 %',
      { rover: '  uncertainty 10 mm + 1.5 ppm horizontal 95 %, 20 mm + 1.5 ppm vertical 95 %\n' },
      Math.hypot(8, 8, 11.513082 / 2.447747, PLUMMET, TILT, LEAN),
      Math.hypot(12, 12, 21.513082 / 1.959964, TAPE),
    ],
    [
      'a better plummet and a finer bubble',
      { setup: "  plummet ± 0.3 mm\n  bubble 4' / 2 mm\n" },
      Math.hypot(8, 8, RECEIVERS, 0.3, TILT / 2, LEAN),
      Math.hypot(12, 12, 16.008721, TAPE),
    ],
    [
      'marks of one source against one another',
      { marks: `${STATED}  relative 3 mm horizontal, 4 mm vertical\n  source "register"\n` },
      Math.hypot(3, RECEIVERS, PLUMMET, TILT, LEAN),
      Math.hypot(4, 16.008721, TAPE),
    ],
    [
      'nothing of the mark, where base and check stand on the same',
      { base: 'PM-09' },
      Math.hypot(8 / Math.SQRT2, PLUMMET, TILT, LEAN),
      Math.hypot(15, TAPE),
    ],
  ])('%s', (_, notes, horizontal, up) => {
    const value = valuesOf(day(notes));
    expect((value('residual/east').sigma ?? NaN) * 1000).toBeCloseTo(horizontal, 3);
    expect((value('residual/north').sigma ?? NaN) * 1000).toBeCloseTo(horizontal, 3);
    expect((value('residual/up').sigma ?? NaN) * 1000).toBeCloseTo(up, 3);
    // Published factors: the root of chi-square of two degrees, 5.991465, and 1.959964.
    expect(value('expected/horizontal').value * 1000).toBeCloseTo(Math.sqrt(5.991465) * horizontal, 2);
    expect(value('expected/up').value * 1000).toBeCloseTo(1.959964 * up, 2);
  });

  /** A difference of levelled heights comes out of the vector by a geoid model's: 1 ppm of 1008.721 m, of the coarse one 10 (common practice). */
  it.each([
    ['a regional one', '', 1.008721],
    ['the coarse one', '  geoid EGM96\n', 10.08721],
  ])('a geoid model too, where heights are levelled: %s', (_, rover, model) => {
    const levelled = day({ marks: `  separation 54.917 m\n${STATED}`, rover })
      .replace('height 61.201 m ellipsoidal', 'height 6.284 m orthometric')
      .replace('height 60.111 m ellipsoidal', 'height 5.196 m orthometric')
      .replace('height 60.118 m ellipsoidal', 'height 5.203 m orthometric');
    expect((valuesOf(levelled)('residual/up').sigma ?? NaN) * 1000).toBeCloseTo(
      Math.hypot(12, 12, 16.008721, TAPE, model),
      3,
    );
  });

  it('nobody knows how much, where a mark has none stated', () => {
    const { derivation } = inspect(openDocument('x', day({ marks: '' })), NO_FILES);
    const [check] = derivation.checks;
    expect(check && isHole(check.expected.horizontal) && check.expected.horizontal.hole).toBe(
      'the horizontal uncertainty of PM-14 is not stated',
    );
    expect(check && !isHole(check.residual.east) && check.residual.east.sigma).toBeNull();
    expect(check && !isHole(check.residual.east) && check.residual.east.value).toBeCloseTo(0.006, 3);
  });
});

function valuesOf(text: string): (part: string) => Value {
  const { derivation } = inspect(openDocument('x', text), NO_FILES);
  const listed = listValues(derivation);
  return (part) => {
    const found = listed.find(({ id }) => id === `check/OPEN/${part}`)?.value;
    if (!found || isHole(found)) throw new Error(found?.hole ?? `no ${part}`);
    return found;
  };
}
