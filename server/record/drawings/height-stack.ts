/** A setup drawn to scale from mark to phase centre, with its dimensions, and what was keyed beside what should have been. */
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import type { Reading } from '../../derive/setups/antenna-height.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { clockTime } from '../../findings/words.ts';
import type { Inspection } from '../../inspect.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { allOf, decimalsFor, showLength, showNumber, showSigma } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Place } from '../../../grammar/tree.ts';
import {
  box,
  circle,
  drawing,
  hatching,
  isNarrow,
  shape,
  SMALL,
  standsFor,
  stroke,
  TEXT,
  verdictSign,
  words,
  type Canvas,
} from './canvas.ts';
import { group, rounded, type Markup } from './markup.ts';
import { spread } from './spread.ts';
import { brokenInto, fitted, textWidth } from './text.ts';

/** Where the lengths are drawn: pixels for a metre, and the y of the mark. */
interface Scale {
  readonly pixels: number;
  readonly ground: number;
  readonly ceiling: number;
}

/** What the tape reached and what stands on top of it, as the first reading has it. */
interface Chain {
  readonly reading: Reading;
  readonly length: Value;
  /** The tape's length brought to the plumb line. */
  readonly reduced: number;
  readonly radius: Value | null;
  readonly rises: readonly { readonly label: string; readonly value: Value; readonly sign: 1 | -1 }[];
}

export function heightStack(inspection: Inspection, values: SetupValues, canvas: Canvas): Markup {
  const { setup, height } = values;
  const narrow = isNarrow(canvas);
  const chain = chainOf(values);
  const arp = isHole(height.arp) ? null : height.arp;
  const phaseCentre = isHole(height.phaseCentre) ? null : height.phaseCentre;
  const states = distinctStates(values);
  const plain = [arp?.value, phaseCentre?.value, chain?.reduced].filter((level) => level !== undefined);
  const own = Math.max(0, ...plain);
  const keyedLevels = states
    .map(({ level }) => level)
    .filter((level) => level <= MOST_DRAWN && (plain.length === 0 || isNear(level, own)));
  const top = largestOf(keyedLevels, Math.max(own, 0.2));
  const room = narrow ? 300 : 380;
  const half = canvas.width * 0.13;
  const widest = Math.max(chain?.radius?.value ?? 0, ...radiiOf(values), 0.05);
  const pixels = Math.min(room / top, (half * 0.92) / widest);
  const ceiling = narrow ? 66 : 64;
  const ground = ceiling + top * pixels;
  const scale: Scale = { pixels, ground, ceiling };
  const columns = {
    centre: canvas.width * 0.15,
    half,
    chain: canvas.width * (narrow ? 0.3 : 0.295),
    bars: canvas.width * (narrow ? 0.57 : 0.585),
    labels: narrow ? narrowLabels(canvas) : canvas.width * 0.695,
  };
  const parts = [
    heading(values, canvas),
    picture(inspection, values, chain, arp, phaseCentre, scale, columns, canvas),
    levels(inspection, values, arp, phaseCentre, states, scale, columns, canvas),
    // Last, so that no leader runs through its words.
    chain ? chainDimensions(inspection, values, chain, phaseCentre, scale, columns, canvas) : null,
  ];
  const table = readingTable(inspection, values, ground + 40, canvas);
  return drawing(
    canvas,
    ground + 40 + table.height,
    { title: `Height stack of ${setup.name}`, description: described(values, chain, states) },
    ...parts,
    table.markup,
  );
}

type Columns = {
  readonly centre: number;
  readonly half: number;
  readonly chain: number;
  readonly bars: number;
  readonly labels: number;
};

const yOf = ({ ground, pixels }: Scale, level: number) => ground - level * pixels;

/** No tripod is so high, so that what is keyed beyond it is a slip; in metres. */
const MOST_DRAWN = 10;

