/** Findings for a person at a terminal: each at its line, what follows from it, what would mend it, and the verdict. */
import picocolors from 'picocolors';
import { SEVERITIES, type Finding, type Fix, type Severity } from '../findings/finding.ts';
import { belowHeadline } from '../findings/saying.ts';
import { classInWords } from '../derive/trust/words.ts';
import { glanceOf, type Glance } from '../record/glance.ts';
import { openCount, verdictOf } from '../record/verdict.ts';
import { offsetsOf, whereIs } from '../session/where.ts';
import { dayTable } from './day-table.ts';
import { excerpt } from './excerpt.ts';
import type { Io } from './io.ts';
import { shownPath, type Inspected } from './sessions.ts';
import { counted, harmless, wrapped } from './terminal-text.ts';

type Colours = ReturnType<typeof picocolors.createColors>;

/** One session at a glance: its verdict, the day as a table, what is found by weight, and what to do first. */
export function findingsText(
  inspected: Inspected,
  { colours: coloured, width, hints }: Pick<Io, 'colours' | 'width'> & { readonly hints: boolean },
): string {
  const colours = picocolors.createColors(coloured);
  const { findings, derivation } = inspected;
  const glance = derivation.setups.size === 0 ? null : glanceOf(inspected);
  const { assumed, next, begun } = verdictOf(inspected);
  const open = openCount(findings);
  const shown = findings.filter(({ severity }) => hints || severity !== 'hint');
  const hidden = countsOf(findings).hint - open;
  const blocks = byWeight(shown).map((finding) => findingText(finding, inspected, width, colours));
  const table = glance && begun ? dayTable(glance, width) : [];
  const closing = [
    ...(assumed === null ? [] : [colours.dim(wrapped(assumed, width, '  '))]),
    ...(hints || hidden === 0 ? [] : [`  ${counted(hidden, 'hint')} (--hints shows them)`]),
    ...(next === null ? [] : [colours.bold(wrapped(`Next: ${next}`, width, '  '))]),
  ];
  const head = `${colours.bold(harmless(shownPath(inspected.path)))}: ${headText(glance, findings)}`;
  return [
    `${[head, ...table].join('\n')}\n`,
    ...blocks,
    ...(closing.length > 0 ? [`${closing.join('\n')}\n`] : []),
  ].join('\n');
}

/** `bracketed 08:25–15:25, 1 warning`. */
function headText(glance: Glance | null, findings: readonly Finding[]): string {
  const open = openCount(findings);
  const found = { ...countsOf(findings) };
  const counted = countsInWords({ ...found, hint: found.hint - open });
  const questions = open === 0 ? '' : `${open} ${open === 1 ? 'answer' : 'answers'} still open`;
  const day = glance ? [classInWords(glance.day), glance.span].filter(Boolean).join(' ') : '';
  const rest = counted === NOTHING_WRONG && questions !== '' ? '' : counted;
  return [day, rest, questions].filter(Boolean).join(', ');
}

/** The worst first; the sort keeps the order of the text among equals. */
const byWeight = (findings: readonly Finding[]) =>
  [...findings].sort((one, other) => SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity));

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

const NOTHING_WRONG = 'nothing wrong';

/** `1 error, 2 warnings`. */
export function countsInWords(found: SeverityCounts): string {
  const parts = SEVERITIES.map((severity) => ({ severity, count: found[severity] })).filter(
    ({ count }) => count > 0,
  );
  if (parts.length === 0) return NOTHING_WRONG;
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
  return `${counted(sessions.length, 'session')}: ${countsInWords(all)}`;
}
