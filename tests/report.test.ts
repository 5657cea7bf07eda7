/** The report: numbers as derived, text that stays text, nothing that is loaded, and a file that is written whole. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { metresOf, heightStack } from '../server/record/drawings/height-stack.ts';
import { dayStrip } from '../server/record/drawings/day.ts';
import { plan, timesInWords } from '../server/record/drawings/plan.ts';
import { residualChart } from '../server/record/drawings/residuals.ts';
import type { Canvas } from '../server/record/drawings/canvas.ts';
import { reportPage } from '../server/record/report/report.ts';
import { plain, reportMarkdown } from '../server/record/report/markdown.ts';
import { isHole, type Maybe, type Value } from '../server/quantities/value.ts';
import { openDocument } from '../grammar/document.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { verdictOf } from '../server/record/verdict.ts';
import type { SetupValues } from '../server/derive/setups/setup.ts';
import { folderWith, tribrach } from './command-line-run.ts';
import { filesOnDisk } from './samples.ts';
import {
  cleanDay,
  extensionDay,
  highDay,
  hostileDay,
  inspectText,
  lowDay,
  nothingAtAll,
  oneCheck,
  slipInTheNotes,
  twelveChecks,
  twoDays,
  withoutAnswers,
  withoutChecks,
  withoutPositions,
} from './report-sessions.ts';

const wide: Canvas = { width: 680, link: null };
const narrow: Canvas = { width: 328, link: null };
const days: Readonly<Record<string, () => Inspection>> = {
  cleanDay,
  extensionDay,
  highDay,
  hostileDay,
  lowDay,
  nothingAtAll,
  oneCheck,
  twelveChecks,
  withoutAnswers,
  withoutChecks,
  withoutPositions,
};

const known = (value: Maybe<Value>): Value => {
  if (isHole(value)) throw new Error(value.hole);
  return value;
};
const setupOf = ({ derivation }: Inspection): SetupValues => {
  const [values] = derivation.setups.values();
  if (!values) throw new Error('the session has no setup');
  return values;
};
const unescaped = (text: string) =>
  text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));
const textsOf = (svg: string) =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => unescaped(text ?? ''));
/** The first rectangle of the thing that a title names. */
function barOf(svg: string, title: string): { y: number; height: number } {
  const after = svg.slice(svg.indexOf(`<title>${title}`));
  const [, y, height] = /<rect[^>]* y="([\d.-]+)"[^>]* height="([\d.-]+)"/.exec(after) ?? [];
  return { y: Number(y), height: Number(height) };
}

describe('the height stack', () => {
  it('says what the tape, the slope, the extension and the key card say', () => {
    const inspection = extensionDay();
    const values = setupOf(inspection);
    const texts = textsOf(heightStack(inspection, values, wide).markup);
    // Redone with a calculator: 1.284 m taped 48 mm off centre is √(1.284² − 0.048²) straight down.
    const down = Math.sqrt(1.284 ** 2 - 0.048 ** 2);
    expect(texts).toContain('1.284 m');
    expect(texts).toEqual(expect.arrayContaining(['off centre', '48 mm']));
    expect(texts).toContain(`−${((1.284 - down) * 1000).toFixed(1)} mm`);
    expect(texts).toContain(`${down.toFixed(4)} m`);
    expect(texts).toContain('+250 mm');
    expect(texts).toContain('1.283 m');
    // The mean of the two readings of the morning is what should have been keyed.
    const second = Math.sqrt((4.21 * 0.3048) ** 2 - 0.048 ** 2);
    const arp = (down + second) / 2 + 0.25;
    expect(texts).toContain(`${arp.toFixed(4)} m`);
    expect(texts).toContain(`${(arp + 0.092).toFixed(4)} m`);
    expect(texts).toContain(`${((arp - 1.283) * 1000).toFixed(0)} mm too low`);
  });

  it('shows every number as it was derived', () => {
    for (const day of [cleanDay, extensionDay, lowDay, highDay, oneCheck])
      for (const canvas of [wide, narrow]) {
        const inspection = day();
        const values = setupOf(inspection);
        const texts = textsOf(heightStack(inspection, values, canvas).markup);
        expect(texts).toContain(metresOf(known(values.height.arp)));
        expect(texts).toContain(metresOf(known(values.height.phaseCentre)));
        for (const { arp } of values.height.readings) expect(texts).toContain(metresOf(known(arp)));
      }
  });

  it('is to scale: bars are as long as the heights that they stand for', () => {
    for (const [day, keyed] of [
      [extensionDay, 1.283],
      [lowDay, 1.033],
      [highDay, 4.034],
    ] as const) {
      const inspection = day();
      const values = setupOf(inspection);
      const svg = heightStack(inspection, values, wide).markup;
      const should = barOf(svg, 'should be keyed');
      const told = barOf(svg, 'keyed antenna height');
      expect(told.height / should.height).toBeCloseTo(keyed / known(values.height.arp).value, 3);
      expect(told.y + told.height).toBeCloseTo(should.y + should.height, 1);
    }
  });

  it('breaks a height that would squash everything else, and says so', () => {
    const inspection = hostileDay();
    const texts = textsOf(heightStack(inspection, setupOf(inspection), wide).markup);
    expect(texts).toContain('1500 m');
    expect(texts).toContain('1498.5 m too high');
    expect(texts).toContain('not drawn to scale');
  });
});

