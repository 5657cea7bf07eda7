/** The part of a report about the checks: plan, residuals against tolerance, and how far the day can be trusted. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import { classInWords } from '../../derive/trust/words.ts';
import { clockTime } from '../../findings/words.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { element, type Child, type Markup } from '../drawings/markup.ts';
import { occupation } from '../drawings/occupation.ts';
import { plan } from '../drawings/plan.ts';
import { hasResidual, residualChart, signed } from '../drawings/residuals.ts';
import { figure, lineLink, section, shown, table, type Chapter } from './chapter.ts';

export const planSection = (chapter: Chapter): Markup =>
  section(
    'Plan',
    figure(chapter, (canvas) => plan(chapter.inspection, canvas)),
  );

export function checksSection(chapter: Chapter): Markup {
  const { checks } = chapter.inspection.derivation;
  if (checks.length === 0)
    return section('Checks', element('p', {}, 'No known mark was occupied, so nothing proves the day.'));
  const movement = checks.filter((check) => !hasResidual(check));
  return section(
    'Checks',
    figure(
      chapter,
      (canvas) => residualChart(chapter.inspection, canvas),
      movement.length < checks.length
        ? 'Observed minus known. Bars that end in a broken arrow go on beyond the axis.'
        : null,
    ),
    checkTable(chapter, checks.filter(hasResidual)),
    ...checks
      .filter(({ recording }) => recording?.mean)
      .map((check) =>
        figure(
          chapter,
          (canvas) => occupation(chapter.inspection, check, canvas),
          `${check.check.name}, as the antenna log shows it. Rings are epochs that were not fixed.`,
        ),
      ),
    movement.length === 0
      ? null
      : element(
          'p',
          { class: 'small' },
          `For movement only, on marks without coordinates: ${movement.map(({ check }) => check.name).join(', ')}.`,
        ),
  );
}

/** A size and its limit, with digits enough to tell them apart. */
export function against(size: number, limit: number, sign = false): [string, string] {
  const texts: [string, string] = [signed(size, sign), showLength(limit)];
  if (showLength(Math.abs(size)) !== texts[1] || Math.abs(size) === limit) return texts;
  const fine = (length: number) => `${showNumber(length * 1000, 2)} mm`;
  return [`${sign && size > 0 ? '+' : ''}${fine(size)}`, fine(limit)];
}

function checkTable(chapter: Chapter, checks: readonly CheckValues[]): Markup | null {
  if (checks.length === 0) return null;
  return table(
    [
      { head: 'Check' },
      { head: 'East', right: true },
      { head: 'North', right: true },
      { head: 'Up', right: true },
      { head: 'Horizontal, of tolerance', right: true },
      { head: 'Up, of tolerance', right: true },
      { head: 'Verdict' },
    ],
    checks.map((values) => checkRow(chapter, values)),
    { stacked: true },
  );
}

function checkRow(chapter: Chapter, values: CheckValues): Child[] {
  const { check, residual, tolerance, verdict, instant, mark } = values;
  const time = clockTime(instant, chapter.inspection);
  const number = (value: Maybe<Value>) => shown(chapter, value, (known) => signed(known.value, true));
  const of = (size: Maybe<Value>, limit: Maybe<Value>): Child =>
    isHole(size)
      ? 'not known'
      : isHole(limit)
        ? shown(chapter, size, (known) => showLength(Math.abs(known.value)))
        : element(
            'span',
            { class: 'number' },
            shown(chapter, size, (known) => against(Math.abs(known.value), limit.value)[0]),
            ' of ',
            shown(chapter, limit, (known) => against(isHole(size) ? 0 : size.value, known.value)[1]),
          );
  return [
    [
      element('b', {}, check.name),
      element(
        'span',
        { class: 'quiet' },
        `${mark ? ` on ${mark.mark.name}` : ''}${time ? ` ${time}` : ''}, `,
      ),
      element('span', { class: 'quiet small' }, lineLink(chapter, check.place)),
    ],
    number(residual.east),
    number(residual.north),
    number(residual.up),
    of(residual.horizontal, tolerance.horizontal),
    of(residual.up, tolerance.up),
    element(
      'span',
      { class: `number ${verdict === 'fails' ? 'bad' : verdict === 'passes' ? 'good' : ''}` },
      verdict,
    ),
  ];
}

/** Stretch by stretch and rover by rover, and the smallest movement that would have been seen. */
export function trustSection({ inspection }: Chapter): Markup | null {
  const { rovers } = trustOf(inspection.session, inspection.derivation);
  if (rovers.length === 0) return null;
  const time = (instant: number | null, none: string) => clockTime(instant, inspection) ?? none;
  const rows = rovers.flatMap(({ setup, rover, spans }) =>
    spans.map((span): Child[] => [
      `${setup.setup.name}${rover ? `, rover ${rover}` : ''}`,
      `${time(span.from, 'the start')} to ${time(span.until, 'the end')}`,
      element(
        'span',
        { class: `number${span.class === 'in-doubt' ? ' bad' : ''}` },
        classInWords(span.class),
      ),
      [span.before?.check.name ?? 'none', ' · ', span.after?.check.name ?? 'none'],
    ]),
  );
  const smallest = rovers.flatMap(({ setup, rover, smallest: seen }) =>
    seen
      ? [
          `${setup.setup.name}${rover ? `, rover ${rover}` : ''}: ${showLength(seen.horizontal.value)} horizontally, ${showLength(seen.up.value)} up.`,
        ]
      : [],
  );
  return section(
    'Trust',
    element(
      'p',
      { class: 'small quiet' },
      'These words speak of the base and the rover’s settings, never of a point itself.',
    ),
    table(
      [{ head: 'Base and rover' }, { head: 'From, to' }, { head: 'Class' }, { head: 'Check before · after' }],
      rows,
    ),
    smallest.length > 0
      ? element(
          'p',
          { class: 'small' },
          `The smallest movement that these checks would have seen (80 % power). ${smallest.join(' ')}`,
        )
      : null,
  );
}
