/** Findings for a person at a terminal: each at its line, what follows from it, what would mend it, and the verdict. */
import picocolors from 'picocolors';
import { SEVERITIES, type Finding, type Fix, type Severity } from '../findings/finding.ts';
import { belowHeadline } from '../findings/saying.ts';
import { verdictOf } from '../record/verdict.ts';
import { offsetsOf, whereIs } from '../session/where.ts';
import { excerpt } from './excerpt.ts';
import type { Io } from './io.ts';
import { shownPath, type Inspected } from './sessions.ts';
import { counted, harmless, wrapped } from './terminal-text.ts';

type Colours = ReturnType<typeof picocolors.createColors>;

/** What is found in one session, and its verdict. */
export function findingsText(
  inspected: Inspected,
  { colours: coloured, width }: Pick<Io, 'colours' | 'width'>,
): string {
  const colours = picocolors.createColors(coloured);
  const { findings } = inspected;
  const { sentence, assumed, next } = verdictOf(inspected);
  const found = findings.map((finding) => findingText(finding, inspected, width, colours));
  const closing = [
    `${colours.bold(harmless(shownPath(inspected.path)))}: ${counts(countsOf(findings))}`,
    ...(sentence === null ? [] : [wrapped(sentence, width, '  ')]),
    ...(assumed === null ? [] : [colours.dim(wrapped(assumed, width, '  '))]),
    ...(next === null ? [] : [wrapped(`Next: ${next}`, width, '  ')]),
  ];
  return [...found, `${closing.join('\n')}\n`].join('\n');
}

function findingText(finding: Finding, { session }: Inspected, width: number, colours: Colours): string {
  const { severity, code, headline, place, related, fixes } = finding;
  const below = belowHeadline(finding);
  const where = whereIs(session, place);
  const text = session.documents.get(where.path)?.text ?? '';
  const margin = String(where.line);
  const stretch = offsetsOf(session, place) ?? { start: 0, end: 0 };
  const shown = excerpt(text, stretch, width - margin.length - 5);
  const paint = PAINTS[severity](colours);
  const lines = [
    `${harmless(shownPath(where.path))}:${where.line}:${where.column} ${paint(severity)} ${code}`,
    colours.bold(wrapped(headline, width, '  ')),
    `  ${colours.dim(`${margin} |`)} ${shown.line}`,
    `  ${colours.dim(`${' '.repeat(margin.length)} |`)} ${paint(shown.carets)}`,
    ...(below === '' ? [] : [wrapped(below, width, '  ')]),
    ...related.map((one) => {
      const at = whereIs(session, one.place);
      const line = at.path === where.path ? `line ${at.line}` : `${shownPath(at.path)}:${at.line}`;
      return wrapped(`${line}: ${one.headline}${one.code === code ? '' : ` (${one.code})`}`, width, '    ');
    }),
    ...(fixes.length === 0 ? [] : [wrapped(fixesText(fixes), width, '    ')]),
  ];
  return `${lines.join('\n')}\n`;
}

/** Several fixes exclude one another: the user picks the one that tells what was read. */
const fixesText = (fixes: readonly Fix[]) =>
  `${fixes.length > 1 ? 'Fix, one of: ' : 'Fix: '}${fixes.map(({ title }) => title).join('; ')}`;

const PAINTS: Readonly<Record<Severity, (colours: Colours) => (text: string) => string>> = {
  error: (colours) => colours.red,
  warning: (colours) => colours.yellow,
  information: (colours) => colours.cyan,
  hint: (colours) => colours.dim,
};

export type SeverityCounts = Readonly<Record<Severity, number>>;

export const countsOf = (findings: readonly Finding[]) =>
  Object.fromEntries(
    SEVERITIES.map((severity) => [
      severity,
      findings.filter((finding) => finding.severity === severity).length,
    ]),
  ) as SeverityCounts;

/** `1 error, 2 warnings`. */
function counts(found: SeverityCounts): string {
  const parts = SEVERITIES.map((severity) => ({ severity, count: found[severity] })).filter(
    ({ count }) => count > 0,
  );
  if (parts.length === 0) return 'nothing wrong';
  return parts
    .map(({ severity, count }) =>
      severity === 'information' ? `${count} information` : counted(count, severity),
    )
    .join(', ');
}

/** `12 sessions: 1 error, 2 warnings`. */
export function totalText(sessions: readonly SeverityCounts[]): string {
  const sum = (severity: Severity) => sessions.reduce((total, found) => total + found[severity], 0);
  const all = Object.fromEntries(SEVERITIES.map((severity) => [severity, sum(severity)])) as SeverityCounts;
  return `${counted(sessions.length, 'session')}: ${counts(all)}`;
}
