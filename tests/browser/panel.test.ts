/** The page of a session's drawings in a real browser: clicks and keys that lead to lines, the cursor's line, themes and widths. */
import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FromPage, ToPage } from '../../client/panel/messages.ts';
import { pageHtml } from '../../client/panel/page-html.ts';
import { openDocument } from '../../grammar/document.ts';
import { inspect } from '../../server/inspect.ts';
import { sessionDrawings } from '../../server/record/drawings/session-drawings.ts';
import { sessionOf } from '../bench/sessions.mjs';
import { hostileDay } from '../report-sessions.ts';
import { filesOnDisk } from '../samples.ts';
import { hasChromium, launchChromium, sayWhenMissing } from './chromium.ts';

sayWhenMissing('the panel of drawings in a browser');

const SITE = 'http://panel.test';
const CLEAN = 'samples/breakwater.trib';
const BROKEN = 'samples/broken/height-extension.trib';
const FEET = 'samples/jetty-survey-feet.trib';

/** Colours as the editor's own themes give them to a page, and the class that it sets. */
const THEMES = {
  light: {
    kind: 'vscode-light',
    '--vscode-editor-background': '#ffffff',
    '--vscode-editor-foreground': '#000000',
    '--vscode-errorForeground': '#a1260d',
    '--vscode-textLink-foreground': '#006ab1',
    '--vscode-charts-green': '#388a34',
    '--vscode-focusBorder': '#0090f1',
    '--vscode-editor-findMatchHighlightBackground': '#ea5c0055',
  },
  dark: {
    kind: 'vscode-dark',
    '--vscode-editor-background': '#1e1e1e',
    '--vscode-editor-foreground': '#d4d4d4',
    '--vscode-errorForeground': '#f48771',
    '--vscode-textLink-foreground': '#3794ff',
    '--vscode-charts-green': '#89d185',
    '--vscode-focusBorder': '#007fd4',
    '--vscode-editor-findMatchHighlightBackground': '#ea5c0055',
  },
  'high contrast': {
    kind: 'vscode-high-contrast',
    '--vscode-editor-background': '#000000',
    '--vscode-editor-foreground': '#ffffff',
    '--vscode-errorForeground': '#f48771',
    '--vscode-textLink-foreground': '#21a6ff',
    '--vscode-charts-green': '#89d185',
    '--vscode-focusBorder': '#f38518',
  },
} as const;
type Theme = keyof typeof THEMES;

interface Panel {
  readonly page: Page;
  /** What the page has told the editor. */
  readonly heard: () => Promise<readonly FromPage[]>;
  readonly tell: (message: ToPage) => Promise<void>;
  /** What the browser complained about. */
  readonly faults: readonly string[];
}

