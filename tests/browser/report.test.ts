/** The report in a real browser: text that stays text, labels that do not collide, phone and paper, and what axe says. */
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sessionDrawings } from '../../server/record/drawings/session-drawings.ts';
import { DRAWING_STYLE } from '../../server/record/drawings/style.ts';
import { reportPage } from '../../server/record/report/report.ts';
import type { Inspection } from '../../server/inspect.ts';
import {
  cleanDay,
  extensionDay,
  highDay,
  hostileDay,
  hourAtTheEnd,
  lowDay,
  nothingAtAll,
  oneCheck,
  twelveChecks,
  twoDays,
  withoutAnswers,
  withoutChecks,
  withoutPositions,
} from '../report-sessions.ts';
import { hasChromium, launchChromium, sayWhenMissing } from './chromium.ts';

sayWhenMissing('the report in a browser');

const days: Readonly<Record<string, () => Inspection>> = {
  cleanDay,
  extensionDay,
  highDay,
  hostileDay,
  hourAtTheEnd,
  lowDay,
  nothingAtAll,
  oneCheck,
  twelveChecks,
  twoDays,
  withoutAnswers,
  withoutChecks,
  withoutPositions,
};
const BOTH_WAYS = new Set([extensionDay, hostileDay, twelveChecks]);
/** Debian's usual fallback, a tenth wider than the faces that a report asks for. */
const WIDE = 'DejaVu Sans';
const PHONE = { width: 360, height: 740 };
const DESK = { width: 1100, height: 900 };

