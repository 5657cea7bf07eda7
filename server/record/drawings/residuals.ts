/** The residual of each check against its tolerance and against what a right check stays within. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { clockTime } from '../../findings/words.ts';
import type { Inspection } from '../../inspect.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import {
  box,
  circle,
  drawing,
  emptyDrawing,
  hatching,
  isNarrow,
  shape,
  SMALL,
  standsFor,
  stroke,
  TEXT,
  VERDICTS,
  verdictSign,
  words,
  wordsAbout,
  type Canvas,
} from './canvas.ts';
import { group, rounded, type Markup } from './markup.ts';
import { allShown } from './shown.ts';
import { fitted, fittedApart } from './text.ts';

/** A horizontal axis in metres, cut off at `most`; what lies beyond is drawn broken off. */
interface Axis {
  readonly left: number;
  readonly width: number;
  readonly least: number;
  readonly most: number;
}

const ROW = 46;
const TOP = 52;

export function residualChart(
  inspection: Inspection,
  canvas: Canvas,
  { checks } = allShown(inspection),
): Markup {
  const judged = checks.filter(hasResidual);
  const title = 'Residuals of the checks against tolerance';
  if (judged.length === 0)
    return emptyDrawing(
      canvas,
      title,
      'No check has a residual yet: occupy a second known mark and compare.',
    );
  const narrow = isNarrow(canvas);
  const names = narrow ? canvas.width * 0.26 : 150;
  const gap = narrow ? 14 : 34;
  const width = (canvas.width - names - gap) / 2;
  const limits = (side: 'horizontal' | 'up') => limitOf(judged, side);
  const horizontal: Axis = { left: names, width, least: 0, most: limits('horizontal') };
  const most = limits('up');
  const up: Axis = { left: names + width + gap, width, least: -most, most };
  const labels = fittedApart(
    judged.map(({ check }) => check.name),
    narrow ? SMALL : TEXT,
    names - 28,
  );
  const bottom = TOP + judged.length * ROW;
  return drawing(
    canvas,
    bottom + 28 + (narrow ? 54 : 20),
    { title, description: judged.map((check) => described(check)).join(' ') },
    axisOf(horizontal, 'Horizontal', bottom, canvas),
    axisOf(up, 'Up', bottom, canvas),
    ...judged.map((check, index) =>
      row(inspection, check, labels[index] ?? '', TOP + index * ROW, names, horizontal, up, canvas),
    ),
    legend(bottom + 36, canvas),
  );
}

export const hasResidual = ({ residual }: CheckValues): boolean =>
  !isHole(residual.horizontal) || !isHole(residual.up);

/** Three times the widest limit, or the widest residual where that is less; residuals alone where no limit is known. */
function limitOf(checks: readonly CheckValues[], side: 'horizontal' | 'up'): number {
  const known = (values: readonly Maybe<Value>[]) =>
    values.map((value) => (isHole(value) ? 0 : Math.abs(value.value)));
  const tolerated = largestOf(known(checks.map(({ tolerance }) => tolerance[side])), 0);
  const limits = largestOf(known(checks.map(({ expected }) => expected[side])), tolerated);
  const sizes = largestOf(known(checks.map(({ residual }) => residual[side])), 0.001);
  if (limits === 0) return sizes * 1.1;
  return Math.max(limits * 1.25, Math.min(sizes * 1.1, limits * 3));
}

const xOf = ({ left, width, least, most }: Axis, value: number) =>
  left + (Math.min(most, Math.max(least, value)) - least) * (width / (most - least));

