/** Debian's Chromium for tests of pages, or a plain word that they were not made. */
import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const PROGRAM = process.env['TRIBRACH_CHROMIUM'] ?? '/usr/bin/chromium';

export const hasChromium = existsSync(PROGRAM);

/** Without a browser a page is not tested, and the output must say so. */
export function sayWhenMissing(what: string): void {
  if (!hasChromium) process.stdout.write(`NOT TESTED: ${what}, since there is no ${PROGRAM}\n`);
}

export const launchChromium = (): Promise<Browser> =>
  chromium.launch({
    executablePath: PROGRAM,
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
