/** Refactorings write what is said already in another way: what each makes of a text, where none is offered, and that values stay. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { listValues } from '../../derive/listing.ts';
import { inspect } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { NO_FILES, type Files } from '../../session/files.ts';
import { refactoringsAt } from './refactorings.ts';

type Texts = Readonly<Record<string, string>>;

const filesWith = (texts: Texts): Files => {
  const documents = new Map(Object.entries(texts).map(([path, text]) => [path, openDocument(path, text)]));
  return { ...NO_FILES, document: (path) => documents.get(path) ?? { refused: 'there is no such file' } };
};
const inspected = (texts: Texts) =>
  inspect(openDocument('day.trib', texts['day.trib'] ?? ''), filesWith(texts));

/** What each refactoring at the place makes of the texts, by its title. */
function offered(texts: Texts, at: string): Record<string, Texts> {
  const offset = (texts['day.trib'] ?? '').indexOf(at);
  expect(offset, at).toBeGreaterThanOrEqual(0);
  const found = refactoringsAt(inspected(texts), filesWith(texts), offset);
  return Object.fromEntries(
    found.map(({ title, edits }) => {
      const after: Record<string, string> = { ...texts };
      for (const { at: place, text } of edits.toSorted((one, other) => other.at.start - one.at.start)) {
        const before = after[place.path] ?? '';
        after[place.path] = before.slice(0, place.start) + text + before.slice(place.end);
      }
      return [title, after];
    }),
  );
}
const inDay = (text: string, at: string) =>
  Object.fromEntries(
    Object.entries(offered({ 'day.trib': text }, at)).map(([title, texts]) => [title, texts['day.trib']]),
  );

/** Ids with their values, and, where asked for, how uncertain they are. */
const values = (texts: Texts, uncertain = true) =>
  listValues(inspected(texts).derivation)
    .filter(({ id }) => uncertain || !/\/(expected|chance)\//.test(id))
    .map(({ id, value }) =>
      isHole(value)
        ? `${id} is open`
        : `${id} ${value.value.toPrecision(11)} ${uncertain ? (value.sigma ?? 0).toPrecision(9) : ''}`,
    );

const head = `job "North arm"
  grid        EPSG:3763
`;
const mark = `mark PM-14 "brass bolt"
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric   # from the register
  separation  54.917 m
`;
const gear = `antenna A1
  phase-centre 92 mm above arp
setup BASE on PM-14 with A1 at 07:50
`;
const base = head + mark + gear;

describe('a sum of extensions', () => {
  const day = `${base}  measured    1.284 m to foot\n  extension   250 mm "lower" + 100 mm  # both\n  keyed       antenna-height 1.6 m to arp\n`;

  it('becomes one line for each, with every value as it was', () => {
    const after = inDay(day, '100 mm');
    expect(after).toEqual({
      'Split into 2 extensions': day.replace(
        '250 mm "lower" + 100 mm  # both\n',
        '250 mm "lower"  # both\n  extension   100 mm\n',
      ),
    });
    expect(values({ 'day.trib': after['Split into 2 extensions'] ?? '' })).toEqual(
      values({ 'day.trib': day }),
    );
  });

  it('keeps the line ends of the file', () => {
    const crlf = day.replaceAll('\n', '\r\n');
    expect(Object.values(inDay(crlf, '100 mm'))[0]).toContain(
      '"lower"  # both\r\n  extension   100 mm\r\n  keyed',
    );
  });

  it('is left alone where something is taken off, or nothing added', () => {
    expect(inDay(day.replace('+ 100', '- 100'), '100 mm')).toEqual({});
    expect(inDay(day.replace('"lower" + 100 mm', ''), '250 mm')).toEqual({});
  });
});

describe('a pole added to readings by hand', () => {
  const day = `${base}  measured    1.284 m + 250 mm "pole" to foot, at 07:52\n  measured    1.285 m + 250 mm to foot\n`;

  it('becomes an extension, taken out of each of them', () => {
    const after = inDay(day, '250 mm "pole"');
    const title = 'Take 250 mm out of 2 readings as an extension of its own';
    expect(after).toEqual({
      [title]: `${base}  measured    1.284 m to foot, at 07:52\n  measured    1.285 m to foot\n  extension   250 mm "pole"\n`,
    });
    expect(values({ 'day.trib': after[title] ?? '' }, false)).toEqual(values({ 'day.trib': day }, false));
  });

  it('stays where one of the readings goes without it', () => {
    expect(inDay(day.replace('1.285 m + 250 mm', '1.535 m'), '250 mm')).toEqual({});
  });

  it('stays where the tape was held off centre, whose slope belongs to the whole length as typed', () => {
    expect(inDay(day.replaceAll('to foot', 'to foot, 48 mm off centre'), '250 mm')).toEqual({});
  });
});

describe('a correction worked out by hand', () => {
  // 1.412 − √(1.412² − 0.048²) = 0.8 mm, by hand: 1 mm where it is rounded.
  const day = `${base}  measured    1.412 m to foot, 48 mm off centre, at 07:52\n  measured    1.413 m - 1 mm "slope" to foot, at 15:36\n`;

  it('gives way to the distance that another reading has', () => {
    expect(inDay(day, '1 mm "slope"')).toEqual({
      'Give 48 mm off centre instead of the correction 1 mm "slope"': day.replace(
        '1.413 m - 1 mm "slope" to foot',
        '1.413 m to foot, 48 mm off centre',
      ),
    });
  });

  it('stays where it is another one than the distance makes', () => {
    expect(inDay(day.replace('- 1 mm', '- 2 mm'), '2 mm "slope"')).toEqual({});
    expect(inDay(day.replace('- 1 mm', '- 1.0 mm'), '1.0 mm')).toEqual({});
  });

  it('stays where nobody has said how far off centre the tape was', () => {
    expect(inDay(day.replace(', 48 mm off centre', ''), '1 mm "slope"')).toEqual({});
  });
});

describe('a mark', () => {
  const control = `job "Control"\n  grid        EPSG:3763\nmark PM-09\n  height      5.196 m orthometric`;
  const day = `${head}use "control/marks.trib"\n${mark}# between\n${gear}`;
  const texts = { 'day.trib': day, 'control/marks.trib': control };
  const title = 'Move mark PM-14 to control/marks.trib';

  it('moves to the file that is used, as it stands', () => {
    const after = offered(texts, 'PM-14 "brass');
    expect(after).toEqual({
      [title]: { 'day.trib': day.replace(mark, ''), 'control/marks.trib': `${control}\n${mark}` },
    });
    expect(values(after[title] ?? {}).toSorted()).toEqual(values(texts).toSorted());
  });

  it('stays where its coordinates would be read in another grid', () => {
    const elsewhere = { ...texts, 'control/marks.trib': control.replace('3763', '3857') };
    expect(offered(elsewhere, 'PM-14 "brass')).toEqual({});
  });

  it('stays where there is one of that name, where its picture would be lost, and where no file is used', () => {
    const twice = { ...texts, 'control/marks.trib': `${control}\nmark PM-14\n` };
    expect(offered(twice, 'PM-14 "brass')).toEqual({});
    const pictured = {
      ...texts,
      'day.trib': day.replace('  separation', '  photo "pm14.jpg"\n  separation'),
    };
    expect(offered(pictured, 'PM-14 "brass')).toEqual({});
    expect(offered({ ...texts, 'day.trib': base }, 'PM-14 "brass')).toEqual({});
  });

  it('is offered on its first line only', () => expect(offered(texts, '6.284')).toEqual({}));
});
