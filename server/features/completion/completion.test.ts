/** Completion at every place of every entry: what the language's own examples go on with is offered, and what is offered is understood. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { detailWord, ENTRIES } from '../../../grammar/vocabulary.ts';
import { inspect } from '../../inspect.ts';
import { NO_FILES, type Files } from '../../session/files.ts';
import { offsetsOf } from '../../session/where.ts';
import { completionAt } from './completion.ts';

const job = `job "North arm"
  date        2026-05-19
  observer    "R. Okafor"
  grid        EPSG:3763
`;
const rest = `mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
mark PM-09
antenna A1
  tape-point  RIM radius 168 mm, 35 mm above arp
rover R1
surface CHART
  offset      2.00 m below orthometric
ground SITE
  scale       1.00001
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1.284 m to foot, at 07:52, by "L. Brandt"
`;

const inspected = (text: string, files: Files = NO_FILES) => inspect(openDocument('day.trib', text), files);
const at = (head: string, files?: Files) => completionAt(inspected(`${head}\n`, files), head.length, files);
const labels = (head: string, files?: Files) => at(head, files).map(({ label }) => label);

/** Every first line and every detail of every entry as the vocabulary's example has it, with what is typed above it. */
const examples = ENTRIES.flatMap(({ word, example, details }) => {
  const above = word === 'job' ? rest : job + rest;
  const header = example.replace(/^(\S+) (BASE|PM-14|A1|R1|CHART|SITE)/, '$1 NEW');
  const lines = details.map((detail) => ({
    name: `${word} ${detail}`,
    above: `${above}${header}\n  `,
    line: detailWord(detail)?.example ?? '',
  }));
  return [{ name: word, above, line: header }, ...lines];
});

/** Where each word, name and unit of a line starts, quoted ones aside, and where the line ends. */
function places(line: string): number[] {
  const starts = [...line.matchAll(/(?<=[\s,])[^\s,]/g)].map(({ index }) => index);
  return [...starts, line.length].filter((start) => (line.slice(0, start).split('"').length - 1) % 2 === 0);
}

describe('each example of the vocabulary', () => {
  /** Nobody can offer what is only now given a name, nor what was measured. */
  const isOwn = (name: string, before: string, next: string) =>
    /^(mark|antenna|rover|surface|ground|setup|check|point|tape-point) $/.test(before) ||
    name === 'points row' ||
    (name === 'correction by' && next === 'R1');

  it.each(examples)('goes on with what is offered: $name', ({ name, above, line }) => {
    const missing = places(line).flatMap((start) => {
      const next = /^[^\s,]*/.exec(line.slice(start))?.[0] ?? '';
      const before = line.slice(0, start);
      if (!/^[\p{L}%°]/u.test(next) || isOwn(name, before, next)) return [];
      // Of a code something must be typed: there are thousands.
      const typed = next.startsWith('EPSG:') ? next.slice(0, 8) : '';
      const offered = labels(above + before + typed);
      return offered.some((label) => label === next || label.startsWith(`${next} `))
        ? []
        : [`${before}|${next}`];
    });
    expect(missing).toEqual([]);
  });

  const COMPLAINTS =
    /^(syntax\/(leftover|unknown|misplaced|wrong|repeated|duplicate|unclosed|value-range)|mark\/unknown|unit|angle)/;
  /** Behind every character, quoted ones aside. */
  const everywhere = (line: string) =>
    Array.from({ length: line.length + 1 }, (_, start) => start).filter(
      (start) => (line.slice(0, start).split('"').length - 1) % 2 === 0,
    );

  it.each(examples)('is offered nothing that is not understood: $name', ({ above, line }) => {
    const wrong = [...everywhere(line), -1].flatMap((start) => {
      const before = above + (start < 0 ? `${line} ` : line.slice(0, start));
      return at(before).flatMap(({ label, text, start: from }) => {
        const typed = before.slice(0, from) + text;
        const inspection = inspected(`${typed}\n`);
        // A sign of uncertainty alone is understood once its number follows.
        if (label === '±') return [];
        return inspection.findings
          .filter(({ code, place }) => {
            const found = offsetsOf(inspection.session, place);
            return COMPLAINTS.test(code) && found && found.start < typed.length && found.end > from;
          })
          .map(({ code }) => `${line.slice(0, start)}|${text}: ${code}`);
      });
    });
    expect(wrong).toEqual([]);
  });

  it.each(ENTRIES)('explains each detail of $word and shows it', ({ word, details }) => {
    const above = word === 'job' ? '' : job;
    const offered = at(`${above}${word} "NEW"\n  `);
    expect(offered.map(({ label }) => label)).toEqual(expect.arrayContaining([...details]));
    for (const { label, beside, says } of offered) {
      expect(beside, label).toMatch(/\.$/);
      expect(says, label).toContain(detailWord(label)?.example);
    }
  });
});