/** Whether anything of what was taped is known, so that the picture of the tripod is one of this setup. */
export const isDrawnToScale = (values: SetupValues) => !isHole(values.height.arp) || chainOf(values) !== null;

/** A keyed height so far away that drawing it to scale would squash everything else is drawn broken. */
const isNear = (level: number, own: number) => level >= 0 && level <= Math.max(own * 1.8, own + 0.5);

/** Far enough to the left for `250 mm too low`, and to the right of the bars; in pixels. */
const narrowLabels = ({ width }: Canvas) => Math.max(width * 0.57 + 29, Math.min(width * 0.69, width - 95));

/** To the digits that the uncertainty earns, at most a tenth of a millimetre. */
export const metresOf = (value: Value): string =>
  `${showNumber(value.value, Math.min(4, Math.max(3, decimalsFor('m', value.sigma))))} m`;

/** `1.2835 m`, `4.21 ft = 1.2832 m`: what was written down is not rounded. */
export const asTyped = (value: Value): string => {
  if (value.origin !== 'given') return metresOf(value);
  return METRIC.test(value.typed) ? value.typed : `${value.typed} = ${metresOf(value)}`;
};

const signed = (value: Value, sign: 1 | -1) => `${sign < 0 ? '−' : '+'}${asTyped(value)}`;

/** What was typed in other units has its metres on a line of their own. */
const typedLines = (value: Value, tone: string) =>
  asTyped(value)
    .split(/ (?== )/)
    .map((text, index) => ({ text, tone: index === 0 ? tone : 'quiet' }));

const METRIC = /[\d ](?:m|cm|mm)$/;

function chainOf({ height, setup }: SetupValues): Chain | null {
  const reading = height.groups[0]?.readings[0];
  if (!reading || isHole(reading.arp) || isHole(reading.length) || reading.arp.origin !== 'computed')
    return null;
  const { inputs } = reading.arp;
  const radius = inputs['r'] ?? null;
  const { length } = reading;
  const reduced = radius ? Math.sqrt(length.value ** 2 - radius.value ** 2) : length.value;
  const rises = Object.entries(inputs)
    .filter(([symbol]) => symbol !== 's' && symbol !== 'r')
    .map(([symbol, value]) => ({
      label:
        symbol === 'v'
          ? `${reading.measured.to?.name ?? 'tape point'} above ARP`
          : symbol === 'c'
            ? 'hook constant'
            : setup.extensions.length > 1
              ? `extension ${symbol.slice(1)}`
              : 'extension',
      value,
      sign: symbol === 'v' ? (-1 as const) : (1 as const),
    }));
  return { reading, length, reduced, radius, rises };
}

/** Which of several readings the height is from, by their numbers in the table; null where there is but one. */
function readingsBehind({ readings, groups }: SetupValues['height'], narrow: boolean): string | null {
  const numbers = (groups[0]?.readings ?? []).map((reading) => String(readings.indexOf(reading) + 1));
  if (readings.length < 2 || numbers.length === 0) return null;
  if (numbers.length === 1) return `from reading ${numbers.join('')}`;
  return `mean of ${narrow ? '' : 'readings '}${allOf(numbers)}`;
}

interface KeyedBar {
  readonly keyed: KeyedValues;
  readonly value: Value;
  readonly level: number;
  readonly place: Place | null;
}

/** The keyed antenna heights in order of time, each once; the latest where there are many. */
function distinctStates({ keyed }: SetupValues): KeyedBar[] {
  const bars: KeyedBar[] = [];
  for (const state of keyed) {
    const { antennaHeight } = state;
    if (isHole(antennaHeight) || bars.at(-1)?.value.value === antennaHeight.value) continue;
    const place = state.state.antennaHeight?.place ?? null;
    bars.push({ keyed: state, value: antennaHeight, level: antennaHeight.value, place });
  }
  return bars.slice(-MOST_BARS);
}
const MOST_BARS = 3;

