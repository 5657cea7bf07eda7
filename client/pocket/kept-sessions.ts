/** The sessions that the pocket page keeps in the browser's own storage. */

const KEY = 'tribrach.sessions';

export interface Kept {
  readonly texts: ReadonlyMap<string, string>;
  readonly current: string;
}

/** What was kept, or null where there is nothing, or nothing that can be read. */
export function loadKept(storage: Storage): Kept | null {
  try {
    const data: unknown = JSON.parse(storage.getItem(KEY) ?? 'null');
    if (typeof data !== 'object' || data === null || !('texts' in data) || !Array.isArray(data.texts))
      return null;
    const pairs = data.texts.filter(isPair);
    const [first] = pairs;
    if (!first) return null;
    const texts = new Map(pairs);
    const current = 'current' in data && typeof data.current === 'string' ? data.current : first[0];
    return { texts, current: texts.has(current) ? current : first[0] };
  } catch {
    return null;
  }
}

/** False where the browser refuses to keep it, so that the page can say so. */
export function saveKept(storage: Storage, { texts, current }: Kept): boolean {
  try {
    storage.setItem(KEY, JSON.stringify({ texts: [...texts], current }));
    return true;
  } catch {
    return false;
  }
}

const isPair = (pair: unknown): pair is [string, string] =>
  Array.isArray(pair) && pair.length === 2 && typeof pair[0] === 'string' && typeof pair[1] === 'string';
