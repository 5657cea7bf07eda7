/** The drawings of a session for one who has its text beside them: heights, plan, day and residuals, laid out for a width. */
import type { Inspection } from '../inspect.ts';
import type { Canvas } from './drawings/canvas.ts';
import { dayStrip } from './drawings/day.ts';
import { heightStack } from './drawings/height-stack.ts';
import type { Markup } from './drawings/markup.ts';
import { plan } from './drawings/plan.ts';
import { residualChart } from './drawings/residuals.ts';

export interface SessionDrawing {
  /** Its own among the drawings of a session, and the same after every edit. */
  readonly name: string;
  readonly heading: string;
  readonly svg: string;
}

export interface SessionDrawings {
  readonly drawings: readonly SessionDrawing[];
  /** Setups beyond the most that are drawn. */
  readonly setupsLeft: number;
}

/** Height stacks beyond this are for the report; beside the text they would only make each keystroke wait. */
const MOST_SETUPS = 12;
const WIDTHS = { least: 240, most: 1200 };

/** The width is in pixels; no drawings where nothing is written down that could be drawn. */
export function sessionDrawings(inspection: Inspection, width: number): SessionDrawings {
  const { setups, marks, checks } = inspection.derivation;
  if (setups.size === 0 && marks.size === 0 && checks.length === 0) return { drawings: [], setupsLeft: 0 };
  const canvas: Canvas = {
    width: Math.min(WIDTHS.most, Math.max(WIDTHS.least, Math.round(width))),
    link: ({ line }) => `#${line}`,
  };
  const made = (name: string, heading: string, { markup }: Markup): SessionDrawing => ({
    name,
    heading,
    svg: markup,
  });
  const drawn = [...setups.values()].slice(0, MOST_SETUPS);
  return {
    drawings: [
      ...drawn.map((values) =>
        made(
          `height ${values.setup.name}`,
          `Antenna height at ${values.setup.name}`,
          heightStack(inspection, values, canvas),
        ),
      ),
      made('plan', 'Plan', plan(inspection, canvas)),
      made('day', 'The day', dayStrip(inspection, canvas)),
      made('residuals', 'Checks against tolerance', residualChart(inspection, canvas)),
    ],
    setupsLeft: setups.size - drawn.length,
  };
}
