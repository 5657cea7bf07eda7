/** A slip in writing never hides one in what was done: what hangs under a finding goes away when that is mended. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import type { Finding } from '../server/findings/finding.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { withoutMarkers } from './markers.ts';
import { allPages, inspectSnippet, inspectText, textAfter } from './pages.ts';
import { allSamples, brokenSamples, filesOnDisk, inspectSample, type Sample } from './samples.ts';

const again = ({ session: { document } }: Inspection, text: string) =>
  document.path === 'session.trib' ? inspectText(text) : inspectSample({ file: document.path, text });

describe('a redundant reading with a decimal comma', () => {
  const sample = readFileSync('samples/breakwater.trib', 'utf8');
  /** Keyed without the extension of 250 mm, so that each check comes out 250 mm low, and the second reading mistyped. */
  const text = sample
    .replace('antenna-height 1.533 m', 'antenna-height 1.283 m')
    .replace(/(check (?:OPEN|NOON|CLOSE) [^]*?height )([\d.]+)/g, (_, before: string, height: string) => {
      return before + (Number(height) - 0.25).toFixed(3);
    })
    .replace('4.21 ft to foot', '1,283 m to foot');
  const { findings } = inspect(openDocument('samples/breakwater.trib', text), filesOnDisk());
  const told = findings.map(({ severity, code }) => `${severity} ${code}`);

  it('does not hide the height that was keyed without the extension', () => {
    expect(told).toContain('error number/decimal-comma');
    expect(told).toContain('error height/extension');
  });
  it('takes no check away from the height that explains it', () => {
    const extension = findings.find(({ code }) => code === 'height/extension');
    expect(extension?.related.filter(({ code }) => code === 'check/fails')).toHaveLength(3);
    expect(findings.filter(({ code }) => code === 'check/fails')).toEqual([]);
  });
});

/** What was found on its own must not hang under a finding of a slip that somebody has typed in besides. */
describe('of two slips neither is told under the other', () => {
  const slips: readonly (readonly [string, RegExp, string])[] = [
    ['a decimal comma', /^([^"#]* -?\d+)\.(\d)/, '$1,$2'],
    ['a unit left out', /^([^"#]*\d) (?:m|mm|MHz|kHz|kbps|ft)\b/, '$1'],
    ['two letters of the first word swapped', /^(\s*\w)(\w)(?!\2)(\w)/, '$1$3$2'],
    ['two points in a number', /^([^"#]*\d\.\d)(\d+ (?:m|mm|MHz|kbps|ft)\b)/, '$1.$2'],
    ['a letter left out', /^([^"#]*\d m) [EN](?=,)/, '$1'],
  ];
  const cases = brokenSamples().map((sample): [string, Sample] => [sample.file, sample]);

  it.each(cases)('%s', (_, sample) => {
    const text = withoutMarkers(sample.text);
    const own = inspectSample({ ...sample, text }).findings.filter(isGrave);
    const lines = text.split('\n');
    const hidden: string[] = [];
    lines.forEach((line, index) => {
      for (const [slip, pattern, replacement] of slips) {
        const changed = line.replace(pattern, replacement);
        if (changed === line || (index + slip.length) % EVERY !== 0) continue;
        const { findings } = inspectSample({ ...sample, text: lines.with(index, changed).join('\n') });
        for (const { code } of own.filter((one) => !findings.some((found) => found.code === one.code))) {
          const above = findings.find(({ related }) => related.some((other) => other.code === code));
          if (above && !own.some((one) => one.code === above.code))
            hidden.push(`${code} under ${above.code}: ${changed}`);
        }
      }
    });
    expect(hidden).toEqual([]);
  });
  /** All of them take minutes. */
  const EVERY = 11;
});

const isGrave = ({ severity }: Finding) => severity === 'error' || severity === 'warning';

describe('what hangs under a finding goes away with it', () => {
  const inspections: [string, Inspection][] = [
    ...allPages().flatMap(({ code, snippets }) =>
      snippets.map((snippet): [string, Inspection] => [`${code}, ${snippet.role}`, inspectSnippet(snippet)]),
    ),
    ...allSamples().map((sample): [string, Inspection] => [sample.file, inspectSample(sample)]),
  ];
  const mendable = inspections.filter(([, { findings }]) =>
    findings.some((finding) => hung(finding).length > 0 && mends(finding).length > 0),
  );
  function hung({ code, related }: Finding) {
    return related.filter((other) => other.code !== code);
  }
  function mends({ fixes }: Finding) {
    return fixes.filter(({ edits }) => edits.every(({ text }) => !/[?\r\n]/.test(text)));
  }

  it('and there are some to mend', () => {
    expect(mendable.length).toBeGreaterThan(1);
  });
  it.each(mendable)('by one of its fixes at least: %s', (_, inspection) => {
    for (const finding of inspection.findings) {
      if (hung(finding).length === 0 || mends(finding).length === 0) continue;
      const left = mends(finding).map((fix) => {
        const after = again(inspection, textAfter(inspection, fix) ?? '').findings;
        const codes = after.flatMap(({ code, related }) => [code, ...related.map((other) => other.code)]);
        return hung(finding).filter(({ code }) => codes.includes(code));
      });
      expect(Math.min(...left.map(({ length }) => length)), finding.code).toBe(0);
    }
  });
});
