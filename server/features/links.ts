/** Files that a session names, each where its name stands. */
import type { Document } from '../../grammar/document.ts';
import type { Text } from '../../grammar/tree.ts';
import { detailWord } from '../../grammar/vocabulary.ts';
import { resolvePath } from '../session/files.ts';
import { linesOf, type Stretch } from './cursor.ts';

export interface FileLink {
  readonly at: Stretch;
  /** Seen from where the session lies. */
  readonly path: string;
}

/** Words whose first text is the name of a file. */
const NAMING: ReadonlySet<string> = new Set([
  'use',
  'points',
  'geoid',
  'calibration',
  'captured',
  'raw-log',
  'ephemerides',
  'photo',
  'observed',
]);

export function linksIn({ path, entries, starts }: Document): FileLink[] {
  return entries.flatMap((entry, index) =>
    linesOf(entry).flatMap((line): FileLink[] => {
      const word = line.word && (detailWord(line.word.word)?.word ?? line.word.word.toLowerCase());
      const text = line.items.find((item): item is Text => item.kind === 'text');
      if (!word || !text || !NAMING.has(word) || text.text === '') return [];
      const start = starts[index] ?? 0;
      // The quotation marks stay outside of what is underlined.
      const at = { path, start: start + text.start + 1, end: start + Math.max(text.start + 1, text.end - 1) };
      return [{ at, path: resolvePath(path, text.text) }];
    }),
  );
}
