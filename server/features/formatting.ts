/** The changes of blanks that lay a session out, for the whole text or the entries that a stretch touches. */
import type { Document } from '../../grammar/document.ts';
import { formatEdits, type TextEdit } from '../../grammar/printer.ts';

export function formattingOf(document: Document, start = 0, end = document.length): TextEdit[] {
  return formatEdits(document).filter((edit) => start <= edit.end && edit.start <= end);
}
