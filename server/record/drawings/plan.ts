/** The marks, the base, the checks and the points seen from above, with the residuals of the checks drawn many times larger. */
import type { CheckValues } from '../../derive/checks/check.ts';
import type { MarkValues } from '../../derive/marks/mark.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { remembered } from '../../derive/remembered.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import {
  box,
  circle,
  drawing,
  emptyDrawing,
  isNarrow,
  shape,
  SMALL,
  standsFor,
  stroke,
  TEXT,
  words,
  type Canvas,
} from './canvas.ts';
import { element, group, rounded, type Markup } from './markup.ts';
import { signed } from './residuals.ts';
import { allShown, type Shown } from './shown.ts';
import { freePlace, takenBoxes, type Box, type Taken } from './spread.ts';
import { fitted, textWidth } from './text.ts';

interface Ground {
  readonly east: number;
  readonly north: number;
}
/** Pixels for a metre on the ground, and where a place lies. */
interface View {
  readonly pixels: number;
  readonly at: (place: Ground) => { readonly x: number; readonly y: number };
}

interface Site {
  readonly mark: MarkValues;
  readonly ground: Ground;
  readonly base: boolean;
  readonly checks: readonly CheckValues[];
  /** Of the part of the session that is drawn in full. */
  readonly inPart: boolean;
}

const MARGIN = 58;
/** How long the longest residual or tolerance is drawn. */
const LONGEST = 46;

export function plan(inspection: Inspection, canvas: Canvas, shown = allShown(inspection)): Markup {
  const sites = sitesOf(inspection, shown);
  const points = pointsOf(inspection);
  const title = 'Plan';
  if (sites.length === 0)
    return emptyDrawing(canvas, title, 'No mark has coordinates yet, so there is no plan.');
  const extent = extentOf([
    ...sites.map(({ ground }) => ground),
    ...points.flatMap(({ grounds }) => grounds),
  ]);
  const height = heightFor(extent, canvas);
  const view = viewOf(extent, canvas.width, height);
  const exaggeration = exaggerationFor(sites, view);
  const taken = takenBoxes();
  const named = sites.filter(({ inPart }) => inPart);
  const lines = baselines(named, view);
  const figure = group(
    ...lines.map(([start, end]) => stroke('dashed', start.x, start.y, end.x, end.y)),
    ...points.map((point) => pointSigns(inspection, point, view, canvas)),
    otherSites(sites, view),
    ...named.map((site) => siteSign(inspection, site, view, exaggeration, canvas)),
  );
  for (const site of named) for (const covered of signBoxes(site, view, exaggeration)) taken.add(covered);
  const field = { x: 0, y: 0, width: canvas.width, height };
  const corner = northCorner(sites, view, canvas.width);
  taken.add({ x: corner - 24, y: 0, width: 48, height: 62 });
  const crossed = takenBoxes(lines.flatMap(alongLine));
  const open: Taken = {
    add: (covered) => taken.add(covered),
    touches: (place) => taken.touches(place) || crossed.touches(place),
  };
  const labels = group(
    ...named.map((site) => siteLabel(inspection, site, view, exaggeration, open, taken, field, canvas)),
    ...points.map((point) => pointLabel(point, view, taken, field)),
  );
  return drawing(
    canvas,
    height + 46,
    {
      title,
      description: describe(
        sites,
        points.reduce((sum, { grounds }) => sum + grounds.length, 0),
        exaggeration,
      ),
    },
    figure,
    labels,
    northArrow(corner, 8, inspection),
    scaleBar(view, 2, height + 14, canvas),
    exaggerationText(exaggeration, sites, height + 14, canvas),
  );
}

/** Marks with coordinates in the job's grid; a mark without takes the place that its first check showed. */
function sitesOf({ derivation }: Inspection, shown: Shown): Site[] {
  const bases = new Set<MarkValues>();
  for (const { mark } of derivation.setups.values()) if (mark) bases.add(mark);
  const checksOn = new Map<MarkValues, CheckValues[]>();
  for (const mark of bases) checksOn.set(mark, []);
  for (const check of derivation.checks) {
    if (!check.mark) continue;
    const checks = checksOn.get(check.mark) ?? [];
    checks.push(check);
    checksOn.set(check.mark, checks);
  }
  const inPart = new Set([...shown.setups, ...shown.checks].map(({ mark }) => mark));
  return [...checksOn].flatMap(([mark, checks]) => {
    const seen = checks.map(({ observed }) => groundOf(observed.east, observed.north)).find(Boolean);
    const ground = groundOf(mark.east, mark.north) ?? seen;
    if (!ground) return [];
    return [{ mark, ground, base: bases.has(mark), checks, inPart: inPart.has(mark) }];
  });
}

