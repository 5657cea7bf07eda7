/** The report of one or several sessions: one page that needs nothing but itself, to read, print and keep. */
import { attempted, isFault } from '../../../grammar/fault.ts';
import { faultMessage } from '../../findings/program/fault.ts';
import type { Inspection } from '../../inspect.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { Accuracy, Job, Stated } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import { verdictSign } from '../drawings/canvas.ts';
import { dayStrip } from '../drawings/day.ts';
import { element, styleSheet, type Child, type Markup } from '../drawings/markup.ts';
import { chapterOf, facts, figure, type Chapter } from './chapter.ts';
import { checksSection, planSection, trustSection } from './checks.ts';
import {
  assumptionsSection,
  cautionsSection,
  derivationsSection,
  findingsSection,
  linkSection,
  pointsSection,
  recordSection,
  sourcesSection,
  writtenSection,
} from './rest.ts';
import { setupSection } from './setup.ts';
import { REPORT_STYLE } from './style.ts';
import { signInWords, signOf, titleOf } from './verdict.ts';
import { verdictOf } from '../verdict.ts';

/** Stands at the head of each report, so that one is told from other pages. */
export const REPORT_MARK = '<meta name="generator" content="tribrach report">';

/** A whole HTML document. The same sessions give the same text, whenever and wherever it is made. */
export function reportPage(inspections: readonly Inspection[]): string {
  const chapters = inspections.map((inspection, index) => chapterOf(inspection, index + 1));
  const only = chapters.length === 1 ? chapters[0] : undefined;
  const title = only ? titleOf(only.inspection) : `${chapters.length} sessions`;
  const page = element(
    'html',
    { lang: 'en' },
    element(
      'head',
      {},
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'generator', content: 'tribrach report' }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      // Nothing is loaded and nothing runs, whatever a session may say.
      element('meta', {
        'http-equiv': 'Content-Security-Policy',
        content: "default-src 'none'; style-src 'unsafe-inline'",
      }),
      element('meta', { name: 'color-scheme', content: 'light dark' }),
      element('title', {}, title),
      styleSheet(REPORT_STYLE),
    ),
    element(
      'body',
      {},
      only ? null : contents(chapters),
      element('main', {}, ...chapters.map((chapter) => guardedPart(chapter, chapters.length > 1))),
      element(
        'footer',
        {},
        'Made by Tribrach from the session as written. Every number leads to its derivation.',
      ),
    ),
  );
  return `<!doctype html>\n${page.markup}\n`;
}

function contents(chapters: readonly Chapter[]): Markup {
  return element(
    'nav',
    { 'aria-label': 'Sessions' },
    element('h1', {}, `${chapters.length} sessions`),
    element(
      'ol',
      {},
      ...chapters.map(({ inspection, prefix }) =>
        element(
          'li',
          {},
          element('a', { href: `#${prefix}` }, titleOf(inspection)),
          element('br'),
          element('span', { class: 'small quiet' }, verdictOf(inspection).sentence ?? 'No base is set up.'),
        ),
      ),
    ),
  );
}

/** A session that the program cannot report is said to be so, and the others are reported. */
function guardedPart(chapter: Chapter, several: boolean): Markup {
  const part = attempted(() => sessionPart(chapter, several));
  if (!isFault(part)) return part;
  return element(
    'article',
    { class: several ? 'session' : null, id: chapter.prefix },
    element('h1', {}, chapter.inspection.session.document.path),
    element('p', {}, faultMessage(part.fault)),
  );
}

