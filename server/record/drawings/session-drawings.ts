/** The drawings of a session for one who has its text beside them: heights, plan, day and residuals, laid out for a width. */
import type { Inspection } from '../../inspect.ts';
import type { Canvas } from './canvas.ts';
import { dayStrip } from './day.ts';
import { heightStack } from './height-stack.ts';
import type { Markup } from './markup.ts';
import { plan } from './plan.ts';
import { residualChart } from './residuals.ts';
import { shownAround } from './shown.ts';

export interface SessionDrawing {
  /** Its own among the drawings of a session, and the same after every edit. */
  readonly name: string;
  readonly heading: string;
  readonly svg: string;
}

export interface SessionDrawings {
  readonly drawings: readonly SessionDrawing[];
  /** Says what of a long session is drawn; null where it is all. */
  readonly part: string | null;
}

const WIDTHS = { least: 240, most: 1200 };

/**
 * No drawings where nothing is written down that could be drawn.
 * @param width in pixels
 * @param line of the cursor, from 1, around which a long session is drawn
 */
export function sessionDrawings(
  inspection: Inspection,
  width: number,
  line: number | null = null,
): SessionDrawings {
  const { setups, marks, checks } = inspection.derivation;
  if (setups.size === 0 && marks.size === 0 && checks.length === 0) return { drawings: [], part: null };
  const canvas: Canvas = {
    width: Math.min(WIDTHS.most, Math.max(WIDTHS.least, Math.round(width))),
    link: ({ line: at }) => `#${at}`,
  };
  const shown = shownAround(inspection, line);
  const made = (name: string, heading: string, { markup }: Markup): SessionDrawing => ({
    name,
    heading,
    svg: markup,
  });
  return {
    drawings: [
      ...shown.setups.map((values) =>
        made(
          `height ${values.setup.name}`,
          `Antenna height at ${values.setup.name}`,
          heightStack(inspection, values, canvas),
        ),
      ),
      made('plan', 'Plan', plan(inspection, canvas, shown)),
      made('day', 'The day', dayStrip(inspection, canvas, shown)),
      made('residuals', 'Checks against tolerance', residualChart(inspection, canvas, shown)),
    ],
    part: shown.part,
  };
}
