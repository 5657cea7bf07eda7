/** What every drawing is drawn on: its width, its frame with title and description, and things that lead to their line. */
import type { Place } from '../../../grammar/tree.ts';
import { whereIs, type Where } from '../../session/where.ts';
import type { Session } from '../../session/session.ts';
import { brokenInto, drawnWidth, textWidth } from './text.ts';
import { element, rounded, textsIn, type Attributes, type Child, type Markup } from './markup.ts';

export interface Canvas {
  /** In pixels; a drawing is laid out anew for each width, never shrunk. */
  readonly width: number;
  /** Where a drawn thing leads when it is followed; null where nothing is to be followed. */
  readonly link: ((where: Where) => string) | null;
}

/** Below this width a drawing is laid out for a phone or a narrow panel. */
export const isNarrow = ({ width }: Canvas) => width < 520;

/** Sizes of text in pixels. */
export const TEXT = 12.5;
export const SMALL = 11;

export interface Told {
  readonly title: string;
  /** What the drawing shows, for those who do not see it. */
  readonly description: string;
}

export function drawing(canvas: Canvas, height: number, told: Told, ...children: Child[]): Markup {
  const { width } = canvas;
  return element(
    'svg',
    {
      class: 'drawing',
      viewBox: `0 0 ${rounded(width)} ${rounded(height)}`,
      width,
      height,
      role: 'group',
      'aria-label': told.title,
    },
    element('title', {}, told.title),
    element('desc', {}, told.description),
    ...children,
  );
}

/** A thing that stands for a line of the session: it says so when pointed at, and leads there. */
export function standsFor(
  canvas: Canvas,
  session: Pick<Session, 'documents'>,
  place: Place | null,
  label: string,
  ...children: Child[]
): Markup {
  const title = element('title', {}, spoken(label, children));
  if (!place) return element('g', {}, title, ...children);
  const where = whereIs(session, place);
  const attributes = { 'data-place': `${where.path}:${where.line}`, class: 'thing' };
  return canvas.link
    ? element('a', { ...attributes, href: canvas.link(where) }, title, ...children)
    : element('g', attributes, title, ...children);
}

/** What is read of a thing holds what is seen of it, so that it can be called by that, too. */
function spoken(label: string, children: readonly Child[]): string {
  const seen = children.flatMap(textsIn).join(' ');
  return label.includes(seen) ? label : `${seen}: ${label}`;
}

/** Why there is nothing to draw, in as many lines as it takes. */
export function emptyDrawing(canvas: Canvas, title: string, said: string): Markup {
  // A word of the language stands in backticks where text is typed, and in quotes where it is drawn.
  const sentence = said.replace(/`([^`]*)`/g, '“$1”');
  const lines = brokenInto(sentence, canvas.width, TEXT);
  return drawing(
    canvas,
    lines.length * 18 + 8,
    { title, description: sentence },
    ...lines.map((line, index) => words(line, 0, 12 + index * 18, { tone: 'quiet' })),
  );
}

export interface Words {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Further classes: `quiet`, `strong`, `bad`, `number`. */
  readonly tone?: string;
}

/** A line of text whose middle height is at y. */
export function words(text: string, x: number, y: number, how: Words = {}): Markup {
  const { size = TEXT, anchor = 'start', tone } = how;
  const width = drawnWidth(text, size, /\b(?:strong|bad)\b/.test(tone ?? ''));
  return element(
    'text',
    {
      x,
      y: y + size * 0.35,
      'font-size': size,
      'text-anchor': anchor === 'start' ? null : anchor,
      // Room was kept for just this width; a wider face is set closer, so that no label runs into another.
      ...(width === null || width === 0 ? {} : { textLength: width, lengthAdjust: 'spacingAndGlyphs' }),
      class: tone ?? null,
    },
    text,
  );
}

/** A line of text about x, as near to it as it stays within the drawing. */
export function wordsAbout(canvas: Canvas, text: string, x: number, y: number, how: Words = {}): Markup {
  const half = textWidth(text, how.size ?? TEXT) / 2;
  return words(text, Math.max(half, Math.min(x, canvas.width - half)), y, { ...how, anchor: 'middle' });
}

export const stroke = (tone: string, x1: number, y1: number, x2: number, y2: number): Markup =>
  element('line', { class: tone, x1, y1, x2, y2 });

export const shape = (tone: string, d: string, more: Attributes = {}): Markup =>
  element('path', { class: tone, d, ...more });

export const box = (tone: string, x: number, y: number, width: number, height: number, round = 0): Markup =>
  element('rect', {
    class: tone,
    x,
    y,
    width: Math.max(0, width),
    height: Math.max(0, height),
    rx: round || null,
  });

export const circle = (tone: string, cx: number, cy: number, r: number): Markup =>
  element('circle', { class: tone, cx, cy, r });

/** Slanted lines that fill a rectangle, drawn one by one so that they print as they show; `step` apart. */
export function hatching(
  tone: string,
  area: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  step: number,
  rising = true,
): Markup {
  const { x, y, width, height } = area;
  const lines: string[] = [];
  const count = Math.min(MOST_LINES, Math.ceil((width + height) / step));
  for (let index = 1; index < count; index++) {
    const along = index * step;
    const [x1, y1] = along <= height ? [0, along] : [along - height, height];
    const [x2, y2] = along <= width ? [along, 0] : [width, along - width];
    const flip = (down: number) => (rising ? down : height - down);
    lines.push(`M${rounded(x + x1)} ${rounded(y + flip(y1))}L${rounded(x + x2)} ${rounded(y + flip(y2))}`);
  }
  return shape(tone, lines.join(''));
}
const MOST_LINES = 2000;

export type Verdict = 'passes' | 'marginal' | 'fails' | 'undecided';

export const VERDICTS: Readonly<Record<Verdict, string>> = {
  passes: 'passes',
  marginal: 'is marginal',
  fails: 'fails',
  undecided: 'is undecided',
};

/** Told apart by shape: a filled disc with a tick, a square with a cross, an open ring with a question mark for what is marginal or undecided. */
export function verdictSign(verdict: Verdict, x: number, y: number, size = 7): Markup {
  const s = size;
  if (verdict === 'passes')
    return element(
      'g',
      {},
      circle('fill-good', x, y, s),
      shape(
        'on-fill',
        `M${rounded(x - s * 0.45)} ${rounded(y)}l${rounded(s * 0.32)} ${rounded(s * 0.36)}l${rounded(s * 0.58)} ${rounded(-s * 0.72)}`,
      ),
    );
  if (verdict === 'fails')
    return element(
      'g',
      {},
      box('fill-bad', x - s, y - s, 2 * s, 2 * s, 1),
      shape(
        'on-fill',
        `M${rounded(x - s * 0.5)} ${rounded(y - s * 0.5)}l${rounded(s)} ${rounded(s)}m0 ${rounded(-s)}l${rounded(-s)} ${rounded(s)}`,
      ),
    );
  return element(
    'g',
    {},
    circle('ring', x, y, s),
    shape(
      s > 10 ? 'firm' : 'line',
      `M${rounded(x - s * 0.36)} ${rounded(y - s * 0.22)}a${rounded(s * 0.36)} ${rounded(s * 0.36)} 0 1 1 ${rounded(s * 0.5)} ${rounded(s * 0.33)}q${rounded(-s * 0.14)} ${rounded(s * 0.1)} ${rounded(-s * 0.14)} ${rounded(s * 0.26)}m0 ${rounded(s * 0.2)}v${rounded(s * 0.16)}`,
    ),
  );
}
