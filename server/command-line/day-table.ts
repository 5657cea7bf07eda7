/** A day at a glance for a terminal: aligned rows with a bracket beside what is proved, and below them what is not. */
import type { BaseRows, Glance, GlanceRow, Unproved } from '../record/glance.ts';
import { classInWords } from '../derive/trust/words.ts';
import { columns, counted, harmless, wrapped } from './terminal-text.ts';

/** More rows than this no one reads at a glance. */
const MOST_ROWS = 40;
const MOST_SPANS = 6;

export function dayTable({ bases, unproved, powers }: Glance, width: number): string[] {
  const rows = bases.flatMap(laidOut);
  const shown = rows.slice(0, MOST_ROWS);
  const rest = rows.length - shown.length;
  const table = [true, false].map((limits) => tabled(shown, limits));
  const [wide = [], narrow = []] = table;
  const fits = wide.every((line) => columns(line) <= width);
  return [
    ...(fits ? wide : narrow.map((line) => cut(line, width))),
    ...(rest > 0 ? [`  … ${counted(rest, 'more row')}; tribrach report shows all`] : []),
    ...unprovedLines(unproved, width),
    ...powers.slice(0, 3).map((power) => wrapped(power, width, '  ')),
  ];
}

interface Cells {
  readonly base: string;
  readonly row: GlanceRow;
  readonly bracket: string;
}

function laidOut({ name, proof, rows }: BaseRows): Cells[] {
  const proved = rows.map((row) => row.proved);
  const [first, last] = [proved.indexOf(true), proved.lastIndexOf(true)];
  const middle = first + Math.floor((last - first) / 2);
  return rows.map((row, index) => {
    const inside = index >= first && index <= last && first >= 0 && last > first;
    const line = !inside ? '' : index === first ? '┐' : index === last ? '┘' : '│';
    return {
      base: index === 0 ? name : '',
      row,
      bracket: inside && index === middle ? `${line} ${proof}` : line,
    };
  });
}

/** @param limits whether the limits stand beside the sizes, for which a narrow terminal has no room */
function tabled(cells: readonly Cells[], limits: boolean): string[] {
  const size = ([value, limit]: GlanceRow['horizontal']) =>
    value === '' ? '' : limits && limit !== '' ? `${value} of ${limit}` : value;
  const head = ['', '', '', '', 'horizontal', 'vertical', ''];
  const lines = cells.map(({ base, row, bracket }) => [
    harmless(base),
    row.time,
    harmless(row.what),
    row.verdict,
    size(row.horizontal),
    size(row.vertical),
    bracket,
  ]);
  const withSizes = cells.some(({ row }) => row.verdict !== '');
  const isNote = (line: readonly string[]) => line[3] === '';
  const all = withSizes ? [head, ...lines] : lines;
  const widths = head.map((_, at) => {
    const own = all.filter((line) => at !== 2 || !isNote(line)).map((line) => columns(line[at] ?? ''));
    return Math.max(0, ...own);
  });
  const behind = widths.slice(2, 6).reduce((sum, one) => sum + one, 0) + 3 * GAP;
  return all.map((line) => {
    const [base = '', time = '', what = '', verdict = '', horizontal = '', vertical = '', bracket = ''] =
      line;
    const middle =
      isNote(line) && what !== ''
        ? padded(cut(what, behind), behind)
        : [
            padded(what, widths[2]),
            padded(verdict, widths[3]),
            before(horizontal, widths[4]),
            before(vertical, widths[5]),
          ].join('  ');
    return `  ${[padded(base, widths[0]), padded(time, widths[1]), middle, bracket].join('  ')}`.trimEnd();
  });
}
const GAP = 2;

const padded = (text: string, width = 0) => text + ' '.repeat(Math.max(0, width - columns(text)));
const before = (text: string, width = 0) => ' '.repeat(Math.max(0, width - columns(text))) + text;

function cut(text: string, width: number): string {
  if (columns(text) <= width) return text;
  let kept = '';
  for (const character of text) {
    if (columns(kept + character) > width - 1) break;
    kept += character;
  }
  return `${kept}…`;
}

/** On one line where they fit, since a clean day is read at a glance: `Not closed: 15:25–15:40; not opened: 07:50–08:25`. */
function unprovedLines(unproved: readonly Unproved[], width: number): string[] {
  const texts = unproved.map(unprovedText);
  const one = `  ${capital(texts.join('; '))}`;
  if (texts.length > 0 && columns(one) <= width) return [one];
  return texts.map((text) => wrapped(capital(text), width, '  '));
}
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** `not closed: 15:25–15:40 (2 points)`. */
function unprovedText({ class: found, spans, points }: Unproved): string {
  const more = spans.length > MOST_SPANS ? [`${spans.length - MOST_SPANS} more`] : [];
  const said = [...spans.slice(0, MOST_SPANS), ...more].join(', ') || 'points without a time';
  const count = points === null ? '' : ` (${counted(points, 'point')})`;
  return `${classInWords(found)}: ${said}${count}`;
}
