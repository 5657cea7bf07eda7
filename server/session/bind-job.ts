/** Reads `job` and `use`. */
import { hole, type Maybe } from '../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Named } from './coordinates.ts';
import type { ClockOffset, Job, Use } from './entries.ts';
import type { LineReader } from './line-reader.ts';
import { takeDate } from './moments.ts';
import { takeAccuracy, takeGeoid, takeLimits, takeNamed, takeQuoted } from './phrases.ts';
import { takeQuantity } from './quantities.ts';

export function bindJob({ header, details, base }: Source): Job {
  const title = header.nameOrText()?.name ?? '';
  header.finish();
  const datum = details.one('datum', takeDatum, ['by']);
  return {
    ...base,
    kind: 'job',
    title,
    language: details.one('language', takeNamed),
    date: details.one('date', (line) => takeDate(line, 'date of the job')),
    clock: details.one('clock', takeClock),
    observer: details.one('observer', takeQuoted),
    grid: details.one('grid', takeNamed),
    datum: datum?.datum ?? null,
    datumBy: datum?.by ?? null,
    vertical: details.one('vertical', takeQuoted),
    geoid: details.one('geoid', takeGeoid),
    confidence: details.one('confidence', (line) => takeQuantity(line, 'ratio', 'confidence')),
    tolerance: details.one('tolerance', (line) => takeAccuracy(line, 'tolerance'), [
      'horizontal',
      'vertical',
    ]),
    limits: details.one('limits', takeLimits),
  };
}

/** `EPSG:4258`, and `by EPSG:1314` where the way to it must be named. */
function takeDatum(reader: LineReader): { readonly datum: Named | null; readonly by: Named | null } {
  const datum = takeNamed(reader);
  return { datum, by: reader.word('by') ? takeNamed(reader) : null };
}

export function bindUse({ header, base }: Source): Use {
  const path = takeQuoted(header);
  header.finish();
  return { ...base, kind: 'use', path };
}

/** `UTC`, `UTC+01:00` or `UTC-3:30`: how far the clock is ahead of UTC. */
function takeClock(reader: LineReader): Maybe<ClockOffset> {
  const named = takeNamed(reader);
  if (!named) return hole('the clock is not said', reader.place);
  const match = /^UTC(?:([+\u2212-])(\d{1,2})(?::?(\d{2}))?)?$/i.exec(named.name);
  const hours = Number(match?.[2] ?? 0);
  const minutes = Number(match?.[3] ?? 0);
  if (!match || hours > 14 || minutes > 59) {
    reader.remark({
      about: 'value-range',
      place: named.place,
      word: 'clock',
      typed: named.name,
      allowed: 'UTC, or UTC with an offset such as UTC+01:00',
    });
    return hole('the clock cannot be read', named.place);
  }
  const size = hours * 3600 + minutes * 60;
  return { seconds: match[1] && match[1] !== '+' ? -size : size, place: named.place };
}
