/** Register extracts: the marks file that is made of one holds its marks and nothing that an extract smuggles in. */
import fc from 'fast-check';
import { openDocument } from '../../grammar/document.ts';
import {
  extractColumns,
  extractGeojson,
  extractRows,
  type Extract,
} from '../../server/evidence/register-extract.ts';
import { inspect } from '../../server/inspect.ts';
import { marksFile, registerMark } from '../../server/record/notes/marks-file.ts';
import { NO_FILES } from '../../server/session/files.ts';
import { bytesOf, harmed } from './bytes.ts';
import { hostileName } from './sessions.ts';
import { law, target } from './target.ts';

const cell = fc.oneof(
  fc.constantFrom(
    'PM-14',
    '-41203.118',
    '6,284',
    '41.15',
    '"a ""b"""',
    '"x, y"',
    '"1\n2"',
    '"\r\nmark X"',
    '',
  ),
  fc.constantFrom('"6.284\n  height 9 m"', '7 # x', '"\u2028"', '\u200b', '=1+2', '\ufeff'),
  hostileName,
  fc.string({ unit: 'binary', maxLength: 8 }),
);
const rowsText = fc
  .array(fc.array(cell, { minLength: 4, maxLength: 7 }), { maxLength: 6 })
  .map((rows) => rows.map((cells) => cells.join(',')).join('\n'));
const wholeRows = bytesOf(
  'PM-14,-41203.118,164904.902,6.284,"bolt, pier"\nPM-09,-40311.882,165377.404,5.196,x\n',
);
const declared = extractColumns('name, east m, north m, height m orthometric, description');

const rows = target('register rows', 100, fc.oneof(harmed([wholeRows]), rowsText.map(bytesOf)), (bytes) => {
  if (typeof declared === 'string') throw new Error(declared);
  holdsItsMarks(extractRows(bytes, declared, ',', '.', 0));
});

const feature = fc.record({
  type: fc.constantFrom('Feature', 'feature', 1),
  geometry: fc.oneof(
    fc.record({
      type: fc.constantFrom('Point', 'LineString'),
      coordinates: fc.oneof(fc.array(fc.oneof(fc.double(), hostileName), { maxLength: 4 }), fc.json()),
    }),
    fc.constant(null),
  ),
  properties: fc.oneof(
    fc.dictionary(
      fc.constantFrom('name', '__proto__', 'constructor', 'x'),
      fc.oneof(hostileName, fc.double()),
    ),
    fc.constant(null),
  ),
});
const geojson = fc.oneof(
  fc
    .tuple(fc.array(fc.oneof({ weight: 5, arbitrary: feature }, { weight: 1, arbitrary: fc.jsonValue() })))
    .map(([features]) => JSON.stringify({ type: 'FeatureCollection', features })),
  fc.json(),
  harmed([
    bytesOf(
      '{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"Point","coordinates":[-8.6,41.1,61.2]},"properties":{"name":"PM-14"}}]}',
    ),
  ]).map((bytes) => Buffer.from(bytes).toString('utf8')),
);

const features = target(
  'GeoJSON',
  100,
  fc.tuple(geojson, fc.constantFrom('name', '__proto__', 'toString')),
  ([text, name]) => {
    const extract = extractGeojson(text, name);
    if (typeof extract === 'string') law(extract.length > 5, 'the refusal says nothing');
    else holdsItsMarks(extract);
  },
);

function holdsItsMarks({ marks, problems }: Extract): void {
  for (const { sentence } of problems) law(sentence.length > 10, 'a problem says nothing');
  const text = marksFile(marks.map(registerMark), { title: 'x', grid: null, source: null, date: null });
  const { session, findings } = inspect(openDocument('marks.trib', text), NO_FILES);
  const words = session.entries.map(({ entry }) => entry.header.word?.word.toLowerCase() ?? '');
  const wanted = ['job', ...marks.map(() => 'mark')];
  law(
    words.join() === wanted.join(),
    `the marks file holds ${words.join()} instead of ${wanted.join()}:\n${text}`,
  );
  const details = session.entries
    .slice(1)
    .map(({ entry }) => entry.details.map((line) => line.word?.word ?? ''));
  for (const [index, { values }] of marks.entries()) {
    const position = values.some(({ means }) => means !== 'height' && means !== 'separation');
    const said = [
      ...(position ? ['position'] : []),
      ...['height', 'separation'].filter((word) => values.some(({ means }) => means === word)),
      'source',
    ];
    law(details[index]?.join() === said.join(), `a mark says ${details[index]?.join() ?? ''}:\n${text}`);
  }
  law(findings.length >= 0, 'findings are told');
}

export const MARKS = [rows, features];
