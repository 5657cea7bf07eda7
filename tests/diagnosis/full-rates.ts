/** Prints the rates of every slip over as many draws as are asked for, and of days with no listed slip at all. */
import { SLIP_NAMES } from '../simulation/planted.ts';
import { cleanDays } from './clean-days.ts';
import { falselyNamed, ratesOf } from './rates.ts';

/** @param only names of slips; all where there is none */
export function printRates(draws: number, only: readonly string[], print: (line: string) => void): void {
  const wanted = SLIP_NAMES.filter(
    (name) => name !== 'unlisted' && (only.length === 0 || only.includes(name)),
  );
  let [distinguishable, first, alike, held] = [0, 0, 0, 0];
  for (const slip of wanted) {
    const rates = ratesOf(slip, draws);
    print(
      `${slip.padEnd(30)} ${String(rates.draws)} draws; distinguishable ${share(rates.first, rates.distinguishable)} first; alike ${share(rates.held, rates.alike)} held`,
    );
    for (const line of rates.missed.slice(0, 3)) print(`    ${line}`);
    distinguishable += rates.distinguishable;
    first += rates.first;
    alike += rates.alike;
    held += rates.held;
  }
  print(`all: distinguishable ${share(first, distinguishable)} first; alike ${share(held, alike)} held`);
  if (only.length > 0) return;
  const named = falselyNamed(draws);
  print(`no listed slip: ${share(draws - named, draws)} answered "none" or "nothing"`);
  const { judged, surprising, errors } = cleanDays(draws);
  print(
    `clean days: ${share(surprising, judged)} of components surprise; called wrong: ${String(errors.length)}`,
  );
  for (const line of errors.slice(0, 5)) print(`    ${line}`);
}

const share = (part: number, whole: number) =>
  whole === 0 ? '0' : `${String(part)} of ${String(whole)} (${((100 * part) / whole).toFixed(1)} %)`;
