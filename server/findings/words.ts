/** Turns of phrase that several findings share. */
import { isHole } from '../quantities/value.ts';
import type { Subject } from './finding.ts';

/** An instant as the job's clock showed it: `08:31`. */
export function clockTime(instant: number | null, { session }: Subject): string | null {
  if (instant === null) return null;
  const clock = session.job?.clock;
  const offset = clock && !isHole(clock) ? clock.seconds : 0;
  const seconds = (((instant + offset) % 86_400) + 86_400) % 86_400;
  const pad = (number: number) => String(Math.floor(number)).padStart(2, '0');
  const rest = seconds % 60;
  return `${pad(seconds / 3600)}:${pad((seconds % 3600) / 60)}${rest === 0 ? '' : `:${pad(rest)}`}`;
}
