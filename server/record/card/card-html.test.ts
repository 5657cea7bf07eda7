/** The key card as markup: keyed beside should-be, digits whole for who hears them, and text that stays text. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { NO_FILES } from '../../session/files.ts';
import { setupAt } from '../../features/setup-at.ts';
import { cardDocument, cardsHtml } from './card-html.ts';

const day = readFileSync('samples/example-day.trib', 'utf8');
const inspected = (text: string) => inspect(openDocument('day.trib', text), NO_FILES);
const html = (text: string) => cardsHtml(inspected(text));
/** The line of the card with that label, without its markup. */
const lineOf = (text: string, label: string) =>
  (
    html(text)
      .split('class="card-line')
      .find((line) => line.includes(`<dt>${label}</dt>`)) ?? ''
  )
    .replace(/<[^>]*>/g, '|')
    .replace(/\|+/g, '|');

describe('the key card as markup', () => {
  it('has what was keyed beside what should be', () => {
    // √(1.284² − 0.048²) + 0.250 = 1.5331 and 1.5321 afterwards, by hand.
    expect(lineOf(day, 'Antenna height')).toContain('✓ keyed 1.533 m, agrees');
    const slipped = day.replace('antenna-height 1.533 m', 'antenna-height 1.283 m');
    expect(lineOf(slipped, 'Antenna height')).toContain('✗ keyed 1.283 m: |250 mm too low');
    const lower = day.replace('height 61.201 m ell', 'height 61.101 m ell');
    expect(lineOf(lower, 'Ellipsoidal height')).toContain('✗ keyed 61.101 m: |100 mm too low');
    // 0.00010″ of latitude is 3.1 mm.
    const south = day.replace('08.18286"N', '08.18276"N');
    expect(lineOf(south, 'Latitude')).toContain('3 mm too far south');
    expect(lineOf(day.replace(/ {2}keyed.*\n/g, ''), 'Latitude')).not.toContain('keyed');
  });

  it('copies the number that a receiver takes, without unit or spaces', () => {
    expect(html(day)).toContain('data-copy="61.201"');
    expect(html(day)).toContain('data-copy="41°09&#39;08.18286&#34;N"');
    expect(html(day)).toContain('data-copy="-721183.1676"');
  });

  it('keeps the text of a session text', () => {
    const odd = day.replace('brass bolt, pier deck', '<img src=x onerror=alert(1)>');
    expect(html(odd)).not.toContain('<img');
    expect(cardDocument(inspected(odd), '<b>.trib')).not.toMatch(/<img|<b>/);
  });

  it('is of the setup that a line is about', () => {
    const inspection = inspected(day);
    const at = (text: string) => setupAt(inspection, day.indexOf(text));
    expect(['setup BASE', 'extension', 'check OPEN', 'mark PM-14'].map(at)).toEqual(Array(4).fill('BASE'));
    expect(['mark PM-09', 'job', 'hazard'].map(at)).toEqual([null, null, null]);
  });
});
