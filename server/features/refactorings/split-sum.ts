/** Splits a sum into its parts: extensions into one line each, and what was added to readings into an extension of its own. */
import { detailWord } from '../../../grammar/vocabulary.ts';
import type { Line, Sum, Term } from '../../../grammar/tree.ts';
import { addedDetail } from '../../findings/edits.ts';
import type { Cursor } from '../cursor.ts';
import { sameValues } from '../trial.ts';
import type { Proposal, Refactoring } from './refactorings.ts';

export const splitSum: Proposal = (cursor, { session }) => {
  const { line, item, bound } = cursor;
  if (bound.kind !== 'setup' || !line?.word || item?.kind !== 'sum' || item.terms.length < 2) return [];
  const { path } = session.document;
  const word = detailWord(line.word.word)?.word;
  if (word === 'extension') return oneLineEach(cursor, line, item, path);
  return word === 'measured' ? anExtension(cursor, item, path) : [];
};

const isAdded = ({ sign, measure }: Term) => sign === 1 && measure !== null;

function oneLineEach({ entry: { text }, start }: Cursor, line: Line, sum: Sum, path: string): Refactoring[] {
  const [first, ...rest] = sum.terms;
  if (!first || !sum.terms.every(isAdded)) return [];
  const margin = text.slice(
    Math.max(text.lastIndexOf('\n', line.start), text.lastIndexOf('\r', line.start)) + 1,
    sum.start,
  );
  const lines = rest.map((term) => lineEnd(text) + margin + text.slice(term.start, term.end));
  const end = start + (line.comment?.end ?? line.end);
  return [
    {
      kind: 'rewrite',
      title: `Split into ${sum.terms.length} extensions`,
      edits: [
        { at: { path, start: start + first.end, end: start + sum.end }, text: '' },
        { at: { path, start: end, end }, text: lines.join('') },
      ],
    },
  ];
}

/** A pole that was added to every reading by hand is an extension; what is left are the readings of the tape. */
function anExtension({ entry, start, at, bound }: Cursor, sum: Sum, path: string): Refactoring[] {
  if (bound.kind !== 'setup') return [];
  const candidates = sum.terms.slice(1).filter(isAdded);
  const term = candidates.find((one) => one.start <= at && at <= one.end) ?? candidates[0];
  if (!term) return [];
  const said = (one: Term) =>
    entry.text.slice(one.start, one.uncertainty?.end ?? one.measure?.end ?? one.end).replace(/\s+/g, ' ');
  const readings = bound.measured.filter(({ to }) => to?.name === 'foot');
  const taken = readings.map(({ place }) => {
    const line = entry.details.find((one) => one.start === place.start);
    const typed = line?.items[0];
    const terms = typed?.kind === 'sum' ? typed.terms : [];
    const index = terms.findIndex((one, nth) => nth > 0 && isAdded(one) && said(one) === said(term));
    const before = terms[index - 1];
    const found = terms[index];
    return before && found ? { path, start: start + before.end, end: start + found.end } : null;
  });
  const cuts = taken.filter((cut) => cut !== null);
  if (cuts.length < taken.length || cuts.length === 0) return [];
  const { place, text } = addedDetail(path, entry, 'extension', entry.text.slice(term.start, term.end));
  const from = cuts.length > 1 ? ` out of ${cuts.length} readings` : '';
  return [
    {
      kind: 'rewrite',
      title: `Take ${said(term)}${from} as an extension of its own`,
      edits: [
        ...cuts.map((cut) => ({ at: cut, text: '' })),
        { at: { path, start: start + place.start, end: start + place.end }, text },
      ],
      // A part of a sum counts as exact where nothing is said of it, an extension as good to a fraction of a millimetre.
      keeps: (before, after) => sameValues(before, after, 'uncertain'),
    },
  ];
}

const lineEnd = (text: string) => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
