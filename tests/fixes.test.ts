/** No fix that is offered on any page or sample writes a fact; and the law itself catches those that would. */
import { describe, expect, it } from 'vitest';
import type { Fix } from '../server/findings/finding.ts';
import type { Inspection } from '../server/inspect.ts';
import { breach } from './fixes.ts';
import { allPages, inspectSnippet, inspectText, textAfter } from './pages.ts';
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

describe('a fix puts right what it is offered for', () => {
  const again = ({ session: { document } }: Inspection, text: string) =>
    document.path === 'session.trib' ? inspectText(text) : inspectSample({ file: document.path, text });
  const ABOUT_WRITING = /^(?:syntax\/(?!open-value)|unit\/missing|unit\/slip|angle\/|number\/decimal-comma)/;
  const countOf = ({ findings }: Inspection, code: string) =>
    findings.filter((finding) => finding.code === code).length;

  it.each(offering)('and leaves no line worse written: %s', (_, inspection) => {
    for (const { code, fixes } of inspection.findings)
      for (const fix of fixes) {
        const text = textAfter(inspection, fix);
        if (text === null) continue;
        const after = again(inspection, text);
        expect(countOf(after, code), fix.title).toBeLessThan(countOf(inspection, code));
        const worse = after.findings.filter(
          (found) =>
            ABOUT_WRITING.test(found.code) && countOf(inspection, found.code) < countOf(after, found.code),
        );
        expect(worse.map((found) => `${fix.title}: ${found.code}`)).toEqual([]);
      }
  });
});

describe('a coordinate without unit and letter', () => {
  const offers = (typed: string) =>
    inspectText(`mark B\n  position ${typed}\n`)
      .findings.filter(({ code }) => code === 'unit/missing')
      .map(({ message, fixes }) => [message.includes('degrees'), fixes[0]?.title]);
  it('may be degrees, where it is small enough', () => {
    expect(offers('41.15, -8.62')).toEqual([
      [true, 'Write 41.15°'],
      [true, 'Write -8.62°'],
    ]);
    expect(offers('-8.62, 164904.902')).toEqual([
      [true, 'Write -8.62°'],
      [false, 'Write 164904.902 m'],
    ]);
  });
  it('is asked for its letter once it has degrees', () => {
    const { findings } = inspectText('mark B\n  position 41.15°, -8.62°\n');
    expect(findings.flatMap(({ fixes }) => fixes.map(({ title }) => title))).toEqual(
      expect.arrayContaining(['Write 41.15° N', 'Write 8.62°W']),
    );
  });
});

describe('a letter among the digits', () => {
  it.each([
    'mark A\n  position -412O3.118 m E, 5 m N',
    'rover R\n  pole 2.O00 m to arp',
    `mark A\n  position 41°O9'08.2"N, 8°W`,
  ])('leaves nothing that a fix could read as a number: %s', (text) => {
    const { findings } = inspectText(`job "x"\n  grid EPSG:3763\n${text}\n`);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.flatMap(({ fixes }) => fixes)).toEqual([]);
  });
});

describe('a comma between digits', () => {
  it.each([
    ['mark A\n  height 6,284 m orthometric', ['6.284', '6284']],
    ['mark A\n  position 41,5 m E, 6 m N', ['41.5']],
    ['check A\n  quality fixed, pdop 1,5, 60 epochs', ['1.5']],
    ['check A\n  quality fixed, pdop 1,60 epochs', ['1.60', '1, 60']],
  ])('parts two numbers only where each of them can stand: %s', (text, readings) => {
    const found = inspectText(`${text}\n`).findings.find(({ code }) => code === 'number/decimal-comma');
    expect(found?.fixes.map(({ title }) => title.replace('Write ', ''))).toEqual(readings);
  });
});

