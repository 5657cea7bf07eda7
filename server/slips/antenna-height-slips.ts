/** The antenna height is counted twice, left at zero, keyed without its whole metres, or its tape is misread by a round amount. */
import { showLength } from '../quantities/show.ts';
import { FOOT } from './feet.ts';
import type { Slip, Way } from './slip.ts';

const CODE = 'position/keyed-differs';

export const antennaHeightTwice: Slip = {
  name: 'antenna-height-twice',
  code: CODE,
  prior: 0.04,
  look: 'height and antenna height on the receiver: whether the one has the other inside already',
  ways: ({ right: { antennaHeight, height } }) => [
    ...told(antennaHeight, 'the antenna height was counted twice', (value) => 2 * value),
    ...(antennaHeight === null || height === null
      ? []
      : [
          {
            says: 'the height of the antenna was keyed as that of the mark, and the antenna height beside it',
            effect: { on: 'told' as const, told: { height: height + antennaHeight } },
          },
        ]),
  ],
};

export const antennaHeightLeftOut: Slip = {
  name: 'antenna-height-left-out',
  code: CODE,
  prior: 0.05,
  look: 'the antenna height on the receiver, which may be 0',
  ways: ({ right: { antennaHeight } }) => told(antennaHeight, 'the antenna height was left at zero', () => 0),
};

export const metresDropped: Slip = {
  name: 'metres-dropped',
  code: CODE,
  prior: 0.03,
  look: 'the antenna height on the receiver, its whole metres first',
  ways: ({ right: { antennaHeight } }) =>
    antennaHeight === null || antennaHeight < 1
      ? []
      : told(
          antennaHeight,
          `the whole metres of the antenna height were left out, ${(antennaHeight % 1).toFixed(3)} m for ${antennaHeight.toFixed(3)} m`,
          (value) => value % 1,
        ),
};

/** Printed figures of a tape lie so far apart (common practice), metres. */
const MARKS = [0.1, FOOT, FOOT / 12];

export const tapeMisread: Slip = {
  name: 'tape-misread',
  code: CODE,
  prior: 0.05,
  look: 'the tape once more, from the mark to the same point of the antenna',
  ways: ({ right: { antennaHeight } }) =>
    MARKS.flatMap((by) =>
      [-1, 1].flatMap((sign) =>
        told(
          antennaHeight,
          `the tape was misread by ${showLength(by)}, too ${sign > 0 ? 'long' : 'short'}`,
          (value) => value + sign * by,
        ),
      ),
    ),
};

const told = (right: number | null, says: string, wrong: (right: number) => number): Way[] =>
  right === null ? [] : [{ says, effect: { on: 'told', told: { antennaHeight: wrong(right) } } }];
