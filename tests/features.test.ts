/** What an editor is told about a session: inlays, hovers, names, completion, outline, and that no text upsets any of it. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { changesFor } from '../server/features/changes.ts';
import { completionAt } from '../server/features/completion/completion.ts';
import { formattingAbove, formattingOf } from '../server/features/formatting.ts';
import { hoverAt } from '../server/features/hover.ts';
import { inlaysIn } from '../server/features/inlays.ts';
import { lensesOf } from '../server/features/lenses.ts';
import { linksIn } from '../server/features/links.ts';
import { cursorAt } from '../server/features/cursor.ts';
import {
  declarationOf,
  editedTogether,
  nameAt,
  namesIn,
  rename,
  usesOf,
  written,
} from '../server/features/names.ts';
import { mendAllOf, safeMends } from '../server/features/mend-all.ts';
import { noticesOf } from '../server/features/notices.ts';
import { foldsIn, outlineOf, selectionsAt, thingsIn } from '../server/features/outline.ts';
import { refactoringsAt } from '../server/features/refactorings/refactorings.ts';
import { semanticTokensIn } from '../server/features/semantic-tokens.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { NO_FILES } from '../server/session/files.ts';

const inspected = (text: string) => inspect(openDocument('day.trib', text), NO_FILES);

const day = `job "North arm"
  date        2026-05-19
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark PM-14 "brass bolt"
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
antenna A1
  phase-centre 92 mm above arp
  tape-point  RIM radius 168 mm, 35 mm above arp
rover R1
  pole        2.000 m to arp
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  measured    1.580 m to RIM, at 07:54
  extension   250 mm
  keyed       antenna-height 1.283 m to arp
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
check OPEN on PM-09 at 08:25 by R1
  observed    -40311.876 m E, 165377.410 m N, height 5.203 m orthometric
event disturbance at 11:10 on BASE
`;

/** The cursor stands at the bar. */
function atBar(text: string) {
  const offset = text.indexOf('|');
  return { inspection: inspected(text.slice(0, offset) + text.slice(offset + 1)), offset };
}
const labels = (text: string) => {
  const { inspection, offset } = atBar(text);
  return completionAt(inspection, offset).map(({ label }) => label);
};

describe('inlays', () => {
  const shown = (inspection: Inspection) => {
    const { text } = inspection.session.document;
    return inlaysIn(inspection, 0, text.length).map(({ at, label }) => {
      const line = text.slice(text.lastIndexOf('\n', at - 1) + 1, at).trim();
      expect(text[at], 'an inlay stands at the end of its line').toBe('\n');
      return `${line.split(/\s+/)[0] ?? ''} ${label}`;
    });
  };

  it('stand behind what was typed, short, and say nothing of given values', () => {
    // H + N = 6.284 + 54.917 and 5.196 + 54.915; √(1.284² − 0.048²) + 0.250; √(1.580² − 0.168²) − 0.035; by hand;
    // what was keyed less their mean, 1.283 − 1.5346.
    expect(shown(inspected(day))).toEqual([
      'height → 61.201 m ellipsoidal',
      'height → 60.111 m ellipsoidal',
      'measured → ARP 1.533 m',
      'measured → ARP 1.536 m',
      'keyed → −252 mm',
      'keyed → as it should be',
      'observed → E +6 mm, N +6 mm, up +7 mm, passes',
    ]);
  });

  it('are those of the stretch that was asked for', () => {
    const inspection = inspected(day);
    const start = day.indexOf('setup BASE');
    expect(inlaysIn(inspection, start, day.indexOf('  extension'))).toHaveLength(2);
  });
});

