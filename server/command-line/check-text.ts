/** Findings for a person at a terminal: each at its line, what follows from it, what would mend it, and the verdict. */
import picocolors from 'picocolors';
import { SEVERITIES, type Finding, type Fix, type Severity } from '../findings/finding.ts';
import { verdictOf } from '../record/verdict.ts';
import { offsetsOf, whereIs } from '../session/where.ts';
import { excerpt } from './excerpt.ts';
import type { Io } from './io.ts';
import { shownPath, type Inspected } from './sessions.ts';
import { counted, harmless, wrapped } from './terminal-text.ts';

type Colours = ReturnType<typeof picocolors.createColors>;

export function findingsText(inspected: readonly Inspected[], io: Io): string {
  const colours = picocolors.createColors(io.colours);
  const sessions = inspected.map((session) => sessionText(session, io.width, colours));
  return sessions.join('\n') + (inspected.length > 1 ? `\n${total(inspected)}\n` : '');
}

function sessionText(inspected: Inspected, width: number, colours: Colours): string {
  const { findings } = inspected;
  const { sentence, next } = verdictOf(inspected);
  const found = findings.map((finding) => findingText(finding, inspected, width, colours));
  const closing = [
    `${colours.bold(harmless(shownPath(inspected.path)))}: ${counts(findings)}`,
    ...(sentence === null ? [] : [wrapped(sentence, width, '  ')]),
    ...(next === null ? [] : [wrapped(`Next: ${next}`, width, '  ')]),
  ];
  return [...found, `${closing.join('\n')}\n`].join('\n');
}

function findingText(finding: Finding, { session }: Inspected, width: number, colours: Colours): string {
  const { severity, code, message, place, related, fixes } = finding;
  const where = whereIs(session, place);
  const text = session.documents.get(where.path)?.text ?? '';
  const margin = String(where.line);
  const stretch = offsetsOf(session, place) ?? { start: 0, end: 0 };
  const shown = excerpt(text, stretch, width - margin.length - 5);
  const paint = PAINTS[severity](colours);
  const lines = [
    `${harmless(shownPath(where.path))}:${where.line}:${where.column} ${paint(severity)} ${colours.bold(code)}`,
    `  ${colours.dim(`${margin} |`)} ${shown.line}`,
    `  ${colours.dim(`${' '.repeat(margin.length)} |`)} ${paint(shown.carets)}`,
    wrapped(message, width, '  '),
    ...related.map((one) => {
      const at = whereIs(session, one.place);
      const line = at.path === where.path ? `line ${at.line}` : `${shownPath(at.path)}:${at.line}`;
      return wrapped(
        `${line}: ${firstSentence(one.message)}${one.code === code ? '' : ` (${one.code})`}`,
        width,
        '    ',
      );
    }),
    ...(fixes.length === 0 ? [] : [wrapped(fixesText(fixes), width, '    ')]),
  ];
  return `${lines.join('\n')}\n`;
}

/** What follows is told in short; alone it would have all its words. */
const firstSentence = (message: string) => message.split(/(?<=\.) (?=\p{Lu})/u)[0] ?? message;

/** Several fixes exclude one another: the user picks the one that tells what was read. */
const fixesText = (fixes: readonly Fix[]) =>
  `${fixes.length > 1 ? 'Fix, one of: ' : 'Fix: '}${fixes.map(({ title }) => title).join('; ')}`;

const PAINTS: Readonly<Record<Severity, (colours: Colours) => (text: string) => string>> = {
  error: (colours) => colours.red,
  warning: (colours) => colours.yellow,
  information: (colours) => colours.cyan,
  hint: (colours) => colours.dim,
};

/** `1 error, 2 warnings`. */
function counts(findings: readonly Finding[]): string {
  const parts = SEVERITIES.map((severity) => ({
    severity,
    count: findings.filter((finding) => finding.severity === severity).length,
  })).filter(({ count }) => count > 0);
  if (parts.length === 0) return 'nothing wrong';
  return parts
    .map(({ severity, count }) =>
      severity === 'information' ? `${count} information` : counted(count, severity),
    )
    .join(', ');
}

const total = (inspected: readonly Inspected[]) =>
  `${counted(inspected.length, 'session')}: ${counts(inspected.flatMap(({ findings }) => findings))}`;
