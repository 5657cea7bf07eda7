/** The changes of blanks that lay a session out: the whole text, the entries that a stretch touches, or the line just typed. */
import type { Document } from '../../grammar/document.ts';
import { formatEdits, type TextEdit } from '../../grammar/printer.ts';

export function formattingOf(document: Document, start = 0, end = document.length): TextEdit[] {
  return formatEdits(document, start, end).filter((edit) => start <= edit.end && edit.start <= end);
}

/** Behind the end of a line: the blanks of that line, and none where one is typing now. */
export function formattingAbove(document: Document, offset: number): TextEdit[] {
  const { text } = document;
  const end = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1));
  if (end < 0) return [];
  const before = text[end] === '\n' && text[end - 1] === '\r' ? end - 1 : end;
  const start = Math.max(text.lastIndexOf('\n', before - 1), text.lastIndexOf('\r', before - 1)) + 1;
  return formattingOf(document, start, before).filter((edit) => start <= edit.start && edit.end <= before);
}