const radiiOf = ({ antenna }: SetupValues): number[] =>
  (antenna?.tapePoints ?? []).map(({ radius }) => (isHole(radius) ? 0 : radius.value));

/** Below a millimetre, or within twice the uncertainty, two heights are the same. */
function sameHeight(keyed: number, right: Value): boolean {
  return Math.abs(keyed - right.value) <= Math.max(0.001, 2 * (right.sigma ?? 0));
}

function heading({ setup }: SetupValues, canvas: Canvas): Markup {
  const over = setup.on ? ` over ${setup.on.name}` : '';
  const gear = setup.with ? `antenna ${setup.with.name}` : 'no antenna named';
  return group(
    words(fitted(`${setup.name}${over}`, TEXT + 1, canvas.width * 0.66), 0, 12, {
      size: TEXT + 1,
      tone: 'strong',
    }),
    words(fitted(gear, SMALL, canvas.width * 0.66), 0, 29, { size: SMALL, tone: 'quiet' }),
  );
}

function picture(
  inspection: Inspection,
  values: SetupValues,
  chain: Chain | null,
  arp: Value | null,
  phaseCentre: Value | null,
  scale: Scale,
  { centre, half }: Columns,
  canvas: Canvas,
): Markup {
  const { setup, antenna, mark, height } = values;
  const { session } = inspection;
  const level = arp?.value ?? chain?.reduced;
  const top = level === undefined ? scale.ceiling : yOf(scale, level);
  const foot = height.extension ? Math.min(scale.ground, top + height.extension.value * scale.pixels) : top;
  const head = Math.min(foot + 12, scale.ground - 2);
  const wide = Math.min(half * 0.9, Math.max(16, Math.max(0.14, ...radiiOf(values)) * scale.pixels));
  const dome = phaseCentre ? Math.max(9, (top - yOf(scale, phaseCentre.value)) * 1.25) : 14;
  const leg = Math.min(half * 0.95, Math.max(18, (scale.ground - head) * 0.4));
  const tripod = group(
    shape(
      'leg',
      `M${rounded(centre - 7)} ${rounded(head)}L${rounded(centre - leg)} ${rounded(scale.ground)}M${rounded(centre + 7)} ${rounded(head)}L${rounded(centre + leg)} ${rounded(scale.ground)}`,
    ),
    box('part', centre - 10, foot, 20, Math.min(12, Math.max(2, scale.ground - foot)), 2),
  );
  const extension = height.extension
    ? standsFor(
        canvas,
        session,
        setup.extensions[0]?.place ?? null,
        `extension ${metresOf(height.extension)}`,
        box('outline', centre - 4.5, top, 9, foot - top),
        hatching('hair', { x: centre - 4.5, y: top, width: 9, height: foot - top }, 5),
      )
    : null;
  const body = standsFor(
    canvas,
    session,
    antenna?.place ?? setup.place,
    antenna ? `antenna ${antenna.name}` : 'antenna',
    shape(
      'part',
      `M${rounded(centre - wide)} ${rounded(top)}v${rounded(-dome * 0.3)}q0 ${rounded(-dome * 0.7)} ${rounded(wide)} ${rounded(-dome * 0.7)}t${rounded(wide)} ${rounded(dome * 0.7)}v${rounded(dome * 0.3)}z`,
    ),
  );
  const pole = mark
    ? standsFor(canvas, session, mark.mark.place, `mark ${mark.mark.name}`, ...markSign(centre, scale.ground))
    : group(...markSign(centre, scale.ground));
  return group(
    groundLine(centre, half, scale.ground),
    tripod,
    body,
    extension,
    stroke('dashed', centre, scale.ground, centre, top),
    tapeLine(inspection, chain, centre, scale, canvas),
    arp
      ? group(
          stroke('firm', centre - wide, top, centre + wide, top),
          centre - wide > 30
            ? words('ARP', centre - wide - 5, top, { size: SMALL, anchor: 'end', tone: 'halo' })
            : words('ARP', 0, top + 10, { size: SMALL, tone: 'halo' }),
        )
      : null,
    phaseCentre ? phaseCentreSign(centre, yOf(scale, phaseCentre.value)) : null,
    pole,
    words(fitted(setup.on?.name ?? 'no mark', SMALL, half * 2 + 20), centre, scale.ground + 20, {
      size: SMALL,
      anchor: 'middle',
    }),
  );
}

