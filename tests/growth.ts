/** How much more work a four times longer text is, as a ratio of the shortest of several times each. */

/**
 * Against four runs with the short text, so that both read as much and leave as much behind.
 *
 * @param most enough rounds have been tried once the ratio is below this, or well above
 */
export function growth(
  texts: readonly [string, string],
  most: number,
  work: (text: string) => unknown,
): number {
  const times = timesToTell(work, texts[0]);
  let [four, long] = [Infinity, Infinity];
  for (let round = 0; round < 30; round++) {
    four = Math.min(four, elapsed(work, texts[0], 4 * times));
    long = Math.min(long, elapsed(work, texts[1], times));
    const ratio = (4 * long) / four;
    if ((round >= 1 && ratio < most) || (round >= 9 && ratio > 1.2 * most)) break;
  }
  return (4 * long) / four;
}

/** Microseconds: shorter work is done several times over, so that it can be told from the clock's own grain. */
const TELLING = 2_000;

function timesToTell(work: (text: string) => unknown, text: string): number {
  for (let times = 1; ; times *= 4) if (times >= 256 || elapsed(work, text, times) >= TELLING) return times;
}

/**
 * Microseconds of this process's own work: what else the machine is busy with does not count. How they are shared out
 * between the program and the system is a guess of the kernel's; the sum is not.
 */
function elapsed(work: (text: string) => unknown, text: string, times: number): number {
  const before = process.cpuUsage();
  for (let time = 0; time < times; time++) work(text);
  const { user, system } = process.cpuUsage(before);
  return Math.max(1, user + system);
}