describe('hovers', () => {
  const told = (text: string) => {
    const { inspection, offset } = atBar(text);
    return JSON.stringify(hoverAt(inspection, offset)?.blocks ?? null);
  };

  it('derive values, explain words and units, and describe what a name stands for', () => {
    expect(told(day.replace('1.284 m', '1.2|84 m'))).toContain('√(1.284² − 0.048²) + 0.25');
    expect(told(day.replace('  plum', '  plum').replace('extension', 'exten|sion'))).toContain(
      'A pole between',
    );
    expect(told(day.replace('250 mm', '250 m|m'))).toContain('millimetre');
    expect(told(day.replace('on PM-14', 'on PM|-14'))).toContain('164904.902 m N');
    expect(told(day.replace('EPSG:3763', 'EPSG:|3763'))).toContain('ETRS89 / Portugal TM06');
    expect(told(day.replace('-40311.876', '-40311.|876'))).toContain('up residual of OPEN = 0.0070 m');
  });

  it('compare what was keyed with what should be, and how that came about', () => {
    // √(1.284² − 0.048²) + 0.250 and √(1.580² − 0.168²) − 0.035, their mean by hand: 1.5346.
    const right = day.replace('antenna-height 1.283 m', 'antenna-height 1.5|35 m');
    expect(told(right)).toContain('antenna height to the ARP: keyed 1.535 m, should be 1.535 m ±');
    expect(told(right)).toContain('they agree');
    const wrong = day.replace('antenna-height 1.283 m', 'antenna-height 1.2|83 m');
    expect(told(wrong)).toContain('keyed 1.283 m, should be 1.535 m');
    expect(told(wrong)).toContain('252 mm too low');
  });

  it('say of a check how far it is off, beside its limit', () => {
    // 5.203 − 5.196; the limit is 50 mm and 1 mm for each kilometre (1.009 km).
    const text = told(day.replace('-40311.876', '-40311.|876'));
    expect(text).toContain('OPEN passes: observed less known');
    expect(text).toMatch(/up +\+7\.0 mm +limit 51 mm/);
  });

  it('say why a value is not known', () => {
    expect(told('mark A\n  height |6.284 m orthometric\n')).toContain('no separation');
  });

  it('say what a code means, where a comment has one', () => {
    expect(told('mark A\n#      ^^ error syntax/ind|ent\n')).toContain('Mail and messages strip');
    expect(told('mark A # see check/fails| there\n')).toContain('Find the cause before measuring on');
    expect(told('mark A # see check/failing| there\n')).toBe('null');
    expect(told('mark syntax/ind|ent\n')).not.toContain('Mail');
  });

  it('say nothing between the lines', () => expect(told('mark A\n|\nmark B\n')).toBe('null'));
});

describe('names', () => {
  const inspection = inspected(day);
  const { session } = inspection;
  const under = (text: string) => {
    const offset = day.indexOf(text) + 1;
    const cursor = cursorAt(session, offset);
    const use = cursor && nameAt(session, cursor.bound, offset);
    const declaration = use && declarationOf(session, use);
    if (!declaration) throw new Error(`no name at ${text}`);
    return declaration;
  };
  const renamed = (text: string, name: string) => {
    const renaming = rename(session, [session], under(text), name);
    if ('refused' in renaming) return renaming.refused;
    return renaming.edits.reduceRight(
      (left, { at, text: put }) => left.slice(0, at.start) + put + left.slice(at.end),
      day,
    );
  };

  it('are renamed wherever they are spoken of', () => {
    expect(renamed('PM-14 with', 'PM-41')).toBe(day.replaceAll('PM-14', 'PM-41'));
  });

  it('of antennas, tape points, rovers and setups, too', () => {
    expect(renamed('A1 at', 'A2')).toBe(day.replaceAll('A1', 'A2'));
    expect(renamed('RIM, at', 'EDGE')).toBe(day.replaceAll('RIM', 'EDGE'));
    expect(renamed('R1\n  pole', 'R7')).toBe(day.replaceAll('R1', 'R7'));
    expect(renamed('BASE\n', 'NORTH BASE')).toBe(day.replaceAll('BASE', '"NORTH BASE"'));
  });

  it('are not given twice, nor where they would be read otherwise', () => {
    expect(renamed('PM-14 with', 'PM-09')).toContain('another mark');
    expect(renamed('RIM, at', 'foot')).toContain('every antenna');
    expect(renamed('PM-14 with', ' ')).toContain('A name is');
    expect(renamed('PM-14 with', 'a\nb')).toContain('A name is');
    const site = 'ground SITE\n  scale 1.00001\nmark A\n  position 1 m E, 2 m N in SITE\n';
    const { session: own } = inspected(site);
    const ground = own.entries.flatMap(namesIn).find(({ kind }) => kind === 'ground');
    const called = (name: string) => ground && rename(own, [own], ground, name);
    for (const system of ['EPSG:4258', '3763', '+proj=utm'])
      expect(called(system)).toEqual({ refused: expect.stringContaining('coordinate system') as string });
    expect(called('SITE-2')).toMatchObject({ edits: [{ text: 'SITE-2' }, { text: 'SITE-2' }] });
  });

  it('are quoted where they must be', () => {
    expect(['PM-14', '1/2', 'BM#3', '08:25'].map(written)).toEqual(['PM-14', '1/2', 'BM#3', '08:25']);
    expect(['a b', 'a,b', '#1', 'say "x"'].map(written)).toEqual(['"a b"', '"a,b"', '"#1"', '"say ""x"""']);
  });

  it('read back as they were written', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (name) => {
        const text = written(name);
        const [mark] = inspected(`mark ${text}\n`).session.marks.keys();
        if (/^[^\p{C}\s?]+$/u.test(name)) expect(mark).toBe(name);
      }),
    );
  });

  it('of one kind are no names of another', () => {
    const both = inspected('mark A\nantenna A\nsetup B on A with A\n').session;
    const mark = thingsIn(both).find(({ kind }) => kind === 'mark');
    const cursor = cursorAt(both, mark?.at.start ?? 0);
    const use = cursor && nameAt(both, cursor.bound, mark?.at.start ?? 0);
    expect(use && usesOf(both, use).map(({ place }) => place.start)).toEqual([5, 11]);
  });
});