const groundOf = (east: Maybe<Value>, north: Maybe<Value>): Ground | null =>
  isHole(east) || isHole(north) || !Number.isFinite(east.value) || !Number.isFinite(north.value)
    ? null
    : { east: east.value, north: north.value };

interface Measured {
  /** Null for the points of a file or table, which are too many to name. */
  readonly name: string | null;
  readonly grounds: readonly Ground[];
  readonly place: Place;
}

/** Points with coordinates in the job's grid; of a large set as many as can be told apart. */
function pointsOf({ derivation }: Inspection): Measured[] {
  const { frame, points } = derivation;
  return points.flatMap((set): Measured[] => {
    if (set.form !== 'grid' || isHole(set.system) || set.system !== frame.grid) return [];
    const grounds = groundsOf(set);
    if (grounds.length === 0) return [];
    return [{ name: set.kind === 'point' ? set.name : null, grounds, place: set.entry.place }];
  });
}

const MOST_POINTS = 400;
const MOST_ROWS = 100_000;

/** Every so many-th point, read once for the same set. */
const groundsOf = remembered((set: PointSet): readonly Ground[] => {
  const { rowCount, refused } = set.scan();
  if (refused !== null || rowCount > MOST_ROWS) return [];
  const step = Math.ceil(rowCount / MOST_POINTS);
  const grounds: Ground[] = [];
  let row = 0;
  set.read(({ east, north }) => {
    if (row++ % step !== 0 || east === undefined || north === undefined) return;
    if (Number.isFinite(east) && Number.isFinite(north)) grounds.push({ east, north });
  });
  return grounds;
});

