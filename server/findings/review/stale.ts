/** A reviewed session that has been changed since, or whose review can no longer be verified. */
import { allOf } from '../../quantities/show.ts';
import { kind } from '../finding.ts';

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
        message: `Whether this is still what ${by} reviewed cannot be verified: ${standing.because}.`,
      };
    const changed = standing.changed.map((part) => PART_NAMES[part]);
    const what = changed.length === 0 ? 'the order of the entries' : allOf(changed);
    return {
      severity: 'warning',
      message: `Since ${by} reviewed this session it has changed: ${what}. The review speaks of another version; have it reviewed again, and see what moved with tribrach compare.`,
    };
  },
});
