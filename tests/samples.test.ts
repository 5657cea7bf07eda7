/** Clean samples are silent, and each broken one gets the finding that its name promises, where its markers say. */
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../server/findings/catalogue.ts';
import { PROGRAM_FAULT } from '../server/findings/program/fault.ts';
import {
  brokenSamples,
  cleanSamples,
  inspectSample,
  markedSample,
  promisedBy,
  type Sample,
} from './samples.ts';

it('there are samples of both sorts', () => {
  expect(cleanSamples().length).toBeGreaterThan(0);
  expect(brokenSamples().length).toBeGreaterThan(0);
});

describe('clean samples', () => {
  it.each(named(cleanSamples()))('%s is silent', (_, sample) => {
    expect(inspectSample(sample).findings.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  });
});

describe('broken samples', () => {
  it.each(named(brokenSamples()))('%s has the finding of its name', (_, sample) => {
    const codes = inspectSample(sample).findings.flatMap(({ code, related }) => [
      code,
      ...related.map((other) => other.code),
    ]);
    expect(codes).toContain(promisedBy(sample) ?? 'a code of the catalogue');
    expect(markedSample(sample)).toBe(sample.text);
  });
  it('are named after every code of the catalogue', () => {
    // No session brings a fault of the program about.
    const shown = new Set([...brokenSamples().map(promisedBy), PROGRAM_FAULT]);
    expect(CATALOGUE.map(({ code }) => code).filter((code) => !shown.has(code))).toEqual([]);
  });
});

function named(samples: readonly Sample[]): [string, Sample][] {
  return samples.map((sample) => [sample.file, sample]);
}
