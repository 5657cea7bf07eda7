/** The rates of every slip over many days of the counted series, of days with no listed slip and of clean ones, as a table. */
import { SLIP_NAMES } from '../simulation/planted.ts';
import { binomialInterval, ratesBehind } from './binomial.ts';
import { cleanDays, type CleanDays } from './clean-days.ts';
import { falselyClaimed, falselyNamed, ratesOf, type Rates } from './rates.ts';

/** What is counted in one go: a slip by its name, or days without one. */
export type Part = (typeof PARTS)[number];
const SLIPS = SLIP_NAMES.filter((name) => name !== 'unlisted');
export const PARTS = [...SLIPS, 'no listed slip', 'heights alone', 'clean days'] as const;

type Counted = Rates | { readonly named: number } | { readonly claimed: number } | CleanDays;

export function counted(part: Part, draws: number): Counted {
  if (part === 'no listed slip') return { named: falselyNamed(draws, 'counted') };
  if (part === 'heights alone') return { claimed: falselyClaimed(draws, 'counted') };
  if (part === 'clean days') return cleanDays(draws, 'counted');
  return ratesOf(part, draws, 'counted');
}

const HEAD = [
  '| slip | days | told apart by more than 4 σ | first | not told apart | held | of these beyond 5.1 σ | held |',
  '|---|--:|--:|--:|--:|--:|--:|--:|',
];

/** Of the parts that are there; missing ones are left out. */
export function tableOf(parts: Readonly<Partial<Record<Part, Counted>>>, draws: number): string {
  const rates = SLIPS.flatMap((slip) => {
    const found = parts[slip];
    return found && 'distinguishable' in found ? [{ slip: slip as string, ...found }] : [];
  });
  const total = (of: (rate: Rates) => number) => rates.reduce((sum, rate) => sum + of(rate), 0);
  const all = {
    slip: '**all**',
    draws: total((rate) => rate.draws),
    distinguishable: total((rate) => rate.distinguishable),
    first: total((rate) => rate.first),
    alike: total((rate) => rate.alike),
    held: total((rate) => rate.held),
    plain: total((rate) => rate.plain),
    plainHeld: total((rate) => rate.plainHeld),
  };
  const rows = [...rates, all].map(
    ({ slip, draws: days, distinguishable, first, alike, held, plain, plainHeld }) =>
      `| ${[
        slip,
        days,
        distinguishable,
        share(first, distinguishable),
        alike,
        share(held, alike),
        plain,
        share(plainHeld, plain),
      ].join(' | ')} |`,
  );
  return [...HEAD, ...rows, '', ...others(parts, draws)].join('\n');
}

function others(parts: Readonly<Partial<Record<Part, Counted>>>, draws: number): string[] {
  const unlisted = parts['no listed slip'];
  const clean = parts['clean days'];
  const lines: string[] = [];
  if (unlisted && 'named' in unlisted)
    lines.push(
      `- Days with an error of the base that is no listed slip: ${String(draws - unlisted.named)} of ${String(draws)} are told no slip, ${share(draws - unlisted.named, draws)}.`,
    );
  const heights = parts['heights alone'];
  if (heights && 'claimed' in heights)
    lines.push(
      `- Days on which heights alone are wrong, by 0.05 to 3 m and no listed slip: ${String(heights.claimed)} of ${String(draws)} are told a slip that excludes all else, ${share(heights.claimed, draws)}.`,
    );
  if (clean && 'judged' in clean) {
    const { least, most } = binomialInterval(clean.judged, 0.05);
    lines.push(
      `- Clean days: ${String(clean.surprising)} of ${String(clean.judged)} components surprise, where 95 % confidence lets ${least.toFixed(0)} to ${most.toFixed(0)} do so in 99 of 100 runs; ${String(clean.errors.length)} are called wrong.`,
    );
  }
  return lines;
}

/** `97.4 % (96.1–98.3)`: the share, and the rates that it is compatible with at 95 %. */
function share(part: number, whole: number): string {
  if (whole === 0) return '–';
  const percent = (rate: number) => (100 * rate).toFixed(1);
  const { least, most } = ratesBehind(part, whole);
  return `${percent(part / whole)} % (${percent(least)}–${percent(most)})`;
}
