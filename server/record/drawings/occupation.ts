/** An occupation as the antenna log shows it: where the epochs scatter, and how they ran on with time. */
import type { CheckValues } from '../../derive/checks/check.ts';
import type { NmeaEpoch } from '../../evidence/nmea/epoch.ts';
import { degreesInMetres } from '../../evidence/nmea/running-mean.ts';
import { clockTime } from '../../findings/words.ts';
import type { Inspection } from '../../inspect.ts';
import { latitude, longitude, type Geographic } from '../../quantities/brands.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import {
  circle,
  drawing,
  emptyDrawing,
  isNarrow,
  shape,
  SMALL,
  stroke,
  words,
  type Canvas,
} from './canvas.ts';
import { group, rounded, type Markup } from './markup.ts';
import { niceStep } from './residuals.ts';

interface Offset {
  readonly time: number;
  readonly east: number;
  readonly north: number;
  /** Null where the epoch has no height. */
  readonly up: number | null;
  readonly fixed: boolean;
}

const ROW = 62;
const TOP = 24;

export function occupation(inspection: Inspection, values: CheckValues, canvas: Canvas): Markup {
  const { check, recording } = values;
  const title = `Occupation ${check.name}, as the antenna log shows it`;
  const track = recording?.facts?.track ?? [];
  const mean = recording?.mean;
  if (!mean || track.length === 0)
    return emptyDrawing(canvas, title, `The log of ${check.name} has no position in the time asked for.`);
  const known = placeOfMark(values);
  const origin = known ?? mean.position;
  const offsets = track.map((epoch) => offsetOf(epoch, origin, mean.height ?? 0));
  const narrow = isNarrow(canvas);
  const size = narrow ? Math.min(canvas.width, 260) : 220;
  const series = narrow
    ? { left: 0, top: TOP + size + 46, width: canvas.width }
    : { left: size + 36, top: TOP, width: canvas.width - size - 36 };
  const height = Math.max(TOP + size + 24, series.top + 3 * ROW + 26);
  return drawing(
    canvas,
    height,
    { title, description: described(values, offsets) },
    scatter(offsets, size, known !== null, toleranceOf(values)),
    timeSeries(inspection, offsets, series),
  );
}

function placeOfMark({ mark }: CheckValues): Geographic | null {
  if (!mark || isHole(mark.located)) return null;
  const { latitude: φ, longitude: λ } = mark.located;
  return { latitude: latitude(φ.value), longitude: longitude(λ.value) };
}

function offsetOf({ time, position, height, quality }: NmeaEpoch, origin: Geographic, level: number): Offset {
  const perDegree = degreesInMetres(origin);
  const turn = ((((position.longitude - origin.longitude + 180) % 360) + 360) % 360) - 180;
  return {
    time,
    east: turn * perDegree.east,
    north: (position.latitude - origin.latitude) * perDegree.north,
    up: height === undefined ? null : height - level,
    fixed: quality === 'fixed',
  };
}

const toleranceOf = ({ tolerance: { horizontal } }: CheckValues) =>
  isHole(horizontal) ? null : horizontal.value;

function scatter(
  offsets: readonly Offset[],
  size: number,
  onMark: boolean,
  tolerance: number | null,
): Markup {
  const farthest = Math.max(
    0.002,
    ...offsets.map(({ east, north }) => Math.max(Math.abs(east), Math.abs(north))),
  );
  const most =
    onMark && tolerance !== null && tolerance < 4 * farthest
      ? Math.max(farthest, tolerance) * 1.1
      : farthest * 1.15;
  const middle = size / 2;
  const scale = middle / most;
  const [cx, cy] = [middle, TOP + middle];
  const step = niceStep(most / 2);
  const limit = onMark && tolerance !== null && tolerance <= most ? tolerance : null;
  return group(
    words(`East and north of ${onMark ? 'the mark' : 'the mean'}`, 0, 8, { size: SMALL, tone: 'quiet' }),
    stroke('faint', 0, cy, size, cy),
    stroke('faint', cx, TOP, cx, TOP + size),
    limit === null ? null : circle('dashed', cx, cy, limit * scale),
    dots(offsets, (offset) => [cx + offset.east * scale, cy - offset.north * scale]),
    stroke('firm', 8, TOP + size + 8, 8 + step * scale, TOP + size + 8),
    words(showLength(step), 14 + step * scale, TOP + size + 8, { size: SMALL }),
    limit === null
      ? null
      : words(`dashed: tolerance`, size, TOP + size + 8, { size: SMALL, anchor: 'end', tone: 'quiet' }),
  );
}

