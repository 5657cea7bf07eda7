/** The law that no fix may break: it never writes a fact, only how a fact is written, which thing is meant, or that a value is open. */
import { DETAILS, ENTRIES, NAME_FOLLOWS } from '../grammar/vocabulary.ts';
import type { Edit, Fix } from '../server/findings/finding.ts';
import { isPlan } from '../server/findings/stream/plans.ts';
import type { Inspection } from '../server/inspect.ts';

/** What a fix does that it must not, or null where it keeps the law. */
export function breach(inspection: Inspection, fix: Fix): string | null {
  if (fix.edits.length === 0) return 'it changes nothing';
  for (const edit of fix.edits) {
    const before = edit.place.entry.text.slice(edit.place.start, edit.place.end);
    if (before === edit.text) return 'it changes nothing';
    if (isPlanned(inspection, edit)) continue;
    if (isAboutTheFile(before, edit.text)) continue;
    if (isOpenLine(before, edit.text) || isTwinTakenOut(before, edit)) continue;
    if (/[\r\n]/.test(edit.text)) return `it adds a line that is not open: ${edit.text}`;
    if (/[\r\n]/.test(before)) return `it takes a line out that stands nowhere else: ${before}`;
    if (isNameOf(inspection, edit.text) || sameFigures(before, edit.text)) continue;
    return `it writes other figures: ${before} becomes ${edit.text}`;
  }
  return null;
}

/** How a file is written is no fact of the day, and shows in the file itself. */
const isAboutTheFile = (before: string, text: string) =>
  before === '' && /^\r?\n {2}decimal +comma$/.test(text);

/** What a stream will send is chosen and not observed, as long as nothing has been done at its base. */
function isPlanned({ session, derivation }: Inspection, { place: { entry } }: Edit): boolean {
  const stream = session.streams.find((one) => one.entry === entry);
  const base = stream?.from?.name ?? [...session.setups.keys()][0] ?? '';
  return stream !== undefined && isPlan({ session, derivation }, base);
}

/** A new line may say which value is wanted, and has `?` for each; its words are those of the language, the name of a new entry aside. */
function isOpenLine(before: string, text: string): boolean {
  if (before !== '') return false;
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line !== '');
  return /[\r\n]/.test(text) && lines.length > 0 && lines.every(isOpen);
}
function isOpen(line: string): boolean {
  const pieces = line
    .replace(/^(\S+) \S+/, '$1')
    .trim()
    .split(/[\s,]+/);
  return pieces.includes('?') && pieces.every((piece) => piece === '?' || words.has(piece));
}
const words = new Set([
  ...[...ENTRIES, ...DETAILS].map(({ word }) => word),
  ...NAME_FOLLOWS,
  ...['at', 'horizontal', 'vertical', 'antenna-height', 'antenna-type'],
]);

/** Of two lines that say the same, one may go. */
function isTwinTakenOut(before: string, { text, place }: Edit): boolean {
  if (text !== '' || before.trim() === '') return false;
  const { entry, start, end } = place;
  const said = (line: string) =>
    line
      .replace(/\s#.*$/, '')
      .replace(/\s+/g, ' ')
      .trim();
  const rest = `${entry.text.slice(0, start)}${entry.text.slice(end)}`.split(/\r\n|\r|\n/);
  return rest.some((line) => said(line) === said(before));
}

/** Which mark, antenna, rover or setup was meant: the thing itself must be there already. */
function isNameOf({ session }: Inspection, text: string): boolean {
  const name = text.startsWith('"') ? text.slice(1, -1).replaceAll('""', '"') : text;
  const kinds = [session.marks, session.antennas, session.rovers, session.surfaces, session.setups];
  return kinds.some((names) => names.has(name));
}

/** A time of the clock with twelve hours, as the one with twenty-four shows it. */
function sameTime(before: string, after: string): boolean {
  const [, hours, minutes = ':00', half] = /^(\d{1,2})(:[\d:.]+)?\s*([ap])[.]?\s?m[.]?$/i.exec(before) ?? [];
  if (hours === undefined || half === undefined) return false;
  const inDay = (Number(hours) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return after === `${inDay < 10 ? '0' : ''}${inDay}${minutes}`;
}

/** The digits written are those that stood there: in another order for a date, moved by an exponent, and with zeros that say nothing. */
function sameFigures(before: string, after: string): boolean {
  if (sameTime(before, after)) return true;
  const figures = (text: string) => text.replace(/[^1-9]/g, '');
  if (figures(before) === figures(after)) return true;
  if (/[eE]/.test(before) && Number.parseFloat(before.replace(/\u2212/g, '-')) === Number.parseFloat(after))
    return true;
  if (!/^\d{4}-\d{2}-\d{2}$/.test(after)) return false;
  const numbers = (text: string) =>
    (text.match(/\d+/g) ?? [])
      .map((number) => Number(number) % 100)
      .sort()
      .join();
  return numbers(before) === numbers(after);
}
