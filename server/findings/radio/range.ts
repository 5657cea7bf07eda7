/** A radio that by its power, aerials and rate does not reach the farthest place of the day, or barely does. */
import type { Place } from '../../../grammar/tree.ts';
import { RESERVE, type ReachValues } from '../../derive/link/reach.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Severity } from '../finding.ts';

interface TooFar {
  readonly place: Place;
  readonly values: ReachValues;
  readonly distance: number;
  /** Decibels; null where the notes do not tell it. */
  readonly margin: number | null;
  readonly beyondHorizon: boolean;
}

export const radioRange = kind<TooFar>({
  code: 'radio/range',
  find: ({ derivation }) =>
    derivation.link.reaches.flatMap((values): TooFar[] => {
      if (isHole(values.distance)) return [];
      const distance = values.distance.value;
      const margin = isHole(values.margin) ? null : values.margin.value;
      const beyondHorizon = !isHole(values.horizon) && distance > values.horizon.value;
      if (!beyondHorizon && (margin === null || margin >= RESERVE.value)) return [];
      const { power, place } = values.base;
      const at = margin !== null && power && !isHole(power) && power.origin === 'given' ? power.place : place;
      return [{ place: at, values, distance, margin, beyondHorizon }];
    }),
  tell: ({ values, distance, margin, beyondHorizon }, { derivation }) => {
    const { base, rover, farthest, fixed, horizon } = values;
    const ends = `radio ${base.name} and ${rover ? `radio ${rover.name}` : 'the rover'}`;
    const where = `${farthest ?? 'The farthest place'} lies ${showLength(distance)} from the base`;
    const lost = beyondHorizon || (margin ?? 0) < 0;
    const found = [
      ...(margin === null ? [] : [inMargin(margin)]),
      ...(beyondHorizon && !isHole(horizon)
        ? [`beyond the radio horizon of ${ends}, ${showLength(horizon.value)} over level ground`]
        : []),
    ];
    const held = fixed
      ? ' It was fixed there all the same, so the notes of power, aerials or rate may be wrong, or the ground is kinder than level ground.'
      : '';
    const severity: Severity = lost && !fixed ? 'warning' : 'information';
    // A distance from wrong coordinates is no distance.
    const follows = [...derivation.marks.keys()].map((name) => `mark/${name}/position`);
    return { severity, message: `${where}, ${found.join(', and ')}.${held} ${remedies(values)}`, follows };
  },
});

function inMargin(margin: number): string {
  const size = `${showNumber(Math.abs(margin), 0)} dB`;
  if (margin < 0) return `where the signal is ${size} below the faintest one that is read`;
  return `where only ${size} are in hand; ${showNumber(RESERVE.value, 0)} dB are usual (common practice), since leaves and fading take some`;
}

function remedies({ reach, slowerReach }: ReachValues): string {
  const higher = 'Raise the aerial of the base, or set the base nearer';
  if (isHole(reach)) return `${higher}.`;
  const slower = isHole(slowerReach)
    ? ''
    : `; one step slower on the air it reaches ${showLength(slowerReach.value)}`;
  return `${higher}. With ${showNumber(RESERVE.value, 0)} dB in hand this radio reaches ${showLength(reach.value)}${slower}.`;
}
