/** A hover has something to say of every word, unit, name, time and value of every example that the vocabulary gives. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { detailWord, ENTRIES } from '../../grammar/vocabulary.ts';
import { inspect } from '../inspect.ts';
import { NO_FILES } from '../session/files.ts';
import { hoverAt } from './hover.ts';

const job = `job "North arm"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
`;
const rest = `mark PM-14
  height      6.284 m orthometric
mark PM-09
antenna A1
rover R1
setup BASE on PM-14 with A1 at 07:50 until 15:40
`;
const hoverIn = (text: string, offset: number) =>
  hoverAt(inspect(openDocument('day.trib', text), NO_FILES), offset);
const told = (marked: string) => {
  const offset = marked.indexOf('|');
  const text = `${job}${rest}${marked.replace('|', '')}\n`;
  return JSON.stringify(hoverIn(text, job.length + rest.length + offset)?.blocks ?? null);
};

const lines = ENTRIES.flatMap(({ word, example, details }) => [
  { name: word, above: '', line: example },
  ...details.map((detail) => ({
    name: `${word} ${detail}`,
    above: `${example}\n  `,
    line: detailWord(detail)?.example ?? '',
  })),
]);

describe('hovers', () => {
  it.each(lines)('say something of all that stands in $name', ({ above, line }) => {
    const before = job + rest + above;
    const text = `${before}${line}\n`;
    const mute = [...line.matchAll(/[^\s,"/]+/g)]
      .filter(({ index }) => hoverIn(text, before.length + index) === null)
      .map(([found]) => found);
    expect(mute).toEqual([]);
  });

  it('tell words by the line that they stand in', () => {
    expect(told('setup X on PM-09\n  measured 1.3 m to foot, 48 mm o|ff centre')).toContain(
      'distance from the plumb line',
    );
    expect(told('setup X on PM-09\n  measured 1.3 m to fo|ot')).toContain('the foot of the extension');
    expect(told('check X on PM-09\n  quality fi|xed, 60 epochs')).toContain('ambiguities fixed');
    expect(told('mark X\n  found dam|aged')).toContain('harmed, but where it was');
    expect(told('points\n  columns name, time ut|c')).toContain('universal time');
    expect(told('mark X\n  position 1 m E, 2 m N in EPSG:27700 by EPSG:13|14')).toContain(
      'OSGB36 to WGS 84 (6)',
    );
  });

  it('tell times by both clocks, and days of the week', () => {
    expect(told('event power-loss at 13:|05')).toContain('13:05 by the clock of the job: 12:05 UTC.');
    expect(told('event power-loss at 00:|30')).toContain('23:30 the day before UTC');
    expect(told('event power-loss at 23:|30Z')).toContain('00:30 the day after by the clock of the job');
    // 21 May 2026 is a Thursday, by any calendar.
    expect(told('review "L. Brandt" 2026-05-|21')).toContain('a Thursday');
  });
});