const markSign = (x: number, y: number) => [
  shape('fill-ink', `M${rounded(x - 6)} ${rounded(y + 10)}h12l-6 -10z`),
];

const phaseCentreSign = (x: number, y: number) =>
  group(circle('outline', x, y, 4), stroke('line', x - 7, y, x + 7, y), stroke('line', x, y - 7, x, y + 7));

function groundLine(centre: number, half: number, y: number): Markup {
  const width = half * 2 + 12;
  return group(
    stroke('firm', centre - width / 2, y, centre + width / 2, y),
    hatching('hair', { x: centre - width / 2, y: y + 1, width, height: 7 }, 7),
  );
}

/** The tape from the mark to the point that it was held to, as far off the plumb line as it was. */
function tapeLine(
  { session }: Inspection,
  chain: Chain | null,
  centre: number,
  scale: Scale,
  canvas: Canvas,
): Markup | null {
  if (!chain) return null;
  const x = centre - (chain.radius?.value ?? 0) * scale.pixels;
  const y = yOf(scale, chain.reduced);
  return standsFor(
    canvas,
    session,
    chain.reading.measured.place,
    `taped ${asTyped(chain.length)}`,
    stroke('tape', centre, scale.ground, x, y),
    circle('fill-accent', x, y, 3.5),
    chain.radius ? stroke('hair', x, y, centre, y) : null,
  );
}

/** A chain of dimensions: the tape brought to the plumb line, then each part that stands on it or is taken off. */
function chainDimensions(
  { session }: Inspection,
  { setup }: SetupValues,
  chain: Chain,
  phaseCentre: Value | null,
  scale: Scale,
  columns: Columns,
  canvas: Canvas,
): Markup {
  const narrow = isNarrow(canvas);
  const room = columns.bars - columns.chain - (narrow ? 14 : 22);
  const size = narrow ? SMALL : TEXT;
  const { reading, length, radius, reduced } = chain;
  const slope = reading.slope;
  const plumb = textWidth('straight down', size) <= room ? 'straight down' : 'plumb';
  const taped: Entry[] = [
    { label: 'Taped', value: asTyped(length), tone: 'strong' },
    ...(radius ? [{ label: 'off centre', value: showLength(radius.value), tone: '' }] : []),
    ...(slope && radius
      ? [
          { label: 'reduction', value: `−${showLength(slope.value)}`, tone: '' },
          { label: plumb, value: `${showNumber(reduced, 4)} m`, tone: '' },
        ]
      : [{ label: plumb, value: '', tone: '' }]),
    ...(chain.rises.length === 0 ? [{ label: 'extension', value: 'none', tone: '' }] : []),
  ];
  const segments = [
    {
      from: 0,
      to: reduced,
      shift: 0,
      entries: taped,
      place: reading.measured.place,
      label: `taped ${asTyped(length)}`,
    },
  ];
  let level = reduced;
  chain.rises.forEach(({ label, value, sign }, index) => {
    const to = level + sign * value.value;
    segments.push({
      from: level,
      to,
      shift: sign < 0 ? 10 : 0,
      entries: [{ label, value: signed(value, sign), tone: 'strong' }],
      place: (value.origin === 'given'
        ? value.place
        : (setup.extensions[index]?.place ?? setup.place)) as Place,
      label: `${label} ${asTyped(value)}`,
    });
    level = to;
  });
  const step = size * 1.32;
  const laid = segments.map(({ entries, ...segment }) => ({
    ...segment,
    rows: rowsIn(entries, { beside: labelWidth(taped, size) + 10, room, size }),
  }));
  const middles = spread(
    laid.map(({ from, to, rows }) => ({
      at: yOf(scale, (from + to) / 2),
      size: rows.length * step + 6,
    })),
    // Below the leader of the phase centre, which lies above all that is dimensioned here.
    phaseCentre ? yOf(scale, phaseCentre.value) + 3 : scale.ceiling - 22,
    scale.ground + 14,
  );
  return group(
    ...laid.map(({ from, to, shift, rows, place, label }, index) => {
      const x = columns.chain + shift;
      const [y1, y2] = [yOf(scale, from), yOf(scale, to)];
      const middle = middles[index] ?? 0;
      const left = x + 9;
      const own = (y1 + y2) / 2;
      const moved = Math.abs(middle - own) > (rows.length * step) / 2;
      return standsFor(
        canvas,
        session,
        place,
        label,
        stroke('hair', columns.centre, y2, x + 5, y2),
        dimension(x, y1, y2),
        moved
          ? shape('leader', `M${rounded(x)} ${rounded(own)}L${rounded(left - 2)} ${rounded(middle)}`)
          : null,
        ...rows.flatMap((texts, row) =>
          texts.map(({ text, x: across, tone }) =>
            words(fitted(text, size, room), left + across, middle + (row - (rows.length - 1) / 2) * step, {
              size,
              tone: `${tone} halo`,
            }),
          ),
        ),
      );
    }),
  );
}

