/** How much longer work takes on a longer text, as a ratio of the shortest times, so that a busy machine does not count. */

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

function elapsed(work: (text: string) => void, text: string): number {
  const start = performance.now();
  work(text);
  return performance.now() - start;
}