describe('a question', () => {
  const behind = (text: string) => completionAt(inspected(text), text.indexOf('?') + 1);
  const before = (text: string) => completionAt(inspected(text), text.indexOf('?'));

  it('is answered by what may stand there, which takes its place', () => {
    const text = 'mark A\n  found       ?\n';
    for (const offers of [behind(text), before(text)]) {
      expect(offers.map(({ label }) => label)).toEqual([
        'intact',
        'damaged',
        'disturbed',
        'destroyed',
        'not-found',
      ]);
      for (const { start, end } of offers) expect(text.slice(start, end)).toBe('?');
    }
    // An editor compares what stands before the cursor.
    expect(behind(text)[0]?.matches).toBe('?intact');
    expect(before(text)[0]?.matches).toBeUndefined();
  });

  it('is one only where it stands alone', () => {
    expect(behind('mark A\n  found       intact?\n').filter(({ end }) => end !== undefined)).toEqual([]);
    expect(behind(`job "x"\n  clock ?\n`)[0]).toMatchObject({ label: 'UTC' });
    expect(behind(`${job}${rest}check C on ? at 08:25`)[0]).toMatchObject({ label: 'PM-14', text: 'PM-14' });
  });
});

describe('times', () => {
  // 2026-05-19 is day 20592 from 1970-01-01.
  const now = { day: 20592, seconds: 8 * 3600 + 25 * 60 + 40 };
  const offered = (head: string) => completionAt(inspected(head), head.length, NO_FILES, now);
  const clocked = job.replace('  observer', '  clock       UTC+01:00\n  observer');

  it('begin with what the clock of the job shows now, on the day of the notes', () => {
    expect(offered(`${clocked}event disturbance at `)[0]).toMatchObject({ label: '09:25' });
    expect(offered(`${clocked}${rest}event disturbance at `).map(({ label }) => label)).toEqual([
      '09:25',
      '07:53',
      '07:55',
      '08:00',
    ]);
    expect(offered(`${job}event disturbance at `)).toEqual([]);
    const yesterday = clocked.replace('05-19', '05-18');
    expect(offered(`${yesterday}event disturbance at `)).toEqual([]);
  });
});

describe('entries', () => {
  it('begin with what the day brings next', () => {
    expect(labels(`${job}${rest}`).slice(0, 3)).toEqual(['setup', 'radio', 'stream']);
    expect(labels(`${job}mark A\n`).slice(0, 2)).toEqual(['mark', 'antenna']);
  });
});

describe('units', () => {
  it('are those of what is measured at this very place', () => {
    const setup = `${job}${rest}setup NEW on PM-09\n  `;
    expect(labels(`${setup}bubble 8`)).toEqual(['°', "'", '"', 'gon']);
    expect(labels(`${setup}bubble 8' / 2 `)).toEqual(['m', 'mm', 'cm', 'km', 'ft', 'usft', 'in']);
    expect(labels(`${setup}keyed position 41°09'N, 8°37'W, height 61.2 `)).not.toContain('°');
    expect(labels(`${setup}keyed position 41°09'N, 8`)).toEqual(['°', 'gon']);
    expect(labels(`${setup}keyed position 41°09'N, 8°37`)).toEqual(["'"]);
    expect(labels(`${setup}keyed position 41°09'N, 8°37'26.27`)).toEqual(['"']);
    expect(labels(`${setup}keyed position -41203.118`)).not.toContain('°');
    expect(labels(`${setup}measured 1.284 m to foot, 48 m`)).toContain('mm');
    expect(labels(`${setup}measured 1.284 m ± 2 m`)).toContain('mm');
    expect(labels(`${job}stream from BASE\n  message 1`)).not.toContain('s');
    expect(labels(`${setup}plummet ± 1 `)).toContain('mm');
    expect(labels(`${setup}plummet ±1`)).toContain('mm');
    expect(labels(`${setup}measured ? `)).not.toContain('mm');
  });
});

describe('names', () => {
  it('of people are those that the notes name', () => {
    const text = `${job}${rest}`;
    expect(labels(`${text}correction "extension left out" on BASE\n  by `)).toEqual([
      '"R. Okafor"',
      '"L. Brandt"',
    ]);
    expect(labels(`${text}  measured 1.3 m to foot, by `)).toEqual(['"R. Okafor"', '"L. Brandt"']);
    expect(labels(`${text}check C on PM-09 by `)).toEqual(['R1']);
  });

  it('of surfaces are no surface itself', () => {
    expect(labels(`${job}${rest}surface NEW\n  offset 1 m above `)).toEqual([
      'orthometric',
      'ellipsoidal',
      'CHART',
    ]);
    expect(labels(`${job}${rest}mark NEW\n  height 1 m above `)).toEqual(['CHART']);
  });

  it('stand for a thing whose entry can be shown', () => {
    expect(at(`${job}${rest}check C on `)[0]?.means).toEqual({ kind: 'mark', name: 'PM-14', of: null });
  });
});

