/** How far a stretch of the day can be trusted, as patterns that read without colour. */
import type { TrustClass } from '../../derive/trust/spans.ts';
import { box, hatching } from './canvas.ts';
import { element, group, rounded, type Markup } from './markup.ts';

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Solid where proved, thinner the less is proved; crossed in bad ink where in doubt. */
export function swatch(name: TrustClass, area: Area): Markup {
  const { x, y, width, height } = area;
  const frame = (tone: string) => box(tone, x, y, width, height);
  switch (name) {
    case 'bracketed':
      return group(box('fill-good', x, y, width, height));
    case 'held':
      return group(box('fill-good', x, y, width, height), hatching('on-hatch', area, 9));
    case 'not-opened':
      return group(frame('outline'), hatching('good-hair', area, 6));
    case 'not-closed':
      return group(frame('outline'), hatching('good-hair', area, 6, false));
    case 'position-only':
    case 'height-only':
      return group(frame('outline'), hatching('good-hair', area, 12, name === 'position-only'));
    case 'in-doubt':
      return group(frame('outline-bad'), hatching('bad-hair', area, 6), hatching('bad-hair', area, 6, false));
    case 'unchecked':
      return group(frame('outline'), dots(area));
  }
}

function dots({ x, y, width, height }: Area): Markup {
  const rows = [0.3, 0.7].map((share, index) =>
    element('line', {
      class: 'dotted',
      x1: rounded(x + 4 + index * 3),
      y1: rounded(y + height * share),
      x2: rounded(x + width - 2),
      y2: rounded(y + height * share),
    }),
  );
  return width > 8 ? group(...rows) : group();
}

export const classSwatch = (name: TrustClass, x: number, y: number): Markup =>
  swatch(name, { x, y, width: 24, height: 14 });
