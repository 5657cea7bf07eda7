/** Every page's sessions: wrong ones give exactly the marked findings, right ones are right, mended ones are what the fix makes. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../server/findings/catalogue.ts';
import { PROGRAM_FAULT } from '../server/findings/program/fault.ts';
import { withoutMarkers } from './markers.ts';
import {
  allPages,
  explainedOn,
  EXPLANATIONS,
  explanationsFrom,
  inspectSnippet,
  linesIn,
  markedSnippet,
  ROLES,
  textAfter,
  withoutReminders,
  type Page,
  type Snippet,
} from './pages.ts';
import { whereIs } from '../server/session/where.ts';

const pages = allPages();

describe('the catalogue and the pages', () => {
  it('speak of the same codes', () => {
    expect(pages.map(({ code }) => code).sort()).toEqual(CATALOGUE.map(({ code }) => code).sort());
  });
  it('say the same in the program', () => {
    expect(readFileSync(EXPLANATIONS, 'utf8')).toBe(explanationsFrom(pages));
    for (const { code, ...page } of pages.map((one) => ({ code: one.code, ...explainedOn(one) })))
      for (const [part, said] of Object.entries(page))
        expect(said, `${code}, ${part}`).toMatch(/^[^*].*[.)]$/);
  });
  it('list each code once', () => {
    expect(new Set(CATALOGUE.map(({ code }) => code)).size).toBe(CATALOGUE.length);
  });
});

describe.each(pages.map((page) => [page.code, page] as const))('%s', (code, page) => {
  it('lies in a file named after it', () => {
    expect(page.file.endsWith(`/${code}.md`)).toBe(true);
  });
  it('shows what is wrong and what is right', () => {
    const roles = page.snippets.map(({ role }) => role);
    expect(roles.filter((role) => !ROLES.some((known) => known === role))).toEqual([]);
    // What no session brings about has none to show.
    if (code !== PROGRAM_FAULT) expect(roles).toContain('wrong');
    expect(roles).toContain('right');
  });
  it.each(shown(page))('%s snippet, line %i', (role, _, snippet) => {
    const inspection = withoutReminders(inspectSnippet(snippet), code);
    const codes = inspection.findings.flatMap(({ code: own, related }) => [
      own,
      ...related.map((other) => other.code),
    ]);
    expect(markedSnippet(snippet, code)).toBe(snippet.text);
    const inGiven = inspection.findings
      .filter((finding) => whereIs(inspection.session, finding.place).line <= linesIn(snippet.given))
      .map((finding) => finding.code);
    expect(inGiven).toEqual([]);
    if (role === 'wrong') expect(codes).toContain(code);
    if (role === 'right') expect(codes).not.toContain(code);
    if (role === 'right')
      expect(inspection.findings.filter(({ severity }) => severity !== 'hint')).toEqual([]);
    if (role === 'mended') expectMended(page, snippet);
  });
});

/** The first fix of the wrong snippet before gives exactly this text, and nothing of the page's code above information. */
function expectMended(page: Page, mended: Snippet): void {
  const before = page.snippets.slice(0, page.snippets.indexOf(mended));
  const wrong = before.reverse().find(({ role }) => role === 'wrong');
  if (!wrong) throw new Error('a mended session needs a wrong one before it');
  const inspection = inspectSnippet(wrong);
  const finding = inspection.findings.find(({ code, fixes }) => code === page.code && fixes.length > 0);
  const fix = finding?.fixes[0];
  if (!fix) throw new Error(`${page.code} offers no fix for the wrong session before`);
  expect(textAfter(inspection, fix)).toBe(wrong.given + withoutMarkers(mended.text));
  const left = inspectSnippet(mended).findings.filter(({ code }) => code === page.code);
  expect(left.filter(({ severity }) => severity !== 'information')).toEqual([]);
}

function shown(page: Page): [string, number, Snippet][] {
  return page.snippets
    .filter(({ role }) => role !== 'given')
    .map((snippet) => [snippet.role, linesIn(page.text.slice(0, snippet.start)) + 1, snippet]);
}
