/** The day as a time strip: how far the base can be trusted when, what was checked, what was told anew, and what happened. */
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { trustOf, type RoverTrust } from '../../derive/trust/trust.ts';
import { TRUST_CLASSES, type Span } from '../../derive/trust/spans.ts';
import { classInWords, timeOfDay } from '../../derive/trust/words.ts';
import { clockTime } from '../../findings/words.ts';
import type { Inspection } from '../../inspect.ts';
import { largestOf, smallestOf } from '../../quantities/extremes.ts';
import { isHole } from '../../quantities/value.ts';
import { instantOf } from '../../session/session.ts';
import {
  box,
  drawing,
  emptyDrawing,
  isNarrow,
  shape,
  SMALL,
  standsFor,
  stroke,
  VERDICTS,
  verdictSign,
  words,
  wordsAbout,
  type Canvas,
} from './canvas.ts';
import { element, group, rounded, type Child, type Markup } from './markup.ts';
import { allShown, type Shown } from './shown.ts';
import { rowsOf } from './spread.ts';
import { fitted, textWidth } from './text.ts';
import { classSwatch, swatch } from './trust-pattern.ts';

interface TimeAxis {
  readonly from: number;
  readonly until: number;
  readonly left: number;
  readonly width: number;
}

/** Something with a time of its own, and the words that stand at it. */
interface Moment {
  readonly instant: number;
  readonly label: string;
  readonly time: string;
  readonly tone: string;
  readonly place: Place;
  readonly told: string;
  /** The base that it is about; null where about all. */
  readonly setup: string | null;
  readonly sign: (x: number, y: number) => Markup;
}

const LANE = 40;
const TALL = 18;
const ROW = 19;

export function dayStrip(inspection: Inspection, canvas: Canvas, shown = allShown(inspection)): Markup {
  const { setups } = shown;
  const times = timesOf(inspection, shown);
  const title = 'The day';
  if (times.length === 0)
    return emptyDrawing(canvas, title, 'Nothing has a time yet: a setup says when it began with `at`.');
  const open = setups.some(({ until }) => until === null);
  const axis = axisOf(times, open, canvas);
  const strips = strip(inspection, shown, axis, canvas);
  const bottom = strips.height;
  return drawing(canvas, bottom, { title, description: describe(inspection, shown) }, strips.markup);
}

const stretchText = (from: number | null, until: number | null, inspection: Inspection) =>
  `${clockTime(from, inspection) ?? 'the start'} to ${clockTime(until, inspection) ?? 'the end'}`;

function timesOf({ session }: Inspection, { setups, checks, events }: Shown): number[] {
  return [
    ...setups.flatMap(({ from, until, keyed, height }) => [
      from,
      until,
      ...keyed.map(({ state }) => state.from),
      ...height.readings.map(({ instant }) => instant),
    ]),
    ...checks.map(({ instant }) => instant),
    ...events.map(({ at }) => instantOf(at, session.job)),
  ].filter((time) => time !== null);
}

function axisOf(times: readonly number[], open: boolean, canvas: Canvas): TimeAxis {
  const from = smallestOf(times);
  const last = largestOf(times, from + 1800);
  // A base that still stands is drawn a little beyond the last that is known of it.
  const until = open ? last + (last - from) * 0.12 : last;
  const margin = (until - from) * 0.02;
  return { from: from - margin, until: until + margin, left: 8, width: canvas.width - 16 };
}

const xOf = ({ from, until, left, width }: TimeAxis, instant: number) =>
  left + ((instant - from) / (until - from)) * width;

