/** Two checks of one mark that differ across an event are told, since the day is then no longer held. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { filesOnDisk } from './samples.ts';

const day = readFileSync('samples/breakwater.trib', 'utf8');
const files = filesOnDisk();
const told = (text: string) =>
  inspect(openDocument('samples/breakwater.trib', text), files)
    .findings.filter(({ code }) => code === 'check/after-event')
    .map(({ severity, headline }) => `${severity}: ${headline}`);

describe('a nail seen before and after a disturbance', () => {
  // Each occupation is good to 8 mm and 15 mm up, so that 18 mm and 60 mm between two are more than chance.
  it.each([
    ['41195.402', '41195.420'],
    ['height 6.251 m', 'height 6.311 m'],
  ])('at %s, written %s, is told at the check that differs', (right, wrong) => {
    expect(told(day.replace(right, wrong))).toEqual([
      'information: NAIL-A and NAIL-B differ across the disturbance (BASE).',
    ]);
  });
  it.each([
    ['as it was', day],
    ['5 mm away', day.replace('41195.402', '41195.405')],
    ['with nothing having happened', day.replace(/^event .*\n/m, '').replace('41195.402', '41195.420')],
    ['seen only once', day.replace(/^check NAIL-B[^]*?(?=check NOON)/m, '')],
    ['as another mark', day.replace('NAIL-A on NAIL-1', 'NAIL-A on PM-14')],
  ])('%s is not told', (_, text) => {
    expect(told(text).filter((one) => one.includes('NAIL-A and NAIL-B'))).toEqual([]);
  });
});