describe('a name edited where it stands', () => {
  const together = (text: string, at: string) => {
    const { session } = inspected(text);
    const offset = text.indexOf(at) + 1;
    const cursor = cursorAt(session, offset);
    const use = cursor && nameAt(session, cursor.bound, offset);
    const declaration = use && declarationOf(session, use);
    const found = use && declaration && editedTogether(session, use, declaration);
    return found?.map(({ start, end }) => text.slice(start, end)) ?? null;
  };

  it('changes at every place, where all of them are in this file and without quotes', () => {
    expect(together(day, 'PM-14 with')).toEqual(['PM-14', 'PM-14']);
    expect(together(day.replace('mark PM-14', 'mark "PM-14"'), 'PM-14 with')).toBeNull();
    expect(together('mark A\n', 'A')).toBeNull();
  });
});

describe('formatting while one types', () => {
  const left = (text: string) => {
    const offset = text.indexOf('|');
    const document = openDocument('day.trib', text.replace('|', ''));
    return formattingAbove(document, offset).reduceRight(
      (sofar, edit) => sofar.slice(0, edit.start) + edit.text + sofar.slice(edit.end),
      document.text,
    );
  };

  it('lays out the line that was left, and nothing else', () => {
    expect(left('mark   A\n height 1   m\n  |\n   found x\n')).toBe(
      'mark   A\n  height      1 m\n  \n   found x\n',
    );
    expect(left('mark   A\r\n|')).toBe('mark A\r\n');
    expect(left('|mark  A\n')).toBe('mark  A\n');
  });
});

