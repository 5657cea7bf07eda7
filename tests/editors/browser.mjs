/** Debian's chromium, driven without a window. */
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'chrome'];

export async function launchBrowser() {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const program = names
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .find((path) => existsSync(path));
  if (program === undefined)
    throw new Error(`no browser is installed on this machine (looked for ${names.join(', ')})`);
  return chromium.launch({
    executablePath: program,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