function strip(
  inspection: Inspection,
  shown: Shown,
  axis: TimeAxis,
  canvas: Canvas,
): { readonly markup: Markup; readonly height: number } {
  const checks = momentLabels(checkMoments(inspection, shown), axis, canvas, SIGN);
  const happened = momentLabels(eventMoments(inspection, shown), axis, canvas, 0);
  const checkTop = 4;
  const signs = checkTop + checks.rows * ROW + 10;
  const rovers = new Map<SetupValues, RoverTrust[]>();
  for (const one of trustIn(inspection, shown))
    rovers.set(one.setup, [...(rovers.get(one.setup) ?? []), one]);
  const bases = shown.setups.flatMap((values) => lanesOf(values, rovers.get(values) ?? []));
  const lanes = signs + 12;
  const ends = lanes + bases.length * LANE + 2;
  const ticksAt = ends + 4;
  const eventTop = ticksAt + 26;
  const bottom = eventTop + happened.rows * ROW + 6;
  const legend = trustLegend(trustIn(inspection, shown), bottom + 8, canvas);
  return {
    height: bottom + legend.height,
    markup: group(
      ticks(inspection, axis, lanes - 4, ticksAt, canvas),
      ...bases.map((base, index) => lane(inspection, base, axis, lanes + index * LANE, canvas)),
      ...checks.places.map(({ moment, x, left, row }) => {
        const y = checkTop + (checks.rows - 1 - row) * ROW + 8;
        return standsFor(
          canvas,
          inspection.session,
          moment.place,
          moment.told,
          shape(
            'leader',
            `M${rounded(x)} ${rounded(laneOf(moment, bases, lanes) - TALL / 2)}V${rounded(y + 7)}`,
          ),
          moment.sign(x, y),
          words(moment.label, left, y, { size: SMALL, tone: `${moment.tone} halo` }),
        );
      }),
      ...happened.places.map(({ moment, x, left, row }) => {
        const y = eventTop + row * ROW + 8;
        return standsFor(
          canvas,
          inspection.session,
          moment.place,
          moment.told,
          shape('leader', `M${rounded(x)} ${rounded(ends - 2)}V${rounded(y - 7)}`),
          moment.sign(x, laneOf(moment, bases, lanes)),
          words(moment.label, left, y, { size: SMALL, tone: `${moment.tone} halo` }),
        );
      }),
      ...bases.map(({ values, name }, index) => {
        const x = xOf(axis, values.from ?? axis.from);
        return words(fitted(name, SMALL, canvas.width - x), x, lanes + index * LANE + 9, {
          size: SMALL,
          tone: 'strong halo',
        });
      }),
      legend.markup,
    ),
  };
}

/** Of the whole day's trust what belongs to the setups that are drawn. */
function trustIn({ session, derivation }: Inspection, { setups }: Shown): readonly RoverTrust[] {
  const { rovers } = trustOf(session, derivation);
  if (setups.length === derivation.setups.size) return rovers;
  const drawn = new Set(setups);
  return rovers.filter(({ setup }) => drawn.has(setup));
}

/** The middle of the lane that something happened in; of all of them where it happened to all. */
function laneOf({ setup }: Moment, bases: readonly Lane[], top: number): number {
  const found = bases.findIndex(({ values }) => values.setup.name === setup);
  return top + (found < 0 ? 0 : found) * LANE + LANE - 4 - TALL / 2;
}

interface Placed {
  readonly moment: Moment;
  readonly x: number;
  readonly left: number;
  readonly row: number;
}

/** Room that the sign of a check takes before its label. */
const SIGN = 11;

/** Labels start at their moment, or end there where there is no room to the right; long ones are cut. */
function momentLabels(
  moments: readonly Moment[],
  axis: TimeAxis,
  canvas: Canvas,
  sign: number,
): { readonly places: readonly Placed[]; readonly rows: number } {
  const share = isNarrow(canvas) ? 0.62 : 0.45;
  const most = Math.max(84, (canvas.width * share) / Math.sqrt(Math.max(1, moments.length / 4)));
  const laid = moments.map((moment) => {
    const tail = sign > 0 ? ` ${moment.time}` : '';
    const label = fitted(moment.label, SMALL, most - textWidth(tail, SMALL)) + tail;
    const width = textWidth(label, SMALL);
    const x = xOf(axis, moment.instant);
    const right = x + (sign > 0 ? sign : -5);
    const fits = right + width <= canvas.width;
    const left = fits ? right : Math.max(0, sign > 0 ? x - sign - width : canvas.width - width);
    return {
      moment: { ...moment, label },
      x,
      left,
      from: Math.min(left, x - sign) - 3,
      to: Math.max(left + width, x + sign) + 7,
    };
  });
  const rows = rowsOf(laid);
  return {
    places: laid.map(({ moment, x, left }, index) => ({ moment, x, left, row: rows[index] ?? 0 })),
    rows: largestOf(rows, -1) + 1,
  };
}

