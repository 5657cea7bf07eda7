/**
 * Formats a session by changing blanks only: no letter, line end, empty line or final newline is added or taken away.
 *
 * Entries start in the first column; details stand two blanks in, their values in a column of their own unless a long
 * word reaches beyond it. Elsewhere one blank stands where blanks stood, and none where none did, so that a blank that
 * means something keeps its meaning. Rows keep the blanks between their cells, comments and texts those inside them.
 * A line with a character that nobody sees among its blanks stays as typed: moved, it would stand beside another word.
 * Comments that stood in one column of an entry go on doing so, at least two blanks behind the longest line.
 */
import type { IToken } from 'chevrotain';
import { hasUnseen, isBlank, isUnseen } from './characters.ts';
import { entryAt, openDocument, opensEntry, type Document } from './document.ts';
import { endOf } from './numerals.ts';
import { Comment, LineEnd, tokenize, Word } from './tokens.ts';
import type { Entry, Span } from './tree.ts';
import { fullSpan, visibleOf } from './visible.ts';
import { detailWord } from './vocabulary.ts';

/** A change of the characters from `start` to `end` of a text. */
export interface TextEdit extends Span {
  readonly text: string;
}

export function format(text: string): string {
  const pieces: string[] = [];
  let kept = 0;
  for (const edit of formatEdits(openDocument('', text))) {
    pieces.push(text.slice(kept, edit.start), edit.text);
    kept = edit.end;
  }
  return pieces.join('') + text.slice(kept);
}

/** What formatting would change, in the order of the text; nothing where it is formatted already. Of a stretch: its entries. */
export function formatEdits(document: Document, start = 0, end = document.length): TextEdit[] {
  const first = entryAt(document.starts, start);
  const last = entryAt(document.starts, end);
  return document.entries.slice(first, last + 1).flatMap((entry, index) => {
    const offset = document.starts[first + index] ?? 0;
    return entryEdits(entry).map(({ start, end, text }) => ({
      start: start + offset,
      end: end + offset,
      text,
    }));
  });
}

const INDENT = 2;
/** A detail's word with the blanks behind it; the value starts in the column after. */
const WORD_WIDTH = 12;
const BEFORE_COMMENT = 2;

/** A token where it stands in the full text. */
interface Typed extends Span {
  readonly token: IToken;
}
interface TypedLine extends Span {
  readonly tokens: readonly Typed[];
}

/** The new text between two tokens, behind what nobody sees. */
interface LaidLine {
  readonly gaps: readonly TextEdit[];
  readonly comment: TrailingComment | null;
  readonly end: TextEdit;
}
interface TrailingComment {
  readonly gap: Span;
  /** Where it was typed, counted from the line's start. */
  readonly column: number;
  /** The formatted line before its blanks. */
  readonly width: number;
}

function entryEdits({ text }: Entry): TextEdit[] {
  const laid = typedLines(text).flatMap(
    (line, index) => lay(line, text, index === 0 && opensEntry(text, 0)) ?? [],
  );
  const columns = commentColumns(laid);
  const edits: TextEdit[] = [];
  const add = (gap: TextEdit) => {
    if (isChange(gap, text)) edits.push(gap);
  };
  for (const { gaps, comment, end } of laid) {
    gaps.forEach(add);
    if (comment) add(commentGap(comment, columns));
    add(end);
  }
  return edits;
}

function isChange({ start, end, text: wanted }: TextEdit, text: string): boolean {
  // With nothing between them, a CR and an LF would become the end of one line.
  const joinsLineEnds = text[start - 1] === '\r' && text[end] === '\n';
  return wanted !== text.slice(start, end) && !joinsLineEnds;
}

/** Everything but the blanks before a trailing comment, which depend on the other lines; null for a line to be left alone. */
function lay({ start, end, tokens }: TypedLine, text: string, opens: boolean): LaidLine | null {
  const gaps: TextEdit[] = [];
  let comment: TrailingComment | null = null;
  let width = 0;
  // The mark of the byte order is the file's, and no part of its first line.
  const from = start === 0 && text.startsWith('\ufeff') ? 1 : start;
  let at = from;
  for (const [index, typed] of tokens.entries()) {
    const between = text.slice(at, typed.start);
    if (hasUnseen(between)) return null;
    if (index > 0 && isComment(typed))
      comment = { gap: { start: at, end: typed.start }, column: typed.start - from, width };
    else {
      const wanted = index === 0 ? indent(typed, between, opens) : parted(tokens, index, between, opens);
      gaps.push({ start: at, end: typed.start, text: wanted });
      width += wanted.length;
    }
    at = behindUnseen(text, typed.end);
    width += at - typed.start;
  }
  if (hasUnseen(text.slice(at, end))) return null;
  return { gaps, comment, end: { start: at, end, text: '' } };
}

/** What nobody sees stays with what it stands directly behind. */
function behindUnseen(text: string, start: number): number {
  let at = start;
  while (isUnseen(text[at])) at++;
  return at;
}

function indent(first: Typed, typed: string, opens: boolean): string {
  const staysOut = opens || (isComment(first) && !hasBlank(typed));
  return staysOut ? '' : ' '.repeat(INDENT);
}

/** What parts a token from the one before it. */
function parted(tokens: readonly Typed[], index: number, typed: string, opens: boolean): string {
  if (!hasBlank(typed)) return typed;
  const first = tokens[0]?.token;
  const word = !opens && first?.tokenType === Word ? first.image : '';
  if (word !== '' && index === 1) return ' '.repeat(Math.max(1, WORD_WIDTH - word.length));
  return detailWord(word)?.word === 'row' ? typed : ' ';
}

/** For each column where comments of an entry stood, the column where they belong; it comes out the same a second time. */
function commentColumns(laid: readonly LaidLine[]): Map<number, number> {
  const widths = new Map<number, { longest: number; blanks: number }>();
  for (const { comment } of laid) {
    if (!comment) continue;
    const { gap, column, width } = comment;
    const blanks = Math.max(BEFORE_COMMENT, gap.end - gap.start);
    const known = widths.get(column) ?? { longest: 0, blanks };
    widths.set(column, { longest: Math.max(known.longest, width), blanks: Math.min(known.blanks, blanks) });
  }
  return new Map([...widths].map(([column, { longest, blanks }]) => [column, longest + blanks]));
}

function commentGap({ gap, column, width }: TrailingComment, columns: ReadonlyMap<number, number>): TextEdit {
  const blanks = (columns.get(column) ?? width + BEFORE_COMMENT) - width;
  return { ...gap, text: ' '.repeat(blanks) };
}

/** All lines of an entry, those without tokens too, each without its line end. */
function typedLines(text: string): TypedLine[] {
  const visible = visibleOf(text);
  const lines: TypedLine[] = [];
  let start = 0;
  let tokens: Typed[] = [];
  for (const next of tokenize(visible.text)) {
    const place = fullSpan({ start: next.startOffset, end: endOf(next) }, visible);
    if (next.tokenType !== LineEnd) tokens.push({ ...place, token: next });
    else {
      lines.push({ start, end: place.start, tokens });
      start = place.end;
      tokens = [];
    }
  }
  lines.push({ start, end: text.length, tokens });
  return lines;
}

const isComment = (typed: Typed) => typed.token.tokenType === Comment;

function hasBlank(typed: string): boolean {
  for (let at = 0; at < typed.length; at++) if (isBlank(typed[at])) return true;
  return false;
}
