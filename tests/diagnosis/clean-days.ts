/** Days without any slip: how often a right check surprises, and whether anything is called an error. */
import { openDocument } from '../../grammar/document.ts';
import { inspect } from '../../server/inspect.ts';
import type { Files } from '../../server/session/files.ts';
import { drawScene, liveDay } from '../simulation/day.ts';
import { geoidAsGtx } from '../simulation/geoid.ts';
import { sessionText } from '../simulation/session-text.ts';
import { seedOf, type Series } from './series.ts';

export interface CleanDays {
  /** Components of checks that could have surprised: horizontally and in height. */
  readonly judged: number;
  readonly surprising: number;
  /** What was called an error, with the day's number. */
  readonly errors: readonly string[];
}

/** One check a day, so that no two share a mark, a tape or a sky. */
export function cleanDays(days: number, series: Series): CleanDays {
  let judged = 0;
  let surprising = 0;
  const errors: string[] = [];
  for (let number = 0; number < days; number++) {
    const scene = drawScene({
      seed: seedOf(series, 'clean', number),
      points: 0,
      checkMarks: 1,
      rounds: ['OPEN'],
    });
    const text = sessionText(liveDay(scene), { geoid: 'region.gtx', points: false });
    const grid = geoidAsGtx(scene.geoid);
    const files: Files = { document: () => ({ refused: 'there is none' }), bytes: () => grid };
    const { findings, derivation } = inspect(openDocument('day.trib', text), files);
    judged += 2 * derivation.checks.length;
    surprising += findings.filter(({ code }) => code === 'check/surprising').length;
    for (const { code, severity, message } of findings)
      if (severity === 'error') errors.push(`${String(number)} ${code}: ${message}`);
  }
  return { judged, surprising, errors };
}
