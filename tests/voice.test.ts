/** How long what findings say is, over the samples and the pages: a headline is read at a glance, and the rest soon after. */
import { expect, it } from 'vitest';
import type { Finding } from '../server/findings/finding.ts';
import { allPages, inspectSnippet } from './pages.ts';
import { allSamples, inspectSample } from './samples.ts';

/** Words and characters of a headline; a number is read as one with its unit. */
const HEADLINE = { words: 12, characters: 90 };
/** Words of all that a finding says. */
const WHOLE = { mean: 25, most: 45 };

const wordsIn = (text: string) => text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

const readIn = (headline: string) =>
  wordsIn(headline.replace(/(\d) (?=(?:m|mm|km|dB|dBm|kbps|MHz|s|%)\b)/g, '$1'));

const findings: readonly Finding[] = [
  ...allSamples().map((sample) => inspectSample(sample)),
  ...allPages()
    .flatMap(({ snippets }) => snippets)
    .filter(({ role }) => role === 'wrong')
    .map((snippet) => inspectSnippet(snippet)),
].flatMap((inspection) => inspection.findings);

/** Each text once, however many sessions say it. */
const said = [...new Map(findings.map((finding) => [finding.message, finding])).values()];

interface Row {
  readonly code: string;
  readonly texts: number;
  readonly headline: number;
  readonly mean: number;
  readonly most: number;
}
const rows = [...new Set(said.map(({ code }) => code))].map((code): Row => {
  const own = said.filter((finding) => finding.code === code);
  const whole = own.map(({ message }) => wordsIn(message));
  return {
    code,
    texts: own.length,
    headline: Math.max(...own.map(({ headline }) => wordsIn(headline))),
    mean: Math.round(whole.reduce((sum, words) => sum + words, 0) / own.length),
    most: Math.max(...whole),
  };
});

it('prints the words of each code, the longest first', () => {
  const table = [...rows].sort((one, other) => other.most - one.most);
  process.stdout.write(
    `${[
      'code                          texts  headline  mean  most',
      ...table.map(({ code, texts, headline, mean, most }) =>
        [
          code.padEnd(29),
          String(texts).padStart(6),
          String(headline).padStart(9),
          ...[mean, most].map((n) => String(n).padStart(5)),
        ].join(' '),
      ),
    ].join('\n')}\n`,
  );
  expect(rows.length).toBeGreaterThan(80);
});

it('has headlines that a list of problems shows whole', () => {
  const tooLong = said
    .filter(({ headline }) => readIn(headline) > HEADLINE.words || [...headline].length > HEADLINE.characters)
    .map(({ code, headline }) => `${code}: ${headline}`);
  expect(tooLong).toEqual([]);
});

it('ends each headline as a sentence', () => {
  const open = said.filter(({ headline }) => !/[.?]$/.test(headline));
  expect(open.map(({ code, headline }) => `${code}: ${headline}`)).toEqual([]);
});

it('says little: a mean of 25 words, and never above 45', () => {
  const whole = said.map(({ message }) => wordsIn(message));
  expect(whole.reduce((sum, words) => sum + words, 0) / whole.length).toBeLessThanOrEqual(WHOLE.mean);
  const tooLong = said
    .filter(({ message }) => wordsIn(message) > WHOLE.most)
    .map(({ code, message }) => `${code}: ${message}`);
  expect(tooLong).toEqual([]);
});
