/** Session texts for fuzzing: real ones after accidents, and days put together from the words of the language. */
import fc from 'fast-check';
import { DETAILS, ENTRIES } from '../../grammar/vocabulary.ts';
import { sessionOf as dayOf } from '../bench/sessions.mjs';
import { anyText, mangledPiece } from '../mangled.ts';
import { allPages } from '../pages.ts';
import { allSamples } from '../samples.ts';

const sessions = [
  ...allSamples().map(({ text }) => text),
  ...allPages().flatMap(({ snippets }) => snippets.map(({ given, text }) => given + text)),
];

/** Names that mean something to the machine, to markup or to a shell, and nothing to a surveyor. */
export const hostileName = fc.constantFrom(
  ...['__proto__', 'constructor', 'prototype', 'toString', 'valueOf', 'hasOwnProperty', 'then', 'length'],
  ...['NaN', 'Infinity', 'null', 'undefined', 'true', '0', '-0', '1e9', '?', 'on', 'at', 'mark', 'to'],
  ...['"<img src=x onerror=alert(1)>"', '"]]>"', '"${x}"', '"a""b"', '"𝄞"', 'é', '"\u202e"', '../x'],
);

/** What may happen to the lines, the characters, the words or the figures of a session, at fractions of its length. */
const fraction = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const accident = fc.record({
  what: fc.constantFrom('cut', 'doubled', 'swapped', 'typed', 'figure', 'word'),
  unit: fc.constantFrom('line', 'character'),
  at: fraction,
  other: fraction,
  length: fc.integer({ min: 1, max: 6 }),
  typed: fc.oneof(mangledPiece, fc.string({ unit: 'binary', maxLength: 3 })),
  figure: fc.oneof(
    fc.constantFrom('0', '1', '-1', '0.000', '90', '180', '360', '6378137', '1e300', '24:00', '00:00', '?'),
    fc.double({ min: -1e7, max: 1e7, noNaN: true }).map((value) => value.toFixed(3)),
    fc.integer({ min: 0, max: 99 }).map((value) => String(value)),
  ),
  word: fc.oneof(
    hostileName,
    fc.constantFrom(...DETAILS.map(({ word }) => word), ...ENTRIES.map(({ word }) => word)),
    fc.constantFrom('m', 'ft', 'usft', 'mm', 'km', '°', 'E', 'W', 'N', 'S', 'X', 'Y', 'Z', 'EPSG:4326'),
    fc.constantFrom('EPSG:3763', 'EPSG:32629', 'EPSG:27700', 'EPSG:2154', 'EPSG:4979', 'EPSG:5773'),
    fc.constantFrom('orthometric', 'ellipsoidal', 'arp', 'foot', 'hook', 'phase-centre', 'ground'),
  ),
});
type Accident = typeof accident extends fc.Arbitrary<infer Of> ? Of : never;

export const mangledSession = fc
  .tuple(fc.constantFrom(...sessions), fc.array(accident, { minLength: 1, maxLength: 8 }))
  .map(([session, accidents]) => accidents.reduce(after, session));

function after(text: string, { what, unit, at, other, length, typed, figure, word }: Accident): string {
  if (what === 'figure') return replacedAt(text, /\d[\d.:]*/g, at, figure);
  if (what === 'word') return replacedAt(text, /[A-Za-z][\w:-]*/g, at, word);
  const pieces = unit === 'line' ? (text.match(/[^\n]*\n|[^\n]+$/g) ?? []) : text.split('');
  const from = Math.floor(at * pieces.length);
  const to = Math.floor(other * pieces.length);
  const taken = pieces.slice(from, from + length);
  if (what === 'cut') pieces.splice(from, length);
  else if (what === 'doubled') pieces.splice(to, 0, ...taken);
  else if (what === 'typed') pieces.splice(from, 0, typed);
  else {
    const [one, two] = [pieces[from], pieces[to]];
    if (one !== undefined && two !== undefined) [pieces[from], pieces[to]] = [two, one];
  }
  return pieces.join('');
}