interface Entry {
  readonly label: string;
  readonly value: string;
  readonly tone: string;
}
interface Text {
  readonly text: string;
  readonly x: number;
  readonly tone: string;
}

/** Where values stand beside their labels. */
interface Layout {
  readonly beside: number;
  readonly room: number;
  readonly size: number;
}

const widest = (texts: readonly string[], size: number) =>
  Math.max(0, ...texts.map((text) => textWidth(text, size)));
const labelWidth = (entries: readonly Entry[], size: number) =>
  widest(
    entries.map(({ label }) => label),
    size,
  );

/** What was typed in feet has its metres below. */
const partsOf = (value: string): string[] => (value === '' ? [] : value.split(/ (?== )/));

/** Values stand beside their labels where there is room for all of them, else below. */
function rowsIn(entries: readonly Entry[], { beside, room, size }: Layout): Text[][] {
  const values = entries.flatMap(({ value }) => partsOf(value));
  const fits = labelWidth(entries, size) < beside && beside + widest(values, size) <= room;
  return entries.flatMap(({ label, value, tone }) => {
    const named = (fits ? [label] : brokenInto(label, room, size)).map((text) => ({
      text,
      x: 0,
      tone: 'quiet',
    }));
    const told = partsOf(value).map((text, index) => ({
      text,
      x: fits ? beside : 0,
      tone: index === 0 ? tone : 'quiet',
    }));
    if (!fits) return [...named, ...told].map((text) => [text]);
    return [[...named, ...told.slice(0, 1)], ...told.slice(1).map((text) => [text])];
  });
}

/** A dimension line with slanted ticks at both ends, as on a plan. */
function dimension(x: number, y1: number, y2: number): Markup {
  const tick = (y: number) => `M${rounded(x - 3.5)} ${rounded(y + 3.5)}l7 -7`;
  return shape('dimension', `M${rounded(x)} ${rounded(y1)}V${rounded(y2)}${tick(y1)}${tick(y2)}`);
}

