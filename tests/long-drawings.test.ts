/** The drawings of a long session: a page of it around the cursor, and work in proportion to its length. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { dayStrip } from '../server/record/drawings/day.ts';
import { plan } from '../server/record/drawings/plan.ts';
import { residualChart } from '../server/record/drawings/residuals.ts';
import { sessionDrawings } from '../server/record/drawings/session-drawings.ts';
import { NO_FILES } from '../server/session/files.ts';
import { sessionOf } from './bench/sessions.mjs';
import { growth } from './growth.ts';

const inspected = (text: string) => inspect(openDocument('long.trib', text), NO_FILES);
function lineOf(text: string, wanted: string): number {
  const at = text.indexOf(wanted);
  if (at < 0) throw new Error(`the session has no ${wanted}`);
  return text.slice(0, at).split('\n').length;
}

describe('a session of 2 000 lines', () => {
  const text = sessionOf(2_000);
  const inspection = inspected(text);
  const stacks = (line: number | null) =>
    sessionDrawings(inspection, 680, line).drawings.flatMap(
      ({ name }) => name.match(/^height (.*)/)?.[1] ?? [],
    );

  it.each(['setup BASE-30 ', 'mark PM-30 ', 'check OPEN-30 ', 'check CLOSE-30 '])(
    'shows the setup of %s',
    (entry) => {
      const around = stacks(lineOf(text, entry) + 1);
      expect(around).toHaveLength(12);
      expect(around).toContain('BASE-30');
    },
  );

  it('says how much of it is drawn, and draws no check of another setup', () => {
    const { drawings, part } = sessionDrawings(inspection, 680, lineOf(text, 'setup BASE-30 '));
    expect(part).toMatch(/^12 of \d+ setups and 24 of \d+ checks are drawn/);
    const rest = drawings.filter(({ name }) => name === 'day' || name === 'residuals').map(({ svg }) => svg);
    for (const svg of rest) {
      expect(svg).toContain('OPEN-30');
      expect(svg).not.toContain('OPEN-60');
    }
  });

  it('stays as it is while the cursor moves within a setup', () => {
    const line = lineOf(text, 'setup BASE-30 ');
    expect(sessionDrawings(inspection, 680, line + 1)).toEqual(sessionDrawings(inspection, 680, line + 3));
  });

  it('is drawn from its beginning where the cursor is not known', () => {
    expect(stacks(null)).toContain('BASE-1');
  });
});

it('a short session is drawn whole, wherever the cursor is', () => {
  const text = sessionOf(200);
  const inspection = inspected(text);
  expect(sessionDrawings(inspection, 680, 150).part).toBeNull();
  expect(sessionDrawings(inspection, 680, 150)).toEqual(sessionDrawings(inspection, 680));
});

describe('eight times the session is at most twelve times the work for', () => {
  const [short, long] = [sessionOf(1_250), sessionOf(10_000)];
  const inspections = new Map<string, Inspection>([short, long].map((text) => [text, inspected(text)]));
  const canvas = { width: 680, link: null };
  it.each([
    ['the plan', plan],
    ['the day', dayStrip],
    ['the residuals', residualChart],
  ] as const)('%s', (_, draw) => {
    const ratio = growth([short, long], 12, (text) => {
      const inspection = inspections.get(text);
      if (inspection) draw(inspection, canvas);
    });
    expect(ratio).toBeLessThan(12);
  });
});