function replacedAt(text: string, wanted: RegExp, at: number, by: string): string {
  const found = [...text.matchAll(wanted)];
  const one = found[Math.floor(at * found.length)];
  return one ? text.slice(0, one.index) + by + text.slice(one.index + one[0].length) : text;
}

/** A session in which one name stands wherever another stood. */
const renamedSession = fc
  .tuple(fc.constantFrom(...sessions), fraction, hostileName)
  .map(([session, at, name]) => {
    const names = [...session.matchAll(/^(?:mark|antenna|rover|surface|ground|setup|check) (\S+)/gm)];
    const old = names[Math.floor(at * names.length)]?.[1];
    return old === undefined ? session : session.replaceAll(old, () => name);
  });

/** Entries with details of their own, in any order, some with another's. */
const composedEntry = fc.constantFrom(...ENTRIES).chain((entry) => {
  const own = DETAILS.filter(({ word }) => entry.details.includes(word));
  const detail = fc.constantFrom(...(own.length > 0 ? own : DETAILS), ...own, ...own, ...DETAILS.slice(0, 6));
  return fc
    .array(detail, { maxLength: 7 })
    .map((details) => [entry.example, ...details.map(({ example }) => `  ${example}`)].join('\n') + '\n');
});
const composedSession = fc
  .tuple(
    fc.constantFrom('', ...sessions.slice(0, 12)),
    fc.array(composedEntry, { minLength: 1, maxLength: 8 }),
    fc.array(accident, { maxLength: 4 }),
  )
  .map(([head, entries, accidents]) => accidents.reduce(after, head + entries.join('')));

/** A day of many setups, most of which stays what it was when it is edited. */
export const longDay = fc.integer({ min: 60, max: 200 }).map((lines) => dayOf(lines));

/** Any text, most of it nearly a session. */
export const sessionText = fc.oneof(
  { weight: 5, arbitrary: mangledSession },
  { weight: 3, arbitrary: composedSession },
  { weight: 1, arbitrary: renamedSession },
  { weight: 2, arbitrary: anyText },
);

/** What a hand does to a text, at a fraction of its length: anything, or an overtyped figure or word, or a line gone or doubled. */
export const stroke = fc.oneof(
  fc.record({
    at: fraction,
    what: fc.constant('anything'),
    cut: fc.oneof(fc.constant(0), fc.constant(1), fc.nat(40)),
    put: fc.oneof(
      mangledPiece,
      fc.constantFrom('', '7', '.', ',', ' ', '\n', '?', '"', '-', '𝄞', '\r', '\n\n', 'mark X\n', '  '),
      fc.constantFrom(...DETAILS).map(({ example }) => `  ${example}\n`),
    ),
  }),
  fc.record({
    at: fraction,
    what: fc.constantFrom('figure', 'word', 'line', 'twice'),
    cut: fc.constant(0),
    put: fc.constantFrom('0', '5', '9', '?', 'BASE-1', 'PM-2', 'CK-1', 'R1', 'A1', 'OPEN-2', '__proto__'),
  }),
);
export type Stroke = typeof stroke extends fc.Arbitrary<infer Of> ? Of : never;

/** Where it falls in this text. */
export function placed({ at, what, cut, put }: Stroke, text: string) {
  const from = Math.floor(at * (text.length + 1));
  if (what === 'anything') return { start: from, end: Math.min(text.length, from + cut), put };
  const places = [...text.matchAll(PLACES[what] ?? /^/g)];
  const place = places[Math.floor(at * places.length)];
  const start = place?.index ?? 0;
  const end = start + (place?.[0].length ?? 0);
  if (what === 'twice') return { start: end, end, put: place?.[0] ?? '' };
  return { start, end, put: what === 'line' ? '' : put };
}
const PLACES: Readonly<Record<string, RegExp>> = {
  figure: /\d/g,
  word: /\b[A-Z]+-?\d*\b/g,
  line: /^.*\n/gm,
  twice: /^.*\n/gm,
};
