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
  'editor.renderWhitespace': 'none',
  'editor.occurrencesHighlight': 'off',
  'editor.selectionHighlight': false,
  'editor.wordWrap': 'on',
  'workbench.editor.untitled.labelFormat': 'name',
};

await rm(workspace, { recursive: true, force: true });
await cp('samples', workspace, { recursive: true });
await mkdir(target, { recursive: true });
const browser = await launchBrowser();
try {
  const scenes = { example, caught, drawings, card, begun };
  for (const [theme, colours] of Object.entries(themes))
    for (const [name, arrange] of Object.entries(scenes)) await take(`${name}-${theme}`, arrange(), colours);
} finally {
  await browser.close();
}

/** Each in an editor that was never used before: what was written in another would still be open. */
async function take(name, { width, height, scale = 1, actions }, colours) {
  const settings = { ...bare, 'workbench.colorTheme': colours };
  const host = await serveVscode({ vsix: resolve('dist/tribrach.vsix'), workspace, settings });
  const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor: scale });
  try {
    const page = await context.newPage();
    await page.goto(host.folder);
    await page.locator('.part.sidebar').waitFor();
    await page.keyboard.press('Control+B');
    await page.mouse.move(200, height - 4); // where nothing answers to it
    for (const act of actions) await act(page);
    await page.waitForTimeout(1500); // until what moves stands still
    const { x, y, width: across } = await page.locator('.part.editor').boundingBox();
    const clip = { x, y, width: across, height: height - y };
    await page.screenshot({ path: join(target, `${name}.png`), clip });
    console.log(`client/pictures/${name}.png`);
  } finally {
    await context.close();
    await host.stop();
  }
}

function example() {
  return { width: 900, height: 720, actions: [openExample] };
}

function caught() {
  return { width: 900, height: 560, actions: [plant] };
}

function drawings() {
  return { width: 1280, height: 860, scale: 1.25, actions: [plant, closeHover, showDrawings] };
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
  await page.locator('.monaco-hover:not(.hidden)').first().waitFor();
}

async function closeHover(page) {
  await page.keyboard.press('Escape');
}

async function showDrawings(page) {
  await command(page, "Tribrach: Show the Session's Drawings");
  const drawn = page.frameLocator('iframe.webview').frameLocator('#active-frame');
  await drawn.locator('.thing.here').first().waitFor();
}

async function showCard(page) {
  await command(page, 'Tribrach: Show What to Key');
  const shown = page.frameLocator('iframe.webview').frameLocator('#active-frame');
  await shown.locator('.card-line', { hasText: 'Antenna height' }).first().waitFor();
}

async function begin(page) {
  await command(page, 'Tribrach: Begin a Session');
  for (const answer of ['North quay', null]) {
    await page.waitForTimeout(1500); // until the question is there
    if (answer !== null) await page.keyboard.type(answer);
    await page.keyboard.press('Enter');
  }
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
    await page.keyboard.press(found ? 'Enter' : 'Escape');
    await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    if (found) return;
  }
  throw new Error(`the palette has no “${title}”`);
}
