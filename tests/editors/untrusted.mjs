/** In a folder that is not trusted a session is checked by its own text, and the page says why a file that it names is not read. */
import { join, resolve } from 'node:path';

const screenshots = resolve('.cache/screenshots');

export async function lookUntrusted(browser, name, address, expected, report) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  try {
    await page.goto(address);
    await page.locator('.part.editor .squiggly-error').first().waitFor({ state: 'attached' });
    await page.keyboard.press('Control+Shift+M');
    await page.locator('.markers-panel .monaco-list-row', { hasText: expected.says }).first().waitFor();
    report('passed a file that is named is not read, and the finding says so');
  } catch (error) {
    report(`failed a file that is named is not read: ${error.message.split('\n', 1)[0]}`);
  } finally {
    await page.screenshot({ path: join(screenshots, `${name}-untrusted.png`) });
    await context.close();
  }
}