function axisOf(axis: Axis, label: string, bottom: number, canvas: Canvas): Markup {
  const narrow = isNarrow(canvas);
  const step = niceStep((axis.most - axis.least) / (narrow ? 3 : 5));
  const ticks: number[] = [];
  for (let tick = Math.ceil(axis.least / step); tick * step <= axis.most; tick++) ticks.push(tick * step);
  const metres = step >= 0.5;
  return group(
    words(label, axis.left, 10, { size: narrow ? SMALL : TEXT, tone: 'strong' }),
    words(metres ? 'm' : 'mm', axis.left + axis.width, 10, { size: SMALL, anchor: 'end', tone: 'quiet' }),
    ...ticks.map((tick) =>
      group(
        stroke(
          Math.abs(tick) < step / 2 ? 'line' : 'faint',
          xOf(axis, tick),
          TOP - 10,
          xOf(axis, tick),
          bottom,
        ),
        wordsAbout(
          canvas,
          showNumber(metres ? tick : tick * 1000, metres ? 1 : decimals(step * 1000)),
          xOf(axis, tick),
          TOP - 20,
          { size: SMALL, tone: 'quiet' },
        ),
      ),
    ),
  );
}

const decimals = (step: number) => (step >= 1 ? 0 : 1);

/** The next of 1, 2, 5 times a power of ten. */
export function niceStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  const lead = size / power;
  return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
}

function row(
  inspection: Inspection,
  values: CheckValues,
  label: string,
  top: number,
  names: number,
  horizontal: Axis,
  up: Axis,
  canvas: Canvas,
): Markup {
  const { check, residual, tolerance, expected, explained, verdict, instant } = values;
  const narrow = isNarrow(canvas);
  const size = narrow ? SMALL : TEXT;
  const time = clockTime(instant, inspection);
  const on = check.on?.name ?? 'no mark';
  const explainedFlat =
    isHole(explained.east) || isHole(explained.north)
      ? null
      : Math.hypot(explained.east.value, explained.north.value);
  return standsFor(
    canvas,
    inspection.session,
    check.observed?.place ?? check.place,
    described(values),
    stroke('faint', 0, top + ROW, canvas.width, top + ROW),
    verdictSign(verdict, 8, top + 16, narrow ? 6 : 7),
    words(label, 22, top + 15, { size, tone: 'strong' }),
    words(fitted(narrow && time ? time : `${on}${time ? ` ${time}` : ''}`, SMALL, names - 28), 22, top + 31, {
      size: SMALL,
      tone: 'quiet',
    }),
    bar(
      residual.horizontal,
      tolerance.horizontal,
      expected.horizontal,
      explainedFlat,
      horizontal,
      top,
      narrow,
    ),
    bar(
      residual.up,
      tolerance.up,
      expected.up,
      isHole(explained.up) ? null : explained.up.value,
      up,
      top,
      narrow,
    ),
  );
}

function bar(
  residual: Maybe<Value>,
  tolerance: Maybe<Value>,
  expected: Maybe<Value>,
  explained: number | null,
  axis: Axis,
  top: number,
  narrow: boolean,
): Markup {
  const middle = top + 30;
  const limit = isHole(tolerance) ? null : tolerance.value;
  const right = isHole(expected) ? null : expected.value;
  const band =
    limit === null
      ? null
      : group(
          box('fill-wash', xOf(axis, -limit), middle - 8, xOf(axis, limit) - xOf(axis, -limit), 16),
          ...[limit, ...(axis.least < 0 ? [-limit] : [])].map((edge) =>
            stroke('firm', xOf(axis, edge), middle - 10, xOf(axis, edge), middle + 10),
          ),
        );
  const brackets =
    right === null
      ? null
      : group(
          ...[right, ...(axis.least < 0 ? [-right] : [])].map((edge) =>
            shape(
              'line',
              `M${rounded(xOf(axis, edge) - Math.sign(edge) * 4)} ${rounded(middle - 7)}h${rounded(Math.sign(edge) * 4)}v14h${rounded(-Math.sign(edge) * 4)}`,
            ),
          ),
        );
  if (isHole(residual))
    return group(
      band,
      brackets,
      words('not known', xOf(axis, Math.max(0, axis.least)), top + 12, { size: SMALL, tone: 'quiet' }),
    );
  const size = residual.value;
  const fails = Math.abs(size) > (limit ?? right ?? Infinity);
  const zero = xOf(axis, 0);
  const end = xOf(axis, size);
  const beyond = size > axis.most || size < axis.least;
  const stretch = { x: Math.min(zero, end), y: middle - 3.5, width: Math.abs(end - zero), height: 7 };
  const tells = explained !== null && Math.abs(explained) >= Math.max(0.001, Math.abs(size) * 0.2);
  const way = Math.sign(size);
  const where = tells ? xOf(axis, explained) : 0;
  // What lies beyond the break is not to scale: there the sign stands between the break and the arrow.
  const outside = beyond && where === end;
  return group(
    band,
    brackets,
    box(fails ? 'outline-bad' : 'outline', stretch.x, stretch.y, stretch.width, stretch.height),
    fails
      ? hatching('bad-hair', stretch, 4)
      : box('fill-ink', stretch.x, stretch.y, stretch.width, stretch.height),
    beyond
      ? brokenEnd(end, middle, way, outside ? 36 : 18)
      : circle(fails ? 'fill-bad' : 'fill-ink', end, middle, 3.5),
    tells ? shape('ring', diamond(outside ? end - way * 19 : where, middle, 4.5)) : null,
    words(signed(size, axis.least < 0), end, top + 12, {
      size: SMALL,
      anchor: labelAnchor(end, axis, narrow),
      tone: fails ? 'bad halo' : 'halo',
    }),
  );
}

