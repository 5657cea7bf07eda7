/**
 * Makes the pictures of the page that presents the extension and of its walkthrough, out of the real editor with the
 * example day: `npm run pictures` writes client/pictures/NAME-THEME.png. Look at each before it is kept.
 */
import { cp, mkdir, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { launchBrowser } from './browser.mjs';
import { cache } from './install.mjs';
import { serveVscode } from './vscode-host.mjs';

const target = resolve('client/pictures');
const workspace = join(cache, 'pictured');
const themes = { light: 'Default Light Modern', dark: 'Default Dark Modern' };
/** Nothing but the text, what stands beside it, and the line at the foot. */
const bare = {
  'workbench.activityBar.location': 'hidden',
  'workbench.layoutControl.enabled': false,
  'workbench.sideBar.location': 'left',
  'window.commandCenter': false,
  'window.menuBarVisibility': 'hidden',
  'breadcrumbs.enabled': false,
  'editor.stickyScroll.enabled': false,
  'editor.renderLineHighlight': 'none',
  'editor.scrollbar.vertical': 'hidden',
  'editor.overviewRulerBorder': false,
  'editor.hideCursorInOverviewRuler': true,
  'editor.cursorBlinking': 'solid',
  'editor.fontSize': 13,
};

await rm(workspace, { recursive: true, force: true });
await cp('samples', workspace, { recursive: true });
await mkdir(target, { recursive: true });
const browser = await launchBrowser();
try {
  for (const [theme, name] of Object.entries(themes)) {
    const host = await serveVscode({
      vsix: resolve('dist/tribrach.vsix'),
      workspace,
      settings: { ...bare, 'workbench.colorTheme': name },
    });
    try {
      await takeAll(host, theme);
    } finally {
      await host.stop();
    }
  }
} finally {
  await browser.close();
}

async function takeAll(host, theme) {
  const scenes = { example, caught, drawings, card, begun };
  for (const [name, arrange] of Object.entries(scenes)) {
    const { width, height, actions } = arrange();
    const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor: 1.5 });
    const page = await context.newPage();
    try {
      await page.goto(host.folder);
      await page.locator('.monaco-workbench .part.editor').waitFor();
      await page.locator('.part.sidebar').waitFor();
      await page.keyboard.press('Control+B');
      for (const act of actions) await act(page);
      await page.waitForTimeout(1500); // until what moves stands still
      await page.locator('.notifications-toasts').evaluateAll((all) => all.forEach((one) => one.remove()));
      const top = await page.locator('.part.editor').boundingBox();
      await page.screenshot({
        path: join(target, `${name}-${theme}.png`),
        clip: { x: top.x, y: top.y, width: top.width, height: height - top.y },
      });
      console.log(`client/pictures/${name}-${theme}.png`);
    } finally {
      await context.close();
    }
  }
}

function example() {
  return { width: 900, height: 720, actions: [openExample] };
}

function caught() {
  return { width: 900, height: 520, actions: [plant] };
}

function drawings() {
  return { width: 1280, height: 860, actions: [plant, closePeek, showDrawings] };
}

function card() {
  return { width: 1280, height: 560, actions: [openExample, showCard] };
}

function begun() {
  return { width: 900, height: 620, actions: [begin] };
}

async function openExample(page) {
  await command(page, 'Tribrach: Open an Example Day');
  await page.locator('.view-line', { hasText: 'Pier' }).first().waitFor();
  await page.locator('.view-line', { hasText: 'ellipsoidal' }).first().waitFor();
}

async function plant(page) {
  await openExample(page);
  await command(page, 'Tribrach: Plant a Slip in the Example Day');
  await page.locator('.marker-widget, .peekview-widget').first().waitFor();
}

async function closePeek(page) {
  await page.keyboard.press('Escape');
}

async function showDrawings(page) {
  await command(page, "Tribrach: Show the Session's Drawings");
  const drawn = page.frameLocator('iframe.webview').frameLocator('#active-frame');
  await drawn.locator('.thing.here').first().waitFor();
  await drawn.locator('main').evaluate(() => scrollTo(0, 0));
}

async function showCard(page) {
  await command(page, 'Tribrach: Show What to Key');
  await page.locator('.view-line', { hasText: 'Antenna height' }).first().waitFor();
}

async function begin(page) {
  await command(page, 'Tribrach: Begin a Session');
  await page.locator('.view-line', { hasText: 'In the office' }).first().waitFor();
}

/** The palette does not hear of extensions that arrive while it is open, so it is asked again. */
async function command(page, title) {
  for (let tries = 0; tries < 20; tries += 1) {
    await page.keyboard.press('F1');
    await page.locator('.quick-input-widget input[type=text]').fill(`>${title}`);
    const row = page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first();
    const found = await row.waitFor({ timeout: 2000 }).then(
      () => true,
      () => false,
    );
    if (found) await row.click();
    else await page.keyboard.press('Escape');
    await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    if (found) return;
  }
  throw new Error(`the palette has no “${title}”`);
}