/** The heights above the mark at the right, with a bar for what should have been keyed and one for each that was. */
function levels(
  inspection: Inspection,
  values: SetupValues,
  arp: Value | null,
  phaseCentre: Value | null,
  bars: readonly KeyedBar[],
  scale: Scale,
  columns: Columns,
  canvas: Canvas,
): Markup {
  const { session } = inspection;
  const { setup, height, antenna } = values;
  const narrow = isNarrow(canvas);
  const width = narrow ? 9 : 15;
  const gap = narrow ? 3 : 6;
  const size = narrow ? SMALL : TEXT;
  const step = size * 1.32;
  const room = canvas.width - columns.labels;
  const used = columns.bars + width;
  const rightmost = columns.bars + (bars.length + 1) * (width + gap);
  const flags: Flag[] = [];
  if (phaseCentre) {
    const y = yOf(scale, phaseCentre.value);
    flags.push({
      y,
      from: columns.centre + 8,
      lines: [
        { text: 'Phase centre', tone: 'quiet' },
        { text: metresOf(phaseCentre), tone: '' },
      ],
      place: antenna?.place ?? setup.place,
      label: `phase centre ${metresOf(phaseCentre)} above the mark`,
    });
  }
  if (arp) {
    const behind = readingsBehind(height, narrow);
    flags.push({
      y: yOf(scale, arp.value),
      from: used,
      lines: [
        { text: narrow ? 'ARP height' : 'ARP height, should be keyed', tone: 'quiet' },
        { text: metresOf(arp), tone: 'strong' },
        ...(arp.sigma ? [{ text: `± ${showSigma(arp.sigma, 'm')}`, tone: 'quiet' }] : []),
        ...(behind ? [{ text: behind, tone: 'quiet' }] : []),
      ],
      place: setup.place,
      label: `ARP height ${metresOf(arp)} above the mark`,
    });
  }
  bars.forEach((bar, index) => {
    const same = arp ? sameHeight(bar.level, arp) : null;
    const time = bars.length > 1 ? clockTime(bar.keyed.state.from, inspection) : null;
    flags.push({
      y: flagLevel(bar.level, arp, scale),
      from: columns.bars + (index + 1) * (width + gap) + width,
      lines: [
        { text: time ? `Keyed ${time}` : 'Keyed', tone: 'quiet' },
        ...typedLines(bar.value, same === false ? 'bad' : 'strong'),
        ...(arp && same !== null ? told(differs(bar.level, arp, same), room - 6, size) : []),
        ...(broken(bar.level, scale) ? [{ text: 'not drawn to scale', tone: 'quiet' }] : []),
      ],
      place: bar.place,
      label: `keyed antenna height ${asTyped(bar.value)}`,
      ...(same === null ? {} : { sign: same }),
    });
  });
  if (bars.length === 0)
    flags.push({
      y: scale.ground - 30,
      from: rightmost,
      lines: [
        { text: 'Keyed', tone: 'quiet' },
        { text: 'no antenna height', tone: '' },
      ],
      place: setup.place,
      label: 'no keyed antenna height',
    });
  const middles = spread(
    flags.map(({ y, lines }) => ({ at: y, size: lines.length * step + 9 })),
    6,
    scale.ground + 10,
  );
  return group(
    arp
      ? standsFor(
          canvas,
          session,
          setup.place,
          `should be keyed: ${metresOf(arp)}`,
          box('outline', columns.bars, yOf(scale, arp.value), width, arp.value * scale.pixels),
        )
      : null,
    ...bars.map((bar, index) =>
      standsFor(
        canvas,
        session,
        bar.place,
        `keyed antenna height ${asTyped(bar.value)}`,
        keyedBar(bar, arp, columns.bars + (index + 1) * (width + gap), width, scale),
      ),
    ),
    arp || bars.length > 0
      ? group(
          words('should', columns.bars + width / 2 + (narrow ? -2 : 0), scale.ground + 20, {
            size: narrow ? 9.5 : SMALL,
            anchor: 'end',
            tone: 'quiet',
          }),
          words('keyed', columns.bars + width + gap + (narrow ? 0 : 2), scale.ground + 20, {
            size: narrow ? 9.5 : SMALL,
            tone: 'quiet',
          }),
          stroke('firm', columns.bars - 6, scale.ground, rightmost + 2, scale.ground),
        )
      : null,
    ...flags.map(({ y, from, lines, place, label, sign }, index) => {
      const middle = middles[index] ?? y;
      const left = columns.labels + 6;
      return standsFor(
        canvas,
        session,
        place,
        label,
        shape(
          'leader',
          `M${rounded(from)} ${rounded(y)}H${rounded(columns.labels - 10)}L${rounded(left - 4)} ${rounded(middle - ((lines.length - 1) / 2) * step)}`,
        ),
        sign === undefined || narrow
          ? null
          : verdictSign(
              sign ? 'passes' : 'fails',
              left + textWidth(lines[0]?.text ?? '', size) + 14,
              middle - ((lines.length - 1) / 2) * step,
              6.5,
            ),
        ...lines.map(({ text, tone }, row) =>
          words(fitted(text, size, room - 6), left, middle + (row - (lines.length - 1) / 2) * step, {
            size,
            tone,
          }),
        ),
      );
    }),
  );
}