describe('systems', () => {
  const found = (typed: string) => at(`job "x"\n  grid ${typed}`);

  it('are found by the first digits of their code, by place, and by name and zone', () => {
    expect(found('EPSG:37').map(({ label }) => label)).toContain('EPSG:3763');
    expect(found('EPSG:37').every(({ label }) => label.startsWith('EPSG:37'))).toBe(true);
    expect(found('Portugal').map(({ label }) => label)).toContain('EPSG:3763');
    // EPSG:25829 is ETRS89 / UTM zone 29N.
    expect(found('UTM 29').map(({ label }) => label)).toContain('EPSG:25829');
    expect(found('3763')[0]?.says).toMatch(
      /ETRS89 \/ Portugal TM06; projected; metre; area of use: Portugal/,
    );
  });

  it('whose area holds a mark come first, and are offered before anything is typed', () => {
    const head = 'mark A\n  position 41.15°N, 8.62°W\njob "x"\n  datum EPSG:4258\n  grid ';
    const near = labels(head);
    expect(near.length).toBeGreaterThan(5);
    expect(labels('job "x"\n  grid ')).toEqual([]);
    // Zone 29 reaches from 12°W to 6°W.
    expect(labels(`${head}UTM`)[0]).toMatch(/^EPSG:/);
    const first = at(`${head}ETRS89 UTM`)[0];
    expect(first?.beside).toMatch(/29N/);
  });

  it('are followed by what goes on with the phrase', () => {
    expect(labels('job "x"\n  datum ITRF2014 epoch 2026.38, plate Eurasia, ')).toEqual(['by']);
    expect(labels('job "x"\n  datum EPSG:4258 ')).toEqual(['by', 'epoch', 'plate']);
    expect(labels(`${job}${rest}mark NEW\n  position 1 m E, 2 m N in EPSG:27700 `)).toContain('by');
  });

  it('of an old network know the published ways to the datum of the job', () => {
    const offered = at('job "x"\n  datum EPSG:4326\nmark NEW\n  position 1 m E, 2 m N in EPSG:27700 by ');
    const way = offered.find(({ label }) => label === 'EPSG:1314');
    // EPSG:1314, OSGB36 to WGS 84 (6), 2 m, as the register has it.
    expect(way?.beside).toBe('OSGB36 to WGS 84 (6), good to 2.0 m');
    expect(offered.every(({ beside }) => / to /.test(beside))).toBe(true);
  });
});

describe('columns', () => {
  const heading = 'Point;Easting (m);"Northing; grid";Level\n1;2,5;3;4\n';
  const files: Files = {
    ...NO_FILES,
    bytes: (path) =>
      path === 'pickup.csv' ? new TextEncoder().encode(heading) : { refused: 'there is no such file' },
  };
  const points = `${job}points "pickup.csv"\n`;

  it('are called what the file calls them', () => {
    expect(labels(`${points}  columns name `, files)).toEqual([
      '"Point"',
      '"Easting (m)"',
      '"Northing; grid"',
      '"Level"',
    ]);
    const offered = at(`${points}  columns name "Point", east m "Ea`, files);
    expect(offered.map(({ label }) => label)).not.toContain('"Point"');
    expect(offered[0]).toMatchObject({
      text: '"Easting (m)"',
      beside: 'column 2 of pickup.csv',
      start: `${points}  columns name "Point", east m `.length,
    });
  });

  it('are not where the first line holds values, and where the file cannot be read', () => {
    const values: Files = { ...files, bytes: () => new TextEncoder().encode('A;1;2;3\nB;4;5;6\n') };
    expect(labels(`${points}  columns name `, values)).toEqual([]);
    expect(labels(`${job}points "other.csv"\n  columns name `, files)).toEqual([]);
  });

  it('say their unit, then their surface, and a meaning once', () => {
    const columns = `${job}${rest}points "other.csv"\n  columns name, `;
    expect(labels(`${columns}`)).not.toContain('name');
    expect(labels(`${columns}east `)).toEqual(['m', 'mm', 'cm', 'km', 'ft', 'usft', 'in']);
    expect(labels(`${columns}height m `)).toEqual(['orthometric', 'ellipsoidal', 'CHART']);
    expect(labels(`${columns}latitude `)).toEqual(['°', 'dms']);
    expect(labels(`${columns}time `)).toEqual(['local', 'utc', 'gps']);
    expect(labels(`${columns}skip, `)).toContain('skip');
  });
});