describe('the plan', () => {
  it('draws residuals as many times larger as it says', () => {
    const inspection = oneCheck();
    const svg = plan(inspection, wide).markup;
    const [, times] = /drawn ([\d\u202f.]+) times larger/.exec(textsOf(svg).join('\n')) ?? [];
    const exaggeration = Number((times ?? '').replaceAll('\u202f', ''));
    expect(exaggeration).toBeGreaterThan(1);
    const after = svg.slice(svg.indexOf('<title>ONLY:'));
    const [, x1, y1, x2, y2] =
      /<line class="firm" x1="([\d.-]+)" y1="([\d.-]+)" x2="([\d.-]+)" y2="([\d.-]+)"/.exec(after) ?? [];
    // 20 km between the marks are as many pixels as lie between their signs.
    const base = /<circle class="fill-ink" cx="([\d.-]+)"/.exec(svg)?.[1];
    const pixels = (Number(x1) - Number(base)) / 20000;
    expect((Number(x2) - Number(x1)) / pixels / exaggeration).toBeCloseTo(0.01, 3);
    expect((Number(y1) - Number(y2)) / pixels / exaggeration).toBeCloseTo(0.01, 3);
    expect(timesInWords(40_000)).toBe('40\u202f000 times larger');
  });

  it('names marks beside the lines to them, not on them', () => {
    for (const canvas of [wide, narrow]) {
      const svg = plan(oneCheck(), canvas).markup;
      // The two marks lie at one northing, so that the line between them is level.
      const [, line] = /<line class="dashed"[^>]* y1="([\d.]+)"/.exec(svg) ?? [];
      const heights = [...svg.matchAll(/<text x="[\d.-]+" y="([\d.]+)" font-size="([\d.]+)"[^>]*>([^<]*)</g)];
      const named = heights.filter(([, , , text]) =>
        /^(?:BASE-MARK|base|FAR|20.00.km · ONLY)$/.test(text ?? ''),
      );
      expect(named).toHaveLength(4);
      for (const [, y, size] of named) {
        const above = Number(line) - Number(y);
        expect(above > 0 || -above > Number(size)).toBe(true);
      }
      const [first, second] = named.map(([, y]) => Number(y) > Number(line));
      expect(first).toBe(second);
    }
  });

  it('says why there is none', () => {
    expect(textsOf(plan(withoutPositions(), narrow).markup).join()).toContain('no plan');
  });
});

