/** What nobody can tell apart is told: two bases at once, an event without a time, a length that nothing has. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { trustOf } from '../server/derive/trust/trust.ts';
import { inspect } from '../server/inspect.ts';
import { keyCard } from '../server/record/card/key-card.ts';
import { filesOnDisk } from './samples.ts';

const inspected = (file: string, change: (text: string) => string = (text) => text) =>
  inspect(openDocument(file, change(readFileSync(file, 'utf8'))), filesOnDisk());
const codes = ({ findings }: ReturnType<typeof inspected>) =>
  findings.map(({ severity, code }) => `${severity} ${code}`);

describe('a check while two bases stood', () => {
  const both = (detail: string) =>
    inspected('samples/broken/check-two-bases.trib', (text) =>
      text.replace(/(check PIER-CLOSE .*\n)/, `$1${detail}`),
    );
  const classes = (day: ReturnType<typeof inspected>) =>
    trustOf(day.session, day.derivation).rovers.map(({ setup, day: found }) => [setup.setup.name, found]);

  it('proves none of them', () => {
    const day = both('');
    expect(codes(day)).toContain('warning check/two-bases');
    expect(day.derivation.checks.find(({ check }) => check.name === 'PIER-CLOSE')?.setup).toBeNull();
    expect(classes(day)).toContainEqual(['PIER', 'not-closed']);
  });
  it('proves the one that it names, in a line of its own', () => {
    const day = both('  from        PIER\n');
    expect(codes(day)).not.toContain('warning check/two-bases');
    expect(classes(day)).toContainEqual(['PIER', 'bracketed']);
  });
});

describe('an event without a time', () => {
  it('is told, and nothing is bracketed for it', () => {
    const day = inspected('samples/broken/event-no-time.trib');
    expect(codes(day)).toEqual(['warning event/no-time']);
    const { day: found, verdict } = trustOf(day.session, day.derivation);
    expect(found).toBe('not-closed');
    expect(verdict).toContain('08:25 to 15:25 is not closed (an event has no time)');
  });
});

describe('a length that nothing has', () => {
  const breakwater = (typed: string, put: string) =>
    inspected('samples/breakwater.trib', (text) => {
      expect(text).toContain(typed);
      return text.replace(typed, put);
    });
  const impossible = (day: ReturnType<typeof inspected>) =>
    day.findings.filter(({ code }) => code === 'height/impossible');

  it.each([
    ['1.284 m to foot', '1.413 mm to foot', '1.413 m'],
    ['1.284 m to foot', '1413 m to foot', '1413 mm'],
    ['extension   250 mm', 'extension   250 m', '250 mm'],
    ['phase-centre 92 mm', 'phase-centre 87 m', '87 mm'],
    ['height      6.284 m', 'height      212440 m', '212440 mm'],
  ])('%s: %s', (typed, put, meant) => {
    const [found, ...others] = impossible(breakwater(typed, put));
    expect(others).toEqual([]);
    expect(found?.severity).toBe('error');
    expect(found?.fixes.map(({ title }) => title)).toContain(`Write ${meant}`);
  });
  it('is told before anything is keyed', () => {
    const day = inspected('samples/breakwater.trib', (text) =>
      text.replace('1.284 m to foot', '1413 m to foot').replace(/^ {2}keyed .*\n/gm, ''),
    );
    expect(impossible(day)).toHaveLength(1);
  });
  it('is marked where the other reading is right', () => {
    // A thousandfold of the reading beside it is told as that.
    const found = breakwater('4.21 ft to foot', '1283 m to foot').findings.find(
      ({ code }) => code === 'unit/thousandfold',
    );
    const { entry, start, end } = found?.place ?? {
      entry: { text: '' },
      start: 0,
      end: 0,
    };
    expect(entry.text.slice(start, end)).toBe('1283 m');
  });
  it('leaves the card what it does not spoil', () => {
    const card = (typed: string, put: string) => {
      const day = breakwater(typed, put);
      const [setup] = day.derivation.setups.values();
      if (!setup) throw new Error('a base is set up');
      const told = keyCard(setup, day).lines.filter(({ value }) => value !== null);
      return told.map(({ label }) => label);
    };
    expect(card('extension   250 mm', 'extension   250 m')).not.toContain('Antenna height');
    expect(card('extension   250 mm', 'extension   250 m')).toContain('Ellipsoidal height');
    expect(card('height      6.284 m', 'height      212440 m')).not.toContain('Ellipsoidal height');
  });
  it('is none in a city in the mountains, on a pillar, or below the sea', () => {
    for (const [typed, put] of [
      ['height      6.284 m', 'height      3640 m'],
      ['height      6.284 m', 'height      -428 m'],
      ['1.284 m to foot', '0.031 m to foot'],
    ] as const)
      expect(impossible(breakwater(typed, put))).toEqual([]);
  });
});