interface Flag {
  readonly y: number;
  readonly from: number;
  readonly lines: readonly { readonly text: string; readonly tone: string }[];
  readonly place: Place | null;
  readonly label: string;
  readonly sign?: boolean;
}

/** A sentence that is too wide goes on in the next line; a number keeps its unit. */
const told = ({ text, tone }: { readonly text: string; readonly tone: string }, room: number, size: number) =>
  brokenInto(text.replace(/(\d) /g, '$1\u00a0'), room, size).map((line) => ({ text: line, tone }));

const differs = (level: number, arp: Value, same: boolean) => {
  const size = showLength(Math.abs(level - arp.value));
  if (same)
    return { text: Math.abs(level - arp.value) < 0.00005 ? 'agrees' : `agrees to ${size}`, tone: 'good' };
  return { text: `${size} too ${level < arp.value ? 'low' : 'high'}`, tone: 'bad' };
};

/** Heights that agree share a leader, with what should be keyed named first. */
function flagLevel(level: number, arp: Value | null, scale: Scale): number {
  if (broken(level, scale)) return level < 0 ? scale.ground : scale.ceiling - 14;
  return arp && sameHeight(level, arp) ? yOf(scale, arp.value) + 0.1 : yOf(scale, level);
}

const broken = (level: number, scale: Scale) => yOf(scale, level) < scale.ceiling - 20 || level < 0;

/** The keyed height as a hatched bar; what is missing or too much is marked, and a height out of scale is broken off. */
function keyedBar(bar: KeyedBar, arp: Value | null, x: number, width: number, scale: Scale): Markup {
  const outside = broken(bar.level, scale);
  const top = outside ? (bar.level < 0 ? scale.ground : scale.ceiling - 14) : yOf(scale, bar.level);
  const bottom = scale.ground;
  const solid = group(
    box('part', x, top, width, bottom - top),
    hatching('hair', { x, y: top, width, height: bottom - top }, 5),
  );
  const zigzag = outside
    ? shape(
        'outline',
        `M${rounded(x - 3)} ${rounded(top + 18)}l${rounded(width / 2 + 3)} -5l${rounded(width / 2 + 3)} 5v6l${rounded(-width / 2 - 3)} -5l${rounded(-width / 2 - 3)} 5z`,
      )
    : null;
  if (!arp || sameHeight(bar.level, arp)) return group(solid, zigzag);
  const right = yOf(scale, arp.value);
  const gap = { x, y: Math.min(top, right), width, height: Math.abs(top - right) };
  // What is missing is an empty frame, and what is too much a full one: neither may be taken for the other.
  const full =
    bar.level > arp.value ? [hatching('bad-hair', gap, 4, false), hatching('bad-hair', gap, 4)] : [];
  return group(solid, box('outline-bad', gap.x, gap.y, gap.width, gap.height), ...full, zigzag);
}