describe('the day and the residuals', () => {
  it('have a date at every time of another day than the job has', () => {
    const { sentence } = verdictOf(twoDays());
    expect(sentence).toMatch(
      /08:00 to 2026-05-22 08:00 is bracketed; 2026-05-22 08:00 to 2026-05-22 10:00 is not closed/,
    );
    const texts = textsOf(dayStrip(twoDays(), wide).markup);
    expect(texts).toContain('SECOND 2026-05-21 08:00');
    expect(texts).toContain('FIRST 08:00');
  });

  it('can be told apart by the names that are seen', () => {
    for (const canvas of [wide, narrow]) {
      const names = textsOf(residualChart(twelveChecks(), canvas).markup).filter((text) =>
        /^C.*-\d+$/.test(text),
      );
      expect(new Set(names).size).toBe(12);
    }
  });

  it('name every check with its verdict', () => {
    const inspection = twelveChecks();
    const titles = [...dayStrip(inspection, wide).markup.matchAll(/<title>([^<]*, check on [^<]*)/g)];
    expect(titles.map(([, title]) => title)).toEqual(
      inspection.derivation.checks.map(({ check, verdict, mark }) =>
        expect.stringMatching(
          `^${check.name} \\d\\d:\\d\\d, check on ${mark?.mark.name ?? ''}: ${verdict === 'undecided' ? 'is undecided' : verdict}$`,
        ),
      ),
    );
    expect(inspection.derivation.checks.filter(({ verdict }) => verdict === 'fails')).toHaveLength(1);
    expect(textsOf(residualChart(inspection, wide).markup)).toContain('+330 mm');
  });

  it('say what is missing where there is nothing to draw', () => {
    expect(textsOf(residualChart(withoutChecks(), wide).markup).join()).toContain('No check has a residual');
    expect(textsOf(dayStrip(nothingAtAll(), wide).markup).join()).toContain('Nothing has a time');
  });
});