describe('completion', () => {
  it('offers entries in the first column, and there alone', () => {
    expect(labels('|')).toEqual(expect.arrayContaining(['job', 'mark', 'setup', 'check', 'points']));
    expect(labels('mark A\nse|')).toContain('setup');
    expect(labels('mark A\n  |')).not.toContain('setup');
  });

  it('offers the details of the entry above that are not there yet', () => {
    const offered = labels('mark A\n  position ?\n  |');
    expect(offered).toEqual(expect.arrayContaining(['height', 'separation', 'photo']));
    expect(offered).not.toContain('position');
    expect(offered).not.toContain('measured');
    expect(labels('setup A\n  measured 1 m to foot\n  |')).toContain('measured');
  });

  it('offers names of the kind that the word asks for', () => {
    expect(labels(`${day}setup B on |`)).toEqual(['PM-14', 'PM-09']);
    expect(labels(`${day}setup B on PM|`)).toEqual(['PM-14', 'PM-09']);
    expect(labels(`${day}setup B on PM-14 with |`)).toEqual(['A1']);
    expect(labels(`${day}check C on PM-09 by |`)).toEqual(['R1']);
    expect(labels(`${day}stream from |`)).toEqual(['BASE']);
    expect(labels(`${day}event disturbance on |`)).toEqual(['BASE']);
    expect(labels(day.replace('to foot', 'to |'))).toEqual(['arp', 'foot', 'hook', 'phase-centre', 'RIM']);
  });

  it('shows coordinates and heights beside marks', () => {
    const { inspection, offset } = atBar(`${day}setup B on |`);
    expect(completionAt(inspection, offset)[0]?.beside).toBe(
      'brass bolt · −41203.118 m E, 164904.902 m N · 6.284 m orthometric · 61.201 m ellipsoidal',
    );
  });

  it('offers the units that fit, directly behind a number', () => {
    expect(labels('setup B\n  extension 250|')).toEqual(['m', 'mm', 'cm', 'km', 'ft', 'usft', 'in']);
    expect(labels('setup B\n  extension 250 |')).toContain('mm');
    expect(labels('radio base\n  carrier 461 |')).toEqual(['Hz', 'kHz', 'MHz']);
  });

  it('offers a time after the last one', () => {
    expect(labels(`${day}check C on PM-09 at |`)).toEqual(['11:11', '11:15', '11:30', '12:00']);
    expect(labels('setup B at |')).toEqual([]);
  });

  it('finds coordinate systems by code, name and area', () => {
    expect(labels('job "x"\n  grid EPSG:376|')).toContain('EPSG:3763');
    expect(labels('job "x"\n  grid EPSG:3763|')[0]).toBe('EPSG:3763');
    expect(labels('job "x"\n  grid portugal tm06|')).toContain('EPSG:3763');
    expect(labels('job "x"\n  grid EPSG:3763\nmark A\n  position 1 m E, 2 m N in |')).toEqual(['EPSG:3763']);
  });

  it('goes on with the phrase, without what has been said', () => {
    expect(labels(`setup B on A |`)).toEqual(['with', 'at', 'until']);
    expect(labels('mark A\n  height 6.284 m |')).toEqual(['orthometric', 'ellipsoidal', 'above']);
    expect(labels('mark A\n  found |')).toContain('intact');
  });

  it('offers nothing inside a text or a comment', () => {
    expect(labels('note "on |')).toEqual([]);
    expect(labels('setup B # on |')).toEqual([]);
  });
});

