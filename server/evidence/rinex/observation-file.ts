/**
 * Reads a RINEX observation file of version 2, 3 or 4, plain, gzip or compact, as its bytes come.
 *
 * Source: RINEX 2.11, 3.05 and 4.00. GPS and Galileo are kept, other systems counted.
 */
import { problemList } from '../problems.ts';
import { readRinexHeader } from '../rinex-header.ts';
import { body, typesReader, type BodyLine } from './body.ts';
import { bodyOf2 } from './body-2.ts';
import { bodyOf3 } from './body-3.ts';
import { compactBody } from './body-compact.ts';
import { byteLines } from './byte-lines.ts';
import { textIn } from './fields.ts';
import { inflating } from './inflating.ts';
import type { RawObservations } from './raw-observations.ts';

export interface ObservationReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => RawObservations;
}

/** Header lines that are kept; a header beyond that is none. */
const MOST_HEADER = 2000;

export function observationReader(): ObservationReader {
  const problems = problemList();
  const header: string[] = [];
  let scale = 'GPS';
  let leapSeconds = Number.NaN;
  let compact: 1 | 3 | null = null;
  let version = 0;
  let foreign = false;
  let takeBody: BodyLine | null = null;
  const self = body(problems, () => toGps(scale, leapSeconds));
  const readTypes = typesReader(self.types);

  const headerLine = (line: string, number: number) => {
    const label = line.slice(60, 80).trim();
    if (number === 1 && !/^(CRINEX VERS {3}|RINEX VERSION )\/ TYPE$/.test(label)) {
      foreign = true;
      header.push(line.slice(0, 80));
      return;
    }
    header.push(line.slice(0, 80));
    readTypes(label, line);
    if (label === 'CRINEX VERS   / TYPE') compact = line.trimStart().startsWith('1') ? 1 : 3;
    if (label === 'RINEX VERSION / TYPE') version = Number(line.slice(0, 9));
    if (label === 'TIME OF FIRST OBS') scale = line.slice(48, 51).trim() || 'GPS';
    if (label === 'LEAP SECONDS') leapSeconds = Number(line.slice(0, 6));
    if (label === 'END OF HEADER') {
      self.replan();
      const old = version < 3;
      takeBody = compact ? compactBody(self, old ? 1 : 3) : old ? bodyOf2(self) : bodyOf3(self);
    }
    if (header.length > MOST_HEADER) foreign = true;
  };
  const lines = byteLines((bytes, from, to, number) => {
    if (takeBody) takeBody(bytes, from, to, number);
    else if (!foreign) headerLine(textIn(bytes, from, Math.min(to, from + 200)), number);
  });
  const input = inflating(lines.push, (sentence) => problems.add({ sentence }));
  return {
    push: input.push,
    finish() {
      input.finish();
      lines.finish();
      const facts = readRinexHeader(new TextEncoder().encode(header.map((line) => `${line}\n`).join('')));
      for (const problem of facts.problems) problems.add(problem);
      if (Number.isNaN(toGps(scale, leapSeconds)))
        problems.add({ sentence: `Times on the scale "${scale}" cannot be set on GPS time; none are used.` });
      const taken = self.columns.taken();
      if (takeBody && taken.times.length === 0)
        problems.add({ sentence: 'No epoch with observations of GPS or Galileo.' });
      return {
        header: facts,
        ...taken,
        second: { ...self.second },
        skipped: { ...self.skipped },
        problems: problems.listed(),
      };
    },
  };
}

/** What to add to the file's own time for GPS time; RINEX counts Galileo in GPS weeks. BeiDou time is 14 s behind. */
function toGps(scale: string, leapSeconds: number): number {
  if (scale === 'GPS' || scale === 'GAL' || scale === 'QZS' || scale === 'IRN') return 0;
  if (scale === 'BDT') return 14;
  return scale === 'GLO' || scale === 'UTC' ? leapSeconds : Number.NaN;
}