describe.each(Object.entries(days))('the drawings of %s', (_, day) => {
  const inspection = day();
  const canvases = [wide, narrow, { width: 90, link: null }, { width: 1400, link: null }];
  const all = canvases.flatMap((canvas) => [
    plan(inspection, canvas),
    dayStrip(inspection, canvas),
    residualChart(inspection, canvas),
    ...[...inspection.derivation.setups.values()].map((values) => heightStack(inspection, values, canvas)),
  ]);

  it('hold numbers only where numbers belong', () => {
    for (const { markup } of all) expect(markup).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('lead to lines that are there', () => {
    const lines = inspection.session.document.text.split('\n').length;
    for (const { markup } of all)
      for (const [, place] of markup.matchAll(/data-place="([^"]*)"/g)) {
        const [, line] = /:(\d+)$/.exec(place ?? '') ?? [];
        expect(Number(line)).toBeGreaterThanOrEqual(1);
        expect(Number(line)).toBeLessThanOrEqual(lines);
      }
  });

  it('have a title and a description', () => {
    for (const { markup } of all)
      expect(markup).toMatch(/^<svg[^>]*aria-label="[^"]+"[^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
  });
});

/** What a report consists of; nothing here runs, loads or leads anywhere but into the page. */
const ELEMENTS = new Set(
  (
    'html head meta title style body main nav article section header footer div figure figcaption p h1 h2 h3 a b br span ' +
    'ul ol li dl dt dd table caption thead tbody tr th td details summary svg g desc text line path rect circle'
  ).split(' '),
);
const ATTRIBUTES = new Set(
  (
    'lang charset name content http-equiv class id href scope data-label data-place role aria-label ' +
    'viewBox width height x y x1 y1 x2 y2 cx cy r rx d style font-size text-anchor textLength lengthAdjust'
  ).split(' '),
);

describe.each(Object.entries(days))('the page of %s', (_, day) => {
  const page = reportPage([day()]);
  const body = page.slice(page.indexOf('</style>'));
  const tags = [...page.replace(/<style>[^<]*<\/style>/, '<style></style>').matchAll(/<([^>]*)>/g)].map(
    ([, tag]) => tag ?? '',
  );

  it('holds no element, attribute or link that a report does not have', () => {
    expect(tags.length).toBeGreaterThan(20);
    for (const tag of tags) {
      if (tag === '!doctype html' || tag.startsWith('/')) continue;
      const [, name, attributes] = /^([a-z\d]+)((?: [\w:-]+="[^"<>]*")*)$/i.exec(tag) ?? [];
      expect(ELEMENTS, tag).toContain(name);
      for (const [, key, value] of (attributes ?? '').matchAll(/ ([\w:-]+)="([^"]*)"/g)) {
        expect(ATTRIBUTES, tag).toContain(key);
        if (key === 'href') expect(value).toMatch(/^#s\d+(-[Ld]\d+)?$/);
        if (key === 'style') expect(value).toMatch(/^stroke-width:\d+$/);
      }
    }
    expect(page.match(/<style>/g)).toHaveLength(1);
  });

  it('closes what it opens, in turn', () => {
    const open: string[] = [];
    for (const tag of tags) {
      const name = /^\/?([a-z\d]+)/i.exec(tag)?.[1] ?? '';
      if (tag.startsWith('!') || name === 'meta' || name === 'br') continue;
      if (tag.startsWith('/')) expect(open.pop()).toBe(name);
      else open.push(name);
    }
    expect(open).toEqual([]);
  });

  it('loads nothing', () => {
    const style = page.slice(page.indexOf('<style>'), page.indexOf('</style>'));
    expect(style).not.toMatch(/url\(|@import|https?:|image-set|src:/);
    expect(page).toContain(`content="default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;"`);
    expect(body).not.toMatch(/ (src|srcset|action|poster|data|xlink:href)="/);
  });

  it('has every anchor once, and every link leads to one', () => {
    const anchors = [...page.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(anchors).size).toBe(anchors.length);
    for (const [, target] of page.matchAll(/ href="#([^"]*)"/g)) expect(anchors).toContain(target);
  });

  it('is the same whenever it is made', () => {
    expect(reportPage([day()])).toBe(page);
  });
});

describe('hostile text', () => {
  it('is there to be read, in every place that it was written in', () => {
    const shown = unescaped(reportPage([hostileDay()]));
    for (const text of [
      '<h1>"><script>alert(1)</script><img src=x onerror=alert(1)>',
      '<dd></style><script>alert(2)</script>',
      'disturbance: <script>alert(3)</script>',
      '<script>alert(4)</script> [link]',
      'samples/<script>alert(6)<&script>.trib',
      '<iframe src=//example.invalid>',
      'Setup "><script> on <svg/onload=alert(1)>',
      '<b onclick=x> 08:00, check on A mark that somebody',
    ])
      expect(shown).toContain(text);
  });
});

describe('what a report tells', () => {
  const page = unescaped(reportPage([extensionDay()]));

  it('gives the verdict first, then the picture of the day, then all the rest', () => {
    const order = [
      'class="verdict"',
      '>In doubt<',
      '>The day<',
      '<h2>Setup BASE on PM-14',
      '<h2>Plan',
      '<h2>Checks',
      '<h2>Trust',
      '<h2>Link',
      '<h2>Points',
      '<h2>Findings',
      '<h2>Site',
      '<h2>Review',
      '<h2>Assumptions',
      '<h2>Sources',
      '<h2>Derivations',
      '<h2>The session as written',
    ].map((part) => page.indexOf(part, page.indexOf('<main>')));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((one, other) => one - other));
  });

  it('tells every assumption of the tape, hazards with their controls, and sources of the marks', () => {
    expect(page).toContain('Assumed 1 mm for a tape reading (common practice)');
    expect(page).toContain('cones at 15 m, tripod inside the barrier, lookout while levelling');
    expect(page).toContain('harbour control register');
    expect(page).toContain('Follow local rules');
  });

  it('names no number an assumption that the notes state, nor one twice', () => {
    const assumptions = page.slice(page.indexOf('<h2>Assumptions'), page.indexOf('<h2>Sources'));
    // The marks' uncertainties and the plummet's are written down; a reading is assumed good to a millimetre once.
    expect(assumptions).not.toContain('As stated for the mark');
    expect(assumptions).not.toContain('given as 1 mm');
    expect(assumptions).toContain('>reading 1; reading 2; reading 3<');
    expect(assumptions).toContain('bubble 8′');
    expect(assumptions).toContain('part that grows with distance 1 ppm');
  });

  it('tells of no check above a strip that has none, and draws on nothing where nothing is known', () => {
    const open = unescaped(reportPage([withoutAnswers()]));
    expect(open).not.toContain('Above the strip the checks');
    expect(open).not.toContain('Observed minus known');
    expect(open).not.toContain('Drawn to scale');
    expect(open).toContain('The antenna height is not known, so the tripod is a picture of any.');
    const nothing = unescaped(reportPage([nothingAtAll()]));
    expect(nothing).not.toContain('<h3>Methods');
    expect(nothing).toContain('Nothing could be computed yet.');
    expect(page).toContain('Drawn to scale');
    expect(page).toContain('<h3>Methods');
  });

  it('has hazards and corrections in their sections, and says where there are none', () => {
    const sectionOf = (text: string, heading: string) => {
      const at = text.indexOf(`<h2>${heading}`);
      return text.slice(at, text.indexOf('<h2>', at + 1));
    };
    expect(sectionOf(page, 'Site')).toContain('cones at 15 m, tripod inside the barrier');
    expect(sectionOf(page, 'Site')).not.toContain('name no hazard');
    expect(sectionOf(page, 'Review')).not.toContain('Correction');
    const { document } = extensionDay().session;
    const corrected = document.text
      .replace(/^hazard [^]*/m, '')
      .concat('correction "extension left out" on BASE at 16:10\n  by          "L. Brandt"\n');
    const other = unescaped(reportPage([inspect(openDocument(document.path, corrected), filesOnDisk())]));
    expect(sectionOf(other, 'Site')).toContain('The notes name no hazard.');
    expect(sectionOf(other, 'Review')).toMatch(/>Correction<[^]*extension left out[^]*L[.] Brandt/);
  });

  it('lists checks that have a residual, and names those for movement only', () => {
    const checks = page.slice(page.indexOf('<h2>Checks'), page.indexOf('<h2>Trust'));
    const rows = [...checks.matchAll(/<tr>[^]*?<\/tr>/g)].map(([row]) => row);
    const withRow = ['OPEN', 'NAIL-A', 'NAIL-B', 'NOON', 'CLOSE'].map(
      (name) => rows.filter((row) => row.includes(`>${name}<`)).length,
    );
    expect(withRow).toEqual([1, 0, 0, 1, 1]);
    expect(checks).toContain('For movement only, on marks without coordinates: NAIL-A, NAIL-B.');
  });

  it('shows what was keyed with the digits and in the unit that it was keyed in', () => {
    const day = inspectText(
      readFileSync('samples/breakwater.trib', 'utf8')
        .replace('antenna-height 1.533 m', 'antenna-height 1.5325 m')
        .replace('height 61.201 m ellipsoidal', 'height 200.79 ft ellipsoidal'),
    );
    const told = unescaped(reportPage([day]));
    expect(told).toContain('>1.5325 m<');
    // 200.79 ft are 200.79 · 0.3048 m.
    expect(told).toContain('>200.79 ft = 61.2008 m<');
  });

  it('derives every number that it lists', () => {
    const { height } = setupOf(extensionDay());
    const [, anchor] = new RegExp(`href="#(s1-d\\d+)"[^>]*>${metresOf(known(height.arp))}<`).exec(page) ?? [];
    const story = page.slice(page.indexOf(`id="${anchor}"`));
    expect(story).toMatch(/^id="s1-d\d+"><p>ARP height at BASE: H_ARP = \(h1 \+ h2\) \/ 2 \+ c</);
  });

  it('lists several sessions before the first', () => {
    const several = unescaped(reportPage([cleanDay(), extensionDay()]));
    expect(several).toMatch(/<nav[^>]*>.*href="#s1".*href="#s2".*<\/nav>/s);
    expect(several).toContain('id="s2-L1"');
  });
});

describe('Markdown for a pull request', () => {
  it('tells verdict, checks, findings, and keyed against should', () => {
    const text = unescaped(reportMarkdown([extensionDay()]));
    expect(text).toContain('**In doubt.**');
    expect(text).toContain('| OPEN | PM-09 | 08:25 |');
    expect(text).toContain('**error** height/extension');
    expect(text).toMatch(
      /\| Antenna height to the ARP \| 1\.5327 m \| 1\.283 m \| \*\*250 mm too low\*\* \|/,
    );
  });

  it('tells a slip on a day whose checks agree apart from a day that is in doubt', () => {
    expect(reportMarkdown([slipInTheNotes()])).toContain('**Something is wrong.**');
    expect(reportMarkdown([cleanDay()])).toContain('**Proved.**');
    expect(reportMarkdown([withoutChecks()])).toContain('**Not proved.**');
  });

  it('keeps text from a session out of markup, links and mentions', () => {
    const text = reportMarkdown([hostileDay()]);
    expect(text).not.toMatch(/[<>`[\]@]|javascript:\/|https?:\/\//);
    for (const row of text.split('\n').filter((line) => line.startsWith('| ')))
      expect([4, 6]).toContain(row.split('|').length - 2);
    expect(plain('1. x')).toBe('&#49;. x');
    expect(plain('a\nb')).toBe('a b');
  });
});

describe('tribrach report', () => {
  it('writes the page whole, or leaves what is there', async () => {
    const folder = folderWith({ 'day.trib': 'job "A"\n', 'old.html': 'old' });
    try {
      expect(
        (await tribrach(['report', folder.path('day.trib'), '--out', folder.path('new.html')])).status,
      ).toBe(0);
      expect(readFileSync(folder.path('new.html'), 'utf8')).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
      const over = (name: string, ...words: string[]) =>
        tribrach(['report', folder.path('day.trib'), '--out', folder.path(name), ...words]);
      // A file of somebody else is replaced by force alone, and a report of an earlier run as it is.
      expect(await over('old.html')).toMatchObject({
        status: 2,
        printed: '',
        complained: expect.stringMatching(/cannot write .*old\.html: .*there already.*--force/),
      });
      expect(readFileSync(folder.path('old.html'), 'utf8')).toBe('old');
      expect((await over('old.html', '--force')).status).toBe(0);
      expect(readFileSync(folder.path('old.html'), 'utf8')).toContain('<title>A</title>');
      writeFileSync(folder.path('day.trib'), 'job "B"\n');
      expect((await over('old.html')).status).toBe(0);
      expect(readFileSync(folder.path('old.html'), 'utf8')).toContain('<title>B</title>');
      const failed = await tribrach(['report', folder.path('none.trib'), '--out', folder.path('not.html')]);
      expect(failed).toMatchObject({ status: 2, printed: '' });
      expect(existsSync(folder.path('not.html'))).toBe(false);
    } finally {
      folder.remove();
    }
  });

  it('never writes over a session, a folder, or what is no file', async () => {
    const folder = folderWith({ 'day.trib': 'job "A"\n', 'other.trib': 'job "B"\n' });
    try {
      for (const [out, reason] of [
        ['day.trib', 'it was read for this'],
        ['other.trib', 'it is a session'],
        ['.', 'it is a folder'],
      ] as const)
        for (const force of [[], ['--force']]) {
          const words = ['report', folder.path('day.trib'), '--out', folder.path(out), ...force];
          expect(await tribrach(words)).toMatchObject({
            status: 2,
            complained: expect.stringContaining(reason),
          });
        }
      expect(readFileSync(folder.path('day.trib'), 'utf8')).toBe('job "A"\n');
      expect(readFileSync(folder.path('other.trib'), 'utf8')).toBe('job "B"\n');
    } finally {
      folder.remove();
    }
  });

  it('prints to standard output without --out, and Markdown on request', async () => {
    const page = await tribrach(['report', '-'], { input: 'job "A"\n' });
    expect(page.printed).toMatch(/^<!doctype html>/);
    const text = await tribrach(['report', '-', '--format', 'markdown'], { input: 'job "A"\n' });
    expect(text.printed).toMatch(/^## A\n/);
  });
});