interface Extent {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

function extentOf(places: readonly Ground[]): Extent {
  const extent = { west: Infinity, east: -Infinity, south: Infinity, north: -Infinity };
  for (const { east, north } of places) {
    extent.west = Math.min(extent.west, east);
    extent.east = Math.max(extent.east, east);
    extent.south = Math.min(extent.south, north);
    extent.north = Math.max(extent.north, north);
  }
  return extent;
}

function heightFor({ west, east, south, north }: Extent, { width }: Canvas): number {
  const across = Math.max(east - west, 1e-3);
  const tallest = Math.max(width * 0.6, 300);
  const wanted = ((north - south) / across) * (width - 2 * MARGIN) + 2 * MARGIN;
  return Math.min(tallest, Math.max(width * 0.36, 190, wanted));
}

function viewOf({ west, east, south, north }: Extent, width: number, height: number): View {
  const across = east - west;
  const along = north - south;
  const pixels = Math.min(
    across > 0 ? (width - 2 * MARGIN) / across : Infinity,
    along > 0 ? (height - 2 * MARGIN) / along : Infinity,
    ONLY_ONE,
  );
  const middle = { east: (west + east) / 2, north: (south + north) / 2 };
  return {
    pixels,
    at: (place) => ({
      x: width / 2 + (place.east - middle.east) * pixels,
      y: height / 2 - (place.north - middle.north) * pixels,
    }),
  };
}
/** A single mark has no extent; it is drawn as if on a plan of 1 m to 60 pixels. */
const ONLY_ONE = 60;

const flatResidual = ({ residual }: CheckValues): Ground | null => groundOf(residual.east, residual.north);

/** A round number of times, so that tolerances and all but wild residuals stay on the plan; null where nothing is compared. */
function exaggerationFor(sites: readonly Site[], view: View): number | null {
  const sizes = sites.flatMap(({ checks }) =>
    checks.flatMap((check) => {
      const residual = flatResidual(check);
      const limit = isHole(check.tolerance.horizontal) ? 0 : check.tolerance.horizontal.value;
      return residual ? [limit > 0 ? limit : Math.hypot(residual.east, residual.north)] : [];
    }),
  );
  const longest = largestOf(sizes, 0);
  if (longest === 0) return sizes.length > 0 ? 1 : null;
  const wanted = LONGEST / (longest * view.pixels);
  const power = 10 ** Math.floor(Math.log10(wanted));
  const lead = [8, 6, 5, 4, 3, 2.5, 2, 1.5, 1].find((step) => wanted / power >= step) ?? 1;
  return Math.max(1, lead * power);
}

type Line = readonly [start: ReturnType<View['at']>, end: ReturnType<View['at']>];

function baselines(sites: readonly Site[], view: View): Line[] {
  const at = new Map(sites.map((site) => [site.mark, site]));
  return sites.flatMap((site) => {
    const from = new Set(site.checks.map(({ setup }) => setup?.mark && at.get(setup.mark)));
    return [...from].flatMap((base) => {
      if (!base || base === site) return [];
      return [[view.at(base.ground), view.at(site.ground)] as const];
    });
  });
}

/** What a line covers, near enough for a label to keep off it. */
function alongLine([start, end]: Line): Box[] {
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  const count = Math.ceil(Math.hypot(dx, dy) / 8);
  return Array.from({ length: count + 1 }, (_, index) => {
    const share = index / Math.max(1, count);
    return { x: start.x + dx * share - 1, y: start.y + dy * share - 1, width: 2, height: 2 };
  });
}

/** Marks that are not drawn in full, so that the part that is lies where it belongs. */
function otherSites(sites: readonly Site[], view: View): Markup | null {
  const places = sites.filter(({ inPart }) => !inPart).map(({ ground }) => view.at(ground));
  if (places.length === 0) return null;
  return shape(
    'hair',
    places.map(({ x, y }) => `M${rounded(x - 2)} ${rounded(y)}a2 2 0 1 0 4 0a2 2 0 1 0 -4 0`).join(''),
  );
}

function siteSign(
  inspection: Inspection,
  site: Site,
  view: View,
  exaggeration: number | null,
  canvas: Canvas,
): Markup {
  const { x, y } = view.at(site.ground);
  const { mark, base, checks } = site;
  const tolerance = ringOf(site);
  const ring =
    exaggeration !== null && tolerance > 0
      ? element('circle', {
          class: 'dashed',
          cx: x,
          cy: y,
          r: tolerance * view.pixels * exaggeration,
        })
      : null;
  return group(
    ring,
    standsFor(
      canvas,
      inspection.session,
      mark.mark.place,
      `${base ? 'base on mark' : 'mark'} ${mark.mark.name}`,
      base ? baseSign(x, y) : isHole(mark.east) ? looseSign(x, y) : circle('outline', x, y, 4.5),
    ),
    ...(exaggeration === null
      ? []
      : checks.map((check) => arrow(inspection, check, x, y, view.pixels * exaggeration, canvas))),
  );
}

/** The widest tolerance of the checks that can be drawn, in metres; 0 where there is none. */
const ringOf = ({ checks }: Site): number =>
  Math.max(
    0,
    ...checks
      .filter((check) => flatResidual(check) !== null)
      .map(({ tolerance: { horizontal } }) => (isHole(horizontal) ? 0 : horizontal.value)),
  );

const baseSign = (x: number, y: number) =>
  group(
    shape('outline', `M${rounded(x - 9)} ${rounded(y + 6)}h18l-9 -15z`),
    element('circle', { class: 'fill-ink', cx: x, cy: y, r: 1.8 }),
  );
/** A mark for movement only, where it was first observed. */
const looseSign = (x: number, y: number) => stroke('firm', x - 4, y, x + 4, y);

/** Where the check lies against its mark; one that leaves the plan is cut off and says so. */
function arrow(
  inspection: Inspection,
  check: CheckValues,
  x: number,
  y: number,
  scale: number,
  canvas: Canvas,
): Markup | null {
  const residual = flatResidual(check);
  if (!residual) return null;
  const length = Math.hypot(residual.east, residual.north) * scale;
  const most = LONGEST * 2.2;
  const shown = Math.min(length, most);
  const [dx, dy] =
    length === 0
      ? [0, 0]
      : [(residual.east * scale * shown) / length, (-residual.north * scale * shown) / length];
  const fails = check.verdict === 'fails';
  const told = `${check.check.name}: ${signed(residual.east, true)} east, ${signed(residual.north, true)} north`;
  const end = { x: x + dx, y: y + dy };
  return standsFor(
    canvas,
    inspection.session,
    check.check.observed?.place ?? check.check.place,
    told,
    stroke(fails ? 'bad' : 'firm', x, y, end.x, end.y),
    length > most
      ? shape('fill-bad', headAt(end, dx, dy, 10))
      : fails
        ? shape('bad', `M${rounded(end.x - 4)} ${rounded(end.y - 4)}l8 8m0 -8l-8 8`)
        : circle('fill-ink', end.x, end.y, 2.6),
  );
}

function headAt(end: { x: number; y: number }, dx: number, dy: number, size: number): string {
  const length = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [(dx / length) * size, (dy / length) * size];
  return `M${rounded(end.x + ux * 0.3)} ${rounded(end.y + uy * 0.3)}L${rounded(end.x - ux - uy * 0.5)} ${rounded(end.y - uy + ux * 0.5)}L${rounded(end.x - ux + uy * 0.5)} ${rounded(end.y - uy - ux * 0.5)}z`;
}

/** What a sign and its arrows cover, so that no label lies on them. */
function signBoxes(site: Site, view: View, exaggeration: number | null): Box[] {
  const { x, y } = view.at(site.ground);
  const boxes: Box[] = [{ x: x - 9, y: y - 9, width: 18, height: 18 }];
  for (const check of exaggeration === null ? [] : site.checks) {
    const residual = flatResidual(check);
    if (!residual) continue;
    const scale = view.pixels * (exaggeration ?? 1);
    const [dx, dy] = [residual.east * scale, -residual.north * scale];
    const shrink = Math.min(1, (LONGEST * 2.2) / Math.max(1, Math.hypot(dx, dy)));
    boxes.push({
      x: Math.min(x, x + dx * shrink) - 3,
      y: Math.min(y, y + dy * shrink) - 3,
      width: Math.abs(dx * shrink) + 6,
      height: Math.abs(dy * shrink) + 6,
    });
  }
  return boxes;
}

function siteLabel(
  inspection: Inspection,
  site: Site,
  view: View,
  exaggeration: number | null,
  open: Taken,
  taken: Taken,
  field: Box,
  canvas: Canvas,
): Markup | null {
  const { mark, base, checks } = site;
  const room = isNarrow(canvas) ? 120 : 190;
  const name = fitted(mark.mark.name, TEXT, room);
  const distance = checks.map((check) => check.distance.ellipsoid).find((length) => !isHole(length));
  const details = [
    base ? 'base' : null,
    distance && !isHole(distance) && distance.value > 0 ? showDistance(distance.value) : null,
    checks.length > 0 ? checkNames(checks, room) : null,
  ].filter((text) => text !== null);
  const detail = fitted(details.join(' · '), SMALL, room);
  const width = Math.max(textWidth(name, TEXT), textWidth(detail, SMALL)) + 4;
  const size = { width, height: detail === '' ? 17 : 32 };
  const anchor = view.at(site.ground);
  const clear = exaggeration === null ? 12 : Math.max(12, ringOf(site) * view.pixels * exaggeration + 5);
  const place =
    freePlace(anchor, size, clear, open, field) ??
    freePlace(anchor, size, clear, taken, field) ??
    freePlace(anchor, size, 12, taken, field);
  if (!place) return null;
  taken.add(place);
  return standsFor(
    canvas,
    inspection.session,
    mark.mark.place,
    `mark ${mark.mark.name}`,
    leaderTo(anchor, place, clear),
    words(name, place.x + 2, place.y + 9, { tone: 'strong halo' }),
    detail === '' ? null : words(detail, place.x + 2, place.y + 24, { size: SMALL, tone: 'quiet halo' }),
  );
}

/** Only where the label had to move away from what it names. */
function leaderTo(anchor: { x: number; y: number }, place: Box, clear: number): Markup | null {
  const x = Math.min(place.x + place.width, Math.max(place.x, anchor.x));
  const y = Math.min(place.y + place.height, Math.max(place.y, anchor.y));
  return Math.hypot(x - anchor.x, y - anchor.y) > clear + 10
    ? stroke('leader', anchor.x, anchor.y, x, y)
    : null;
}

function checkNames(checks: readonly CheckValues[], room: number): string {
  const names = checks.map(({ check }) => check.name).join(', ');
  if (checks.length <= 3 && textWidth(names, SMALL) < room * 0.62) return names;
  return checks.length === 1 ? '1 check' : `${checks.length} checks`;
}

/** `12 m`, `1.01 km`. */
const showDistance = (length: number) =>
  length >= 1000 ? `${showNumber(length / 1000, 2)} km` : `${showNumber(length, length < 10 ? 1 : 0)} m`;

function pointSigns(
  inspection: Inspection,
  { name, grounds, place }: Measured,
  view: View,
  canvas: Canvas,
): Markup {
  const crosses = grounds.map((ground) => {
    const { x, y } = view.at(ground);
    return `M${rounded(x - 2.5)} ${rounded(y)}h5m-2.5 -2.5v5`;
  });
  return standsFor(
    canvas,
    inspection.session,
    place,
    name === null ? `${grounds.length} points` : `point ${name}`,
    shape('hair', crosses.join('')),
  );
}

function pointLabel({ name, grounds }: Measured, view: View, taken: Taken, field: Box): Markup | null {
  const [ground] = grounds;
  if (name === null || !ground) return null;
  const shown = fitted(name, SMALL, 90);
  const place = freePlace(
    view.at(ground),
    { width: textWidth(shown, SMALL) + 2, height: 14 },
    5,
    taken,
    field,
  );
  if (!place) return null;
  taken.add(place);
  return words(shown, place.x + 1, place.y + 7, { size: SMALL, tone: 'quiet halo' });
}

/** At the right, unless a mark lies there and none at the left. */
function northCorner(sites: readonly Site[], view: View, width: number): number {
  const near = (x: number) =>
    sites.filter(({ ground }) => Math.abs(view.at(ground).x - x) < 110 && view.at(ground).y < 120).length;
  return near(width - 24) > near(24) ? 24 : width - 24;
}

function northArrow(x: number, y: number, { derivation }: Inspection): Markup {
  const grid = isHole(derivation.frame.grid) ? 'N' : 'grid N';
  return group(
    shape('fill-ink', `M${rounded(x)} ${rounded(y)}l7 30l-7 -7z`),
    shape('line', `M${rounded(x)} ${rounded(y)}l-7 30l7 -7z`),
    words(grid, x, y + 42, { size: SMALL, anchor: 'middle' }),
  );
}

function scaleBar(view: View, x: number, y: number, canvas: Canvas): Markup {
  const most = (canvas.width * 0.28) / view.pixels;
  const power = 10 ** Math.floor(Math.log10(most));
  const lead = most / power;
  const length = (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
  const width = length * view.pixels;
  const label =
    length >= 1000 ? `${showNumber(length / 1000, 0)} km` : `${showNumber(length, length < 1 ? 1 : 0)} m`;
  return group(
    box('outline', x, y, width, 5),
    box('fill-ink', x, y, width / 2, 5),
    words('0', x, y + 16, { size: SMALL, tone: 'quiet' }),
    words(label, x + width, y + 16, { size: SMALL, anchor: 'middle', tone: 'quiet' }),
  );
}

function exaggerationText(
  exaggeration: number | null,
  sites: readonly Site[],
  y: number,
  canvas: Canvas,
): Markup | null {
  if (exaggeration === null) return null;
  const ring = sites.some((site) => ringOf(site) > 0);
  const narrow = isNarrow(canvas);
  const times = timesInWords(exaggeration);
  const lines = narrow
    ? [`Residuals ${times}`, ...(ring ? ['ring: tolerance'] : [])]
    : [`Residuals drawn ${times}${ring ? '; the dashed ring is the tolerance' : ''}`];
  return group(
    ...lines.map((line, index) =>
      words(line, canvas.width, y + 2 + index * 15, { size: SMALL, anchor: 'end', tone: 'quiet' }),
    ),
  );
}

/** `5 000 times larger`. */
export const timesInWords = (exaggeration: number): string =>
  exaggeration === 1
    ? 'at the scale of the plan'
    : `${showNumber(exaggeration, 0).replace(/\B(?=(\d{3})+$)/g, '\u202f')} times larger`;

function describe(sites: readonly Site[], points: number, exaggeration: number | null): string {
  const marks = sites.map(({ mark, base, checks }) => {
    const seen = checks.flatMap((check) => {
      const residual = flatResidual(check);
      return residual
        ? [
            `${check.check.name} ${signed(residual.east, true)} east and ${signed(residual.north, true)} north of it`,
          ]
        : [];
    });
    return `${base ? 'The base on mark' : 'Mark'} ${mark.mark.name}${seen.length > 0 ? `: ${seen.join('; ')}` : ''}.`;
  });
  return [
    ...marks,
    ...(points > 0 ? [`${points === 1 ? '1 point' : `${points} points`}.`] : []),
    ...(exaggeration === null ? [] : [`Residuals are drawn ${timesInWords(exaggeration)}.`]),
  ].join(' ');
}
