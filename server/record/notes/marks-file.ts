/**
 * A register extract as a marks file of the session language. Nothing is guessed: a number whose unit, letter or
 * surface the extract does not say is written without it, and the findings of the result ask for it.
 */

import type { ExtractMark, ExtractRole } from '../../evidence/register-extract.ts';
import { quoted } from './quoted.ts';

/** One mark as the extract has it; digits are kept as they are written there. */
export interface RegisterMark {
  readonly name: string;
  readonly description: string;
  readonly position: readonly RegisterCoordinate[];
  readonly height: RegisterNumber | null;
  readonly separation: RegisterNumber | null;
}
export interface RegisterNumber {
  readonly digits: string;
  /** As the columns declare it: a unit, and for a height its surface; empty where they do not. */
  readonly qualifiers: string;
}
export interface RegisterCoordinate extends RegisterNumber {
  readonly letter: 'N' | 'E' | 'S' | 'W' | 'X' | 'Y' | 'Z';
}

export interface RegisterAbout {
  readonly title: string;
  /** The grid of the extract, `EPSG:3763`; null where nobody said, which leaves a question in the file. */
  readonly grid: string | null;
  readonly source: string | null;
  readonly date: string | null;
}

export function marksFile(marks: readonly RegisterMark[], about: RegisterAbout): string {
  const head = `job ${quoted(about.title)}\n  grid        ${about.grid ?? '?'}\n`;
  return `${head}\n${marks.map((mark) => markEntry(mark, about)).join('')}`;
}

function markEntry(mark: RegisterMark, about: RegisterAbout): string {
  const description = mark.description === '' ? '' : ` ${quoted(mark.description)}`;
  const lines = [
    `mark ${nameOf(mark.name)}${description}`,
    ...(mark.position.length > 0 ? [detail('position', mark.position.map(coordinate).join(', '))] : []),
    ...(mark.height ? [detail('height', number(mark.height))] : []),
    ...(mark.separation ? [detail('separation', number(mark.separation))] : []),
    detail('source', `${quoted(about.source ?? '?')} ${about.date ?? '?'}`),
  ];
  return `${lines.join('\n')}\n`;
}

const detail = (word: string, value: string) => `  ${word.padEnd(11)} ${value}`;

const number = ({ digits, qualifiers }: RegisterNumber) => `${digits} ${qualifiers}`.trim();

/** `-41203.118 m E`, `41.15° N`, `X 4755148.014 m`; a signed angle becomes one with the letter of its side. */
function coordinate(value: RegisterCoordinate): string {
  const { letter, qualifiers } = value;
  if (letter === 'X' || letter === 'Y' || letter === 'Z') return `${letter} ${number(value)}`;
  if (qualifiers !== '°') return `${number(value)} ${letter}`;
  const negative = value.digits.startsWith('-');
  const other = ({ N: 'S', S: 'N', E: 'W', W: 'E' } as const)[letter];
  return `${value.digits.replace(/^[+-]/, '')}° ${negative ? other : letter}`;
}

/** What could not stand in a name's place is quoted. */
const nameOf = (name: string) =>
  /^[^\s",#?][^\s",]*$/u.test(name) && !name.includes('\0') ? name : quoted(name);

const LETTERS: Readonly<Partial<Record<ExtractRole, RegisterCoordinate['letter']>>> = {
  north: 'N',
  south: 'S',
  latitude: 'N',
  east: 'E',
  west: 'W',
  longitude: 'E',
  x: 'X',
  y: 'Y',
  z: 'Z',
};

/** A mark of an extract with its coordinates in letters. */
export function registerMark({ name, description, values }: ExtractMark): RegisterMark {
  const find = (role: ExtractRole) => values.find(({ means }) => means === role) ?? null;
  const position = values.flatMap(({ means, digits, qualifiers }) => {
    const letter = LETTERS[means];
    return letter ? [{ letter, digits, qualifiers }] : [];
  });
  return { name, description, position, height: find('height'), separation: find('separation') };
}