describe.runIf(hasChromium)('the page of the drawings', () => {
  let browser: Browser;
  const files = new Map<string, string>();

  beforeAll(async () => {
    const { outputFiles } = await build({
      entryPoints: { panel: 'client/panel/page.ts', style: 'client/panel/page.css' },
      bundle: true,
      write: false,
      outdir: '.cache/panel',
      target: 'es2022',
    });
    for (const { path, text } of outputFiles) files.set(path.replace(/^.*[\\/]/, '/'), text);
    const parts = { script: '/panel.js', style: '/style.css', source: SITE, nonce: 'n0nce' };
    files.set('/', pageHtml(parts));
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function withPanel(
    { width = 700, theme = 'light' as Theme },
    look: (panel: Panel) => Promise<void>,
  ): Promise<void> {
    const context = await browser.newContext({ viewport: { width, height: 900 } });
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => faults.push(message.text()));
    await page.route('**/*', (route) => {
      const path = new URL(route.request().url()).pathname;
      const contentType = path.endsWith('.js')
        ? 'text/javascript'
        : path.endsWith('.css')
          ? 'text/css'
          : 'text/html';
      const body = files.get(path);
      return body === undefined ? route.fulfill({ status: 204 }) : route.fulfill({ body, contentType });
    });
    await page.addInitScript(() => {
      const heard: unknown[] = [];
      Object.assign(window, {
        heard,
        acquireVsCodeApi: () => ({
          postMessage: (message: unknown) => heard.push(message),
          setState: (state: unknown) => Object.assign(window, { remembered: state }),
        }),
      });
    });
    try {
      await page.goto(`${SITE}/`);
      await page.evaluate(({ kind, ...colours }) => {
        document.body.className = kind;
        for (const [name, colour] of Object.entries(colours))
          document.documentElement.style.setProperty(name, colour);
      }, THEMES[theme]);
      await page.waitForFunction(() => (window as unknown as { heard: unknown[] }).heard.length > 0);
      await look({
        page,
        faults,
        heard: () => page.evaluate(() => (window as unknown as { heard: FromPage[] }).heard),
        tell: (message) => page.evaluate((data) => window.postMessage(data, '*'), message),
      });
    } finally {
      await context.close();
    }
  }

  /** As the extension answers the width that the page has told. */
  async function draw({ heard, tell, page }: Panel, inspection = inspected(CLEAN)): Promise<void> {
    const said = (await heard()).findLast(({ kind }) => kind === 'width');
    if (said?.kind !== 'width') throw new Error('the page has not said how wide it is');
    await tell({
      kind: 'drawings',
      session: inspection.session.document.path.replace(/^.*\//, ''),
      address: `file:///${inspection.session.document.path}`,
      ...sessionDrawings(inspection, said.width),
    });
    await page.waitForSelector('#drawings svg');
  }

  it('says its width, and draws all four', () =>
    withPanel({}, async (panel) => {
      await draw(panel);
      expect(await panel.page.locator('h2').allTextContents()).toEqual([
        'Antenna height at BASE',
        'Plan',
        'The day',
        'Checks against tolerance',
      ]);
      expect(await panel.page.locator('svg').count()).toBe(4);
      expect(panel.faults).toEqual([]);
    }));

  it('leads from a drawn thing to its line, by hand and by key', () =>
    withPanel({}, async (panel) => {
      await draw(panel);
      const line = lineOf(CLEAN, 'measured    1.284 m');
      const thing = panel.page.locator(`a[data-place="${CLEAN}:${line}"]:has(text)`).first();
      await thing.locator('text').first().click();
      await thing.focus();
      await panel.page.keyboard.press('Enter');
      const wanted = { kind: 'goTo', path: CLEAN, line };
      expect((await panel.heard()).filter(({ kind }) => kind === 'goTo')).toEqual([wanted, wanted]);
      expect(panel.page.url()).toBe(`${SITE}/`);
    }));

  it('reaches every thing with the tab key, and each has a name', () =>
    withPanel({}, async ({ page, ...panel }) => {
      await draw({ page, ...panel });
      const count = await page.locator('.thing').count();
      expect(count).toBeGreaterThan(10);
      const reached = new Set<string>();
      for (let step = 0; step < count; step++) {
        await page.keyboard.press('Tab');
        reached.add(
          await page.evaluate(() =>
            String([...document.querySelectorAll('.thing')].indexOf(document.activeElement as Element)),
          ),
        );
      }
      expect(reached.size).toBe(count);
      expect(reached.has('-1')).toBe(false);
      expect(await page.getByRole('link').count()).toBe(count);
      const nameless = await page
        .locator('.thing')
        .evaluateAll((all) => all.filter((one) => !one.querySelector('title')?.textContent).length);
      expect(nameless).toBe(0);
    }));

  it('shows the line of the cursor, and otherwise the entry that it is in', () =>
    withPanel({}, async (panel) => {
      await draw(panel);
      const here = () =>
        panel.page
          .locator('.thing.here[aria-current]')
          .evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute('data-place')))]);
      const check = lineOf(CLEAN, 'check ');
      const measured = lineOf(CLEAN, 'measured    1.284 m');
      const setup = lineOf(CLEAN, 'setup BASE');
      await panel.tell({ kind: 'cursor', path: CLEAN, line: measured, entry: setup });
      await expect.poll(here).toEqual([`${CLEAN}:${measured}`]);
      await panel.tell({ kind: 'cursor', path: CLEAN, line: check + 2, entry: check });
      await expect.poll(here).toEqual([`${CLEAN}:${check}`]);
      await panel.tell({ kind: 'cursor', path: 'samples/other.trib', line: check, entry: check });
      await expect.poll(here).toEqual([]);
    }));

  it('keeps the focus when the text is edited', () =>
    withPanel({}, async (panel) => {
      await draw(panel);
      const place = () => panel.page.evaluate(() => document.activeElement?.getAttribute('data-place'));
      const line = lineOf(CLEAN, 'measured    1.284 m');
      await panel.page.locator(`a[data-place="${CLEAN}:${line}"]`).first().focus();
      await draw(panel, inspectedText(CLEAN, `# One line more.\n${text(CLEAN)}`));
      await expect.poll(place).toBe(`${CLEAN}:${line + 1}`);
    }));

  it('remembers the session, so that the panel can come back, and gives the focus back at Escape', () =>
    withPanel({}, async (panel) => {
      await draw(panel);
      const remembered = () =>
        panel.page.evaluate(() => (window as unknown as { remembered: unknown }).remembered);
      expect(await remembered()).toEqual({ address: `file:///${CLEAN}` });
      await panel.page.locator('.thing').first().focus();
      await panel.page.keyboard.press('Escape');
      await expect.poll(panel.heard).toContainEqual({ kind: 'leave' });
    }));

  it('says what of a long session is drawn', () =>
    withPanel({}, async (panel) => {
      await draw(panel, inspectedText('long.trib', sessionOf(800)));
      await expect.poll(() => panel.page.locator('#part').innerText()).toMatch(/^12 of \d+ setups/);
      expect(await accessibilityFaults(panel.page)).toEqual([]);
    }));

  it('says what to do where there is nothing, and what went wrong', () =>
    withPanel({}, async ({ page, tell }) => {
      await tell({
        kind: 'drawings',
        session: 'new.trib',
        address: 'untitled:new.trib',
        ...sessionDrawings(inspectedText('new.trib', ''), 600),
      });
      await expect.poll(() => page.isVisible('#empty')).toBe(true);
      expect(await accessibilityFaults(page)).toEqual([]);
      await tell({ kind: 'trouble', sentence: 'The language server is not running.' });
      await expect.poll(() => page.getByRole('alert').innerText()).toContain('not running');
      expect(await accessibilityFaults(page)).toEqual([]);
    }));

  it('shows text as text', () =>
    withPanel({}, async (panel) => {
      await draw(panel, hostileDay());
      const active = await panel.page
        .locator('#drawings script, #drawings img, #drawings iframe, #drawings [onload]')
        .count();
      expect(active).toBe(0);
      expect(panel.faults).toEqual([]);
    }));

  const looks = (['light', 'dark', 'high contrast'] as const).flatMap((theme) =>
    [320, 900].flatMap((width) => [CLEAN, BROKEN, FEET].map((file) => ({ theme, width, file }))),
  );
  it.each(looks)('is accessible and fits: $theme, $width pixels wide, $file', ({ theme, width, file }) =>
    withPanel({ theme, width }, async (panel) => {
      await draw(panel, inspected(file));
      const { page, faults } = panel;
      const [keyed, setup] = ['keyed       antenna-height', 'setup '].map((wanted) => lineOf(file, wanted));
      await panel.tell({ kind: 'cursor', path: file, line: keyed ?? 0, entry: setup ?? 0 });
      await page.waitForSelector('.thing.here text');
      if (file === FEET) expect(await page.getByText('…').count()).toBe(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await unreadable(page)).toEqual([]);
      expect(faults).toEqual([]);
      const shots = process.env['TRIBRACH_SHOTS'];
      const name = file.replace(/^.*\/|\.trib$/g, '');
      if (shots) await page.screenshot({ path: `${shots}/${name}-${width}-${theme}.png`, fullPage: true });
    }),
  );
});

