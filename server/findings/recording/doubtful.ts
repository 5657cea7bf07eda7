/** An antenna log that was not fixed throughout, hung on old corrections, or is damaged. */
import { foundInEach } from '../../session/each.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { showNumber } from '../../quantities/show.ts';
import { kind, type Severity } from '../finding.ts';
import { joined } from '../saying.ts';
import { sentence } from '../words.ts';

interface Doubtful {
  readonly place: Place;
  readonly check: CheckValues;
  readonly severity: Severity;
  readonly sentences: readonly string[];
}

/** Corrections older than this are usually no longer good for a fixed solution to the centimetre (common practice). */
const OLD = 10;

export const recordingDoubtful = kind<Doubtful>({
  code: 'recording/doubtful',
  find: ({ derivation }) => doubtful(derivation.checks),
  tell: ({ check, severity, sentences }) => ({
    severity,
    headline: `Doubtful log for ${check.check.name}: ${sentences[0] ?? ''}`,
    effect: joined(
      ...sentences.slice(1).map(sentence),
      `The check rests on ${check.recording?.recording.file.text ?? ''}.`,
    ),
    action: 'Observe the check again.',
  }),
});

const doubtful = foundInEach((check: CheckValues) => doubts(check));

function doubts(check: CheckValues): Doubtful[] {
  const { facts, mean, recording } = check.recording ?? {};
  if (!facts || !mean || !recording) return [];
  const weak: string[] = [];
  if (mean.quality !== 'fixed') weak.push(`no epoch fixed, the best ${mean.quality}.`);
  else if (facts.fixedShare < 1)
    weak.push(`${mean.epochs} of ${facts.epochs} epochs fixed (${showNumber(100 * facts.fixedShare, 0)} %).`);
  if (facts.age && facts.age.most > OLD)
    weak.push(`corrections up to ${showNumber(facts.age.most, 0)} s old.`);
  const damaged =
    facts.failedChecksums > 0 ? [`${facts.failedChecksums} sentences with a wrong checksum, not used.`] : [];
  const sentences = [...weak, ...damaged];
  if (sentences.length === 0) return [];
  const severity = weak.length > 0 ? 'warning' : 'information';
  return [{ place: recording.file.place, check, severity, sentences }];
}
