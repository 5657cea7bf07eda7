/** Whether a part of the day that nothing proves is missed by anybody: where nobody measured there is nothing to prove. */
import { isMeasured } from '../points/measured.ts';
import type { PointSet } from '../points/points.ts';
import type { SetupValues } from '../setups/setup.ts';
import type { Span } from './spans.ts';

/** Setting up and taking down take so long without anything being measured, where no points are noted (common practice), seconds. */
export const AT_THE_ENDS = 3600;

/** By the points, where some are noted; else all but what lies shortly before the first check and behind the last. */
export const isNeeded =
  (points: readonly PointSet[]) =>
  ({ setup, rover }: { readonly setup: SetupValues; readonly rover: string | null }, span: Span): boolean =>
    points.length > 0
      ? isMeasured(points, { setup: setup.setup.name, rover, ...betweenChecks(span) })
      : !isAtAnEnd(setup, span);

function isAtAnEnd(setup: SetupValues, { from, until, before, after }: Span): boolean {
  if (from === null || until === null || until - from > AT_THE_ENDS) return false;
  return (after !== null && from === setup.from) || (before !== null && until === setup.until);
}

/** Without the very times of the checks beside it: a point then belongs to the part that the check proves. */
const betweenChecks = ({ from, until, before, after }: Span) => ({
  from: before && from !== null ? from + 1 : from,
  until: after && until !== null ? until - 1 : until,
});