describe('structure', () => {
  it('folds, outlines and selects by entries', () => {
    const inspection = inspected(day);
    const { document } = inspection.session;
    expect(outlineOf(inspection).map(({ name }) => name)).toEqual([
      'job North arm',
      'mark PM-14',
      'mark PM-09',
      'antenna A1',
      'rover R1',
      'setup BASE',
      'check OPEN',
      'event disturbance',
    ]);
    expect(foldsIn(document)).toHaveLength(7);
    const chain = selectionsAt(document, day.indexOf('6.284') + 1).map(({ start, end }) =>
      day.slice(start, end),
    );
    expect(chain.slice(0, 3)).toEqual(['6.284', '6.284 m', 'height      6.284 m orthometric']);
    expect(chain.at(-1)).toBe(day);
    expect(lensesOf(inspection).map(({ says }) => says)).toEqual([
      expect.stringContaining('key 61.201 m ellipsoidal, antenna 1.53') as string,
      expect.stringMatching(/^passes against BASE/) as string,
    ]);
  });

  it('counts points above their rows, by what they are worth', () => {
    const points = `${day}points
  from        BASE
  state       as-broadcast
  columns     name, east m, north m, height m orthometric, time local
  row         101, -40990.120, 165002.331, 5.870, 08:30
  row         102, -40991.004, 165003.118, 5.874, 07:55
`;
    // No check closes the day, so that points behind the first one are not closed; those before it have nothing at all.
    const lens = lensesOf(inspected(points)).at(-1);
    expect(lens?.says).toMatch(/^1 [a-z ]+, 1 [a-z ]+$/);
    expect(points.slice(lens?.at.start, lens?.at.end)).toBe('points');
  });

  it('shows residuals beside checks in the outline', () => {
    const check = outlineOf(inspected(day)).find(({ name }) => name === 'check OPEN');
    // √(6² + 6²) mm and 5.203 − 5.196 m, by hand.
    expect(check?.detail).toBe('passes against BASE: 8 mm horizontal, up +7 mm');
  });

  it('grows a selection from a number by its quantity and its sum', () => {
    const text = 'setup B\n  measured  1.412 m ± 1 mm "tape" - 2 mm to foot\n';
    const chain = selectionsAt(openDocument('day.trib', text), text.indexOf('2 mm to'));
    expect(chain.slice(0, 4).map(({ start, end }) => text.slice(start, end))).toEqual([
      '2',
      '2 mm',
      '1.412 m ± 1 mm "tape" - 2 mm',
      'measured  1.412 m ± 1 mm "tape" - 2 mm to foot',
    ]);
  });

  it('links to the files that are named', () => {
    const document = openDocument('jobs/day.trib', 'use "../marks.trib"\njob "x"\n  geoid "a b.gtx"\n');
    expect(linksIn(document).map(({ path }) => path)).toEqual(['marks.trib', 'jobs/a b.gtx']);
  });
});

describe('any text', () => {
  const sources = [day, readFileSync('samples/breakwater.trib', 'utf8')];
  const pieces = fc.constantFrom(
    '"',
    ' ',
    '\n',
    '\r\n',
    '#',
    '𝄞',
    ',',
    '1,5',
    '?',
    'setup',
    '°',
    '\u202e',
    '\u200b',
    '|',
    '',
  );

  it('is answered within its own bounds, wherever the cursor stands', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sources),
        fc.nat(),
        fc.nat(60),
        pieces,
        fc.nat(),
        (source, at, cut, piece, where) => {
          const start = at % (source.length + 1);
          const text = source.slice(0, start) + piece + source.slice(start + cut);
          const inspection = inspected(text);
          const { session } = inspection;
          const offset = where % (text.length + 1);
          const stretches = [
            ...noticesOf(inspection).map((notice) => notice.at),
            ...inlaysIn(inspection, 0, text.length).map((inlay) => ({ start: inlay.at, end: inlay.at })),
            ...semanticTokensIn(session, 0, text.length),
            ...formattingOf(session.document),
            ...linksIn(session.document).map((link) => link.at),
            ...lensesOf(inspection).map((lens) => lens.at),
            ...foldsIn(session.document),
            ...selectionsAt(session.document, offset),
            ...outlineOf(inspection).flatMap(({ whole, heading }) => [whole, heading]),
            ...thingsIn(session).map((thing) => thing.at),
            ...completionAt(inspection, offset).map((offer) => ({ start: offer.start, end: offset })),
            ...changesFor(inspection, offset, offset).flatMap(({ edits }) => edits.map((edit) => edit.at)),
            ...refactoringsAt(inspection, NO_FILES, offset).flatMap(({ edits }) =>
              edits.map((edit) => edit.at),
            ),
            ...inspection.findings.flatMap(({ code }) =>
              (mendAllOf(code, inspection)?.edits ?? []).map((edit) => edit.at),
            ),
            ...safeMends(inspection, NO_FILES).map((edit) => edit.at),
            ...formattingAbove(session.document, offset),
          ];
          const hover = hoverAt(inspection, offset);
          if (hover) stretches.push(hover.at);
          for (const { start: from, end } of stretches) {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(end).toBeGreaterThanOrEqual(from);
            expect(end).toBeLessThanOrEqual(text.length);
          }
          const tokens = semanticTokensIn(session, 0, text.length);
          for (const [index, token] of tokens.entries())
            expect(token.start).toBeGreaterThanOrEqual(tokens[index - 1]?.end ?? 0);
        },
      ),
      { numRuns: 150 },
    );
  });
});
