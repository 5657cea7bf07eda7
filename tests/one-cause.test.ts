/** One slip of the pen in a good day is one finding: what follows from it hangs under it, and nothing else is said. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { verdictOf } from '../server/record/verdict.ts';
import { cleanSamples, filesOnDisk } from './samples.ts';

const sample = cleanSamples().find(({ file }) => file.endsWith('/breakwater.trib'));
const lines = (sample?.text ?? '').split('\n');
const files = filesOnDisk();

/** Each changes the first place in a line that it fits. Texts and comments may say what they like. */
const slips: readonly (readonly [string, RegExp, string])[] = [
  ['a decimal comma', /^([^"#]* -?\d+)\.(\d)/, '$1,$2'],
  ['a unit left out', /^([^"#]*\d) (?:m|mm|MHz|kHz|kbps|ft)\b/, '$1'],
  ['two letters of the first word swapped', /^(\s*\w)(\w)(?!\2)(\w)/, '$1$3$2'],
  ['a name that nothing has', /^([^"#]*\b(?:on|with|by|from|antenna-type) )[A-Z][\w-]*/, '$1Q9X'],
  ['an entry under another name', /^(mark|antenna|rover|setup) [\w-]+/, '$1 Q9X'],
  ['a number still open', /^(\s+(?!message)[^"#]*?)\d+(?:\.\d+)?/, '$1?'],
  ['a time that no clock shows', /^([^"#]*\b)\d\d:\d\d\b/, '$129:71'],
  ['a letter left out', /^([^"#]*\d m) [EN](?=,)/, '$1'],
  ['a surface left out', /^([^"#]*height .*?\d m) (?:orthometric|ellipsoidal)/, '$1'],
  ['a sign in a hemisphere', /^([^"#]* )(\d+°)/, '$1-$2'],
  ['two points in a number', /^([^"#]*\d\.\d)(\d+ (?:m|mm|MHz|kbps|ft)\b)/, '$1.$2'],
  ['quotes left out', /^([^"#]*)"([^"#.,]*)"\s*$/, '$1$2'],
  ['a quote not closed', /^([^"#]*"[^"]*)"\s*$/, '$1'],
];

const cases = slips.flatMap(([slip, pattern, replacement]) =>
  lines.flatMap((line, index): [string, string, number][] => {
    const changed = line.replace(pattern, replacement);
    return changed === line ? [] : [[slip, changed, index]];
  }),
);

describe('a check that failed', () => {
  const brokenDay = (name: string) => {
    const file = `samples/broken/${name}.trib`;
    return inspect(openDocument(file, readFileSync(file, 'utf8')), files);
  };
  const told = ({ findings }: Inspection) =>
    findings.flatMap(({ message, related }) => [message, ...related.map((one) => one.message)]).join('\n');

  it.each(['height-extension', 'height-separation'])('waits for no cause where %s is told as it', (name) => {
    const day = brokenDay(name);
    expect(told(day)).toContain('OPEN fails: ');
    expect(told(day)).not.toMatch(/Find the cause|before the cause is known/);
    expect(verdictOf(day).next).toMatch(new RegExp(`^Fix line \\d+ first [(]${name.replace('-', '/')}[)]`));
  });

  it('waits for its cause where nothing explains it, with the points that it leaves in doubt', () => {
    const day = brokenDay('points-in-doubt');
    expect(told(day)).toContain('Find the cause: ');
    expect(told(day)).toContain('Use none before the cause is known');
    expect(verdictOf(day).next).toContain('(check/fails)');
  });

  it('waits for nothing once what was wrong has been put right', () => {
    const day = brokenDay('height-extension');
    const { text } = day.session.document;
    const rekeyed = text
      .replace(
        /^( {2}keyed +antenna-height 1\.283 m to arp)$/m,
        '$1\n  keyed antenna-height 1.533 m to arp, at 09:00',
      )
      .replace(/^(check (?:NOON|CLOSE) [^]*?height )([\d.]+)/gm, (_, before: string, height: string) => {
        return before + (Number(height) + 0.25).toFixed(3);
      });
    const after = inspect(openDocument(day.session.document.path, rekeyed), files);
    expect(told(after)).toContain('put right since');
    expect(told(after)).not.toMatch(/Find the cause|before the cause is known/);
  });
});

describe('one slip is one finding', () => {
  it('where a file that cannot be read should bring the marks', () => {
    const text = lines.join('\n').replace(/^mark [^]*?(?=^antenna)/m, 'use "lost.trib"\n\n');
    const { findings } = inspect(openDocument(sample?.file ?? '', text), files);
    expect(findings.map(({ code }) => code)).toEqual(['syntax/unreadable-file']);
  });
  it('where the mark has a quote in its name', () => {
    const text = lines.join('\n').replaceAll('PM-09', '"the ""old"" bolt"').replace('-40311.882 m', '-4e4 m');
    const { findings } = inspect(openDocument(sample?.file ?? '', text), files);
    expect(findings.map(({ code }) => code)).toEqual(['syntax/exponent']);
  });
  it('in many places', () => {
    expect(cases.length).toBeGreaterThan(100);
  });
  it.each(cases)('%s: %s', (_, changed, index) => {
    const text = lines.with(index, changed).join('\n');
    const { findings } = inspect(openDocument(sample?.file ?? '', text), files);
    expect(findings.map(({ severity, code }) => `${severity} ${code}`)).toHaveLength(1);
  });
  it('an event written between the lines of a setup takes those below it away', () => {
    const keyed = lines.findIndex((line) => line.startsWith('  keyed'));
    const text = lines.toSpliced(keyed, 0, 'event disturbance at 12:00 "van"').join('\n');
    const { findings } = inspect(openDocument(sample?.file ?? '', text), files);
    expect(findings.filter(({ severity }) => severity === 'error' || severity === 'warning')).toMatchObject([
      { code: 'syntax/misplaced-detail' },
    ]);
  });
});
