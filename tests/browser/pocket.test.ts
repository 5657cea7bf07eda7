/** The pocket page in a real browser at phone size, without network. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import axe from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium, launchChromium, sayWhenMissing } from './chromium.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const broken = readFileSync(`${root}/samples/broken/height-wrong-surface.trib`, 'utf8');
sayWhenMissing('the pocket page');

describe.runIf(hasChromium)('the pocket page', () => {
  let browser: Browser;
  let phone: BrowserContext;
  let page: Page;
  const asked: string[] = [];
  const faults: string[] = [];

  beforeAll(async () => {
    execFileSync('node', ['client/pocket/build.mjs'], { cwd: root });
    browser = await launchChromium();
    phone = await browser.newContext({ viewport: { width: 360, height: 740 }, offline: true });
    page = await phone.newPage();
    page.on('request', (request) => asked.push(request.url()));
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => faults.push(message.text()));
    await page.goto(pathToFileURL(`${root}/dist/pocket.html`).href);
  });
  afterAll(() => browser.close());

  const type = async (text: string) => {
    await page.click('#tab-notes');
    await page.fill('#text', text);
  };

  it('begins with the questions of a first session', async () => {
    expect(await page.inputValue('#text')).toContain('setup BASE on BASE-MARK');
  });

  it('shows verdict, findings and what to key while the text is typed', async () => {
    await type(broken);
    await page.waitForFunction(() => document.getElementById('verdict')?.textContent?.includes('in doubt'));
    await page.click('#tab-card');
    // The DESIGN of the day: 6.284 m + 54.917 m above the ellipsoid.
    expect(await page.innerText('#card')).toMatch(/61\.201 m[\s\S]*1\.533 m/);
    await page.click('#tab-findings');
    expect(await page.innerText('#findings')).toContain('height/wrong-surface');
  });

  it('leads from a finding to its place in the text', async () => {
    await page.click('#findings li:has-text("height/wrong-surface") button');
    const selected = await page.evaluate(() => {
      const text = document.querySelector('textarea');
      return text?.value.slice(text.selectionStart, text.selectionEnd);
    });
    expect(selected).toContain('6.284 m');
  });

  it('applies a fix that the user picks', async () => {
    await type(broken.replace('1.284 m to foot', '1.284 to foot'));
    await page.waitForFunction(() =>
      document.getElementById('findings')?.textContent?.includes('unit/missing'),
    );
    await page.click('#tab-findings');
    await page.click('#findings button:text-is("Write 1.284 m")');
    expect(await page.inputValue('#text')).toContain('1.284 m to foot');
  });

  it('keeps the text on the device, and gives it out as a file', async () => {
    await type(`${broken}\n# kept`);
    await page.reload();
    expect(await page.inputValue('#text')).toContain('# kept');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    expect(readFileSync(await download.path(), 'utf8')).toBe(`${broken}\n# kept`);
  });

  it('never turns text into markup', async () => {
    await type(
      'mark <img/src=x/onerror=alert(1)> "<script>alert(2)</script>"\nsetup <b>S</b> on <img/src=x/onerror=alert(1)> with X at 07:50 "\n',
    );
    await page.waitForTimeout(400);
    expect(await page.$$eval('main img, main script, main b', (found) => found.length)).toBe(0);
  });

  it('fits a phone, and is used with the keyboard and read aloud', async () => {
    await type(broken);
    await page.waitForTimeout(400);
    for (const tab of ['#tab-notes', '#tab-card', '#tab-findings']) {
      await page.click(tab);
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      await page
        .evaluate(`(() => { const module = undefined; const exports = undefined; ${axe.source} })()`)
        .catch(() => undefined);
      const serious = await violations();
      expect(serious).toEqual([]);
    }
    await page.focus('#tab-findings');
    await page.keyboard.press('ArrowRight');
    expect(await page.getAttribute('#tab-notes', 'aria-selected')).toBe('true');
  });

  it('asks for nothing but itself, and makes no fault', () => {
    expect(
      asked.filter((url) => !url.startsWith('file:') && !url.startsWith('blob:') && !url.startsWith('data:')),
    ).toEqual([]);
    expect(faults).toEqual([]);
  });

  /** Findings of the accessibility check that are serious or critical. */
  async function violations(): Promise<string[]> {
    const result = await page.evaluate(async () => {
      const checker = (globalThis as unknown as { axe: typeof axe }).axe;
      return (await checker.run()).violations.map(({ id, impact }) => `${impact ?? ''} ${id}`);
    });
    return result.filter((violation) => /^(serious|critical)/.test(violation));
  }
});