describe.runIf(hasChromium)('the report', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  interface Opened {
    readonly page: Page;
    /** Everything that the page asked for, said or tried. */
    readonly asked: readonly string[];
  }

  async function withPage(
    html: string,
    { size = DESK, dark = false, allowPolicy = true },
    look: (opened: Opened) => Promise<void>,
  ): Promise<void> {
    const context = await browser.newContext({
      viewport: size,
      offline: true,
      bypassCSP: !allowPolicy,
      colorScheme: dark ? 'dark' : 'light',
    });
    const page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('dialog', (dialog) => {
      asked.push(`dialog ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on('pageerror', (error) => asked.push(error.message));
    page.on('console', (message) => asked.push(message.text()));
    try {
      await page.setContent(html);
      await look({ page, asked });
    } finally {
      await context.close();
    }
  }

  describe.each(Object.entries(days))('of %s', (name, day) => {
    const html = reportPage([day()]);

    it('runs nothing and asks for nothing, even without its own policy', () =>
      withPage(html, { allowPolicy: false }, async ({ page, asked }) => {
        const active = await page.evaluate(
          () =>
            document.querySelectorAll(
              'script,iframe,object,embed,img,link,base,form,input,button,video,audio,foreignObject,use,image,animate,set',
            ).length,
        );
        const handlers = await page.evaluate(
          () =>
            [...document.querySelectorAll('*')].filter((one) =>
              [...one.attributes].some(({ name }) => name.startsWith('on')),
            ).length,
        );
        expect({ active, handlers }).toEqual({ active: 0, handlers: 0 });
        expect(asked).toEqual([]);
      }));

    it.each([
      ['a phone', PHONE],
      ['a desk', DESK],
    ])('fits %s, and no label lies on another or leaves its drawing', (_size, size) =>
      withPage(html, { size }, async ({ page }) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          size.width,
        );
        expect(await page.evaluate(collisions)).toEqual([]);
      }),
    );

    it('keeps its labels apart where the only face is a wide one', () =>
      withPage(html, { size: PHONE, allowPolicy: false }, async ({ page }) => {
        expect(await page.evaluate(isWider, WIDE), `${WIDE} must be installed for this`).toBe(true);
        await page.addStyleTag({ content: `*{font-family:"${WIDE}"!important}` });
        expect(await page.evaluate(collisions)).toEqual([]);
      }));

    it('draws for the narrowest panel, and no label lies on another or leaves its drawing', () => {
      const { drawings } = sessionDrawings(day(), 230);
      const figures = drawings.map(({ svg }) => `<figure style="margin:0">${svg}</figure>`).join('');
      return withPage(
        `<style>:root{--ink:#222;--quiet:#666;--faint:#ccc;--bad:#a22;--paper:#fff;--good:#262;--steel:#259;--tint:#eee}body{margin:0;width:240px;font-family:"Liberation Sans"}${DRAWING_STYLE}</style>${figures}`,
        { size: PHONE, allowPolicy: false },
        async ({ page }) => {
          const shots = process.env['SHOTS'];
          if (shots) await page.screenshot({ path: `${shots}/narrow-${name}.png`, fullPage: true });
          expect(await page.evaluate(collisions)).toEqual([]);
        },
      );
    });

    // One look at each day in the dark on a phone, where contrast and room are least, and at a few in light as well.
    it.each([
      ...(BOTH_WAYS.has(day) ? [['in light', DESK, false] as const] : []),
      ['in the dark, on a phone', PHONE, true] as const,
    ])('is accessible %s', (_how, size, dark) =>
      withPage(html, { size, dark, allowPolicy: false }, async ({ page }) => {
        await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
        await page.evaluate(axe.source);
        const found = await page.evaluate(async () => {
          const { axe: run } = window as unknown as { axe: { run: () => Promise<AxeResults> } };
          const { violations } = await run.run();
          return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html ?? ''}`);
        });
        expect(found).toEqual([]);
      }),
    );
  });

  it('unfolds every derivation on paper, in black on white', () =>
    withPage(reportPage([extensionDay()]), { dark: true }, async ({ page }) => {
      const visible = () =>
        page.evaluate(() => [...document.querySelectorAll('.story')].map((one) => one.checkVisibility()));
      expect(new Set(await visible())).toEqual(new Set([false]));
      await page.emulateMedia({ media: 'print' });
      const printed = await visible();
      expect(printed.length).toBeGreaterThan(50);
      expect(new Set(printed)).toEqual(new Set([true]));
      const colours = await page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.body);
        return [color, backgroundColor];
      });
      expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    }));

  it.each(['A4', 'Letter'])('prints on %s without cutting a drawing in two', (format) =>
    withPage(reportPage([twelveChecks()]), {}, async ({ page }) => {
      const pdf = await page.pdf({ format, preferCSSPageSize: true });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      await page.emulateMedia({ media: 'print' });
      const broken = await page.evaluate(() =>
        [...document.querySelectorAll('figure, .finding, tr')].filter(
          (one) => getComputedStyle(one).breakInside !== 'avoid',
        ),
      );
      expect(broken).toEqual([]);
      // No facts and no short table are parted, and no heading or first row is left behind at the foot of a page.
      const parted = await page.evaluate(() => ({
        inside: [...document.querySelectorAll('dl.facts, table')].filter(
          (one) =>
            one.querySelectorAll('tbody tr').length < 9 && getComputedStyle(one).breakInside !== 'avoid',
        ).length,
        after: [...document.querySelectorAll('h2, h3, thead, tbody tr:first-child')].filter(
          (one) => getComputedStyle(one).breakAfter !== 'avoid',
        ).length,
      }));
      expect(parted).toEqual({ inside: 0, after: 0 });
      // A drawing that is taller than a page would be cut whatever the style says; the shorter page has 246 mm inside.
      const tallest = await page.evaluate(() =>
        Math.max(
          ...[...document.querySelectorAll('.desk svg')].map((one) => one.getBoundingClientRect().height),
        ),
      );
      expect(tallest).toBeLessThan((245 / 25.4) * 96);
    }),
  );

  it('leads from a number to its derivation, unfolding it', () =>
    withPage(reportPage([extensionDay()]), {}, async ({ page }) => {
      await page.click('table a[href^="#s1-d"]');
      const shown = await page.evaluate(() => {
        const target = document.querySelector(':target');
        return target !== null && target.checkVisibility();
      });
      expect(shown).toBe(true);
    }));

  it('holds still for those who ask for it', async () => {
    const context = await browser.newContext({ reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.setContent(reportPage([oneCheck()]));
    const still = await page.evaluate(
      () =>
        getComputedStyle(document.documentElement).scrollBehavior === 'auto' &&
        document.getAnimations().length === 0,
    );
    expect(still).toBe(true);
    await context.close();
  });
});

interface AxeResults {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/** In the page: whether the face is there and sets this text wider than the usual ones. */
function isWider(face: string): boolean {
  const measure = document.createElement('canvas').getContext('2d');
  const width = (font: string) => {
    if (measure) measure.font = `100px ${font}`;
    return measure?.measureText('Antenna height 1.533 m').width ?? 0;
  };
  return width(`"${face}", "Liberation Sans"`) > 1.05 * width('"Liberation Sans"');
}

/** Pairs of visible labels of one drawing whose boxes overlap by more than a hair, and what leaves its drawing. */
function collisions(): string[] {
  const found: string[] = [];
  for (const svg of document.querySelectorAll('figure svg')) {
    const labels = [...svg.querySelectorAll('text')]
      .map((one) => ({ text: one.textContent ?? '', box: one.getBoundingClientRect() }))
      .filter(({ text, box }) => text !== '' && box.width > 0);
    const drawing = svg.getBoundingClientRect();
    for (const one of svg.querySelectorAll('path, rect, circle, line, text')) {
      const { top, bottom } = one.getBoundingClientRect();
      if (top < drawing.top - 3 || bottom > drawing.bottom + 3)
        found.push(`${one.tagName} leaves ${svg.getAttribute('aria-label') ?? 'its drawing'} above or below`);
    }
    labels.forEach(({ text, box }, index) => {
      if (box.left < drawing.left - 1 || box.right > drawing.right + 1)
        found.push(`${text} leaves its drawing`);
      for (const other of labels.slice(index + 1)) {
        const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
        if (across > 1 && down > 4) found.push(`${text} on ${other.text}`);
      }
    });
  }
  return found;
}