const diamond = (x: number, y: number, r: number) =>
  `M${rounded(x - r)} ${rounded(y)}l${r} ${-r}l${r} ${r}l${-r} ${r}z`;

/** The bar goes on beyond the axis: two strokes cut it, so far before its end. */
const brokenEnd = (x: number, y: number, way: number, before: number) =>
  group(
    shape('on-fill wide', `M${rounded(x - way * before + 2)} ${rounded(y + 8)}l6 -16`),
    shape('bad', `M${rounded(x - way * before)} ${rounded(y + 8)}l6 -16m4 0l-6 16`),
    shape('fill-bad', `M${rounded(x)} ${rounded(y)}l${rounded(-way * 9)} -6v12z`),
  );

const labelAnchor = (end: number, axis: Axis, narrow: boolean): 'start' | 'middle' | 'end' => {
  const room = narrow ? 24 : 30;
  if (end < axis.left + room) return 'start';
  return end > axis.left + axis.width - room ? 'end' : 'middle';
};

export const signed = (length: number, sign: boolean): string =>
  sign && length > 0 && !/^0(\.0+)? /.test(showLength(length))
    ? `+${showLength(length)}`
    : showLength(length);

function legend(top: number, canvas: Canvas): Markup {
  const narrow = isNarrow(canvas);
  const entries = [
    {
      sign: (x: number, y: number) =>
        group(box('fill-wash', x, y - 7, 16, 14), stroke('firm', x + 16, y - 8, x + 16, y + 8)),
      text: 'tolerance',
    },
    {
      sign: (x: number, y: number) => shape('line', `M${rounded(x + 10)} ${rounded(y - 7)}h4v14h-4`),
      text: 'what a right check stays within',
    },
    {
      sign: (x: number, y: number) => shape('ring', diamond(x + 8, y, 4.5)),
      text: 'explained by what was keyed',
    },
  ];
  const step = narrow ? [0, 0, 0] : [0, 110, 340];
  return group(
    ...entries.map(({ sign, text }, index) => {
      const x = step[index] ?? 0;
      const y = top + (narrow ? index * 18 : 0);
      return group(sign(x, y), words(text, x + 24, y, { size: SMALL, tone: 'quiet' }));
    }),
  );
}

/** One check in a sentence. */
export function described({ check, residual, tolerance, verdict }: CheckValues): string {
  const side = (name: string, value: Maybe<Value>, limit: Maybe<Value>, sign: boolean) =>
    isHole(value)
      ? `${name} not known`
      : `${name} ${signed(value.value, sign)}${isHole(limit) ? '' : ` of ${showLength(limit.value)}`}`;
  const judged = VERDICTS[verdict];
  return `${check.name} ${judged}: ${side('horizontal', residual.horizontal, tolerance.horizontal, false)}, ${side('up', residual.up, tolerance.up, true)}.`;
}
