/** How much more work a longer text is, as a ratio of the shortest of several times each. */

/** @param most enough rounds have been tried once the ratio is below this */
export function growth(texts: readonly [string, string], most: number, work: (text: string) => void): number {
  let [short, long] = [Infinity, Infinity];
  for (let round = 0; round < 20; round++) {
    short = Math.min(short, elapsed(work, texts[0]));
    long = Math.min(long, elapsed(work, texts[1]));
    if (round >= 1 && long / short < most) break;
  }
  return long / short;
}

/** Microseconds of this process's own work: what else the machine is busy with does not count. */
function elapsed(work: (text: string) => void, text: string): number {
  const before = process.cpuUsage();
  work(text);
  return process.cpuUsage(before).user;
}
