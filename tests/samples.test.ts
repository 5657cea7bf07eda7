/** Clean samples are silent, and each broken one gets the finding that its name promises, where its markers say. */
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../server/findings/catalogue.ts';
import { brokenSamples, cleanSamples, inspectSample, markedSample, type Sample } from './samples.ts';

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
    expect(inspectSample(sample).findings.map(({ code }) => code)).toContain(promisedBy(sample));
    expect(markedSample(sample)).toBe(sample.text);
  });
});

/** `height-separation-sign.trib`, and `height-extension-twice.trib` where one finding has several samples. */
function promisedBy({ file }: Sample): string {
  const name = file.replace(/^.*\/|\.trib$/g, '');
  const fitting = CATALOGUE.map(({ code }) => code).filter((code) =>
    `${name}-`.startsWith(`${code.replace('/', '-')}-`),
  );
  return fitting.sort((one, other) => other.length - one.length)[0] ?? `a finding named ${name}`;
}

function named(samples: readonly Sample[]): [string, Sample][] {
  return samples.map((sample) => [sample.file, sample]);
}
