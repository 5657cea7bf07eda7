/** What sessions must say where files that they name are called otherwise, or lie elsewhere, or they themselves do. */
import type { Document } from '../../grammar/document.ts';
import { linksIn } from './links.ts';
import type { TextChange } from './trial.ts';

export interface Move {
  /** Paths of a file, or of a folder with everything below it. */
  readonly from: string;
  readonly to: string;
}

/** The names of files inside quotation marks, each changed where it would lead elsewhere after the moves. */
export function namesAfter(documents: readonly Document[], moves: readonly Move[]): TextChange[] {
  return documents.flatMap((document) =>
    linksIn(document).flatMap(({ at, path }) => {
      const typed = document.text.slice(at.start, at.end);
      const home = moved(document.path, moves);
      const target = moved(path, moves);
      if ((home === document.path && target === path) || typed.includes('"')) return [];
      const text = typed.startsWith('/') ? target : seenFrom(home, target);
      return text === typed ? [] : [{ at, text: text.replaceAll('"', '""') }];
    }),
  );
}

function moved(path: string, moves: readonly Move[]): string {
  const move = moves.find(({ from }) => path === from || path.startsWith(`${from}/`));
  return move ? move.to + path.slice(move.from.length) : path;
}

/** `../marks.trib`, as one file names the other. */
function seenFrom(own: string, other: string): string {
  const folders = own.split('/').slice(0, -1);
  const parts = other.split('/');
  let shared = 0;
  while (shared < folders.length && shared < parts.length - 1 && folders[shared] === parts[shared]) shared++;
  return [...folders.slice(shared).map(() => '..'), ...parts.slice(shared)].join('/');
}
