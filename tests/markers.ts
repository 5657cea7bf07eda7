/**
 * What is expected of a session, written into it as comments of our own language, so that the fixture stays a session.
 *
 * `#        ^^^^^^^ warning height/wrong-surface` speaks about the nearest line above that is no marker: the carets stand
 * below the place. Where carets follow the `#` directly, the place starts in the first column, which the `#` counts for.
 * `#=> 1.533 m` is what the editor shows at the end of that line.
 */
import type { Inspection } from '../server/inspect.ts';
import { whereIs, type Where } from '../server/session/where.ts';

/** Lines and columns count from 1 in UTF-16 units, in the text without its markers. */
export interface Marker {
  readonly line: number;
  /** Null for what stands at the line's end; `end` lies behind the last column. */
  readonly columns: { readonly start: number; readonly end: number } | null;
  /** `warning height/wrong-surface`, `follows check/fails`, or what the editor shows. */
  readonly says: string;
}

const MARKER = /^#(?: *\^+ +\S|=> )/;

export const isMarker = (line: string) => MARKER.test(line);

export function withoutMarkers(text: string): string {
  return linesOf(text)
    .filter((line) => !isMarker(line))
    .join('');
}

/** The text, which has no markers yet, with these below their lines. */
export function withMarkers(text: string, markers: readonly Marker[]): string {
  const byLine = new Map<number, Marker[]>();
  for (const marker of markers) byLine.set(marker.line, [...(byLine.get(marker.line) ?? []), marker]);
  return linesOf(text)
    .map((line, index) => {
      const own = [...(byLine.get(index + 1) ?? [])].sort(inOrder);
      const shown = own.map((marker) => `${markerLine(marker, bare(line).length)}\n`);
      const closed = own.length === 0 || /[\r\n]$/.test(line) ? line : `${line}\n`;
      return closed + shown.join('');
    })
    .join('');
}

/** One marker for each finding, and one for each consequence of another code that hangs under it in the same file. */
export function findingMarkers({ session, findings }: Inspection): Marker[] {
  const marker = (where: Where, says: string): Marker => ({
    line: where.line,
    columns: { start: where.column, end: where.endLine > where.line ? Infinity : where.endColumn },
    says,
  });
  const own = session.document.path;
  return findings.flatMap(({ severity, code, place, related }) => [
    ...(place.path === own ? [marker(whereIs(session, place), `${severity} ${code}`)] : []),
    ...related
      .filter((other) => other.code !== code && other.place.path === own)
      .map((other) => marker(whereIs(session, other.place), `follows ${other.code}`)),
  ]);
}

/** A place in the second column cannot be told from one in the first; nothing of ours starts there. */
function markerLine({ columns, says }: Marker, lineLength: number): string {
  if (!columns) return `#=> ${says}`;
  const end = Math.max(Math.min(columns.end, lineLength + 1), columns.start + 1);
  if (columns.start <= 2) return `#${'^'.repeat(Math.max(1, end - 2))} ${says}`;
  return `#${' '.repeat(columns.start - 2)}${'^'.repeat(end - columns.start)} ${says}`;
}

const inOrder = (one: Marker, other: Marker) =>
  (one.columns?.start ?? Infinity) - (other.columns?.start ?? Infinity) ||
  (one.columns?.end ?? 0) - (other.columns?.end ?? 0) ||
  (one.says < other.says ? -1 : 1);

/** Lines with their line ends. */
const linesOf = (text: string) => text.match(/[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$/g) ?? [];
const bare = (line: string) => line.replace(/[\r\n]+$/, '');
