/** What the command line writes out of a stranger's table: whole files that their readers can read, or none and a sentence. */
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { folderWith, tribrach } from '../command-line-run.ts';
import { bytesOf, harmed } from './bytes.ts';
import { law, target } from './target.ts';

const day = readFileSync('samples/breakwater.trib', 'utf8');
/** Antenna heights as they were, a tape read in the wrong unit, and one that was never keyed: kept, repaired, and neither. */
const days = [
  day,
  day.replace('antenna-height 1.533 m', 'antenna-height 1.233 m'),
  day.replace(/\n +keyed +antenna-height .*/, ''),
  day.replace(/( +columns +).*/, '$1name, north m, east ft, height m ellipsoidal, code, time gps'),
] as const;
const table = readFileSync('samples/pickup.csv');
const geoid = readFileSync('samples/grids/region.gtx');
const cells = fc
  .array(
    fc.array(
      fc.oneof(
        fc.constantFrom(
          '101',
          '-41198.315',
          '164918.162',
          '6.306',
          '08:36:15',
          '24:00',
          '"a\n""b""<x>&',
          '=1+1',
        ),
        fc.constantFrom('1e308', '-0', '9'.repeat(400), '', '\u0000', '\ud800', ']]>', '08:36:15 2026-05-20'),
        fc.string({ unit: 'binary', maxLength: 6 }),
      ),
      { minLength: 5, maxLength: 7 },
    ),
    { maxLength: 8 },
  )
  .map((rows) => Buffer.concat([table, bytesOf(rows.map((row) => row.join(',')).join('\n'))]));

const points = target(
  'points, written',
  15,
  fc.tuple(fc.constantFrom(...days), fc.oneof(harmed([table]), cells)),
  async ([session, csv]) => {
    const at = folderWith({ 'day.trib': session, 'pickup.csv': csv, 'grids/region.gtx': geoid });
    try {
      const words = [
        'points',
        at.path('day.trib'),
        '--out',
        at.path('out'),
        '--format',
        'csv,geojson,landxml',
      ];
      const { status, printed, complained } = await tribrach(words);
      law(status === 0 || status === 2, `the exit status is ${status}`);
      sentencesOnly(printed + complained);
      law(Buffer.compare(readFileSync(at.path('pickup.csv')), csv) === 0, 'the table is not what it was');
      if (status === 2) {
        law(complained.length > 20, 'it could not run and does not say why');
        law(!existsSync(at.path('out')), 'something was written all the same');
        return;
      }
      const names = readdirSync(at.path('out'));
      const written = (ending: string) => {
        const name = names.find((one) => one.endsWith(ending));
        return name === undefined ? null : readFileSync(at.path(`out/${name}`), 'utf8');
      };
      const account = written('.md') ?? '';
      law(account.startsWith('# '), 'there is no account');
      sentencesOnly(account);
      const counts = [
        csvPoints(written('.csv')),
        geojsonPoints(written('.geojson')),
        xmlPoints(written('.xml')),
      ];
      const placed = counts.filter((count) => count !== null);
      law(placed.length > 0, 'no file of points is written, and no refusal is given');
      const [total] = /\d+(?= points? of)/.exec(account) ?? [];
      law(
        counts[0] === null || String(counts[0]) === total,
        `${counts.join()} points, and ${total} in the account`,
      );
    } finally {
      at.remove();
    }
  },
);

function csvPoints(text: string | null): number | null {
  if (text === null) return null;
  const rows = parse(text, { columns: true, bom: true }) as Record<string, string>[];
  for (const row of rows)
    for (const [column, value] of Object.entries(row))
      if (/\((m|ft)\)$/.test(column)) law(/^(-?\d+\.\d+)?$/.test(value), `${column} is ${value}`);
  return rows.length;
}

function geojsonPoints(text: string | null): number | null {
  if (text === null) return null;
  const { features } = JSON.parse(text) as { features: { geometry: { coordinates: unknown[] } | null }[] };
  for (const { geometry } of features)
    for (const part of geometry?.coordinates ?? [])
      law(Number.isFinite(part), `a coordinate is ${String(part)}`);
  return features.length;
}

function xmlPoints(text: string | null): number | null {
  if (text === null) return null;
  // eslint-disable-next-line no-control-regex
  law(!/[\0-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/.test(text), 'the XML holds what no XML may hold');
  const places = [...text.matchAll(/<CgPoint [^<>]*>([^<]*)<\/CgPoint>/g)];
  law(places.length === text.split('<CgPoint ').length - 1, 'a point of the XML is not well formed');
  for (const [, place = ''] of places)
    law(/^-?\d+\.\d+ -?\d+\.\d+( -?\d+\.\d+)?$/.test(place), `a point of the XML lies at ${place}`);
  return places.length;
}

const marks = target(
  'marks, written',
  25,
  fc.tuple(
    fc.oneof(harmed([table]), cells),
    fc.constantFrom(
      'name, east m, north m, height m orthometric, description',
      'name, latitude, longitude',
      'name',
    ),
    fc.constantFrom('comma', 'semicolon', 'tab'),
  ),
  async ([csv, columns, separator]) => {
    const at = folderWith({ 'register.csv': csv });
    try {
      const from = ['marks', at.path('register.csv'), '--columns', columns, '--separator', separator];
      const { status, printed, complained } = await tribrach([...from, '--out', at.path('marks.trib')]);
      law(status === 0 || status === 2, `the exit status is ${status}`);
      sentencesOnly(printed + complained);
      law(
        existsSync(at.path('marks.trib')) === (status === 0),
        'a marks file is written just where it could be',
      );
      if (status === 2) return law(complained.length > 20, 'it could not run and does not say why');
      const checked = await tribrach(['check', at.path('marks.trib')]);
      law(checked.status !== 2, `what was written cannot be checked: ${checked.complained}`);
      // Figures and names stand as they stood in the table, and the check says what is wrong with them, unseen characters too.
      const odd =
        /error syntax\/(?!duplicate-name|bidirectional-control|invisible-character)\S+\n *\d+ \| +(?! |position|height|separation)[^]{0,200}/.exec(
          checked.printed,
        );
      law(odd === null, `what was written is not in the language: ${odd?.[0] ?? ''}`);
      const formatted = await tribrach(['format', at.path('marks.trib'), '--check']);
      law(formatted.status === 0, 'what was written is not in its own form');
    } finally {
      at.remove();
    }
  },
);

function sentencesOnly(text: string): void {
  law(!/a fault in tribrach itself/.test(text), text);
  law(!/\n\s+at .*:\d+:\d+/.test(text), `a stack is shown: ${text}`);
  law(!/\bundefined\b|\bNaN\b|\[object /.test(text), `something that is no sentence is shown: ${text}`);
}

export const WRITTEN = [points, marks];
