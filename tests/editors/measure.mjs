/**
 * How the packaged extension holds up in the real editor: prints the longest frame and the time to findings while a hand
 * types at full speed in 10,000 lines, the time that completion takes there, and the time from the extension's start to
 * the findings of a session. `node tests/editors/measure.mjs`, after `npm run package`; figures to read, not to pass.
 */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { sessionOf } from '../bench/sessions.mjs';
import { launchBrowser } from './browser.mjs';
import { buildInsideTests, runInside } from './inside.mjs';
import { cache } from './install.mjs';
import { serveVscode } from './vscode-host.mjs';

const workspace = join(cache, 'measured');
const keystrokes = 60;
/** Milliseconds between two keys of a fast hand: a hundred words a minute. */
const between = 120;

/** In the page: the longest time between two frames until it is stopped. */
const watchFrames = `(() => {
  let longest = 0;
  let frames = 0;
  let last = performance.now();
  let watching = true;
  const frame = (now) => {
    longest = Math.max(longest, now - last);
    last = now;
    frames += 1;
    if (watching) requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  window.stopFrames = () => {
    watching = false;
    return { longest, frames };
  };
})()`;

await rm(workspace, { recursive: true, force: true });
await mkdir(workspace, { recursive: true });
await writeFile(join(workspace, 'long.trib'), sessionOf(10_000));
await writeFile(join(workspace, 'short.trib'), sessionOf(60));
const host = await serveVscode({ vsix: resolve('dist/tribrach.vsix'), workspace });
const browser = await launchBrowser();
try {
  const folder = await buildInsideTests();
  await runInside(browser, host.runInside(folder, 'measures.js'), (line) => console.log(line));
  await typeInPage();
} finally {
  await browser.close();
  await host.stop();
}

/** Keys go through the page, so that what a person would wait for is in the time: the editor, the server, the paint. */
async function typeInPage() {
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 800 } })).newPage();
  page.setDefaultTimeout(120_000);
  await page.goto(host.openFile('long.trib'));
  await page.locator('.statusbar-item[aria-label^="Verdict of the session"]').waitFor();
  await typed(page, 'with the text alone');
  await page.locator('.editor-actions [aria-label*="Drawings"]').first().click();
  await page.frameLocator('iframe.webview').frameLocator('#active-frame').locator('svg').first().waitFor();
  await typed(page, 'with the drawings beside it');
}

async function typed(page, how) {
  await page.locator('.part.editor .view-lines').first().click();
  await page.keyboard.press('Control+G');
  await page.locator('.quick-input-widget input[type=text]').fill(':5005');
  await page.keyboard.press('Enter');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.waitForTimeout(3000);
  await page.evaluate(watchFrames);
  for (let key = 0; key < keystrokes; key += 1) {
    await page.keyboard.press(key % 2 === 0 ? '1' : '2');
    await page.waitForTimeout(between);
  }
  const { longest, frames } = await page.evaluate('window.stopFrames()');
  // A word that nothing knows is found; how long until its wave is there.
  await page.keyboard.press('Enter');
  const before = await page.locator('.squiggly-error').count();
  const start = performance.now();
  await page.keyboard.insertText('mesured 1.284 m');
  while ((await page.locator('.squiggly-error').count()) <= before) await page.waitForTimeout(5);
  const found = performance.now() - start;
  console.log(
    `typing ${keystrokes} keys, one each ${between} ms, in 10,000 lines ${how}: longest frame ${longest.toFixed(0)} ms of ${frames}; from a slip to its wave ${found.toFixed(0)} ms`,
  );
  for (let undo = 0; undo < 10; undo += 1) await page.keyboard.press('Control+Z');
}
