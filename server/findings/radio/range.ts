/** A radio that by its power, aerials and rate does not reach the farthest place of the day, or barely does. */
import type { Place } from '../../../grammar/tree.ts';
import { RESERVE, type ReachValues } from '../../derive/link/reach.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Severity } from '../finding.ts';
import { joined } from '../saying.ts';

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
    const where = `${farthest ?? 'The farthest place'}, ${showLength(distance)} from the base`;
    const lost = beyondHorizon || (margin ?? 0) < 0;
    const beyond =
      beyondHorizon && !isHole(horizon)
        ? `The radio horizon of ${ends} is ${showLength(horizon.value)}.`
        : '';
    const held = fixed ? 'Yet it was fixed there.' : '';
    const headline = `${where}: ${lost ? 'out of radio range' : `only ${decibels(margin ?? 0)} in hand`}.`;
    const severity: Severity = lost && !fixed ? 'warning' : 'information';
    // A distance from wrong coordinates is no distance.
    const follows = [...derivation.marks.keys()].map((name) => `mark/${name}/position`);
    const effect = joined(margin === null ? '' : inMargin(margin), beyond, held);
    return { severity, headline, effect, action: remedies(values), follows };
  },
});

function inMargin(margin: number): string {
  if (margin < 0) return `The signal is ${decibels(margin)} too faint.`;
  return `${decibels(RESERVE.value)} are usual (common practice), as leaves and fading take some.`;
}

const decibels = (size: number) => `${showNumber(Math.abs(size), 0)} dB`;

function remedies({ reach, slowerReach }: ReachValues): string {
  const higher = 'Raise the base aerial or go nearer';
  if (isHole(reach)) return `${higher}.`;
  const slower = isHole(slowerReach) ? '' : `, ${showLength(slowerReach.value)} one air rate slower`;
  return `${higher}: it reaches ${showLength(reach.value)} with ${decibels(RESERVE.value)} in hand${slower}.`;
}
