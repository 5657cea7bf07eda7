/** What nobody wrote down and the verdicts of the day rest on all the same: receivers, the lean of a pole, limits of quality. */
import { EPOCHS_LIMIT, PDOP_LIMIT, SATELLITES_LIMIT } from '../derive/checks/quality.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { Job } from '../session/entries.ts';

/** `Assumed: receivers 8 mm + 1 ppm, 15 mm + 1 ppm up; a pole that stands to 2′`; null where nothing passes. */
export function assumedForPasses(checks: readonly CheckValues[], job: Job | null): string | null {
  const passing = checks.filter(({ verdict }) => verdict === 'passes');
  if (passing.length === 0) return null;
  const parts = [...receivers(passing), ...poles(passing), ...limits(passing, job)];
  return parts.length === 0 ? null : `Assumed for the checks that pass: ${parts.join('; ')}.`;
}

function receivers(passing: readonly CheckValues[]): string[] {
  const silent = (direction: 'horizontal' | 'vertical') =>
    passing.some(({ rover }) => !rover?.uncertainty?.[direction]);
  const parts = [
    ...(silent('horizontal') ? ['8 mm + 1 ppm'] : []),
    ...(silent('vertical') ? ['15 mm + 1 ppm up'] : []),
  ];
  return parts.length === 0 ? [] : [`receivers good to ${parts.join(', ')}`];
}

function poles(passing: readonly CheckValues[]): string[] {
  const all = passing.map(({ check, rover }) => check.pole ?? rover?.pole ?? null);
  return [
    ...(all.some((pole) => !pole?.held) ? ['a pole on a bipod, upright to 2′'] : []),
    ...(all.some((pole) => pole?.held) ? ['a pole held by hand, upright to 8′'] : []),
    ...(all.includes(null) ? ['2 m long'] : []),
  ];
}

/** A limit that decided nothing, since the quality is not noted, is one, too: fixed is taken for granted. */
function limits(passing: readonly CheckValues[], job: Job | null): string[] {
  const set = job?.limits ?? null;
  const noted = passing.flatMap(({ quality }) => quality ?? []);
  const usual = [
    ...(!set?.pdop && noted.some(({ pdop }) => pdop) ? [`pdop at most ${PDOP_LIMIT.value}`] : []),
    ...(!set?.epochs && noted.some(({ epochs }) => epochs) ? [`at least ${EPOCHS_LIMIT.value} epochs`] : []),
    ...(!set?.satellites && noted.some(({ satellites }) => satellites)
      ? [`at least ${SATELLITES_LIMIT.value} satellites`]
      : []),
  ];
  const silent = passing.filter(({ quality }) => !quality?.solution).map(({ check }) => check.name);
  const fixed =
    silent.length === 0
      ? []
      : [`a fixed solution for ${silent.slice(0, 3).join(', ')}${silent.length > 3 ? ' and others' : ''}`];
  return [...usual, ...fixed];
}