function checkMoments(inspection: Inspection, { checks }: Shown): Moment[] {
  return checks.flatMap(({ check, instant, verdict, mark, setup }) => {
    if (instant === null) return [];
    const time = clockTime(instant, inspection) ?? '';
    const judged = VERDICTS[verdict];
    const on = mark ? ` on ${mark.mark.name}` : '';
    return [
      {
        instant,
        label: check.name,
        time,
        tone: verdict === 'fails' ? 'bad' : '',
        place: check.place,
        told: `${check.name} ${time}, check${on}: ${judged}`,
        setup: setup?.setup.name ?? null,
        sign: (x, y) => verdictSign(verdict, x, y, 6.5),
      },
    ];
  });
}

/** What happened to a base, and what it was told anew. */
function eventMoments(inspection: Inspection, { setups, events }: Shown): Moment[] {
  const { session } = inspection;
  const happened = events.flatMap((event): Moment[] => {
    const instant = instantOf(event.at, session.job);
    if (instant === null) return [];
    const time = clockTime(instant, inspection) ?? '';
    const label = `${time} ${event.what}${event.text ? `: ${event.text}` : ''}`;
    const setup = event.on?.name ?? null;
    return [{ instant, label, time, tone: '', place: event.place, told: label, setup, sign: zigzag }];
  });
  const keyed = setups.flatMap(({ setup, keyed: states }) =>
    states.slice(1).flatMap(({ state }): Moment[] => {
      const { from, lines } = state;
      if (from === null) return [];
      const time = clockTime(from, inspection) ?? '';
      const label = `${time} ${setup.name} keyed anew`;
      const place = lines[0]?.place ?? setup.place;
      return [{ instant: from, label, time, tone: '', place, told: label, setup: setup.name, sign: key }];
    }),
  );
  return [...happened, ...keyed].sort((one, other) => one.instant - other.instant);
}

/** A disturbance: a jagged line through the strip. */
const zigzag = (x: number, y: number) =>
  group(
    shape('on-fill wide', `M${rounded(x)} ${rounded(y - 17)}l5 8l-10 9l10 9l-5 8`),
    shape('firm', `M${rounded(x)} ${rounded(y - 17)}l5 8l-10 9l10 9l-5 8`),
  );

/** A keyed value: a diamond on the strip. */
const key = (x: number, y: number) => shape('outline', `M${rounded(x - 7)} ${rounded(y)}l7 -7l7 7l-7 7z`);

interface Lane {
  readonly values: SetupValues;
  readonly name: string;
  readonly spans: readonly Span[];
}

/** One lane for each rover that worked from the base; the base alone where none did. */
function lanesOf(values: SetupValues, own: readonly RoverTrust[]): Lane[] {
  const { setup } = values;
  const name = `${setup.name}${setup.on ? ` on ${setup.on.name}` : ''}`;
  if (own.length === 0) return [{ values, name, spans: [] }];
  return own.map(({ rover, spans }) => ({ values, name: rover ? `${name}, rover ${rover}` : name, spans }));
}

function lane(
  inspection: Inspection,
  { values, name, spans }: Lane,
  axis: TimeAxis,
  top: number,
  canvas: Canvas,
): Markup {
  const { setup, from, until, height } = values;
  const start = xOf(axis, from ?? axis.from);
  const end = until === null ? axis.left + axis.width : xOf(axis, until);
  const y = top + LANE - TALL - 4;
  const open = `M${rounded(start)} ${rounded(y)}H${rounded(end - 8)}l8 ${TALL / 2}l-8 ${TALL / 2}H${rounded(start)}z`;
  return group(
    standsFor(
      canvas,
      inspection.session,
      setup.place,
      `${name}, ${stretchText(from, until, inspection)}`,
      until === null ? shape('outline', open) : box('outline', start, y, end - start, TALL),
    ),
    ...spans.map((span) => spanBox(inspection, span, axis, start, until === null ? end - 8 : end, y)),
    ...height.readings.flatMap(({ instant, measured }, index) =>
      instant === null
        ? []
        : [
            standsFor(
              canvas,
              inspection.session,
              measured.place,
              `reading ${index + 1} of the antenna height at ${clockTime(instant, inspection) ?? ''}`,
              shape('fill-accent', `M${rounded(xOf(axis, instant))} ${rounded(y + TALL)}l4 7h-8z`),
            ),
          ],
    ),
  );
}

