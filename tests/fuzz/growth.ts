/** Time: whatever is repeated four times as often takes about four times as long, in every room that meets a stranger's bytes. */
import fc from 'fast-check';
import { editDocument, openDocument } from '../../grammar/document.ts';
import { format } from '../../grammar/printer.ts';
import { DETAILS, ENTRIES } from '../../grammar/vocabulary.ts';
import { antexReader } from '../../server/evidence/antex.ts';
import { nmeaReader } from '../../server/evidence/nmea/log.ts';
import { pointsReader } from '../../server/evidence/points/points-file.ts';
import { readRinexHeader } from '../../server/evidence/rinex-header.ts';
import { captureReader } from '../../server/evidence/rtcm3/capture.ts';
import { readGrid } from '../../server/geodesy/grids/read-grid.ts';
import { systemFrom } from '../../server/geodesy/registry/definition.ts';
import { inspect } from '../../server/inspect.ts';
import { NO_FILES } from '../../server/session/files.ts';
import { sessionOf } from '../../server/session/session.ts';
import { growth } from '../growth.ts';
import { mangledPiece } from '../mangled.ts';
import { sentence } from '../recordings.ts';
import { bytesOf } from './bytes.ts';
import { hostileName } from './sessions.ts';
import { law, target } from './target.ts';

/** Four times the text in four times the time is 4; a method that compares everything with everything would need 16. */
const MOST = 9;

const unit = fc.oneof(
  fc.constantFrom(
    'a',
    ' ',
    '\t',
    '"',
    '#',
    '7',
    '1,',
    '1.',
    '1-',
    "1'",
    '+',
    '±',
    '0 ',
    'x ',
    '°',
    '[',
    '(',
    '\u200b',
  ),
  fc.constantFrom(
    '1:',
    '-1 ',
    '1e',
    ',,',
    ', ',
    ' "',
    '\r',
    '\n',
    '$',
    '*',
    '\ud800',
    '=',
    'N ',
    '/',
    'a.',
    '\0',
  ),
  fc.constantFrom(...ENTRIES, ...DETAILS).map(({ example }) => `${example}\n`),
  fc.constantFrom(...ENTRIES).map(({ example }) => `${example}\n  `),
  hostileName.map((name) => `mark ${name}\n`),
  mangledPiece.filter((piece) => piece !== ''),
);
const begun = fc.constantFrom(
  ...['', 'mark ', 'mark A\n  position ', 'setup B on A at 07:50\n  keyed ', 'row ', '"', '# '],
  ...['$GPGGA,', '$GNRMC,', 'PROJCS["', '+proj=', 'name,', 'begin_of_head\n', '{"type":"'],
);

/** A line of its own with its number, so that nothing is told apart by a name twice. */
const numbered = fc.constantFrom<(at: number) => string>(
  (at) => `mark M${at}\n  height 6.284 m orthometric\n`,
  (at) => `mark M${at}\n  position ${at}.5 m E, 164904.902 m N\n`,
  (at) => `check C${at} on M${at} at 08:25\n`,
  (at) => `setup S${at} on M0 at 07:50\n  measured 1.2 m to foot\n`,
  (at) => `antenna A${at}\n`,
  (at) => `  measured 1.${at} m to foot, at 07:52\n`,
  (at) => `word${at} ${at}\n`,
  (at) => `note "${at}"\n`,
);

const languages: readonly (readonly [string, number, (text: string) => void])[] = [
  ['reading', 16_000, (text) => void openDocument('', text)],
  ['formatting', 8_000, (text) => void format(text)],
  ['systems', 4_000, (text) => void systemFrom(text)],
  ['NMEA', 20_000, (text) => void read(nmeaReader({}), text)],
  ['NMEA sentences', 12_000, (text) => void read(nmeaReader({}), sentence(text.replace(/[\r\n$*]/g, ' ')))],
  ['ANTEX', 20_000, (text) => void read(antexReader('A'), text)],
  ['RINEX header', 20_000, (text) => void readRinexHeader(bytesOf(text))],
  ['RTCM 3', 20_000, (text) => void read(captureReader(), text)],
  ['grids', 20_000, (text) => void readGrid(bytesOf(text))],
  [
    'points',
    20_000,
    (text) =>
      void read(
        pointsReader(
          { columns: [{ role: 'name' }, { role: 'east' }], separator: ',', decimal: '.', heading: 'none' },
          () => undefined,
        ),
        text,
      ),
  ],
];

const read = (reader: { push: (chunk: Uint8Array) => void; finish: () => unknown }, text: string) => {
  reader.push(bytesOf(text));
  reader.finish();
};

const repeated = target(
  'time of what is repeated',
  40,
  fc.tuple(fc.constantFrom(...languages), begun, unit),
  ([[name, length, work], head, again]) => {
    const textOf = (size: number) => head + again.repeat(Math.ceil(size / again.length));
    grows([textOf(length), textOf(4 * length)], work, `${name} of ${JSON.stringify(again)}`);
  },
);

const replaced = target('time of a great edit', 6, fc.tuple(begun, unit), ([head, again]) => {
  const texts = [12_000, 48_000].map((size) => head + again.repeat(Math.ceil(size / again.length)));
  const documents = new Map(texts.map((text) => [text, openDocument('', text)]));
  const work = (text: string) => {
    const document = documents.get(text);
    if (document) editDocument(document, 0, text.length, `note "x"\n${text}`);
  };
  grows([texts[0] ?? '', texts[1] ?? ''], work, `an edit of ${JSON.stringify(again)}`);
});

const inspected = target(
  'time of an inspection',
  10,
  fc.tuple(
    fc.array(numbered, { minLength: 1, maxLength: 2 }),
    fc.constantFrom(
      '',
      'job "x"\n  date 2026-05-19\n  grid EPSG:3763\nmark M0\n',
      'setup B on M0 at 07:50\n',
    ),
  ),
  ([lines, head]) => {
    const textOf = (count: number) =>
      head + Array.from({ length: count }, (_, at) => lines.map((line) => line(at)).join('')).join('');
    const work = (text: string) => void inspect(openDocument('', text), NO_FILES).findings.length;
    grows([textOf(200), textOf(800)], work, `an inspection of ${lines.map((line) => line(1)).join('')}`);
  },
);

/** Tables that no longer fit the processor's cache are slower for each name, too. */
const MOST_OF_TABLES = 12;

/** An edit puts the session together anew from entries that have been read before. */
const gathered = target(
  'time of putting a session together',
  6,
  fc.array(numbered, { minLength: 1, maxLength: 2 }),
  (lines) => {
    const textOf = (count: number) =>
      Array.from({ length: count }, (_, at) => lines.map((line) => line(at)).join('')).join('');
    const texts = [textOf(1_500), textOf(6_000)] as const;
    const documents = new Map(texts.map((text) => [text, openDocument('', text)]));
    const work = (text: string) => {
      const document = documents.get(text);
      if (document) sessionOf(document, { ...NO_FILES });
    };
    grows(texts, work, `a session of ${lines.map((line) => line(1)).join('')}`, MOST_OF_TABLES);
  },
);

function grows(
  texts: readonly [string, string],
  work: (text: string) => void,
  what: string,
  most = MOST,
): void {
  // What tidying memory costs falls where it falls; it does not fall on the same work twice.
  const first = growth(texts, most, work);
  const ratio = first < most ? first : Math.min(first, growth(texts, most, work));
  law(ratio < most, `${what} takes ${ratio.toFixed(1)} times as long for four times as much`);
}

export const GROWTH = [repeated, replaced, inspected, gathered];
