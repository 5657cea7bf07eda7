/**
 * NMEA 0183 logs: where the antenna was, how well it was known, and how much it scattered, over a span of time.
 *
 * Reads GGA, GNS, GST, RMC and ZDA of any talker. The position is that of the antenna, not of the ground.
 */
import { lineReader } from '../lines.ts';
import type { EvidenceProblem } from '../problems.ts';
import { clipped, problemList } from '../problems.ts';
import { utcClock } from './clock.ts';
import type { Gathered } from './epoch.ts';
import { gather } from './epoch.ts';
import type { OccupationFacts, TimeWindow } from './occupation.ts';
import { occupation } from './occupation.ts';
import { dayOfRmc, dayOfZda, secondsIn, sentenceIn } from './sentence.ts';

export interface NmeaFacts extends OccupationFacts {
  /** Sentences that were read, in the whole file. */
  readonly sentences: number;
  readonly failedChecksums: number;
  readonly talkers: readonly string[];
  readonly dated: boolean;
  readonly problems: readonly EvidenceProblem[];
}

export interface NmeaReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => NmeaFacts;
}

/** Reads a log chunk by chunk; what it keeps does not grow with the length of the log. */
export function nmeaReader({ window }: { readonly window?: TimeWindow }): NmeaReader {
  const problems = problemList();
  const talkers = new Set<string>();
  const clock = utcClock();
  const summary = occupation(window);
  let sentences = 0;
  let failedChecksums = 0;
  let gathered: Gathered | undefined;

  const flush = () => {
    if (gathered) summary.add(gathered, clock.dated());
    gathered = undefined;
  };
  const takeLine = (line: string, number: number) => {
    const found = sentenceIn(line);
    if (found === undefined) return;
    if (found === 'damaged') {
      failedChecksums += 1;
      problems.add({
        sentence: 'The checksum of this sentence is wrong or missing; it is not used.',
        line: number,
      });
      return;
    }
    const { talker, type, fields } = found;
    if (!readTypes.has(type)) return;
    sentences += 1;
    talkers.add(talker);
    const timeOfDay = secondsIn(fields[0]);
    if (timeOfDay === undefined) {
      if (fields[0])
        problems.add({ sentence: `This ${type} has no time of day: "${clipped(fields[0])}".`, line: number });
      return;
    }
    const day = type === 'RMC' ? dayOfRmc(fields) : type === 'ZDA' ? dayOfZda(fields) : undefined;
    if (gathered && type !== 'ZDA' && isAnother(gathered, timeOfDay, day)) flush();
    const moved = clock.set(timeOfDay, day);
    if (moved.shift !== 0) {
      summary.shift(moved.shift);
      if (gathered) gathered.time += moved.shift;
    }
    if (moved.back) {
      problems.add({ sentence: 'The time goes back here: logs may have been joined.', line: number });
    }
    if (type === 'ZDA') return;
    gathered ??= { timeOfDay, time: clock.now() };
    gathered.time = clock.now();
    if (day !== undefined) gathered.day = day;
    const problem = gather(gathered, type, fields);
    if (problem) problems.add({ sentence: problem, line: number });
  };
  const reader = lineReader('utf-8', takeLine, 1024);

  return {
    push: reader.push,
    finish() {
      reader.finish();
      flush();
      if (sentences === 0) problems.add({ sentence: 'There is no sentence with a time in this file.' });
      for (const sentence of summary.problems()) problems.add({ sentence });
      return {
        ...{ sentences, failedChecksums, talkers: [...talkers].sort(), dated: clock.dated() },
        ...summary.facts(),
        problems: problems.listed(),
      };
    },
  };
}

const readTypes = new Set(['GGA', 'GNS', 'GST', 'RMC', 'ZDA']);

/** Sentences of one time of day belong together, unless two dates tell them apart. */
function isAnother(gathered: Gathered, timeOfDay: number, day: number | undefined) {
  return (
    gathered.timeOfDay !== timeOfDay ||
    (day !== undefined && gathered.day !== undefined && day !== gathered.day)
  );
}