/** The pattern of the class, and its name where there is room. */
function spanBox(
  inspection: Inspection,
  span: Span,
  axis: TimeAxis,
  start: number,
  end: number,
  y: number,
): Child {
  const left = Math.max(start, span.from === null ? start : xOf(axis, span.from));
  const right = Math.min(end, span.until === null ? end : xOf(axis, span.until));
  if (right <= left) return null;
  const name = classInWords(span.class);
  const wide = textWidth(name, SMALL) + 10;
  const middle = (left + right) / 2;
  return element(
    'g',
    {},
    element('title', {}, `${name} ${stretchText(span.from, span.until, inspection)}`),
    swatch(span.class, { x: left, y, width: right - left, height: TALL }),
    wide + 8 <= right - left
      ? group(
          box('fill-paper', middle - wide / 2, y + 2.5, wide, TALL - 5, 2),
          words(name, middle, y + TALL / 2, { size: SMALL, anchor: 'middle' }),
        )
      : null,
  );
}

/** Hours, or what fits, as the job's clock shows them. */
function ticks(inspection: Inspection, axis: TimeAxis, top: number, bottom: number, canvas: Canvas): Markup {
  const room = isNarrow(canvas) ? 46 : 58;
  const step =
    STEPS.find((size) => (size / (axis.until - axis.from)) * axis.width >= room) ?? daysBetween(axis, room);
  const clock = inspection.session.job?.clock;
  const offset = clock && !isHole(clock) ? clock.seconds : 0;
  const marks: Markup[] = [];
  for (let tick = Math.ceil((axis.from + offset) / step); tick * step - offset <= axis.until; tick++) {
    const instant = tick * step - offset;
    const x = xOf(axis, instant);
    marks.push(
      group(
        stroke('faint', x, top, x, bottom + 4),
        wordsAbout(canvas, timeOfDay(instant, inspection.session.job), x, bottom + 12, {
          size: SMALL,
          tone: 'quiet halo',
        }),
      ),
    );
  }
  return group(stroke('hair', axis.left, bottom, axis.left + axis.width, bottom), ...marks);
}
/** Seconds: whole days where hours do not fit, so that the labels never are more than fit beside one another. */
function daysBetween({ from, until, width }: TimeAxis, room: number): number {
  const days = ((until - from) * room) / Math.max(1, width) / 86_400;
  return Number.isFinite(days) ? Math.max(1, Math.ceil(days)) * 86_400 : 86_400;
}

const STEPS = [300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200];

function trustLegend(
  rovers: readonly RoverTrust[],
  top: number,
  canvas: Canvas,
): { readonly markup: Markup; readonly height: number } {
  const used = new Set(rovers.flatMap(({ spans }) => spans.map((span) => span.class)));
  const shown = TRUST_CLASSES.filter((name) => used.has(name));
  if (shown.length === 0) return { markup: group(), height: 0 };
  let x = 0;
  let y = top + 8;
  const entries = shown.map((name) => {
    const label = classInWords(name);
    const width = 32 + textWidth(label, SMALL) + 16;
    if (x > 0 && x + width > canvas.width) {
      x = 0;
      y += 20;
    }
    const entry = group(classSwatch(name, x, y - 7), words(label, x + 32, y, { size: SMALL, tone: 'quiet' }));
    x += width;
    return entry;
  });
  return { markup: group(...entries), height: y - top + 20 };
}

function describe(inspection: Inspection, shown: Shown): string {
  const spans = shown.setups.map(
    ({ setup, from, until }) =>
      `${setup.name} stood from ${clockTime(from, inspection) ?? 'an unknown time'} ${until === null ? 'on' : `to ${clockTime(until, inspection) ?? 'an unknown time'}`}.`,
  );
  const trust = trustIn(inspection, shown).flatMap(({ setup, rover, spans }) =>
    spans.map(
      (span) =>
        `${setup.setup.name}${rover ? ` with ${rover}` : ''} is ${classInWords(span.class)} from ${stretchText(span.from, span.until, inspection)}.`,
    ),
  );
  const moments = [...checkMoments(inspection, shown), ...eventMoments(inspection, shown)].sort(
    (one, other) => one.instant - other.instant,
  );
  return [...spans, ...trust, ...moments.map(({ told }) => `${told}.`)].join(' ');
}
