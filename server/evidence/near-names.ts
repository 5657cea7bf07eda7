/** The names nearest to one that was not found. */

/** At most `most` of the names, those that take the fewest changes of a character first, and none beyond `farthest`. */
export function nearNames(
  wanted: string,
  names: Iterable<string>,
  farthest = 3,
  most = 5,
): readonly string[] {
  const measured: { name: string; distance: number }[] = [];
  for (const name of names) {
    if (Math.abs(name.length - wanted.length) > farthest) continue;
    const distance = editDistance(wanted, name);
    if (distance <= farthest) measured.push({ name, distance });
  }
  return measured
    .sort((one, other) => one.distance - other.distance || (one.name < other.name ? -1 : 1))
    .slice(0, most)
    .map(({ name }) => name);
}

/** Levenshtein's distance: insertions, deletions and changes of one character. */
function editDistance(first: string, second: string): number {
  let row = Array.from({ length: second.length + 1 }, (_, index) => index);
  for (let i = 1; i <= first.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= second.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (first[i - 1] === second[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[second.length] ?? 0;
}
