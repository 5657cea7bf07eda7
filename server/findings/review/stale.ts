/** A reviewed session that has been changed since, or whose review can no longer be verified. */
import { allOf } from '../../quantities/show.ts';
import { kind } from '../finding.ts';
import { sentence } from '../words.ts';

const PART_NAMES = {
  job: 'the job',
  marks: 'the marks',
  gear: 'antennas, rovers or surfaces',
  setups: 'the setups',
  link: 'the radio link',
  checks: 'the checks',
  events: 'the events',
  points: 'the points',
  notes: 'notes, hazards or corrections',
  files: 'a file that the session draws on',
} as const;

export const reviewStale = kind({
  code: 'review/stale',
  find: ({ derivation }) =>
    derivation.reviews.flatMap(({ review, standing }) =>
      standing.is === 'stale' || standing.is === 'unverifiable'
        ? [{ place: (review.seal ?? review).place, by: review.by, standing }]
        : [],
    ),
  tell: ({ by, standing }) => {
    if (standing.is === 'unverifiable')
      return {
        severity: 'warning',
        headline: `Review by ${by} cannot be verified.`,
        effect: `${sentence(standing.because)}.`,
      };
    const changed = standing.changed.map((part) => PART_NAMES[part]);
    const shown = changed.length > 3 ? [changed[0] ?? '', `${changed.length - 1} other parts`] : changed;
    const what = changed.length === 0 ? 'the order of the entries' : allOf(shown);
    return {
      severity: 'warning',
      headline: `Changed since ${by} reviewed it: ${what}.`,
      action: 'See what moved with `tribrach compare`, and have it reviewed again.',
    };
  },
});
