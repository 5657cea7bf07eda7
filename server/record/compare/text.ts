/** A comparison in words: for people at a terminal, and as Markdown for a pull request. */
import { plain } from '../report/markdown.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { showLength } from '../../quantities/show.ts';
import type { Comparison, FindingChange, ValueChange } from './compare.ts';
import { SMALLEST_SHIFT, type PointsShift } from './points.ts';

/** Nothing at all where nothing changed. */
export function comparisonText(title: string, comparison: Comparison): string {
  const { points, largestShift } = comparison;
  const { values, gone, come } = listed(comparison);
  const blocks = [
    newsOf(comparison),
    verdictsIn(comparison).map(({ when, sentence: told }) => `verdict ${when.padEnd(3)}  ${told}`),
    table(values),
    points.map(({ name, before, after }) => `${name}: ${before ?? 'no points'} → ${after ?? 'no points'}`),
    largestShift ? [shiftSentence(largestShift)] : [],
    come.map((finding) => `now found  ${sentence(finding)}`),
    gone.map((finding) => `found no more  ${sentence(finding)}`),
  ].filter((block) => block.length > 0);
  if (blocks.length === 0) return '';
  return `${title}\n${blocks.map((block) => block.map((line) => `  ${line}\n`).join('')).join('\n')}`;
}

export function comparisonMarkdown(title: string, comparison: Comparison): string {
  const { points, largestShift } = comparison;
  const { values, gone, come } = listed(comparison);
  const blocks = [
    newsOf(comparison).map((line) => `- ${escaped(line)}`),
    verdictsIn(comparison).flatMap(({ when, sentence: told }, index) => [
      ...(index > 0 ? [''] : []),
      `**Verdict ${when}:** ${escaped(told)}`,
    ]),
    values.length > 0
      ? ['| value | was | is | moved |', '| --- | ---: | ---: | ---: |', ...values.map(markdownRow)]
      : [],
    points.map(
      ({ name, before, after }) => `- ${escaped(name)}: ${before ?? 'no points'} → ${after ?? 'no points'}`,
    ),
    largestShift
      ? [
          '| largest point shift | by | points moved | why |',
          '| --- | ---: | ---: | --- |',
          shiftRow(largestShift),
        ]
      : [],
    come.length > 0 ? ['**Now found**', '', ...come.map((finding) => `- ${escaped(sentence(finding))}`)] : [],
    gone.length > 0
      ? ['**Found no more**', '', ...gone.map((finding) => `- ${escaped(sentence(finding))}`)]
      : [],
  ].filter((block) => block.length > 0);
  if (blocks.length === 0) return '';
  return `### ${escaped(title)}\n\n${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}

/** A session that was not there had no verdict. */
function verdictsIn({ session, verdict }: Comparison) {
  if (!verdict) return [];
  return [
    ...(session === 'new' ? [] : [{ when: 'was', sentence: verdict.before || 'none' }]),
    ...(session === 'gone' ? [] : [{ when: 'is', sentence: verdict.after || 'none' }]),
  ];
}

/** What is listed one by one: nothing of a session that is new or gone, no value of a thing that is, or is only renamed. */
function listed({ session, things, values, gone, come }: Comparison) {
  if (session) return { values: [], gone: [], come: [] };
  const told = things.flatMap(({ prefixes }) => prefixes.map((prefix) => `${prefix}/`));
  return { values: values.filter(({ id }) => !told.some((prefix) => id.startsWith(prefix))), gone, come };
}

/** A session, or a thing of it, that only one version has: a line for each. */
function newsOf({ session, holds, things }: Comparison): string[] {
  if (session === 'new') return [`a new session${holds === '' ? '' : `: ${holds}`}`];
  if (session === 'gone') return [`the session is gone${holds === '' ? '' : `; it had ${holds}`}`];
  return things.map(({ kind, name, is, was, verdict }) => {
    const thing = `${KINDS[kind] ?? kind} ${name}`;
    if (is === 'renamed') return `${thing} was called ${was ?? ''}; its values are the same`;
    const how = verdict === null ? '' : VERDICTS[is][verdict];
    return is === 'new' ? `${thing} is new${how}` : `${thing} is gone${how}`;
  });
}

const KINDS: Readonly<Record<string, string>> = { stream: 'stream from', link: 'radio' };
const VERDICTS = {
  new: { passes: ', and passes', fails: ', and fails', marginal: ', and is marginal', undecided: '' },
  gone: { passes: '; it passed', fails: '; it failed', marginal: '; it was marginal', undecided: '' },
} as const;

/** Columns as wide as their widest cell; ids are long, so the first one bends for none. */
function table(values: readonly ValueChange[]): string[] {
  const rows = values.map(({ id, before, after, moved }) => [
    id,
    before ?? 'not known',
    '→',
    after ?? 'not known',
    moved ?? '',
  ]);
  const widths = [0, 1, 2, 3].map((column) =>
    largestOf(
      rows.map((row) => row[column]?.length ?? 0),
      0,
    ),
  );
  return rows.map(([id = '', before = '', arrow = '', after = '', moved = '']) =>
    [id.padEnd(widths[0] ?? 0), before.padStart(widths[1] ?? 0), arrow, after.padStart(widths[3] ?? 0), moved]
      .join('  ')
      .trimEnd(),
  );
}

const markdownRow = ({ id, before, after, moved }: ValueChange) =>
  `| ${[escaped(id), before ?? 'not known', after ?? 'not known', moved ?? ''].join(' | ')} |`;

function shiftSentence(shift: PointsShift): string {
  const { distance, moved, because, partly } = shift;
  const others = moved === 1 ? 'no other point moved' : `${moved} points moved`;
  const end = partly ? '; where the order of the points differs too much they were not compared' : '';
  return `largest point shift  ${whichOf(shift)}: ${showLength(distance)} (${directions(shift)}); ${others}${end}. ${because}`;
}

const shiftRow = (shift: PointsShift) =>
  `| ${[
    escaped(whichOf(shift)),
    `${showLength(shift.distance)} (${directions(shift)})`,
    shift.partly ? `at least ${shift.moved}` : String(shift.moved),
    escaped(shift.because),
  ].join(' | ')} |`;

/** A point that stands alone in the notes is its own set. */
const whichOf = ({ set, point, line }: PointsShift) =>
  set === point ? point : `${point === '' ? 'a point' : point} of ${set} (line ${line})`;

/** `12 mm east, 3.0 mm south, 250 mm down`, without what does not show. */
function directions({ east, north, up }: PointsShift): string {
  const parts = [
    [east, 'east', 'west'],
    [north, 'north', 'south'],
    [up, 'up', 'down'],
  ] as const;
  return parts
    .filter(([size]) => Math.abs(size) >= SMALLEST_SHIFT)
    .map(([size, more, less]) => `${showLength(Math.abs(size))} ${size > 0 ? more : less}`)
    .join(', ');
}

const sentence = ({ code, severity, message }: FindingChange) => `${severity} ${code}: ${message}`;

/** Text of a session never becomes markup in somebody's pull request. */
/** No markup, no mention of anybody and no address. */
const escaped = plain;
