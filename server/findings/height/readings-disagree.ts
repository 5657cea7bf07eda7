/** Two readings of one time that do not agree: one of them is wrong, and so is their mean. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { READING_SIGMA, type Reading } from '../../derive/setups/antenna-height.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { kind, type Subject } from '../finding.ts';
import { impossibleUnder } from './impossible.ts';
import { reunited } from './reading-units.ts';

export const heightReadingsDisagree = kind({
  code: 'height/readings-disagree',
  find: (subject) => disagreeing(subject),
  tell: ({ setup, other, apart, sure }) => ({
    severity: sure ? 'error' : 'warning',
    headline: `Two tape readings at ${setup.setup.name} differ by ${showLength(Math.abs(apart))}.`,
    effect: `This one gives ${apart > 0 ? 'more' : 'less'}. One is wrong, and so is the mean.`,
    action: 'Tape again, or note which one counts and why.',
    rests: [{ message: 'The other reading.', place: other.measured.place }],
    causes: [`reading/${setup.setup.name}`],
    follows: [`reading-unit/${setup.setup.name}`, ...impossibleUnder(setup)],
  }),
});

interface Disagreement {
  readonly setup: SetupValues;
  readonly reading: Reading;
  readonly other: Reading;
  /** Metres. */
  readonly apart: number;
  /** No tape scatters by so much: the mean is a wrong result. */
  readonly sure: boolean;
  readonly place: Reading['measured']['place'];
}

/** Two-sided, 99 %, for the difference of two. */
const SURELY = 2.58 * Math.SQRT2;
/** Times the uncertainty of a reading: two centimetres for a tape, which nobody reads so badly (common practice). */
const GROSS = 20;

/** In each group the reading that lies farthest from the others; of two, the later one. */
const disagreeing = ({ derivation }: Subject) => disagreeingAt(valuesOf(derivation.setups));

const disagreeingAt = foundInEach((setup: SetupValues) =>
  setup.height.groups.flatMap(({ readings }): Disagreement[] => {
    if (readings.length < 2) return [];
    const heights = readings.map(heightOf);
    const middle = median(heights);
    const farthest = readings.reduce<Reading | null>((worst, reading) => {
      const off = Math.abs(heightOf(reading) - middle);
      return !worst || off >= Math.abs(heightOf(worst) - middle) ? reading : worst;
    }, null);
    const other = readings.find((reading) => reading !== farthest);
    if (!farthest || !other || reunited(readings, farthest)) return [];
    const apart = heightOf(farthest) - heightOf(other);
    const sigma = Math.max(sigmaOf(farthest), sigmaOf(other));
    if (Math.abs(apart) <= SURELY * sigma) return [];
    const sure = Math.abs(apart) > GROSS * sigma;
    return [
      {
        setup,
        reading: farthest,
        other,
        apart,
        sure,
        place: placeOfLength(farthest),
      },
    ];
  }),
);

const heightOf = ({ arp }: Reading) => (isHole(arp) ? NaN : arp.value);
const sigmaOf = ({ arp }: Reading) => (isHole(arp) ? READING_SIGMA : (arp.sigma ?? READING_SIGMA));

export function placeOfLength({ measured }: Reading) {
  const { length } = measured;
  return !isHole(length) && length.origin === 'given' ? length.place : measured.place;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? NaN) + (sorted[Math.floor(half)] ?? NaN)) / 2;
}