function sessionPart(chapter: Chapter, several: boolean): Markup {
  const { inspection, prefix } = chapter;
  const { session, derivation } = inspection;
  return element(
    'article',
    { class: several ? 'session' : null, id: prefix },
    element('h1', {}, titleOf(inspection)),
    verdictBlock(inspection),
    figure(chapter, (canvas) => dayStrip(inspection, canvas), dayCaption(inspection)),
    jobFacts(inspection),
    ...[...derivation.setups.values()].map((values) => setupSection(chapter, values)),
    derivation.setups.size > 0 || derivation.checks.length > 0 ? planSection(chapter) : null,
    derivation.setups.size > 0 || derivation.checks.length > 0 ? checksSection(chapter) : null,
    trustSection(chapter),
    linkSection(chapter),
    pointsSection(chapter),
    findingsSection(chapter),
    session.entries.length > 0 ? cautionsSection(chapter) : null,
    recordSection(chapter),
    assumptionsSection(chapter),
    sourcesSection(chapter),
    derivationsSection(chapter),
    writtenSection(chapter),
  );
}

/** What is in the picture of the day, only where it is. */
function dayCaption({ session, derivation }: Inspection): string {
  const parts = [
    derivation.checks.some(({ instant }) => instant !== null)
      ? 'Above the strip the checks with their verdicts'
      : null,
    session.events.some(({ at }) => instantOf(at, session.job) !== null) ? 'jagged lines are events' : null,
    [...derivation.setups.values()].some(({ keyed }) =>
      keyed.slice(1).some(({ state }) => state.from !== null),
    )
      ? 'diamonds are values keyed anew'
      : null,
    [...derivation.setups.values()].some(({ height }) =>
      height.readings.some(({ instant }) => instant !== null),
    )
      ? 'triangles below it are readings of the antenna height'
      : null,
  ].filter((part) => part !== null);
  const text = parts.join('; ');
  return text === '' ? 'The day.' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function verdictBlock(inspection: Inspection): Markup {
  const { sentence, assumed, next } = verdictOf(inspection);
  const sign = signOf(inspection);
  return element(
    'div',
    { class: 'verdict' },
    element(
      'svg',
      { class: 'drawing', viewBox: '-17 -17 34 34', role: 'img', 'aria-label': signInWords(inspection) },
      verdictSign(sign, 0, 0, 15),
    ),
    element('p', { class: 'label' }, signInWords(inspection)),
    element(
      'p',
      { class: 'sentence' },
      sentence ?? 'No base is set up in this session, so there is nothing to prove.',
    ),
    assumed ? element('p', { class: 'small quiet' }, assumed) : null,
    next ? element('p', {}, element('b', {}, 'Next: '), next) : null,
  );
}

function jobFacts({ session, derivation }: Inspection): Markup | null {
  const { job } = session;
  const { grid, confidence } = derivation.frame;
  return facts([
    job?.date && !isHole(job.date) ? ['Date', job.date.typed] : null,
    job?.observer ? ['Observer', job.observer.text] : null,
    isHole(grid) ? null : ['Grid', `${grid.name}${grid.code ? ` (${grid.code})` : ''}, ${grid.datum.name}`],
    job?.vertical ? ['Heights', job.vertical.text] : null,
    job?.geoid ? ['Geoid model', job.geoid.name] : null,
    job?.tolerance ? ['Tolerance', toleranceText(job.tolerance)] : null,
    job
      ? [
          'Confidence',
          `${showNumber(confidence.value * 100, 1).replace(/\.0$/, '')} %${givenConfidence(job)}`,
        ]
      : null,
    ['Session', session.document.path],
  ]);
}

const givenConfidence = (job: Job) => (job.confidence ? '' : ' (assumed)');

function toleranceText({ horizontal, vertical }: Accuracy): string {
  const side = (stated: Stated | null, name: string): Child & string => {
    if (!stated) return '';
    const constant = isHole(stated.constant) ? '?' : showLength(stated.constant.value);
    const rate = stated.perDistance
      ? ` + ${isHole(stated.perDistance) ? '?' : showNumber(stated.perDistance.value * 1e6, 1).replace(/\.0$/, '')} ppm`
      : '';
    return `${constant}${rate} ${name}`;
  };
  return [side(horizontal, 'horizontal'), side(vertical, 'vertical')]
    .filter((text) => text !== '')
    .join(', ');
}
