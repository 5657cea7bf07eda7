/** What was wrong for a while and has been put right since is no error any more, but a fact of the day with its time span. */
import { clockTime } from './words.ts';
import type { Reported, Subject } from './finding.ts';
import { joined } from './saying.ts';

export function settled(finding: Reported, subject: Subject): Reported {
  if (!finding.past) return finding;
  const { from, until } = finding.past;
  const span = `from ${clockTime(from, subject) ?? 'the start'} until ${clockTime(until, subject) ?? 'it was put right'}`;
  return {
    ...finding,
    untilExplained: undefined,
    severity: 'information',
    effect: joined(finding.effect, `It was so ${span}; put right since.`),
  };
}
