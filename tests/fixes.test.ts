/** No fix that is offered on any page or sample writes a fact; and the law itself catches those that would. */
import { describe, expect, it } from 'vitest';
import type { Fix } from '../server/findings/finding.ts';
import type { Inspection } from '../server/inspect.ts';
import { breach } from './fixes.ts';
import { allPages, inspectSnippet, inspectText } from './pages.ts';
import { allSamples, inspectSample } from './samples.ts';

const inspections: [string, Inspection][] = [
  ...allPages().flatMap(({ code, snippets }) =>
    snippets.map((snippet): [string, Inspection] => [`${code}, ${snippet.role}`, inspectSnippet(snippet)]),
  ),
  ...allSamples().map((sample): [string, Inspection] => [sample.file, inspectSample(sample)]),
];
const offering = inspections.filter(([, { findings }]) => findings.some(({ fixes }) => fixes.length > 0));

describe('a fix never writes a fact', () => {
  it('and fixes are offered', () => {
    expect(offering.length).toBeGreaterThan(20);
  });
  it.each(offering)('%s', (_, inspection) => {
    const fixes = inspection.findings.flatMap((finding) => finding.fixes);
    expect(fixes.map((fix) => breach(inspection, fix)).filter((found) => found !== null)).toEqual([]);
  });
});

describe('the law', () => {
  const inspection = inspectText(
    'mark PM-14\n  height 6.284 m orthometric\n  height 6.284 m orthometric\n  found intact\n',
  );
  const [entry] = inspection.session.document.entries;
  const fix = (typed: string, text: string): Fix => {
    if (!entry) throw new Error('the session has an entry');
    const start = entry.text.indexOf(typed);
    return {
      title: text,
      edits: [{ place: { path: 'session.trib', entry, start, end: start + typed.length }, text }],
    };
  };
  it.each([
    ['another number', '6.284', '6.248'],
    ['a number where none stood', 'orthometric', 'orthometric 54.917'],
    ['a line with a value', '', '\n  separation  54.917 m'],
    ['an open line with a word of its own', '', '\n  found       moved ?'],
    ['a line gone', '  found intact\n', ''],
    ['nothing', '6.284', '6.284'],
  ])('catches %s', (_, typed, text) => {
    expect(breach(inspection, fix(typed, text))).not.toBeNull();
  });
  it.each([
    ['a unit', '6.284 m', '6.284 ft'],
    ['a decimal sign', '6.284', '6284'],
    ['an open line', '', '\n  separation  ?'],
    ['one of two twins gone', '  height 6.284 m orthometric\n', ''],
  ])('allows %s', (_, typed, text) => {
    expect(breach(inspection, fix(typed, text))).toBeNull();
  });
});
