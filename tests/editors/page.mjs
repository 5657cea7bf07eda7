/** One pass through the page a person sees: squiggle, inlay, hover, fix, drawings; a picture of each goes to the screenshots. */
import { mkdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

const screenshots = resolve('.cache/screenshots');
const patience = 30_000;

export async function lookAtPage(browser, name, address, expected, report) {
  await mkdir(screenshots, { recursive: true });
  const session = (await readFile(join('tests/editors/workspace', expected.session), 'utf8')).split('\n');
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  const editor = page.locator('.part.editor .monaco-editor').first();
  const steps = { squiggle, inlay, hover, verdict, fix, card, panel, keyboard, reload };
  try {
    await page.goto(address);
    await editor.locator('.view-line').first().waitFor();
    for (const [step, look] of Object.entries(steps)) {
      try {
        await look();
        report(`passed ${step} is seen`);
      } catch (error) {
        report(`failed ${step} is seen: ${error.message.split('\n', 1)[0]}`);
      } finally {
        await picture(step);
      }
    }
  } finally {
    await context.close();
  }

  async function squiggle() {
    await page.locator(`.squiggly-${expected.finding.severity}`).first().waitFor({ state: 'attached' });
  }

  async function inlay() {
    await lineWith(expected.inlay.says);
  }

  async function hover() {
    await goTo(expected.hover.at);
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Control+I');
    const contents = page.locator('.monaco-hover:not(.hidden) .hover-contents');
    await contents.filter({ hasText: expected.hover.says }).first().waitFor();
  }

  /** Said aloud, too, and a way to the drawings. */
  async function verdict() {
    await page.keyboard.press('Escape');
    const entry = page.locator(`.statusbar-item[aria-label^="Verdict of the session: ${expected.verdict}"]`);
    await entry.waitFor();
    await entry.locator('a').click();
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Drawings' }).waitFor();
    await page.keyboard.type('Drawings');
    await page.keyboard.press('Enter');
    await drawings().locator('svg').first().waitFor();
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Escape');
  }

  async function fix() {
    await page.keyboard.press('Escape');
    await goTo(expected.finding.at);
    await page.keyboard.press('Control+.');
    const offer = page.locator('.action-widget .monaco-list-row', { hasText: expected.fix.offers }).first();
    await offer.waitFor();
    await picture('fix-offered');
    await pick(offer);
    await lineWith(expected.fix.leaves.trim());
    await page.locator(`.squiggly-${expected.finding.severity}`).first().waitFor({ state: 'detached' });
  }

  /** What to key in figures, what was keyed beside it; it follows the typing, and a number is copied alone. */
  async function card() {
    await page.locator('.tab', { hasText: 'Drawings of' }).locator('.codicon-close').click();
    await goTo(expected.hover.at);
    await command('Tribrach: Show What to Key');
    const line = drawings().locator('.card-line', { hasText: 'Antenna height' }).first();
    await line.filter({ hasText: expected.page.says }).waitFor();
    await drawings().locator('.card.card-here').waitFor();
    await drawings().locator('.card-copy').nth(1).click();
    await drawings().locator('#said', { hasText: 'Copied 41°' }).waitFor({ state: 'attached' });
    await picture('card-opened');
    await page.locator('.tab', { hasText: 'What to key' }).locator('.codicon-close').click();
  }

  async function command(title) {
    await page.keyboard.press('F1');
    await page.locator('.quick-input-widget input[type=text]').fill(`>${title}`);
    await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor();
    await page.keyboard.press('Enter');
  }

  /** The drawings show the cursor's line, a thing that is clicked leads to its own, and they follow the typing. */
  async function panel() {
    await goTo(expected.hover.at);
    await page.locator(`.editor-actions [aria-label*="${expected.panel.button}"]`).first().click();
    await drawings().locator('.thing.here').first().waitFor();
    await picture('panel-opened');
    const line = session.findIndex((candidate) => candidate.includes(expected.panel.leadsTo)) + 1;
    await drawings().locator(`.thing[data-place$=":${line}"]:has(text)`).first().click();
    await lineInStatus(line);
    const { replace, by, inlaySays } = expected.edit;
    await goTo(replace);
    await page.keyboard.press('ArrowLeft');
    for (let step = 0; step < replace.length; step += 1) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.type(by);
    await drawings().locator('svg text', { hasText: inlaySays }).first().waitFor();
  }

  /** Asked for again the panel takes the focus; from there a thing is reached and followed, and Escape leads back. */
  async function keyboard() {
    await goTo(expected.panel.leadsTo);
    await page.keyboard.press('F1');
    await page.locator('.quick-input-widget input[type=text]').fill(`>${expected.panel.button}`);
    await page.keyboard.press('Enter');
    const focused = drawings().locator('.thing:focus');
    for (let step = 0; step < 40 && (await focused.count()) === 0; step += 1)
      await page.keyboard.press('Tab');
    const line = /:(\d+)$/.exec(await focused.getAttribute('data-place'))?.[1];
    await page.keyboard.press('Enter');
    await lineInStatus(line);
    await page.locator('.part.editor .monaco-editor.focused').waitFor();
    await drawings().locator('.thing').first().focus();
    await page.keyboard.press('Escape');
    await page.locator('.part.editor .monaco-editor.focused').waitFor();
  }

  /** The panel comes back with its session; an address that names a file would open that alone. */
  async function reload() {
    await page.keyboard.press('Control+S');
    await page.waitForTimeout(1000); // until the editor has noted what is open
    await page.goto(withoutFile(address));
    await editor.locator('.view-line').first().waitFor();
    await drawings().locator('svg').first().waitFor();
  }

  function drawings() {
    return page.frameLocator('iframe.webview').frameLocator('#active-frame');
  }

  async function lineInStatus(line) {
    await page
      .locator('.statusbar-item', { hasText: `Ln ${line},` })
      .first()
      .waitFor();
  }

  async function picture(what) {
    await page.waitForTimeout(500); // until what fades in stands still
    await page.screenshot({ path: join(screenshots, `${name}-${what}.png`) });
  }

  /** By keyboard: the list of fixes lets no pointer through while it opens. */
  async function pick(offer) {
    for (let step = 0; step < 20; step += 1) {
      if (await offer.evaluate((row) => row.classList.contains('focused')))
        return page.keyboard.press('Enter');
      await page.keyboard.press('ArrowDown');
    }
    throw new Error('the fix could not be reached by keyboard');
  }

  async function goTo(text) {
    const line = session.findIndex((candidate) => candidate.includes(text));
    const column = (session[line] ?? '').indexOf(text);
    await editor.locator('.view-lines').click();
    await page.keyboard.press('Control+G');
    await page.locator('.quick-input-widget input[type=text]').fill(`:${line + 1}:${column + 2}`);
    await page.keyboard.press('Enter');
    await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** The editor draws blanks as no-break spaces and puts zero-width marks into inlays. */
  async function lineWith(text) {
    const wanted = plain(text);
    const end = Date.now() + patience;
    while (Date.now() < end) {
      const lines = await editor.locator('.view-line').allTextContents();
      if (lines.some((line) => plain(line).includes(wanted))) return;
      await page.waitForTimeout(100);
    }
    throw new Error(`no line of the editor shows “${text}”`);
  }
}

function plain(text) {
  return text.replace(/[\u200b-\u200d\ufeff]/g, '').replace(/\s+/g, ' ');
}

function withoutFile(address) {
  const url = new URL(address);
  for (const name of ['payload', 'file']) url.searchParams.delete(name);
  return url.href;
}