/** Fixed epochs are filled, others are rings; each sort one path, so that two thousand stay light. */
function dots(offsets: readonly Offset[], at: (offset: Offset) => readonly [number, number]): Markup {
  const radius = offsets.length > 400 ? 1 : 1.6;
  const path = (fixed: boolean) =>
    offsets
      .filter((offset) => offset.fixed === fixed)
      .map((offset) => {
        const [x, y] = at(offset);
        const r = rounded(radius);
        const d = rounded(2 * radius);
        return `M${rounded(x - radius)} ${rounded(y)}a${r} ${r} 0 1 0 ${d} 0a${r} ${r} 0 1 0 -${d} 0`;
      })
      .join('');
  return group(shape('hair', path(false)), shape('fill-accent', path(true)));
}

interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

function timeSeries(inspection: Inspection, offsets: readonly Offset[], { left, top, width }: Area): Markup {
  const first = offsets[0]?.time ?? 0;
  const last = offsets.at(-1)?.time ?? first;
  const heights = offsets.map(({ up }) => up).filter((up) => up !== null);
  const level = heights.length === 0 ? 0 : heights.reduce((sum, up) => sum + up, 0) / heights.length;
  const label = 60;
  const xOf = (time: number) =>
    left + label + ((time - first) / Math.max(1, last - first)) * (width - label - 6);
  const rows = [
    { name: 'East', of: ({ east }: Offset) => east },
    { name: 'North', of: ({ north }: Offset) => north },
    { name: 'Up', of: ({ up }: Offset) => (up === null ? null : up - level) },
  ];
  const bottom = top + rows.length * ROW;
  return group(
    words('By time', left, top - 16, { size: SMALL, tone: 'quiet' }),
    ...rows.map(({ name, of }, index) => {
      const middle = top + index * ROW + ROW / 2;
      const most = largestOf(
        offsets.map((offset) => Math.abs(of(offset) ?? 0)),
        0.002,
      );
      const scale = (ROW / 2 - 7) / most;
      return group(
        words(name, left, middle - 7, { size: SMALL, tone: 'strong' }),
        words(`± ${showLength(most)}`, left, middle + 8, { size: SMALL, tone: 'quiet' }),
        stroke('faint', left + label, middle, left + width, middle),
        dots(
          offsets.filter((offset) => of(offset) !== null),
          (offset) => [xOf(offset.time), middle - (of(offset) ?? 0) * scale],
        ),
      );
    }),
    words(timeAt(first, inspection), left + label, bottom + 10, { size: SMALL, tone: 'quiet' }),
    words(timeAt(last, inspection), left + width, bottom + 10, { size: SMALL, anchor: 'end', tone: 'quiet' }),
  );
}

const timeAt = (time: number, inspection: Inspection) => clockTime(Math.round(time), inspection) ?? '';

function described({ check, recording }: CheckValues, offsets: readonly Offset[]): string {
  const facts = recording?.facts;
  const mean = recording?.mean;
  if (!facts || !mean) return '';
  const { spread } = mean;
  const scattered = spread
    ? `, scattered by ${showLength(spread.east)} east, ${showLength(spread.north)} north${spread.up === undefined ? '' : ` and ${showLength(spread.up)} up`}`
    : '';
  const thinned = offsets.length < facts.epochs ? ` ${offsets.length} of them are drawn.` : '';
  return `${check.name}: ${facts.epochs} epochs, ${showNumber(100 * facts.fixedShare, 0)} % of them fixed${scattered}.${thinned}`;
}
