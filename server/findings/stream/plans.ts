/** Whether a setup is still a plan: settings may be changed until the day has brought anything, and are facts from then on. */
import type { Subject } from '../finding.ts';

/** Nothing was measured, keyed, recorded or checked from this base yet; without setups, in the whole session. */
export function isPlan({ session }: Subject, setup: string): boolean {
  const used = [...session.setups.values()].filter(({ name }) => name === setup || session.setups.size === 1);
  const begun = used.some(
    ({ measured, keyed, autonomous, captured, rawLog }) =>
      measured.length > 0 || keyed.length > 0 || autonomous !== null || captured !== null || rawLog !== null,
  );
  const { checks, points, singlePoints, events } = session;
  return !begun && checks.length + points.length + singlePoints.length + events.length === 0;
}
