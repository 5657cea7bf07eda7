/** Sessions that were cut, doubled, swapped and mistyped over the whole of Unicode are answered like any other. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { breach } from './fixes.ts';
import { growth } from './growth.ts';
import { mangledSession } from './fuzz/sessions.ts';
import { answered } from './fuzz/inspection.ts';
import { anyText } from './mangled.ts';
import { inspectText, textAfter } from './pages.ts';
import { filesOnDisk } from './samples.ts';

const files = filesOnDisk();
/** Named as a sample, so that what it names is found. */
const inspected = (text: string) => inspect(openDocument('samples/broken/mangled.trib', text), files);

describe('mangled sessions', () => {
  it('are answered, each finding at a place inside its file, with a sentence', () => {
    fc.assert(
      fc.property(fc.oneof({ weight: 4, arbitrary: mangledSession }, anyText), (text) =>
        answered(inspected(text), text),
      ),
      { numRuns: 400 },
    );
  });

  it('are still answered after any of the fixes, none of which writes a fact', () => {
    fc.assert(
      fc.property(mangledSession, fc.nat(), (text, choice) => {
        const inspection = inspected(text);
        const fixes = inspection.findings.flatMap((finding) => finding.fixes);
        const fix = fixes[choice % Math.max(1, fixes.length)];
        if (!fix) return;
        expect(breach(inspection, fix)).toBeNull();
        const fixed = textAfter(inspection, fix);
        expect(fixed).not.toBe(text);
        if (fixed !== null) answered(inspected(fixed), fixed);
      }),
      { numRuns: 300 },
    );
  });
});

/** Four times the text in four times the time is 4; a method that compares everything with everything would need 16. */
const MOST = 8;

const numbered = (unit: (number: number) => string) => (count: number) =>
  Array.from({ length: count }, (_, index) => unit(index)).join('');
const HEAD = 'job "x"\n  date 2026-05-19\n  grid EPSG:3763\n';
const SETUP = 'setup BASE on M0 at 07:50 until 15:40\n';
const mark = (number: number) =>
  `mark M${number}\n  position ${-41000 - number} m E, 164904.902 m N\n  height 6.284 m ellipsoidal\n`;
const time = (number: number) =>
  `${String(8 + (Math.floor(number / 60) % 7)).padStart(2, '0')}:${String(number % 60).padStart(2, '0')}`;

const grown: readonly (readonly [string, (count: number) => string, number])[] = [
  ['marks', (count) => HEAD + numbered(mark)(count), 60],
  ['marks of one name', numbered(() => mark(0)), 200],
  [
    'checks',
    (count) =>
      HEAD +
      mark(0) +
      SETUP +
      numbered(
        (at) =>
          `check C${at} on M0 at ${time(at)}\n  observed -41000 m E, 164904 m N, height 6 m ellipsoidal\n`,
      )(count),
    60,
  ],
  [
    'checks on unknown marks',
    (count) =>
      SETUP +
      numbered((at) => `mark PILLAR-${at}\ncheck C${at} on PILAR-${at + 1000000} at ${time(at)}\n`)(count),
    200,
  ],
  [
    'setups',
    (count) =>
      HEAD +
      mark(0) +
      numbered((at) => `setup S${at} on M0 at ${time(at)}\n  measured 1.284 m to foot, at 07:52\n`)(count),
    60,
  ],
  [
    'setups with checks',
    (count) =>
      HEAD +
      mark(0) +
      numbered((at) => `setup S${at} on M0 at ${time(at)}\ncheck C${at} on M0 at ${time(at)}\n`)(count),
    60,
  ],
  [
    'readings',
    (count) => SETUP + numbered((at) => `  measured 1.${at} m to foot, at ${time(at)}\n`)(count),
    100,
  ],
  [
    'keyed values',
    (count) =>
      HEAD +
      mark(0) +
      SETUP +
      numbered((at) => `  keyed antenna-height 1.${at} m to arp at ${time(at)}\n`)(count),
    60,
  ],
  ['events', (count) => SETUP + numbered((at) => `event disturbance at ${time(at)} "x"\n`)(count), 400],
  ['words that are none', numbered((at) => `mrak ${at}\n  hieght ${at}\n`), 300],
  ['open values', numbered(() => 'mark M0\n  height ? orthometric\n'), 300],
  [
    'details said again',
    (count) => `mark M0\n${numbered((at) => `  height ${at} m orthometric\n`)(count)}`,
    300,
  ],
  ['text that means nothing', numbered(() => '\u{1f4d0} 1,5 "\n'), 300],
];

describe('the time that an inspection takes grows with the text, not with its square', () => {
  it.each(grown)('for %s', (_, textOf, count) => {
    const texts = [textOf(count), textOf(4 * count)] as const;
    expect(growth(texts, MOST, (text) => void inspectText(text))).toBeLessThan(MOST);
  });
});
