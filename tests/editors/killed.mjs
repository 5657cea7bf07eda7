/**
 * The server's process is killed, or hangs, while a session with unsaved edits is open: its findings and its key card come
 * back by themselves, and one sentence tells when that has happened too often.
 */
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

const screenshots = resolve('.cache/screenshots');
const patience = 30_000;

export async function killServer(browser, name, host, expected, report) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  const { session, finding, fix, killed } = expected;
  // Windows that were closed may still have theirs.
  const others = await host.servers();
  const ended = [];
  const steps = {
    'findings of unsaved text and its key card come back after the server was killed': killedOnce,
    'further edits are followed after that': editedAfterwards,
    'a server that hung while it was written to is followed by another': killedWhileWrittenTo,
    'the command restarts a server that hangs, and leaves one': hung,
    'many kills in quick succession end in one sentence': killedOften,
    'the sentence restarts the server, as often as it is needed': restarted,
    'one whose program is gone is told of in the same sentence, which restarts it once the program is back':
      gone,
  };
  try {
    await page.goto(host.openFile(session));
    await page.locator('.part.editor .squiggly-error').first().waitFor({ state: 'attached' });
    for (const [step, look] of Object.entries(steps)) {
      try {
        await look();
        report(`passed ${step}`);
      } catch (error) {
        report(`failed ${step}: ${error.message.split('\n', 1)[0]}`);
        return;
      } finally {
        await page.screenshot({ path: join(screenshots, `${name}-killed-${look.name}.png`) });
      }
    }
  } finally {
    await context.close();
  }

  async function killedOnce() {
    await command('Tribrach: Show What to Key');
    await cardSays(expected.page.says);
    await typeInstead(expected.edit.replace, expected.edit.by);
    await typeInstead(finding.at, fix.offers);
    await typeOnTop(killed.unsaved.types);
    await page.keyboard.press('Control+Shift+M');
    await findings([killed.unsaved.code], [finding.code]);
    await cardSays(expected.edit.inlaySays);
    const before = await rows();
    await kill(await server());
    await server();
    // What the ended server had found would be gone by now.
    await page.waitForTimeout(2000);
    await eventually('the same findings again', async () => same(await rows(), before));
    const onDisk = await readFile(join('tests/editors/workspace', session), 'utf8');
    if ((await readFile(join(host.workspace, session), 'utf8')) !== onDisk)
      throw new Error('the session was saved, so that nothing unsaved was tried');
  }

  /** The findings of both edits: a server that had read the file would not know the first. */
  async function editedAfterwards() {
    await typeOnTop(killed.later.types);
    await findings([killed.unsaved.code, killed.later.code], [finding.code]);
    await typeInstead(expected.edit.by, expected.edit.replace);
    await cardSays(expected.page.says);
  }

  /** More stands in line for it than a pipe holds, and all of that fails at once when it dies. */
  async function killedWhileWrittenTo() {
    await writeFile(join(host.workspace, 'long.trib'), '# nothing of interest\n'.repeat(25_000));
    const pid = await server();
    process.kill(pid, 'SIGSTOP');
    await page.keyboard.press('Control+P');
    await page.keyboard.insertText('long.trib');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'long.trib' }).waitFor();
    await page.keyboard.press('Enter');
    await page.locator('.part.editor .view-line', { hasText: 'nothing of interest' }).first().waitFor();
    await focusText();
    await page.keyboard.type('########', { delay: 30 });
    await page.waitForTimeout(500); // until the last of it has been sent
    await kill(pid);
    await server();
    await page.waitForTimeout(2000);
    await findings([killed.unsaved.code, killed.later.code], [finding.code]);
  }

  /** Who is impatient asks twice. */
  async function hung() {
    const pid = await server();
    process.kill(pid, 'SIGSTOP');
    ended.push(pid);
    for (let times = 0; times < 2; times += 1) {
      await command(`Tribrach: ${killed.offers}`);
      await page.waitForTimeout(2500); // until it was waited for in vain
    }
    await server();
    await page.waitForTimeout(4000);
    await findings([killed.unsaved.code, killed.later.code], [finding.code]);
    const left = (await host.servers()).filter((one) => !others.includes(one));
    if (left.length !== 1) throw new Error(`there are ${left.length} servers`);
    if ((await page.locator('.notification-list-item').count()) > 0) throw new Error('it is told of');
  }

  async function killedOften() {
    let kills = 0;
    for (let next = await server(); next !== undefined; next = await server(5000).catch(() => undefined)) {
      kills += 1;
      if (kills > 10) throw new Error('it is started again for ever');
      await kill(next);
    }
    await page.locator('.notifications-toasts', { hasText: killed.says }).waitFor();
    await toldOnce();
  }

  async function toldOnce() {
    // Of many notes at once not each pops up; in the list they all are.
    await command('Notifications: Show Notifications');
    const told = page.locator('.notifications-center .notification-list-item');
    await told.filter({ hasText: killed.says }).waitFor();
    const all = await told.allInnerTexts();
    if (all.length !== 1) throw new Error(`more is told: ${all.join(' | ').replaceAll('\n', ' ')}`);
    await page.locator('.statusbar-item', { hasText: 'not checked' }).waitFor();
  }

  async function restarted() {
    await restart();
    await killedOften();
    await restart();
    await findings([killed.unsaved.code, killed.later.code], [finding.code]);
  }

  /** As when the extension is replaced while it runs. */
  async function gone() {
    const pid = await server();
    const program = await host.programOf(pid);
    const away = `${program}.away`;
    await rename(program, away);
    try {
      await kill(pid);
      await toldOnce();
    } finally {
      await rename(away, program);
    }
    await restart();
    await findings([killed.unsaved.code, killed.later.code], [finding.code]);
  }

  async function restart() {
    await page.locator('.notifications-center a', { hasText: killed.offers }).click();
  }

  /** The process that runs the server of this window, once there is one that was not killed. */
  async function server(limit = patience) {
    const mine = async () => (await host.servers()).find((pid) => ![...others, ...ended].includes(pid));
    return eventually('a server', mine, limit);
  }

  async function kill(pid) {
    process.kill(pid, 'SIGKILL');
    ended.push(pid);
  }

  function rows() {
    return page.locator('.markers-panel .monaco-list-row').allInnerTexts();
  }

  async function findings(there, gone) {
    await eventually(`${there.join(' and ')} without ${gone.join()}`, async () => {
      const all = (await rows()).join('\n');
      return there.every((code) => all.includes(code)) && !gone.some((code) => all.includes(code));
    });
  }

  async function cardSays(height) {
    await page
      .frameLocator('iframe.webview')
      .frameLocator('#active-frame')
      .locator('.card-line', { hasText: 'Antenna height' })
      .filter({ hasText: height })
      .first()
      .waitFor();
  }

  async function command(title) {
    await page.keyboard.press('F1');
    await page.locator('.quick-input-widget input[type=text]').fill(`>${title}`);
    await page.keyboard.press('Enter');
  }

  async function typeOnTop(line) {
    await focusText();
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.insertText(line);
  }

  async function typeInstead(of, by) {
    await focusText();
    await page.keyboard.press('Control+F');
    await page.keyboard.insertText(of);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await page.keyboard.insertText(by);
  }

  async function focusText() {
    await page.locator('.part.editor .view-lines').first().click();
    await page.keyboard.press('Escape');
  }
}

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

async function eventually(what, ask, limit = patience) {
  for (const end = Date.now() + limit; Date.now() < end;) {
    const answer = await ask();
    if (answer) return answer;
    await new Promise((resolved) => setTimeout(resolved, 20));
  }
  throw new Error(`waited ${limit / 1000} s in vain for ${what}`);
}