/** Each reading in figures: what the tape said and the ARP height that follows. */
function readingTable(
  inspection: Inspection,
  values: SetupValues,
  top: number,
  canvas: Canvas,
): { readonly markup: Markup; readonly height: number } {
  const { readings } = values.height;
  if (readings.length === 0) return { markup: group(), height: 0 };
  const narrow = isNarrow(canvas);
  const size = SMALL;
  const step = 18;
  const at = (share: number) => canvas.width * share;
  const columns = narrow
    ? { time: 0, taped: Math.max(at(0.17), textWidth('1  07:52  ', size)), slope: at(0.62), arp: at(1) }
    : { time: 0, taped: at(0.15), slope: at(0.72), arp: at(1) };
  const shown = readings.slice(0, MOST_READINGS);
  const line = (y: number) => stroke('hair', 0, y, canvas.width, y);
  const head = group(
    words('Reading', columns.time, top + 9, { size, tone: 'quiet' }),
    words('Taped', columns.taped, top + 9, { size, tone: 'quiet' }),
    narrow ? null : words('Reduction', columns.slope, top + 9, { size, anchor: 'end', tone: 'quiet' }),
    words('ARP height', columns.arp, top + 9, { size, anchor: 'end', tone: 'quiet' }),
    line(top + 19),
  );
  const rows = shown.map((reading, index) => {
    const y = top + 29 + index * step;
    const { measured, arp, length, slope } = reading;
    const to = measured.to ? ` to ${measured.to.name}` : '';
    const room = (narrow ? columns.arp - 70 : columns.slope - 60) - columns.taped;
    const long = `${isHole(length) ? '?' : asTyped(length)}${to}`;
    // The metres of what was typed in feet stand in the drawing above; here the point that was taped to matters more.
    const taped = textWidth(long, size) <= room ? long : long.replace(/ = [^ ]+ m(?= )/, '');
    return standsFor(
      canvas,
      inspection.session,
      measured.place,
      isHole(arp) ? arp.hole : `reading ${index + 1}: ARP height ${metresOf(arp)}`,
      words(`${index + 1}  ${clockTime(reading.instant, inspection) ?? ''}`, columns.time, y, { size }),
      words(fitted(taped, size, room), columns.taped, y, { size }),
      narrow
        ? null
        : words(slope ? `−${showLength(slope.value)}` : '–', columns.slope, y, { size, anchor: 'end' }),
      words(isHole(arp) ? 'not known' : metresOf(arp), columns.arp, y, { size, anchor: 'end' }),
    );
  });
  const more =
    readings.length > shown.length
      ? words(`and ${readings.length - shown.length} more`, 0, top + 29 + shown.length * step, {
          size,
          tone: 'quiet',
        })
      : null;
  const count = shown.length + (more ? 1 : 0);
  return { markup: group(head, ...rows, more), height: 29 + count * step };
}
const MOST_READINGS = 8;

function described(values: SetupValues, chain: Chain | null, bars: readonly KeyedBar[]): string {
  const { height } = values;
  const say = (name: string, value: Maybe<Value>) =>
    isHole(value) ? `${name} is not known: ${value.hole}.` : `${name} is ${metresOf(value)}.`;
  const taped = chain
    ? [
        `Taped ${asTyped(chain.length)}${chain.reading.slope ? `, ${showLength(chain.reading.slope.value)} less straight down` : ''}.`,
        ...chain.rises.map(({ label, value, sign }) => `${label} ${signed(value, sign)}.`),
      ]
    : [];
  const keyed = bars.map(({ value, level }) => {
    const end = isHole(height.arp)
      ? ''
      : `, ${differs(level, height.arp, sameHeight(level, height.arp)).text}`;
    return `Keyed ${asTyped(value)}${end}.`;
  });
  return [
    ...taped,
    say('The ARP height', height.arp),
    say('The phase centre height', height.phaseCentre),
    ...(keyed.length > 0 ? keyed : ['No antenna height was keyed.']),
  ].join(' ');
}