describe('a letter that is missing', () => {
  const offered = (position: string) =>
    inspectText(`mark B\n  position ${position}\n`).findings.flatMap(({ fixes }) =>
      fixes.map(({ title }) => title.replace('Write ', '')),
    );
  it.each([
    ['5 m, 6 m N', ['5 m E']],
    ['6 m S, 5 m', ['5 m E']],
    ['5 m W, 6 m', ['6 m N']],
    ['5 m, 6 m', ['5 m E', '5 m N', '6 m E', '6 m N']],
    ['6 m, 5 m O', ['6 m N', '5 m E', '5 m W']],
    ['41°, 8°W', ['41° N', '41° S']],
    ['-8°, 41°N', ['8°W']],
    ['141°, 41°', ['141° E', '141° W', '41° N', '41° S', '41° E', '41° W']],
    ['4 m E, 5 m N, 6 m', []],
  ])('is never one that the position has already: %s', (position, letters) => {
    expect(offered(position)).toEqual(letters);
  });
});

describe('a check to be filled in', () => {
  const DAY =
    'job "Pier"\n  grid EPSG:3763\nmark PM-14\n  position -41203.118 m E, 164904.902 m N\n' +
    '  height 6.284 m ellipsoidal\n  separation 54.917 m\nmark NAIL-1\n';
  const SETUP = 'setup BASE on PM-14 at 07:50 until 12:10\n  remark "windy"';
  const added = (text: string) => {
    const inspection = inspectText(text);
    const finding = inspection.findings.find(({ code }) => code === 'check/missing-opening');
    const [fix] = finding?.fixes ?? [];
    return fix && textAfter(inspection, fix);
  };
  it('stands on lines of its own where the file ends without a line end', () => {
    expect(added(DAY + SETUP)).toBe(`${DAY}${SETUP}\ncheck OPEN on ? at ?\n  observed    ?\n`);
  });
  it('has the line ends of the file', () => {
    const file = `${DAY}${SETUP}\n`.replaceAll('\n', '\r\n');
    expect(added(file)).toBe(`${file}check OPEN on ? at ?\r\n  observed    ?\r\n`);
  });
  it('has a name that no other check has', () => {
    const nail = 'check OPEN on NAIL-1 at 08:00\n';
    expect(added(`${DAY}${nail}${SETUP}\n`)).toContain('\ncheck OPEN-2 on ? at ?\n');
  });
  it('is then told as what is still open, each part by its name', () => {
    const { findings } = inspectText(added(`${DAY}${SETUP}\n`) ?? '');
    const open = findings.filter(({ code }) => code === 'syntax/open-value');
    expect(open.map(({ message }) => message.replace(/ is still.*/, ''))).toEqual([
      'Mark of OPEN',
      'Time of OPEN',
      'Coordinate of OPEN',
    ]);
    expect(findings.filter(({ code }) => code === 'check/missing-opening')).toEqual([]);
  });
});

describe('text without its quotes', () => {
  const unquoted = (line: string) => {
    const inspection = inspectText(`${line}\n`);
    const finding = inspection.findings.find(({ code }) => code === 'syntax/leftover');
    return finding?.fixes.map((fix) => textAfter(inspection, fix)?.trimEnd());
  };
  it.each([
    ['event disturbance at 11:10 forklift passed', 'event disturbance at 11:10 "forklift passed"'],
    [
      'mark PM-14\n  source harbour register 2026-04-02',
      'mark PM-14\n  source "harbour register" 2026-04-02',
    ],
    [
      'check A\n  observed from rover.nmea between 08:25 and 08:28',
      'check A\n  observed from "rover.nmea" between 08:25 and 08:28',
    ],
    ['point P-1 brass kerb at 09:00', 'point P-1 "brass kerb" at 09:00'],
  ])('is put into them and no more: %s', (line, mended) => {
    expect(unquoted(line)).toEqual([mended]);
  });
  it('is not looked for where a word of the line may be meant, or a value', () => {
    expect(unquoted('event disturbance att 11:10')).toEqual(['event disturbance at 11:10']);
    expect(unquoted('mark PM-14 6.284 m')).toEqual([]);
  });
  it('is not looked for where the text stands behind it', () => {
    const { findings } = inspectText('job "x"\n  observer Okafor "R."\n');
    expect(findings.map(({ code, fixes }) => [code, fixes.length])).toEqual([['syntax/leftover', 0]]);
  });
  it('still misses where nothing stands', () => {
    const { findings } = inspectText('hazard\nhazard ?\n');
    expect(findings.map(({ code }) => code)).toEqual(['syntax/missing-value', 'syntax/open-value']);
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
