/** The language: any text is a tree that gives it back, edited or opened afresh, and formatting changes blanks only. */
import fc from 'fast-check';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { cellsOf } from '../../grammar/cells.ts';
import { isBlank } from '../../grammar/characters.ts';
import { editDocument, openDocument, type Document } from '../../grammar/document.ts';
import { lineCount, offsetOf, positionOf } from '../../grammar/lines.ts';
import { format, formatEdits } from '../../grammar/printer.ts';
import { canonicalEntry } from '../../server/session/canonical.ts';
import { placed, sessionText, stroke } from './sessions.ts';
import { law, same, target } from './target.ts';

const open = (text: string) => openDocument('day.trib', text);

const tree = target('tree', 400, sessionText, (text) => {
  const { entries, starts } = open(text);
  same(entries.map((entry) => entry.text).join(''), text, 'the entries do not give the text back');
  let offset = 0;
  entries.forEach((entry, index) => {
    law(starts[index] === offset, `entry ${index} starts at ${starts[index] ?? NaN} and not at ${offset}`);
    offset += entry.text.length;
    for (const line of [entry.header, ...entry.details]) {
      law(0 <= line.start && line.end <= entry.text.length, 'a line lies outside its entry');
      let behind = line.start;
      for (const item of line.items) {
        law(behind <= item.start && item.end <= line.end, 'an item lies outside its line, or before another');
        behind = item.end;
      }
      for (const cell of cellsOf(entry.text, line))
        law(line.start <= cell.start && cell.end <= line.end, 'a cell lies outside its line');
    }
  });
});

const edits = target(
  'edits',
  300,
  fc.tuple(sessionText, fc.array(stroke, { minLength: 1, maxLength: 8 })),
  ([text, strokes]) => {
    let document = open(text);
    for (const one of strokes) {
      const { start, end, put } = placed(one, document.text);
      document = editDocument(document, start, end, put);
      const fresh = open(document.text);
      same(document.starts, fresh.starts, 'an edit leaves other starts than opening the text afresh');
      same(document.entries, fresh.entries, 'an edit leaves other entries than opening the text afresh');
    }
  },
);

/** An implementation by others, who know no entries. */
const positions = target(
  'positions',
  300,
  fc.tuple(sessionText, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 })),
  ([text, places]) => {
    const document = open(text);
    const theirs = TextDocument.create('file:///day.trib', 'tribrach', 1, text);
    law(lineCount(document) === theirs.lineCount, 'the lines are counted otherwise than by an editor');
    for (const place of places) {
      const offset = Math.floor(place * text.length);
      if (text[offset - 1] === '\r' && text[offset] === '\n') continue;
      const { line, column } = positionOf(document, offset);
      same([line, column], Object.values(theirs.positionAt(offset)), `offset ${offset} is another place`);
      law(offsetOf(document, { line, column }) === offset, `offset ${offset} is not found again`);
      for (const beyond of [column + 1, column + 1e6])
        same(
          offsetOf(document, { line, column: beyond }),
          theirs.offsetAt({ line, character: beyond }),
          `line ${line}, column ${beyond} is another offset`,
        );
    }
  },
);

const formatting = target('format', 300, sessionText, (text) => {
  const formatted = format(text);
  law(format(formatted) === formatted, 'formatting has something to do the second time');
  const visible = (typed: string) => [...typed].filter((letter) => !isBlank(letter)).join('');
  same(visible(formatted), visible(text), 'formatting changes more than blanks');
  same(meaning(open(formatted)), meaning(open(text)), 'formatting changes what the session means');
  let behind = 0;
  for (const edit of formatEdits(open(text))) {
    law(edit.start >= behind && edit.end >= edit.start && edit.end <= text.length, 'edits overlap');
    behind = edit.end;
  }
});

/** A line that was out of its column may be taken for another's; its words stay. */
const meaning = ({ entries }: Document) => entries.map(canonicalEntry);

export const LANGUAGE = [tree, edits, positions, formatting];
