/** Words and names that a typing slip may have meant. */

/** Candidates at most two letters away (one for short names), nearest first, at most three. */
export function nearest(typed: string, candidates: Iterable<string>): string[] {
  const wanted = folded(typed);
  const most = wanted.length <= 5 ? 1 : 2;
  const found: { candidate: string; distance: number }[] = [];
  for (const candidate of candidates) {
    if (candidate === typed) continue;
    const distance = distanceWithin(wanted, folded(candidate), most);
    if (distance <= most) found.push({ candidate, distance });
  }
  // What differs in look-alikes only, or in one letter, leaves no room for what is further away.
  const least = found.reduce((smallest, { distance }) => Math.min(smallest, distance), Infinity);
  return found
    .filter(({ distance }) => distance <= Math.max(least, 1) && (least > 0 || distance === 0))
    .sort((one, other) => one.distance - other.distance || (one.candidate < other.candidate ? -1 : 1))
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

/** Case, look-alike dashes, O and 0, l, I and 1 count as the same. */
function folded(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/o/g, '0')
    .replace(/[il]/g, '1');
}

/** Letters inserted, left out, replaced or swapped with their neighbour; gives up beyond `most`. */
function distanceWithin(one: string, other: string, most: number): number {
  if (Math.abs(one.length - other.length) > most || one.length > 64) return most + 1;
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      let best = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      next.push(best);
    }
    if (Math.min(...next) > most) return most + 1;
    before = row;
    row = next;
  }
  return row[other.length] ?? most + 1;
}