async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: run } = window as unknown as { axe: { run: () => Promise<AxeResults> } };
    const { violations } = await run.run();
    return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html ?? ''}`);
  });
}

/** Words whose colour is nearer to the paper's than 4.5 to 1, the contrast that WCAG 2.1, 1.4.3, asks for. */
const unreadable = (page: Page) =>
  page.evaluate(() => {
    const canvas = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
    if (!canvas) return ['no canvas'];
    const light = (colour: string) => {
      canvas.fillStyle = colour;
      canvas.fillRect(0, 0, 1, 1);
      // WCAG 2.1, relative luminance.
      const [red = 0, green = 0, blue = 0] = [...canvas.getImageData(0, 0, 1, 1).data].map((part) => {
        const share = part / 255;
        return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const paper = light(getComputedStyle(document.body).backgroundColor);
    return [...document.querySelectorAll('svg text')].flatMap((one) => {
      const ink = light(getComputedStyle(one).fill);
      const contrast = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
      return contrast < 4.5 ? [`${one.textContent ?? ''}: ${contrast.toFixed(2)}`] : [];
    });
  });

const text = (file: string) => readFileSync(file, 'utf8');
const inspectedText = (file: string, written: string) => inspect(openDocument(file, written), filesOnDisk());
const inspected = (file: string) => inspectedText(file, text(file));

/** The first line that holds this, from 1. */
function lineOf(file: string, wanted: string): number {
  const found = text(file)
    .split('\n')
    .findIndex((line) => line.includes(wanted));
  if (found < 0) throw new Error(`${file} has no ${wanted}`);
  return found + 1;
}

interface AxeResults {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}
