/** An antenna log that gives no position for its check, or none that can be brought to the ground. */
import { foundInEach } from '../../session/each.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Severity } from '../finding.ts';
import { sentence } from '../words.ts';

interface Unusable {
  readonly place: Place;
  readonly name: string;
  readonly because: string;
  readonly severity: Severity;
}

export const recordingUnusable = kind<Unusable>({
  code: 'recording/unusable',
  find: ({ derivation }) => unusable(derivation.checks),
  tell: ({ name, because, severity }) => ({
    severity,
    headline: `No position from the log of ${name}.`,
    effect: `${sentence(because)}. It proves nothing.`,
    action: '',
  }),
});

const unusable = foundInEach((check: CheckValues) => wrongWith(check));

function wrongWith({ check, recording }: CheckValues): Unusable[] {
  if (!recording) return [];
  const { file } = recording.recording;
  const { place } = file;
  const { name } = check;
  const { observed, facts, refused } = recording;
  if (refused !== null && isHole(observed))
    return [{ place, name, because: observed.hole, severity: 'information' }];
  if (isHole(observed)) {
    const why = facts?.problems[0]?.sentence.replace(/\.$/, '');
    return [{ place, name, because: refusal(observed.hole, why, file.text), severity: 'warning' }];
  }
  const height = observed.height?.value;
  return height && isHole(height) ? [{ place, name, because: height.hole, severity: 'warning' }] : [];
}

/** A sentence that speaks of the log says all, once it names the file. */
function refusal(hole: string, why: string | undefined, file: string): string {
  if (why === undefined) return hole;
  return why.includes('this log') ? why.replace('this log', () => file) : `${hole}: ${why}`;
}
